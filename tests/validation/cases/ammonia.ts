import type { BedSeason, LayerInput } from '../../../app/core/season/input';
import { runSeason } from '../../../app/core/season/season';
import type { MaterialId } from '../../../app/tables/materials';
import type { Values } from '../drawn';
import { bedAt, layerOf, movedIn, type Site } from '../field';
import { around, type Cases, type Ours } from './shape';

const ammoniaOf = (bed: BedSeason): number => {
  const laid = bed.layers.reduce((sum, layer) => sum + layer.nitrogen, 0);
  return (100 * movedIn(runSeason(bed), 'coverFree', 'ammonia')) / laid;
};
const ammoniaFrom = (site: Site, layers: readonly LayerInput[], values: Values): number =>
  ammoniaOf(bedAt(site, values, { layers }));
const sweden: Site = { station: 'stockholm', first: '2014-06-01', last: '2014-09-05' };
const thickMulch =
  (id: MaterialId, nitrogenPercent: number, grams: number): Ours =>
  (values) =>
    ammoniaFrom(sweden, [layerOf(id, '2014-06-06', grams, values, { nitrogenPercent })], values);
/**
 * Between its 2.32 and 3.52 % and its 10 and 20 C, in a vessel: air of one warmth asks for no water,
 * so grass laid just cut stays as wet as it came and nothing washes out of it.
 */
const ryegrass =
  (isMoist: boolean): Ours =>
  (values) => {
    const site: Site = { station: 'de-bilt', first: '2014-06-01', last: '2014-08-10' };
    const layer = layerOf('grass-fresh-generic', '2014-06-01', 10, values, {
      nitrogenPercent: values.of('nitrogen of ryegrass', around(2.32, 3.52)),
      laidDepth: values.of('depth of ryegrass', around(10, 25)),
      condition: isMoist ? 'just cut' : 'crisp',
    });
    const bed = bedAt(site, values, { layers: [layer] });
    const celsius = values.of('warmth of ryegrass', around(10, 20));
    bed.weather.minimumCelsius.fill(celsius);
    bed.weather.maximumCelsius.fill(celsius);
    bed.weather.rainMillimetres.fill(0);
    return ammoniaOf(bed);
  };
/** Thinly mulched in place: 100 g of dry matter to the m2 a cut (assumed). */
const thinCuts =
  (dates: readonly string[]): Ours =>
  (values) =>
    ammoniaFrom(
      { station: 'stuttgart', first: '2014-05-01', last: '2014-10-31' },
      dates.map((date) => layerOf('grass-clover-lawn', `2014-${date}`, 3.6, values)),
      values,
    );

/** Ammonia from what lies on top, % of its nitrogen. */
export const ammoniaCases: Cases = {
  CO06: thickMulch('grass-first-rough-cut', 1.15, 30),
  CO07: thickMulch('grass-fresh-generic', 2.12, 60),
  CO08: thickMulch('alfalfa-green', 4.33, 130),
  CO09: ryegrass(true),
  CO10: ryegrass(false),
  MV39: thinCuts(['06-01']),
  MV39b: thinCuts(['05-20', '06-25', '08-01', '09-10']),
};
