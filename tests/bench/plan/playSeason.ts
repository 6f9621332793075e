import { dayFromParts, partsFromDay, textFromDay, type DayNumber } from '../../../app/core/days';
import type { Solver } from '../../../app/core/plan/linearProgramme';
import { todayOf } from '../../../app/core/plan/makePlan';
import type { PlanQuestion, PlanSource } from '../../../app/core/plan/question';
import { aimAt, nitrogenDistance, type Aim } from '../../../app/core/plan/standing';
import { plantingAccounts } from '../../../app/core/season/plantingAccount';
import { runSeason } from '../../../app/core/season/season';
import { at } from '../../../app/core/season/seasonAccount';
import { watchedOf } from '../../../app/core/season/watchedSeason';
import { lawnOutlook } from '../../../app/document/lawnOutlook';
import { planQuestion } from '../../../app/document/planQuestion';
import type { Application, Garden, Mowing } from '../../../app/document/schema';
import { bedSeason } from '../../../app/document/seasonInput';
import { planWeights } from '../../../app/tables/planning';
import { limits } from '../../../app/tables/thresholds';
import { knownUpTo, type PlanGarden } from './planGarden';

/** What is done with what there is on a day: layers in litres by bed and source. */
export type Strategy = (
  question: PlanQuestion,
  garden: Garden,
) => readonly {
  readonly bedId: string;
  readonly source: PlanSource;
  readonly litres: number;
  /** laid on top unless said */
  readonly placement?: Application['placement'];
}[];

/** Weeks that are played: the next two months one by one, then one in four, while anything grows. */
const playedWeeks = [0, 1, 2, 3, 4, 5, 6, 7, 11, 15, 19, 23] as const;
/** Last day of the year on which a lawn is mown. */
const lastMowing = [10, 31] as const;

/** Everything there is, greens and browns, on the bed nearest to the gate. */
export const allOnNearest: Strategy = ({ beds, sources, today }) => {
  const [nearest] = [...beds].sort((one, other) => (one.steps ?? 0) - (other.steps ?? 0));
  return nearest
    ? thereToday(sources, today).map((source) => ({
        bedId: nearest.bedId,
        source,
        litres: source.litres,
      }))
    : [];
};

/** Everything there is over all beds, as deep on each. */
export const evenly: Strategy = ({ beds, sources, today }, garden) => {
  const all = garden.beds.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return beds.flatMap(({ bedId, question }) =>
    thereToday(sources, today).map((source) => ({
      bedId,
      source,
      litres: (source.litres * question.input.areaM2) / all,
    })),
  );
};

/** What the plan says; where a solver finds nothing, its simple rule, as in the program. */
export const planned =
  (solve: Solver): Strategy =>
  (question) => {
    const made = todayOf(question, solve);
    if (!made.ok) throw new Error(`No plan: ${made.error.kind}`);
    const { ready, today } = made.value;
    return ready.beds.flatMap(({ bed, response }, place) =>
      [...today[place]!].map(([layer, millimetres]) => ({
        bedId: bed.bedId,
        source: ready.sources[response.layers[layer]!.source]!,
        litres: millimetres * response.areaM2,
        placement: response.layers[layer]!.placement,
      })),
    );
  };

const thereToday = (sources: readonly PlanSource[], today: DayNumber): readonly PlanSource[] =>
  sources.filter(
    ({ ref, day, litres }) =>
      ref.source !== 'coming' && (day === null || day === today) && litres > 0,
  );

const plainLitres = (litres: number): Mowing['amount'] => ({
  text: `${litres} L`,
  quantity: { kind: 'volume', litres },
  certainty: 'plain',
});

/** A day that is played, and what each lawn gives on it [L]. */
export interface PlayedDay {
  readonly day: DayNumber;
  readonly litres: readonly number[];
}

/** What the lawns give on each day that is played, the same for every strategy. */
export function yieldsOf({ garden, today, truth, yieldFactor }: PlanGarden): readonly PlayedDay[] {
  const last = dayFromParts(partsFromDay(today).year, ...lastMowing);
  return playedWeeks
    .map((week) => ({ week, day: today + 7 * week }))
    .filter(({ day }) => day <= last)
    .map(({ week, day }) => {
      const known = knownUpTo(
        { ...garden, mowings: mownEachWeek(garden, today, week) },
        truth,
        day,
      );
      return {
        day,
        litres: known.lawns.map(
          ({ id }, lawn) =>
            Math.round(lawnOutlook(known, id, day).litres.typical * yieldFactor(lawn, week)) || 0,
        ),
      };
    });
}

