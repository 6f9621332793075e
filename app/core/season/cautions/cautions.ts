import type { DrawsAnswer } from '../draws/runDraws';
import type { LayerInput } from '../input';
import type { Limits } from '../limits';
import { at, seasonFirstDay } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { CautionFacts, Run } from './facts';
import { feedingCautions, layerTieUpCautions, saladCautions } from './feedingCautions';
import { allCoverCaution, depthCautions, tooSoonCautions, validityCautions } from './layerCautions';
import { legumeCautions } from './legumeCautions';
import { strongestFirst } from './makeCaution';
import { compostCautions, plantingCautions, rawManureCautions } from './manureCautions';
import { oddsOfBed, oddsOfLayers } from './oddsCautions';
import { standingHeights } from './plantSize';
import { roomCautions, roomOfBed } from './roomCautions';
import { coldSoilCautions, seedFlyCautions } from './soilCautions';
import { sourceCautions } from './sourceCautions';
import { stemCautions } from './stemCautions';
import { lookCautions } from './lookCautions';
import {
  drySoilCautions,
  frostCautions,
  frostKillCautions,
  glassCautions,
  slugCautions,
} from './weatherCautions';

export type {
  CautionFacts,
  Hazard,
  LayerFacts,
  OnHand,
  PlantingFacts,
  Run,
  SourceFacts,
  TreatmentFacts,
} from './facts';

/** Names what grows there, for the sentence. */
const named = (cautions: readonly Caution[], facts: CautionFacts): readonly Caution[] =>
  cautions.map((caution) => {
    const { plantingId } = caution.detail;
    const crop = facts.plantings[String(plantingId)]?.cropName;
    return crop === undefined ? caution : { ...caution, detail: { ...caution.detail, crop } };
  });

/**
 * Cautions of layers about to be laid, strongest first. The bed is run twice, without and with them.
 *
 * @param before the bed without the layers
 * @param after the same bed with them, verdict included
 * @param layerIds ids of the layers in `after.input.layers`; laid together they are judged together
 * @returns at most one caution per rule, except for source rules, which hold per layer
 * @validity all rules that need no draws; `withOddsOfLayers` adds those that do
 */
export function layerCautions(
  before: Run,
  after: Run,
  layerIds: readonly string[],
  facts: CautionFacts,
  limits: Limits,
): readonly Caution[] {
  const layers = after.input.layers.filter((layer) => layerIds.includes(layer.id));
  const [first] = layers;
  if (!first) return [];
  const laid = layers.find((layer) => layer.placement === 'laid');
  const found = strongestFirst([
    ...depthCautions(after, layers, limits),
    ...(laid ? allCoverCaution(after, laid.day, limits) : []),
    ...tooSoonCautions(before, layers, limits),
    ...roomCautions(before, after, layers, limits),
    ...legumeCautions(before, after, layers, limits),
    ...layerTieUpCautions(before, after, layerIds, limits),
    ...stemCautions(after, layers, limits),
    ...(laid ? coldSoilCautions(after, laid.day, limits, laid.id) : []),
    ...seedFlyCautions(after, layers, limits),
    ...(laid ? slugCautions(after, laid.day, limits, laid.id) : []),
    ...drySoilCautions(before, layers, limits),
    ...glassCautions(layers, facts, limits),
    ...(laid ? frostCautions(after, facts, laid.day, limits, laid.id) : []),
    ...sourceCautions(after, layers, facts, limits),
    ...rawManureCautions(after, layers, facts, limits),
    ...(layers.some((layer) => facts.layers[layer.id]?.isCompost)
      ? compostCautions(after, first.day, facts, limits, first.id)
      : []),
    ...saladCautions(after, layers, limits),
    ...validityCautions(layers, limits),
  ]);
  return named(found, facts);
}

/** Weeks for which what was wrong with a layer's seeds or runners is still worth doing something about. */
const freshDays = 14;

/** One caution for each rule about the ground, whichever plantings it concerns. */
function groundCautions(run: Run, facts: CautionFacts, limits: Limits): readonly Caution[] {
  const { input, result } = run;
  if (at(result.coverFraction, result, input.today) < limits.numbers['slug cover']) return [];
  return [
    ...coldSoilCautions(run, input.today, limits, null),
    ...slugCautions(run, input.today, limits, null),
    ...frostCautions(run, facts, input.today, limits, null),
  ];
}

/** What should never have been laid lies there now: of that it is told, so that what to do fits. */
const lying = (caution: Caution, layers: readonly LayerInput[]): Caution =>
  caution.kind === 'treated lawn' &&
  layers.some(({ id, placement }) => id === caution.layerId && placement === 'laid')
    ? { ...caution, detail: { ...caution.detail, lies: 1 } }
    : caution;

