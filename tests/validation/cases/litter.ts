import { decayParameters } from '../../../app/core/cover/decay';
import type { LayerInput } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import { materials, type MaterialId } from '../../../app/tables/materials';
import type { Values } from '../drawn';
import { bedAt, layerOf, plantingOf, type Site } from '../field';
import type { Cases, Ours } from './shape';

/** Of what was laid, the share of nitrogen or carbon that no longer lies there at the end [%]. */
function goneFromTop(
  site: Site,
  layer: LayerInput,
  of: 'nitrogen' | 'mass',
  values: Values,
): number {
  const result = runSeason(bedAt(site, values, { layers: [layer] }));
  if (of === 'mass') return 100 * (1 - result.layers[0]!.left.at(-1)!);
  const small = values.coefficients.lyingShareOfMicrobesAndHumus;
  const { coverResidue, coverMicrobes, coverHumus } = result.pools;
  const lying = coverResidue.at(-1)! + small * (coverMicrobes.at(-1)! + coverHumus.at(-1)!);
  return 100 * (1 - lying / layer.nitrogen);
}
const litter =
  (site: Site, id: MaterialId, date: string, grams: number, of: 'nitrogen' | 'mass'): Ours =>
  (values) =>
    goneFromTop(site, layerOf(id, date, grams, values), of, values);
const carolina: Site = {
  station: 'nashville-tennessee',
  first: '2014-04-01',
  last: '2014-06-09',
};
const connecticut: Site = {
  station: 'new-york-central-park',
  first: '2014-05-01',
  last: '2014-09-20',
};
const alabama: Site = { station: 'savannah-georgia', first: '2014-05-01', last: '2015-04-06' };
/** 0.36 kg of dry matter to the m2, as printed, at the nitrogen of our row. */
const alabamaGrass: Ours = (values) => {
  const nitrogenPercent = values.of(
    'nitrogen of grass-fresh-generic',
    materials['grass-fresh-generic'].nitrogenPercent,
  );
  const layer = layerOf('grass-fresh-generic', '2014-05-15', 3.6 * nitrogenPercent, values, {
    nitrogenPercent,
  });
  return goneFromTop(alabama, layer, 'mass', values);
};
const tropics: Site = { station: 'naples-florida', first: '2014-06-01', last: '2014-07-20' };
const soybean = (placement: 'laid' | 'dug', values: Values): LayerInput =>
  layerOf('pea-bean-vines-green', '2014-06-15', 12.5, values, { placement });
/** Mass gone is carbon gone from what would lie in a bag, on top and dug in, in the mean. */
const soybeanMass: Ours = (values) => {
  const carbonLeft = (placement: 'laid' | 'dug'): number => {
    const layer = soybean(placement, values);
    const { pools } = runSeason(bedAt(tropics, values, { layers: [layer] }));
    const p = decayParameters('green', layer.carbon / layer.nitrogen, values.coefficients);
    const [residue, microbes, humus] =
      placement === 'laid'
        ? [pools.coverResidue, pools.coverMicrobes, pools.coverHumus]
        : [pools.dugResidue, pools.dugMicrobes, pools.dugHumus];
    const kept =
      microbes.at(-1)! * p.microbeCarbonToNitrogen + humus.at(-1)! * p.humusCarbonToNitrogen;
    const small = values.coefficients.lyingShareOfMicrobesAndHumus;
    return (residue.at(-1)! * p.carbonToNitrogen + small * kept) / layer.carbon;
  };
  return 100 * (1 - (carbonLeft('laid') + carbonLeft('dug')) / 2);
};
const tropicsTomato: Site = { ...tropics, last: '2014-09-30' };
const soybeanInSoil: Ours = (values) => {
  const planting = plantingOf('tomato', '2014-06-16', tropicsTomato, values);
  const share = (placement: 'laid' | 'dug'): number => {
    const layer = soybean(placement, values);
    const bed = { layers: [layer], plantings: [planting] };
    const { pools } = runSeason(bedAt(tropicsTomato, values, bed));
    const names =
      placement === 'laid'
        ? (['coverResidue', 'coverMicrobes', 'coverHumus'] as const)
        : (['dugResidue', 'dugMicrobes', 'dugHumus'] as const);
    return names.reduce((sum, name) => sum + pools[name].at(-1)!, 0) / layer.nitrogen;
  };
  return 50 * (share('laid') + share('dug'));
};

/** What is gone from litter, and what of it is still in the soil. */
export const litterCases: Cases = {
  NA17: litter(carolina, 'cc-crimson-clover-veg', '2014-04-15', 6.9, 'nitrogen'),
  NA18: litter(connecticut, 'grass-fresh-lean-summer', '2014-06-01', 2, 'nitrogen'),
  NA19: litter(connecticut, 'grass-fresh-fertilised', '2014-06-01', 4, 'nitrogen'),
  CO01: alabamaGrass,
  CO02: alabamaGrass,
  CO03: alabamaGrass,
  CO04: alabamaGrass,
  CO05: alabamaGrass,
  MV09: soybeanMass,
  MV11: soybeanInSoil,
};
