import { join } from 'node:path';
import { readAmount } from '../../../app/amounts/readAmount';
import {
  gramsPerM2PerCentimetrePerPoundPerAcreInch,
  kilogramsPerPound,
} from '../../../app/core/conversions';
import {
  mixCarbonToNitrogen,
  mixMoisture,
  type Mixable,
  type MixtureShare,
  partnerForMoisture,
  partnerForRatio,
  partnersForBoth,
} from '../../../app/core/cover/mix';
import { likelyLot } from '../../../app/core/lawn/clippings';
import type { LotInput } from '../../../app/core/lawn/lotInput';
import type { Result } from '../../../app/core/result';
import { exact, ordinary } from '../../core/lawn/lots';
import { readCases } from '../readCases';
import type { Comparison, ComparisonGroup, Standing } from './comparison';

const casesOf = (name: string, file?: string): readonly string[][] =>
  readCases(join(import.meta.dirname, '..', name), file).rows;

const valueOf = <Failure>(result: Result<number, Failure>): number => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

const compare =
  (source: string, place: string, standing: Standing = 'printed') =>
  (
    quantity: string,
    printed: string,
    ours: number,
    within: 'digits' | 'unit' = 'digits',
  ): Comparison => ({
    source,
    place,
    quantity,
    printed,
    ours,
    within,
    standing,
  });

// Cornell
const cornell = 'Richard and Trautmann (Cornell)';
const grass: Mixable = { moistureFraction: 0.77, carbonFraction: 0.45, nitrogenFraction: 0.024 };
const leaves: Mixable = { moistureFraction: 0.35, carbonFraction: 0.5, nitrogenFraction: 0.0075 };
const tenOfGrass: MixtureShare = { ...grass, freshKilograms: 10 };
const cornellPrinted = new Map(
  casesOf('RichardTrautmann-mixing').map(([name, printed]) => [name, printed ?? '']),
);
const dryingMoisture = valueOf(
  mixMoisture([
    { ...grass, moistureFraction: 1, freshKilograms: 10 - (6.3 - 4) },
    { ...grass, moistureFraction: 0, freshKilograms: 6.3 - 4 },
  ]),
);
const cornellRead = compare(cornell, 'composting pages: water of a sample')(
  'water of a dried sample (%)',
  cornellPrinted.get('moisture-of-one_percent') ?? '',
  100 * dryingMoisture,
);
const cornellRecalled = compare(cornell, 'composting pages: C:N of two materials', 'recalled')(
  'leaves for 10 kg of grass to reach 30 (kg)',
  cornellPrinted.get('leaves-for-ratio_kg') ?? '',
  valueOf(partnerForRatio(tenOfGrass, leaves, 30)),
);
const apart = compare('worked out apart', 'RichardTrautmann-mixing', 'computed apart');
const wetEnough = valueOf(partnerForMoisture(tenOfGrass, leaves, 0.6));
const bothGoals = casesOf('RichardTrautmann-mixing', 'both-goals.csv').flatMap(
  ([kilograms, ratio, water, leavesKilograms = '', waterKilograms = '']) => {
    const first = {
      moistureFraction: 0.82,
      carbonFraction: 0.442,
      nitrogenFraction: 0.034,
      freshKilograms: Number(kilograms),
    };
    const second = { moistureFraction: 0.38, carbonFraction: 0.456, nitrogenFraction: 0.0094 };
    const partners = partnersForBoth(first, second, Number(ratio), Number(water));
    if (!partners.ok) throw new Error(partners.error.kind);
    return [
      apart(
        `leaves for C:N ${ratio} at 60 % water (kg)`,
        leavesKilograms,
        partners.value.secondKilograms,
      ),
      apart(
        `water for C:N ${ratio} at 60 % water (kg)`,
        waterKilograms,
        partners.value.waterKilograms,
      ),
    ];
  },
);

// handout
const hayRows = casesOf('HayScrapsCoffee-mixing');
const hayShares = hayRows.map(([, pounds, carbon, nitrogen]): MixtureShare => ({
  freshKilograms: Number(pounds) * kilogramsPerPound,
  moistureFraction: 0,
  carbonFraction: Number(carbon) / 100,
  nitrogenFraction: Number(nitrogen) / 100,
}));
const hay = compare(
  'handout on compost mixtures (docslib 12269573)',
  'worked example of three materials',
);

