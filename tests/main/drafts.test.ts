import { readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { createDrafts } from '../../main/drafts';
import { newFolder } from './folders';

let folder = '';
let alive = new Set<number>();
let clock = 1000;
beforeEach(() => {
  folder = newFolder();
  alive = new Set([1, 2, 3]);
  clock = 1000;
});

const run = (number: number, bootedAt = 0) =>
  createDrafts(folder, {
    run: number,
    now: () => (clock += 10),
    isAlive: (other) => alive.has(other),
    bootedAt: () => bootedAt,
  });
const draft = (text: string) => ({ id: null, name: 'Plot', text });

test('a draft of a run that still goes on is not offered to another', async () => {
  await run(1).keep(draft('one'));
  expect(await run(2).restore()).toBeNull();
  alive.delete(1);
  expect(await run(2).restore()).toMatchObject({ text: 'one', name: 'Plot', savedAt: 1010 });
});

test('after the machine was started anew, a number that is taken again proves nothing', async () => {
  await run(1).keep(draft('one'));
  expect(await run(2, 5000).restore()).toMatchObject({ text: 'one' });
});

test('a draft with our own number is an earlier run’s', async () => {
  await run(1).keep(draft('one'));
  expect(await run(1).restore()).toMatchObject({ text: 'one' });
});

test('two runs do not overwrite each other, and both are offered in the end', async () => {
  await run(1).keep(draft('one'));
  await run(2).keep(draft('two'));
  alive = new Set([3]);
  const third = run(3);
  expect(await third.restore()).toMatchObject({ text: 'two' });
  await third.discard();
  expect(await third.restore()).toMatchObject({ text: 'one' });
});

test('what was restored stays until it lives on in a new draft', async () => {
  await run(1).keep(draft('one'));
  alive.delete(1);
  const second = run(2);
  await second.restore();
  expect(await readdir(folder)).toHaveLength(1);
  expect(await second.restore()).toMatchObject({ text: 'one' });
  await second.keep(draft('one and more'));
  expect(await readdir(folder)).toHaveLength(1);
  expect(await second.restore()).toMatchObject({ text: 'one and more' });
  await second.discard();
  expect(await readdir(folder)).toEqual([]);
});

test('damaged drafts and other files are passed over, and left', async () => {
  await writeFile(join(folder, 'draft-broken.json'), '{"run": 1, "text"');
  await writeFile(join(folder, 'draft-odd.json'), '{"run": "x"}');
  await writeFile(join(folder, 'notes.json'), '{}');
  expect(await run(1).restore()).toBeNull();
  expect(await readdir(folder)).toHaveLength(3);
});
