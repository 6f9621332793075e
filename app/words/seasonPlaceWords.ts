import type { DayNumber } from '../core/days';
import { amount, amountWithUnit, dayWord, listed, percent } from './chartFormat';
import { manyWords } from './imaginedWords';
import { rangeOdds } from './ranges';
import type { ChartUnits } from './chartUnits';

export const seasonPlaceWords = {
  title: 'Season',
  beds: 'Beds, one after the other',
  chart: 'The soil of each bed, day by day',
  day: 'Day shown',
  nothingPlanted: 'nothing in the ground',
  notReckoned: 'not reckoned yet',
  outside: 'no sums for these days',
  today: 'today',
  imagined: 'imagined from here',
  table: 'The same numbers as a table',
  hideTable: 'Hide the tables',
  readyTable: 'Nitrogen ready, bed by bed',
  plantingTable: 'What stands and lies on the beds',
  known: 'nitrogen ready in the soil',
  ahead: 'the same on imagined days',
  onlyAhead: 'nitrogen ready in the soil, on imagined days',
  laid: ', laid on the bed as tall as it was deep',
  dugIn: 'dug or hoed in',
  stages: 'sown or planted, flower, first pick, cleared',
  trouble: 'something that does not go together',
  range: `where it lies ${rangeOdds}`,
} as const;

/** Ends of what 8 imagined seasons of 10 bring [g/m2]. */
export interface ReadyRange {
  readonly low: number;
  readonly high: number;
}

/** "2 to 4.4", or "3" where both ends read alike. */
export function readyEnds({ low, high }: ReadyRange, { nitrogen }: Pick<ChartUnits, 'nitrogen'>) {
  const [from, to] = [amount(low, nitrogen), amount(high, nitrogen)];
  return from === to ? from : `${from} to ${to}`;
}

/** Over a season that has not begun. */
export const comingSeasonWords = {
  rests:
    'Each imagined season goes on from its own end of this one, in imagined weather. Only what is written down is laid: no greens of next year.',
  later: 'Too far ahead for sums: only the days written down are shown.',
  failed: 'The sums of next season did not come out. The days written down are shown all the same.',
  rangesFailed: 'The ranges of next season did not come out: only the likely course is shown.',
  stop: 'Stop imagining',
  goOn: 'Go on imagining',
  again: 'Try again',
  progress: 'Imagined next seasons',
  busyHeard: 'Next season is being imagined. Its ranges follow.',
  toCome: 'its range is still to come',
  notThere: 'without a range',
} as const;

/** What the ranges of a season that has not begun rest on. */
export function comingRangesWords(counts: readonly number[]): string {
  if (counts.length === 0) return 'No next season has been imagined yet.';
  return `Ranges hold ${rangeOdds}, over ${manyWords(counts)} imagined seasons of each bed.`;
}

/** The same where they were stopped: of how many beds there are any. */
export function comingStoppedWords(counts: readonly number[], beds: number): string {
  const stopped = 'Imagining next season is stopped';
  if (counts.length === 0) return `${stopped}: no bed has its range.`;
  if (counts.length < beds)
    return `${stopped}: ${String(counts.length)} of ${String(beds)} beds have their range.`;
  return `${stopped}. ${comingRangesWords(counts)}`;
}

/** The same of one bed, where a figure of it is asked about. */
export const comingRangeWhy = (count: number): string =>
  `The range is from ${manyWords([count])} imagined seasons. Each goes on from what its own imagined end of this season left, under weather of its own, with everything uncertain drawn as it was for this season; what is laid and planted is what is written down.`;

/** What begins in a season that is not shown: "2 plantings in 2027". */
export const plantingsIn = (count: number, season: string): string =>
  `${count === 1 ? '1 planting' : `${String(count)} plantings`} in ${season}`;

export const plantingParts = ['whole', 'start', 'end'] as const;
/** What of a planting is moved: all its days, the day it begins, the day it ends. */
export type PlantingPart = (typeof plantingParts)[number];

/** "Nitrogen ready in the top 30 cm, g/m²: one scale for all beds" */
export const scaleWords = (units: Pick<ChartUnits, 'topSoil' | 'nitrogen'>): string =>
  `Nitrogen ready in the top ${units.topSoil}, in ${units.nitrogen.short}, downwards; one scale for all beds`;

