import { expect, test } from 'vitest';
import { emergenceRate } from '../../app/core/crop/emergence';
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

test('squash: 6.4 days to emergence in the field took 88.2 degree-days above 12 °C', () => {
  // Souza and others 2017: so its soil was at 25.8 °C
  expect(1 / emergenceRate(trialsOf('squash'), 12 + 88.2 / 6.4)).toBeCloseTo(6.4, 6);
  expect(emergenceRate(trialsOf('squash'), 16)).toBeCloseTo(4 / 88.2, 9);
});

/** Rows foretold from their two neighbours, over what is printed: the arithmetic behind the spread. */
test('the spread is that of printed times foretold without themselves', () => {
  const times = names
    .filter((name) =>
      emergenceTrials[name].some(({ days }) => days?.source === 'HarringtonMinges1954'),
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
