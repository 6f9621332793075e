// A bed made of another's ground shows what came with it: it was said to be bare under 32 mm of cover.
import { expect, test } from 'vitest';
import { coverFacts } from '../../app/charts/cover/geometry';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { splitBed } from '../../app/document/bedChanges/splitBed';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { layersShown } from '../../app/screens/beds/chartData';
import { limits } from '../../app/tables/thresholds';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('the sample cannot be read');
const sample = parsed.value;
const today = '2013-06-15';
const coverOf = (garden: Garden, bedId: string) => {
  const results = answerBed(bedQuestion(garden, bedId, dayOf(today)), limits);
  const layers = layersShown(garden, results, dayOf(today));
  return coverFacts({ result: results.season, layers });
};

test('each half of a split bed lies under the layers of the whole', () => {
  const bed = sample.beds.find(({ name }) => name === 'Kitchen bed')!;
  const names = ['Left', 'Right'] as const;
  const split = splitBed(
    sample,
    { bedId: bed.id, on: today, names, firstShare: 0.5, plants: {} },
    today,
  );
  if (!split.ok) throw new Error(split.error.kind);
  const { garden } = split.value;
  const was = coverOf(sample, bed.id);
  expect(was.lying.length).toBeGreaterThan(0);
  for (const name of names) {
    const part = garden.beds.find((one) => one.name === name)!;
    const { lying, totalDepth } = coverOf(garden, part.id);
    expect(lying.map(({ layer }) => layer)).toEqual(was.lying.map(({ layer }) => layer));
    // what is drawn is what the sums have
    const drawn = lying.reduce((sum, { depth }) => sum + depth, 0);
    expect(drawn / totalDepth).toBeGreaterThan(0.98);
    expect(drawn / totalDepth).toBeLessThan(1.02);
  }
});
