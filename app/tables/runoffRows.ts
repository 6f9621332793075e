import { curveNumberOnSlope } from '../core/soil/runoff';
import { row } from './row';
import type { Row } from './shapes';
import type { TextureName } from './soils';

/** How readily a soil lets water in, A best. */
type SoakingGroup = 'A' | 'B' | 'C' | 'D';

/** Soil groups by texture (TR-55, appendix A). */
const groups: Readonly<Record<TextureName, SoakingGroup>> = {
  sand: 'A',
  'loamy sand': 'A',
  'sandy loam': 'A',
  loam: 'B',
  'silt loam': 'B',
  silt: 'B',
  'sandy clay loam': 'C',
  'clay loam': 'D',
  'silt clay loam': 'D',
  'sandy clay': 'D',
  'silty clay': 'D',
  clay: 'D',
};

const number = (low: number, typical: number, high: number, group: SoakingGroup): Row =>
  row(
    low,
    typical,
    high,
    'curve number',
    'Tr55',
    `table 2-2b, soil group ${group}: row crops in straight rows, good; from the same with crop residue to bare fallow`,
    'memory',
    { drawnPer: 'nothing' },
  );

/** Of a tended bed on the fall that the tables stand for. */
export const curveNumbers: Readonly<Record<SoakingGroup, Row>> = {
  A: number(64, 67, 77, 'A'),
  B: number(75, 78, 86, 'B'),
  C: number(82, 85, 91, 'C'),
  D: number(85, 89, 94, 'D'),
};

const fall = (low: number, typical: number, high: number, what: string): Row =>
  row(low, typical, high, 'm of fall per m', 'Assumed', what, 'assumed', { drawnPer: 'nothing' });

/** What a gardener calls a slope. */
export const fallOfSlope = {
  gentle: fall(0.02, 0.05, 0.08, 'a ball rolls, a barrow is no trouble'),
  steep: fall(0.08, 0.15, 0.3, 'one leans into it'),
} as const;

/**
 * Curve number of a bed, or null where nothing is taken to run off: no slope was given, or it is
 * flat, where rain stands until it soaks in.
 */
export function curveNumberOf(
  texture: TextureName,
  slope: 'flat' | 'gentle' | 'steep' | undefined,
): number | null {
  if (slope === undefined || slope === 'flat') return null;
  return curveNumberOnSlope(curveNumbers[groups[texture]].typical, fallOfSlope[slope].typical);
}