// fact sheet: nitrogen that makes a ratio at 40 % carbon
function nitrogenAt(ratio: number): number {
  let poor = 0;
  let rich = 0.4;
  for (let round = 0; round < 60; round++) {
    const middle = (poor + rich) / 2;
    const share = {
      freshKilograms: 3,
      moistureFraction: 0.8,
      carbonFraction: 0.4,
      nitrogenFraction: middle,
    };
    if (valueOf(mixCarbonToNitrogen([share])) > ratio) poor = middle;
    else rich = middle;
  }
  return 100 * poor;
}
const akron = compare('USDA-ARS and NRCS Akron', 'fact sheet on feeding the soil');

// averaged ratios: the printed answers ours must not repeat, and the right ones
const dryPart = (ratio: number, freshKilograms: number): MixtureShare => ({
  freshKilograms,
  moistureFraction: 0,
  carbonFraction: 0.4,
  nitrogenFraction: 0.4 / ratio,
});
const numbers = (text = ''): number[] => text.split(' ').map(Number);
const flawed = casesOf('AveragedRatios-flawed').map(
  ([name = '', ratios, parts, printed = '', , right = '']) => {
    const weights = numbers(parts);
    const ours = valueOf(
      mixCarbonToNitrogen(numbers(ratios).map((ratio, at) => dryPart(ratio, weights[at] ?? 0))),
    );
    return { name, printed, right, ours };
  },
);
const flawedPlace: Readonly<Record<string, readonly [string, string]>> = {
  'litter-straw': ['North Carolina extension, in a copy', 'recipe of litter and straw'],
};
const flawedPrinted = flawed.map(({ name, printed, ours }) => {
  const [source, place] = flawedPlace[name] ?? [
    'worksheet at gardensimply.com',
    'averaged mixture',
  ];
  return compare(source, place)(`C:N of ${name.replaceAll('-', ', ')}`, printed, ours);
});

const lotIn = (typed: string, change: Partial<LotInput>): ReturnType<typeof likelyLot> => {
  const reading = readAmount(typed, 'stock', { units: 'us', containers: [] });
  if (!reading.ok) throw new Error(reading.error.kind);
  return likelyLot({ ...ordinary, quantity: reading.value.amount.quantity, ...change });
};

// load tables
const ohio = compare('Sundermeier 2016', 'Ohio State University Extension ANR-34, Table 1');
const ohioRows = casesOf('Sundermeier2016-nitrogenLoad').flatMap(
  ([percent = '', tons = '', perTon = '', perAcre = '']) => {
    const pounds = (typed: string): number =>
      lotIn(typed, {
        moistureNowPercent: exact(0),
        stuff: { ...ordinary.stuff, nitrogenPercent: exact(Number(percent)) },
      }).nitrogenGrams /
      1000 /
      kilogramsPerPound;
    // the analysis of the first row was rounded before it was printed
    const within = percent === '0.96' ? 'unit' : 'digits';
    return [
      ohio(`pounds of nitrogen a ton at ${percent} %`, perTon, pounds('1 short ton'), within),
      ohio(
        `pounds of nitrogen an acre, ${tons} tons at ${percent} %`,
        perAcre,
        pounds(`${tons} short tons`),
      ),
    ];
  },
);

const maine = compare('University of Maine Extension', 'pasture course, lesson 1, appendix D');
const maineRows = casesOf('MaineGrazing-swardHeight').map(
  ([inches, perInch, perAcre = '', perCentimetre = '']) => {
    const ours = Number(perInch) * gramsPerM2PerCentimetrePerPoundPerAcreInch;
    const reading = readAmount(`1 acre, ${inches} in off`, 'mowing', {
      units: 'us',
      containers: [],
    });
    if (!reading.ok) throw new Error(reading.error.kind);
    const { quantity } = reading.value.amount;
    const lot = likelyLot({ ...ordinary, quantity, dryMassPerCentimetre: exact(ours) });
    return {
      printed: maine(
        `pounds an acre from ${inches} in at ${perInch} lb`,
        perAcre,
        lot.dryKilograms / kilogramsPerPound,
      ),
      converted: compare('worked out apart', 'MaineGrazing-swardHeight', 'computed apart')(
        `${perInch} lb an acre and inch in g/m2 and cm`,
        perCentimetre,
        ours,
      ),
    };
  },
);

