import type { DayNumber } from '../../days';
import type { FactId, Limits } from '../limits';
import type { SourceFacts, TreatmentFacts } from './facts';

/** What the bed is used for, as far as weedkiller on its mulch matters. */
export interface BedUse {
  /** anything eaten grows or may grow there this season */
  readonly food: boolean;
  /** beans, peas, tomatoes and the others that a trace deforms */
  readonly sensitive: boolean;
}

export interface TreatmentFinding {
  readonly row: FactId;
  /** what was put on it */
  readonly product: string;
  /** first day on which it would no longer hold, where there is one */
  readonly date: DayNumber | null;
  readonly number: number | null;
  readonly threshold: number | null;
  readonly unit: string;
}

const finding = (row: FactId, rest: Partial<TreatmentFinding> = {}): TreatmentFinding => ({
  row,
  product: '',
  date: null,
  number: null,
  threshold: null,
  unit: '',
  ...rest,
});

/** Mowings of a lawn between its treatment and this batch, neither of them counted. */
const mowingsSince = (source: SourceFacts, treated: DayNumber, cutOn: DayNumber): number =>
  source.mowingDays.filter((day) => day > treated && day < cutOn).length;

/**
 * Treated lawns, in four steps: what the label forbids is never used; a label's interval is kept;
 * a silent label asks for four logged mowings and six weeks, and even then nothing for sensitive
 * crops in that season unless a pot of beans grew straight; nobody knows: no food bed.
 */
function lawnFinding(
  source: SourceFacts,
  treatment: TreatmentFacts,
  cutOn: DayNumber,
  seasonFirst: DayNumber,
  use: BedUse,
  limits: Limits,
): TreatmentFinding | null {
  if (treatment.answer === 'unknown')
    return use.food || use.sensitive ? finding('unknown lawn') : finding('unknown lawn flowers');
  const { date } = treatment;
  if (date !== null && cutOn < date) return null;
  if (treatment.label === 'forbids') return finding('label forbids');
  // Without a day there is nothing to count from: it stays held back until the day is known.
  if (date === null) return finding('label silent');
  const days = cutOn - date;
  if (treatment.label === 'interval' && treatment.intervalDays !== null)
    return days < treatment.intervalDays
      ? finding('label interval', {
          date: date + treatment.intervalDays,
          number: days,
          threshold: treatment.intervalDays,
          unit: 'days',
        })
      : null;
  const mowings = mowingsSince(source, date, cutOn);
  const wantedMowings = limits.numbers['silent mowings'];
  const wantedDays = limits.numbers['silent days'];
  if (mowings < wantedMowings)
    return finding('label silent', {
      date: Math.max(cutOn, date + wantedDays),
      number: mowings,
      threshold: wantedMowings,
      unit: 'mowings',
    });
  if (days < wantedDays)
    return finding('label silent', {
      date: date + wantedDays,
      number: days,
      threshold: wantedDays,
      unit: 'days',
    });
  const isThisSeason = date >= seasonFirst;
  return use.sensitive && isThisSeason && treatment.beanTestPassed === null
    ? finding('label silent sensitive')
    : null;
}

/** Of what two treatments ask for, the longer holds: a label that forbids, then whatever has no end or the later one. */
function strictest(findings: readonly TreatmentFinding[]): TreatmentFinding | null {
  const holdsTo = ({ row, date }: TreatmentFinding): number =>
    row === 'label forbids' ? Infinity : (date ?? Number.MAX_SAFE_INTEGER);
  return findings.reduce<TreatmentFinding | null>(
    (worst, one) => (worst === null || holdsTo(one) > holdsTo(worst) ? one : worst),
    null,
  );
}

/** A lawn's treatments, each held against the four steps by itself. */
function lawnFindings(
  source: SourceFacts,
  ...asked: readonly [DayNumber, DayNumber, BedUse, Limits]
): TreatmentFinding | null {
  const all = [source.treatment, ...(source.earlierTreatments ?? [])];
  return strictest(
    all
      .filter(({ answer }) => answer === 'treated' || answer === 'unknown')
      .flatMap((treatment) => {
        const found = lawnFinding(source, treatment, ...asked);
        return found ? [{ ...found, product: treatment.product }] : [];
      }),
  );
}

/** Hay, straw, manure or compost from elsewhere: unknown or treated until a pot of beans says otherwise. */
function storeFinding(source: SourceFacts, use: BedUse): TreatmentFinding | null {
  const { treatment } = source;
  if (treatment.answer === 'treated' && treatment.label === 'forbids')
    return finding('label forbids');
  if (use.sensitive) return finding('unknown source sensitive');
  if (treatment.beanTestPassed !== null) return null;
  if (treatment.answer === 'treated') return finding('treated source');
  return use.food ? finding('unknown source') : finding('unknown source flowers');
}

/**
 * Whether a batch may be used on a bed, by what was put on where it grew. The wording never calls a
 * batch harmless: null means that no reason was found to hold it back.
 *
 * @param cutOn day it was cut, or laid where that is not known
 * @param seasonFirst first day of the season that holds `cutOn`
 * @returns null, or the rule that holds it back
 * @source label first; four mowings and six weeks: Nebraska and Michigan State columns; the pot
 *   test: Washington State University 2011
 */
export function treatmentFinding(
  source: SourceFacts,
  cutOn: DayNumber,
  seasonFirst: DayNumber,
  use: BedUse,
  limits: Limits,
): TreatmentFinding | null {
  if (!source.mayCarryWeedkiller) return null;
  const isLawn = source.kind === 'lawn';
  if (source.treatment.answer === 'nothing' && !source.earlierTreatments?.length) return null;
  if (source.treatment.answer === 'not asked')
    return isLawn || source.kind === 'store' ? finding('not asked') : null;
  if (isLawn) return lawnFindings(source, cutOn, seasonFirst, use, limits);
  const found = storeFinding(source, use);
  return found && { ...found, product: source.treatment.product };
}
