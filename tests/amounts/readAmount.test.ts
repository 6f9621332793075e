import { describe, expect, test } from 'vitest';
import type { AmountFailureKind, AmountField, ReadingContext } from '../../app/amounts/amount';
import { readAmount } from '../../app/amounts/readAmount';
import type { Quantity } from '../../app/core/lawn/quantity';
import { metricGarden, usGarden, without } from './gardens';

// Units are exact by definition: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (1959), US gallon 231 in3,
// US bushel 2150.42 in3, cubic inch 16.387064 ml. Written out here, not taken from the program.
const cubicInch = 0.016387064;
const pound = 0.45359237;
const bags = (count: number): Quantity => ({ kind: 'containers', count, containerId: 'c-bag' });
const buckets = (count: number): Quantity => ({
  kind: 'containers',
  count,
  containerId: 'c-bucket',
});
const litres = (value: number): Quantity => ({ kind: 'volume', litres: value });
const kilograms = (value: number): Quantity => ({ kind: 'mass', kilograms: value });
const depth = (value: number): Quantity => ({ kind: 'depth', millimetres: value });
const mown = (areaM2: number, heightMillimetres: number): Quantity => ({
  kind: 'mown',
  areaM2,
  heightMillimetres,
});

const numbersOf = (quantity: Quantity): number[] =>
  Object.values(quantity).filter((value) => typeof value === 'number');

function expectQuantity(found: Quantity, wanted: Quantity): void {
  expect(found.kind).toBe(wanted.kind);
  if (found.kind === 'containers' && wanted.kind === 'containers')
    expect(found.containerId).toBe(wanted.containerId);
  const [values, wantedValues] = [numbersOf(found), numbersOf(wanted)];
  expect(values).toHaveLength(wantedValues.length);
  values.forEach((value, index) => {
    const want = wantedValues[index] ?? NaN;
    expect(Math.abs(value - want)).toBeLessThanOrEqual(1e-9 * Math.abs(want));
  });
}

