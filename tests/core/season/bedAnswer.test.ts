import { describe, expect, test } from 'vitest';
import { answerBed, answerProposal, type BedQuestion } from '../../../app/core/season/bedAnswer';
import { bedCautions, layerCautions } from '../../../app/core/season/cautions/cautions';
import type { BedSeason } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { bedVerdict } from '../../../app/core/season/state';
import { limits } from '../../../app/tables/thresholds';
import { dayIn, makeBed, makeLayer, makePlanting, today } from '../madeBed';
import { openFacts } from './cautionRuns';

/* The one way from a bed to its verdict and cautions: run, judge by last week, and list what is wrong. */

const bed = (changes: Partial<BedSeason> = {}): BedSeason =>
  makeBed({
    plantings: [makePlanting({ startDay: dayIn(5, 10) })],
    layers: [5, 6].map((month) =>
      makeLayer({ id: `${month}`, day: dayIn(month, 1), laidDepth: 15, nitrogen: 22, carbon: 290 }),
    ),
    ...changes,
  });
const asked = (input: BedSeason, weekAgo: BedSeason | null = null): BedQuestion => ({
  input,
  weekAgo,
  facts: openFacts,
});

describe('a bed’s answer', () => {
  test('is its run, its verdict and its cautions, under its own name', () => {
    const input = bed({ bedId: 'by the gate' });
    const answer = answerBed(asked(input), limits);
    const result = runSeason(input);
    expect(answer.bedId).toBe('by the gate');
    expect(answer.input).toBe(input);
    expect(answer.season).toEqual(result);
    expect(answer.verdict).toEqual(bedVerdict(input, result, today, limits));
    const run = { input, result, verdict: answer.verdict };
    expect(answer.cautions).toEqual(bedCautions(run, openFacts, limits));
    expect(answer.cautions.map(({ kind }) => kind)).toContain('layer depth');
  });

  test('holds to the state of a week ago by its margin', () => {
    const input = bed();
    const { verdict } = answerBed(asked(input), limits);
    // last week's bed as it would have been known with much more, and with much less, nitrogen
    const weekAgo = (grams: number): BedSeason =>
      bed({ today: today - 7, soil: { ...input.soil, startingMineralTop: grams } });
    // limits under which the margin decides: the line lies just above today's ratio
    const line = (verdict.ratio ?? 0) + 0.05;
    const near = {
      ...limits,
      lines: {
        ...limits.lines,
        'over-fed storage': { ...limits.lines['over-fed storage'], caution: line },
      },
    };
    const state = (grams: number | null) =>
      answerBed(asked(input, grams === null ? null : weekAgo(grams)), near).verdict.state;
    expect(state(60)).toBe('over-fed');
    expect(state(null)).not.toBe('over-fed');
    expect(state(0)).not.toBe('over-fed');
  });
});

test('a proposal’s answer is both beds, and cautions of the proposed layers alone', () => {
  const before = bed();
  const layer = makeLayer({ id: 'new', laidDepth: 26, nitrogen: 42, carbon: 550 });
  const after = bed({ layers: [...before.layers, layer] });
  const answer = answerProposal(
    { before: asked(before), after: asked(after), layerIds: ['new'] },
    limits,
  );
  const without = answerBed(asked(before), limits);
  const withLayer = answerBed(asked(after), limits);
  expect(answer.bedId).toBe('bed');
  expect(answer.layerIds).toEqual(['new']);
  expect(answer.before).toEqual(without);
  expect(answer.after).toEqual(withLayer);
  expect(answer.cautions).toEqual(
    layerCautions(
      { input: before, result: without.season, verdict: without.verdict },
      { input: after, result: withLayer.season, verdict: withLayer.verdict },
      ['new'],
      openFacts,
      limits,
    ),
  );
  expect(answer.cautions[0]).toMatchObject({ kind: 'layer depth', weight: 'stop', layerId: 'new' });
  expect(answer.after.verdict.ratio).toBeGreaterThan(answer.before.verdict.ratio ?? Infinity);
});
