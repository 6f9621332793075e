import { join } from 'node:path';
import { cropCoefficient } from '../../../app/core/crop/stages';
import type { SoilProperties } from '../../../app/core/season/input';
import {
  extraterrestrialRadiation,
  hargreavesReferenceEvapotranspiration,
  millimetresPerMegajoule,
  waterStress,
} from '../../../app/core/soil/evapotranspiration';
import {
  type CanopyDay,
  type WaterStore,
  waterDay,
  waterSizes,
} from '../../../app/core/soil/water';
import { typicalCoefficients } from '../../../app/tables/coefficients';
import { fruitingCrop } from '../../core/season/handMadeBed';
import { asked } from '../../core/soil/asked';
import { stageDaysOf } from '../Allen1998-stages/ours';
import { readCases } from '../readCases';
import type { Comparison, ComparisonGroup } from './comparison';

export const paper = 'Allen and others 1998 (FAO-56)';
/** "page 47", "pages 70 to 71" */
export const pages = (page: string): string =>
  `${page.includes(' to ') ? 'pages' : 'page'} ${page}`;
const folder = join(import.meta.dirname, '../Allen1998-examples');

const bareSoil: CanopyDay = {
  transpiration: 0,
  evaporation: 0,
  isPlanted: false,
  canopy: 0,
  reach: 0,
  depletionShare: 0.5,
};

const soilOf = (fieldCapacity: number, wiltingPoint: number): SoilProperties => ({
  fieldCapacity,
  wiltingPoint,
  bulkDensityKgPerL: 1.3,
  organicMatterPercent: 2,
  startingMineralTop: null,
});

const radiationAboveAir: Readonly<Record<string, readonly [latitude: number, day: number]>> = {
  '8': [-20, 246],
  '10': [-22.9, 135],
  '17': [13 + 44 / 60, 105],
  '18': [50 + 48 / 60, 187],
  '20': [45 + 43 / 60, 196],
};

/** Example 30: dry beans in stages of 25, 25, 30 and 20 days. */
const beanCoefficient = (day: number): number =>
  cropCoefficient(
    {
      ...fruitingCrop,
      cropCoefficientStart: 0.15,
      cropCoefficientMiddle: 1.14,
      cropCoefficientEnd: 0.25,
      stageShares: [0.25, 0.25, 0.3, 0.2],
    },
    day / 100,
  );

/** Example 31: bare loam after rain, 20 mm that can evaporate, 9 of them freely, 4.5 mm a day asked. */
function dryingLoam(): ReadonlyMap<string, number> {
  const answers = new Map<string, number>();
  const soil = soilOf(0.25, 0.1);
  const c = { ...typicalCoefficients(), evaporationDepth: 0.1, readilyEvaporableShare: 9 / 20 };
  const sizes = waterSizes(soil, 300);
  const water: WaterStore = { top: sizes.topFull, lower: sizes.lowerFull, cover: 0 };
  const evaporation = 1.2 - 0.15;
  for (let day = 1; day <= 10; day++) {
    const before = water.top;
    waterDay(
      water,
      sizes,
      soil,
      { ...bareSoil, evaporation },
      asked({ evapotranspiration: 4.5 }),
      false,
      c,
    );
    answers.set(`day ${day} Kr`, (before - water.top) / (evaporation * 4.5));
    answers.set(`day ${day} De end mm`, sizes.topFull - water.top);
  }
  return answers;
}

/** Example 36: all the water roots reach, and the most that can go before the crop slows. */
function waterInReach(): ReadonlyMap<string, number> {
  const answers = new Map<string, number>();
  const soils = {
    'loamy sand': [0.15, 0.06],
    silt: [0.32, 0.15],
    'silty clay': [0.35, 0.23],
  } as const;
  const roots = { onion: [0.4, 0.3], tomato: [0.8, 0.4], maize: [1.2, 0.55] } as const;
  for (const [soil, [full, wilt]] of Object.entries(soils)) {
    for (const [crop, [metres, share]] of Object.entries(roots)) {
      const sizes = waterSizes(soilOf(full, wilt), 1000 * metres - 300);
      const all = sizes.topFull - sizes.topWilt + sizes.lowerFull - sizes.lowerWilt;
      let free = 0;
      let slowed = all;
      for (let round = 0; round < 60; round++) {
        const middle = (free + slowed) / 2;
        if (waterStress(middle, all, share) < 1) slowed = middle;
        else free = middle;
      }
      answers.set(`${crop} on ${soil} TAW mm`, all);
      answers.set(`${crop} on ${soil} RAW mm`, free);
    }
  }
  return answers;
}