type Row = readonly [text: string, field: AmountField, meant: Quantity, context?: ReadingContext];
const accepted: readonly Row[] = [
  ['2 bags', 'mowing', bags(2)],
  ['2 Bags', 'mowing', bags(2)],
  ['2bags', 'mowing', bags(2)],
  ['bag', 'mowing', bags(1)],
  ['a bag', 'mowing', bags(1)],
  ['one bag', 'mowing', bags(1)],
  ['two and a half bags', 'mowing', bags(2.5)],
  ['2 1/2 bags', 'mowing', bags(2.5)],
  ['2-1/2 bags', 'mowing', bags(2.5)],
  ['2½ bags', 'mowing', bags(2.5)],
  ['½ bag', 'mowing', bags(0.5)],
  ['¾ bag', 'mowing', bags(0.75)],
  ['1 ⅓ bags', 'mowing', bags(4 / 3)],
  ['2.5 bags', 'mowing', bags(2.5)],
  ['2,5 bags', 'mowing', bags(2.5)],
  ['.5 bag', 'mowing', bags(0.5)],
  ['half a bag', 'mowing', bags(0.5)],
  ['half bag', 'mowing', bags(0.5)],
  ['a half bag', 'mowing', bags(0.5)],
  ['half of a bag', 'mowing', bags(0.5)],
  ['a bag and a half', 'mowing', bags(1.5)],
  ['one bag and a half', 'mowing', bags(1.5)],
  ['2 bags and a quarter', 'mowing', bags(2.25)],
  ['three quarters of a bag', 'mowing', bags(0.75)],
  ['a quarter bag', 'mowing', bags(0.25)],
  ['two thirds of a bag', 'mowing', bags(2 / 3)],
  ['a couple of bags', 'mowing', bags(2)],
  ['half a dozen buckets', 'mowing', buckets(6)],
  ['a dozen buckets', 'layer', buckets(12)],
  ['twenty-five buckets', 'layer', buckets(25)],
  ['two full bags of clippings', 'mowing', bags(2)],
  ['took 2 bags from the back lawn', 'mowing', bags(2)],
  ['about 2 bags', 'mowing', bags(2)],
  ['~2 bags', 'mowing', bags(2)],
  ['2 bags or so', 'mowing', bags(2)],
  ['not sure, 3 buckets', 'mowing', buckets(3)],
  ['3 buckets?', 'mowing', buckets(3)],
  ['2-3 bags', 'mowing', bags(2.5)],
  ['2 or 3 bags', 'mowing', bags(2.5)],
  ['between 2 and 3 bags', 'mowing', bags(2.5)],
  ['2 bags + 1 bucket', 'mowing', bags(2 + 10 / 45)],
  ['2 bags and 1 bucket', 'mowing', bags(2 + 10 / 45)],
  ['a bag and half a bucket', 'mowing', bags(1 + 5 / 45)],
  ['2 bags + 9 L', 'mowing', bags(2.2)],
  ['(2 + 1) bags', 'mowing', bags(3)],
  ['2 + 1/2 bags', 'mowing', bags(2.5)],
  ['3 bags / 2', 'mowing', bags(1.5)],
  ['3 bags - 1 bag', 'mowing', bags(2)],
  ["1 Ann's dry tub", 'mowing', { kind: 'containers', count: 1, containerId: 'c-own' }],
  ['2 ann’s dry tubs', 'mowing', { kind: 'containers', count: 2, containerId: 'c-own' }],
  ['1 1/2 barrows', 'stock', { kind: 'containers', count: 1.5, containerId: 'c-barrow' }],
  ['3 bags * 35 L', 'mowing', litres(105)],
  ['3 bags × 35 L', 'mowing', litres(105)],
  ['3 x 35 L', 'mowing', litres(105)],
  ['3x35L', 'mowing', litres(105)],
  ['3 bags of 35 L', 'mowing', litres(105)],
  ['3 bags at 5 kg', 'mowing', kilograms(15)],
  ['3 bags, 5 kg each', 'mowing', kilograms(15)],
  ['3 bags of 5 kg each', 'mowing', kilograms(15)],
  ['45 L', 'mowing', litres(45)],
  ['45L', 'mowing', litres(45)],
  ['45 litres', 'mowing', litres(45)],
  ['45 liters', 'layer', litres(45)],
  ['0,5 m3', 'stock', litres(500)],
  ['1/2 m³', 'stock', litres(500)],
  ['0.5 cubic metres', 'stock', litres(500)],
  ['10 - 3 L', 'mowing', litres(7)],
  ['1\u00a0000 L', 'stock', litres(1000)],
  ['1,000.5 L', 'stock', litres(1000.5)],
  ['2 m * 1 m * 5 cm', 'layer', litres(100)],
  ['2 ft by 3 ft by 4 in', 'layer', litres(2 * 3 * (1 / 3) * 1728 * cubicInch)],
  ['1 1/2 bushels', 'mowing', litres(1.5 * 2150.42 * cubicInch)],
  ['2 bu', 'mowing', litres(2 * 2150.42 * cubicInch)],
  ['a peck', 'layer', litres((2150.42 / 4) * cubicInch)],
  ['12 gal', 'mowing', litres(12 * 231 * cubicInch)],
  ['five gallons', 'layer', litres(5 * 231 * cubicInch), without('us')],
  ['3 qt', 'layer', litres((3 * 231 * cubicInch) / 4)],
  ['2 pints', 'layer', litres((2 * 231 * cubicInch) / 8)],
  ['2 imperial gallons', 'layer', litres(9.09218)],
  ['2 cu ft', 'mowing', litres(2 * 1728 * cubicInch)],
  ['2 cu. ft.', 'mowing', litres(2 * 1728 * cubicInch)],
  ['2 ft3', 'mowing', litres(2 * 1728 * cubicInch)],
  ['2 ft^3', 'mowing', litres(2 * 1728 * cubicInch)],
  ['2 cubic feet', 'mowing', litres(2 * 1728 * cubicInch)],
  ['2 yd3', 'stock', litres(2 * 27 * 1728 * cubicInch)],
  ['half a cubic yard', 'stock', litres(13.5 * 1728 * cubicInch)],
  ['6 kg', 'mowing', kilograms(6)],
  ['6 kg, soaked', 'mowing', kilograms(6)],
  ['6 kilos', 'mowing', kilograms(6)],
  ['800 g', 'layer', kilograms(0.8)],
  ['1 tonne', 'stock', kilograms(1000)],
  ['13 lb', 'mowing', kilograms(13 * pound)],
  ['13 lbs.', 'mowing', kilograms(13 * pound)],
  ['thirteen pounds', 'mowing', kilograms(13 * pound)],
  ['1 lb 4 oz', 'layer', kilograms(1.25 * pound)],
  ['8 oz', 'layer', kilograms(pound / 2)],
  ['2 stone', 'mowing', kilograms(28 * pound)],
  ['220 m2, 2 cm off', 'mowing', mown(220, 20)],
  ['220 m², 2 cm off', 'mowing', mown(220, 20)],
  ['220 m^2 2 cm off', 'mowing', mown(220, 20)],
  ['2 cm off 220 m2', 'mowing', mown(220, 20)],
  ['220 m2 x 2 cm', 'mowing', mown(220, 20)],
  ['220 m2, took 2 cm off', 'mowing', mown(220, 20)],
  ['2 cm off the back lawn', 'mowing', mown(220, 20)],
  ['back lawn, 2 cm off', 'mowing', mown(220, 20), { ...metricGarden, lawnId: 'l-back' }],
  ['2 cm off', 'mowing', mown(90, 20), { ...metricGarden, lawnId: 'l-front' }],
  ['half the back lawn, 2 cm off', 'mowing', mown(110, 20)],
  ['half the lawn, 2 cm off', 'mowing', mown(45, 20), { ...metricGarden, lawnId: 'l-front' }],
  ['2,400 sq ft, 1 in off', 'mowing', mown(2400 * 144 * 0.00064516, 25.4)],
  ['1/4 acre, 1/2 inch off', 'mowing', mown(1210 * 9 * 144 * 0.00064516, 12.7)],
  ['6 mm', 'layer', depth(6)],
  ['6 mm deep', 'layer', depth(6)],
  ['1/4 in deep', 'layer', depth(6.35)],
  ['1/4"', 'layer', depth(6.35)],
  ['1 1/2 in', 'layer', depth(38.1)],
  ['half an inch', 'layer', depth(12.7)],
  ['an inch and a half', 'layer', depth(38.1)],
  ['2 cm thick, limp', 'layer', depth(20)],
  ['2 1/2', 'mowing', bags(2.5), { ...metricGarden, bareNumber: true }],
  ['3', 'layer', bags(3), { ...usGarden, bareNumber: true }],
  ['1,200 L', 'stock', litres(1200), usGarden],
  ['2 bags on 8 June', 'mowing', bags(2)],
  ['about a bag on the tomatoes yesterday', 'layer', bags(1)],
];

