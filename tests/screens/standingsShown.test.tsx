// @vitest-environment happy-dom
// Every cell of the tables that nobody read anywhere says so where it stands, and no other one does.
import { type ReactNode } from 'react';
import { describe, expect, test } from 'vitest';
import { metricUnits } from '../../app/amounts/unitSystem';
import { CitedRows } from '../../app/screens/CitedRows';
import { CropTable } from '../../app/screens/tables/CropTable';
import { MaterialTable } from '../../app/screens/tables/MaterialTable';
import { RateTable } from '../../app/screens/tables/RateTable';
import {
  cropColumns,
  cropNumbers,
  materialColumns,
  materialNumbers,
  type Column,
} from '../../app/screens/tables/tableColumns';
import { cropRows } from '../../app/tables/crops';
import { coverCoefficients } from '../../app/tables/coefficients/coverCoefficients';
import { cropUptakeCoefficients } from '../../app/tables/coefficients/cropUptakeCoefficients';
import { decompositionCoefficients } from '../../app/tables/coefficients/decompositionCoefficients';
import { soilCoefficients } from '../../app/tables/coefficients/soilCoefficients';
import { materialRows } from '../../app/tables/materials';
import type { Row } from '../../app/tables/shapes';
import { isEstimate } from '../../app/words/tableWords';
import { bigGarden } from '../bench/bigGarden';
import { storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const page = drawnPage();

async function show(what: ReactNode): Promise<void> {
  const { store } = await storeWith(bigGarden({ beds: 2, years: 1, seed: 5 }));
  await page.draw(store, what);
}

/** What the screen has to say of a number by how it is known, as a reader finds it. */
const unread: Partial<Readonly<Record<Row['standing'], RegExp>>> = {
  memory: /\brecalled\b/i,
  mixed: /partly recalled/i,
  assumed: /our estimate|our own judgement/i,
};
const saysUnread = /recalled|our estimate|our own judgement/i;

function expectSaid(text: string, { standing, place: where, note = '' }: Row, name: string): void {
  const wanted = unread[standing];
  if (wanted) expect(text, name).toMatch(wanted);
  // a place or a note may tell by itself what of it was recalled
  else if (!saysUnread.test(`${where} ${note}`)) expect(text, name).not.toMatch(saysUnread);
}
const textOf = (cell: Element | undefined): string => cell?.textContent ?? '';

describe.each([
  ['materials', <MaterialTable key="one" />, materialRows, materialColumns],
  ['crops', <CropTable key="one" />, cropRows, cropColumns(metricUnits)],
] as const)('the list of %s', (_what, table, rows, columns) => {
  test('marks the numbers that were not read, cell by cell', async () => {
    await show(table);
    const lines = new Map(
      [...page.place.querySelectorAll('tr.row-line')].map((line) => [
        textOf(line.querySelector('th, td') ?? undefined).trim(),
        [...line.querySelectorAll('.range-cell .range-numbers')],
      ]),
    );
    let marked = 0;
    for (const row of rows) {
      const cells = lines.get(row.name)!;
      expect(cells, row.name).toHaveLength(columns.length);
      (columns as readonly Column<never>[]).forEach((column, at) => {
        const number = column.of(row as never);
        expectSaid(textOf(cells[at]), number, `${row.name}, ${column.head}`);
        const drawing = cells[at]?.closest('td')?.querySelector('.range-mark');
        expect(drawing?.classList.contains('range-estimate')).toBe(isEstimate(number.standing));
        if (unread[number.standing]) marked += 1;
      });
    }
    expect(marked).toBeGreaterThan(10);
  });
});

describe('what a row opens to, and the sums', () => {
  const lineTexts = () =>
    [...page.place.querySelectorAll('tbody tr')].map((line) =>
      textOf(line.lastElementChild ?? undefined),
    );

  test('say it of every number', async () => {
    const numbers = [
      ...materialRows.flatMap(materialNumbers),
      ...cropRows.flatMap(cropNumbers),
    ].map(({ name, row }, at) => ({ name: `${name} ${String(at)}`, row }));
    await show(<CitedRows rows={numbers} />);
    const said = lineTexts();
    expect(said).toHaveLength(numbers.length);
    numbers.forEach(({ name, row }, at) => expectSaid(said[at]!, row, name));
  });

  test('say it of every coefficient', async () => {
    await show(<RateTable />);
    const rates: readonly Row[] = [
      decompositionCoefficients,
      coverCoefficients,
      soilCoefficients,
      cropUptakeCoefficients,
    ].flatMap((group) => Object.values(group) as readonly Row[]);
    const said = lineTexts();
    expect(said).toHaveLength(rates.length);
    rates.forEach((row, at) => expectSaid(said[at]!, row, `${row.source} ${row.place}`));
  });
});
