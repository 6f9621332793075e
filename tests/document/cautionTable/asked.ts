import { dayOf, textFromDay, yearOf } from '../../../app/core/days';
import { answerBed, answerProposal, type BedAnswer } from '../../../app/core/season/bedAnswer';
import type { Limits } from '../../../app/core/season/limits';
import type { BedVerdict, Caution } from '../../../app/core/season/verdict';
import { bedQuestion } from '../../../app/document/bedQuestion';
import type {
  Application,
  Garden,
  GardenEvent,
  Lawn,
  Mowing,
  Planting,
  Stock,
  Treatment,
  WeatherRow,
} from '../../../app/document/schema';
import {
  application,
  bed as bedOf,
  emptyGarden,
  planting as plantingOf,
  typed,
} from '../../documents/gardens/parts';

/* Gardens of one bed, made to lie close to a line of the threshold table. All of it is invented. */

export const bedId = 'bed';
export const areaM2 = 10;
/** The day on which they are looked at, unless a case says otherwise. */
export const usualToday = '2013-07-01';

/** A day so many days after another. */
export const later = (text: string, days: number): string => textFromDay(dayOf(text) + days);

/**
 * Weather without surprises: a year's wave of warmth, 10 mm of rain every fifth day. 18 to 30 deg C
 * in July, -6 to 6 in January.
 */
export function calmDays(first: string, last: string): WeatherRow[] {
  const rows: WeatherRow[] = [];
  for (let day = dayOf(first); day <= dayOf(last); day += 1) {
    const wave = Math.cos((2 * Math.PI * (day - dayOf('2013-01-20'))) / 365);
    const mean = Math.round(10 * (12 - 12 * wave)) / 10;
    rows.push([textFromDay(day), mean - 6, mean + 6, day % 5 === 0 ? 10 : 0]);
  }
  return rows;
}

/** The same days with other weather on some of them: lowest, highest, rain; null leaves a value. */
export const withDays = (
  rows: readonly WeatherRow[],
  changes: Readonly<Record<string, readonly [number | null, number | null, number | null]>>,
): WeatherRow[] =>
  rows.map(([date, lowest, highest, rain]) => {
    const [low = null, high = null, wet = null] = changes[date] ?? [];
    return [date, low ?? lowest, high ?? highest, wet ?? rain];
  });

export const nothingOnIt: Treatment = { answer: 'nothing' };

export const lawn: Lawn = {
  id: 'lawn',
  name: 'Lawn',
  areaM2: 400,
  grass: 'cool',
  kind: 'ordinary',
  creepingGrass: false,
  seedHeadsSeen: null,
  fouledByPets: false,
  treatment: nothingOnIt,
};

export const store = (id: string, materialId: string, changes: Partial<Stock> = {}): Stock => ({
  id,
  name: `The ${id}`,
  materialId,
  role: 'store',
  amount: typed('1000 kg', { kind: 'mass', kilograms: 1000 }),
  date: '2013-01-01',
  treatment: nothingOnIt,
  ...changes,
});

export const mowing = (date: string, changes: Partial<Mowing> = {}): Mowing => ({
  id: `mown ${date}`,
  date,
  lawnId: 'lawn',
  amount: typed('2000 L', { kind: 'volume', litres: 2000 }),
  wetness: 'damp',
  kind: null,
  rest: { to: 'lawn' },
  ...changes,
});

/** Clippings of a day's mowing, so many mm of them. */
export const clippings = (
  date: string,
  millimetres: number,
  changes: Partial<Application> = {},
): Application =>
  application({
    id: `clippings ${date}`,
    date,
    bedId,
    from: { source: 'mowing', mowingId: `mown ${date}` },
    amount: typed('', { kind: 'depth', millimetres }),
    ...changes,
  });

