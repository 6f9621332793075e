import type { Result } from '../core/result';
import type { Caution } from '../core/season/verdict';
import type { ParseFailure } from '../document/failures';
import type { Offer, OfferAnswer } from '../document/offers';
import type {
  Amount,
  Application,
  Bed,
  Container,
  Garden,
  GardenEvent,
  Lawn,
  LawnKind,
  Mowing,
  OwnCrop,
  OwnMaterial,
  Planting,
  Stock,
  Treatment,
  Wetness,
} from '../document/schema';
import type { OwnGardenAnswers, ownGarden } from '../document/startGarden';
import type { ReadDay } from '../document/weather/weatherTypes';
import type {
  ThermometerReading,
  WeatherMergeFailure,
  WeatherMerged,
} from '../document/weather/withWeather';
import type { EditFailure, Edited } from './gardenContract';

// ------------------------------------------------------------------ mowings and layers

export interface MowingDraft {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly lawnId: string;
  readonly amount: Amount;
  readonly wetness: Wetness;
  /** null: the lawn's own kind */
  readonly kind: LawnKind | null;
}

/** One material of a laying. */
export interface LayingPart {
  readonly from: Application['from'];
  readonly amount: Amount;
  readonly condition: Application['condition'];
  readonly wetness: Wetness;
  readonly nitrogenPercent?: number;
  readonly carbonToNitrogen?: number;
}

/** What goes on one bed in one go: one part alone, or several laid together as a mixture. */
export interface LayingDraft {
  readonly bedId: string;
  /** YYYY-MM-DD */
  readonly date: string;
  readonly placement: Application['placement'];
  readonly parts: readonly LayingPart[];
  /** kinds of "stop" cautions that were passed on purpose for this laying */
  readonly passedStops: readonly string[];
}

export type LayFailure =
  | EditFailure
  /** these stops hold until each kind is in `passedStops` (a yes holds for its source till the season ends) */
  | { readonly kind: 'stops'; readonly stops: readonly StopCaution[] }
  /** the sums failed, so nobody knows whether there is a stop; `layIt(drafts, 'without cautions')` still records it */
  | { readonly kind: 'engine-failed'; readonly reason: string };

export interface StopCaution {
  readonly bedId: string;
  readonly caution: Caution;
}

/** Mowings of a whole span of weeks, entered as one line and undone as one. */
export interface BacklogDraft {
  readonly lawnId: string;
  readonly bedId: string;
  /** first and last day, YYYY-MM-DD, both included */
  readonly from: string;
  readonly to: string;
  readonly everyDays: number;
  /** of each mowing; certainty is kept as given */
  readonly amount: Amount;
  readonly wetness: Wetness;
  readonly condition: Application['condition'];
  readonly placement: Application['placement'];
}

export type MowingRest = Mowing['rest'];
/** `dry`: spread out and kept; the store of dry grass is found, or begun */
export type RestWish = MowingRest | { readonly to: 'dry' };

export type RestFailure = EditFailure | { readonly kind: 'held-back'; readonly stop: Caution };

/** Everything but the id, which the store gives. */
export type New<Thing extends { id: string }> = Thing extends unknown ? Omit<Thing, 'id'> : never;

/** Named, undoable changes. Each answers with what it made, or why it changed nothing. */
export type OfferFailure =
  { readonly kind: 'no-garden' } | { readonly kind: 'engine-failed'; readonly reason: string };

export interface GardenActions {
  /** brings the sample's text first; a second call meanwhile is the same start */
  startSample(): Promise<Result<null, ParseFailure>>;
  /** `ownGarden` of the document's room: it knows all climates, which the window does not start with */
  startOwn(make: typeof ownGarden, answers: OwnGardenAnswers): Edited;
  /** name, place, latitude, dogs, well, today, season start */
  editGarden(changes: Partial<Omit<Garden['garden'], 'isSample'>>): Edited;
  editNormals(normals: Garden['weather']['normals']): Edited;
  /** brings the next seven real days of the bundled record and moves today by a week */
  goOnAWeek(): Promise<Edited<{ readonly today: string }>>;

  /** days of `readWeather` put into the record, in one step; the counts are for telling */
  bringWeather(
    days: readonly ReadDay[],
  ): Result<Omit<WeatherMerged, 'garden'>, EditFailure | WeatherMergeFailure>;
  /** a look at one's own thermometer; a second of the same day replaces the first */
  readThermometer(reading: ThermometerReading): Edited;

