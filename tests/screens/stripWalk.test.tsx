// @vitest-environment happy-dom
// The strips of Season by key: one stop of Tab, arrows from bed to bed and along a bed.
import { act } from 'react';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { SeasonPlace } from '../../app/screens/season/SeasonPlace';
import type { MowingsStore } from '../../app/store/contract';
import { bedPlace } from '../../app/words/seasonPlaceWords';
import { bigGarden } from '../bench/bigGarden';
import { sameThreadEngine, silentEngine, storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const sample = parsed.value;
/** from the gate outwards, as Season has them */
const namesOf = ({ beds }: Garden): readonly string[] =>
  beds.toSorted((one, other) => (one.steps ?? 1e9) - (other.steps ?? 1e9)).map(({ name }) => name);

const page = drawnPage();

async function show(garden: Garden, engine = sameThreadEngine()): Promise<MowingsStore> {
  const one = await storeWith(garden, { engine });
  one.store.setState({ about: { native: false, version: '0', folder: '', today: '2013-06-15' } });
  await one.time.pass(2000);
  await page.draw(one.store, <SeasonPlace />);
  return one.store;
}

const list = (): HTMLElement => page.place.querySelector('.strip-rows > ul')!;
const rows = (): HTMLElement[] => [...list().querySelectorAll<HTMLElement>(':scope > li')];
const pressable = (within: Element): HTMLElement[] => [
  ...within.querySelectorAll<HTMLElement>('button, summary'),
];
/** What Tab comes to of the strips. */
const stops = (): HTMLElement[] =>
  pressable(list()).filter((item) => item.getAttribute('tabindex') !== '-1');
const nameOf = (item: Element | null): string =>
  item?.getAttribute('aria-label') ?? item?.textContent ?? '';
const focused = (): string => nameOf(document.activeElement);
const heard = (): string => page.place.querySelector('.strips [aria-live]')!.textContent;
const focus = (item: HTMLElement): Promise<void> => act(async () => item.focus());
const press = (key: string, more: KeyboardEventInit = {}): Promise<void> =>
  act(async () => {
    document.activeElement!.dispatchEvent(
      new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more }),
    );
  });

