// The season after this one: every bed's run gone on with, while it is shown.
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import { dayKinds } from '../../app/core/season/input';
import { nextSeason } from '../../app/core/season/nextSeason';
import { runSeason } from '../../app/core/season/season';
import { bedSeason } from '../../app/document/seasonInput';
import { sameThreadEngine } from '../../app/worker/client';
import type { Engine, QuestionKind } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith, type TestStore } from './surroundings';

const today = dayOf('2021-06-20');
const until = async (time: TestStore['time'], isSo: () => boolean): Promise<void> => {
  for (let turn = 0; turn < 400 && !isSo(); turn++) await time.pass(10);
  expect(isSo()).toBe(true);
};

function countingEngine(fails = false): { engine: Engine; asked: QuestionKind[] } {
  const own = sameThreadEngine();
  const asked: QuestionKind[] = [];
  const engine: Engine = {
    ask: (question, options) => {
      asked.push(question.kind);
      if (question.kind !== 'next season') return Promise.resolve({ state: 'superseded' });
      return fails
        ? Promise.resolve({ state: 'failed', reason: 'it broke' })
        : own.ask(question, options);
    },
    stop: () => own.stop(),
  };
  return { engine, asked };
}

describe('a bed through the season to come', () => {
  const garden = exampleGarden();
  const bedId = garden.beds[0]!.id;

  test('begins with what this season leaves, to the milligram, and is imagined throughout', () => {
    const coming = nextSeason(bedSeason(garden, bedId, today, { throughNextSeason: true }));
    const now = runSeason(bedSeason(garden, bedId, today));
    expect(coming.start.mineralTop).toBeCloseTo(now.pools.mineralTop.at(-1)!, 9);
    expect(textFromDay(coming.firstDay)).toBe('2022-01-01');
    expect(coming.days).toBe(365);
    expect(coming.pools.mineralTop).toHaveLength(365);
    expect(new Set(coming.kind)).toEqual(new Set([dayKinds.indexOf('imagined')]));
  });

  test('feels what is planned for it', () => {
    const like = garden.plantings.find((planting) => planting.bedId === bedId)!;
    const planned = {
      ...garden,
      plantings: [
        ...garden.plantings,
        {
          ...like,
          id: 'coming',
          cropId: 'tomato',
          started: '2022-05-20',
          firstHarvest: null,
          cleared: null,
          share: 1,
        },
      ],
    };
    const of = (one: typeof garden) =>
      nextSeason(bedSeason(one, bedId, today, { throughNextSeason: true }));
    const at = dayOf('2022-08-15') - dayOf('2022-01-01');
    expect(of(planned).pools.mineralTop[at]!).toBeLessThan(of(garden).pools.mineralTop[at]! - 0.5);
  });

  test('a run that ends with this season has none', () => {
    expect(() => nextSeason(bedSeason(garden, bedId, today))).toThrow(RangeError);
  });
});

describe('the season to come in the store', () => {
  test('is asked for while it is shown, anew after a change, and not when it was left', async () => {
    const { engine, asked } = countingEngine();
    const { store, time } = await storeWith(exampleGarden(), { engine });
    const count = () => asked.filter((kind) => kind === 'next season').length;
    await time.pass(1_000);
    expect(count()).toBe(0);
    store.getState().wantComingSeason();
    await until(time, () => store.getState().comingSeason.state === 'ready');
    const { beds } = store.getState().comingSeason;
    expect(Object.keys(beds)).toEqual(exampleGarden().beds.map(({ id }) => id));
    store.getState().editGarden({ name: 'Another' });
    expect(store.getState().comingSeason).toMatchObject({ state: 'working', beds });
    await until(time, () => store.getState().comingSeason.state === 'ready');
    expect(count()).toBe(2);
    store.getState().leaveComingSeason();
    store.getState().editGarden({ name: 'A third' });
    await time.pass(1_000);
    expect(count()).toBe(2);
    expect(store.getState().comingSeason).toMatchObject({ state: 'idle', beds: {} });
  });

  test('that it failed is told with the reason', async () => {
    const { engine } = countingEngine(true);
    const { store, time } = await storeWith(exampleGarden(), { engine });
    store.getState().wantComingSeason();
    await until(time, () => store.getState().comingSeason.state === 'failed');
    expect(store.getState().comingSeason).toMatchObject({ reason: 'it broke', beds: {} });
  });
});
