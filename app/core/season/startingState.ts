import { freshState, type BedState } from './bedState';
import type { BedSeason } from './input';
import { joinGround } from './joinGround';
import { runPlan, type RunPlan } from './runPlan';

/**
 * The bed on the morning of its first day: made of the ground it came from where there is any, else
 * at field capacity with usual or tested nitrate (model 6).
 *
 * @param keepsLayers false leaves out what is only for drawing layers
 */
export function startingState(
  input: BedSeason,
  lowerDepth: number,
  plan: RunPlan = runPlan(input, lowerDepth),
  keepsLayers = true,
): BedState {
  const state = freshState(input, lowerDepth, plan, keepsLayers);
  if (input.ground) joinGround(state, input.ground, startingState);
  return state;
}
