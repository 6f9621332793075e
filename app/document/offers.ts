import { dayOf, seasonEnd, textFromDay, type DayNumber } from '../core/days';
import { lotOf, type LikelyRange } from '../core/lawn/clippings';
import type { ProposalAnswer, ProposalQuestion } from '../core/season/bedAnswer';
import type { Caution } from '../core/season/verdict';
import { mineralsOf } from '../tables/offerMinerals';
import type { Row } from '../tables/shapes';
import { bedQuestion } from './bedQuestion';
import { dryLayer } from './dryLayer';
import { lotInputOf } from './layerMass';
import { materialById } from './materialValues';
import type { Amount, Garden, Stock, Treatment } from './schema';

export const offerOrigins = ['own ground', 'neighbour', 'farm or stable', 'town or shop'] as const;
export type OfferOrigin = (typeof offerOrigins)[number];

/** Something that somebody offers, as far as it is known. */
export interface Offer {
  readonly materialId: string;
  readonly amount: Amount;
  readonly origin: OfferOrigin;
  readonly treatment: Treatment;
  /** what else was said of it, kept with the store */
  readonly note?: string;
}

/** What an offer weighs and brings, with its likely range. */
export interface OfferContents {
  /** [kg] */
  readonly dryKilograms: LikelyRange;
  readonly litres: number;
  /** all grams in the whole lot */
  readonly nitrogen: LikelyRange;
  /** ready in the first weeks; null where the material holds it in plant tissue */
  readonly readyNitrogen: LikelyRange | null;
  readonly phosphorus: LikelyRange;
  readonly potassium: LikelyRange;
  readonly salts: LikelyRange;
}

export type OfferVerdict = 'take' | 'test first' | 'no';

/** When a bed may have it. */
export type OfferBedTime =
  | { readonly may: 'now' }
  /** from that day on, where nothing else comes in between */
  | { readonly may: 'from'; readonly day: DayNumber }
  | { readonly may: 'after the test' }
  | { readonly may: 'not this season' };

export interface OfferBed {
  readonly bedId: string;
  readonly time: OfferBedTime;
  /** of a thin layer of it today, strongest first */
  readonly cautions: readonly Caution[];
}

export interface OfferAnswer {
  readonly verdict: OfferVerdict;
  readonly contents: OfferContents;
  readonly beds: readonly OfferBed[];
}

/** What is asked of each bed: a thin layer of the stuff, laid today. */
export interface OfferQuestion {
  readonly beds: readonly ProposalQuestion[];
}

/** Depth that is tried [mm]: thin enough that no rule of depth speaks, so that only the stuff counts. */
const triedMillimetres = 5;
/** id of the store that is only thought of; ids of gardens are never this long a word */
const thoughtOf = 'offered-and-not-taken';

/** The store an offer becomes when it is taken. */
export const stockOfOffer = (offer: Offer, name: string, today: DayNumber): Omit<Stock, 'id'> => ({
  name,
  materialId: offer.materialId,
  role: 'store',
  amount: offer.amount,
  date: textFromDay(today),
  treatment: offer.treatment,
  // worms that jump travel with what others give away
  ...(offer.origin === 'own ground' ? {} : { hazards: ['bought in'] }),
  ...(offer.note ? { note: offer.note } : {}),
});

/** Each bed with and without a thin layer of an offer, for the engine. */
export function offerQuestion(garden: Garden, offer: Offer, today: DayNumber): OfferQuestion {
  const withStore: Garden = {
    ...garden,
    stock: [...garden.stock, { id: thoughtOf, ...stockOfOffer(offer, 'this offer', today) }],
  };
  return {
    beds: garden.beds.map(({ id }) => {
      const layer = dryLayer(
        `${thoughtOf}-layer`,
        id,
        today,
        { source: 'stock', stockId: thoughtOf },
        triedMillimetres,
      );
      return {
        before: bedQuestion(withStore, id, today),
        after: bedQuestion(withStore, id, today, [layer]),
        layerIds: [layer.id],
      };
    }),
  };
}

/** 10-90 % half-width of a row that is read as 5-95 %: standard normal quantiles, a definition. */
const narrowing = 1.2815515655446004 / 1.6448536269514722;

const times = (grams: LikelyRange, row: Row, typical = row.typical): LikelyRange => {
  // two independent spreads, joined on the log scale
  const side = (shown: number, ofRow: number): number =>
    Math.hypot(Math.log(shown), narrowing * Math.log(ofRow));
  const middle = grams.typical * typical;
  return {
    low: middle * Math.exp(-side(grams.low / grams.typical, row.low / row.typical)),
    typical: middle,
    high: middle * Math.exp(side(grams.high / grams.typical, row.high / row.typical)),
  };
};

