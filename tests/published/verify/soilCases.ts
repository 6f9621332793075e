import { join } from 'node:path';
import { saxtonRawls } from '../../../app/core/soil/pedotransfer';
import { readCases } from '../readCases';
import { ours as soilTestAnswers } from '../SoilTests-nitrogen/ours';
import { stoppingNitrate } from '../Voisin2002-nitrate/ours';
import type { Comparison, ComparisonGroup } from './comparison';

const casesOf = (name: string, file?: string): readonly string[][] =>
  readCases(join(import.meta.dirname, '..', name), file).rows;

const example = saxtonRawls({ sand: 0.2, clay: 0.2, organicMatterPercent: 2.5 });
const exampleAnswers: Readonly<Record<string, number>> = {
  wilting_point: example.wiltingPoint,
  field_capacity: example.fieldCapacity,
  saturation: example.saturation,
  wilting_point_percent: 100 * example.wiltingPoint,
  field_capacity_percent: 100 * example.fieldCapacity,
  saturation_percent: 100 * example.saturation,
};

const saxton = casesOf('SaxtonRawls2006-texture', 'read-example.csv').map(
  ([who, quantity = '', printed = '']): Comparison => ({
    source: 'Saxton and Rawls 2006, in documentation of a hydrology toolbox',
    place: who === 'output' ? 'answer of its own program' : 'figures quoted as the paper’s',
    quantity: `${quantity.replaceAll('_', ' ')}, sand 20 %, clay 20 %, organic matter 2.5 %`,
    printed,
    ours: exampleAnswers[quantity] ?? NaN,
    within: 'digits',
    standing: 'printed',
  }),
);

const classTable = casesOf('SaxtonRawls2006-texture').flatMap(
  ([texture = '', sand, clay, matter, ...printed]) => {
    const soil = saxtonRawls({
      sand: Number(sand) / 100,
      clay: Number(clay) / 100,
      organicMatterPercent: Number(matter),
    });
    const answers = [
      ['wilting point (%)', 100 * soil.wiltingPoint],
      ['field capacity (%)', 100 * soil.fieldCapacity],
      ['saturation (%)', 100 * soil.saturation],
      ['density (kg/L)', soil.bulkDensityKgPerL],
    ] as const;
    return answers.map(([quantity, ours], at): Comparison => ({
      source: 'Saxton and Rawls 2006',
      place: 'table of texture classes',
      quantity: `${texture}: ${quantity}`,
      printed: printed[at] ?? '',
      ours,
      within: 'digits',
      standing: 'recalled',
    }));
  },
);

const peas = casesOf('Voisin2002-nitrate').map(([stage, printed = '']): Comparison => ({
  source: 'Voisin and others 2002',
  place: 'abstract',
  quantity: `nitrate that stops the nodules of ${stage} peas (kg N/ha)`,
  printed,
  ours: stoppingNitrate(stage as 'leafy' | 'podding'),
  within: 'digits',
  standing: 'printed',
}));

const soilTests = casesOf('SoilTests-nitrogen').map(
  ([source = '', place = '', quantity = '', printed = ''], at): Comparison => ({
    source,
    place,
    quantity,
    printed,
    ours: soilTestAnswers[at] ?? NaN,
    within: 'digits',
    standing: 'printed',
  }),
);

export const soilGroups: readonly ComparisonGroup[] = [
  {
    title: 'Soil water and density from texture',
    equations: [{ name: 'saxtonRawls', file: 'app/core/soil/pedotransfer' }],
    comparisons: saxton,
  },
  {
    title: 'Organic stock and soil tests',
    equations: [
      { name: 'soilOrganicNitrogen', file: 'app/core/soil/organicMatter' },
      { name: 'gramsPerM2FromMgPerKg', file: 'app/core/units' },
    ],
    comparisons: soilTests,
  },
  {
    title: 'Nitrate that stops fixation',
    equations: [{ name: 'nitrateSuppression', file: 'app/core/crop/fixation' }],
    comparisons: peas,
  },
  { title: 'Texture classes, recalled', equations: [], comparisons: classTable },
];
