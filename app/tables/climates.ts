import type { Climate } from './climates/climate';
import { elsewhere } from './climates/elsewhere';
import { europe } from './climates/europe';
import { northAmerica } from './climates/northAmerica';
import { row } from './row';
import type { Row } from './shapes';
import { sourceOf } from './sources';

export type { Climate } from './climates/climate';

/** Stations to start a garden from when no weather of one's own is known. */
export const climates: readonly Climate[] = [...northAmerica, ...europe, ...elsewhere];

/** The station of that id; undefined when there is none. */
export const climateOf = (id: string): Climate | undefined =>
  climates.find((climate) => climate.id === id);

const wetDayUnit = 'days of 1 mm or more per day counted';
const interpolated = 'New York, counts from 0.254 and 2.54 mm, interpolated in the log of depth';

/**
 * Services count wet days from different depths. All stations here are brought to 1 mm with what
 * the two counts of New York give; elsewhere that is an estimate.
 */
export const wetDayFactors: Readonly<Record<'0.1 mm' | '0.2 mm' | '0.254 mm', Row>> = {
  '0.1 mm': row(
    0.6,
    0.68,
    0.75,
    wetDayUnit,
    'NoaaNormals',
    `${interpolated} beyond both`,
    'derived',
  ),
  '0.2 mm': row(
    0.68,
    0.75,
    0.82,
    wetDayUnit,
    'NoaaNormals',
    `${interpolated} beyond both`,
    'derived',
  ),
  '0.254 mm': row(0.72, 0.78, 0.84, wetDayUnit, 'NoaaNormals', interpolated, 'derived'),
};

/** Rain on a wet day where only the rain is known: 4 to 15 mm at the stations that count. */
export const rainPerWetDay: Row = row(
  4,
  7.5,
  15,
  'mm per day of 1 mm or more',
  'Assumed',
  'our middle of the stations that count wet days',
  'assumed',
);

const wetDayWords: Readonly<Record<Climate['wetDaysKnown'], string>> = {
  counted: 'wet days as counted',
  converted: 'wet days converted to 1 mm',
  'of a neighbour': 'wet days of a neighbouring station',
  estimated: 'wet days estimated from the rain',
};

const frostWords: Readonly<Record<Climate['frostKnown'], string>> = {
  published: 'frost dates published',
  reported: 'frost dates second-hand',
  estimated: 'frost dates estimated',
  'none expected': 'no frost expected in most years',
};

/** One line on where a station's numbers come from and how far they can be trusted. */
export const climateStanding = (climate: Climate): string =>
  `Means of ${climate.period ?? 'unstated years'}, ${sourceOf(climate.source).author}; ${wetDayWords[climate.wetDaysKnown]}; ${frostWords[climate.frostKnown]}.`;

const radians = Math.PI / 180;

/**
 * Stations by distance from a place, nearest first. Great-circle distance on a sphere; height
 * above the sea and the other side of a range of hills are not looked at.
 */
export function climatesByDistance(
  latitudeDegrees: number,
  longitudeDegrees: number,
): readonly Climate[] {
  const closeness = (climate: Climate): number =>
    Math.sin(latitudeDegrees * radians) * Math.sin(climate.latitudeDegrees * radians) +
    Math.cos(latitudeDegrees * radians) *
      Math.cos(climate.latitudeDegrees * radians) *
      Math.cos((longitudeDegrees - climate.longitudeDegrees) * radians);
  return [...climates].sort((one, other) => closeness(other) - closeness(one));
}
