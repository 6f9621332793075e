import type { StoreApi } from 'zustand/vanilla';
import type { DayNumber } from '../core/days';
import type { Result } from '../core/result';
import type { BedAnswer } from '../core/season/bedAnswer';
import type { DrawsAnswer } from '../core/season/draws/runDraws';
import type { Caution, NitrogenState } from '../core/season/verdict';
import type { ParseFailure } from '../document/failures';
import type { Offer, OfferAnswer } from '../document/offers';
import type { ownGarden, OwnGardenAnswers } from '../document/startGarden';
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
import type { ReadDay } from '../document/weather/weatherTypes';
import type {
  ThermometerReading,
  WeatherMerged,
  WeatherMergeFailure,
} from '../document/weather/withWeather';
import type { About, Host, HostError, RecentFile } from '../host/contract';
import type { AheadSlice } from './aheadSlice';
import type { PlanSlice } from './planContract';
import type { CarriedSlice } from './carriedSlice';
import type { NextSeasonSlice } from './nextSeasonSlice';
import type { WaterSlice } from './waterSlice';
import type { WhatIfSlice } from './whatIfContract';

/*
 * What the screens see of the store. Four slices: `garden` (saved, undoable), `file` (where it
 * lives), `results` (what the worker made of it), `view` (what is open; in no file and no history).
 * Everything that can be computed from these is a selector (`selectors.ts`).
 */

// ------------------------------------------------------------------ garden

/** One thought of the gardener: its name in the Edit menu, and the garden before it. */
export interface HistoryStep {
  readonly label: string;
  readonly garden: Garden;
}

/** Why a change was not made. The garden is as it was. */
export type EditFailure =
  | { readonly kind: 'no-garden' }
  /** the thing to be changed is not (or no longer) there */
  | { readonly kind: 'missing'; readonly what: string }
  /** the garden would hold something that its own file could not */
  | { readonly kind: 'broken'; readonly where: string; readonly what: string }
  /** something still points at it: "2 plantings", so it cannot be deleted alone */
  | { readonly kind: 'in-use'; readonly by: string }
  /** a planting stood on a bed that was split or joined, and goes on: it can be cleared, not deleted */
  | { readonly kind: 'goes-on' }
  /** a bundled record has no further days, or the garden has no bundled record */
  | { readonly kind: 'no-more-record' }
  /** what was put on this lawn forbids clippings anywhere but on it */
  | { readonly kind: 'label-forbids'; readonly source: string };

export type Edited<Value = null> = Result<Value, EditFailure>;

/** Changes a draft of the garden in place (immer); returns nothing. */
export type Recipe = (garden: Garden) => void;

export interface GardenSlice {
  /** null until one was started, opened or restored: the first-run screen */
  readonly garden: Garden | null;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
  /**
   * The one door for changes. `label` names the step in the menu ("Rename bed"). Changes
   * with one `gesture` (all typing in a field, a drag from start to drop) that follow each other are one step.
   */
  edit(label: string, recipe: Recipe, gesture?: string): Edited;
  /** the field was left: the next edit is a step of its own even with the same gesture */
  endGesture(): void;
  undo(): void;
  redo(): void;
}

// ------------------------------------------------------------------ file

export type DraftState = 'none' | 'waiting' | 'kept' | 'failed';

/** The last thing worth telling about the file; the screens put it into words. */
export type FileMessage =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'opened'; readonly name: string }
  | { readonly kind: 'restored'; readonly name: string; readonly savedAt: number }
  | { readonly kind: 'refused'; readonly name: string; readonly failure: ParseFailure }
  | { readonly kind: 'draft-refused'; readonly name: string; readonly failure: ParseFailure }
  | {
      readonly kind: 'failed';
      readonly doing: 'open' | 'save' | 'keep-draft' | 'restore' | 'recent' | 'about';
      readonly error: HostError;
    };

export interface FileSlice {
  readonly fileId: string | null;
  readonly fileName: string;
  readonly unsaved: boolean;
  readonly saving: boolean;
  readonly draft: DraftState;
  readonly recent: readonly RecentFile[];
  readonly about: About | null;
  readonly message: FileMessage | null;
  /** true once `start` has looked for kept work; before that show neither garden nor first run */
  readonly started: boolean;
  /** how many gardens were opened, started or put away so far; a save under a new name is none */
  readonly openings: number;

  /** at program start: who is the host, what is recent, is there kept work to bring back */
  start(): Promise<void>;
  /** `id` null: let the person choose (native); the page's own picker passes a recent id */
  openFile(id: string | null): Promise<Result<null, HostError | ParseFailure>>;
  /** dropped or pasted text; saving asks where */
  openText(text: string, name: string): Result<null, ParseFailure>;
  /** saves to the file it came from; `cancelled` when there is none and the host is not native: show the save-as dialog */
  save(): Promise<Result<{ readonly name: string }, HostError>>;
  saveAs(name: string, replace: boolean): Promise<Result<{ readonly name: string }, HostError>>;
  /** writes a drawing, a picture or a table beside the gardens; nothing of the garden changes */
  exportFile: Host['exportFile'];
  /** the weather service, asked at the person's word; nothing of the garden changes */
  askWeather: Host['askWeather'];
  callOffWeather: Host['callOffWeather'];
  forgetWeather: Host['forgetWeather'];
  /** puts the garden away and shows the first run again; kept work is discarded */
  closeGarden(): Promise<void>;
  refreshRecent(): Promise<void>;
  dismissMessage(): void;
  /** keeps the work in hand now instead of within seconds (before closing) */
  keepDraftNow(): Promise<void>;
}

