import { ammoniaPotential } from '../cover/ammonia';
import { classFor, type ResidueClass } from '../cover/residueClass';
import { fixationStage, nitrateSuppression } from '../crop/fixation';
import { carryArrears, luxuryWanted, payArrears, uptakeLimit, wantedOn } from '../crop/need';
import { canopyShare, cropCoefficient, degreeDays, reachShare, rootDepthAt } from '../crop/stages';
import { topDepth } from '../soil/water';
import type { BedState } from './bedState';
import { demandMetOf, type GrowingPlanting } from './growingPlanting';
import { move, poolIndex, wayOf } from './ways';
import { crownOf } from './crown';
import type { Coefficients } from './coefficients';
import type { DayNumber } from '../days';
import type { BedEvent, BedSeason, CropInput } from './input';

const { mineralLower, mineralTop } = poolIndex;

const flow = {
  fixed: wayOf('air', 'crop', 'fixed'),
  topTaken: wayOf('mineralTop', 'crop', 'taken up'),
  lowerTaken: wayOf('mineralLower', 'crop', 'taken up'),
  topLuxury: wayOf('mineralTop', 'crop', 'luxury'),
  lowerLuxury: wayOf('mineralLower', 'crop', 'luxury'),
  picked: wayOf('crop', 'harvested', 'picked'),
  clearedAway: wayOf('crop', 'removed', 'cleared away'),
  topsLeft: wayOf('crop', 'coverResidue', 'tops left'),
  topsDug: wayOf('crop', 'dugResidue', 'tops dug in'),
  rootsLeft: wayOf('crop', 'dugResidue', 'roots left'),
} as const;

/** Carbon of dry plant matter when tops are left lying; their drawn depth and their ammonia rest on it (assumed). */
const carbonOfTops = 0.42;
const settledDensityOfTops = 40;
/** Depth of clippings that lose what the line by nitrogen content says: the line is one of crop residues. */
const plainMillimetres = 10;

/**
 * Share of the nitrogen of green tops left lying that may leave as ammonia: the line by their
 * nitrogen content as it stands, for it was drawn for crop residues on the field.
 *
 * @source de Ruijter & Huijsmans 2019, coefficients recalled (`ammoniaPotential`)
 * @validity tops that were green when cleared; dead haulm and leaves hold too little
 */
export const ammoniaOfTops = (carbonToNitrogen: number, c: Coefficients): number =>
  ammoniaPotential((1000 * carbonOfTops) / carbonToNitrogen, 'just cut', plainMillimetres, c);

function plantedShare({ plantings, day }: BedState): number {
  let planted = 0;
  for (let at = day.plantsFrom; at < day.plantsTo; at++) {
    const plant = plantings[at]!;
    if (plant.standing) planted += plant.share;
  }
  return planted;
}

/** Shares over 1 (a note to the gardener) may not use more water or nitrate than one whole bed. */
const shareScale = (planted: number): number => (planted > 1 ? 1 / planted : 1);

/**
 * Evaporation coefficient of planted ground: what leaves leave open gives off as bare ground does,
 * or as the crop's own start says where that is more, and what they shade next to nothing. The
 * start of a crop is a mean of ground wetted now and then; what dries slows down besides
 * (`waterDay`), so that by itself it would count the drying twice.
 *
 * @source Allen et al. 1998, chapter 7: what exposed ground gives off goes by its wetness and not
 *   by which crop stands on it. Taking the greater of the two is ours (derived)
 */
export const evaporationOf = (
  crop: Pick<CropInput, 'cropCoefficientStart'>,
  shaded: number,
  c: Coefficients,
): number =>
  Math.max(crop.cropCoefficientStart, c.bareCropCoefficient) * (1 - shaded) +
  c.evaporationUnderCanopy * shaded;

/**
 * Sowing and planting, and the clock of every plant (step 2); then what the standing plants ask of
 * the water, by their shares, into `state.canopy`. The rest of the bed is bare.
 */
export function advancePlants(state: BedState, day: DayNumber, c: Coefficients): void {
  const { plantings, canopy: sum } = state;
  const { lowerDepth } = state;
  const { plantsFrom, plantsTo } = state.day;
  for (let at = plantsFrom; at < plantsTo; at++) advance(plantings[at]!, state, day);

  const planted = plantedShare(state);
  const scale = shareScale(planted);
  sum.isPlanted = false;
  sum.transpiration = 0;
  sum.evaporation = c.bareCropCoefficient * Math.max(0, 1 - planted);
  sum.canopy = 0;
  sum.reach = 0;
  sum.depletionShare = planted > 0 ? 0 : 0.5;
  for (let at = plantsFrom; at < plantsTo; at++) {
    const plant = plantings[at]!;
    if (!plant.standing) continue;
    sum.isPlanted = true;
    const { crop } = plant;
    const share = plant.share * scale;
    const coefficient = cropCoefficient(crop, plant.progress);
    const shaded = canopyShare(crop, coefficient, plant.progress, c);
    const wet = evaporationOf(crop, shaded, c);
    sum.evaporation += share * wet;
    sum.transpiration += share * Math.max(0, coefficient - wet);
    sum.canopy += share * shaded;
    sum.reach = Math.max(sum.reach, reachShare(plant.rootDepth, topDepth, lowerDepth));
    sum.depletionShare += (crop.depletionShare * plant.share) / planted;
  }
}