/** A bed's value on the chosen day; null: no sums for it, or none yet. */
export function readyWords(
  grams: number | null,
  day: DayNumber,
  units: Pick<ChartUnits, 'nitrogen' | 'dayFirst'>,
  isReckoned: boolean,
  range: ReadyRange | 'to come' | 'not there' | null = null,
): string {
  if (grams === null)
    return `${dayWord(day, units)}: ${isReckoned ? seasonPlaceWords.outside : seasonPlaceWords.notReckoned}`;
  const ready = `${dayWord(day, units)}: ${amountWithUnit(grams, units.nitrogen)} ready`;
  if (range === null) return ready;
  if (range === 'to come') return `${ready}, ${comingSeasonWords.toCome}`;
  if (range === 'not there') return `${ready}, ${comingSeasonWords.notThere}`;
  return `${ready}, likely ${readyEnds(range, units)}`;
}

/** When a planting stands, for its button: "Tomatoes, planted 18 May, to about 30 September". */
export function plantingLabel(
  facts: {
    readonly name: string;
    readonly bed: string;
    readonly sown: boolean;
    readonly start: DayNumber;
    readonly end: DayNumber | null;
    readonly isEndTyped: boolean;
    readonly share: number;
  },
  units: Pick<ChartUnits, 'dayFirst'>,
): string {
  const until =
    facts.end === null
      ? 'no end'
      : `${facts.isEndTyped ? 'cleared' : 'to about'} ${dayWord(facts.end, units)}`;
  const share = facts.share < 1 ? `, ${percent(facts.share)} of the bed` : '';
  return `${facts.name} on ${facts.bed}: ${facts.sown ? 'sown' : 'planted'} ${dayWord(facts.start, units)}, ${until}${share}`;
}

/** Said while a planting is being moved, and shown beside it. */
export function movingWords(
  part: PlantingPart,
  facts: { readonly sown: boolean; readonly start: DayNumber; readonly end: DayNumber | null },
  units: Pick<ChartUnits, 'dayFirst'>,
): string {
  const start = `${facts.sown ? 'sown' : 'planted'} ${dayWord(facts.start, units)}`;
  const end = facts.end === null ? '' : `ends ${dayWord(facts.end, units)}`;
  if (part === 'start') return start;
  if (part === 'end') return end;
  return end === '' ? start : `${start}, ${end}`;
}

/** "Gate bed, 3 of 60" */
export const bedPlace = (name: string, place: number, of: number): string =>
  `${name}, ${String(place)} of ${String(of)}`;
/** How one gets about among the strips by key. */
export const walkHint =
  'Arrow keys go up and down from bed to bed, left and right along a bed. Enter opens a planting’s dates, Shift with left or right moves it by a day.';
export const movingHint = 'Left and right go on, Enter keeps it, Escape puts it back.';
/** Said when another bed was picked for a planting. */
export const onBedNow = (name: string, bed: string): string =>
  `${name}: now on ${bed}. Undo puts it back.`;
export const movedBack = 'Put back where it was.';
export const handleWords = (part: 'start' | 'end', name: string): string =>
  part === 'start' ? `Start of ${name}` : `End of ${name}`;

/** Several plantings that claim more of a bed than there is. */
export const crowdedWords = (
  names: readonly string[],
  share: number,
  from: DayNumber,
  to: DayNumber,
  units: Pick<ChartUnits, 'dayFirst'>,
): string =>
  `From ${dayWord(from, units)} to ${dayWord(to, units)} ${listed(names)} claim ${percent(share)} of the bed, more than there is. Move one, or say how much of the bed each has.`;

/** All beds on one day in a sentence: each of a few, the ends of many. */
export function bedsOnDay(
  beds: readonly {
    readonly name: string;
    readonly grams: number | null;
    readonly range?: ReadyRange | null;
  }[],
  units: Pick<ChartUnits, 'nitrogen'>,
): string {
  const known = beds
    .flatMap(({ name, grams, range }) => (grams === null ? [] : [{ name, grams, range }]))
    .toSorted((one, other) => other.grams - one.grams);
  if (known.length === 0) return 'No sums for this day.';
  const likely = ({ range }: (typeof known)[number]): string =>
    range ? `, likely ${readyEnds(range, units)}` : '';
  if (known.length <= mostSpoken) {
    const told = known.map(
      (bed) => `${bed.name} ${amount(bed.grams, units.nitrogen)}${likely(bed)}`,
    );
    const parted = known.some(({ range }) => range) ? '; ' : ', ';
    return `Ready: ${told.join(parted)} ${units.nitrogen.short}.`;
  }
  const [most] = known;
  const least = known.at(-1);
  if (!most || !least) return '';
  return `Most is ready on ${most.name}, ${amountWithUnit(most.grams, units.nitrogen)}${likely(most)}; least on ${least.name}, ${amountWithUnit(least.grams, units.nitrogen)}${likely(least)}.`;
}
const mostSpoken = 8;

export const foundWords = (shown: number, all: number): string =>
  shown === all ? `All ${String(all)} beds are shown.` : `${String(shown)} of ${String(all)} beds.`;
