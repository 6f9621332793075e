import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AmountField, MeasureField, ReadingContext } from '../../app/amounts/amount';
import { amountText } from '../../app/amounts/amountText';
import { measureText, type SingleMeasure } from '../../app/amounts/measureText';
import { readAmount } from '../../app/amounts/readAmount';
import { readBackLog } from '../../app/amounts/readBackLog';
import { readDay } from '../../app/amounts/readDay';
import { readMeasure, readWater } from '../../app/amounts/readMeasure';
import type { Quantity } from '../../app/core/lawn/quantity';
import type { Amount as KeptAmount } from '../../app/document/schema';
import { dayOf } from '../../app/core/days';
import { metricGarden, usGarden } from './gardens';

const runs = { numRuns: 1000, seed: 20_130_615 };
const today = dayOf('2013-06-15');
const amountFields: AmountField[] = ['mowing', 'layer', 'stock'];
const measureFields: Exclude<MeasureField, 'water'>[] = [
  'rain',
  'area',
  'length',
  'depth',
  'volume',
  'weight',
  'temperature',
];

const numbersOf = (quantity: Quantity): number[] =>
  Object.values(quantity).filter((value) => typeof value === 'number');

function read(text: string, field: AmountField, context: ReadingContext): Quantity {
  const reading = readAmount(text, field, context);
  if (!reading.ok) throw new Error(`"${text}": ${reading.error.kind}`);
  // the reader's amount is what the file keeps, without a change
  const kept: KeptAmount = { ...reading.value.amount };
  return kept.quantity;
}

const size = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const quantities: fc.Arbitrary<readonly [AmountField, Quantity]> = fc.oneof(
  size(0.001, 400).map(
    (count) => ['mowing', { kind: 'containers', count, containerId: 'c-bag' }] as const,
  ),
  fc
    .nat(800)
    .map(
      (quarters) =>
        [
          'layer',
          { kind: 'containers', count: (quarters + 1) / 4, containerId: 'c-barrow' },
        ] as const,
    ),
  size(0.01, 9000).map((litres) => ['stock', { kind: 'volume', litres }] as const),
  size(0.01, 5000).map((kilograms) => ['mowing', { kind: 'mass', kilograms }] as const),
  size(0.1, 900).map((millimetres) => ['layer', { kind: 'depth', millimetres }] as const),
  fc
    .tuple(size(1, 9000), size(1, 250))
    .map(
      ([areaM2, heightMillimetres]) =>
        ['mowing', { kind: 'mown', areaM2, heightMillimetres }] as const,
    ),
);

describe('an amount written out reads back as itself', () => {
  test.each([
    ['metric', metricGarden],
    ['us', usGarden],
  ] as const)('%s', (units, context) => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(quantities, ([field, quantity]) => {
        seen.set(quantity.kind, (seen.get(quantity.kind) ?? 0) + 1);
        const text = amountText(quantity, units, context.containers);
        const back = read(text ?? '', field, context);
        expect(back.kind).toBe(quantity.kind);
        const wanted = numbersOf(quantity);
        numbersOf(back).forEach((value, index) =>
          // six figures are written
          expect(Math.abs(value / (wanted[index] ?? NaN) - 1)).toBeLessThan(6e-6),
        );
      }),
      runs,
    );
    // the generator reaches every kind
    for (const kind of ['containers', 'volume', 'mass', 'depth', 'mown'])
      expect(seen.get(kind) ?? 0).toBeGreaterThan(50);
  });

  test('a measure, to five figures, a number alone in the unit shown', () => {
    const sizes: Record<SingleMeasure, fc.Arbitrary<number>> = {
      rain: size(0, 300),
      area: size(0.1, 9000),
      length: size(0.1, 100),
      depth: size(0.5, 900),
      volume: size(0.1, 9000),
      weight: size(0.01, 900),
      temperature: size(-60, 55),
    };
    for (const field of measureFields)
      for (const context of [metricGarden, usGarden])
        fc.assert(
          fc.property(sizes[field], (inside) => {
            const text = measureText(inside, field, context.units);
            const back = readMeasure(text, field, context);
            expect(back.ok && Math.abs(back.value.value - inside)).toBeLessThanOrEqual(
              // degrees Fahrenheit start 32 above: two decimals of them are written
              field === 'temperature' ? 0.003 : 6e-5 * Math.max(1, inside),
            );
            const bare = text.replace(/ [^\d]*$/, '');
            const alone = readMeasure(bare, field, { ...context, bareNumber: true });
            expect(alone.ok && alone.value.value).toBe(back.ok && back.value.value);
          }),
          { ...runs, numRuns: 200 },
        );
  });
});

