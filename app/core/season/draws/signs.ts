import type { DayNumber } from '../../days';
import type { GramsPerM2, KilogramsPerM2 } from '../../units';

/** What may be asked of a bed with eyes, nose, a finger and a board. */
export const lookKinds = [
  'nodules',
  'leaves',
  'smellsSour',
  'moistFingerDeep',
  'slugsUnderBoard',
  'soilSeen',
] as const;
export type LookKind = (typeof lookKinds)[number];

/** What was seen on a bed on one day; what was not looked for is left out. */
export interface Look {
  readonly day: DayNumber;
  readonly nodules?: 'pink' | 'white' | 'none' | undefined;
  /** the lower leaves */
  readonly leaves?: 'yellow' | 'normal' | 'dark and lush' | undefined;
  readonly smellsSour?: boolean | undefined;
  readonly moistFingerDeep?: boolean | undefined;
  readonly slugsUnderBoard?: boolean | undefined;
  readonly soilSeen?: 'all' | 'some' | 'none' | undefined;
}

/** Where an answer begins to fit, and where it fits altogether. */
export interface Slope {
  readonly from: number;
  readonly to: number;
}

/** What signs weigh; values are rows of `app/tables/signs`. */
export interface SignCoefficients {
  /** by kind: how many times likelier an answer is in a bed it fits than in one it does not */
  readonly timesLikelier: Readonly<Record<LookKind, number>>;
  /** of two looks for one thing that are closer than this, only the later counts [days] */
  readonly daysApart: number;
  /** days before a look whose food shows in the leaves and the nodules */
  readonly daysShown: number;
  /** less need than this in all these days leaves nothing to be seen by [g/m2] */
  readonly leastNeed: GramsPerM2;
  /** share of need met at which lower leaves are sure to pale, and at which none do */
  readonly paleLeaves: Slope;
  /** fixed of what the plants wanted, over the crop's usual share: dormant nodules to busy ones */
  readonly busyNodules: Slope;
  /** share of the top layer's available water that a finger calls dry, and moist */
  readonly moist: Slope;
  /** share of ground hidden at which all soil shows, and none */
  readonly hidden: Slope;
  /** dry matter lying at which a wet mat stays sweet, and turns sour [kg/m2] */
  readonly sourMat: Slope;
  /** nitrate of the top layer from which plants take more than they want [g/m2] */
  readonly lushLeaves: Slope;
}

/** A bed as a draw has it on the evening of a look. */
export interface BedSeen {
  /** share of the last days' need that was met; null where nothing wanted any */
  readonly needMet: number | null;
  /** fixed over the last days over what is usual for the crop; null without a working legume */
  readonly fixing: number | null;
  readonly nitrateTop: GramsPerM2;
  /** of the top layer's available water, 0-1 */
  readonly availableWater: number;
  /** share of the ground under cover, 0-1 */
  readonly hidden: number;
  /** water in the cover over what it can hold, 0-1 */
  readonly coverFill: number;
  readonly lyingDry: KilogramsPerM2;
}

const along = ({ from, to }: Slope, value: number): number =>
  Math.min(1, Math.max(0, (value - from) / (to - from)));

/** How well an answer fits a bed, 0-1; null where the bed cannot say. */
function fitOf(look: Look, kind: LookKind, bed: BedSeen, c: SignCoefficients): number | null {
  switch (kind) {
    case 'leaves': {
      if (bed.needMet === null) return null;
      const pale = 1 - along(c.paleLeaves, bed.needMet);
      const lush = along(c.lushLeaves, bed.nitrateTop);
      if (look.leaves === 'yellow') return pale;
      return look.leaves === 'dark and lush' ? lush : (1 - pale) * (1 - lush);
    }
    case 'nodules': {
      // white or none has turned fixation off for the planting: every draw fits alike
      if (bed.fixing === null || look.nodules !== 'pink') return null;
      return along(c.busyNodules, bed.fixing);
    }
    case 'moistFingerDeep': {
      const moist = along(c.moist, bed.availableWater);
      return look.moistFingerDeep ? moist : 1 - moist;
    }
    case 'soilSeen': {
      const hidden = along(c.hidden, bed.hidden);
      if (look.soilSeen === 'none') return hidden;
      // "some" fits best half way, and neither end
      return look.soilSeen === 'all' ? 1 - hidden : 1 - Math.abs(2 * hidden - 1);
    }
    case 'smellsSour': {
      const sour = bed.coverFill * along(c.sourMat, bed.lyingDry);
      return look.smellsSour ? sour : 1 - sour;
    }
    case 'slugsUnderBoard': {
      const damp = bed.hidden * along(c.moist, bed.availableWater);
      return look.slugsUnderBoard ? damp : 1 - damp;
    }
  }
}

/**
 * How likely an answer is in a bed, relative to a bed it does not fit at all.
 *
 *     likelihood = 1 + (times likelier - 1) x fit
 *
 * so no single sign can weigh one draw more than `timesLikelier` against another: eyes and fingers
 * deceive, and a sign has other causes than nitrogen.
 *
 * @returns 1 where the bed cannot say, or the thing was not looked for
 * @source our own form; the values are rows of standing "assumed" (model 10: weaker than a test)
 */
export function signLikelihood(
  look: Look,
  kind: LookKind,
  bed: BedSeen,
  c: SignCoefficients,
): number {
  if (look[kind] === undefined) return 1;
  const fit = fitOf(look, kind, bed, c);
  return fit === null ? 1 : 1 + (c.timesLikelier[kind] - 1) * fit;
}

/** One thing that was looked for on one day. */
export interface Sign {
  readonly look: Look;
  readonly kind: LookKind;
}

/**
 * The signs that count on `today`: none from later days, and of two looks for one thing less than
 * `daysApart` apart only the later, since they tell the same story twice.
 */
export function countedSigns(
  looks: readonly Look[],
  firstDay: DayNumber,
  today: DayNumber,
  { daysApart }: Pick<SignCoefficients, 'daysApart'>,
): readonly Sign[] {
  const latestFirst = looks
    .filter(({ day }) => day >= firstDay && day <= today)
    // of two on one day the later entry counts
    .reverse()
    .sort((one, other) => other.day - one.day);
  return lookKinds.flatMap((kind) => {
    let kept = Infinity;
    return latestFirst.flatMap((look): Sign[] => {
      if (look[kind] === undefined || kept - look.day < daysApart) return [];
      kept = look.day;
      return [{ look, kind }];
    });
  });
}
