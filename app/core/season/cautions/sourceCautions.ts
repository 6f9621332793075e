import { seasonStart, type DayNumber } from '../../days';
import type { LayerInput, PlantingInput } from '../input';
import type { FactId, Limits } from '../limits';
import { standingPlantings } from '../plantingAccount';
import { seasonLastDay } from '../seasonAccount';
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
    seasonStart(of.cutOn, facts.seasonStartMonth),
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
      detail: { source: of.source.name, product: found.product },
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

/** Hay on a bed: thick enough it holds its own seeds down, thin or worked in it sows them. */
function haySeedCautions(
  run: Run,
  layer: LayerInput,
  of: LayerFacts,
  facts: CautionFacts,
  limits: Limits,
): Caution[] {
  if (!of.carriesSeed) return [];
  const isLaid = layer.placement === 'laid';
  const least = limits.numbers['hay seed depth'];
  const depth = run.input.layers
    .filter(
      ({ id, day, placement }) =>
        day === layer.day && placement === 'laid' && facts.layers[id]?.carriesSeed,
    )
    .reduce((sum, { laidDepth }) => sum + laidDepth, 0);
  const isThin = !isLaid || depth < least * (1 - rounding);
  return [
    factCaution('seed heads', isThin ? 'hay seeds thin' : 'hay seeds', limits, {
      number: isLaid ? depth : 0,
      threshold: least,
      unit: 'mm',
      detail: { source: of.source.name, workedIn: isLaid ? 0 : 1 },
      layerId: layer.id,
    }),
  ];
}

/** Depths come from masses and densities: a whole 50 mm may be a hair less. */
const rounding = 1e-6;

/** Fresh poultry manure on, in or beside what stands there. */
function burnCautions(run: Run, layer: LayerInput, of: LayerFacts, limits: Limits): Caution[] {
  const [standing] = of.burnsPlants ? standingPlantings(run.input, layer.day) : [];
  return standing
    ? [
        factCaution('raw manure', 'manure burn', limits, {
          date: layer.day,
          detail: { source: of.source.name, plantingId: standing.id },
          layerId: layer.id,
        }),
      ]
    : [];
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
      ...haySeedCautions(run, layer, of, facts, limits),
      ...burnCautions(run, layer, of, limits),
      ...hazardCautions(run, layer, of, facts, limits),
    ];
  });
}
