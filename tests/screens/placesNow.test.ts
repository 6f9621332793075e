// The head offers the places that are there, and none that would open on nothing.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { placesNow } from '../../app/screens/frame/placesNow';

const rooms = readdirSync(join(import.meta.dirname, '../../app/screens'));

test('each place of the head has its folder, and trials, which have none yet, are not offered', () => {
  const folderOf = { 'this week': 'week' } as Readonly<Record<string, string>>;
  for (const { place } of placesNow) expect(rooms).toContain(folderOf[place] ?? place);
  expect(placesNow.map(({ words }) => words)).toEqual([
    'This week',
    'Beds',
    'Season',
    'Lawn',
    'Tables',
    'Garden',
  ]);
});
