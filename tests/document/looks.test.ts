import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { looksOf, nodulesKnown } from '../../app/document/looks';
import { parseGarden } from '../../app/document/parse';
import { bedSeason } from '../../app/document/seasonInput';
import { serializeGarden } from '../../app/document/serialize';
import type { Garden, Planting } from '../../app/document/schema';
import { exampleGarden } from './exampleGarden';

const frozen = readFileSync(join(import.meta.dirname, '../documents/v1-look.json'), 'utf8');
const read = (text: string): Garden => {
  const result = parseGarden(text);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

describe('a look at a bed in the file', () => {
  test('a frozen garden with looks opens and keeps them, to the byte', () => {
    const garden = read(frozen);
    expect(garden.events.filter(({ kind }) => kind === 'look and dig')).toHaveLength(2);
    expect(serializeGarden(garden)).toBe(frozen);
  });
  const withLook = (look: object): string =>
    JSON.stringify({
      ...exampleGarden(),
      events: [{ id: 'look-1', date: '2021-06-10', kind: 'look and dig', bedId: 'bed-1', ...look }],
    });
  test.each([
    ['nothing seen', {}, /nothing that was seen/],
    ['an answer that is none', { leaves: 'blue' }, /yellow, normal, dark and lush/],
    ['a sign nobody knows', { worms: 'many', leaves: 'yellow' }, /not known here: worms/],
    ['a bed that is gone', { bedId: 'bed-9', leaves: 'yellow' }, /bed/],
  ])('%s is refused whole, and the entry named', (_name, look, said) => {
    const result = parseGarden(withLook(look));
    expect(result.ok).toBe(false);
    expect(JSON.stringify(result)).toMatch(said);
    expect(JSON.stringify(result)).toMatch(/look|entry/);
  });
  test('a kind of entry that this program does not know is refused, never dropped', () => {
    const text = withLook({ leaves: 'yellow' }).replace('look and dig', 'listen and wait');
    expect(parseGarden(text)).toMatchObject({ ok: false, error: { kind: 'broken' } });
  });
  test('becomes what the draws are weighed by, bed by bed', () => {
    const garden = read(withLook({ leaves: 'yellow', moistFingerDeep: false }));
    expect(looksOf(garden, 'bed-1')).toEqual([
      { day: dayOf('2021-06-10'), leaves: 'yellow', moistFingerDeep: false },
    ]);
    expect(looksOf(garden, 'bed-2')).toEqual([]);
  });
});

describe('nodules that were looked at', () => {
  const planting = {
    cropId: 'snap_bean_pole',
    started: '2021-05-10',
    cleared: null,
    nodules: 'not looked',
  } as Planting;
  const on = (date: string, nodules: 'pink' | 'white' | 'none') => ({ day: dayOf(date), nodules });
  const today = dayOf('2021-08-01');

  test('the latest look while the planting stood counts, else what stands at the planting', () => {
    const looks = [on('2021-07-20', 'pink'), on('2021-07-01', 'none')];
    expect(nodulesKnown(planting, looks, today)).toBe('pink');
    expect(nodulesKnown(planting, looks, dayOf('2021-07-10'))).toBe('none');
    expect(nodulesKnown(planting, [], today)).toBe('not looked');
    expect(nodulesKnown({ ...planting, nodules: 'white' }, [], today)).toBe('white');
    expect(nodulesKnown({ ...planting, cleared: '2021-06-30' }, looks, today)).toBe('not looked');
    expect(nodulesKnown({ ...planting, started: '2021-07-22' }, looks, today)).toBe('not looked');
  });
  test('none before they can work tells nothing, and only legumes have any', () => {
    expect(nodulesKnown(planting, [on('2021-05-20', 'none')], today)).toBe('not looked');
    expect(nodulesKnown(planting, [on('2021-05-20', 'pink')], today)).toBe('pink');
    const tomato = { ...planting, cropId: 'tomato' };
    expect(nodulesKnown(tomato, [on('2021-07-01', 'none')], today)).toBe('not looked');
  });
  test('white inside turns fixation off for the sums of that day and later', () => {
    const garden = exampleGarden();
    const beans: Garden = {
      ...garden,
      plantings: [
        { ...garden.plantings[0]!, ...planting, id: 'p', bedId: 'bed-1', firstHarvest: null },
      ],
      events: [
        {
          id: 'look-1',
          date: '2021-07-01',
          kind: 'look and dig',
          bedId: 'bed-1',
          nodules: 'white',
        },
      ],
      applications: [],
    };
    const seen = (date: string) => bedSeason(beans, 'bed-1', dayOf(date)).plantings[0]?.nodulesSeen;
    expect(seen('2021-06-30')).toBeNull();
    expect(seen('2021-07-01')).toBe(false);
  });
});
