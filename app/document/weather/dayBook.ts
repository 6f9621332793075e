import { dayFromParts, textFromDay, yearOf, type DayNumber } from '../../core/days';
import {
  believableWeather,
  coreMeasures,
  firstBelievableYear,
  lastBelievableYear,
  type Gap,
  type Listed,
  type Measure,
  type ReadDay,
  type Refused,
  type RefusedReason,
  type WeatherOptions,
} from './weatherTypes';

/** Refused lines and gaps that are kept one by one; the rest are only counted. */
const mostListed = 100;

interface Held {
  readonly value: number;
  readonly line: number;
}

/**
 * Values by day as they come in, in any order. What cannot be is refused with its line and never
 * mended: a value outside `believableWeather`, a second value for the same day, a highest below the
 * lowest of its day (both are left out: nobody knows which is wrong).
 */
export class DayBook {
  private readonly days = new Map<DayNumber, Map<Measure, Held>>();
  private readonly refusedFirst: Refused[] = [];
  private refusedTotal = 0;
  private readonly outsideDays = new Set<DayNumber>();
  private readonly firstDay: DayNumber;
  private readonly lastDay: DayNumber;

  constructor(private readonly options: Pick<WeatherOptions, 'from' | 'to'>) {
    this.firstDay = dayFromParts(firstBelievableYear, 1, 1);
    this.lastDay = dayFromParts(lastBelievableYear, 12, 31);
  }

  refuse(line: number, day: DayNumber | null, reason: RefusedReason): void {
    this.refusedTotal++;
    if (this.refusedFirst.length < mostListed) {
      this.refusedFirst.push({ line, day: day === null ? null : textFromDay(day), reason });
    }
  }

  /** False, and counted, when the day lies outside what was asked for. */
  isWanted(day: DayNumber): boolean {
    const { from, to } = this.options;
    if ((from === undefined || day >= from) && (to === undefined || day <= to)) return true;
    this.outsideDays.add(day);
    return false;
  }

  get outside(): number {
    return this.outsideDays.size;
  }

  /** False, and refused, when a file of a garden can hold no such day. */
  isBelievable(line: number, day: DayNumber): boolean {
    if (day >= this.firstDay && day <= this.lastDay) return true;
    this.refuse(line, null, { kind: 'year beyond belief', year: yearOf(day) });
    return false;
  }

  put(line: number, day: DayNumber, measure: Measure, value: number): void {
    const [low, high] = believableWeather[measure];
    if (value < low || value > high) {
      const kind = low === 0 && value < 0 ? 'below nought' : 'out of range';
      this.refuse(line, day, { kind, measure, value });
      return;
    }
    let held = this.days.get(day);
    if (!held) {
      held = new Map();
      this.days.set(day, held);
    }
    const before = held.get(measure);
    if (before) {
      this.refuse(line, day, { kind: 'value twice', measure, firstLine: before.line });
      return;
    }
    held.set(measure, { value, line });
  }

  /** All days that hold at least one value, rising. Call once, after the last `put`. */
  finish(): readonly ReadDay[] {
    const read: ReadDay[] = [];
    for (const day of [...this.days.keys()].sort((one, other) => one - other)) {
      const held = this.days.get(day);
      if (!held) continue;
      const [lowest, highest] = [held.get('lowest'), held.get('highest')];
      if (lowest && highest && highest.value < lowest.value) {
        held.delete('lowest');
        held.delete('highest');
        this.refuse(Math.max(lowest.line, highest.line), day, {
          kind: 'highest below lowest',
          lowest: lowest.value,
          highest: highest.value,
          otherLine: Math.min(lowest.line, highest.line),
        });
      }
      if (held.size === 0) continue;
      const values: Partial<Record<Measure, number>> = {};
      for (const [measure, { value }] of held) values[measure] = value;
      read.push({ day, values });
    }
    return read;
  }

  get refused(): Listed<Refused> {
    return { first: this.refusedFirst, total: this.refusedTotal };
  }
}

/** Runs of days between the first and the last on which the same of `wanted` are missing. */
export function gapsOf(days: readonly ReadDay[]): Listed<Gap> {
  // a list of rain alone has no gap of temperature on every day of it
  const wanted = coreMeasures.filter((measure) =>
    days.some(({ values }) => values[measure] !== undefined),
  );
  const gaps: Gap[] = [];
  let total = 0;
  let open: { from: DayNumber; to: DayNumber; key: string; missing: typeof wanted } | null = null;
  const close = (): void => {
    if (!open) return;
    total++;
    if (gaps.length < mostListed) {
      gaps.push({
        from: textFromDay(open.from),
        to: textFromDay(open.to),
        days: open.to - open.from + 1,
        missing: open.missing,
      });
    }
    open = null;
  };
  const miss = (from: DayNumber, to: DayNumber, missing: typeof wanted): void => {
    const key = missing.join();
    if (open && open.key === key && open.to === from - 1) {
      open = { ...open, to };
      return;
    }
    close();
    open = { from, to, key, missing };
  };
  days.forEach(({ day, values }, index) => {
    const before = days[index - 1]?.day;
    if (before !== undefined && day > before + 1) miss(before + 1, day - 1, wanted);
    const missing = wanted.filter((measure) => values[measure] === undefined);
    if (missing.length > 0) miss(day, day, missing);
    else close();
  });
  close();
  return { first: gaps, total };
}
