import type * as z from 'zod/mini';

const kindNames: Readonly<Record<string, string>> = {
  string: 'a text is wanted',
  number: 'a number is wanted',
  int: 'a whole number is wanted',
  boolean: 'true or false is wanted',
  array: 'a list is wanted',
  tuple: 'a list is wanted',
  object: 'a group in braces is wanted',
};

const valueAt = (document: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      typeof value === 'object' && value !== null
        ? (value as Record<PropertyKey, unknown>)[key]
        : undefined,
    document,
  );

/** What is wrong with a value and what is wanted, without the schema library's own wording. */
export function phraseOf(issue: z.core.$ZodIssue, document: unknown): string {
  const found = valueAt(document, issue.path);
  const given = typeof found === 'number' ? `, not ${String(found)}` : '';
  switch (issue.code) {
    case 'invalid_type':
      return found === undefined
        ? 'it is missing'
        : (kindNames[issue.expected] ?? 'another sort of value is wanted');
    case 'too_small':
      return `${smallPhrase(issue.origin, Number(issue.minimum), issue.inclusive ?? true)}${given}`;
    case 'too_big':
      return `${bigPhrase(issue.origin, Number(issue.maximum))}${given}`;
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
  return isAllowed ? `at least ${String(least)} is wanted` : `more than ${String(least)} is wanted`;
}

function bigPhrase(origin: string, most: number): string {
  if (origin === 'string') return `it is longer than ${String(most)} characters`;
  if (origin === 'array') return `it has more than ${String(most)} entries`;
  return `at most ${String(most)} is wanted`;
}
