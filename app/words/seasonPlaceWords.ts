import type { DayNumber } from '../core/days';
import { amount, amountWithUnit, dayWord, listed, percent } from './chartFormat';
import type { ChartUnits } from './chartUnits';

export const seasonPlaceWords = {
  title: 'Season',
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
} as const;

/** Over a season that has not begun. */
export const comingSeasonWords = {
  rests:
    'Reckoned on from what this season leaves, in imagined weather. Only what is written down is laid: no greens of next year.',
  later: 'Too far ahead for sums: only the days written down are shown.',
  failed: 'The sums of next season did not come out. The days written down are shown all the same.',
} as const;

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
export const readyWords = (
  grams: number | null,
  day: DayNumber,
  units: Pick<ChartUnits, 'nitrogen' | 'dayFirst'>,
  isReckoned: boolean,
): string =>
  grams === null
    ? `${dayWord(day, units)}: ${isReckoned ? seasonPlaceWords.outside : seasonPlaceWords.notReckoned}`
    : `${dayWord(day, units)}: ${amountWithUnit(grams, units.nitrogen)} ready`;

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

export const movingHint = 'Enter keeps it, Escape puts it back.';
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
  `From ${dayWord(from, units)} to ${dayWord(to, units)} ${listed(names)} claim ${percent(share)} of the bed, more than there is.`;

/** All beds on one day in a sentence: each of a few, the ends of many. */
export function bedsOnDay(
  beds: readonly { readonly name: string; readonly grams: number | null }[],
  units: Pick<ChartUnits, 'nitrogen'>,
): string {
  const known = beds
    .flatMap(({ name, grams }) => (grams === null ? [] : [{ name, grams }]))
    .toSorted((one, other) => other.grams - one.grams);
  if (known.length === 0) return 'No sums for this day.';
  if (known.length <= mostSpoken)
    return `Ready: ${known.map(({ name, grams }) => `${name} ${amount(grams, units.nitrogen)}`).join(', ')} ${units.nitrogen.short}.`;
  const [most] = known;
  const least = known.at(-1);
  if (!most || !least) return '';
  return `Most is ready on ${most.name}, ${amountWithUnit(most.grams, units.nitrogen)}; least on ${least.name}, ${amountWithUnit(least.grams, units.nitrogen)}.`;
}
const mostSpoken = 8;

export const foundWords = (shown: number, all: number): string =>
  shown === all ? `All ${String(all)} beds are shown.` : `${String(shown)} of ${String(all)} beds.`;
