import { drawAmount, drawShare, likelyRange } from '../drawRow';
import { seeded, type Random } from '../random';
import type { Cited } from '../reference';
import { countedLitres, type LotInput, type StuffRows, type WeighedContainer } from './lotInput';
import { whyOf, type Why } from './lotWhy';

/** Where a figure lies 8 times in 10, and its likely value, which every other sum uses. */
export interface LikelyRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}

export interface Lot {
  readonly freshKilograms: LikelyRange;
  readonly dryKilograms: LikelyRange;
  readonly nitrogenGrams: LikelyRange;
  readonly carbonGrams: LikelyRange;
  /** as handled and laid, before it settles; 1 L on 1 m2 is 1 mm */
  readonly litres: LikelyRange;
  readonly why: Why;
}

/** One value for each uncertain row: the likely ones, or a draw. */
interface Values {
  readonly moisture: number;
  readonly moistureNow: number;
  readonly outsideWater: number;
  readonly weighedOutsideWater: number;
  readonly density: number;
  readonly nitrogen: number;
  readonly certainty: number;
  readonly fullness: number;
  readonly perCentimetre: number;
  readonly depthFactor: number;
}

interface Sums {
  readonly fresh: number;
  readonly dry: number;
  readonly nitrogen: number;
  readonly carbon: number;
  readonly litres: number;
}

/**
 * Dry share of a fresh weight: moisture M inside, w kg water outside per kg dry matter.
 *
 *     share = 1 / (1 / (1 - M) + w)
 *
 * @source conservation of mass alone
 */
export const dryShare = (moistureFraction: number, outsideWaterPerDry: number): number =>
  1 / (1 / (1 - moistureFraction) + outsideWaterPerDry);

/** No stuff weighs more than the water it would float in, kg/L: a bound on draws. */
const densestKilogramsPerLitre = 1;

function likely(input: LotInput): Values {
  return {
    moisture: input.stuff.moisturePercent.typical / 100,
    moistureNow: input.moistureNowPercent.typical / 100,
    outsideWater: input.outsideWater.typical,
    weighedOutsideWater: input.weighed?.outsideWater.typical ?? 0,
    density: input.stuff.densityKgPerM3.typical / 1000,
    nitrogen: input.stuff.nitrogenPercent.typical / 100,
    certainty: input.certainty.typical,
    fullness: input.fullness.typical,
    perCentimetre: input.dryMassPerCentimetre.typical,
    depthFactor: input.depthFactor.typical,
  };
}

const asShare = (percent: Cited): { low: number; typical: number; high: number } => ({
  low: percent.low / 100,
  typical: percent.typical / 100,
  high: percent.high / 100,
});

/** Water outside may be nought, where a logarithm has no hold: 1 + w is drawn, and w never goes below nought. */
const drawWater = (row: Cited, random: Random): number =>
  row.low === row.high
    ? row.typical
    : Math.max(
        0,
        drawAmount({ low: 1 + row.low, typical: 1 + row.typical, high: 1 + row.high }, random) - 1,
      );

function drawn(input: LotInput, random: Random): Values {
  // the order of draws is fixed, so that one row's value does not hang on the others
  const moisture = drawShare(asShare(input.stuff.moisturePercent), random);
  const moistureNow = drawShare(asShare(input.moistureNowPercent), random);
  const isUnchanged = input.moistureNowPercent === input.stuff.moisturePercent;
  return {
    moisture,
    moistureNow: isUnchanged ? moisture : moistureNow,
    outsideWater: drawWater(input.outsideWater, random),
    weighedOutsideWater: input.weighed ? drawWater(input.weighed.outsideWater, random) : 0,
    density: Math.min(
      densestKilogramsPerLitre,
      drawAmount(input.stuff.densityKgPerM3, random) / 1000,
    ),
    nitrogen: drawShare(asShare(input.stuff.nitrogenPercent), random),
    certainty: drawAmount(input.certainty, random),
    fullness: drawAmount(input.fullness, random),
    perCentimetre: drawAmount(input.dryMassPerCentimetre, random),
    depthFactor: drawAmount(input.depthFactor, random),
  };
}

function dryPerLitre(weighed: WeighedContainer | null, at: Values): number {
  return weighed
    ? (weighed.kilograms / weighed.litres) * dryShare(at.moisture, at.weighedOutsideWater)
    : at.density * (1 - at.moisture);
}