describe('metric and US entries of the same quantity are the same', () => {
  // 1959 definitions, written out here
  const pairs: readonly (readonly [AmountField, string, number, string])[] = [
    ['mowing', 'lb', 0.45359237, 'kg'],
    ['mowing', 'oz', 28.349523125, 'g'],
    ['mowing', 'gal', 3.785411784, 'L'],
    ['mowing', 'bushels', 35.23907016688, 'L'],
    ['stock', 'cu yd', 0.764554857984, 'm3'],
    ['layer', 'in', 2.54, 'cm'],
    ['layer', 'ft', 304.8, 'mm'],
  ];
  test.each(pairs)('%s: 1 %s is %d %s', (field, us, factor, metric) => {
    fc.assert(
      fc.property(size(0.05, 2), (number) => {
        const one = read(`${number.toFixed(4)} ${us}`, field, usGarden);
        const other = read(
          `${(Number(number.toFixed(4)) * factor).toFixed(12)} ${metric}`,
          field,
          metricGarden,
        );
        const [first = NaN] = numbersOf(one);
        const [second = NaN] = numbersOf(other);
        expect(Math.abs(first / second - 1)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  test('an area and what came off it', () => {
    expect(read('2400 sq ft, 1 in off', 'mowing', usGarden)).toEqual(
      read('222.967296 m2, 25.4 mm off', 'mowing', metricGarden),
    );
  });
});

describe('nothing typed makes the reader throw, and what it suggests can be read', () => {
  const words =
    'bag bags bgas bucket a half and about soaked 2 1/2 3 , + - * / ( ) ^ 2 m2 cm off of each x in ft " mm kg lb on 8 June 31 8/6 tomatoes back lawn few since April ½ ? ~ 0 1,000 1e9 -5 week Ann\'s'.split(
      ' ',
    );
  const garbage = fc.oneof(
    fc.string({ maxLength: 220 }),
    fc.string({ unit: 'grapheme', maxLength: 60 }),
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.array(fc.constantFrom(...words), { maxLength: 14 }).map((parts) => parts.join(' ')),
    fc.array(fc.constantFrom(...words), { maxLength: 8 }).map((parts) => parts.join('')),
    fc
      .tuple(
        fc.constantFrom('2', 'a', 'half a', '1 1/2', '2-3', '0', 'some', '45'),
        fc.constantFrom('bags', 'bag', 'L', 'kg', 'mm', 'm2', 'bgas', 'trugs'),
        fc.constantFrom(
          '',
          ', soaked',
          ' on 8 June',
          ' since April',
          ' + 1 bucket',
          '?',
          ', 2 cm off',
        ),
      )
      .map((parts) => parts.join(' ')),
  );
  const contexts = [
    metricGarden,
    usGarden,
    { ...metricGarden, bareNumber: true, lawnId: 'l-back' },
    { units: 'metric', containers: [] } as const,
  ];

  test('amounts and back-logs', () => {
    let taken = 0;
    fc.assert(
      fc.property(
        garbage,
        fc.constantFrom(...amountFields),
        fc.constantFrom(...contexts),
        (text, field, context) => {
          const reading = readAmount(text, field, context);
          if (reading.ok) {
            taken++;
            for (const value of numbersOf(reading.value.amount.quantity)) {
              expect(value).toBeGreaterThan(0);
              expect(Number.isFinite(value)).toBe(true);
            }
          } else expect(readAmount(reading.error.suggestion, field, context).ok).toBe(true);
          const log = readBackLog(text, field, context, today);
          if (log.ok) for (const entry of log.value.entries) expect(entry.day <= today).toBe(true);
          else expect(readBackLog(log.error.suggestion, field, context, today).ok).toBe(true);
        },
      ),
      { ...runs, numRuns: 3000 },
    );
    // the generator makes good entries too
    expect(taken).toBeGreaterThan(100);
  });

  test('measures, water and days', () => {
    fc.assert(
      fc.property(
        garbage,
        fc.constantFrom(...measureFields),
        fc.constantFrom(...contexts),
        (text, field, context) => {
          const reading = readMeasure(text, field, context);
          if (reading.ok) expect(Number.isFinite(reading.value.value)).toBe(true);
          else expect(readMeasure(reading.error.suggestion, field, context).ok).toBe(true);
          const water = readWater(text, context);
          if (!water.ok) expect(readWater(water.error.suggestion, context).ok).toBe(true);
          const day = readDay(text, today);
          if (!day.ok) expect(readDay(day.error.suggestion, today).ok).toBe(true);
        },
      ),
      { ...runs, numRuns: 2000 },
    );
  });

  test('no function of the parser behind it can be reached', () => {
    for (const text of [
      'createUnit("bag")',
      'f(x)=x',
      'evaluate("1")',
      'L.toString',
      '[1,2]',
      '{a:1}',
      '"2 bags"',
      '2 bags; import',
      'bag = 3',
      'pi bags',
      'e L',
      'Infinity L',
      'NaN kg',
      '1e999 L',
      '2 ! bags ^ 9',
      '0x10 L',
      '2 L to gal',
      '5 mod 3 L',
      '2 L | 3',
    ])
      expect(readAmount(text, 'mowing', metricGarden).ok, text).toBe(false);
  });
});
