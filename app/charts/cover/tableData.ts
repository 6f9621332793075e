import { textFromDay } from '../../core/days';
import type { TableData } from '../export/tableData';
import type { CoverChartData } from './data';
import { coverFacts } from './geometry';

/** The layers of a bed, the youngest first, those that have vanished at the end. */
export function coverTable(data: CoverChartData): TableData {
  const { lying, vanished } = coverFacts(data);
  const { depth } = data.units;
  return {
    head: [
      'layer',
      'laid on',
      'age [days]',
      `depth as laid [${depth.short}]`,
      `depth now [${depth.short}]`,
      'dry weight left [%]',
    ],
    rows: [...lying.toReversed(), ...vanished.toReversed()].map((one) => [
      one.layer.name,
      textFromDay(one.layer.day),
      one.daysOld,
      one.layer.laidDepth * depth.perInside,
      one.depth * depth.perInside,
      100 * one.left,
    ]),
  };
}
