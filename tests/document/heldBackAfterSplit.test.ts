import { expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { answerProposal } from '../../app/core/season/bedAnswer';
import { splitBed } from '../../app/document/bedChanges/splitBed';
import { bedQuestion } from '../../app/document/bedQuestion';
import type { Garden } from '../../app/document/schema';
import { limits } from '../../app/tables/thresholds';
import {
  asked,
  bedId,
  clippings,
  crop,
  later,
  mowing,
  usualToday as today,
} from './cautionTable/asked';

/*
 * A silent label holds grass back from beans all season (label first: Nebraska and Michigan State
 * columns). The run of a bed made, or first known, within a season begins after the treatment.
 */

const treated = '2013-04-10';
const four = ['2013-06-03', '2013-06-10', '2013-06-17', '2013-06-24'];
const garden = (day: string, knownSince: string | null = null): Garden =>
  asked({
    bed: { knownSince },
    lawn: { treatment: { answer: 'treated', date: day, label: 'silent' } },
    plantings: [crop('snap_bean_bush', '2013-06-20', 'sown')],
    mowings: [...four, today].map((date) => mowing(date)),
  }).garden;

const rowsOf = (of: Garden, id: string): readonly string[] => {
  const day = dayOf(today);
  const layer = clippings(today, 5, { bedId: id });
  return answerProposal(
    {
      before: bedQuestion(of, id, day),
      after: bedQuestion(of, id, day, [layer]),
      layerIds: [layer.id],
    },
    limits,
  ).cautions.map(({ row }) => row);
};

function split(of: Garden): Garden {
  const done = splitBed(
    of,
    { bedId, on: later(today, -2), names: ['One', 'Other'], firstShare: 0.4, plants: {} },
    today,
  );
  if (!done.ok) throw new Error(JSON.stringify(done.error));
  return done.value.garden;
}

test('both parts of a split bed are held back as the whole one was', () => {
  expect(rowsOf(garden(treated), bedId)).toContain('label silent sensitive');
  const parts = split(garden(treated));
  expect(parts.beds).toHaveLength(2);
  for (const { id } of parts.beds) expect(rowsOf(parts, id)).toContain('label silent sensitive');
});

test('a bed known since after the treatment is held back too', () => {
  expect(rowsOf(garden(treated, '2013-06-10'), bedId)).toContain('label silent sensitive');
});

test('what was put on in an earlier season holds back neither', () => {
  const earlier = split(garden('2012-10-10'));
  for (const { id } of earlier.beds)
    expect(rowsOf(earlier, id)).not.toContain('label silent sensitive');
  expect(rowsOf(garden('2012-10-10', '2013-06-10'), bedId)).not.toContain('label silent sensitive');
});
