import { expect, test } from 'vitest';
import { exampleGarden } from '../document/exampleGarden';
import { storeWith } from './surroundings';

test('openings count gardens opened, started and put away, and no saves', async () => {
  const { store } = await storeWith(exampleGarden());
  const first = store.getState().openings;
  expect(first).toBeGreaterThan(0);
  store.getState().editGarden({ name: 'Changed' });
  await store.getState().saveAs('Other', false);
  await store.getState().save();
  expect(store.getState().openings).toBe(first);
  await store.getState().openFile('file-1');
  expect(store.getState().openings).toBe(first + 1);
  store.getState().openText('no garden', 'Foreign');
  expect(store.getState().openings).toBe(first + 1);
  await store.getState().closeGarden();
  expect(store.getState().openings).toBe(first + 2);
});
