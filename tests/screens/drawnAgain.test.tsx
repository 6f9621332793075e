// @vitest-environment happy-dom
// How often what is heavy is drawn: counts, which hold on every machine, and no times.
import { act } from 'react';
import { describe, expect, test, vi } from 'vitest';
import { BedPage } from '../../app/screens/beds/BedPage';
import { ThisWeek } from '../../app/screens/week/ThisWeek';
import type { Engine, Question } from '../../app/worker/protocol';
import { bigGarden } from '../bench/bigGarden';
import { sameThreadEngine, storeWith, type TestStore } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const { drawn, counted } = vi.hoisted(() => {
  const names: string[] = [];
  return {
    drawn: names,
    counted: (name: string) => () => {
      names.push(name);
      return null;
    },
  };
});
vi.mock('../../app/charts/season/Chart', () => ({ SeasonChart: counted('season') }));
vi.mock('../../app/charts/cover/Chart', () => ({ CoverChart: counted('cover') }));
vi.mock('../../app/charts/ledger/Chart', () => ({ LedgerChart: counted('ledger') }));
vi.mock('../../app/charts/section/Chart', () => ({ SectionChart: counted('section') }));
vi.mock('../../app/screens/week/PastMowings', () => ({ PastMowings: counted('past') }));
vi.mock('../../app/screens/week/water/Water', () => ({ Water: counted('water') }));
vi.mock('../../app/screens/week/plan/PlanSection', () => ({ PlanSection: counted('plan') }));
vi.mock('../../app/screens/why/StateSays', () => ({
  StateSays: ({ bed }: { readonly bed: { readonly id: string } }) => {
    drawn.push(`says ${bed.id}`);
    return null;
  },
}));

const beds = 12;
const page = drawnPage();

/** A garden whose beds are reckoned; imagined seasons are handed out by the test. */
async function opened(): Promise<TestStore & { readonly imagine: (bedIds: string[]) => void }> {
  const inner = sameThreadEngine();
  let tell: (bedIds: string[]) => void = () => undefined;
  const engine: Engine = {
    ask: ((asking: Question, options: Parameters<Engine['ask']>[1]) => {
      if (asking.kind !== 'draws') return inner.ask(asking, options);
      tell = (bedIds) => {
        for (const bedId of bedIds)
          options?.onProgress?.({ done: 0, of: 1, bed: imagined(bedId) as never });
      };
      return new Promise(() => undefined);
    }) as Engine['ask'],
    stop: () => inner.stop(),
  };
  const one = await storeWith(bigGarden({ beds, years: 1, seed: 3 }), { engine });
  await one.time.pass(2000);
  return { ...one, imagine: (bedIds) => tell(bedIds) };
}
const imagined = (bedId: string) => ({
  bedId,
  count: 100,
  effectiveCount: 100,
  states: {},
  ratio: null,
  overFeeding: null,
  nitrate: [],
  ratioDots: null,
  mattersMost: { ratio: [], needMet: [], fixed: [], leached: [] },
  needMet: { low: 0, middle: 0, high: 0 },
  fixed: { low: 0, middle: 0, high: 0 },
  leached: { low: 0, middle: 0, high: 0 },
});

async function show(one: TestStore, part: React.ReactNode): Promise<void> {
  await page.draw(one.store, part);
  await act(() => one.time.pass(2000));
  drawn.length = 0;
}
const times = (name: string): number => drawn.filter((each) => each === name).length;

/** Takes away a layer of a bed. */
const edit = async ({ store, time }: TestStore, bedId: string): Promise<void> => {
  const layer = store.getState().garden!.applications.find((one) => one.bedId === bedId)!;
  await act(async () => void store.getState().deleteApplication(layer.id));
  await act(() => time.pass(1000));
};

describe('the page of a bed', () => {
  test('an edit of it draws each of its charts once, the season again when its past has come', async () => {
    const one = await opened();
    one.store.setState({ place: 'beds', openBedId: 'bed-5' });
    await show(one, <BedPage bedId="bed-5" />);
    await edit(one, 'bed-5');
    for (const chart of ['section', 'cover', 'ledger']) expect(times(chart), chart).toBe(1);
    expect(times('season')).toBeGreaterThan(0);
    expect(times('season')).toBeLessThanOrEqual(2);
  });

  test('an edit of another bed draws none of them', async () => {
    const one = await opened();
    await show(one, <BedPage bedId="bed-5" />);
    await edit(one, 'bed-7');
    for (const chart of ['season', 'cover', 'ledger']) expect(times(chart), chart).toBe(0);
  });
});

describe('this week', () => {
  const type = async (text: string): Promise<void> => {
    const line = page.place.querySelector<HTMLInputElement>('.log-line input')!;
    const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
    for (let letters = 1; letters <= text.length; letters++)
      await act(async () => {
        write.call(line, text.slice(0, letters));
        line.dispatchEvent(new Event('input', { bubbles: true }));
      });
    expect(line.value).toBe(text);
  };

  test('letters of a mowing draw nothing besides their own line', async () => {
    const one = await opened();
    await show(one, <ThisWeek />);
    await type('2 bags, damp');
    expect(page.place.querySelector('.figures')).not.toBeNull();
    expect(drawn).toEqual([]);
  });

  test('the imagined seasons of one bed draw no other bed, and no mowing, water or plan', async () => {
    const one = await opened();
    await show(one, <ThisWeek />);
    await act(async () => one.imagine(['bed-5']));
    await act(() => one.time.pass(1000));
    expect(one.store.getState().draws['bed-5']).toBeDefined();
    expect(drawn.filter((name) => name !== 'says bed-5')).toEqual([]);
  });

  test('those of many beds that come together are shown together', async () => {
    const one = await opened();
    await show(one, <ThisWeek />);
    let changes = 0;
    one.store.subscribe((state, before) => {
      if (state.draws !== before.draws) changes += 1;
    });
    const all = one.store.getState().garden!.beds.map(({ id }) => id);
    await act(async () => one.imagine(all));
    await act(() => one.time.pass(1000));
    expect(Object.keys(one.store.getState().draws)).toHaveLength(beds);
    expect(changes).toBe(2);
  });
});