  logMowing(mowing: MowingDraft): Edited<string>;
  editMowing(
    id: string,
    changes: Partial<MowingDraft>,
    rest?: MowingRest,
  ): Result<null, RestFailure>;
  /** its layers go with it, in the same step */
  deleteMowing(id: string): Edited<{ readonly layers: number }>;
  /**
   * Clippings that are held back go on a heap only `in spite of a stop`, which marks the heap; and
   * never where the label forbids it.
   */
  restOf(
    mowingId: string,
    rest: RestWish,
    option?: 'in spite of a stop',
  ): Result<null, RestFailure>;
  /** the rests of all of them stay on their lawns, which asks nothing: one step */
  leaveLying(mowingIds: readonly string[]): Edited;
  logBacklog(backlog: BacklogDraft): Edited<{ readonly mowings: number }>;

  /**
   * Checks stops first; several drafts are one undoable step, in which the beds `without` are written
   * down as left out this week. Answers the new application ids.
   */
  layIt(
    drafts: readonly LayingDraft[],
    option?: 'without cautions',
    without?: readonly string[],
  ): Promise<Result<readonly string[], LayFailure>>;
  /**
   * What the week's plan says, as one undoable step: its layings, checked for stops first, and where
   * the rest of a mowing goes. Clippings that are held back go on no heap this way.
   */
  doPlan(
    drafts: readonly LayingDraft[],
    rests: readonly { readonly mowingId: string; readonly rest: RestWish }[],
  ): Promise<Result<null, LayFailure | RestFailure>>;
  /** nothing was or will be laid on these beds this week, whatever the plan says */
  layNothing(bedIds: readonly string[]): Edited;
  /** takes back `layNothing` for a bed, so far as it still holds */
  countIn(bedId: string): Edited;
  editApplication(id: string, changes: Partial<Omit<Application, 'id'>>): Edited;
  deleteApplication(id: string): Edited;

  /** of a lawn or a stock */
  answerTreatment(
    of: { readonly lawnId: string } | { readonly stockId: string },
    treatment: Treatment,
    /** of a lawn: what was put on it before stays beside it */
    isAnother?: boolean,
  ): Edited;

  /**
   * Whether to take what somebody offers, what it brings, and which beds may have it when. Asks the
   * engine and changes nothing; to take it is `addStock(stockOfOffer(...))`.
   */
  weighOffer(offer: Offer): Promise<Result<OfferAnswer, OfferFailure>>;

  /** rain, watering, harvest, soil test, rake off, dig in */
  logEvent(event: New<GardenEvent>): Edited<string>;
  /** mowings and readings of the rain gauge from a list, all in one step */
  bringList(
    mowings: readonly MowingDraft[],
    rain: readonly { readonly date: string; readonly millimetres: number }[],
  ): Edited;
  editEvent(event: GardenEvent): Edited;
  deleteEvent(id: string): Edited;

  addBed(bed: New<Bed>): Edited<string>;
  editBed(id: string, changes: Partial<New<Bed>>, gesture?: string): Edited;
  /** its plantings, layers and events go with it, in the same step */
  deleteBed(id: string): Edited;
  addPlanting(planting: New<Planting>): Edited<string>;
  editPlanting(id: string, changes: Partial<New<Planting>>, gesture?: string): Edited;
  /** its picks go with it */
  deletePlanting(id: string): Edited;
  addLawn(lawn: New<Lawn>): Edited<string>;
  editLawn(id: string, changes: Partial<New<Lawn>>, gesture?: string): Edited;
  /** `in-use` while there are mowings of it */
  deleteLawn(id: string): Edited;
  addStock(stock: New<Stock>): Edited<string>;
  editStock(id: string, changes: Partial<New<Stock>>, gesture?: string): Edited;
  /** `in-use` while layers came from it or mowings went to it */
  deleteStock(id: string): Edited;
  addMaterial(material: New<OwnMaterial>): Edited<string>;
  editMaterial(id: string, changes: Partial<New<OwnMaterial>>): Edited;
  /** `in-use` while a stock or layer is of it */
  deleteMaterial(id: string): Edited;
  /** every stock and every layer from elsewhere that is of one material becomes of the other, in one step */
  swapMaterial(
    from: string,
    to: string,
  ): Edited<{ readonly stores: number; readonly layers: number }>;
  addCrop(crop: New<OwnCrop>): Edited<string>;
  editCrop(id: string, changes: Partial<New<OwnCrop>>): Edited;
  /** `in-use` while a planting is of it */
  deleteCrop(id: string): Edited;
  addContainer(container: New<Container>): Edited<string>;
  editContainer(id: string, changes: Partial<New<Container>>, gesture?: string): Edited;
  /** `in-use` while an amount was typed in it */
  deleteContainer(id: string): Edited;
  /** "weigh one bag": answers how many mowings, layers and stocks typed in it now weigh something else */
  weighContainer(
    id: string,
    weighed: NonNullable<Container['weighed']>,
  ): Edited<{ readonly mowings: number; readonly layers: number; readonly stocks: number }>;
}
