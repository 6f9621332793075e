import { expect, test } from 'vitest';
import sampleText from '../../../assets/gardens/sample.mowings?raw';
import { dayOf } from '../../../app/core/days';
import { answerBed } from '../../../app/core/season/bedAnswer';
import { bedQuestion } from '../../../app/document/bedQuestion';
import { parseGarden } from '../../../app/document/parse';
import { limits } from '../../../app/tables/thresholds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample cannot be read');
const sample = parsed.value;
const today = dayOf(sample.garden.today ?? '');

/** What may be said of a bed that nothing was laid on. */
const allowed = new Set(['short of nitrogen', 'dry soil first']);
/** Rye was dug into it in April at C:N 30, and it holds nitrogen back to this day. */
const withRye = 'Far bed';

test.each(sample.beds.map(({ id, name }) => [name, id] as const))(
  '%s of the sample, never mulched, is called nothing but short, bare and dry',
  (name, bedId) => {
    const bare = { ...sample, applications: [] };
    const { cautions, verdict } = answerBed(bedQuestion(bare, bedId, today), limits);
    const other = cautions.filter(({ row }) => !allowed.has(row)).map(({ row }) => row);
    expect(other).toEqual(name === withRye ? ['tied up'] : []);
    // a cover crop hides its ground itself
    if (verdict.excessClass !== 'cover') expect(verdict.coverState).toBe('bare');
  },
);

test('two of its beds are such beds as they are', () => {
  const mulched = new Set(sample.applications.map(({ bedId }) => bedId));
  const bare = sample.beds.filter(({ id }) => !mulched.has(id)).map(({ name }) => name);
  expect(bare).toEqual(['Resting bed', withRye]);
});