describe('entries that are read', () => {
  test.each(
    accepted.map(([text, field, meant, context = metricGarden]) => ({
      text,
      field,
      meant,
      context,
    })),
  )('$text ($field)', ({ text, field, meant, context }) => {
    const reading = readAmount(text, field, context);
    expect(reading).toMatchObject({ ok: true });
    if (!reading.ok) return;
    expectQuantity(reading.value.amount.quantity, meant);
    expect(reading.value.amount.text).toBe(text);
  });

  test('mathjs agrees with the definitions where it has the unit', async () => {
    const { create, unitDependencies } = await import('mathjs');
    const math = create({ ...unitDependencies }, {});
    for (const [text, unit, to] of [
      ['7 lb', '7 lbm', 'kg'],
      ['7 oz', '7 oz', 'kg'],
      ['7 gal', '7 gallon', 'litre'],
      ['7 qt', '7 quart', 'litre'],
      ['7 cu ft', '7 ft^3', 'litre'],
      ['7 cu yd', '7 yd^3', 'litre'],
    ] as const) {
      const reading = readAmount(text, 'stock', metricGarden);
      const [value = NaN] = reading.ok ? numbersOf(reading.value.amount.quantity) : [];
      expect(value / math.unit(unit).toNumber(to)).toBeCloseTo(1, 9);
    }
  });
});

