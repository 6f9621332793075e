import { dayOf, seasonEnd, textFromDay, type DayNumber } from '../core/days';
import type { LayerFacts } from '../core/season/cautions/facts';
import type { Condition } from '../core/season/input';
import {
  usualWishes,
  type LayerOfOneMillimetre,
  type PlanLawn,
  type PlanMeasure,
  type PlanQuestion,
  type PlanSource,
  type PlanSourceRef,
  type PlanWishes,
} from '../core/plan/question';
import { grassHeightRows, planWeights } from '../tables/planning';
import type { MaterialRow } from '../tables/shapes';
import { limits } from '../tables/thresholds';
import { mowingAccount, mowingMass, stockAccount } from './accounts';
import { bedQuestion } from './bedQuestion';
import { cautionFacts } from './cautionFacts';
import { clippingsKeep } from './clippingsKeep';
import { lawnHeldBack } from './lawnHeldBack';
import { leafBagOf } from './leafBag';
import { lawnOutlook, type LawnOutlook } from './lawnOutlook';
import { materialById } from './materialValues';
import { nothingLaid } from './nothingLaid';
import { bucketOf } from './planMeasure';
import type { Application, Bed, Garden, Lawn, Mowing } from './schema';
import { layerInput } from './layerInput';

/** Weeks that a plan looks ahead, this one included. */
export const usualPlanWeeks = 10;
const daysOfWeek = 7;
/** A lawn mown within so many days is not mown again this week. */
const justMownDays = 4;
/** Step of amounts in a garden without a bucket [L]. */
const stepWithoutBucket = 5;
/** Step of meals [L]. */
const stepOfMeal = 0.5;

/** A layer of a litre on a square metre, by the same sums as any layer that is written down. */
function oneMillimetreOf(
  garden: Garden,
  bed: Bed,
  from: Application['from'],
  condition: Condition,
  today: DayNumber,
): { readonly layer: LayerOfOneMillimetre; readonly facts: LayerFacts } {
  const application: Application = {
    id: 'plan',
    date: textFromDay(today),
    bedId: bed.id,
    from,
    amount: { text: '', quantity: { kind: 'volume', litres: 1 }, certainty: 'plain' },
    condition,
    wetness: 'dry',
    placement: 'laid',
    mixtureId: null,
    passedStops: [],
  };
  const { id, day, placement, ...layer } = layerInput(garden, { ...bed, areaM2: 1 }, application);
  const facts = cautionFacts(garden, bed.id, today, [application]).layers[id];
  if (!facts || day !== today || placement !== 'laid')
    throw new Error('A layer that is only thought of got lost');
  return { layer, facts };
}

/** What makes a source: everything that does not hang on how much of it there is. */
interface Making {
  readonly garden: Garden;
  readonly bed: Bed;
  readonly today: DayNumber;
  readonly bucket: PlanMeasure | null;
}

function sourceOf(
  { garden, bed, today, bucket }: Making,
  ref: PlanSourceRef,
  from: Application['from'],
  rest: Pick<PlanSource, 'id' | 'role' | 'day' | 'lawnId' | 'condition' | 'isSoaked' | 'heldBack'>,
  litres: (one: LayerOfOneMillimetre) => number,
): PlanSource {
  const { layer, facts } = oneMillimetreOf(garden, bed, from, rest.condition, today);
  return {
    ...rest,
    ref,
    litres: litres(layer),
    oneMillimetre: layer,
    facts,
    stepLitres: bucket ? bucket.litres / 2 : stepWithoutBucket,
    measure: bucket,
  };
}

function waitingSources(making: Making): PlanSource[] {
  const { garden, today } = making;
  return garden.mowings.flatMap((mowing): PlanSource[] => {
    const age = today - dayOf(mowing.date);
    if (mowing.rest.to !== 'undecided' || !clippingsKeep(mowing, today)) return [];
    const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
    const share = Math.max(0, mowingAccount(garden, mowing).leftShare);
    const isSoaked = mowing.wetness === 'soaked';
    return [
      sourceOf(
        making,
        { source: 'mowing', mowingId: mowing.id },
        { source: 'mowing', mowingId: mowing.id },
        {
          id: `mowing ${mowing.id}`,
          role: 'greens',
          day: today,
          lawnId: mowing.lawnId,
          condition: age === 0 || isSoaked ? 'just cut' : 'limp',
          isSoaked,
          heldBack: lawn ? lawnHeldBack(garden, lawn, dayOf(mowing.date)) : null,
        },
        () => mowingMass(garden, mowing).litres * share,
      ),
    ];
  });
}

