// Sums that are kept with what they are made of, or made a shorter way, are to the last bit those that
// are made anew the long way.
import fc from 'fast-check';
import { freeze, produce } from 'immer';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { lotOf } from '../../app/core/lawn/clippings';
import { seasonWeather } from '../../app/core/season/ahead';
import { readRecord } from '../../app/core/season/recordRead';
import { mowingAccount } from '../../app/document/accounts';
import { anyBed } from '../../app/document/bedPast';
import { lotOfAmount } from '../../app/document/keptLots';
import { lawnRounds, takenKilograms } from '../../app/document/lawnRounds';
import { sumOf } from '../../app/document/lawnYield';
import { layerInput } from '../../app/document/layerInput';
import { lotInputOf } from '../../app/document/layerMass';
import { clippingsOf } from '../../app/document/materialValues';
import type { Garden } from '../../app/document/schema';
import { normalsOf, recordOf } from '../../app/document/weatherRecord';
import { sameQuestion } from '../../app/store/sameQuestion';
import { typicalWeatherSpread } from '../../app/tables/imaginedWeather';
import { bigGarden } from '../bench/bigGarden';
import { edited, randomEdits } from './randomEdits';

const garden = freeze(bigGarden({ beds: 3, years: 4, seed: 8 }), true);
const anew = (of: Garden): Garden => structuredClone(of);

describe('layers', () => {
  const inputs = (of: Garden) =>
    of.applications.flatMap((application) => {
      const bed = anyBed(of, application.bedId);
      return bed ? [layerInput(of, bed, application)] : [];
    });
  const books = (of: Garden) => of.mowings.map((mowing) => mowingAccount(of, mowing));

  test('kept, and the books made of them, are as made anew after any edits', () => {
    const outcome = (ask: () => unknown): unknown => {
      try {
        return ask();
      } catch (error) {
        return String(error);
      }
    };
    fc.assert(
      fc.property(randomEdits, (edits) => {
        let now = garden;
        for (const edit of edits) {
          now = edited(now, edit);
          for (const sums of [inputs, books])
            expect(
              sameQuestion(
                outcome(() => sums(now)),
                outcome(() => sums(anew(now))),
              ),
            ).toBe(true);
        }
      }),
      { numRuns: 8 },
    );
  }, 60_000);

  test('are reckoned once for as long as nothing of them changes', () => {
    const before = inputs(garden);
    const watered = produce(garden, ({ events }) => void events.pop());
    expect(inputs(watered).every((layer, at) => layer === before[at])).toBe(true);
    const [mowing] = garden.mowings;
    const another = produce(
      garden,
      ({ mowings }) => void (mowings[0]!.kind = mowing!.kind === 'fed' ? 'lean' : 'fed'),
    );
    const others = inputs(another).filter((layer, at) => layer !== before[at]);
    const laid = garden.applications.filter(
      ({ from }) => from.source === 'mowing' && from.mowingId === mowing!.id,
    );
    expect(laid.length).toBeGreaterThan(0);
    expect(others.map(({ id }) => id)).toEqual(laid.map(({ id }) => id));
  });
});

describe('lots', () => {
  const input = (of: Garden, at: number) => {
    const mowing = of.mowings[at]!;
    const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
    return lotInputOf(of, mowing.amount, clippingsOf(of, mowing), handling, null);
  };
  test('of amounts alike are one, and those of the very draws', () => {
    // every fourth week is as wet and of the same kind
    const [one, like, other] = [0, 4, 1].map((at) =>
      lotOfAmount(garden.mowings[at]!.amount, input(garden, at)),
    );
    expect(like).toBe(one);
    expect(one).toEqual(lotOf(input(garden, 0)));
    expect(other).not.toBe(one);
    expect(other).toEqual(lotOf(input(garden, 1)));
  });
});

describe('a lawn’s mowings of earlier seasons', () => {
  test('carried off what their rounds say, without a draw', () => {
    const [lawn] = garden.lawns;
    const heaped = produce(garden, ({ mowings }) =>
      mowings.forEach((mowing, at) => {
        if (at % 3 === 0) mowing.rest = { to: 'undecided' };
      }),
    );
    for (const of of [garden, heaped])
      for (const year of [2010, 2011, 2012, 2013]) {
        const [from, to] = [dayOf(`${year}-01-01`), dayOf(`${year}-12-31`)];
        const rounds = lawnRounds(of, lawn!.id, from, to);
        expect(rounds.length).toBeGreaterThan(5);
        expect(takenKilograms(of, lawn!.id, from, to)).toBe(sumOf(rounds, 'taken').median);
      }
    expect(takenKilograms(garden, lawn!.id, dayOf('1999-01-01'), dayOf('1999-12-31'))).toBeNull();
  });
});

describe('a record', () => {
  const today = dayOf('2013-06-15');
  test('is read once for a day, and for another day anew', () => {
    const record = recordOf(garden, today);
    expect(recordOf(garden, today)).toBe(record);
    expect(readRecord(record, today)).toBe(readRecord(record, today));
    const before = readRecord(record, today);
    expect(before.years).toEqual([2010, 2011, 2012]);
    expect(readRecord(record, dayOf('2011-03-01')).years).toEqual([2010]);
    expect(readRecord(record, today)).toEqual(before);
  });

  test('that may still be changed is read as it is', () => {
    const record = [...recordOf(garden, today)];
    expect(readRecord(record, today).known.size).toBe(record.length);
    record.pop();
    expect(readRecord(record, today).known.size).toBe(record.length);
  });

  test.each([false, true])('kept or not, it imagines the same days, south: %s', (isSouthern) => {
    const record = recordOf(garden, today);
    const run = (of: typeof record) =>
      seasonWeather(
        of,
        normalsOf(garden),
        today - 30,
        today + 150,
        today,
        1,
        typicalWeatherSpread(41),
        isSouthern,
      );
    expect(run(record)).toEqual(run([...record]));
    expect(run(record)).toEqual(run([...record]));
  });
});