/** So many mm of something kept in a store of that name. */
export const stored = (
  stockId: string,
  date: string,
  millimetres: number,
  changes: Partial<Application> = {},
): Application =>
  application({
    id: `${stockId} ${date}`,
    date,
    bedId,
    from: { source: 'stock', stockId },
    amount: typed('', { kind: 'depth', millimetres }),
    condition: 'crisp',
    ...changes,
  });

export const crop = (
  cropId: string,
  started: string,
  how: Planting['how'],
  changes: Partial<Planting> = {},
): Planting => plantingOf({ id: cropId, bedId, cropId, started, how, ...changes });

export const soilTest = (date: string, nitrateMgPerKg: number): GardenEvent => ({
  id: `test ${date}`,
  date,
  kind: 'soil test',
  bedId,
  nitrateMgPerKg,
  organicMatterPercent: null,
  depthCentimetres: 30,
});

export const watered = (date: string, millimetres: number): GardenEvent => ({
  id: `watered ${date}`,
  date,
  kind: 'water',
  bedId,
  millimetres,
});

export interface Made {
  readonly today?: string;
  readonly place?: Partial<Garden['garden']>;
  readonly bed?: Partial<Garden['beds'][number]>;
  readonly lawn?: Partial<Lawn>;
  readonly stock?: readonly Stock[];
  readonly plantings?: readonly Planting[];
  readonly mowings?: readonly Mowing[];
  readonly laid?: readonly Application[];
  readonly events?: readonly GardenEvent[];
  readonly days?: readonly WeatherRow[];
  readonly normals?: Partial<Garden['weather']['normals']>;
  /** layers that are only thought of: their cautions are asked for, not those of the bed */
  readonly thoughtOf?: readonly Application[];
}

export interface Asked {
  readonly garden: Garden;
  readonly thoughtOf: readonly Application[];
}

/** A garden of one bed of loam, and what is asked about it. */
export function asked(made: Made): Asked {
  const today = made.today ?? usualToday;
  const base = emptyGarden(
    { name: 'Close to a line', today, ...made.place },
    { days: [...(made.days ?? calmDays(`${String(yearOf(dayOf(today)))}-01-01`, today))] },
  );
  const layers = [...(made.laid ?? []), ...(made.thoughtOf ?? [])];
  const mown = new Map((made.mowings ?? []).map((one) => [one.id, one]));
  for (const { from } of layers)
    if (from.source === 'mowing' && !mown.has(from.mowingId))
      mown.set(from.mowingId, mowing(from.mowingId.replace('mown ', '')));
  return {
    garden: {
      ...base,
      lawns: [{ ...lawn, ...made.lawn }],
      stock: [...(made.stock ?? [])],
      beds: [bedOf({ id: bedId, name: 'Bed', areaM2, texture: 'loam', ...made.bed })],
      plantings: [...(made.plantings ?? [])],
      mowings: [...mown.values()].sort((one, other) => (one.date < other.date ? -1 : 1)),
      applications: [...(made.laid ?? [])],
      events: [...(made.events ?? [])],
      weather: { ...base.weather, normals: { ...base.weather.normals, ...made.normals } },
    },
    thoughtOf: made.thoughtOf ?? [],
  };
}

/** What the program says of it: of the layers thought of, else of the bed as it stands. */
export interface Told {
  readonly cautions: readonly Caution[];
  readonly verdict: BedVerdict;
  readonly bed: BedAnswer;
}

export function tell({ garden, thoughtOf }: Asked, limits: Limits): Told {
  const today = dayOf(garden.garden.today ?? '');
  const before = bedQuestion(garden, bedId, today);
  if (thoughtOf.length === 0) {
    const bed = answerBed(before, limits);
    return { cautions: bed.cautions, verdict: bed.verdict, bed };
  }
  const after = bedQuestion(garden, bedId, today, thoughtOf);
  const layerIds = thoughtOf.map(({ id }) => id);
  const answer = answerProposal({ before, after, layerIds }, limits);
  return { cautions: answer.cautions, verdict: answer.after.verdict, bed: answer.after };
}
