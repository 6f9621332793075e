import type { BedLedger } from '../core/season/ledger';
import type { CarriedOver } from '../core/season/seasonAccounts';
import { amount, amountWithUnit } from './chartFormat';
import type { ChartUnits } from './chartUnits';

/** A season by the year it starts in: "2013", or "2013–14" where it runs over the turn of the year. */
export const seasonWord = (year: number, seasonStartMonth: number): string =>
  seasonStartMonth === 1
    ? String(year)
    : `${year}–${String((((year + 1) % 100) + 100) % 100).padStart(2, '0')}`;

/** What a season leaves to the next, in the order in which it comes to hand. */
export const carriedWords: Readonly<Record<keyof CarriedOver, string>> = {
  ready: 'ready in the soil, if winter rain leaves it',
  inCover: 'in the cover',
  inSoilResidue: 'rotting in the soil',
  inCompost: 'in compost, still to come',
  youngHumus: 'in humus of this and earlier seasons, slow to come',
  inCrop: 'in what stands over the turn of the season',
};
export const carriedNames = Object.keys(carriedWords) as readonly (keyof CarriedOver)[];

/** Heading of the account on a bed's page. */
export const seasonAccountTitle = 'From season to season';

/** The lines of a season that make what it leaves: the first three less the last. */
export const seasonLines = {
  opening: 'there at the start',
  cameIn: 'came in',
  soilGave: 'given by the soil itself, less what became soil',
  wentOut: 'went out',
} as const;
export type SeasonLine = keyof typeof seasonLines;
export const seasonLineNames = Object.keys(seasonLines) as readonly SeasonLine[];

/** Heading and sum of what a season leaves. */
export const leftWords = { heading: 'Left for next year', sum: 'left in all' } as const;

/** The soil's own store counts as nothing at the start, so what it gave stands below 0 at the end. */
const soilGave = ({ onHand }: Pick<BedLedger, 'onHand'>): number =>
  -(onHand.find(({ key }) => key === 'in the soil itself')?.gM2 ?? 0);

/** What stands in a season's column [g N/m2 of bed]. */
export const seasonLine = (
  name: SeasonLine,
  ledger: Pick<BedLedger, 'onHand' | 'totals'>,
): number => (name === 'soilGave' ? soilGave(ledger) : ledger.totals[name]);

/** All that is left, the soil's own store apart [g N/m2 of bed]. */
export const leftInAll = (ledger: Pick<BedLedger, 'onHand' | 'totals'>): number =>
  ledger.totals.onHand + soilGave(ledger);

/** "2013", or what of it is foretold. */
export const seasonColumn = (
  { year, isOver }: { readonly year: number; readonly isOver: boolean },
  seasonStartMonth: number,
): string =>
  isOver
    ? seasonWord(year, seasonStartMonth)
    : `${seasonWord(year, seasonStartMonth)}, as it should end`;

/** Where what is expected is not reckoned yet, and where it could not be. */
export const expectedSoon = 'What should come free of it next year is being reckoned.';
export const expectedFailed =
  'What should come free of it next year cannot be reckoned just now. What is left stands above.';

/**
 * What is left of a season will give in the next; below nothing where browns take first.
 *
 * @param year the season's own
 */
export function expectedWords(
  expected: { readonly low: number; readonly middle: number; readonly high: number },
  year: number,
  seasonStartMonth: number,
  units: ChartUnits,
): string {
  const { nitrogen } = units;
  const from = seasonWord(year, seasonStartMonth);
  const next = seasonWord(year + 1, seasonStartMonth);
  const between = (low: number, high: number): string =>
    `in 8 of 10 imagined cases ${amount(low, nitrogen)} to ${amountWithUnit(high, nitrogen)}`;
  const range = between(expected.low, expected.high);
  if (expected.high < 0)
    return `In ${next} what is left from ${from} takes more from the soil than it gives, by about ${amountWithUnit(-expected.middle, nitrogen)} (${between(-expected.high, -expected.low)}): browns and strawy tops hold it while they rot. It comes back later.`;
  return expected.low < 0
    ? `What is left from ${from} gives the soil little in ${next} besides what is ready, or takes from it for a while (${range}; below nothing, browns hold it, and it comes back later).`
    : `Of what rots and of humus left from ${from}, about ${amountWithUnit(expected.middle, nitrogen)} should come free in ${next} (${range}), besides what is ready and what the soil itself gives every year.`;
}
