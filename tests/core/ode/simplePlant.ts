import type { Coefficients } from '../../../app/core/season/coefficients';
import type { PlantingInput } from '../../../app/core/season/input';
import type { Leaves } from './simpleWater';

/** One planting over the whole bed, written anew from sections 6 to 8 of the model. */
export interface SimplePlant {
  readonly input: PlantingInput;
  degreeDays: number;
  x: number;
  needToday: number;
  /** unmet need of the last days, newest last */
  readonly owed: number[];
  nitrogen: number;
  picked: number;
  need: number;
  met: number;
  standing: boolean;
  done: boolean;
}

export const simplePlant = (input: PlantingInput): SimplePlant => ({
  input,
  degreeDays: 0,
  x: 0,
  needToday: 0,
  owed: [],
  nitrogen: 0,
  picked: 0,
  need: 0,
  met: 0,
  standing: false,
  done: false,
});

function curve(plant: SimplePlant, x: number): number {
  const { curveMiddle, curveSteepness } = plant.input.crop;
  const s = (at: number): number => 1 / (1 + Math.exp(curveSteepness * (curveMiddle - at)));
  return (s(x) - s(0)) / (s(1) - s(0));
}

/** A day on the crop's clock. */
export function grow(plant: SimplePlant, mean: number): void {
  const { crop, normalDegreeDays } = plant.input;
  const before = curve(plant, plant.x);
  plant.degreeDays += Math.max(0, mean - crop.baseCelsius);
  plant.x = Math.min(1, plant.degreeDays / normalDegreeDays);
  plant.needToday = crop.need * (curve(plant, plant.x) - before);
}

/** Share of the lower layer that roots reach; they stop growing when 60 % of the season is over. */
export const reachOf = (plant: SimplePlant, lowerDepth: number): number => {
  const roots = plant.input.crop.fullRootDepth * Math.min(1, plant.x / 0.6);
  return Math.min(1, Math.max(0, (roots - 300) / lowerDepth));
};

/** Leaves by the four stages of FAO-56 Figure 34. */
export function leavesOf(plant: SimplePlant, lowerDepth: number, c: Coefficients): Leaves {
  const { crop } = plant.input;
  const [one, two, three, four] = crop.stageShares;
  const { cropCoefficientStart: start, cropCoefficientMiddle: full } = crop;
  const { x } = plant;
  let kc = full;
  if (x <= one) kc = start;
  else if (x < one + two) kc = start + (full - start) * ((x - one) / two);
  else if (x > one + two + three)
    kc = full + (crop.cropCoefficientEnd - full) * Math.min(1, (x - one - two - three) / four);
  const shaded = Math.min(
    c.canopyLimit,
    Math.max(0, (c.canopyLimit * (kc - start)) / (full - start)),
  );
  return {
    kc,
    start,
    canopy: x > 0.6 ? Math.max(c.lateCanopyLeast, shaded) : shaded,
    reach: reachOf(plant, lowerDepth),
    p: crop.depletionShare,
  };
}

/** What nodules give of the day's need, usually and at most: nothing before they work, less as pods ripen. */
function fixing(
  plant: SimplePlant,
  day: number,
  top: number,
): { readonly usual: number; readonly most: number } {
  const { crop, nodulesSeen, startDay } = plant.input;
  const { legume } = crop;
  if (!legume || nodulesSeen === false || day - startDay < legume.nodulationDays)
    return { usual: 0, most: 0 };
  const midPod = (1 + Math.min(0.95, crop.firstHarvestDays / crop.usualDays)) / 2;
  const stage = plant.x <= midPod ? 1 : (1 - plant.x) / (1 - midPod);
  const pods = ((crop.flowerDays ?? crop.firstHarvestDays) + crop.firstHarvestDays) / 2;
  const limit = plant.x < pods / crop.usualDays ? legume.leafyLimit : legume.poddingLimit;
  const held = Math.max(0, 1 - top / limit);
  return {
    usual: legume.usualShareFixed * stage * held * plant.needToday,
    most: legume.highShareFixed * stage * plant.needToday,
  };
}

/** Takes from the two layers, and from the air what nodules give; returns what each layer gives. */
export function take(
  plant: SimplePlant,
  day: number,
  top: number,
  lower: number,
  lowerDepth: number,
  c: Coefficients,
): { readonly top: number; readonly lower: number } {
  const most = {
    top: c.uptakeShare * Math.max(0, top - c.uptakeFloor),
    lower: c.uptakeShare * reachOf(plant, lowerDepth) * Math.max(0, lower - c.uptakeFloor),
  };
  const all = most.top + most.lower;
  const owed = plant.owed.reduce((sum, one) => sum + one, 0);
  const air = fixing(plant, day, top);
  const asked = plant.needToday - air.usual;
  const taken = Math.min(all, asked + owed);
  const now = Math.min(taken, asked);
  // What the soil cannot give, nodules may, up to the most they are known to.
  const fixed = air.usual + Math.min(asked - now, Math.max(0, air.most - air.usual));
  let back = taken - now;
  for (let at = 0; at < plant.owed.length; at++) {
    const paid = Math.min(back, plant.owed[at]!);
    plant.owed[at]! -= paid;
    back -= paid;
  }
  plant.owed.push(plant.needToday - now - fixed);
  if (plant.owed.length > c.arrearsDays) plant.owed.shift();
  const ramp = Math.min(1, Math.max(0, (top - c.luxuryStart) / (c.luxuryFull - c.luxuryStart)));
  const luxury = plant.input.crop.legume
    ? 0
    : Math.min(all - taken, plant.needToday * c.luxuryShare * ramp);
  plant.nitrogen += taken + luxury + fixed;
  plant.need += plant.needToday;
  plant.met += taken + fixed;
  const share = all > 0 ? most.top / all : 0;
  return { top: (taken + luxury) * share, lower: (taken + luxury) * (1 - share) };
}

/** The day's pick, spread evenly from the first harvest to clearing by need met so far. */
export function pickToday(plant: SimplePlant, day: number, c: Coefficients): number {
  const { crop, firstHarvestDay, clearingDay } = plant.input;
  if (clearingDay === null || day < firstHarvestDay || day > clearingDay) return 0;
  const even = crop.harvestNitrogen / (clearingDay - firstHarvestDay + 1);
  const most = c.harvestLimit * (plant.nitrogen + plant.picked) - plant.picked;
  const picked = Math.min(Math.max(0, most), (even * plant.met) / plant.need);
  plant.nitrogen -= picked;
  plant.picked += picked;
  return picked;
}
