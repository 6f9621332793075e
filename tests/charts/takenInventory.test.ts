// Every chart leaves the window as a drawing, a picture and numbers: nobody may forget one.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../app/charts/export/csv';
import { heapTable } from '../../app/charts/heap/tableData';
import { lawnTable } from '../../app/charts/lawn/tableData';
import { dayOf } from '../../app/core/days';
import { metricChartUnits, usChartUnits } from '../../app/words/chartUnits';

const app = join(import.meta.dirname, '../../app');
const sourcesIn = (folder: string): readonly { readonly path: string; readonly text: string }[] =>
  readdirSync(join(app, folder), { recursive: true })
    .map(String)
    .filter((path) => path.endsWith('.tsx'))
    .map((path) => ({
      path: `${folder}/${path}`.replaceAll('\\', '/'),
      text: readFileSync(join(app, folder, path), 'utf8'),
    }));

const screens = sourcesIn('screens');
/** Folders of charts in which something is drawn that could be taken away. */
const drawn = [
  ...new Set(
    sourcesIn('charts')
      .filter(({ text }) => text.includes('chart-drawing'))
      .map(({ path }) => path.split('/')[1]!),
  ),
];

describe('every chart that is drawn', () => {
  test('is one of those known, so that a renamed class does not empty this test', () => {
    expect(drawn.toSorted()).toEqual([
      'cover',
      'dots',
      'heap',
      'lawn',
      'ledger',
      'season',
      'section',
      'strips',
    ]);
  });

  test.each(drawn)('%s stands in a screen that takes it away, with a table of its own', (chart) => {
    const takers = screens.filter(
      ({ text }) => text.includes('<TakeAway') && text.includes(`charts/${chart}/`),
    );
    expect(takers.map(({ path }) => path)).not.toEqual([]);
    expect(
      screens.some(({ text }) => text.includes(`charts/${chart}/tableData'`)),
      'its numbers are handed over',
    ).toBe(true);
  });

  test('goes out by one door alone, which writes numbers with csvOf', () => {
    const doors = screens.filter(({ text }) => text.includes('state.exportFile'));
    expect(doors.map(({ path }) => path)).toEqual(['screens/takeAway/TakeAway.tsx']);
    expect(doors[0]!.text).toContain('csvOf(props.table())');
  });
});

test('a lawn’s weeks carry what was mown in them, in the unit that is shown', () => {
  const from = dayOf('2021-05-03');
  const { head, rows } = lawnTable(
    {
      today: from + 8,
      weeks: [0, 7, 14].map((days) => ({
        from: from + days,
        low: 1,
        typical: 2,
        high: 3,
        usual: 2.5,
      })),
      cuts: [{ from: from + 1, day: from + 6, aWeek: 1.5 }],
    },
    'bags a week',
  );
  expect(head.slice(2, 7).every((one) => one.endsWith('[bags a week]'))).toBe(true);
  expect(rows).toEqual([
    ['2021-05-03', 'reckoned', 2, 1, 3, 2.5, 1.5, '2021-05-09'],
    ['2021-05-10', 'reckoned', 2, 1, 3, 2.5, null, null],
    ['2021-05-17', 'imagined', 2, 1, 3, 2.5, null, null],
  ]);
});

test('the layers of a heap are in the unit that is read, and no name of theirs is a sum', () => {
  const layers = [{ name: '=1+1', millimetres: 254 }];
  expect(heapTable(layers, usChartUnits).rows[0]![2]).toBeCloseTo(10, 9);
  expect(csvOf(heapTable(layers, metricChartUnits))).toContain(",'=1+1,");
});
