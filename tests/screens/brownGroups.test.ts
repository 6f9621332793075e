import { expect, test } from 'vitest';
import { brownGroups } from '../../app/screens/week/sources';
import { materialRows } from '../../app/tables/materials';
import { exampleGarden } from '../document/exampleGarden';

test('browns that are in store come first and no two of the list read alike', () => {
  const garden = exampleGarden();
  const [row, other] = materialRows.filter(({ isBrowns }) => isBrowns);
  if (!row || !other) throw new Error('The tables hold browns');
  const stock = { ...garden.stock[1]!, id: 'stock-9', name: row.name, materialId: row.id };
  garden.stock.push(stock);
  const groups = brownGroups(garden, '');
  const options = groups.flatMap((group) => group.options);
  const labelOf = (wanted: string) => options.find(({ value }) => value === wanted)?.label;
  const place = (wanted: string) => options.findIndex(({ value }) => value === wanted);
  expect(labelOf('stock:stock-9')).toBe(`${row.name}, in store`);
  expect(labelOf(`elsewhere:${row.id}`)).toBe(`${row.name}, from elsewhere`);
  expect(labelOf(`elsewhere:${other.id}`)).toBe(other.name);
  expect(place('stock:stock-9')).toBeLessThan(place(`elsewhere:${row.id}`));
  expect(new Set(options.map(({ label }) => label)).size).toBe(options.length);
});
