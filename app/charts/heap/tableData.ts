import type { ChartUnits } from '../../words/chartUnits';
import type { TableData } from '../export/tableData';
import type { ShownHeapLayer } from './HeapLayers';

/** The layers of a mixture, the first below; thickness in the unit that is read. */
export function heapTable(
  layers: readonly Pick<ShownHeapLayer, 'name' | 'millimetres'>[],
  { depth }: Pick<ChartUnits, 'depth'>,
): TableData {
  return {
    head: ['layer from below', 'material', `as thick as it lies [${depth.short}]`],
    rows: layers.map(({ name, millimetres }, at) => [at + 1, name, millimetres * depth.perInside]),
  };
}
