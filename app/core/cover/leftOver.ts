import type { Coefficients } from '../season/coefficients';
import { parametersOf } from './decay';
import {
  classFor,
  microbeNitrogen,
  newClass,
  residueNitrogen,
  type ResidueClass,
} from './residueClass';

/**
 * Residue [g C/m2] of earlier seasons that is eaten whole on the day it is met (ours): what decays by
 * a share a day never ends, and what is left of a layer after a winter or two would be reckoned for
 * years. At the narrowest C:N of the model it holds 6e-2 g of nitrogen, of leaves 1e-2; it goes by
 * the flow that all residue goes by. Residue of a season's own classes is held to `crumb`.
 */
export const remnant = 0.5;

/** The class that a share of one on top goes on in when it is dug in. */
export function classBelow(
  classes: ResidueClass[],
  item: ResidueClass,
  c: Coefficients,
): ResidueClass {
  const { materialClass, parameters } = item;
  const kind = materialClass === 'inert' ? 'wood' : materialClass;
  if (!item.isLeftOver) return classFor(classes, 'dug', kind, parameters.carbonToNitrogen, c);
  const below = leftOverClass('dug', kind, parameters, c);
  classes.push(below);
  return below;
}

/** A class of what earlier seasons left, with nothing in it. */
export function leftOverClass(
  placement: ResidueClass['placement'],
  materialClass: ResidueClass['materialClass'],
  parameters: ResidueClass['parameters'],
  c: Coefficients,
): ResidueClass {
  const item = newClass(placement, materialClass, parameters, c);
  item.isLeftOver = true;
  item.crumb = remnant;
  return item;
}

/**
 * One class for several of a placement and a kind, w = B + Y R:
 *
 *     CN = sum R / sum (R/CN)     k = sum k R / sum R
 *     CNb = sum B / sum (B/CNb)   h = min(sum h w / sum w, 9.0/CNb)
 */
function joined(parts: readonly ResidueClass[], c: Coefficients): ResidueClass {
  const [{ placement, materialClass, parameters }] = parts as [ResidueClass];
  let residue = 0;
  let inResidue = 0;
  let decay = 0;
  let microbes = 0;
  let inMicrobes = 0;
  let turns = 0;
  let humified = 0;
  for (const item of parts) {
    residue += item.residue;
    inResidue += residueNitrogen(item);
    decay += item.parameters.decay * item.residue;
    microbes += item.microbes;
    inMicrobes += microbeNitrogen(item);
    const weight = item.microbes + c.assimilation * item.residue;
    turns += weight;
    humified += item.parameters.humusShare * weight;
  }
  // where there is nothing to take a mean of, the first's own will do: it is the ratio of nothing
  const ratio = microbes > 0 ? microbes / inMicrobes : parameters.microbeCarbonToNitrogen;
  const share = turns > 0 ? humified / turns : parameters.humusShare;
  const whole = leftOverClass(
    placement,
    materialClass,
    parametersOf(
      residue > 0 ? residue / inResidue : parameters.carbonToNitrogen,
      residue > 0 ? decay / residue : parameters.decay,
      parameters.turnover,
      ratio,
      Math.min(share, c.humusTurnoverLimit / ratio),
      parameters.humusCarbonToNitrogen,
    ),
    c,
  );
  whole.residue = residue;
  whole.microbes = microbes;
  for (const { humus, lyingDry } of parts) {
    whole.humus += humus;
    whole.lyingDry += lyingDry;
  }
  return whole;
}

/**
 * At a season's first morning: joins what earlier seasons left, by placement and kind. No nitrogen
 * and no carbon moves. Microbes of a kind turn over at one rate, so those that have eaten all go on
 * exactly as they would have apart. Residue decays at the mean rate of its parts, which is theirs on
 * that morning and a little too fast later (what is slow outlasts what is quick); wood on top stays
 * by itself, for it stands still.
 *
 * Within a season nothing is joined: browns hold nitrogen while greens beside them free it. What is
 * alone of its kind stays the class it is, with the coarser end, also for fresh material of just its
 * ratio.
 *
 * @param classes of a bed in the morning; changed in place
 * @returns the class that each of the joined is in now
 * @validity over ten years of a garden's log: see the test of it for how far it goes
 * @source derived: sums, and the rate k of model 3, which is a straight line over 1/CN. Without it a
 *   bed carries a class for every ratio it was ever given, and its days cost twice as much
 */
export function joinLeftOvers(
  classes: ResidueClass[],
  c: Coefficients,
): ReadonlyMap<ResidueClass, ResidueClass> {
  const groups = new Map<string, ResidueClass[]>();
  for (const item of classes) {
    if (item.isInert) continue;
    item.crumb = remnant;
    const key = `${item.placement} ${item.materialClass}`;
    const known = groups.get(key);
    if (known) known.push(item);
    else groups.set(key, [item]);
  }
  const now = new Map<ResidueClass, ResidueClass>();
  for (const parts of groups.values()) {
    if (parts.length === 1) continue;
    const whole = joined(parts, c);
    for (const item of parts) now.set(item, whole);
    classes.push(whole);
  }
  let kept = 0;
  for (const item of classes) if (!now.has(item)) classes[kept++] = item;
  classes.length = kept;
  return now;
}
