import type { BedStrip } from '../../charts/strips/data';
import { rangeOn, readyOn } from '../../charts/strips/geometry';
import type { DayNumber } from '../../core/days';
import { gramsPerM2FromMgPerKg, mgPerKgFromGramsPerM2 } from '../../core/units';
import type { Garden } from '../../document/schema';
import type { BedDraws } from '../../store/contract';
import { amount, amountWithUnit, dayFull } from '../../words/chartFormat';
import { soilWeightWords } from '../../words/chartUnits';
import { twoFigures } from '../../words/figures';
import { comingRangeWhy, readyEnds } from '../../words/seasonPlaceWords';
import { keptLikelyWords, restingWords } from '../../words/imaginedWords';
import { rangeOdds } from '../../words/ranges';
import type { FigureInText, Why } from '../../words/why';
import { whyWords } from '../../words/why';
import type { Shown } from '../shown';
import { bedGives } from './notInSum';

/** the layer whose nitrogen a strip shows [cm] */
const topCentimetres = 30;
const daysOfWeek = 7;

export interface StripWhyFacts {
  readonly garden: Garden;
  /** undefined: no imagined seasons of this bed yet */
  readonly draws: BedDraws | undefined;
  readonly shown: Pick<Shown, 'chart'>;
}

/** Where it lies in most imagined seasons on the evening of the week nearest before, in the strip's own unit. */
function likelyOn({ draws, shown }: StripWhyFacts, bed: BedStrip, day: DayNumber): string | null {
  const { bulkDensityKgPerL } = bed;
  const coming = rangeOn(bed, day);
  if (coming)
    return `${readyEnds(coming, shown.chart)} ${shown.chart.nitrogen.short}, ${rangeOdds}`;
  if (!draws) return null;
  const { nitrateDays, nitrate } = draws.answer;
  const week = nitrateDays.findLastIndex((one) => one <= day);
  const band = nitrate[week];
  // past the last evening that was imagined nothing is known
  if (!band || day - (nitrateDays[week] ?? day) >= daysOfWeek) return null;
  const unit = shown.chart.nitrogen;
  const grams = (mgPerKg: number) =>
    gramsPerM2FromMgPerKg(mgPerKg, bulkDensityKgPerL, topCentimetres);
  return `${amount(grams(band.low), unit)} to ${amountWithUnit(grams(band.high), unit)}, ${rangeOdds}`;
}

/** Where the range of a season that has not begun comes from. */
function papersOfRange({ range }: BedStrip): readonly string[] {
  if (typeof range !== 'object') return [];
  const resting = restingWords(range);
  return [comingRangeWhy(range.count), ...(resting === '' ? [] : [resting]), keptLikelyWords];
}

/** What lies ready in the top layer of a bed on an evening. */
export interface ReadyTop {
  readonly bedId: string;
  readonly day: DayNumber;
  /** g/m2 */
  readonly grams: number;
  readonly bulkDensityKgPerL: number;
  /** where it lies in most imagined seasons; null: not known */
  readonly range: string | null;
  /** where that range is from, where it has papers of its own */
  readonly rangeFrom?: readonly string[];
}

/** What stands behind what lies ready in the top layer of a bed on the evening of a day. */
export function readyTopWhy(
  { garden, shown: { chart } }: Pick<StripWhyFacts, 'garden' | 'shown'>,
  { bedId, day, grams, bulkDensityKgPerL, range, rangeFrom = [] }: ReadyTop,
): Why {
  const mgPerKg = mgPerKgFromGramsPerM2(grams, bulkDensityKgPerL, topCentimetres);
  return {
    of: `Ready in the top ${chart.topSoil}.`,
    formula:
      'What came free there or was washed in − what was taken up, held back, washed out or lost, day by day.',
    inputs: [
      ['On the evening of', dayFull(day, chart)],
      ['Ready there', amountWithUnit(grams, chart.nitrogen)],
      ['The soil weighs', soilWeightWords(bulkDensityKgPerL, chart)],
      ['Which is, as nitrate of that soil', `${twoFigures(mgPerKg)} mg/kg`],
    ],
    range,
    sources: [...rangeFrom, whyWords.model, ...bedGives(garden, bedId)],
  };
}

/** The same of a bed's strip. */
export const readyOnDayWhy = (facts: StripWhyFacts, bed: BedStrip, day: DayNumber): Why =>
  readyTopWhy(facts, {
    bedId: bed.bedId,
    day,
    grams: readyOn(bed, day) ?? 0,
    bulkDensityKgPerL: bed.bulkDensityKgPerL,
    range: likelyOn(facts, bed, day),
    rangeFrom: papersOfRange(bed),
  });

/** The whole reading of a strip as one figure; none where there are no sums for the day. */
export const readyFigure = (
  facts: StripWhyFacts,
  bed: BedStrip,
  day: DayNumber,
  says: string,
): readonly FigureInText[] =>
  readyOn(bed, day) === null
    ? []
    : [
        {
          text: says,
          // a day is read with every movement of the pointer: reckoned when it is asked for
          get why() {
            return readyOnDayWhy(facts, bed, day);
          },
        },
      ];
