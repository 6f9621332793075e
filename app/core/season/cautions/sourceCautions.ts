import type { DayNumber } from '../../days';
import type { LayerInput, PlantingInput } from '../input';
import type { FactId, Limits } from '../limits';
import { seasonFirstDay, seasonLastDay } from '../seasonAccount';
import type { Caution, CautionKind } from '../verdict';
import type { CautionFacts, Hazard, LayerFacts, Run } from './facts';
import { factCaution } from './makeCaution';
import { type BedUse, treatmentFinding } from './treatment';

/** What stands on a bed after a day of its season, or comes later in it. */
const servedBy = (run: Run, day: DayNumber): readonly PlantingInput[] =>
  run.input.plantings.filter(
    (planting) =>
      planting.startDay <= seasonLastDay(run.input, day) &&
      (planting.clearingDay === null || planting.clearingDay > day),
  );

const isFood = (planting: PlantingInput): boolean =>
  planting.crop.excessClass !== 'flower' && planting.crop.excessClass !== 'cover';

/** Eaten raw and touched by what lies under it. */
const isEatenRaw = (planting: PlantingInput): boolean =>
  isFood(planting) && (planting.crop.eatenFromSoil || planting.crop.excessClass === 'leaf');

/** An empty bed counts as a food bed: nobody knows yet what comes next. */
function useOf(run: Run, day: DayNumber, facts: CautionFacts): BedUse {
  const plantings = servedBy(run, day);
  return {
    food: plantings.length === 0 || plantings.some(isFood),
    sensitive: plantings.some((planting) => facts.plantings[planting.id]?.weedkillerSensitive),
  };
}

function treatedCaution(
  run: Run,
  layer: LayerInput,
  of: LayerFacts,
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  const found = treatmentFinding(
    of.source,
    of.cutOn,
    seasonFirstDay(run.input, of.cutOn),
    useOf(run, layer.day, facts),
    limits,
  );
  if (!found) return [];
  const kind: CautionKind = of.source.kind === 'lawn' ? 'treated lawn' : 'treated source';
  return [
    factCaution(kind, found.row, limits, {
      number: found.number,
      threshold: found.threshold,
      unit: found.unit,
      date: found.date,
      detail: { source: of.source.name, product: of.source.treatment.product },
      layerId: layer.id,
    }),
  ];
}

function grassCautions(layer: LayerInput, of: LayerFacts, limits: Limits): Caution[] {
  const cautions: Caution[] = [];
  const detail = { source: of.source.name };
  if (of.source.creepingGrass && layer.condition !== 'crisp')
    cautions.push(factCaution('runners', 'creeping grass', limits, { detail, layerId: layer.id }));
  const seen = of.source.seedHeadsSeen;
  const age = seen === null ? null : of.cutOn - seen;
  const isNearSeeding = age !== null && age >= 0 && age <= limits.numbers['seed head days'];
  if (of.seedHeaded || isNearSeeding)
    cautions.push(
      factCaution('seed heads', 'seed heads', limits, {
        number: age,
        threshold: limits.numbers['seed head days'],
        unit: 'days',
        date: seen,
        detail,
        layerId: layer.id,
      }),
    );
  return cautions;
}

const dogHazards: readonly Hazard[] = ['dog poison'];

function hazardCautions(
  run: Run,
  layer: LayerInput,
  of: LayerFacts,
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  const served = servedBy(run, layer.day);
  const holds = (hazard: Hazard): boolean => {
    if (hazard === 'fouled grass') return served.length === 0 || served.some(isEatenRaw);
    return !dogHazards.includes(hazard) || facts.dogs;
  };
  return of.hazards.filter(holds).map((hazard) =>
    factCaution(hazard === 'fouled grass' ? 'fouled' : 'safety', hazard satisfies FactId, limits, {
      detail: { source: of.source.name, material: of.materialName },
      layerId: layer.id,
    }),
  );
}

/** Everything that hangs on where a layer's material came from. */
export function sourceCautions(
  run: Run,
  layers: readonly LayerInput[],
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  return layers.flatMap((layer) => {
    const of = facts.layers[layer.id];
    if (!of) return [];
    return [
      ...treatedCaution(run, layer, of, facts, limits),
      ...grassCautions(layer, of, limits),
      ...hazardCautions(run, layer, of, facts, limits),
    ];
  });
}