function sums(input: LotInput, at: Values): Sums {
  const { quantity, stuff } = input;
  const share = dryShare(at.moistureNow, at.outsideWater);
  const perLitre = dryPerLitre(input.weighed, at);
  const ofDry = (
    dry: number,
    litres: number = dry / perLitre,
    fresh: number = dry / share,
  ): Sums => ({
    fresh,
    dry,
    nitrogen: dry * 1000 * at.nitrogen,
    carbon: dry * 1000 * stuff.carbonFraction,
    litres,
  });
  switch (quantity.kind) {
    case 'volume': {
      const litres = quantity.litres * at.certainty;
      return ofDry(litres * perLitre, litres);
    }
    case 'containers': {
      const litres = quantity.count * countedLitres(input) * at.certainty;
      return ofDry(litres * perLitre * (input.weighed ? at.fullness : 1), litres);
    }
    case 'mass': {
      const fresh = quantity.kilograms * at.certainty;
      return ofDry(fresh * share, undefined, fresh);
    }
    case 'mown': {
      const centimetres = (quantity.heightMillimetres / 10) * at.certainty;
      return ofDry((quantity.areaM2 * centimetres * at.perCentimetre) / 1000);
    }
    case 'depth': {
      if (input.areaM2 === null) throw new Error('A depth needs the area it lies on');
      const litres = quantity.millimetres * input.areaM2 * at.certainty;
      return ofDry(litres * perLitre * at.depthFactor, litres);
    }
  }
}

/** Draws behind a range of one lot. */
const drawCount = 200;
/** One fixed seed: the same entry always shows the same range. */
const fixedSeed = 20;

/**
 * What an amount of clippings (or another stuff) holds: fresh and dry weight, nitrogen, carbon and
 * volume, each with its range, and the figures they came from.
 *
 *     volume, containers   dry = V rho (1 - M)          rho, or the container that was weighed
 *     weight               dry = W / (1 / (1 - M) + w)
 *     area mown            dry = A h m                   m dry mass per m2 and cm
 *     depth                dry = d A rho (1 - M) f       1 mm on 1 m2 is 1 L
 *
 * `V` L, `rho` kg/L, `M` moisture 0-1, `w` kg water outside per kg dry matter, `W` kg, `A` m2,
 * `h` cm, `m` g/m2/cm, `d` mm, `f` factor on density. Wetness and wilting change the weight, never
 * dry matter or nitrogen: a litre holds the same dry matter soaked or dry, and what is weighed
 * soaked holds less of it.
 *
 * The likely value is the sum at likely values. Low and high are the 10 and 90 per cent points of
 * 200 seeded draws of all rows together, never sums of ends; where every draw lies on one side,
 * the range still reaches to the likely value.
 *
 * @returns kg, kg, g, g, L
 * @validity contents 0-1; throws when a count has no container or a depth no area
 * @source mass balance (definitions); every number about nature is a row of the input
 * @example a 45 L bag weighed at 11.3 kg, 80 % water, dry: 2.26 kg dry, at 3.4 % N 77 g N
 */
export function lotOf(input: LotInput): Lot {
  const typical = sums(input, likely(input));
  const random = seeded(fixedSeed);
  const draws = Array.from({ length: drawCount }, () => sums(input, drawn(input, random)));
  const around = (of: (sum: Sums) => number): LikelyRange => {
    const middle = of(typical);
    const { low, high } = likelyRange(draws.map(of));
    return { low: Math.min(low, middle), typical: middle, high: Math.max(high, middle) };
  };
  return {
    freshKilograms: around((sum) => sum.fresh),
    dryKilograms: around((sum) => sum.dry),
    nitrogenGrams: around((sum) => sum.nitrogen),
    carbonGrams: around((sum) => sum.carbon),
    litres: around((sum) => sum.litres),
    why: whyOf(input),
  };
}

/** As `lotOf` at likely values alone, without draws. */
export function likelyLot(input: LotInput): {
  readonly freshKilograms: number;
  readonly dryKilograms: number;
  readonly nitrogenGrams: number;
  readonly carbonGrams: number;
  readonly litres: number;
} {
  const sum = sums(input, likely(input));
  return {
    freshKilograms: sum.fresh,
    dryKilograms: sum.dry,
    nitrogenGrams: sum.nitrogen,
    carbonGrams: sum.carbon,
    litres: sum.litres,
  };
}

/** Depth of a volume spread evenly [mm]: 1 L on 1 m2 is 1 mm (a definition). */
export const depthMillimetres = (litres: number, areaM2: number): number => litres / areaM2;

/** Dry matter in a litre as handled [kg/L], at likely values. */
export function likelyDryKilogramsPerLitre(
  stuff: Pick<StuffRows, 'moisturePercent' | 'densityKgPerM3'>,
  weighed: WeighedContainer | null,
): number {
  const moisture = stuff.moisturePercent.typical / 100;
  return weighed
    ? (weighed.kilograms / weighed.litres) * dryShare(moisture, weighed.outsideWater.typical)
    : (stuff.densityKgPerM3.typical / 1000) * (1 - moisture);
}
