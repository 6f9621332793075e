import { describe, expect, test } from 'vitest';
import { metricUnits } from '../../app/amounts/unitSystem';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Caution, NitrogenState } from '../../app/core/season/verdict';
import type { BedResults } from '../../app/store/contract';
import { hasRoom, layAdvice } from '../../app/screens/week/layAdvice';
import { quietGroups } from '../../app/screens/week/quietGroups';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('the sample does not open');
const garden = parsed.value;
const far = garden.beds.find(({ name }) => name === 'Far bed')!;
const mowing = garden.mowings.find(({ rest }) => rest.to === 'undecided')!;

const results = (
  verdict: Partial<BedResults['verdict']> & { state: NitrogenState },
  cautions: readonly Partial<Caution>[] = [],
  plantings: readonly { id: string; startDay: number; clearingDay: number | null }[] = [],
  progress = 1,
): BedResults =>
  ({
    verdict: { room: null, coverState: 'good', excessClass: 'fruit', ...verdict },
    cautions,
    input: { today: 100, plantings },
    // plants that are tall by the clock of their crop
    season: {
      firstDay: 0,
      days: 200,
      plantings: plantings.map(({ id }) => ({
        id,
        progress: Array.from({ length: 200 }, () => progress),
      })),
    },
  }) as unknown as BedResults;

describe('what the button fills in', () => {
  test('what the caution advises, hoed in, in the gardener’s bags', () => {
    const short = { kind: 'short', detail: { mendCount: 1.5, mendOne: 'bag', mendMany: 'bags' } };
    expect(
      layAdvice(garden, far, results({ state: 'short', room: 40 }, [short as never]), mowing, {
        units: metricUnits,
      }),
    ).toEqual({ amount: '1 1/2 bags', placement: 'hoed' });
  });

  test('else a thin layer: 8 mm on 9 m2 are 72 L, 1 1/2 bags of 45 L (threshold table: note from 8 mm)', () => {
    expect(
      layAdvice(garden, far, results({ state: 'about right', room: 40 }), mowing, {
        units: metricUnits,
      }),
    ).toEqual({ amount: '1 1/2 bags', placement: 'laid' });
  });

  test('no more than there is room for: a bag holds 77 g N (sampleGarden.ts)', () => {
    const room = (0.55 * 77) / far.areaM2;
    expect(
      layAdvice(garden, far, results({ state: 'about right', room }), mowing, {
        units: metricUnits,
      })?.amount,
    ).toBe('1/2 bag');
  });

  test('nothing where a quarter of a bag is too much', () => {
    const room = (0.2 * 77) / far.areaM2;
    expect(hasRoom(garden, far, results({ state: 'about right', room }))).toBe(false);
    expect(
      layAdvice(garden, far, results({ state: 'about right', room }), mowing, {
        units: metricUnits,
      }),
    ).toBeNull();
  });
});

describe('beds on which nothing presses', () => {
  const groupOf = (one: BedResults) => {
    const groups = quietGroups(garden, [far], { [far.id]: one }, null);
    return Object.entries(groups).find(([, beds]) => beds.length > 0)?.[0];
  };

  test('could take some, where there is room', () => {
    expect(groupOf(results({ state: 'about right', room: 40 }))).toBe('couldTake');
    expect(groupOf(results({ state: 'enough for now', room: 40 }))).toBe('leave');
  });

  test('a bed of today’s plan stands as that; where the plan lays none no room is offered', () => {
    const wanting = results({ state: 'about right', room: 40 });
    const under = (plan: Parameters<typeof quietGroups>[3]) => {
      const groups = quietGroups(garden, [far], { [far.id]: wanting }, plan);
      return Object.entries(groups).find(([, beds]) => beds.length > 0)?.[0];
    };
    const leftOut = (kind: string) => ({
      lines: [],
      leftOut: [{ bedId: far.id, reason: { kind }, from: null } as never],
    });
    expect(under({ lines: [{ bedId: far.id } as never], leftOut: [] })).toBe('planned');
    for (const kind of ['caution', 'better elsewhere', 'pinned', 'enough'])
      expect(under(leftOut(kind)), kind).toBe('leave');
    // a walk too many is no harm to the bed
    expect(under(leftOut('beds a day'))).toBe('couldTake');
  });

  test('fed and bare wants covering; a cover crop covers itself', () => {
    expect(groupOf(results({ state: 'enough to the end', room: 0, coverState: 'bare' }))).toBe(
      'toCover',
    );
    expect(
      groupOf(results({ state: 'about right', room: 0, coverState: 'bare', excessClass: 'cover' })),
    ).toBe('leave');
    expect(groupOf(results({ state: 'enough to the end', room: 0 }))).toBe('leave');
  });

  test('a crop past its end is finished, unless another still grows', () => {
    const overdue = { kind: 'overdue', date: 90, detail: { plantingId: 'a', crop: 'Lettuce' } };
    const standing = { id: 'a', startDay: 10, clearingDay: null };
    const one = results({ state: 'about right', room: 40 }, [overdue as never], [standing]);
    expect(groupOf(one)).toBe('finished');
    const other = { id: 'b', startDay: 50, clearingDay: null };
    const two = results({ state: 'about right', room: 40 }, [overdue as never], [standing, other]);
    expect(groupOf(two)).toBe('couldTake');
  });

  test('on seedlings not a hand high nothing is to be laid, room or not (threshold table: hand high planted)', () => {
    const planted = { id: 'a', startDay: 95, clearingDay: null, sown: false, crop: {} };
    const verdict = { state: 'about right', room: 40, coverState: 'bare' } as const;
    expect(groupOf(results(verdict, [], [planted], 0))).toBe('leave');
    expect(groupOf(results(verdict, [], [planted], 1))).toBe('couldTake');
  });
});
