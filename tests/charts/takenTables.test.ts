import { describe, expect, test } from 'vitest';
import { ledgerTable } from '../../app/charts/ledger/tableData';
import { seasonTable } from '../../app/charts/season/tableData';
import { textFromDay } from '../../app/core/days';
import { ledgerWay } from '../../app/core/season/ledgerStreams';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';
import { realRuns } from './realRuns';

const runs = realRuns();
const { result, input } = runs.find(({ name }) => name.endsWith('South wall'))!;
const lastDay = result.firstDay + result.days - 1;
const data = {
  result,
  verdict: { state: 'about right', turnsOn: null } as const,
  cropBand: null,
  bulkDensityKgPerL: input.soil.bulkDensityKgPerL,
  plantings: [],
  layers: [],
  units: metricChartUnits,
};
const column = (table: ReturnType<typeof seasonTable>, head: RegExp): number =>
  table.head.findIndex((one) => head.test(one));

describe('the season as a table', () => {
  const span = { from: result.firstDay, to: lastDay };
  const table = seasonTable(data, span);

  test('has a row a day, every head with its unit', () => {
    expect(table.rows).toHaveLength(result.days);
    expect(table.rows[0]![0]).toBe(textFromDay(result.firstDay));
    expect(table.rows.at(-1)![0]).toBe(textFromDay(lastDay));
    for (const row of table.rows) expect(row).toHaveLength(table.head.length);
    for (const head of table.head.slice(2, -2)) expect(head).toMatch(/\[.+\]$/);
  });

  test('its bands add up to all it gets, on every day', () => {
    const from = column(table, /^there at the start/);
    const all = column(table, /^all it gets/);
    for (const row of table.rows)
      expect(
        row.slice(from, all).reduce((sum: number, value) => sum + Number(value), 0),
      ).toBeCloseTo(Number(row[all]), 9);
  });

  test('rain is millimetres, or inches of 25.4 mm', () => {
    const inches = seasonTable({ ...data, units: usChartUnits }, span);
    const rain = column(inches, /^rain \[(mm|in)\]/);
    expect(inches.head[rain]).toBe('rain [in]');
    const wettest = result.rain.indexOf(Math.max(...result.rain));
    expect(Number(inches.rows[wettest]![rain]) * 25.4).toBeCloseTo(result.rain[wettest]!, 9);
  });
});

describe('the ledger as a table', () => {
  test('what is there at the start and comes in is what goes out and is there at the end', () => {
    const way = ledgerWay(result, result.firstDay, lastDay);
    const { head, rows } = ledgerTable(way, 5, metricChartUnits);
    expect(head).toHaveLength(6);
    const sum = (isOurs: (from: string, to: string) => boolean) =>
      rows.reduce(
        (all, row) => all + (isOurs(String(row[2]), String(row[3])) ? Number(row[4]) : 0),
        0,
      );
    const places = new Set(
      rows.filter((row) => row[2] === 'there at the start').map((row) => String(row[3])),
    );
    const into = sum((from, to) => places.has(to) && !places.has(from));
    const outOf = sum((from, to) => places.has(from) && !places.has(to));
    expect(into).toBeCloseTo(outOf, 8);
    for (const row of rows) expect(Number(row[5])).toBeCloseTo(Number(row[4]) * 5, 9);
  });
});