const bucket = casesOf('Cooperband2002-bucketDensity').map(
  ([empty, full, litres, printed = '']) => {
    const weighed = {
      litres: Number(litres),
      kilograms: Number(full) - Number(empty),
      outsideWater: exact(0),
    };
    return compare('Zabaleta, after Cooperband 2002', 'supplementary material on composting')(
      'weight of a litre from a weighed bucket (kg)',
      printed,
      likelyLot({ ...ordinary, weighed, quantity: { kind: 'volume', litres: 1 } }).freshKilograms,
    );
  },
);

const hayLots = hayRows.map(([, pounds, carbon, nitrogen]) =>
  lotIn(`${pounds} lb`, {
    moistureNowPercent: exact(0),
    stuff: {
      ...ordinary.stuff,
      carbonFraction: Number(carbon) / 100,
      nitrogenPercent: exact(Number(nitrogen)),
    },
  }),
);
const poundsOf = (of: (lot: ReturnType<typeof likelyLot>) => number): number =>
  hayLots.reduce((sum, lot) => sum + of(lot), 0) / 1000 / kilogramsPerPound;

const mixFile = 'app/core/cover/mix';
const lotEquations = [
  { name: 'likelyLot', file: 'app/core/lawn/clippings' },
  { name: 'readAmount', file: 'app/amounts/readAmount' },
];
export const mixtureGroups: readonly ComparisonGroup[] = [
  {
    title: 'Mixtures',
    equations: [
      { name: 'mixCarbonToNitrogen', file: mixFile },
      { name: 'mixMoisture', file: mixFile },
    ],
    comparisons: [
      cornellRead,
      hay('C:N of hay, scraps and coffee', '34.7', valueOf(mixCarbonToNitrogen(hayShares))),
      ...casesOf('NrcsAkron-nitrogenFromRatio').map(([ratio = '', printed = '']) =>
        akron(`nitrogen at C:N ${ratio} and 40 % carbon (%)`, printed, nitrogenAt(Number(ratio))),
      ),
      ...flawedPrinted,
    ],
  },
  {
    title: 'Amounts: what weights, heights and containers hold',
    equations: lotEquations,
    comparisons: [
      hay(
        'carbon of hay, scraps and coffee (lb)',
        '21.5',
        poundsOf((lot) => lot.carbonGrams),
      ),
      hay(
        'nitrogen of hay, scraps and coffee (lb)',
        '0.62',
        poundsOf((lot) => lot.nitrogenGrams),
      ),
      ...ohioRows,
      ...maineRows.map(({ printed }) => printed),
      ...bucket,
    ],
  },
  {
    title: 'Mixtures, recalled or worked out apart',
    equations: [],
    comparisons: [
      cornellRecalled,
      apart(
        'water of 10 kg of grass with 3.5 kg of leaves (%)',
        cornellPrinted.get('water-at-3.5kg_percent') ?? '',
        100 * valueOf(mixMoisture([tenOfGrass, { ...leaves, freshKilograms: 3.5 }])),
      ),
      apart(
        'C:N where leaves bring the water to 60 %',
        cornellPrinted.get('ratio-at-60-percent-water') ?? '',
        valueOf(mixCarbonToNitrogen([tenOfGrass, { ...leaves, freshKilograms: wetEnough }])),
      ),
      ...bothGoals,
      ...flawed.map(({ name, right, ours }) =>
        compare('worked out apart', 'AveragedRatios-flawed', 'computed apart')(
          `C:N of ${name.replaceAll('-', ', ')}, parts of equal carbon`,
          right,
          ours,
        ),
      ),
      ...maineRows.map(({ converted }) => converted),
    ],
  },
];
