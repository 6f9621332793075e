import { alreadyLoggedSentence } from '../../app/words/lawnWords';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { unitsOf } from '../../app/amounts/unitSystem';
import { dayOf } from '../../app/core/days';
import { lawnOutlook } from '../../app/document/lawnOutlook';
import { parseGarden } from '../../app/document/parse';
import { lawnDroughtSentence, lawnReadySentence } from '../../app/words/lawnOutlookWords';
import {
  lawnCostSentence,
  lawnRatioSentence,
  lawnTakenSentence,
} from '../../app/words/lawnAccountWords';

const parsed = parseGarden(
  readFileSync(join(import.meta.dirname, '../../assets/gardens/sample.mowings'), 'utf8'),
);
if (!parsed.ok) throw new Error(parsed.error.kind);
const garden = parsed.value;
const back = garden.lawns.find(({ name }) => name.startsWith('Back'))!;
const outlook = lawnOutlook(garden, back.id, dayOf('2013-06-22'), dayOf('2013-06-15'));
const bag = garden.containers.find(({ name }) => name === 'bag')!;

describe('what a lawn gives and costs, in words', () => {
  const units = unitsOf('metric');

  test('the days since a mowing nobody wrote down are those that were said', () => {
    const said = (days: number) =>
      lawnReadySentence(
        {
          ...outlook,
          isSinceSupposed: true,
          usualDays: { ...outlook.usualDays, typical: days },
        },
        back.name,
        'Saturday',
        bag,
        units.mass,
      );
    expect(said(7)).toMatch(/as if it was mown a week before\.$/);
    expect(said(14)).toMatch(/as if it was mown 2 weeks before\.$/);
    expect(said(10)).toMatch(/as if it was mown 10 days before\.$/);
  });

  test('the likely number and the range come first, in the container one counts in', () => {
    const said = lawnReadySentence(outlook, back.name, 'Saturday 22 June', bag, units.mass);
    expect(said).toMatch(
      /^Back lawn should give about [\d/ ]+ bags?, likely [\d/ ]+ to [\d/ ]+ bags \(8 times in 10\) on Saturday 22 June/,
    );
    const byWeight = lawnReadySentence(outlook, back.name, 'Saturday', null, units.mass);
    expect(byWeight).toMatch(/give about \d+ kg, likely \d+ to \d+ kg \(8 times in 10\)/);
    const inPounds = lawnReadySentence(outlook, back.name, 'Saturday', null, unitsOf('us').mass);
    expect(inPounds).toContain(' lb');
  });

  test('what was learnt, what was carried off, what it costs, in either units', () => {
    expect(lawnRatioSentence(outlook)).toMatch(
      /^Learnt from 9 mowings: it gives about [\d.]+ times/,
    );
    expect(lawnRatioSentence({ ...outlook, learntFrom: 0 })).toContain('log two mowings');
    for (const system of ['metric', 'us'] as const) {
      const perArea = unitsOf(system).nitrogenPerArea;
      expect(lawnTakenSentence(outlook.taken, perArea)).toContain(perArea.symbol);
    }
    const nothing = { low: 0, typical: 0, high: 0 };
    expect(
      lawnTakenSentence({ ...outlook.taken, nitrogen: nothing }, unitsOf('us').nitrogenPerArea),
    ).toBe('None of it is written down as carried off this season.');
    expect(lawnCostSentence(outlook)).toMatch(/loses about \d+ % of its growth/);
    expect(
      lawnCostSentence({ ...outlook, cost: { ...outlook.cost, collectedShare: 0 } }),
    ).toContain('left lying');
    expect(lawnDroughtSentence({ ...outlook, waterShare: 0.31 })).toContain('about 31 %');
  });

  test('no sentence runs on or shows more than two figures', () => {
    const all = [
      lawnReadySentence(outlook, back.name, 'Saturday 22 June', bag, units.mass),
      lawnRatioSentence(outlook),
      lawnTakenSentence(outlook.taken, units.nitrogenPerArea),
      lawnCostSentence(outlook),
    ];
    for (const said of all) {
      expect(said).not.toMatch(/\d\.\d{2,}|NaN|undefined/);
      for (const part of said.split(/(?<=\.) /)) expect(part.length).toBeLessThan(220);
    }
  });
});

test('what is logged of a day already is said before it is doubted', () => {
  expect(alreadyLoggedSentence(['1 bag'], 'Back lawn', 'today')).toBe(
    '1 bag from Back lawn is logged already, mown today. Is this another mowing, or the same?',
  );
  expect(alreadyLoggedSentence(['1 bag', '2 buckets'], 'Back lawn', 'today')).toMatch(
    /^1 bag and 2 buckets from Back lawn are logged already/,
  );
});