function advance(plant: GrowingPlanting, state: BedState, day: DayNumber): void {
  plant.needToday = 0;
  plant.uptakeToday = 0;
  plant.fixedToday = 0;
  const isGone = plant.done || plant.clearsOn < day;
  if (!plant.standing && !isGone && day >= plant.startsOn) plant.standing = true;
  const { crop, clock } = plant;
  if (!plant.standing || day < clock.startDay) return;
  plant.degreeDays += degreeDays(state.day.mean, crop.baseCelsius);
  const { normalDegreeDays } = clock;
  const progress = normalDegreeDays > 0 ? Math.min(1, plant.degreeDays / normalDegreeDays) : 1;
  if (progress === plant.progress) return;
  plant.progress = progress;
  // a crown that grows again has its roots
  plant.rootDepth = Math.max(plant.rootDepth, rootDepthAt(crop, progress));
  const before = plant.wanted;
  plant.wanted = wantedOn(plant.curve, progress);
  plant.needToday = plant.need * plant.share * (plant.wanted - before);
}

/** Need of the last days that is still unmet, g N/m2. */
function owedTo({ arrears }: GrowingPlanting): number {
  let owed = 0;
  for (let day = 0; day < arrears.length; day++) owed += arrears[day]!;
  return owed;
}

function takeUp(
  state: BedState,
  flows: Float64Array,
  plant: GrowingPlanting,
  day: DayNumber,
  c: Coefficients,
): void {
  const { crop } = plant;
  const { top, lower } = state.day;
  const share = plant.share * state.day.shareScale;
  const reach = reachShare(plant.rootDepth, topDepth, state.lowerDepth);
  const limitTop = uptakeLimit(top, share, c);
  const limitLower = uptakeLimit(lower, share * reach, c);
  const limit = limitTop + limitLower;
  const topPart = limit > 0 ? limitTop / limit : 0;

  const legume = plant.nodules;
  const stage = legume
    ? fixationStage(legume, crop, day - plant.clock.startDay, plant.progress)
    : 0;
  const usual =
    legume && stage > 0
      ? legume.usualShareFixed * stage * nitrateSuppression(legume, crop, top, plant.progress)
      : 0;
  let fixed = usual * plant.needToday;
  const asked = plant.needToday - fixed;
  const owed = owedTo(plant);
  const taken = Math.min(limit, asked + owed);
  // Today's need is served before arrears; what the soil cannot give, a legume may fix more of.
  const forToday = Math.min(taken, asked);
  if (legume && forToday < asked)
    fixed += Math.min(
      asked - forToday,
      Math.max(0, legume.highShareFixed * stage * plant.needToday - fixed),
    );
  const unmet = Math.max(0, plant.needToday - fixed - forToday);
  // days that owe nothing need not be remembered when nothing is owed
  if (owed > 0 || unmet > 0) {
    payArrears(plant.arrears, taken - forToday);
    carryArrears(plant.arrears, unmet, c);
  }
  const luxury = crop.legume ? 0 : Math.min(limit - taken, luxuryWanted(plant.needToday, top, c));

  if (fixed !== 0) move(state, flows, flow.fixed, fixed);
  move(state, flows, flow.topTaken, taken * topPart);
  move(state, flows, flow.lowerTaken, taken * (1 - topPart));
  if (luxury !== 0) {
    move(state, flows, flow.topLuxury, luxury * topPart);
    move(state, flows, flow.lowerLuxury, luxury * (1 - topPart));
  }
  plant.nitrogen += fixed + taken + luxury;
  plant.fixed += fixed;
  plant.uptake += taken + luxury;
  plant.luxury += luxury;
  plant.needSoFar += plant.needToday;
  plant.metSoFar += fixed + taken;
  plant.uptakeToday = taken + luxury;
  plant.fixedToday = fixed;
}

/**
 * Fixation, uptake and luxury of every standing plant (step 10). All meet the same nitrate, so that
 * which of them the file names first does not matter.
 */
