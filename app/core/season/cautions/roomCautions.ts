import type { DayNumber } from '../../days';
import { flowerWeather } from '../flowerWeather';
import { classLines, type ClassLines } from '../excessLines';
import type { LayerInput } from '../input';
import { type Limits, type Lines, weigh, type Weighed } from '../limits';
import { plantingAccounts } from '../plantingAccount';
import { at, seasonLastDay } from '../seasonAccount';
import { bedVerdict } from '../state';
import type { BedVerdict, Caution } from '../verdict';
import type { Run } from './facts';
import { factCaution, makeCaution } from './makeCaution';

const feeds = (layer: LayerInput): boolean =>
  layer.materialClass === 'green' || layer.materialClass === 'slow';

const linesOn = (
  run: Run,
  day: DayNumber,
  limits: Limits,
  use: 'over-fed' | 'room',
): ClassLines | null =>
  classLines(
    plantingAccounts(run.input, run.result, day).map((account) => ({
      excessClass: account.planting.crop.excessClass,
      need: account.need,
    })),
    limits,
    use,
  );

const atMostCaution = (weighed: Weighed | null, lines: Lines): Weighed | null =>
  weighed?.weight === 'stop' ? { weight: 'caution', threshold: lines.caution } : weighed;

function seasonTotalCaution(
  verdict: BedVerdict,
  limits: Limits,
  layerId: string | null,
  empty: boolean,
): Caution[] {
  const lines = limits.lines['season total'];
  const weighed = weigh(verdict.laidThisSeason, lines);
  const kept = empty ? atMostCaution(weighed, lines) : weighed;
  return kept
    ? [
        makeCaution('season total', kept.weight, 'season total', {
          number: verdict.laidThisSeason,
          threshold: kept.threshold,
          unit: 'g/m2',
          layerId,
        }),
      ]
    : [];
}

function ratioCaution(
  run: Run,
  verdict: BedVerdict,
  of: ClassLines | null,
  limits: Limits,
  layerId: string | null,
): Caution[] {
  // a cover crop has no line of its own, and yet what is laid on it adds up
  const seasonTotal = seasonTotalCaution(verdict, limits, layerId, false);
  const weighed = verdict.ratio !== null && of !== null ? weigh(verdict.ratio, of.lines) : null;
  if (!weighed || of === null) return seasonTotal;
  return [
    makeCaution('room', weighed.weight, of.row, {
      number: verdict.ratio,
      threshold: weighed.threshold,
      unit: 'ratio',
      detail: {
        excessClass: of.excessClass,
        laid: verdict.laidThisSeason,
        lyingMm: at(run.result.coverDepth, run.result, run.input.today),
      },
      layerId,
    }),
    ...seasonTotal,
  ];
}

/** Days until something is sown or planted after a day; null when nothing is planned in the run. */
export function nextStart(run: Run, day: DayNumber): DayNumber | null {
  const starts = run.input.plantings
    .map((planting) => planting.startDay)
    .filter((start) => start > day);
  return starts.length > 0 ? Math.min(...starts) : null;
}

/**
 * Greens on an empty bed. Where a crop follows within weeks, the ratio on its first day is weighed;
 * else what would be ready in the soil with nobody to take it. Never a stop.
 */
function emptyBedCautions(after: Run, day: DayNumber, limits: Limits, layerId: string): Caution[] {
  const start = nextStart(after, day);
  if (start !== null && start - day <= limits.numbers['empty bed days']) {
    const then = bedVerdict(after.input, after.result, start, limits);
    const of = linesOn(after, start, limits, 'room');
    if (then.ratio === null || of === null) return [];
    const weighed = atMostCaution(weigh(then.ratio, of.lines), of.lines);
    return weighed
      ? [
          makeCaution('room', weighed.weight, of.row, {
            number: then.ratio,
            threshold: weighed.threshold,
            unit: 'ratio',
            date: start,
            detail: { excessClass: of.excessClass, laid: then.laidThisSeason },
            layerId,
          }),
        ]
      : [];
  }
  const lines = limits.lines['greens on an empty bed'];
  let peak = 0;
  let peakDay = day;
  const last = Math.min(start ?? Infinity, seasonLastDay(after.input, day));
  for (let one = day; one <= last; one += 1) {
    const ready = at(after.result.pools.mineralTop, after.result, one);
    if (ready > peak) {
      peak = ready;
      peakDay = one;
    }
  }
  const weighed = weigh(peak, lines);
  return weighed
    ? [
        makeCaution('room', weighed.weight, 'greens on an empty bed', {
          number: peak,
          threshold: weighed.threshold,
          unit: 'g/m2',
          date: peakDay,
          layerId,
        }),
      ]
    : [];
}

