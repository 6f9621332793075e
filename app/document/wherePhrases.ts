import type { z } from 'zod';

/** "beds 3, areaM2" from the path of a fault: lists are counted from 1, as a reader counts. */
export function placeOf(path: readonly PropertyKey[]): string {
  const parts: string[] = [];
  for (const step of path) {
    if (typeof step === 'number' && parts.length > 0) {
      parts[parts.length - 1] = `${parts.at(-1) ?? ''} ${String(step + 1)}`;
    } else parts.push(String(step));
  }
  return parts.join(', ') || 'the file itself';
}

const kindNames: Readonly<Record<string, string>> = {
  string: 'a text is wanted',
  number: 'a number is wanted',
  int: 'a whole number is wanted',
  boolean: 'true or false is wanted',
  array: 'a list is wanted',
  tuple: 'a list is wanted',
  object: 'a group in braces is wanted',
};

/** What is wrong with a value, without the schema library's own wording. */
export function phraseOf(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.input === undefined && /undefined/.test(issue.message)
        ? 'it is missing'
        : (kindNames[issue.expected] ?? 'another sort of value is wanted');
    case 'too_small':
      return smallPhrase(issue.origin, Number(issue.minimum), issue.inclusive ?? true);
    case 'too_big':
      return bigPhrase(issue.origin, Number(issue.maximum));
    case 'unrecognized_keys':
      return `not known here: ${issue.keys.slice(0, 3).join(', ').slice(0, 120)}`;
    case 'invalid_value':
      return `one of these is wanted: ${issue.values.map(String).join(', ').slice(0, 200)}`;
    case 'custom':
      return issue.message;
    default:
      return 'not one of the forms that are known';
  }
}

function smallPhrase(origin: string, least: number, isAllowed: boolean): string {
  if (origin === 'string') return 'it is empty';
  if (origin === 'array') return `${String(least)} entries are wanted`;
  return isAllowed ? `it is below ${String(least)}` : `more than ${String(least)} is wanted`;
}

function bigPhrase(origin: string, most: number): string {
  if (origin === 'string') return `it is longer than ${String(most)} characters`;
  if (origin === 'array') return `it has more than ${String(most)} entries`;
  return `it is above ${String(most)}`;
}
