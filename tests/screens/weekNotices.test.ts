import { describe, expect, test } from 'vitest';
import { weekNotices } from '../../app/screens/week/weekNotices';
import type { Caution, NitrogenState, Weight } from '../../app/core/season/verdict';
import type { Garden } from '../../app/document/schema';
import type { BedResults } from '../../app/store/contract';

interface Said {
  readonly state: NitrogenState;
  readonly weights?: readonly Weight[];
  readonly ratio?: number | null;
  readonly steps?: number | null;
}

function notices(said: Readonly<Record<string, Said>>) {
  const garden = {
    beds: Object.entries(said).map(([id, { steps = null }]) => ({ id, name: id, steps })),
  } as unknown as Garden;
  const results = Object.fromEntries(
    Object.entries(said).map(([id, { state, weights = [], ratio = 1 }]) => [
      id,
      {
        bedId: id,
        verdict: { state, ratio },
        cautions: weights.map((weight) => ({ weight }) as Caution),
      } as unknown as BedResults,
    ]),
  );
  const found = weekNotices(garden, results);
  return {
    order: found.notices.map(({ bed }) => bed.id),
    quiet: found.quiet.map(({ id }) => id),
    notices: found.notices,
  };
}

describe('what stands first this week', () => {
  test('a stop before a caution before a state alone', () => {
    const { order } = notices({
      state: { state: 'short' },
      caution: { state: 'about right', weights: ['caution'] },
      stop: { state: 'about right', weights: ['stop', 'note'] },
    });
    expect(order).toEqual(['stop', 'caution', 'state']);
  });

  test('among equals the bed to mend before the hungry one, then the farther from right', () => {
    const { order } = notices({
      hungry: { state: 'short', weights: ['caution'], ratio: 0.2 },
      'hungry, nearly met': { state: 'short', weights: ['caution'], ratio: 0.8 },
      'over-fed': { state: 'over-fed', weights: ['caution'], ratio: 1.4 },
    });
    expect(order).toEqual(['over-fed', 'hungry', 'hungry, nearly met']);
  });

  test('among the very same the nearer to the gate', () => {
    const { order } = notices({
      far: { state: 'short', weights: ['caution'], steps: 60 },
      near: { state: 'short', weights: ['caution'], steps: 5 },
    });
    expect(order).toEqual(['near', 'far']);
  });

  test('a note alone is no reason to interrupt a Saturday', () => {
    const { order, quiet } = notices({
      fed: { state: 'enough to the end', weights: ['note'] },
      right: { state: 'about right' },
      short: { state: 'short', weights: ['note'] },
    });
    expect(order).toEqual(['short']);
    expect(quiet).toEqual(['fed', 'right']);
  });

  test('the strongest stands with the bed, the rest are counted', () => {
    const [one] = notices({
      bed: { state: 'short', weights: ['caution', 'caution', 'note'] },
    }).notices;
    expect(one?.cautions).toHaveLength(1);
    expect(one?.more).toBe(2);
  });

  test('a second stop stands there too, and no third', () => {
    const three = notices({ bed: { state: 'over-fed', weights: ['stop', 'stop', 'stop'] } });
    expect([three.notices[0]?.cautions.length, three.notices[0]?.more]).toEqual([2, 1]);
  });

  test('both stops stand with the bed, the rest are counted', () => {
    const [one] = notices({
      bed: { state: 'over-fed', weights: ['stop', 'stop', 'caution', 'note'] },
    }).notices;
    expect(one?.cautions).toHaveLength(2);
    expect(one?.more).toBe(2);
  });

  test('a bed that was not reckoned yet is in neither list', () => {
    const garden = { beds: [{ id: 'new', name: 'new', steps: null }] } as unknown as Garden;
    expect(weekNotices(garden, {})).toEqual({ notices: [], quiet: [] });
  });
});
