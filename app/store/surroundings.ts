import type { Host } from '../host/contract';
import type { Engine } from '../worker/protocol';

/** Delays go through this, so that tests need not wait. Answers a function that calls it off. */
export type Later = (milliseconds: number, run: () => void) => () => void;

/** What the store reaches the world through. */
export interface Surroundings {
  readonly host: Host;
  readonly engine: Engine;
  readonly later: Later;
  /** the computer's civil day before the host has answered, YYYY-MM-DD */
  readonly computerToday: () => string;
  /** lets the page draw and take keys in the midst of something long */
  readonly breathe: () => Promise<void>;
}

/** Beds whose questions are made between two breaths: a few milliseconds of work. */
export const bedsInABreath = 10;

/** Changes are kept outside the document when typing pauses, and no later than this after the first. */
export const draftPauseMilliseconds = 1_000;
export const draftLatestMilliseconds = 4_000;
/**
 * The beds that an edit touched are asked about at once; what may follow for the others after a pause
 * in typing, and a proposal after a longer one.
 */
export const resultsPauseMilliseconds = 40;
export const proposalPauseMilliseconds = 200;
/** What a layer being typed would do to its bed is one run: letters that come together ask once. */
export const typedPauseMilliseconds = 10;
/** Imagined seasons of a bed while things change, and once nothing has for so long. */
export const quickDraws = 100;
export const wholeDraws = 1_000;
export const wholeDrawsPauseMilliseconds = 1_500;
/** Imagined beds that come in so short a time are shown together. */
export const progressPauseMilliseconds = 250;
/** How often the host is asked whether the day has turned. */
export const todayEveryMilliseconds = 5 * 60_000;
/** Pause after a change before the week's plan is made anew: it is the slowest of all. */
export const planPauseMilliseconds = 600;