describe('words beside the amount', () => {
  const read = (text: string, field: AmountField = 'mowing') => {
    const reading = readAmount(text, field, metricGarden);
    if (!reading.ok) throw new Error(`${text}: ${reading.error.kind}`);
    return reading.value;
  };
  test.each([
    ['2 bags', 'plain'],
    ['about 2 bags', 'about'],
    ['around 2 bags', 'about'],
    ['approx. 2 bags', 'about'],
    ['2 bags, more or less', 'about'],
    ['2 to 3 bags', 'about'],
    ['2 bags?', 'not sure'],
    ['2 bags, not sure', 'not sure'],
    ['about 2 bags, a guess', 'not sure'],
    ['no idea, 2 or 3 bags', 'not sure'],
  ])('%s is %s', (text, certainty) => expect(read(text).amount.certainty).toBe(certainty));

  test.each([
    ['6 kg, soaked', 'soaked'],
    ['2 soaked bags', 'soaked'],
    ['2 bags, soaking wet', 'soaked'],
    ['2 bags, wet', 'soaked'],
    ['2 damp bags', 'damp'],
    ['2 bags, a bit wet', 'damp'],
    ['2 bags, dry', 'dry'],
    ['2 bags', null],
    ["2 Ann's dry tubs", null],
  ])('%s is %s', (text, wetness) => expect(read(text).wetness).toBe(wetness));

  test.each([
    ['6 mm, just cut', 'just cut'],
    ['6 mm fresh', 'just cut'],
    ['6 mm, limp', 'limp'],
    ['2 wilted bags', 'limp'],
    ['6 mm, a day old', 'limp'],
    ['6 mm, crisp', 'crisp'],
    ['2 buckets, straw-coloured', 'crisp'],
    ['6 mm', null],
  ])('%s is %s', (text, condition) => expect(read(text, 'layer').condition).toBe(condition));

  test.each([
    ['2 bags from the back lawn', 'l-back'],
    ['2 bags, Back', 'l-back'],
    ['2 bags off the front lawn', 'l-front'],
    ['2 bags', null],
  ])('%s names lawn %s', (text, lawnId) => expect(read(text).lawnId).toBe(lawnId));

  test.each([
    ['a bag on the tomatoes', 'b-wall'],
    ['a bag on South wall', 'b-wall'],
    ['a bag on the far bed', 'b-far'],
    ['a bag', null],
  ])('%s goes to %s', (text, placeId) => expect(read(text, 'layer').placeId).toBe(placeId));

  test('crops are named one or many, beds with or without the word, and never mistaken for words', () => {
    const context: ReadingContext = {
      ...metricGarden,
      lawns: [{ id: 'l-2', name: '2', areaM2: 90 }],
      places: [
        { id: 'b-a', names: ['A', 'Tomato'] },
        { id: 'b-half', names: ['Half bed', 'beans'] },
        { id: 'b-dry', names: ['Dry corner', 'Sweet corn'] },
      ],
    };
    const placeOf = (text: string) => {
      const reading = readAmount(text, 'layer', context);
      return reading.ok ? [reading.value.placeId, reading.value.wetness] : reading.error.kind;
    };
    expect(placeOf('a bag on the tomatoes')).toEqual(['b-a', null]);
    expect(placeOf('half a bag')).toEqual([null, null]);
    expect(placeOf('half a bag on a')).toEqual(['b-a', null]);
    expect(placeOf('a bag on bed A')).toEqual(['b-a', null]);
    expect(placeOf('half a bag on the half bed')).toEqual(['b-half', null]);
    expect(placeOf('2 bags on the bean bed')).toEqual(['b-half', null]);
    expect(placeOf('2 bags on the dry corner')).toEqual(['b-dry', null]);
    expect(readAmount('2 bags off lawn 2', 'mowing', context)).toMatchObject({
      value: { lawnId: 'l-2', amount: { quantity: { count: 2 } } },
    });
    expect(readAmount('2 bags', 'mowing', context)).toMatchObject({ value: { lawnId: null } });
  });

  test('the unit that came in is told, so the answer can go back in it', () => {
    expect(read('13 lb').unit?.shown.symbol).toBe('lb');
    expect(read('1 1/2 bushels').unit).toMatchObject({
      dimension: 'volume',
      shown: { symbol: 'bushel' },
    });
    expect(read('1/4 in', 'layer').unit).toMatchObject({
      dimension: 'length',
      shown: { symbol: 'in', size: 25.4, style: 'fraction' },
    });
    expect(read('2 bags').unit).toBeNull();
  });
});