/** Mowings that say only when a lawn was cut, so that what grows is a week's. */
const mownEachWeek = (garden: Garden, today: DayNumber, week: number): Mowing[] =>
  garden.lawns.map(({ id }) => ({
    id: `cut ${id}`,
    date: textFromDay(today + 7 * (week - 1)),
    lawnId: id,
    amount: plainLitres(1),
    wetness: 'dry',
    kind: null,
    rest: { to: 'lawn' },
  }));

/**
 * The garden at the season's end, after what there was on every day was dealt with by a strategy.
 *
 * @param weeksAhead that the strategy looks; as the program does unless said
 */
export function playSeason(
  start: PlanGarden,
  days: readonly PlayedDay[],
  strategy: Strategy,
  weeksAhead?: number,
): Garden {
  let { garden } = start;
  days.forEach(({ day, litres: litresOf }) => {
    const date = textFromDay(day);
    const mowings = garden.lawns.flatMap(({ id }, lawn): Mowing[] => {
      const litres = litresOf[lawn] ?? 0;
      return litres > 0
        ? [
            {
              id: `mown ${id} ${day}`,
              date,
              lawnId: id,
              amount: plainLitres(litres),
              wetness: 'dry',
              kind: null,
              rest: { to: 'undecided' },
            },
          ]
        : [];
    });
    garden = knownUpTo({ ...garden, mowings: [...garden.mowings, ...mowings] }, start.truth, day);
    const question = planQuestion(garden, day, undefined, weeksAhead);
    const layers = strategy(question, garden).map(
      ({ bedId, source, litres, placement = 'laid' }, index): Application => ({
        id: `laid ${day} ${index}`,
        date,
        bedId,
        from: source.ref.source === 'mowing' ? source.ref : stockOf(source),
        amount: plainLitres(litres),
        condition: source.condition,
        wetness: 'dry',
        placement,
        mixtureId: null,
        passedStops: [],
      }),
    );
    garden = {
      ...garden,
      applications: [...garden.applications, ...layers],
      mowings: garden.mowings.map((mowing) =>
        mowing.rest.to === 'undecided' ? { ...mowing, rest: { to: 'lawn' } } : mowing,
      ),
    };
  });
  return garden;
}

function stockOf({ ref }: PlanSource): Application['from'] {
  if (ref.source !== 'stock') throw new Error('What only may come was laid');
  return ref;
}

/** A bed's distance, summed over the weeks from the plan's day to the season's end [g N]. */
export interface BedScore {
  readonly bedId: string;
  readonly short: number;
  readonly over: number;
  readonly ground: number;
}

const sumOf = ({ short, over, ground }: BedScore): number => short + over + ground;
export const totalScore = (beds: readonly BedScore[]): number =>
  beds.reduce((sum, bed) => sum + sumOf(bed), 0);

/**
 * Model 11's distance of every bed on every week to the season's end, by the full model on the
 * weather that came. What a bed needs is what it needs with nothing laid, the same for all
 * strategies: what is laid must not change the measure it is held against.
 */
export function scoreOf(
  { truth, today }: PlanGarden,
  garden: Garden,
  untouched: Garden,
): readonly BedScore[] {
  const lastDay = bedSeason(untouched, untouched.beds[0]!.id, today).lastDay;
  const whole = (one: Garden): Garden => knownUpTo(one, truth, lastDay);
  return garden.beds.map(({ id, areaM2 }): BedScore => {
    const input = bedSeason(whole(garden), id, lastDay);
    const result = runSeason(input);
    const watched = watchedOf(result);
    const plain = bedSeason(whole(untouched), id, lastDay);
    const plainRun = watchedOf(runSeason(plain));
    let short = 0;
    let over = 0;
    let ground = 0;
    for (let day = today; day <= lastDay; day += 7) {
      const aim: Aim = aimAt(plain, plainRun, day, limits, planWeights);
      if (aim.need > 0) {
        const supply = plantingAccounts(input, watched, day).reduce(
          (sum, { inCrop, inReach, release, tieUp }) => sum + inCrop + inReach + release - tieUp,
          0,
        );
        const distance = areaM2 * nitrogenDistance(supply, aim, planWeights);
        if (supply < aim.need) short += distance;
        else over += distance;
      }
      ground += areaM2 * planWeights.groundGrams * (1 - at(result.coverFraction, result, day));
    }
    return { bedId: id, short, over, ground };
  });
}
