import { describe, expect, test } from 'vitest';
import type { AmountFailureKind, ReadingContext } from '../../app/amounts/amount';
import type { SingleMeasure } from '../../app/amounts/measureText';
import { readMeasure, readWater, waterMillimetres } from '../../app/amounts/readMeasure';
import { metricGarden, usGarden } from './gardens';

const bareMetric: ReadingContext = { ...metricGarden, bareNumber: true };
const bareUs: ReadingContext = { ...usGarden, bareNumber: true };
const squareFoot = 0.09290304;

const accepted: readonly (readonly [string, SingleMeasure, ReadingContext, number])[] = [
  ['12 mm', 'rain', metricGarden, 12],
  ['1/2 in', 'rain', usGarden, 12.7],
  ['0.35', 'rain', bareUs, 8.89],
  ['12', 'rain', bareMetric, 12],
  ['none', 'rain', metricGarden, 0],
  ['no rain', 'rain', metricGarden, 0],
  ['0', 'rain', metricGarden, 0],
  ['2,5 mm', 'rain', metricGarden, 2.5],
  ['9 m2', 'area', metricGarden, 9],
  ['9', 'area', bareMetric, 9],
  ['1.2 x 5 m', 'area', metricGarden, 6],
  ['1.2 m x 5 m', 'area', metricGarden, 6],
  ['25 x 20 ft', 'area', usGarden, 500 * squareFoot],
  ['25 by 20 ft', 'area', usGarden, 500 * squareFoot],
  ['4 ft 6 in x 8 ft', 'area', usGarden, 36 * squareFoot],
  ["4' x 8'", 'area', usGarden, 32 * squareFoot],
  ['1,000 sq ft', 'area', metricGarden, 1000 * squareFoot],
  ['100', 'area', bareUs, 100 * squareFoot],
  ['a quarter acre', 'area', usGarden, 10_890 * squareFoot],
  ['0,1 ha', 'area', metricGarden, 1000],
  ['2 m', 'length', metricGarden, 2],
  ['5\'3"', 'length', usGarden, 63 * 0.0254],
  ['6 ft 2 in', 'length', usGarden, 74 * 0.0254],
  ['about 30 cm', 'length', metricGarden, 0.3],
  ['1/4 in', 'depth', usGarden, 6.35],
  ['1/4', 'depth', bareUs, 6.35],
  ['45 L', 'volume', metricGarden, 45],
  ['12 gal', 'volume', usGarden, 12 * 3.785411784],
  ['11.3 kg', 'weight', metricGarden, 11.3],
  ['3 lb 4 oz', 'weight', usGarden, 3.25 * 0.45359237],
  ['25', 'weight', bareUs, 25 * 0.45359237],
  ['18 C', 'temperature', metricGarden, 18],
  ['18 °C', 'temperature', usGarden, 18],
  ['18 degrees', 'temperature', bareMetric, 18],
  ['-3', 'temperature', bareMetric, -3],
  ['−3 °C', 'temperature', metricGarden, -3],
  ['minus 3 C', 'temperature', metricGarden, -3],
  ['50 F', 'temperature', metricGarden, 10],
  ['68', 'temperature', bareUs, 20],
];

describe('one measure', () => {
  test.each(accepted)('%s (%s)', (text, field, context, inside) => {
    const reading = readMeasure(text, field, context);
    expect(reading).toMatchObject({ ok: true });
    if (reading.ok) expect(Math.abs(reading.value.value - inside)).toBeLessThan(1e-9);
  });

  test('the sides of a bed come along', () => {
    expect(readMeasure('1.2 x 5 m', 'area', metricGarden)).toMatchObject({
      value: { sides: [1.2, 5] },
    });
    expect(readMeasure('6 m2', 'area', metricGarden)).toMatchObject({ value: { sides: null } });
  });

  const refused: readonly (readonly [
    string,
    SingleMeasure,
    ReadingContext,
    AmountFailureKind,
    string,
  ])[] = [
    ['', 'rain', usGarden, 'empty', '1/2 in'],
    ['2 L', 'rain', metricGarden, 'wrong-dimension', '12 mm'],
    ['3 m', 'area', metricGarden, 'wrong-dimension', '3 m2'],
    ['3 ft', 'area', usGarden, 'wrong-dimension', '3 sq ft'],
    ['12', 'rain', metricGarden, 'no-unit', '12 mm'],
    ['0 m2', 'area', metricGarden, 'zero', '9 m2'],
    ['-2 m', 'length', metricGarden, 'negative', '2 m'],
    ['5 m', 'rain', metricGarden, 'too-large', '5 cm'],
    ['9 mmm', 'rain', metricGarden, 'unknown-unit', '9 mm'],
    ['2 m, 3 m', 'length', metricGarden, 'two-amounts', '2 m + 3 m'],
    ['300 C', 'temperature', metricGarden, 'too-large', '18 °C'],
    ['warm', 'temperature', metricGarden, 'not-an-amount', '18 °C'],
    ['12', 'temperature', metricGarden, 'no-unit', '12 °C'],
    ['12 mm on 8/6', 'rain', metricGarden, 'two-amounts', '12 mm'],
  ];
  test.each(refused)('%s (%s) is refused', (text, field, context, kind, suggestion) => {
    expect(readMeasure(text, field, context)).toMatchObject({
      ok: false,
      error: { kind, field, suggestion },
    });
    expect(readMeasure(suggestion, field, context).ok).toBe(true);
  });
});

describe('watering', () => {
  const millimetres = (text: string, context = metricGarden): number => {
    const reading = readWater(text, context);
    if (!reading.ok) throw new Error(reading.error.kind);
    return waterMillimetres(reading.value.quantity, 6, context.containers) ?? NaN;
  };
  // 1 L on 1 m2 is 1 mm; the bed has 6 m2, a can 9 L
  test.each([
    ['10 mm', 10],
    ['half an inch', 12.7],
    ['18 L', 3],
    ['2 cans', 3],
    ['a can and a half', 2.25],
    ['2 buckets', 20 / 6],
  ])('%s', (text, depth) => expect(millimetres(text)).toBeCloseTo(depth, 9));

  test('a number alone is mm or inches where the label says so', () => {
    expect(millimetres('10', bareMetric)).toBe(10);
    expect(millimetres('1/2', bareUs)).toBeCloseTo(12.7, 9);
  });

  test.each([
    ['', 'empty', '20 L'],
    ['5 kg', 'wrong-dimension', '20 L'],
    ['2 jugs', 'unknown-container', '2 L'],
    ['0 L', 'zero', '20 L'],
    ['5 m', 'too-large', '5 cm'],
  ] as const)('%s is refused', (text, kind, suggestion) => {
    expect(readWater(text, metricGarden)).toMatchObject({ error: { kind, suggestion } });
  });

  test('an unknown container gives no depth', () => {
    expect(
      waterMillimetres({ kind: 'containers', count: 1, containerId: 'gone' }, 6, []),
    ).toBeNull();
  });
});

test('a can is 10 L where the garden has none, and the reading says that it was assumed', () => {
  const bare = { units: 'metric', containers: [], bareNumber: true } as const;
  expect(readWater('2 cans', bare)).toMatchObject({
    ok: true,
    value: { quantity: { kind: 'volume', litres: 20 }, assumedCanLitres: 10 },
  });
  expect(readWater('a watering can', bare)).toMatchObject({ value: { assumedCanLitres: 10 } });
  // metricGarden has cans of 9 L of its own
  expect(readWater('2 cans', metricGarden)).toMatchObject({
    value: { quantity: { kind: 'containers', count: 2 }, assumedCanLitres: null },
  });
});
