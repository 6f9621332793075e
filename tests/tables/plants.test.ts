import { describe, expect, test } from 'vitest';
import { coverCrops } from '../../app/tables/frost/coverCrops';
import { tender } from '../../app/tables/frost/tender';
import { tolerant } from '../../app/tables/frost/tolerant';
import { veryHardy } from '../../app/tables/frost/veryHardy';
import { type CropId, cropRows, crops } from '../../app/tables/crops';
import { cropTimings } from '../../app/tables/cropTimings';
import {
  families,
  type FamilyId,
  familyOf,
  familyOfPlant,
  familyPlants,
  troubles,
} from '../../app/tables/families';
import { type FrostRow, frostOf, weeksByClass } from '../../app/tables/frost';
import { germination } from '../../app/tables/germination';
import { fixedAmounts, noduleGroups } from '../../app/tables/legumes';
import { officialRowOf, officialRows } from '../../app/tables/officialDemand';
import { residueReadings } from '../../app/tables/residues';
import type { Row } from '../../app/tables/shapes';
import digest from './plantDigest.json';

const three = ({ low, typical, high }: Row): readonly number[] => [low, typical, high];
const ends = (row: Row | null): readonly number[] | null => (row ? [row.low, row.high] : null);
const cropIds = Object.keys(crops) as CropId[];

describe('families', () => {
  test('are those that were collected, with their seasons', () => {
    expect(Object.keys(families).sort()).toEqual(Object.keys(digest.families).sort());
    for (const [id, wanted] of Object.entries(digest.families)) {
      const [low, typical, high] = wanted;
      // asparagus: never again, said by its trouble; the row ends at 20 seasons
      const last = high ?? 20;
      expect(three(families[id as FamilyId].freeSeasons), id).toEqual([low, typical, last]);
    }
    expect(troubles['asparagus wilt'].freeSeasons).toBeNull();
  });

  test('hold every crop of the table', () => {
    for (const { id, family } of cropRows) expect(familyOf(family), id).toBeDefined();
    expect(familyOf('constructor')).toBeUndefined();
  });

  test('hold at least the plants that were collected, each once', () => {
    const names: string[] = [];
    for (const [id, count] of Object.entries(digest.plantsInFamilies)) {
      const here = Object.values(familyPlants[id as FamilyId]).flat();
      expect(here.length, id).toBeGreaterThanOrEqual(count);
      names.push(...here);
    }
    expect(new Set(names).size).toBe(names.length);
  });

  test('are found by a plain name', () => {
    expect(familyOfPlant(' Snapdragon ')).toBe('Plantaginaceae');
    expect(familyOfPlant('rocket')).toBe('Brassicaceae');
    expect(familyOfPlant('plastic flower')).toBeUndefined();
  });

  test('a disease that was seen keeps its plants away for longer than usual', () => {
    for (const { name, families: ids, freeSeasons } of Object.values(troubles)) {
      for (const id of ids) {
        expect(freeSeasons?.typical, name).toBeGreaterThan(families[id].freeSeasons.typical);
      }
    }
  });
});

describe('frost', () => {
  const rows: readonly FrostRow[] = [...veryHardy, ...tolerant, ...tender];

  test('rows are those that were collected, group by group and in their order', () => {
    const wanted = [
      ...digest.frost.filter(([, kind]) => kind === 'very hardy'),
      ...digest.frost.filter(([, kind]) => kind === 'frost tolerant'),
      ...digest.frost.filter(([, kind]) => String(kind).includes('tender')),
    ];
    expect(wanted).toHaveLength(86);
    expect(
      rows.map((row) => [
        row.frostClass,
        ends(row.killedAt),
        ends(row.weeks),
        row.soilFrom?.typical,
      ]),
    ).toEqual(wanted.map(([, ...cells]) => cells));
    expect(coverCrops.map(({ killedAt }) => ends(killedAt))).toEqual(
      digest.coverCropsKilled.map(([, killed]) => killed),
    );
  });

  test('has one row for every crop, which agrees with "frost kills it"', () => {
    for (const id of cropIds) {
      const row = frostOf(id);
      expect(row, id).toBeDefined();
      const dies = row?.frostClass === 'tender' || row?.frostClass === 'very tender';
      // the class of potatoes is of the planted tuber; their leaves die in any frost
      expect(crops[id].frostTender, id).toBe(dies || id === 'potato');
      if (crops[id].frostTender && row?.killedAt)
        expect(row.killedAt.high, id).toBeGreaterThan(-0.01);
    }
    const named = [...rows, ...coverCrops].flatMap((row) => row.crops);
    expect(new Set(named).size).toBe(named.length);
  });

  test('hardier classes go out earlier', () => {
    const order = ['very hardy', 'frost tolerant', 'tender', 'very tender'] as const;
    const typical = order.map((name) => weeksByClass[name].typical);
    expect(typical).toEqual([...typical].sort((one, two) => one - two));
  });
});