// ------------------------------------------------------------------ starting

export type { ClimateAnswer, OwnBedAnswer, OwnGardenAnswers } from '../document/startGarden';

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

// ------------------------------------------------------------------ results

/**
 * A bed run at typical values: `input` (what the engine was given: areas, layers and plantings per
 * m2, normals, soil), `season`, `verdict`, `cautions` (bed-wide and per layer, strongest first).
 */
export type BedResults = BedAnswer;

export type WorkState = 'idle' | 'working' | 'ready' | 'failed';

/** A proposed laying: the bed with and without it. */
export interface Preview {
  readonly drafts: readonly LayingDraft[];
  readonly state: WorkState;
  readonly reason: string | null;
  /** one per bed that a draft touches; the last good answer stays while `working` */
  readonly beds: readonly PreviewBed[];
}

export interface PreviewBed {
  readonly bedId: string;
  readonly before: BedResults;
  readonly after: BedResults;
  /** of the proposed layers alone; a stop that was passed for this source this season is a caution */
  readonly cautions: readonly Caution[];
  /** ids of the proposed layers in `after`, in the order of the draft's parts */
  readonly layerIds: readonly string[];
  /** the bed without and with the layers in the same imagined seasons; missing until they are run */
  readonly draws?: { readonly before: DrawsAnswer; readonly after: DrawsAnswer };
}

/** A bed over its imagined seasons; odds and bands come with how they were got. */
export interface BedDraws {
  readonly answer: DrawsAnswer;
  /** `quick`: a hundred imagined seasons, while things change; `whole`: a thousand, once nothing does */
  readonly stage: 'quick' | 'whole';
  /** the garden or the day is another since: shown, and said to be of before */
  readonly isBehind: boolean;
}

/** What is being done about the imagined seasons of all beds. */
export interface DrawsWork {
  /** `idle`: nothing to run, or stopped; `ready`: all that was asked for has come */
  readonly state: WorkState;
  /** by `stopDraws`; until `resumeDraws` nothing is run any more */
  readonly isStopped: boolean;
  /** imagined seasons run, of all beds together, and how many it will be */
  readonly done: number;
  readonly of: number;
  /** why it failed, in the engine's words, for a "why" line */
  readonly reason: string | null;
}

/** The state of a bed week by week as it was known then. */
export interface StateHistory {
  readonly bedId: string;
  readonly state: WorkState;
  readonly weeks: readonly {
    readonly day: DayNumber;
    readonly nitrogen: NitrogenState;
    readonly ratio: number | null;
  }[];
}

export interface ResultsSlice {
  readonly work: WorkState;
  /** why it failed, in the engine's words, for a "why" line */
  readonly workReason: string | null;
  /** by bed id; of the last garden that was answered. Beds added since are missing */
  readonly bedResults: Readonly<Record<string, BedResults>>;
  readonly preview: Preview | null;
  readonly history: StateHistory | null;
  /** by bed id; a bed whose imagined seasons have not been run yet is missing */
  readonly draws: Readonly<Record<string, BedDraws>>;
  readonly drawsWork: DrawsWork;
  /** asks for the effect of a proposal, after a short pause in typing; empty: forget it */
  propose(drafts: readonly LayingDraft[]): void;
  /** computes the state history of a bed once; later calls with the same garden do nothing */
  wantHistory(bedId: string): void;
  /** ends the run under way and keeps what is there; no further ones until `resumeDraws` */
  stopDraws(): void;
  resumeDraws(): void;
}

// ------------------------------------------------------------------ view

export const places = [
  'this week',
  'beds',
  'season',
  'lawn',
  'tables',
  'trials',
  'garden',
] as const;
export type PlaceInWindow = (typeof places)[number];

/** A dialog that is open; the screens own what is in it. */
export type OpenDialog =
  | { readonly kind: 'save-as' }
  | { readonly kind: 'open' }
  | { readonly kind: 'close-unsaved' }
  | { readonly kind: 'about' }
  | { readonly kind: 'guide' }
  | { readonly kind: 'find' }
  | {
      readonly kind: 'stops';
      readonly drafts: readonly LayingDraft[];
      readonly stops: readonly StopCaution[];
    }
  /** what would not be whole on paper, and on which */
  | {
      readonly kind: 'print';
      readonly cut: readonly { readonly what: string; readonly papers: readonly string[] }[];
    }
  | { readonly kind: 'treatment'; readonly lawnId?: string; readonly stockId?: string }
  | { readonly kind: 'edit'; readonly thing: string; readonly id: string | null };

export interface ViewSlice {
  readonly place: PlaceInWindow;
  readonly openBedId: string | null;
  readonly dialog: OpenDialog | null;
  /** which stop of the tour one is at; null when one is not on it */
  readonly tourStop: number | null;
  /** taken from the garden when it opens, written along when it is saved; no step in the history */
  readonly shownUnits: 'metric' | 'us';
  goTo(place: PlaceInWindow): void;
  /** also asks for its state history */
  openBed(bedId: string | null): void;
  showDialog(dialog: OpenDialog | null): void;
  goOnTour(stop: number | null): void;
  setUnits(units: 'metric' | 'us'): void;
}

export interface MowingsState
  extends
    GardenSlice,
    FileSlice,
    ResultsSlice,
    PlanSlice,
    WhatIfSlice,
    WaterSlice,
    CarriedSlice,
    NextSeasonSlice,
    AheadSlice,
    ViewSlice,
    GardenActions {}

export type MowingsStore = StoreApi<MowingsState>;