type Wrong = readonly [
  text: string,
  field: AmountField,
  kind: AmountFailureKind,
  suggestion: string,
  context?: ReadingContext,
];
const refused: readonly Wrong[] = [
  ['', 'mowing', 'empty', '2 bags'],
  ['   ', 'layer', 'empty', '6 mm'],
  ['   ', 'layer', 'empty', '1/4 in', usGarden],
  ['', 'mowing', 'empty', '45 L', without('metric')],
  [`2 bags ${'x'.repeat(200)}`, 'mowing', 'too-long', '2 bags'],
  ['2 bags = 3', 'mowing', 'strange-character', '2 bags'],
  ['$2 bags', 'mowing', 'strange-character', '2 bags'],
  ['2 bags <b>', 'mowing', 'strange-character', '2 bags'],
  ['x', 'mowing', 'not-an-amount', '2 bags'],
  ['soaked', 'mowing', 'not-an-amount', '2 bags'],
  ['litre', 'mowing', 'not-an-amount', '2 bags'],
  ['2 bags ^ 2', 'mowing', 'not-an-amount', '2 bags'],
  ['2 bags / 0', 'mowing', 'not-an-amount', '2 bags'],
  ['cos(1)', 'mowing', 'unknown-unit', '1 bag'],
  ['import("x")', 'mowing', 'unknown-unit', '2 bags'],
  ['2 bgas', 'mowing', 'unknown-unit', '2 bags'],
  ['2 bagz', 'mowing', 'unknown-unit', '2 bags'],
  ['2 bukets', 'layer', 'unknown-unit', '2 buckets'],
  ['2 ltres', 'mowing', 'unknown-unit', '2 litres'],
  ['6 kgg', 'mowing', 'unknown-unit', '6 kg'],
  ['1 bushle', 'mowing', 'unknown-unit', '1 bushel'],
  ['2 bags, soakd', 'mowing', 'unknown-unit', '2 bags, soaked'],
  ['2 lovely bags', 'mowing', 'unknown-unit', '2 bags'],
  ['2 fathoms', 'layer', 'unknown-unit', '2 bags'],
  ['2 tons', 'stock', 'unknown-unit', '2 tonnes'],
  ['2 tons', 'stock', 'unknown-unit', '2 short tons', usGarden],
  ['2 trugs', 'mowing', 'unknown-container', '2 bags'],
  ['a trug', 'layer', 'unknown-container', 'a bag'],
  ['2 bags', 'mowing', 'unknown-container', '2 L', without('metric')],
  ['a bag on the tomatos', 'layer', 'unknown-place', 'a bag on the tomatoes'],
  ['some bags', 'mowing', 'vague', 'about 3 bags'],
  ['a few buckets', 'layer', 'vague', 'about 3 buckets'],
  ['lots of bags', 'mowing', 'vague', 'about 3 bags'],
  ['2 1/2', 'mowing', 'no-unit', '2 1/2 bags'],
  ['3', 'layer', 'no-unit', '3 bags'],
  ['45', 'mowing', 'no-unit', '45 L', without('metric')],
  ['2 cm off', 'mowing', 'no-lawn', '200 m2, 2 cm off'],
  ['1 in off', 'mowing', 'no-lawn', '2000 sq ft, 1 in off', usGarden],
  ['2 cm', 'mowing', 'wrong-dimension', '200 m2, 2 cm off'],
  ['2 cm', 'mowing', 'wrong-dimension', '2 cm off', { ...metricGarden, lawnId: 'l-back' }],
  ['220 m2', 'mowing', 'wrong-dimension', '220 m2, 2 cm off'],
  ['220 m2', 'layer', 'wrong-dimension', '6 mm'],
  ['2 yards', 'stock', 'wrong-dimension', '2 cu yd'],
  ['3 feet', 'stock', 'wrong-dimension', '3 cu ft'],
  ['2 kg / 3 L', 'mowing', 'wrong-dimension', '2 bags'],
  ['2 bags + 3 mm', 'layer', 'mixed-dimensions', '2 bags'],
  ['2 bags + 3 kg', 'mowing', 'mixed-dimensions', '2 bags'],
  ['2 bags * 3 bags', 'mowing', 'mixed-dimensions', '2 bags'],
  ['6 kg - 2 L', 'mowing', 'mixed-dimensions', '6 kg'],
  ['2 bags, 45 L', 'mowing', 'two-amounts', '2 bags + 45 L'],
  ['2 bags 45 L', 'mowing', 'two-amounts', '2 bags + 45 L'],
  ['2 45 L', 'mowing', 'two-amounts', '2 x 45 L'],
  ['1 000 L', 'stock', 'two-amounts', '1000 L'],
  ['220 m2, 2 cm off', 'layer', 'two-amounts', '2 cm'],
  ['1,000 L', 'stock', 'ambiguous-number', '1000 L'],
  ['1,2,3 bags', 'mowing', 'ambiguous-number', '123 bags'],
  ['0 bags', 'mowing', 'zero', '2 bags'],
  ['no bags', 'mowing', 'zero', '2 bags'],
  ['2 bags - 2 bags', 'mowing', 'zero', '2 bags'],
  ['-2 bags', 'mowing', 'negative', '2 bags'],
  ['−2 bags', 'mowing', 'negative', '2 bags'],
  ['5 m', 'layer', 'too-large', '5 cm'],
  ['30 ft deep', 'layer', 'too-large', '30 in deep'],
  ['220 m2, 40 cm off', 'mowing', 'too-large', '220 m2, 40 mm off'],
  ['9000 bags', 'mowing', 'too-large', '2 bags'],
  ['90 t', 'stock', 'too-large', '90 kg'],
  ['2 bags on 8/6', 'mowing', 'ambiguous-date', '2 bags on 8 June 2013'],
  ['2 bags on 31 June', 'mowing', 'unknown-day', '2 bags on 30 June 2012'],
  ['2 bags on 30 Feb 2013', 'mowing', 'unknown-day', '2 bags on 28 February 2013'],
  ['2 bags on 3 July', 'mowing', 'future-day', '2 bags on 3 July 2012'],
  ['2 bags on 3 July 2013', 'mowing', 'future-day', '2 bags today'],
];