/** What something in store is for; null: no mulch and no feed (wood on top feeds nobody). */
function roleOf({ isBrowns, isGreens, materialClass }: MaterialRow): PlanSource['role'] | null {
  if (materialClass === 'slow') return 'feed';
  if (isGreens) return 'greens';
  return isBrowns ? 'browns' : null;
}

/** Meals are strong: they are measured out in small amounts, not by the bucket. */
const isMeal = ({ slowKind }: LayerOfOneMillimetre): boolean => slowKind === 'meal';

function storeSources(making: Making): PlanSource[] {
  const { garden, today } = making;
  return garden.stock.flatMap((stock): PlanSource[] => {
    const { row } = materialById(garden, stock.materialId);
    const role = roleOf(row);
    if (stock.role !== 'store' || role === null) return [];
    const left = stockAccount(garden, stock.id).leftDryKilograms;
    const source = sourceOf(
      making,
      { source: 'stock', stockId: stock.id },
      { source: 'stock', stockId: stock.id },
      {
        id: `stock ${stock.id}`,
        role,
        day: role === 'feed' ? today : null,
        lawnId: null,
        condition: 'crisp',
        isSoaked: false,
        heldBack: null,
      },
      ({ dryKgPerM2 }) => (dryKgPerM2 > 0 ? Math.max(0, left) / dryKgPerM2 : 0),
    );
    return [
      isMeal(source.oneMillimetre) ? { ...source, stepLitres: stepOfMeal, measure: null } : source,
    ];
  });
}

/** Grams of dry matter per m2 expected to grow on days of an outlook, both ends included. */
function grownBetween({ weeks }: LawnOutlook, from: DayNumber, to: DayNumber): number {
  return weeks.reduce((sum, week) => {
    const first = Math.max(from, week.from);
    const last = Math.min(to, week.from + daysOfWeek - 1);
    return sum + (Math.max(0, last - first + 1) / daysOfWeek) * week.expected.typical;
  }, 0);
}

/** A mowing that has not been done, for what is laid of it. */
export const comingMowing = (lawnId: string, day: DayNumber, kind: Mowing['kind']): Mowing => ({
  id: `coming ${lawnId} ${day}`,
  date: textFromDay(day),
  lawnId,
  amount: { text: '', quantity: { kind: 'volume', litres: 1 }, certainty: 'plain' },
  wetness: 'dry',
  kind,
  rest: { to: 'undecided' },
});

/**
 * Places among the days of the plan on which a lawn is mown: as often as was said of it, each
 * mowing on the plan's day nearest to when it is due; every week where nothing was said.
 *
 * @param last day of its last mowing; -Infinity: never yet
 */
export function mowingPlaces(
  { mownEveryDays: every }: Pick<Lawn, 'mownEveryDays'>,
  last: DayNumber,
  days: readonly DayNumber[],
): readonly number[] {
  const [today = 0] = days;
  const places = days.map((_day, place) => place);
  if (every === undefined) return places.slice(today - last < justMownDays ? 1 : 0);
  const first = Math.max(0, last + every - today);
  const mowings = Math.ceil((days.length * daysOfWeek) / every) + 1;
  // a lawn mown twice a week falls on a day of the plan twice
  const due = new Set(
    Array.from({ length: mowings }, (_unused, at) => Math.round((first + at * every) / daysOfWeek)),
  );
  return places.filter((place) => due.has(place));
}

