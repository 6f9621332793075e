import type { LayerInput } from '../season/input';
import { type LineId, type Limits, weightRank } from '../season/limits';
import type { CautionFacts, Run } from '../season/cautions/facts';
import { tooSoonCautions } from '../season/cautions/layerCautions';
import { rawManureCautions } from '../season/cautions/manureCautions';
import { coldSoilCautions, seedFlyCautions } from '../season/cautions/soilCautions';
import { sourceCautions } from '../season/cautions/sourceCautions';
import { stemCautions } from '../season/cautions/stemCautions';
import { frostCautions, glassCautions, slugCautions } from '../season/cautions/weatherCautions';
import { factCaution, strongestFirst } from '../season/cautions/makeCaution';
import type { Caution } from '../season/verdict';

/** Row of the depth line that a layer on top is held against. */
export function depthLine(layer: Pick<LayerInput, 'materialClass' | 'condition'>): LineId {
  if (layer.materialClass !== 'green') return 'layer crisp';
  if (layer.condition === 'just cut') return 'layer just cut';
  return layer.condition === 'limp' ? 'layer limp' : 'layer crisp';
}

/**
 * What keeps a layer off a bed however thin it is: what it is and where it came from, the crop's
 * age, the soil, the weather, the layer below. Judged on the bed as it is, so it costs no run.
 *
 * @returns the strongest caution or stop, or null; notes keep nothing off
 */
export function blockedBy(
  bed: Run,
  layer: LayerInput,
  facts: CautionFacts,
  limits: Limits,
): Caution | null {
  const withLayer: Run = {
    ...bed,
    input: { ...bed.input, layers: [...bed.input.layers, layer] },
  };
  const layers = [layer];
  const found = strongestFirst([
    ...enoughAlready(bed, layer, limits),
    ...sourceCautions(withLayer, layers, facts, limits),
    ...rawManureCautions(withLayer, layers, facts, limits),
    ...stemCautions(withLayer, layers, limits),
    ...coldSoilCautions(withLayer, layer.day, limits, layer.id),
    ...seedFlyCautions(withLayer, layers, limits),
    ...slugCautions(withLayer, layer.day, limits, layer.id),
    ...glassCautions(layers, facts, limits),
    ...frostCautions(withLayer, facts, layer.day, limits, layer.id),
    ...tooSoonCautions(bed, layers, limits),
  ]);
  const [first] = found.filter(({ weight }) => weightRank[weight] >= weightRank.caution);
  return first ?? null;
}

/** Greens on a bed whose state says that it has enough: of the coming weeks nobody knows the state. */
function enoughAlready(bed: Run, layer: LayerInput, limits: Limits): Caution[] {
  if (!layer.isGreens || layer.day !== bed.input.today) return [];
  const { verdict } = bed;
  if (verdict.room === null) return [];
  const detail = { ratioBefore: verdict.ratio ?? 0 };
  if (verdict.state === 'enough for now')
    return [
      factCaution('enough', 'greens on enough for now', limits, {
        number: verdict.nitrateMgPerKg,
        threshold: limits.lines['nitrate at flowering'].caution,
        unit: 'mg/kg',
        date: verdict.turnsOn,
        detail,
        layerId: layer.id,
      }),
    ];
  if (verdict.state !== 'enough to the end' && verdict.state !== 'over-fed') return [];
  return [
    factCaution('enough', 'greens on enough to the end', limits, {
      number: verdict.ratio,
      threshold: limits.numbers['enough to the end'],
      unit: 'ratio',
      detail,
      layerId: layer.id,
    }),
  ];
}
