import type { ChartValuesOf } from '../../charts/ChartSays';
import type { KeyName } from '../../charts/season/keyRows';
import type { Why } from '../../words/why';
import type { BedWhyFacts } from './bedWhys';
import { layerColumnWhy } from './coverWhys';
import { sectionPartWhy } from './sectionWhys';
import { seasonColumnWhy, seasonDayWhy } from './seasonDayWhys';

/**
 * What stands behind a value in the key of one of a bed's charts, or a column of its table.
 *
 * @param key as the chart names it
 */
export function valueWhy(facts: BedWhyFacts, values: ChartValuesOf, key: string): Why | null {
  switch (values.of) {
    case 'season day':
      return seasonDayWhy(facts, key as KeyName, values.day);
    case 'season weeks':
      return seasonColumnWhy(facts, key as KeyName | 'all it gets', values.day);
    case 'cover layers':
      return layerColumnWhy(facts, key as 'laid depth' | 'depth' | 'left');
    case 'section parts': {
      const kind = values.kinds.get(key);
      return kind ? sectionPartWhy(facts, kind) : null;
    }
    case 'strips':
    case 'lawn weeks':
      return null;
  }
}
