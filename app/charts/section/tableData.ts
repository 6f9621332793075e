import { textFromDay } from '../../core/days';
import type { ChartUnits } from '../../words/chartUnits';
import type { TableData } from '../export/tableData';
import { nitrogenKinds, type NitrogenKind, type SectionFacts, type SoilLayerFacts } from './facts';

const kindWords: Readonly<Record<NitrogenKind, string>> = {
  ready: 'ready',
  held: 'held by soil life',
  unrotted: 'in old roots and what was dug in',
};

/** What a section shows on its evenings, a row a thing. */
export function sectionTable(evenings: readonly SectionFacts[], units: ChartUnits): TableData {
  const depth = (millimetres: number) => millimetres * units.depth.perInside;
  const grams = (gM2: number) => gM2 * units.nitrogen.perInside;
  const soil = (name: string, layer: SoilLayerFacts) => [
    [name, depth(layer.to - layer.from), null, null, 100 * layer.water],
    ...nitrogenKinds.map((kind) => [
      `${name}, nitrogen ${kindWords[kind]}`,
      null,
      null,
      grams(layer.nitrogen[kind]),
      null,
    ]),
  ];
  return {
    head: [
      'evening of',
      'what',
      `depth [${units.depth.short}]`,
      'dry weight left [%]',
      `nitrogen [${units.nitrogen.short}]`,
      'of the water plants can draw on [%]',
    ],
    rows: evenings.flatMap((facts) =>
      [
        ...facts.cover.map(({ layer, depth: lies, left }) => [
          layer.name,
          depth(lies),
          100 * left,
          null,
          null,
        ]),
        [
          'all cover',
          depth(facts.coverDepth),
          null,
          grams(facts.coverNitrogen.free + facts.coverNitrogen.bound),
          null,
        ],
        ...soil(`top ${units.topSoil}`, facts.top),
        ...soil('below', facts.lower),
      ].map((row) => [textFromDay(facts.day), ...row]),
    ),
  };
}
