import { runSeason } from '../../../app/core/season/season';
import type { MaterialId } from '../../../app/tables/materials';
import type { Values } from '../drawn';
import {
  bedAt,
  cropNitrogen,
  layerOf,
  plantingOf,
  recoveredPercent,
  releasedPercent,
  type Site,
} from '../field';
import type { Cases, Ours } from './shape';

const lowlands: Site = { station: 'de-bilt', first: '2014-03-01', last: '2014-11-30' };
const beforeCabbage =
  (id: MaterialId, grams: number): Ours =>
  (values) =>
    recoveredPercent(
      lowlands,
      [layerOf(id, '2014-04-20', grams, values, { placement: 'dug' })],
      plantingOf('cabbage', '2014-05-15', lowlands, values),
      values,
    );
const pots: Site = {
  station: 'tokyo',
  first: '2014-04-01',
  last: '2014-10-31',
  roofed: true,
  keptMoist: true,
};
export const michigan: Site = {
  station: 'toronto-ontario',
  first: '2014-04-01',
  last: '2014-10-31',
};
const washington: Site = {
  station: 'salt-lake-city-utah',
  first: '2014-05-01',
  last: '2014-06-05',
  keptMoist: true,
};
const norell: Site = { station: 'stockholm', first: '2014-04-15', last: '2014-12-31' };
const cabbageInSweden = (values: Values) => plantingOf('cabbage', '2014-06-01', norell, values);
const nitrateAtHarvest: Ours = (values) => {
  const planting = cabbageInSweden(values);
  const layers = [layerOf('cc-red-clover', '2014-06-22', 21.8, values)];
  const result = runSeason(bedAt(norell, values, { layers, plantings: [planting] }));
  return 10 * result.pools.mineralTop[planting.clearingDay! - result.firstDay]!;
};

/** What crops took, and what was seen in the soil beside them. */
export const cropCases: Cases = {
  R24: beforeCabbage('cc-red-clover', 15),
  MV31: beforeCabbage('cc-hairy-vetch', 13.6),
  MV33: (values) =>
    recoveredPercent(
      pots,
      [layerOf('cc-hairy-vetch', '2014-05-01', 26, values, { placement: 'dug' })],
      plantingOf('tomato', '2014-05-08', pots, values),
      values,
    ),
  MV35: (values) =>
    recoveredPercent(
      michigan,
      [layerOf('alfalfa-green', '2014-05-05', 12, values, { placement: 'dug' })],
      plantingOf('sweet_corn', '2014-05-15', michigan, values),
      values,
    ),
  MV15: (values) =>
    releasedPercent(washington, [layerOf('cc-red-clover', '2014-05-15', 5, values)], values),
  MV05: nitrateAtHarvest,
  MV07: (values) => {
    const planting = cabbageInSweden(values);
    const mulch = layerOf('cc-red-clover', '2014-06-22', 20.5, values);
    const pellets = layerOf('manure-broiler-litter', '2014-06-01', 11.1, values, {
      placement: 'dug',
    });
    return (
      cropNitrogen(norell, [mulch], planting, values) /
      cropNitrogen(norell, [pellets], planting, values)
    );
  },
};
