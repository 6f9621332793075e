// @vitest-environment happy-dom
// A day that cannot be taken holds its form back: the day that stood there before was never meant.
import { act, type ReactNode } from 'react';
import { expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import { EventDialog } from '../../app/screens/beds/EventDialog';
import { PlantingDialog } from '../../app/screens/beds/PlantingDialog';
import { ThermometerDialog } from '../../app/screens/garden/ThermometerDialog';
import { TreatmentQuestion } from '../../app/screens/week/TreatmentDialog';
import { silentEngine, storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const sample = parsed.value;
const bed = sample.beds[0]!;
const planting = sample.plantings.find(({ bedId }) => bedId === bed.id)!;

const page = drawnPage();

const field = (label: string): HTMLInputElement => {
  const words = [...page.place.querySelectorAll('label')].find(
    ({ textContent }) => textContent?.startsWith(label) ?? false,
  );
  return page.place.querySelector<HTMLInputElement>(`#${CSS.escape(words!.htmlFor)}`)!;
};
const button = (words: string): HTMLButtonElement =>
  [...page.place.querySelectorAll('button')].find(({ textContent }) => textContent === words)!;
const type = (into: HTMLInputElement, text: string): Promise<void> =>
  act(async () => {
    into.focus();
    const setter = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
    setter.call(into, text);
    into.dispatchEvent(new Event('input', { bubbles: true }));
  });
const press = async (words: string): Promise<void> => {
  await act(async () => button(words).focus());
  await act(async () => button(words).click());
};

const cases: readonly (readonly [
  what: string,
  part: (onClose: () => void) => ReactNode,
  keep: string,
  prepare: () => Promise<void>,
])[] = [
  [
    'watering',
    (onClose) => <EventDialog bed={bed} kind="water" event={null} onClose={onClose} />,
    'Write it down',
    () => type(field('How much?'), '10 mm'),
  ],
  [
    'a planting',
    (onClose) => <PlantingDialog bedId={bed.id} planting={planting} onClose={onClose} />,
    'Keep the change',
    async () => undefined,
  ],
  [
    'the thermometer',
    (onClose) => <ThermometerDialog onClose={onClose} />,
    'Keep it',
    () => type(field('Lowest'), '8'),
  ],
  [
    'what was put on a lawn',
    (onClose) => (
      <TreatmentQuestion
        of={{ lawnId: sample.lawns[1]!.id }}
        onClose={onClose}
        onAnswered={onClose}
      />
    ),
    'Keep this answer',
    () =>
      act(async () =>
        [...page.place.querySelectorAll<HTMLInputElement>('input[type=radio]')][1]!.click(),
      ),
  ],
];

test.each(cases)('%s: kept only once its day is one', async (_what, part, keep, prepare) => {
  const { store } = await storeWith(sample, { engine: silentEngine });
  store.setState({ about: { native: false, version: '0', folder: '', today: '2013-06-15' } });
  let closed = 0;
  await page.draw(
    store,
    part(() => closed++),
  );
  await prepare();
  const { garden } = store.getState();
  const day = page.place.querySelector<HTMLInputElement>('.field-date input')!;
  const before = day.value;
  await type(day, 'some day');
  await press(keep);
  expect(document.activeElement === day).toBe(true);
  expect(day.getAttribute('aria-invalid')).toBe('true');
  expect(day.value).toBe('some day');
  expect(closed).toBe(0);
  expect(store.getState().garden === garden).toBe(true);

  // what was there before is a day, and now it is meant
  await type(day, before);
  await press(keep);
  expect(day.getAttribute('aria-invalid')).toBeNull();
  expect(document.activeElement?.textContent).toBe(keep);
});
