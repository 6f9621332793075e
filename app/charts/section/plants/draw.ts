import type { PlantStage } from '../../../core/season/plantStage';
import type { Habit } from '../data';
import { growers } from './growers';
import { Pen, type PartName } from './pen';

/** Across over up of a plant that is full grown. */
export const spreads: Readonly<Record<Habit, number>> = {
  climber: 0.34,
  bush: 1.05,
  herb: 1,
  staked: 0.5,
  rosette: 1.35,
  head: 1.5,
  stalk: 0.85,
  root: 0.8,
  bulb: 0.45,
  tuber: 1.15,
  grass: 0.62,
  cereal: 0.3,
  clover: 0.8,
  flower: 0.62,
  vine: 2.3,
  fern: 0.6,
  berry: 1.7,
};

/** What is drawn of one plant: sizes in px. */
export interface PlantSize {
  readonly height: number;
  /** across, room to the next plant included */
  readonly width: number;
  /** height over the height full grown 0-1 */
  readonly grown: number;
  readonly isFlowering: boolean;
  readonly isBearing: boolean;
  /** from the foot down to the soil */
  readonly under: number;
}

export type PlantPaths = Readonly<Partial<Record<PartName, string>>>;

const bladed = new Set<Habit>(['bulb', 'grass', 'cereal', 'fern']);

/** Two seed leaves and the first true ones; a single blade of what comes up as grass. */
function seedling(pen: Pen, habit: Habit, { height: h }: PlantSize): void {
  if (bladed.has(habit)) {
    pen.leaf(0, 0, h * 0.12, -h, 0.07);
    pen.leaf(0, -h * 0.1, -h * 0.3, -h * 0.6, 0.09);
    return;
  }
  const leaf = Math.max(4, h * 0.62);
  pen.bend('stem', 0, 0, 0, -h * 0.62, 0.08);
  pen.leaf(0, -h * 0.55, -leaf, -h * 0.32, 0.34);
  pen.leaf(0, -h * 0.55, leaf, -h * 0.32, 0.34);
  pen.leaf(0, -h * 0.6, leaf * 0.18, -h * 0.4, 0.3);
}

/** Buds of a crown that rests in the ground. */
function crown(pen: Pen): void {
  pen.disc('store', 0, 2.5, 5, 3);
  for (const x of [-3, 0, 3]) pen.leaf(x, 0, x * 0.2, -3.5, 0.4);
}

/** One plant as its stage and habit have it, foot at `x`, `y`. */
export function drawPlant(
  habit: Habit,
  stage: PlantStage,
  x: number,
  y: number,
  size: PlantSize,
): PlantPaths {
  const pen = new Pen(x, y, size.under);
  if (stage === 'resting') crown(pen);
  // one that breaks through the soil tonight is a dot, not nothing
  else if (stage === 'seedling')
    seedling(pen, habit, { ...size, height: Math.max(5, size.height) });
  else if (stage !== 'seed') growers[habit](pen, size);
  return pen.drawn();
}
