// Sentences that stand in the screens of This week themselves, not in `app/words`: the same rules.
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';

const top = join(import.meta.dirname, '../..');
const folders = ['app/screens/week', 'app/screens/beds/whatIf'];
/** What the week's screens say through `app/words`. */
const wordFiles = [
  'app/words/planWords.ts',
  'app/words/planWorth.ts',
  'app/words/planSays.ts',
  'app/words/weekWords.ts',
  'app/words/waterWords.ts',
  'app/words/lawnOutlookWords.ts',
  'app/words/whatIfWords.ts',
  'app/words/mowingMarkWords.ts',
];

const filesIn = (folder: string): string[] =>
  readdirSync(join(top, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

/** An expression in the middle of a sentence counts as one word. */
const gap = '…';

/** A node of the parsed file, with whatever hangs on it. */
type Node = { readonly type: string } & Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const nodesIn = (value: unknown): Node[] =>
  Array.isArray(value) ? value.filter(isNode) : isNode(value) ? [value] : [];

/** Words of a template with its expressions as one word each. */
const templateText = ({ quasis }: Node): string =>
  nodesIn(quasis)
    .map(({ value }) => (value as { cooked: string }).cooked)
    .join(gap);

/** What stands in an element as one text; elements within are read by themselves and count as a word. */
const childrenText = (children: readonly Node[]): string =>
  children
    .map((child) => {
      if (child.type === 'JSXText') return String(child['value']).replaceAll(/\s+/g, ' ');
      if (child.type !== 'JSXExpressionContainer') return ` ${gap} `;
      const [expression] = nodesIn(child['expression']);
      if (expression?.type === 'Literal' && typeof expression['value'] === 'string')
        return expression['value'];
      if (expression?.type === 'TemplateLiteral') return templateText(expression);
      return expression?.type === 'JSXEmptyExpression' ? '' : gap;
    })
    .join('');

/** Attributes whose text is for the program, not for people. */
const notSaid = new Set(['className', 'id', 'type', 'role', 'name', 'key', 'href', 'viewBox']);

/** All texts of a file that somebody may read or hear. */
function textsIn(file: string): string[] {
  const { program, errors } = parseSync(file, readFileSync(file, 'utf8'));
  if (errors.length > 0) throw new Error(`${file} cannot be read`);
  const texts: string[] = [];
  const visit = (node: Node): void => {
    if (node.type === 'ImportDeclaration' || node.type.startsWith('TS')) {
      // types say nothing, but what is cast or asserted may
      for (const inner of nodesIn(node['expression'])) visit(inner);
      return;
    }
    const [attribute] = node.type === 'JSXAttribute' ? nodesIn(node['name']) : [];
    if (attribute && notSaid.has(String(attribute['name']))) return;
    if (node.type === 'JSXElement' || node.type === 'JSXFragment')
      texts.push(childrenText(nodesIn(node['children'])));
    if (node.type === 'TemplateLiteral') texts.push(templateText(node));
    if (node.type === 'Literal' && typeof node['value'] === 'string') texts.push(node['value']);
    for (const value of Object.values(node)) for (const inner of nodesIn(value)) visit(inner);
  };
  visit(program as unknown as Node);
  return texts.map((text) => text.trim()).filter((text) => /[a-z] [a-z]/i.test(text));
}

const sentencesOf = (text: string): string[] =>
  text
    .split(/(?<=[.:;!?])\s/)
    .map((sentence) => sentence.trim())
    .filter(Boolean);

const said = [...folders.flatMap(filesIn), ...wordFiles.map((file) => join(top, file))].flatMap(
  (file) => textsIn(file).map((text) => [relative(top, file), text] as const),
);

describe('sentences written in the screens of This week', () => {
  test('are found at all, in elements, in attributes and in what is announced', () => {
    const texts = said.map(([, text]) => text);
    // LayForm and BackLog write some of theirs themselves
    expect(said.filter(([file]) => file.startsWith('app/screens/week')).length).toBeGreaterThan(60);
    expect(texts.some((text) => text.includes('The likely ranges hold'))).toBe(true);
    expect(texts.some((text) => text.startsWith('What is amiss on all beds'))).toBe(true);
  });

  test('have at most 25 words', () => {
    const long = said.flatMap(([file, text]) =>
      sentencesOf(text)
        .filter((sentence) => sentence.split(/\s+/).filter((word) => /\w|…/.test(word)).length > 25)
        .map((sentence) => `${file}: ${sentence}`),
    );
    expect(long).toEqual([]);
  });

  test('keep the laboratory’s words out', () => {
    const foreign = said.filter(([, text]) =>
      /C:N|\bDM\b|kg\/ha|mineralis|immobilis|percentile/i.test(text),
    );
    expect(foreign).toEqual([]);
  });
});