/** A lawn's next mowing, and what it and those after it are expected to bring. */
function comingOf(
  making: Making,
  lawn: Lawn,
  days: readonly DayNumber[],
  wishes: PlanWishes,
): { readonly lawn: PlanLawn; readonly sources: readonly PlanSource[] } {
  const { garden, today } = making;
  const last = garden.mowings
    .filter(({ lawnId, date }) => lawnId === lawn.id && dayOf(date) <= today)
    .reduce((latest, { date }) => Math.max(latest, dayOf(date)), -Infinity);
  const places = mowingPlaces(lawn, last, days);
  const mowsOn = days[places[0] ?? days.length] ?? today + daysOfWeek * days.length;
  const outlook = lawnOutlook(garden, lawn.id, mowsOn, today);
  const factor = grassHeightRows[wishes.heights[lawn.id] ?? 'usual'].typical;
  const sources = places.map((place, at): PlanSource => {
    const day = today + place * daysOfWeek;
    const sinceThen = today + (places[at - 1] ?? place) * daysOfWeek;
    const mowing = comingMowing(lawn.id, day, at === 0 ? outlook.kind : null);
    const dry =
      at === 0
        ? outlook.dryKilograms.typical * factor
        : (grownBetween(outlook, sinceThen + 1, day) * lawn.areaM2) / 1000;
    return sourceOf(
      { ...making, garden: { ...garden, mowings: [...garden.mowings, mowing] } },
      { source: 'coming', lawnId: lawn.id, day },
      { source: 'mowing', mowingId: mowing.id },
      {
        id: mowing.id,
        role: 'greens',
        day,
        lawnId: lawn.id,
        condition: 'just cut',
        isSoaked: false,
        heldBack: lawnHeldBack(garden, lawn, day),
      },
      ({ dryKgPerM2 }) => dry / dryKgPerM2,
    );
  });
  const [next] = sources;
  const perDry = next ? 1 / next.oneMillimetre.dryKgPerM2 : 0;
  const container = garden.containers.find(({ id }) => id === outlook.containers?.containerId);
  return {
    lawn: {
      lawnId: lawn.id,
      areaM2: lawn.areaM2,
      mowsOn,
      sourceId: next && next.litres > 0 ? next.id : null,
      expectedLitres: {
        low: outlook.dryKilograms.low * factor * perDry,
        typical: outlook.dryKilograms.typical * factor * perDry,
        high: outlook.dryKilograms.high * factor * perDry,
      },
      bag: container ? { containerId: container.id, litres: container.litres } : null,
      heldBack: lawnHeldBack(garden, lawn, mowsOn),
    },
    sources: sources.filter(({ litres }) => litres > 0),
  };
}

/** What is wished; beds where nothing is laid this week are left out, whatever was asked for them. */
function wishesToday(garden: Garden, today: DayNumber, wishes: PlanWishes): PlanWishes {
  const none = new Set(nothingLaid(garden, today).map(({ bedId }) => bedId));
  if (none.size === 0) return wishes;
  return {
    ...wishes,
    pins: [
      ...wishes.pins.filter(({ bedId }) => !none.has(bedId)),
      ...[...none].map((bedId) => ({ bedId, sourceId: null, litres: 0 })),
    ],
  };
}

/**
 * What the weekly plan is made from: every bed as it is, what is cut and waiting, what stands in
 * the stores, and what the lawns are expected to bring in the coming weeks.
 *
 * Greens can be laid on the day they are cut or, waiting, today; stores on any day of the plan.
 * Compost, manure and meals are there for hungry beds, today. Clippings a day old
 * count as limp unless they were soaked. Days are a week apart and end with the season.
 *
 * @param wishes pins, how many beds to walk to, how high the grass stands
 * @throws on a garden that `parseGarden` and the store let not in
 */
export function planQuestion(
  garden: Garden,
  today: DayNumber,
  wishes: PlanWishes = usualWishes,
  weeks: number = usualPlanWeeks,
): PlanQuestion {
  const lastDay = seasonEnd(today, garden.garden.seasonStartMonth);
  const days = Array.from({ length: weeks }, (_unused, week) => today + week * daysOfWeek).filter(
    (day) => day <= lastDay,
  );
  const [bed] = garden.beds;
  const making: Making | null = bed ? { garden, bed, today, bucket: bucketOf(garden) } : null;
  const coming = making ? garden.lawns.map((lawn) => comingOf(making, lawn, days, wishes)) : [];
  return {
    today,
    days,
    beds: garden.beds.map(({ id, steps }) => ({
      bedId: id,
      steps,
      isWalkedToday: garden.applications.some(
        ({ bedId, date }) => bedId === id && dayOf(date) === today,
      ),
      question: bedQuestion(garden, id, today),
    })),
    sources: making
      ? [
          ...waitingSources(making),
          ...storeSources(making),
          ...coming.flatMap(({ sources }) => sources),
        ]
      : [],
    lawns: coming.map(({ lawn }) => lawn),
    heapStockId: garden.stock.find(({ role }) => role === 'heap')?.id ?? null,
    leafBagLitres: leafBagOf(garden),
    wishes: wishesToday(garden, today, wishes),
    limits,
    weights: planWeights,
  };
}
