// The ranges of the season to come: imagined while it is shown, stopped and gone on with.
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { startNextSeason } from '../../app/core/season/draws/nextSeasonDraws';
import { nextSeasonQuestions } from '../../app/document/nextSeasonQuestion';
import { comingRangesDoor } from '../../app/store/comingRanges';
import { quickDraws, wholeDraws, wholeDrawsPauseMilliseconds } from '../../app/store/surroundings';
import { sameThreadEngine } from '../../app/worker/client';
import type { Engine, QuestionOf } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith, type TestStore } from './surroundings';

type Asked = QuestionOf<'next season draws'>;

/**
 * Answers nothing but what is tested here, with a tenth of the draws; or fails at it, or gets no
 * further than the first bed of the first question.
 */
function engineOf({
  fails = false,
  halts = false,
}: { readonly fails?: boolean; readonly halts?: boolean } = {}) {
  const own = sameThreadEngine();
  const asked: Asked[] = [];
  const engine: Engine = {
    ask: async (question, options) => {
      if (question.kind !== 'next season draws') return { state: 'superseded' };
      const whole = question as unknown as Asked;
      asked.push(whole);
      if (fails) return { state: 'failed', reason: 'it broke' };
      const isHalted = halts && asked.length === 1;
      const beds = whole.beds
        .slice(0, isHalted ? 1 : undefined)
        .map((bed) => ({ ...bed, count: bed.count / 10 }));
      const few: Asked = { ...whole, beds };
      const counted = <Range extends { readonly count: number }>(range: Range): Range => ({
        ...range,
        count: range.count * 10,
      });
      const settled = await own.ask<'next season draws'>(few, {
        ...options,
        onProgress: ({ nextSeason, ...far }) =>
          options?.onProgress?.({ ...far, ...(nextSeason && { nextSeason: counted(nextSeason) }) }),
      });
      if (isHalted)
        await new Promise((resolve) => options?.signal?.addEventListener('abort', resolve));
      if (settled.state !== 'answered') return settled;
      return { state: 'answered', answer: settled.answer.map(counted) as never };
    },
    stop: () => own.stop(),
  };
  return { engine, asked };
}

const until = async (time: TestStore['time'], isSo: () => boolean): Promise<void> => {
  for (let turn = 0; turn < 4000 && !isSo(); turn++) await time.pass(10);
  expect(isSo()).toBe(true);
};
const bedIds = exampleGarden().beds.map(({ id }) => id);
const askedOf = ({ beds }: Asked) => beds.map(({ input, count }) => [input.bedId, count]);

async function opened(options: Parameters<typeof engineOf>[0] = {}) {
  const { engine, asked } = engineOf(options);
  const { store, time } = await storeWith(exampleGarden(), { engine });
  const ranges = () => store.getState().comingRanges!;
  await time.pass(1_000);
  expect(asked).toEqual([]);
  expect(store.getState().comingRanges).toBeNull();
  const door = store.getState().openDoor(comingRangesDoor);
  expect(ranges()).toMatchObject({ state: 'working', done: 0, beds: {} });
  return { store, time, asked, ranges, door };
}

describe('the ranges of the season to come', () => {
  test('are imagined while they are shown: a hundred first, then a thousand', async () => {
    const { time, asked, ranges, door, store } = await opened();
    await until(time, () => Object.keys(ranges().beds).length === bedIds.length);
    expect(asked.map(askedOf)).toEqual([bedIds.map((id) => [id, quickDraws])]);
    await time.pass(wholeDrawsPauseMilliseconds);
    await until(time, () => ranges().state === 'ready');
    expect(asked.map(askedOf)[1]).toEqual(bedIds.map((id) => [id, wholeDraws]));
    for (const id of bedIds) expect(ranges().beds[id]!.count).toBe(wholeDraws);
    door.close();
    expect(store.getState().comingRanges).toBeNull();
    store.getState().editGarden({ name: 'Another' });
    await time.pass(5_000);
    expect(asked).toHaveLength(2);
  });

  test('are those of the engine, asked of the garden as it is', async () => {
    const { time, ranges } = await opened();
    await until(time, () => ranges().state === 'ready');
    const today = dayOf('2021-06-20');
    const run = startNextSeason(nextSeasonQuestions(exampleGarden(), today)(bedIds[0]!, 100));
    while (!run.isDone) run.next();
    // the engine of this test draws a tenth
    expect(ranges().beds[bedIds[0]!]!.high).toEqual(run.answer().high);
  });

  test('after a change those beds are asked about anew that are other than before', async () => {
    const { time, asked, ranges, store } = await opened();
    await until(time, () => ranges().state === 'ready');
    const planting = exampleGarden().plantings[0]!;
    const kept = bedIds.filter((id) => id !== planting.bedId);
    const before = ranges().beds;
    expect(store.getState().editPlanting(planting.id, { share: 0.4 }).ok).toBe(true);
    // what stood there was of another planting: no range rather than a wrong one
    expect(Object.keys(ranges().beds)).toEqual(kept);
    await until(time, () => ranges().state === 'ready');
    expect(asked.slice(2).map(askedOf)).toEqual([
      [[planting.bedId, quickDraws]],
      [[planting.bedId, wholeDraws]],
    ]);
    for (const id of kept) expect(ranges().beds[id]).toBe(before[id]);
    expect(ranges().beds[planting.bedId]!.high).not.toEqual(before[planting.bedId]!.high);
  });

  test('can be stopped with what has come, and gone on with where they were', async () => {
    const { time, asked, ranges, door, store } = await opened({ halts: true });
    await until(time, () => Object.keys(ranges().beds).length === 1);
    const [first] = Object.keys(ranges().beds);
    door.stop();
    expect(ranges()).toMatchObject({ state: 'idle', isStopped: true });
    await time.pass(20_000);
    expect(asked).toHaveLength(1);
    expect(Object.keys(ranges().beds)).toEqual([first]);
    // a change while they are stopped asks nothing, and leaves no range that is none any more
    store.getState().editGarden({ latitudeDegrees: 30 });
    await time.pass(1_000);
    expect(ranges().beds).toEqual({});
    expect(asked).toHaveLength(1);
    store.getState().undo();
    door.goOn();
    await until(time, () => ranges().state === 'ready');
    expect(ranges().isStopped).toBe(false);
    expect(asked.slice(1).map(askedOf)).toEqual([
      bedIds.map((id) => [id, quickDraws]),
      bedIds.map((id) => [id, wholeDraws]),
    ]);
  });

  test('that they failed is told with the reason, and they can be tried again', async () => {
    const { time, asked, ranges, door } = await opened({ fails: true });
    await until(time, () => ranges().state === 'failed');
    expect(ranges()).toMatchObject({ reason: 'it broke', beds: {} });
    door.goOn();
    await until(time, () => asked.length === 2 && ranges().state === 'failed');
  });
});
