import { expect, test } from 'vitest';
import { cropOf } from '../../app/tables/crops';
import {
  cropEmergence,
  emergenceSpread,
  emergenceTrials,
  sowingTrialsOf,
  trialsOf,
  type EmergenceName,
} from '../../app/tables/emergence';
import { germination } from '../../app/tables/germination';

const names = Object.keys(emergenceTrials) as EmergenceName[];

test.each(names)('%s was tried from cold to warm, more than once', (name) => {
  const tried = trialsOf(name).map(({ celsius }) => celsius);
  expect(tried).toEqual(tried.toSorted((one, other) => one - other));
  expect(new Set(tried).size).toBe(tried.length);
  expect(trialsOf(name).filter(({ days }) => days !== null).length).toBeGreaterThanOrEqual(3);
});

test('every crop that is foretold is one of the table and can be sown', () => {
  for (const id of Object.keys(cropEmergence)) {
    expect(cropOf(id)?.name, id).toBeTruthy();
    expect(Object.hasOwn(germination, id), id).toBe(true);
    expect(sowingTrialsOf(id)).toBeDefined();
  }
});

test('crops nobody tried have none', () => {
  for (const id of ['dahlia', 'potato', 'zinnia', 'rye_vetch', 'no such crop'])
    expect(sowingTrialsOf(id)).toBeUndefined();
});

/** Rows foretold from their two neighbours, over what is printed: the arithmetic behind the spread. */
test('the spread is that of printed times foretold without themselves', () => {
  const times = names
    .filter((name) =>
      emergenceTrials[name].every(({ days }) => days?.source !== 'SeedCompanyTable'),
    )
    .flatMap((name) => {
      const known = trialsOf(name).filter(({ days }) => days !== null);
      return known.slice(1, -1).map(({ celsius, days }, index) => {
        const [before, after] = [known[index]!, known[index + 2]!];
        const way = (celsius - before.celsius) / (after.celsius - before.celsius);
        return days! * ((1 - way) / before.days! + way / after.days!);
      });
    })
    .toSorted((one, other) => one - other);
  expect(times).toHaveLength(84);
  const at = (share: number): number => {
    const place = share * (times.length - 1);
    const low = times[Math.floor(place)]!;
    return low + (place % 1) * (times[Math.ceil(place)]! - low);
  };
  expect(at(0.05)).toBeCloseTo(emergenceSpread.low, 2);
  expect(at(0.5)).toBeCloseTo(0.98, 2);
  expect(at(0.95)).toBeCloseTo(emergenceSpread.high, 2);
});
