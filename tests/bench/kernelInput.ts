import { ways } from '../../app/core/season/ways';
import {
  slowKinds,
  type BedEvent,
  type BedSeason,
  type LayerInput,
} from '../../app/core/season/input';
import { lowerDepthFor, runPlan } from '../../app/core/season/runPlan';

const kinds = ['green', 'mature', 'slow', 'inert', 'wood'] as const;
const placements = ['laid', 'hoed', 'dug'] as const;
const conditions = ['just cut', 'limp', 'crisp'] as const;
const fates = ['left', 'dug in', 'taken away', 'pulled with roots'] as const;
const eventKinds = ['rake off', 'dig cover in', 'water', 'harvest'] as const;

const sizeOf = (event: BedEvent): number => {
  if (event.kind === 'water') return event.depth;
  return event.kind === 'harvest' ? event.kilogramsPerM2 : event.share;
};

const inOrder = <Entry>(days: ReadonlyMap<number, readonly Entry[]>): [number, Entry][] =>
  [...days].flatMap(([index, entries]) => entries.map((entry): [number, Entry] => [index, entry]));

/**
 * A bed as `kernel.c` reads it: the numbers of the input and of its plan, section by section. Throws
 * for plants that stay for years, which the port does not know.
 */
export function kernelInput(input: BedSeason): string {
  if (input.plantings.some(({ seasons }) => seasons))
    throw new Error(`${input.bedId}: the C port knows no plants that stay for years`);
  const plan = runPlan(input, lowerDepthFor(input));
  const days = input.lastDay - input.firstDay + 1;
  const isWithin = ([index]: readonly [number, unknown]): boolean => index >= 0 && index < days;
  const { soil, coefficients } = input;
  const materials = [...new Set(input.layers.map(({ materialId }) => materialId))];
  const ids = input.plantings.map(({ id }) => id);
  const lines: (readonly (string | number)[])[] = [];
  const write = (...words: readonly (string | number | boolean)[]): void =>
    void lines.push(words.map((word) => (typeof word === 'string' ? word : Number(word))));

  const named = Object.entries(coefficients) as [string, number][];
  write('coefficients', named.length);
  for (const [name, value] of named) write(name, value);
  write('flows', ways.length);
  for (const { from, to } of ways) write(from, to);
  write('run', input.firstDay, days, input.today);
  write(input.runoffCurveNumber ?? -1, input.keptMoist);
  const { topFull, topWilt, lowerFull, lowerWilt } = plan.sizes;
  write(plan.lowerDepth, topFull, topWilt, lowerFull, lowerWilt, plan.rainOfYear);
  write(soil.fieldCapacity, soil.wiltingPoint, soil.bulkDensityKgPerL, soil.organicMatterPercent);
  write(soil.startingMineralTop ?? Number.NaN);
  write('weather');
  for (let index = 0; index < days; index++)
    write(
      plan.rain[index]!,
      plan.evapotranspiration[index]!,
      plan.mean[index]!,
      plan.airFactor[index]!,
    );

  write('plantings', input.plantings.length);
  for (const planting of input.plantings) {
    const { crop, clearingDay } = planting;
    write(planting.share, planting.startDay, planting.firstHarvestDay, planting.usualEndDay);
    write(clearingDay !== null, clearingDay ?? 0, planting.normalDegreeDays);
    write(fates.indexOf(planting.topsFate), plan.pickedPlantings.has(planting.id));
    write(planting.nodulesSeen === false, crop.residueIsGreen);
    write(crop.need, crop.harvestNitrogen, crop.harvestGramsPerKilogram, crop.rootShare);
    write(crop.curveMiddle, crop.curveSteepness, crop.baseCelsius);
    write(crop.usualDays, crop.firstHarvestDays, crop.flowerDays ?? -1, crop.fullRootDepth);
    write(crop.cropCoefficientStart, crop.cropCoefficientMiddle, crop.cropCoefficientEnd);
    write(...crop.stageShares, crop.depletionShare, crop.residueCarbonToNitrogen);
    const { legume } = crop;
    write(legume !== null, legume?.usualShareFixed ?? 0, legume?.highShareFixed ?? 0);
    write(legume?.nodulationDays ?? 0, legume?.leafyLimit ?? 0, legume?.poddingLimit ?? 0);
  }

  const layers: [number, LayerInput][] = inOrder(plan.layers).filter(isWithin);
  write('layers', layers.length);
  for (const [index, layer] of layers) {
    write(index, materials.indexOf(layer.materialId), kinds.indexOf(layer.materialClass));
    write(placements.indexOf(layer.placement), conditions.indexOf(layer.condition));
    write(layer.freshKgPerM2, layer.dryKgPerM2, layer.nitrogen, layer.carbon, layer.laidDepth);
    write(layer.mineralShare, layer.slowShare, slowKinds.indexOf(layer.slowKind ?? 'compost'));
  }
  const events: [number, BedEvent][] = inOrder(plan.events).filter(isWithin);
  write('events', events.length);
  for (const [index, event] of events) {
    const planting = event.kind === 'harvest' ? ids.indexOf(event.plantingId) : -1;
    write(index, eventKinds.indexOf(event.kind), planting, sizeOf(event));
  }
  const starts = [...plan.seasonStarts].filter((index) => index >= 0 && index < days);
  write('seasonStarts', starts.length);
  for (const index of starts) {
    const layer = plan.lowerLayers.get(index)!;
    write(index, layer.depth, layer.sizes.lowerFull, layer.sizes.lowerWilt);
  }
  write('end');
  return `${lines.map((words) => words.join(' ')).join('\n')}\n`;
}