/** Layers that were laid over seedlings which are still too small to stand it. */
function smothering(run: Run, layers: readonly LayerInput[], limits: Limits): readonly Caution[] {
  const small = standingHeights(run, run.input.today, limits).filter(({ hands }) => hands < 1);
  if (small.length === 0) return [];
  const since = Math.min(...small.map(({ planting }) => planting.startDay));
  return stemCautions(
    run,
    layers.filter((layer) => layer.day >= since),
    limits,
  ).filter((caution) => caution.row === 'cover over seedlings');
}

/**
 * Depth of layers that lie already. A note only helps while the layer can be spread or carried; of
 * an older one that is worse than a note it is told that it lies (`isOld`), so that what to do fits.
 */
function lyingDepthCautions(run: Run, layers: readonly LayerInput[], limits: Limits): Caution[] {
  return depthCautions(run, layers, limits).flatMap((caution) => {
    if ((caution.date ?? 0) > run.input.today - freshDays) return [caution];
    if (caution.weight === 'note') return [];
    return [{ ...caution, detail: { ...caution.detail, isOld: 1 } }];
  });
}

/**
 * Cautions of a bed as it stands today, strongest first: its state, its ground, and of this
 * season's layers what can still be seen or undone. `layerId` says which layer a caution is about.
 */
export function bedCautions(run: Run, facts: CautionFacts, limits: Limits): readonly Caution[] {
  const { today } = run.input;
  const from = seasonFirstDay(run.input, today);
  const laid = run.input.layers.filter((layer) => layer.day <= today);
  const ofSeason = laid.filter((layer) => layer.day >= from);
  const fresh = ofSeason.filter((layer) => layer.day > today - freshDays);
  const underGlass = ofSeason.filter((layer) => layer.day > today - limits.numbers['glass days']);
  const seeds = sourceCautions(run, ofSeason, facts, limits).filter(
    (caution) =>
      (caution.kind !== 'runners' &&
        caution.kind !== 'seed heads' &&
        caution.row !== 'manure burn') ||
      fresh.some((layer) => layer.id === caution.layerId),
  );
  const seen = lookCautions(run, facts, limits);
  // slugs that were seen need no weather that might bring them
  const areSlugsSeen = seen.some(({ kind }) => kind === 'slugs');
  const ground = [
    ...groundCautions(run, facts, limits).filter(({ kind }) => kind !== 'slugs' || !areSlugsSeen),
    ...seen,
  ];
  const found = strongestFirst([
    ...lyingDepthCautions(run, ofSeason, limits),
    ...allCoverCaution(run, today, limits),
    ...roomOfBed(run, limits),
    ...feedingCautions(run, facts, limits),
    ...smothering(run, ofSeason, limits),
    ...ground,
    ...seedFlyCautions(
      run,
      laid.filter((layer) => layer.day >= today - 30),
      limits,
    ),
    ...glassCautions(underGlass, facts, limits),
    ...seeds.map((caution) => lying(caution, ofSeason)),
    ...rawManureCautions(run, laid, facts, limits),
    ...compostCautions(run, today, facts, limits, null),
    ...frostKillCautions(run, facts, limits),
    ...plantingCautions(run, limits),
    ...validityCautions(ofSeason, limits),
  ]);
  return named(found, facts);
}

/** Cautions without those of the odds, whose imagined seasons may be of before. */
const withoutOdds = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions.filter(({ kind }) => kind !== 'over-feeding');

/**
 * A bed's cautions with those that need the imagined seasons among them.
 *
 * @param cautions of `bedCautions`; odds that are among them already are replaced
 */
export const withOddsOfBed = (
  cautions: readonly Caution[],
  run: Run,
  draws: DrawsAnswer,
  facts: CautionFacts,
  limits: Limits,
): readonly Caution[] =>
  strongestFirst([...withoutOdds(cautions), ...named(oddsOfBed(run, draws, limits), facts)]);

/** The same of `layerCautions`. */
export function withOddsOfLayers(
  cautions: readonly Caution[],
  after: Run,
  layerIds: readonly string[],
  draws: { readonly before: DrawsAnswer; readonly after: DrawsAnswer },
  facts: CautionFacts,
  limits: Limits,
): readonly Caution[] {
  const layers = after.input.layers.filter(({ id }) => layerIds.includes(id));
  const odds = named(oddsOfLayers(after, layers, draws, limits), facts);
  return strongestFirst([...withoutOdds(cautions), ...odds]);
}
