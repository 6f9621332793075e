import type { Mixture, MixturePart } from '../../document/mixture';
import { materialById } from '../../document/materialValues';
import { rowOrMeasured } from '../../document/measuredRow';
import type { Garden } from '../../document/schema';
import type { CarbonKind } from '../../tables/materials';
import { twoFigures } from '../../words/figures';
import { ratioWords } from '../../words/mixWords';
import { rangeOdds } from '../../words/ranges';
import type { Why } from '../../words/why';
import type { Shown } from '../shown';
import { rowSource } from './sourcesOf';

export interface MixWhyFacts {
  readonly garden: Garden;
  readonly mixture: Mixture;
  readonly parts: readonly MixturePart[];
  readonly shown: Pick<Shown, 'estimate' | 'units'>;
}

/** Where the contents of the parts come from, part by part. */
const contentSources = ({ garden, parts }: MixWhyFacts): readonly string[] =>
  parts.flatMap(({ materialId }) => {
    const { name, row, nitrogen, moisture } = materialById(garden, materialId);
    const ownRatio = garden.materials.find(({ id }) => id === materialId)?.carbonToNitrogen;
    return [
      rowSource(`${name}, nitrogen`, rowOrMeasured(row.nitrogenPercent, nitrogen * 100)),
      rowSource(
        `${name}, carbon to nitrogen`,
        rowOrMeasured(row.carbonToNitrogen, ownRatio ?? row.carbonToNitrogen.typical),
      ),
      rowSource(`${name}, water`, rowOrMeasured(row.moisturePercent, moisture * 100)),
    ];
  });

/** What a mixture comes to: carbon to nitrogen, and water. */
export function mixtureWhy(facts: MixWhyFacts): Why {
  const { mixture, shown } = facts;
  const { blend, parts, ratioRange } = mixture;
  const { mass, nitrogen } = shown.units;
  return {
    of: 'What the mixture comes to.',
    formula:
      'Carbon of all parts ÷ nitrogen of all parts; water = water of all parts, with what is sprinkled in, ÷ weight of all.',
    inputs: parts.map(({ name, carbonKilograms, nitrogenKilograms, waterKilograms }) => [
      name,
      `${shown.estimate(carbonKilograms, mass)} of carbon, ${shown.estimate(nitrogenKilograms * 1000, nitrogen)} of nitrogen, ${shown.estimate(waterKilograms, mass)} of water`,
    ]),
    range: `${twoFigures(ratioRange.low)} to ${ratioWords(ratioRange.high)}, ${rangeOdds}; of ${twoFigures(blend.moisture * 100)} % water no range is drawn`,
    sources: contentSources(facts),
  };
}

/** How much of a part was found for the wish. */
export function foundWhy(facts: MixWhyFacts, at: number): Why {
  const { garden, mixture, parts, shown } = facts;
  const part = mixture.parts[at];
  const asked = parts[at];
  const row = asked && materialById(garden, asked.materialId).row;
  return {
    of: 'How much of it to take.',
    formula:
      'So much that carbon ÷ nitrogen of all parts, and their share of water, come to what is wished for; volume = weight ÷ what a loose litre weighs.',
    inputs: part
      ? [
          ['Weighs, as wet as it is', shown.estimate(part.freshKilograms, shown.units.mass)],
          ['Dry', shown.estimate(part.dryKilograms, shown.units.mass)],
          ['Loose', shown.estimate(part.litres, shown.units.volume)],
        ]
      : [],
    range: null,
    sources: [
      ...(row ? [rowSource('Weighs, loose', row.densityKgPerM3)] : []),
      ...contentSources(facts),
    ],
  };
}

/** How much water to sprinkle in, or by how much there is too much. */
export const waterWhy = (facts: MixWhyFacts): Why => ({
  of: 'Water to make up the wish.',
  formula:
    'Dry weight of all parts × share wished for ÷ (1 − that share) − water that the parts bring.',
  inputs: facts.mixture.parts.map(({ name, waterKilograms }) => [
    `Water in ${name.toLowerCase()}`,
    facts.shown.estimate(waterKilograms, facts.shown.units.mass),
  ]),
  range: null,
  sources: contentSources(facts),
});

/** Between what the carbon of a kind of material is taken to lie. */
export const carbonWhy = (kind: CarbonKind): Why => ({
  of: 'Carbon of its kind.',
  formula:
    'Nitrogen × carbon to nitrogen, and no less and no more than this kind of stuff is believed to hold.',
  inputs: [['Kind', kind]],
  range: null,
  sources: ['Our own judgement, read nowhere: what such stuff is made of leaves no room beyond.'],
});
