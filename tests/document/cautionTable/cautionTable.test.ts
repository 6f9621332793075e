import { describe, expect, test } from 'vitest';
import type {
  FactId,
  LineId,
  Limits,
  NumberId,
  ThresholdRow,
} from '../../../app/core/season/limits';
import { limits, thresholdRows } from '../../../app/tables/thresholds';
import { tell, type Asked, type Told } from './asked';
import { bedPairs } from './bedPairs';
import { layerPairs } from './layerPairs';
import { oddsPairs, tellWithOdds } from './oddsPairs';
import type { Pair, Pairs } from './pair';
import { sourcePairs } from './sourcePairs';
import { statePairs } from './statePairs';
import { weatherPairs } from './weatherPairs';

/*
 * Every row of the threshold table, each with a garden past its line and one just within it. The two
 * differ by one typed value and go the way of every bed: garden, question, answer. That a pair hangs
 * on its own row is tried by moving the row: one of the two gardens must then be told otherwise.
 */

const pairs: Pairs = {
  ...statePairs,
  ...layerPairs,
  ...bedPairs,
  ...weatherPairs,
  ...sourcePairs,
  ...oddsPairs,
};

const weights = ['note', 'caution', 'stop'] as const;

/** Places in which two gardens differ. Ids are not typed: those made from a day are not looked at. */
function differences(one: unknown, other: unknown, path = ''): string[] {
  if (Object.is(one, other)) return [];
  const areObjects =
    typeof one === 'object' && typeof other === 'object' && one !== null && other !== null;
  if (!areObjects) return [path];
  const keys = [...new Set([...Object.keys(one), ...Object.keys(other)])].filter(
    (key) => key !== 'id',
  );
  return keys.flatMap((key) =>
    differences(
      (one as Record<string, unknown>)[key],
      (other as Record<string, unknown>)[key],
      `${path}/${key}`,
    ),
  );
}

const seen =
  (row: ThresholdRow, { weight, sees }: Pair) =>
  (told: Told): boolean =>
    sees ? sees(told) : told.cautions.some((one) => one.row === row.id && one.weight === weight);

/** The table with one of its rows moved far to one side or the other. */
function moved(row: ThresholdRow, { weight }: Pair): readonly Limits[] {
  if (row.fact) {
    const other = weights.find((one) => one !== row.fact?.weight)!;
    return [{ ...limits, facts: { ...limits.facts, [row.id as FactId]: other } }];
  }
  if (row.number) {
    const { typical } = row.number;
    return [0, typical / 2, typical * 2, 1e6, -1e6].map((value) => ({
      ...limits,
      numbers: { ...limits.numbers, [row.id as NumberId]: value },
    }));
  }
  const own = limits.lines[row.id as LineId];
  const changed = weight === null ? { caution: Infinity, stop: Infinity } : { [weight]: Infinity };
  return [{ ...limits, lines: { ...limits.lines, [row.id as LineId]: { ...own, ...changed } } }];
}

describe.each(thresholdRows.map((row) => [row.id, row] as const))('%s', (id, row) => {
  const own = pairs[id] ?? [];
  const answer = (one: Asked, by: Limits): Told => (id in oddsPairs ? tellWithOdds : tell)(one, by);

  test('has a garden past it and one within', () => {
    expect(own.length).toBeGreaterThan(0);
    if (row.fact || row.number || id.startsWith('over-fed') || id === 'nitrate at flowering')
      return;
    const covered = new Set(own.map(({ weight }) => weight));
    for (const weight of weights) if (row[weight]) expect(covered).toContain(weight);
  });

  test.each(own.map((pair) => [pair.typed, pair] as const))('%s', (_typed, pair) => {
    const { past, within } = pair;
    expect(differences(past, within)).toHaveLength(1);
    const isSeen = seen(row, pair);
    const told = { past: answer(past, limits), within: answer(within, limits) };
    expect(isSeen(told.past)).toBe(true);
    expect(isSeen(told.within)).toBe(false);
    const hangs = moved(row, pair).some((by) => {
      const now = answer(past, by);
      if (row.fact) return JSON.stringify(now.cautions) !== JSON.stringify(told.past.cautions);
      return !isSeen(now) || isSeen(answer(within, by));
    });
    expect(hangs).toBe(true);
  });
});