describe('the strips of Season by key', () => {
  test('sixty beds are one stop, each called by name and place', async () => {
    const garden = bigGarden({ beds: 60, years: 1, seed: 5 });
    await show(garden, silentEngine);
    expect(rows()).toHaveLength(60);
    expect(stops().map(nameOf)).toEqual([`${namesOf(garden)[0]!}, 1 of 60`]);
    expect(rows().map((row) => nameOf(row.querySelector('.bed-open')))).toEqual(
      namesOf(garden).map((name, at) => bedPlace(name, at + 1, 60)),
    );
    expect(list().getAttribute('aria-label')).toBe('Beds, one after the other');
    const hint = document.getElementById(list().getAttribute('aria-describedby')!);
    expect(hint?.textContent).toMatch(/^Arrow keys go up and down from bed to bed/);
  });

  test('all that can be pressed on every strip is come to by arrows alone', async () => {
    await show(bigGarden({ beds: 14, years: 1, seed: 5 }));
    for (const fold of list().querySelectorAll('details')) fold.open = true;
    const all = pressable(list());
    // names, readings, plantings and folded remarks
    for (const kind of ['.bed-open', '.strip-value button', '.strip-planting', 'summary'])
      expect(list().querySelectorAll(kind).length, kind).toBeGreaterThan(0);
    const met = new Set<Element>();
    await focus(stops()[0]!);
    for (let row = 0; row < rows().length; row++) {
      expect(rows()[row]!.contains(document.activeElement)).toBe(true);
      met.add(document.activeElement!);
      for (let at = 1; at < pressable(rows()[row]!).length; at++) {
        await press('ArrowRight');
        met.add(document.activeElement!);
        expect(stops()).toEqual([document.activeElement]);
      }
      await press('Home');
      expect(document.activeElement).toBe(rows()[row]!.querySelector('.bed-open'));
      await press('ArrowDown');
    }
    expect(met.size).toBe(all.length);
    expect(all.every((item) => met.has(item))).toBe(true);
  });

  test('up and down keep to what one is at; the bed is said where its name is not come to', async () => {
    await show(sample);
    const names = namesOf(sample);
    await focus(stops()[0]!);
    await press('ArrowDown');
    expect(focused()).toBe(`${names[1]!}, 2 of 9`);
    expect(heard()).toBe('');
    await press('ArrowRight');
    expect(focused()).toMatch(new RegExp(`^15 June: .* ready, ${names[1]!}: why\\?$`));
    expect(heard()).toBe('');
    await press('ArrowDown');
    expect(focused()).toMatch(new RegExp(`ready, ${names[2]!}: why\\?$`));
    expect(heard()).toBe(`${names[2]!}, 3 of 9`);
    await press('End', { ctrlKey: true });
    expect(focused()).toMatch(new RegExp(`ready, ${names[8]!}: why\\?$`));
    await press('ArrowDown');
    expect(focused()).toMatch(new RegExp(`ready, ${names[8]!}: why\\?$`));
    await press('Home', { ctrlKey: true });
    await press('Home');
    expect(focused()).toBe(`${names[0]!}, 1 of 9`);
    await press('ArrowUp');
    await press('ArrowLeft');
    expect(focused()).toBe(`${names[0]!}, 1 of 9`);
  });

  test('from a planting down to a bed without one its name is come to', async () => {
    const bare = 2;
    const { id } = sample.beds.find(({ name }) => name === namesOf(sample)[bare])!;
    await show({
      ...sample,
      plantings: sample.plantings.filter(({ bedId }) => bedId !== id),
      events: sample.events.filter((event) => event.kind !== 'harvest'),
    });
    await focus(rows()[bare - 1]!.querySelector<HTMLElement>('.strip-planting')!);
    await press('ArrowDown');
    expect(focused()).toBe(`${namesOf(sample)[bare]!}, ${String(bare + 1)} of 9`);
  });

  test('a planting is moved with Shift and an arrow, then by arrows alone; Escape ends it', async () => {
    const store = await show(sample);
    const planting = rows()[0]!.querySelector<HTMLElement>('.strip-planting')!;
    const before = nameOf(planting);
    await focus(planting);
    await press('ArrowLeft');
    expect(nameOf(planting)).toBe(before);
    expect(document.activeElement).not.toBe(planting);
    await press('ArrowRight');
    expect(document.activeElement).toBe(planting);
    await press('ArrowRight', { shiftKey: true });
    await press('ArrowRight');
    await press('PageUp');
    await press('ArrowLeft');
    expect(document.activeElement).toBe(planting);
    expect(nameOf(planting)).not.toBe(before);
    const { garden } = store.getState();
    await press('Escape');
    expect(nameOf(planting)).toBe(before);
    expect(store.getState().garden).toBe(garden);
    await press('PageUp');
    await press('ArrowRight');
    await press('Enter');
    const startOf = (of: Garden | null): number =>
      dayOf(of!.plantings.find(({ id }) => id === planting.dataset['planting'])!.started);
    expect(startOf(store.getState().garden) - startOf(garden)).toBe(8);
  });

  test('what the stop is on may go: the stop stays on its bed, or is the first', async () => {
    await show(sample);
    const fourth = rows()[3]!;
    const planting = fourth.querySelector<HTMLElement>('.strip-planting')!;
    await focus(planting);
    expect(stops()).toEqual([planting]);
    await act(async () => planting.remove());
    expect(stops()).toEqual([fourth.querySelector('.bed-open')]);
    await act(async () => fourth.remove());
    expect(stops()).toEqual([rows()[0]!.querySelector('.bed-open')]);
  });

  test('what opens beneath a strip has stops of its own', async () => {
    await show(sample);
    await focus(rows()[0]!.querySelector<HTMLElement>('.strip-planting')!);
    await act(async () => (document.activeElement as HTMLElement).click());
    const fields = list().querySelector('.strip-fields')!;
    expect(pressable(fields).every((item) => item.getAttribute('tabindex') === null)).toBe(true);
    expect(fields.contains(document.activeElement)).toBe(true);
    await press('ArrowLeft');
    expect(fields.contains(document.activeElement)).toBe(true);
    await press('Escape');
    expect(stops()).toHaveLength(1);
    expect(stops()[0]!.matches('.strip-planting')).toBe(true);
  });
});