describe('entries that are refused with a likely value', () => {
  test.each(
    refused.map(([text, field, kind, suggestion, context = metricGarden]) => ({
      text,
      field,
      kind,
      suggestion,
      context,
    })),
  )('$text ($field): $kind', ({ text, field, kind, suggestion, context }) => {
    const reading = readAmount(text, field, context);
    expect(reading).toMatchObject({ ok: false, error: { kind, field, suggestion } });
    // the likely value can itself be read
    expect(readAmount(suggestion, field, context)).toMatchObject({ ok: true });
  });

  test('the table is long, and every kind that can come is in it', () => {
    expect(accepted.length + refused.length).toBeGreaterThanOrEqual(120);
    const kinds: AmountFailureKind[] = [
      'empty',
      'too-long',
      'strange-character',
      'not-an-amount',
      'vague',
      'no-unit',
      'unknown-unit',
      'unknown-container',
      'unknown-place',
      'no-lawn',
      'wrong-dimension',
      'mixed-dimensions',
      'two-amounts',
      'ambiguous-number',
      'zero',
      'negative',
      'too-large',
      'ambiguous-date',
      'unknown-day',
      'future-day',
    ];
    const seen = new Set(refused.map(([, , kind]) => kind));
    expect(kinds.filter((kind) => !seen.has(kind))).toEqual([]);
  });

  test('names the word or sign it could not take', () => {
    expect(readAmount('2 bgas', 'mowing', metricGarden)).toMatchObject({ error: { word: 'bgas' } });
    expect(readAmount('2 & 3 # bags', 'mowing', metricGarden)).toMatchObject({
      error: { character: '#' },
    });
  });

  test('a limit is told in the units of the garden', () => {
    const heap = '90 t';
    expect(readAmount(heap, 'stock', metricGarden)).toMatchObject({ error: { limit: '20000 kg' } });
    expect(readAmount(heap, 'stock', usGarden)).toMatchObject({ error: { limit: '44000 lb' } });
  });
});

test.each(['2 wheelbarrows', '2 barrowloads', '2 wheelbarrowloads'])('%s are 2 barrows', (text) => {
  expect(readAmount(text, 'mowing', metricGarden)).toMatchObject({
    ok: true,
    value: { amount: { quantity: { kind: 'containers', count: 2, containerId: 'c-barrow' } } },
  });
});