/** How far past its lines a bed is "enough to the end": 0 on the line, 0.05 five hundredths past it. */
function pastEnough(verdict: BedVerdict, limits: Limits): number {
  const { numbers } = limits;
  const provided = Math.max(
    verdict.forecastMet / numbers['forecast meets'],
    verdict.openShare > 0 ? numbers['little open'] / verdict.openShare : Infinity,
  );
  return Math.min((verdict.ratio ?? 0) / numbers['enough to the end'], provided) - 1;
}

/**
 * Greens on a bed that has enough. On "enough to the end" they are a stop when the bed would be
 * over-fed with them. Just past the line of "enough" the stop is still a caution: a
 * bed that changes its state by a hair must not jump from nothing to a stop.
 */
function enoughCautions(
  before: BedVerdict,
  after: BedVerdict,
  overFed: ClassLines | null,
  limits: Limits,
  layerId: string,
): Caution[] {
  if (before.state === 'enough for now')
    return [
      factCaution('enough', 'greens on enough for now', limits, {
        number: before.nitrateMgPerKg,
        threshold: limits.lines['nitrate at flowering'].caution,
        unit: 'mg/kg',
        date: before.turnsOn,
        layerId,
      }),
    ];
  if (before.state !== 'enough to the end' && before.state !== 'over-fed') return [];
  const line = overFed?.lines.caution ?? Infinity;
  const isPast =
    (after.ratio ?? 0) > line && pastEnough(before, limits) > limits.numbers['enough margin'];
  return [
    factCaution('enough', isPast ? 'greens past enough' : 'greens on enough to the end', limits, {
      number: after.ratio,
      threshold: Number.isFinite(line) ? line : limits.numbers['enough to the end'],
      unit: 'ratio',
      detail: { ratioBefore: before.ratio ?? 0 },
      layerId,
    }),
  ];
}

/** A run's verdict on a later day than its own today, for layers dated ahead. */
const verdictOn = (run: Run, day: DayNumber, limits: Limits): BedVerdict =>
  day === run.input.today
    ? run.verdict
    : bedVerdict(run.input, run.result, day, limits, run.verdict.state);

/**
 * Room for what feeds: the ratio **after** the layer, by a full second run; the season's total; and
 * greens on a bed that has enough. Not for legumes.
 */
export function roomCautions(
  before: Run,
  after: Run,
  layers: readonly LayerInput[],
  limits: Limits,
): Caution[] {
  const feeding = layers.filter(feeds);
  const [first] = feeding;
  if (!first) return [];
  const lastLaid = Math.max(...feeding.map((layer) => layer.day));
  const day = Math.max(after.input.today, lastLaid);
  const then = verdictOn(after, day, limits);
  if (then.ratio === null)
    return [
      ...emptyBedCautions(after, day, limits, first.id),
      ...seasonTotalCaution(then, limits, first.id, true),
    ];
  if (then.room === null) return [];
  const cautions = ratioCaution(after, then, linesOn(after, day, limits, 'room'), limits, first.id);
  if (layers.some((layer) => layer.isGreens))
    cautions.push(
      ...enoughCautions(
        verdictOn(before, day, limits),
        then,
        linesOn(after, day, limits, 'over-fed'),
        limits,
        first.id,
      ),
    );
  return cautions;
}

/** The same lines for the bed as it is: no more greens, and how far past. */
export function roomOfBed(run: Run, limits: Limits): Caution[] {
  const { verdict, input } = run;
  if (verdict.ratio === null) return seasonTotalCaution(verdict, limits, null, true);
  if (verdict.room === null) return [];
  const sets = verdict.excessClass === 'fruit' || verdict.excessClass === 'flower';
  const weather = sets ? flowerWeather(run.result, input.today, limits) : {};
  return ratioCaution(run, verdict, linesOn(run, input.today, limits, 'room'), limits, null).map(
    (caution) => ({ ...caution, detail: { ...caution.detail, ...weather } }),
  );
}