/** Weight, nitrogen and the rest of an offered lot. */
export function offerContents(garden: Garden, offer: Offer): OfferContents {
  const material = materialById(garden, offer.materialId);
  // as it is handed over: nothing outside, what it holds inside by its row
  const handling = { condition: 'just cut', wetness: 'dry' } as const;
  const lot = lotOf(lotInputOf(garden, offer.amount, material, handling, null));
  const dryGrams: LikelyRange = {
    low: lot.dryKilograms.low * 1000,
    typical: lot.dryKilograms.typical * 1000,
    high: lot.dryKilograms.high * 1000,
  };
  const { phosphorusPercent, potassiumPercent, saltsPercent } = mineralsOf(material.row.id);
  const { mineralShare } = material.row;
  return {
    dryKilograms: lot.dryKilograms,
    litres: lot.litres.typical,
    nitrogen: lot.nitrogenGrams,
    readyNitrogen: mineralShare ? times(lot.nitrogenGrams, mineralShare) : null,
    phosphorus: times(dryGrams, phosphorusPercent, phosphorusPercent.typical / 100),
    potassium: times(dryGrams, potassiumPercent, potassiumPercent.typical / 100),
    salts: times(dryGrams, saltsPercent, saltsPercent.typical / 100),
  };
}

/** Kinds of caution that hang on the stuff and where it came from, not on how hungry a bed is. */
const ofTheStuff: ReadonlySet<Caution['kind']> = new Set([
  'treated source',
  'raw manure',
  'safety',
  'fouled',
  'compost phosphorus',
  'ammonia under glass',
]);

function timeOf(
  garden: Garden,
  bedId: string,
  cautions: readonly Caution[],
  isTested: boolean,
  today: DayNumber,
): OfferBedTime {
  const stops = cautions.filter(({ weight, kind }) => weight === 'stop' && ofTheStuff.has(kind));
  if (stops.length === 0) return { may: 'now' };
  const isHeldForGood = stops.some(
    ({ row }) => row === 'label forbids' || row === 'treated source',
  );
  if (isHeldForGood) return { may: 'not this season' };
  if (stops.some(({ row }) => row === 'unknown source sensitive'))
    return { may: 'from', day: seasonEnd(today, garden.garden.seasonStartMonth) + 1 };
  if (stops.some(({ kind }) => kind === 'treated source'))
    return isTested ? { may: 'not this season' } : { may: 'after the test' };
  if (stops.some(({ kind }) => kind === 'raw manure')) {
    // after the last picking of what stands there or comes this season
    const ends = garden.plantings
      .filter((planting) => planting.bedId === bedId && planting.cleared !== null)
      .map(({ cleared }) => dayOf(cleared!))
      .filter((day) => day > today);
    const last = Math.max(...ends);
    return Number.isFinite(last)
      ? { may: 'from', day: last + 1 }
      : { may: 'from', day: seasonEnd(today, garden.garden.seasonStartMonth) + 1 };
  }
  return { may: 'not this season' };
}

/**
 * Whether to take what is offered, to try it on beans first, or to leave it. "Take" says no more
 * than that no reason was found to hold it back.
 *
 * @param answers of `offerQuestion`, in any order
 * @source the rules of treated sources and raw manure in `app/tables/thresholds`
 */
export function judgeOffer(
  garden: Garden,
  offer: Offer,
  answers: readonly ProposalAnswer[],
  today: DayNumber,
): OfferAnswer {
  const { row } = materialById(garden, offer.materialId);
  const { answer, label, beanTestPassed } = offer.treatment;
  const isTested = beanTestPassed !== undefined;
  const beds = answers.map(({ bedId, cautions }) => {
    const own = cautions.filter(({ kind }) => ofTheStuff.has(kind));
    return { bedId, time: timeOf(garden, bedId, own, isTested, today), cautions: own };
  });
  const isForbidden = answer === 'treated' && label === 'forbids';
  const isDangerous = beds.some(({ cautions }) =>
    cautions.some(({ kind, weight }) => kind === 'safety' && weight === 'stop'),
  );
  const wantsTest = row.mayCarryWeedkiller && answer !== 'nothing' && !isTested;
  const verdict: OfferVerdict =
    isForbidden || isDangerous ? 'no' : wantsTest ? 'test first' : 'take';
  return { verdict, contents: offerContents(garden, offer), beds };
}