/**
 * Example 37: tomato over ten dry days. The example holds p at 0.40; ours moves by 0.04 for each
 * mm a day over 5, so it starts from 0.44.
 */
function slowingTomato(): ReadonlyMap<string, number> {
  const answers = new Map<string, number>();
  const soil = soilOf(0.32, 0.12);
  const sizes = waterSizes(soil, 500);
  const water: WaterStore = {
    top: sizes.topFull - (55 * 3) / 8,
    lower: sizes.lowerFull - (55 * 5) / 8,
    cover: 0,
  };
  const plants: CanopyDay = { ...bareSoil, transpiration: 1.2, reach: 1, depletionShare: 0.44 };
  const gone = (): number => sizes.topFull - water.top + sizes.lowerFull - water.lower;
  for (let day = 1; day <= 10; day++) {
    const before = gone();
    waterDay(
      water,
      sizes,
      soil,
      plants,
      asked({ evapotranspiration: 5 }),
      false,
      typicalCoefficients(),
    );
    answers.set(`day ${day} Ks`, (gone() - before) / 6);
    answers.set(`day ${day} ETc adj`, gone() - before);
    answers.set(`day ${day} Dr end`, gone());
  }
  return answers;
}

/** Text of chapter 10: what half a cover takes off evaporation. */
function savedByHalfACover(): number {
  const soil = soilOf(0.27, 0.12);
  const sizes = waterSizes(soil, 300);
  const evaporated = (covered: number): number => {
    const water: WaterStore = { top: sizes.topFull, lower: sizes.lowerFull, cover: 0 };
    const bare = { ...bareSoil, evaporation: 0.35 };
    waterDay(
      water,
      sizes,
      soil,
      bare,
      asked({ evapotranspiration: 5, coverFraction: covered }),
      false,
      typicalCoefficients(),
    );
    return sizes.topFull - water.top;
  };
  return 1 - evaporated(0.5) / evaporated(0);
}

function oursOf(example: string, quantity: string): number {
  const [latitude, day] = radiationAboveAir[example] ?? [NaN, NaN];
  if (quantity.startsWith('Ra')) {
    const radiation = extraterrestrialRadiation(latitude, day);
    return quantity.endsWith('mm/d') ? radiation * millimetresPerMegajoule : radiation;
  }
  if (quantity === 'Hargreaves ETo mm/d')
    return hargreavesReferenceEvapotranspiration(14.8, 26.6, latitude, day);
  if (example === '30') return beanCoefficient(Number(quantity.replace('day ', '')));
  if (example === '45b') return savedByHalfACover();
  const answers =
    example === '31' ? dryingLoam() : example === '36' ? waterInReach() : slowingTomato();
  const found = answers.get(quantity);
  if (found === undefined) throw new Error(`Example ${example} has no ${quantity}`);
  return found;
}

const examples: readonly Comparison[] = readCases(folder).rows.map(
  ([example = '', page = '', quantity = '', printed = '']) => ({
    source: paper,
    place: example === '45b' ? `chapter 10, ${pages(page)}` : `Example ${example}, ${pages(page)}`,
    quantity,
    printed,
    ours: oursOf(example, quantity),
    within: 'digits',
    standing: 'printed',
  }),
);

const stageNames = ['initial', 'development', 'middle', 'late'] as const;
const stages: readonly Comparison[] = readCases(
  join(import.meta.dirname, '../Allen1998-stages'),
).rows.flatMap(([crop = '', region = '', ...days]) =>
  stageDaysOf(crop).map((ours, at): Comparison => ({
    source: paper,
    place: 'Table 11, pages 104 to 108',
    quantity: `${crop.replaceAll('_', ' ')}, ${region}, ${stageNames[at] ?? ''} (days)`,
    printed: days[at] ?? '',
    ours,
    within: 'digits',
    standing: 'printed',
  })),
);

const evapotranspiration = 'app/core/soil/evapotranspiration';
export const waterGroups: readonly ComparisonGroup[] = [
  {
    title: 'Water of a day: worked examples',
    equations: [
      { name: 'hargreavesReferenceEvapotranspiration', file: evapotranspiration },
      { name: 'waterStress', file: evapotranspiration },
      { name: 'waterDay', file: 'app/core/soil/water' },
      { name: 'waterSizes', file: 'app/core/soil/water' },
      { name: 'cropCoefficient', file: 'app/core/crop/stages' },
    ],
    comparisons: examples,
  },
  {
    title: 'Lengths of stages',
    equations: [{ name: 'cropCoefficient', file: 'app/core/crop/stages' }],
    passesThrough: true,
    comparisons: stages,
  },
];
