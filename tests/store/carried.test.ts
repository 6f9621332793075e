// What a bed's seasons leave to the next ones: reckoned in the engine while its page shows it.
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { runSeason } from '../../app/core/season/season';
import { bedSeason } from '../../app/document/seasonInput';
import { bedSeasonAccounts, seasonAccountsWith } from '../../app/document/seasonsAccount';
import { carriedDoor } from '../../app/store/carried';
import { sameThreadEngine } from '../../app/worker/client';
import type { Engine, QuestionKind } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith, type TestStore } from './surroundings';

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
      if (fails && question.kind === 'carried')
        return Promise.resolve({ state: 'failed', reason: 'it broke' });
      return question.kind === 'carried'
        ? own.ask(question, options)
        : Promise.resolve({ state: 'superseded' });
    },
    stop: () => own.stop(),
  };
  return { engine, asked };
}

describe('what seasons leave to the next', () => {
  test('is asked for by the page of a bed alone, and comes to the same as on the spot', async () => {
    const { engine, asked } = countingEngine();
    const garden = exampleGarden();
    garden.beds[0]!.knownSince = '2019-03-01';
    const { store, time } = await storeWith(garden, { engine });
    await time.pass(1_000);
    expect(asked).not.toContain('carried');
    expect(store.getState().carried).toBe(null);
    store.getState().openDoor(carriedDoor('bed-1'));
    expect(store.getState().carried).toMatchObject({ state: 'working', ends: [] });
    await until(time, () => store.getState().carried?.state === 'ready');
    const { ends } = store.getState().carried!;
    const input = bedSeason(garden, 'bed-1', dayOf('2021-06-20'));
    const result = runSeason(input);
    const told = seasonAccountsWith(garden, input, result, ends);
    expect(told).toEqual(bedSeasonAccounts(garden, input, result));
    expect(told.map(({ expectedNextSeason }) => expectedNextSeason !== null)).toEqual([
      false,
      true,
      true,
    ]);
  });

  test('is reckoned anew after a change, the last answer staying; not when the page is left', async () => {
    const { engine, asked } = countingEngine();
    const { store, time } = await storeWith(exampleGarden(), { engine });
    const first = store.getState().openDoor(carriedDoor('bed-1'));
    await until(time, () => store.getState().carried?.state === 'ready');
    const { ends } = store.getState().carried!;
    store.getState().editGarden({ name: 'Another' });
    expect(store.getState().carried).toMatchObject({ state: 'working', ends });
    await until(time, () => store.getState().carried?.state === 'ready');
    first.close();
    const second = store.getState().openDoor(carriedDoor('bed-2'));
    expect(store.getState().carried).toMatchObject({ bedId: 'bed-2', ends: [] });
    await until(time, () => store.getState().carried?.state === 'ready');
    second.close();
    store.getState().editGarden({ name: 'A third' });
    await time.pass(1_000);
    expect(store.getState().carried).toBe(null);
    expect(asked.filter((kind) => kind === 'carried')).toHaveLength(3);
  });

  test('that it failed is told with the reason', async () => {
    const { engine } = countingEngine(true);
    const { store, time } = await storeWith(exampleGarden(), { engine });
    store.getState().openDoor(carriedDoor('bed-1'));
    await until(time, () => store.getState().carried?.state === 'failed');
    expect(store.getState().carried).toMatchObject({ reason: 'it broke', ends: [] });
  });
});
