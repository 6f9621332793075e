import type { PlantStage } from '../core/season/plantStage';
import type { ChartUnit, ChartUnits } from './chartUnits';
import { amount, amountWithUnit, dayWord, listed, percent } from './chartFormat';
import { ageWords, leftWords } from './coverChart';

/* What each part of a bed's section is, in a sentence. */

const centimetres: ChartUnit = {
  short: 'cm',
  long: 'centimetres',
  perInside: 0.1,
  decimals: 0,
};
const inches: ChartUnit = { short: 'in', long: 'inches', perInside: 1 / 25.4, decimals: 0 };

/** How tall plants and how deep roots are. */
export const lengthUnit = (units: ChartUnits): ChartUnit =>
  units.depth.short === 'mm' ? centimetres : inches;

/** "45 cm"; under one of the unit "less than 1 cm" */
export const lengthWords = (millimetres: number, units: ChartUnits): string => {
  const unit = lengthUnit(units);
  const shown = Math.round(millimetres * unit.perInside);
  return shown < 1 ? `less than 1 ${unit.short}` : `${shown} ${unit.short}`;
};

/** What of a crop is ripe decides the word: fruit, or all of it. */
export const stageWords: Readonly<Record<PlantStage, string>> = {
  seed: 'sown, not up yet',
  seedling: 'seedlings',
  leafy: 'in leaf',
  flowering: 'in flower',
  bearing: 'ready to pick',
  finished: 'past its end',
  resting: 'resting in its crown',
};

export interface PlantWordsFacts {
  readonly name: string;
  readonly stage: PlantStage;
  readonly share: number;
  readonly height: number;
  readonly rootDepth: number;
}

const onShare = (share: number): string =>
  share >= 0.995 ? '' : `, on ${percent(share)} of the bed`;

/** ", about 120 cm tall"; of one that is just up and has no height yet, just that. */
const tallWords = ({ stage, height }: PlantWordsFacts, units: ChartUnits): string =>
  stage === 'seedling' && height * lengthUnit(units).perInside < 1
    ? ' just up'
    : height > 0
      ? `, about ${lengthWords(height, units)} tall`
      : '';

/** "In flower, about 120 cm tall, on 50 % of the bed." */
export const plantSentence = (plant: PlantWordsFacts, units: ChartUnits): string => {
  const tall = tallWords(plant, units);
  const words = stageWords[plant.stage];
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${tall}${onShare(plant.share)}.`;
};

export const rootSentence = (plant: PlantWordsFacts, units: ChartUnits): string =>
  plant.stage === 'seed' || plant.rootDepth <= 0
    ? 'No roots yet.'
    : `They reach ${lengthWords(plant.rootDepth, units)} down${plant.rootDepth > 300 ? `, past the top ${units.topSoil}` : ''}.`;

export interface LayerWordsFacts {
  readonly day: number;
  readonly daysOld: number;
  readonly left: number;
  readonly depth: number;
  readonly laidDepth: number;
}

/** "Laid 8 June, 7 days old; 62 % of its dry weight left; now 7 mm, 12 as laid." */
export const layerSentence = (layer: LayerWordsFacts, units: ChartUnits): string => {
  const laid =
    layer.daysOld === 0
      ? 'Laid that day'
      : `Laid ${dayWord(layer.day, units)}, ${ageWords(layer.daysOld)}`;
  return `${laid}; ${leftWords(layer.left, layer.depth, layer.laidDepth, units)}.`;
};

/** "38 % of the ground shows." */
export const groundSentence = (hidden: number): string =>
  hidden <= 0.005
    ? 'Nothing lies on it: all the ground is bare.'
    : `${percent(1 - hidden)} of the ground shows between.`;

export const coverNitrogenSentence = (
  { free, bound }: { readonly free: number; readonly bound: number },
  units: ChartUnits,
): string =>
  `The cover still holds ${amountWithUnit(bound, units.nitrogen)} of nitrogen, and ${amount(free, units.nitrogen)} come free that wait for rain.`;

const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

export interface SoilWordsFacts {
  readonly ready: number;
  readonly held: number;
  readonly unrotted: number;
  readonly dots: {
    readonly ready: number;
    readonly held: number;
    readonly unrotted: number;
  };
}

/** "7.4 g/m² of nitrogen ready (15 dots); 2 held by soil life (4 rings)." */
export function soilSentence(soil: SoilWordsFacts, units: ChartUnits): string {
  const ready = `${amountWithUnit(soil.ready, units.nitrogen)} of nitrogen ready for roots (${counted(soil.dots.ready, 'dot', 'dots')})`;
  const more = [
    ...(soil.held > 0.005
      ? [
          `${amount(soil.held, units.nitrogen)} held by soil life (${counted(soil.dots.held, 'ring', 'rings')})`,
        ]
      : []),
    ...(soil.unrotted > 0.005
      ? [
          `${amount(soil.unrotted, units.nitrogen)} in old roots and what was dug in (${counted(soil.dots.unrotted, 'square', 'squares')})`,
        ]
      : []),
  ];
  return `${[ready, ...more].join('; ')}.`;
}

const fullness = (share: number): string =>
  share >= 0.85
    ? 'Wet'
    : share >= 0.5
      ? 'Moist'
      : share >= 0.25
        ? 'Drying'
        : share >= 0.05
          ? 'Dry'
          : driest;

const driest = 'As dry as plants can make it';

/** "moist soil" */
const soilCalled = (share: number): string => {
  const words = fullness(share).toLowerCase();
  return fullness(share) === driest ? `soil ${words}` : `${words} soil`;
};

/** "Moist: 62 % of the water that plants can draw on." */
export const waterSentence = (share: number): string =>
  `${fullness(share)}: ${percent(share)} of the water that plants can draw on is there.`;

export interface FindingFacts {
  readonly plants: readonly PlantWordsFacts[];
  readonly coverDepth: number;
  readonly hidden: number;
  readonly ready: number;
  readonly water: number;
}

/** A bed's section in one sentence. */
export function sectionFinding(facts: FindingFacts, units: ChartUnits): string {
  const grows =
    facts.plants.length === 0
      ? 'nothing growing'
      : listed(
          facts.plants.map(
            (plant) =>
              `${plant.name.toLowerCase()} ${stageWords[plant.stage]}${tallWords(plant, units)}`,
          ),
        );
  const cover =
    facts.coverDepth < 0.1
      ? 'no cover'
      : `${amountWithUnit(facts.coverDepth, units.depth)} of cover hiding ${percent(facts.hidden)} of the ground`;
  const soil = `${amountWithUnit(facts.ready, units.nitrogen)} of nitrogen ready in ${soilCalled(facts.water)}`;
  return `${grows.charAt(0).toUpperCase()}${grows.slice(1)}; ${cover}; ${soil}.`;
}