describe('germination', () => {
  test('rows are those that were collected; sets, roots and tubers have none', () => {
    const found = Object.fromEntries(
      Object.entries(germination).map(([id, { coldest, best }]) => [
        id,
        [three(coldest), three(best)],
      ]),
    );
    expect(found).toEqual(digest.germination);
    for (const id of ['garlic', 'sweet_potato', 'strawberry', 'rhubarb', 'dahlia']) {
      expect(Object.hasOwn(germination, id), id).toBe(false);
    }
  });
});

describe('what a crop leaves', () => {
  test('readings are those that were collected, in their order', () => {
    expect(residueReadings).toHaveLength(digest.residues.length);
    residueReadings.forEach(({ name, nitrogenPercent, carbonToNitrogen }, at) => {
      const [, nitrogen, low, high, ratio] = digest.residues[at] as [string, ...(number | null)[]];
      if (nitrogen !== null) expect(nitrogenPercent?.typical, name).toBe(nitrogen);
      if (low !== null) expect(ends(nitrogenPercent), name).toEqual([low, high]);
      if (ratio !== null) expect(carbonToNitrogen?.typical, name).toBe(ratio);
      expect(nitrogenPercent ?? carbonToNitrogen, name).not.toBeNull();
    });
  });

  test('every official residue credit is carried', () => {
    const wanted = Object.values(digest.credits);
    const held = officialRows.flatMap(({ residueCredit }) => residueCredit?.typical ?? []);
    // lettuce is one line in print for head and leaf; romaine and the others came beside it
    for (const value of new Set(wanted)) {
      const count = (list: readonly number[]): number => list.filter((one) => one === value).length;
      expect(count(held), String(value)).toBeGreaterThanOrEqual(count(wanted));
    }
  });

  test('uptake stays near what the law lets a crop have, at the yield of the law', () => {
    // A demand also holds a reserve in the soil, a legume's leaves out what it fixes, and a
    // perennial keeps leaves and roots from year to year: those two are not compared.
    const far: string[] = [];
    for (const id of cropIds) {
      const row = officialRowOf(id);
      const { excessClass, legume } = crops[id];
      if (!row?.goodYield || !row.demand || legume || excessClass === 'perennial') continue;
      const scaled =
        (crops[id].uptake.typical * row.goodYield.typical) / crops[id].goodYield.typical;
      const share = scaled / row.demand.typical;
      if (share < 0.6 || share > 1.7) far.push(`${id} ${share.toFixed(2)}`);
    }
    expect(far).toEqual([]);
  });
});

describe('legumes', () => {
  test('amounts are those that were collected, and no crop without nodules has one', () => {
    expect(Object.keys(fixedAmounts).sort()).toEqual(Object.keys(digest.fixed).sort());
    for (const [id, row] of Object.entries(fixedAmounts)) {
      expect(three(row), id).toEqual(digest.fixed[id as keyof typeof digest.fixed]);
      expect(crops[id as CropId].legume, id).not.toBeNull();
    }
  });

  test('every legume belongs to one group of nodule bacteria', () => {
    const grouped = noduleGroups.flat();
    expect(new Set(grouped).size).toBe(grouped.length);
    expect([...grouped].sort()).toEqual(cropIds.filter((id) => crops[id].legume !== null).sort());
  });
});

test('timings name crops of the table', () => {
  for (const { crop, when } of Object.values(cropTimings)) {
    expect(crops[crop]).toBeDefined();
    expect(when.low).toBeLessThanOrEqual(when.high);
  }
});
