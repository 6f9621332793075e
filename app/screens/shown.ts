import { useMemo } from 'react';
import type { UnitSystem } from '../amounts/amount';
import { unitsOf, type UnitSet } from '../amounts/unitSystem';
import { dayOf, textFromDay, type DayNumber } from '../core/days';
import type { ShownUnit } from '../core/shownUnit';
import { dayNear, dayStyle, type DayStyle } from '../words/dates';
import { dayFull, dayShort, dayWord } from '../words/chartFormat';
import { metricChartUnits, usChartUnits, type ChartUnits } from '../words/chartUnits';
import { estimateWithUnit } from '../words/figures';
import { useMowings } from './store';

/** How this person reads days and amounts. */
export interface Shown {
  readonly system: UnitSystem;
  readonly units: UnitSet;
  readonly chart: ChartUnits;
  readonly style: DayStyle;
  /** "Saturday 15 June 2013" */
  readonly day: (day: DayNumber | string) => string;
  /** "Sat 15 June 2013", for fields */
  readonly dayField: (day: DayNumber | string) => string;
  /** "15 June" */
  readonly dayWord: (day: DayNumber | string) => string;
  /** "15 Jun" */
  readonly dayShort: (day: DayNumber | string) => string;
  /** "yesterday", "Saturday 8 June" */
  readonly dayNear: (day: DayNumber | string, today: DayNumber) => string;
  /** YYYY-MM-DD */
  readonly iso: (day: DayNumber) => string;
  readonly estimate: (inside: number, unit: ShownUnit) => string;
}

const numberOf = (day: DayNumber | string): DayNumber =>
  typeof day === 'string' ? dayOf(day) : day;

/** Squares are typed as m2 and shown as m². */
const squared = (units: UnitSet): UnitSet => {
  const shownOf = (unit: ShownUnit): ShownUnit => ({
    ...unit,
    symbol: unit.symbol.replace('m2', 'm²'),
  });
  return {
    ...units,
    area: shownOf(units.area),
    nitrogenPerArea: shownOf(units.nitrogenPerArea),
    yieldPerArea: shownOf(units.yieldPerArea),
  };
};

function shownIn(system: UnitSystem): Shown {
  const style = dayStyle(system);
  return {
    system,
    units: squared(unitsOf(system)),
    chart: system === 'us' ? usChartUnits : metricChartUnits,
    style,
    day: (day) => dayFull(numberOf(day), style),
    dayField: (day) => dayFull(numberOf(day), style).replace(/^(\w{3})\w*/, '$1'),
    dayWord: (day) => dayWord(numberOf(day), style),
    dayShort: (day) => dayShort(numberOf(day), style),
    dayNear: (day, today) => dayNear(numberOf(day), today, style),
    iso: textFromDay,
    estimate: estimateWithUnit,
  };
}

export const useShownIn = (system: UnitSystem): Shown => useMemo(() => shownIn(system), [system]);

export const useShown = (): Shown => useShownIn(useMowings((state) => state.shownUnits));
