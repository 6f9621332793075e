import type { Coefficients } from '../season/coefficients';
import { classFor, microbeNitrogen, newClass, type ResidueClass } from './residueClass';

/** Of a class that spent ones are joined in: there is no residue that it could be the ratio of. */
const noResidue = Infinity;

/** The class that a share of one on top goes on in when it is dug in. */
export function classBelow(
  classes: ResidueClass[],
  item: ResidueClass,
  c: Coefficients,
): ResidueClass {
  const { materialClass, parameters } = item;
  const kind = materialClass === 'inert' ? 'wood' : materialClass;
  if (parameters.carbonToNitrogen !== noResidue)
    return classFor(classes, 'dug', kind, parameters.carbonToNitrogen, c);
  const below = newClass('dug', kind, parameters, c);
  classes.push(below);
  return below;
}

/** Holds no residue, and nothing of it is to be seen. */
const isSpent = (item: ResidueClass): boolean =>
  item.residue === 0 && item.lyingDry === 0 && !item.isInert;

/**
 * One class for spent ones of a side and a kind:
 *
 *     CNb = sum B / sum (B/CNb)       h = sum h B / sum B
 */
function joined(spent: readonly ResidueClass[], c: Coefficients): ResidueClass {
  const [{ onTop, materialClass, parameters }] = spent as [ResidueClass];
  let microbes = 0;
  let nitrogen = 0;
  let humified = 0;
  for (const item of spent) {
    microbes += item.microbes;
    nitrogen += microbeNitrogen(item);
    humified += item.parameters.humusShare * item.microbes;
  }
  const whole = newClass(
    onTop ? 'laid' : 'dug',
    materialClass,
    {
      ...parameters,
      carbonToNitrogen: noResidue,
      decay: 0,
      microbeCarbonToNitrogen: microbes > 0 ? microbes / nitrogen : 1,
      humusShare: microbes > 0 ? humified / microbes : 0,
    },
    c,
  );
  whole.microbes = microbes;
  for (const { humus } of spent) whole.humus += humus;
  return whole;
}

/**
 * Joins the classes without residue, those on top and those in the soil, by kind. Microbes of a kind
 * turn over at one rate by one clock, so each gram of their carbon is the same share of it for ever:
 * what is joined gives the same nitrogen and humus on every day as its parts would have given, and
 * no nitrogen moves. Those on top of which something is still to be seen stay as they are: how fast it
 * sinks hangs on the ratio of each.
 *
 * @param classes of a bed in the morning; changed in place
 * @returns the class that each of the joined is in now
 * @source derived: sums of what decays at one rate. Without it a bed carries a class for every ratio
 *   it was ever given
 */
export function joinSpent(
  classes: ResidueClass[],
  c: Coefficients,
): ReadonlyMap<ResidueClass, ResidueClass> {
  const groups = new Map<string, ResidueClass[]>();
  for (const item of classes.filter(isSpent)) {
    const key = `${item.onTop} ${item.materialClass}`;
    const known = groups.get(key);
    if (known) known.push(item);
    else groups.set(key, [item]);
  }
  const now = new Map<ResidueClass, ResidueClass>();
  for (const spent of groups.values()) {
    if (spent.length === 1) continue;
    const whole = joined(spent, c);
    for (const item of spent) now.set(item, whole);
    classes.push(whole);
  }
  let kept = 0;
  for (const item of classes) if (!now.has(item)) classes[kept++] = item;
  classes.length = kept;
  return now;
}
