// A garden of five answers, its bed empty until next May: the plan beside "all on the nearest bed".
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { unitsOf } from '../../app/amounts/unitSystem';
import { dayOf } from '../../app/core/days';
import type { Solver } from '../../app/core/plan/linearProgramme';
import { makePlan } from '../../app/core/plan/makePlan';
import { planNamesOf } from '../../app/document/planNames';
import { planQuestion } from '../../app/document/planQuestion';
import type { Garden } from '../../app/document/schema';
import { ownGarden } from '../../app/document/startGarden';
import { climates } from '../../app/tables/climates';
import { effectWords } from '../../app/words/planWorth';
import { steadySolver } from '../solve/steadySolver';

vi.setConfig({ testTimeout: 60_000 });

const today = '2026-11-26';
const own = (): Garden => {
  const garden = ownGarden(
    {
      gardenName: 'Ours',
      lawnAreaM2: 300,
      container: { name: 'bag', plural: 'bags', litres: 50 },
      bed: { name: 'Bean bed', areaM2: 4 },
      crop: { cropId: 'snap_bean_bush', started: '2027-05-15', how: 'sown' },
      climate: { kind: 'station', stationId: climates[0]!.id },
      shownUnits: 'metric',
    },
    today,
  );
  if (!garden) throw new Error('no such climate');
  return garden;
};
let solve: Solver;
beforeAll(async () => {
  solve = await steadySolver();
});
const planOf = (garden: Garden) => {
  const made = makePlan(planQuestion(garden, dayOf(today)), solve);
  if (!made.ok) throw new Error(made.error.kind);
  return made.value;
};

describe('all on the nearest bed, beside the plan of a new garden', () => {
  test('is no way at all while nobody said what was put on the lawn', () => {
    const { effects } = planOf(own());
    expect(effects.allOnNearest.bedId).toBeNull();
    // the plan is no worse than it by its own figures
    expect(effects.allOnNearest.ground).toBe(effects.doNothing.ground);
  });

  test('where it hides more ground than the plan may, what speaks against it is said', () => {
    const garden = own();
    const mown: Garden = {
      ...garden,
      lawns: garden.lawns.map((lawn) => ({ ...lawn, treatment: { answer: 'nothing' } })),
      mowings: [
        {
          id: 'm1',
          lawnId: 'lawn-1',
          date: today,
          amount: {
            text: '2 bags',
            quantity: { kind: 'containers', count: 2, containerId: 'container-1' },
            certainty: 'plain',
          },
          wetness: 'damp',
          kind: 'ordinary',
          rest: { to: 'undecided' },
        } as Garden['mowings'][number],
      ],
    };
    const { effects } = planOf(mown);
    // 100 L on 4 m2 lie 25 mm thick: past the stop for one layer (limits, "layer just cut")
    expect(effects.allOnNearest.cautions).toContainEqual(
      expect.objectContaining({ kind: 'layer depth', weight: 'stop' }),
    );
    expect(effects.allOnNearest.ground).toBeLessThan(effects.plan.ground);
    expect(effectWords(effects, planNamesOf(mown, unitsOf('metric')))).toMatch(
      /nearest: .*but a stop speaks against it, which these sums do not count/,
    );
  });
});
