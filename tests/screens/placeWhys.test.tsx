// @vitest-environment happy-dom
// What stands behind the figures of Season, Lawn, Garden and Tables, and of phosphorus and potassium.
import { act, type ReactNode } from 'react';
import { describe, expect, test } from 'vitest';
import { unitsOf } from '../../app/amounts/unitSystem';
import { growthTold } from '../../app/charts/lawn/growthTold';
import { dayOf, seasonEnd, seasonStart } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { heapAccount } from '../../app/document/heapAccount';
import { lawnCurve } from '../../app/document/lawnCurve';
import { materialById } from '../../app/document/materialValues';
import { mineralAccount } from '../../app/document/mineralAccount';
import { mixtureOf, type MixturePart } from '../../app/document/mixture';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { MineralAccount } from '../../app/screens/beds/MineralAccount';
import { OwnGarden } from '../../app/screens/first/OwnGarden';
import { stockLine } from '../../app/screens/garden/stockLine';
import { growthIn, growthShown } from '../../app/screens/lawn/growthShown';
import { SeasonPlace } from '../../app/screens/season/SeasonPlace';
import { bedStrips } from '../../app/screens/season/stripsData';
import type { Shown } from '../../app/screens/shown';
import { findingFigures } from '../../app/screens/why/findingWhys';
import { growthFigures } from '../../app/screens/why/lawnWhys';
import { mineralWhy } from '../../app/screens/why/mineralWhys';
import { foundWhy, mixtureWhy, waterWhy } from '../../app/screens/why/mixWhys';
import { putOnFigures, shrunkFigures, storeFigures } from '../../app/screens/why/stockWhys';
import { readyFigure, readyOnDayWhy } from '../../app/screens/why/stripWhys';
import type { BedDraws } from '../../app/store/contract';
import { heapRows } from '../../app/tables/heap';
import { limits } from '../../app/tables/thresholds';
import { metricChartUnits } from '../../app/words/chartUnits';
import { estimateWithUnit, twoFigures } from '../../app/words/figures';
import { lawnFinding } from '../../app/words/lawnChartWords';
import { seasonFinding } from '../../app/words/seasonChart';
import { storeBooks } from '../../app/words/stockWords';
import { cutAtFigures, type FigureInText, type Why } from '../../app/words/why';
import { sameThreadEngine, storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const garden: Garden = parsed.value;
const today = dayOf('2013-06-15');
const units = unitsOf('metric');
const shown = {
  system: 'metric',
  units,
  chart: metricChartUnits,
  dayWord: String,
  day: String,
  estimate: estimateWithUnit,
} as unknown as Shown;
const bedNamed = (name: string) => garden.beds.find((bed) => bed.name === name)!;
const answered = (name: string) => answerBed(bedQuestion(garden, bedNamed(name).id, today), limits);
const materialOfStore = (id: string) =>
  materialById(garden, garden.stock.find((one) => one.id === id)!.materialId);

/** Whether a why says how, from what, and how well it is known, in whole sentences. */
function isWhole(why: Why): void {
  expect(why.of).toMatch(/^[A-Z].*\.$/);
  expect(why.formula).toMatch(/^[(A-Z\d].*\.$/);
  expect(why.sources.length).toBeGreaterThan(0);
  for (const source of why.sources) expect(source).toMatch(/\.$/);
  for (const [words, value] of why.inputs)
    expect(`${words} ${value}`).not.toMatch(/NaN|undefined|Infinity/);
  expect(why.range ?? '').not.toMatch(/NaN|undefined|Infinity/);
}

/** The stretches of a sentence that open nothing. */
const plainOf = (says: string, figures: readonly FigureInText[]): string =>
  cutAtFigures(
    says,
    figures.map(({ text }) => text),
  )
    .filter((one) => typeof one === 'string')
    .join('|');

describe('the strips of Season', () => {
  const span = { from: seasonStart(today, 1), to: seasonEnd(today, 1) };
  const results = answered('Gate bed');
  const bed = bedStrips(garden, { [results.bedId]: results }, span, today, shown).find(
    ({ bedId }) => bedId === results.bedId,
  )!;
  const draws = {
    answer: {
      nitrateDays: [today - 10, today - 3],
      nitrate: [
        { low: 1, middle: 2, high: 3 },
        { low: 10, middle: 20, high: 40 },
      ],
    },
  } as unknown as BedDraws;

  test('the reading is one figure that says what nitrate the bed’s verdict has that day', () => {
    const says = '15 June: 12 g/m² ready';
    const [figure, ...more] = readyFigure({ garden, draws, shown }, bed, today, says);
    expect(more).toEqual([]);
    expect(plainOf(says, [figure!])).toBe('');
    isWhole(figure!.why);
    expect(Object.fromEntries(figure!.why.inputs)['Which is, as nitrate of that soil']).toBe(
      `${twoFigures(results.verdict.nitrateMgPerKg)} mg/kg`,
    );
    expect(figure!.why.sources.join(' ')).toMatch(/Organic matter.*Not in this sum: .*lime/);
  });

  test('its range is that of its own week, in its own unit; past what was imagined there is none', () => {
    // 0.3 m of soil at the bed's own weight: mg/kg × kg/L × 300 L/m2 ÷ 1000
    const [low, high] = [10, 40].map((mgPerKg) => (mgPerKg * bed.bulkDensityKgPerL * 300) / 1000);
    const { range } = readyOnDayWhy({ garden, draws, shown }, bed, today);
    const [said, to] = range!.match(/[\d.]+/g)!.map(Number);
    expect(Math.abs(said! / low! - 1)).toBeLessThan(0.05);
    expect(Math.abs(to! / high! - 1)).toBeLessThan(0.05);
    expect(readyOnDayWhy({ garden, draws, shown }, bed, today + 10).range).toBeNull();
    expect(readyOnDayWhy({ garden, draws: undefined, shown }, bed, today).range).toBeNull();
  });

  test('a day without sums has no figure to open', () => {
    expect(readyFigure({ garden, draws, shown }, bed, span.from - 9999, 'no sums')).toEqual([]);
  });
});

test('what the season’s drawing shows besides opens every figure it has', () => {
  const results = answered('Gate bed');
  const bySource = { soil: 4, 'last year': 0, compost: 0, 'dug in': 0, cover: 9, rain: 0, air: 0 };
  const { more } = seasonFinding(
    {
      today,
      verdict: results.verdict,
      couldUse: 5,
      got: 6,
      couldUseToEnd: 10,
      gotToEnd: 12,
      likelyAtEnd: { day: today + 190, low: 3, high: 8 },
      bySource,
    },
    metricChartUnits,
  );
  expect(more.map(({ about }) => about)).toEqual(['taken', 'likely at the end', 'sources']);
  for (const one of more) {
    const figures = findingFigures(
      { garden, results, draws: undefined, shown },
      { of: 'season more', more: one },
      one.says,
    );
    expect(plainOf(one.says, figures)).not.toMatch(/\d g\/m²/);
    for (const { why } of figures) isWhole(why);
    if (one.about === 'sources')
      expect(figures.map(({ why }) => why.of)).toEqual([
        'From the cover, up to today.',
        'From the soil itself, up to today.',
      ]);
  }
});

test('a lawn’s best week lies in its range, and what is to come is the sum of its weeks', () => {
  const lawn = garden.lawns[0]!;
  const curve = lawnCurve(garden, lawn.id, today);
  const { size, unit } = growthIn(garden, curve.inAWeek, shown);
  const grown = { ...growthShown(curve, size), today };
  const told = growthTold(grown);
  const { best, rest } = told;
  expect(best!.low).toBeLessThanOrEqual(best!.typical);
  expect(best!.high).toBeGreaterThanOrEqual(best!.typical);
  const later = curve.weeks.filter(({ from }) => from > today);
  expect(rest).toBeCloseTo(size * later.reduce((sum, { expected }) => sum + expected.typical, 0));
  const figures = growthFigures(curve.outlook, lawn, told, unit);
  const says = lawnFinding(
    { best: { amount: best!.typical, when: '3 June' }, mowings: 9, ratio: 1, rest },
    unit,
  );
  expect(plainOf(says, figures)).not.toMatch(/\d[ \d/]* bags?/);
  for (const { why } of figures) {
    isWhole(why);
    expect(why.sources.join(' ')).toContain('A year’s growth of its kind');
  }
  expect(figures[0]!.why.range).toContain('8 times in 10');
});

describe('the books of Garden', () => {
  const heap = { ...garden.stock.find(({ role }) => role === 'heap')!, date: '2013-04-01' };
  const account = heapAccount(garden, heap, today);

  test('a heap says what was put on it and by which rows it shrinks', () => {
    expect(account.entries.length).toBeGreaterThan(3);
    const [put] = putOnFigures(['12 kg'], account, shown);
    isWhole(put!.why);
    expect(put!.why.inputs).toEqual([
      ['Clippings, dry', estimateWithUnit(account.putOn.dryKilograms, units.mass)],
    ]);
    const [left] = shrunkFigures(['9 kg'], account, shown);
    isWhole(left!.why);
    expect(left!.why.sources.join(' ')).toContain(heapRows.dryLost.place);
    expect(left!.why.range).toContain('8 times in 10');
  });

  test('a store opens its books', () => {
    const straw = garden.stock.find(({ id }) => id === 'stock-straw')!;
    const line = stockLine(garden, straw, shown);
    const books = storeBooks(line);
    expect(books.join(', ')).toMatch(/^about [\d.]+ kg taken out, about [\d.]+ kg left$/);
    const [figure] = storeFigures(books, line, materialOfStore('stock-straw'));
    isWhole(figure!.why);
    expect(figure!.why.inputs[0]).toEqual(['Was there', '47 kg']);
    // of what nothing was taken or added there is nothing to tell
    const heapLine = { ...line, added: null, laid: null, left: null };
    expect(storeBooks(heapLine)).toEqual([]);
  });
});

test('a mixture says what its parts bring, and by which rows', () => {
  const parts: readonly MixturePart[] = [
    {
      materialId: 'grass-fresh-generic',
      wetness: 'dry',
      amount: { text: '10 kg', quantity: { kind: 'mass', kilograms: 10 }, certainty: 'plain' },
    },
    { materialId: 'leaves-maple', wetness: 'dry', amount: null },
  ];
  const mixture = mixtureOf(garden, parts, { ratio: 30, moisture: 0.6 });
  if (!mixture.ok) throw new Error(mixture.error.kind);
  const facts = { garden, mixture: mixture.value, parts, shown };
  for (const why of [mixtureWhy(facts), foundWhy(facts, 1), waterWhy(facts)]) isWhole(why);
  expect(mixtureWhy(facts).inputs.map(([name]) => name)).toEqual(
    mixture.value.parts.map(({ name }) => name),
  );
  // the water its formula makes is the water it asks for
  const [dry, wet] = (['dryKilograms', 'waterKilograms'] as const).map((of) =>
    mixture.value.parts.reduce((sum, part) => sum + part[of], 0),
  );
  expect((dry! * 0.6) / (1 - 0.6) - wet!).toBeCloseTo(mixture.value.blend.waterKilograms, 9);
  const weighs = foundWhy(facts, 1).sources[0]!;
  expect(weighs).toContain(String(materialById(garden, 'leaves-maple').densityKgPerM3));
});

describe('on a page', () => {
  const page = drawnPage();
  const show = async (part: ReactNode): Promise<void> => {
    const one = await storeWith(garden, { engine: sameThreadEngine() });
    one.store.setState({ about: { native: false, version: '0', folder: '', today: '2013-06-15' } });
    await one.time.pass(2000);
    await page.draw(one.store, part);
  };
  const press = (button: Element): Promise<void> =>
    act(async () => (button as HTMLElement).click());

  test('phosphorus and potassium have one button a line, which opens both', async () => {
    const results = answered('Gate bed');
    await show(<MineralAccount garden={garden} results={results} />);
    const rows = [...page.place.querySelectorAll('tbody tr')].filter((row) =>
      row.querySelector('td'),
    );
    expect(rows.length).toBeGreaterThan(1);
    for (const row of rows) expect(row.querySelectorAll('button')).toHaveLength(1);
    await press(rows[0]!.querySelector('button')!);
    const panel = page.place.querySelector('.why-panel')!;
    const season = mineralAccount(garden, results.input, results.season).at(-1)!;
    const why = mineralWhy(season.lines[0]!, units.nitrogenPerArea);
    isWhole(why);
    for (const source of why.sources) expect(panel.textContent).toContain(source);
    expect(panel.textContent).toContain(why.range!.replaceAll('m2', 'm²'));
  });

  test('each bed of Season has its reading as one button, and no paragraph is empty', async () => {
    await show(<SeasonPlace />);
    const readings = [...page.place.querySelectorAll('.strip-head .figure-why')];
    expect(readings.length).toBe(garden.beds.length);
    const [first] = readings;
    expect(first!.getAttribute('aria-label')).toMatch(/^15 June: .* ready, Gate bed: why\?$/);
    await press(first!);
    expect(page.place.querySelector('.strip-head .why-panel')?.textContent).toContain(
      'On the evening of',
    );
    for (const one of page.place.querySelectorAll('p')) expect(one.textContent).not.toBe('');
  });

  test('further beds of a guided start are told apart by their number', async () => {
    await show(<OwnGarden onBack={() => undefined} />);
    const more = () =>
      [...page.place.querySelectorAll('button')].find(
        ({ textContent }) => textContent === 'Another bed',
      )!;
    await press(more());
    await press(more());
    const named = [...page.place.querySelectorAll('.five-more')].map(
      (one) => document.getElementById(one.getAttribute('aria-labelledby')!)?.textContent,
    );
    expect(named).toEqual(['Bed 2: Another bed', 'Bed 3: Another bed']);
  });
});