export function feedPlants(
  state: BedState,
  flows: Float64Array,
  day: DayNumber,
  c: Coefficients,
): void {
  const { plantings } = state;
  state.day.top = state.nitrogen[mineralTop]!;
  state.day.lower = state.nitrogen[mineralLower]!;
  state.day.shareScale = shareScale(plantedShare(state));
  const { plantsFrom, plantsTo } = state.day;
  for (let at = plantsFrom; at < plantsTo; at++)
    if (plantings[at]!.standing) takeUp(state, flows, plantings[at]!, day, c);
}

function pick(
  input: BedSeason,
  state: BedState,
  flows: Float64Array,
  plant: GrowingPlanting,
  events: readonly BedEvent[],
  day: DayNumber,
  c: Coefficients,
): void {
  const { crop, share, clearsOn } = plant;
  const { firstHarvestDay, usualEndDay } = plant.clock;
  let wanted = 0;
  for (const event of events)
    if (event.kind === 'harvest' && event.plantingId === plant.input.id)
      wanted += event.kilogramsPerM2 * crop.harvestGramsPerKilogram;
  const spreads = !plant.logsHarvest || day > input.today;
  // a plant that stays for years is picked to its season's end, whenever it is cleared
  const isCleared = clearsOn < Infinity;
  const last = !isCleared
    ? usualEndDay
    : plant.staysForYears
      ? Math.min(usualEndDay, clearsOn)
      : clearsOn;
  if (spreads && day >= firstHarvestDay && day <= last) {
    const days = Math.max(1, last - firstHarvestDay + 1);
    wanted += (crop.harvestNitrogen * share * demandMetOf(plant)) / days;
  }
  if (wanted === 0) return;
  const grown = plant.nitrogen + plant.harvested;
  const picked = Math.min(wanted, Math.max(0, c.harvestLimit * grown - plant.harvested));
  move(state, flows, flow.picked, picked);
  plant.nitrogen -= picked;
  plant.harvested += picked;
}

/** Tops that lie where they stood, for the cover's mass and for drawing; `name` sets them apart. */
export function layTops(
  state: BedState,
  plant: GrowingPlanting,
  item: ResidueClass,
  nitrogen: number,
  name: string,
): void {
  const dryKgPerM2 = (nitrogen * plant.input.crop.residueCarbonToNitrogen) / carbonOfTops / 1000;
  item.lyingDry += dryKgPerM2;
  if (state.keepsLayers)
    state.layers.push({
      id: `tops of ${name}`,
      item,
      dryKgPerM2,
      laidDensity: settledDensityOfTops,
      settledDensity: settledDensityOfTops,
      left: 1,
      settled: 1,
    });
}

/** The planting leaves the bed: roots stay as dug-in residue unless pulled, tops go where they were said to. */
function clear(
  state: BedState,
  flows: Float64Array,
  plant: GrowingPlanting,
  day: DayNumber,
  c: Coefficients,
): void {
  const { crop, topsFate } = plant.input;
  const roots = crownOf(plant);
  const tops = plant.nitrogen - roots;
  const kind = crop.residueIsGreen ? 'green' : 'mature';
  if (topsFate === 'pulled with roots') {
    move(state, flows, flow.clearedAway, plant.nitrogen);
    plant.removed += plant.nitrogen;
  } else {
    const below = classFor(state.classes, 'dug', 'mature', c.rootCarbonToNitrogen, c);
    below.residue += roots * below.parameters.carbonToNitrogen;
    move(state, flows, flow.rootsLeft, roots);
    plant.left += roots;
    if (topsFate === 'taken away') {
      move(state, flows, flow.clearedAway, tops);
      plant.removed += tops;
    } else {
      const placement = topsFate === 'left' ? 'laid' : 'dug';
      const item = classFor(state.classes, placement, kind, crop.residueCarbonToNitrogen, c);
      item.residue += tops * item.parameters.carbonToNitrogen;
      move(state, flows, placement === 'laid' ? flow.topsLeft : flow.topsDug, tops);
      plant.left += tops;
      if (placement === 'laid') {
        layTops(state, plant, item, tops, plant.input.id);
        if (crop.residueIsGreen)
          state.ammonia.unripe += tops * ammoniaOfTops(crop.residueCarbonToNitrogen, c);
      }
    }
  }
  plant.nitrogen = 0;
  plant.standing = false;
  plant.done = true;
  plant.clearedOn = day;
}

/** Picking, then clearing (step 11); `events` are those of the day. */
export function harvestPlants(
  input: BedSeason,
  state: BedState,
  flows: Float64Array,
  events: readonly BedEvent[],
  day: DayNumber,
): void {
  const { plantings } = state;
  const { plantsFrom, plantsTo } = state.day;
  for (let at = plantsFrom; at < plantsTo; at++) {
    const plant = plantings[at]!;
    if (!plant.standing) continue;
    pick(input, state, flows, plant, events, day, state.coefficients);
    if (day >= plant.clearsOn) clear(state, flows, plant, day, state.coefficients);
  }
}
