import { runSeason } from '../../../app/core/season/season';
import type { MaterialId } from '../../../app/tables/materials';
import {
  bedAt,
  carbonToNitrogenOf,
  layerOf,
  plantingOf,
  recoveredPercent,
  type Site,
} from '../field';
import { incubate } from '../incubation';
import { michigan } from './crops';
import { jar } from './jars';
import { exactly, type Cases, type Ours } from './shape';
import { tilledIn } from './tilled';

const bending = (id: string, kind: 'green' | 'mature', ratio: number): Ours => {
  const warmth = { low: 15, typical: 20, high: 25 };
  return (values) =>
    incubate(
      {
        kind,
        carbonToNitrogen: ratio,
        celsius: values.of(`warmth of ${id}`, warmth),
        days: 180,
      },
      values,
    ).nitrogenPercent;
};
const onTop = (id: MaterialId): Ours => {
  return (values) => {
    const carbonToNitrogen = carbonToNitrogenOf(id, values);
    const at: Parameters<typeof incubate>[0] = {
      kind: 'green',
      carbonToNitrogen,
      celsius: 20,
      days: 150,
      placement: 'laid',
    };
    return incubate(at, values).nitrogenPercent;
  };
};
const japan: Site = { station: 'tokyo', first: '2014-04-01', last: '2014-07-05' };

/** Above nought where ours agrees with the finding. */
export const signCases: Cases = {
  R02: jar('R02', 'green', exactly(30), 20, exactly(112)),
  R29: (values) => -bending('R29', 'mature', 38)(values),
  R30: (values) => -bending('R30', 'mature', 91)(values),
  R31: bending('R31', 'green', 10),
  R32: bending('R32', 'green', 15),
  R27: onTop('cc-rye-early'),
  R28: (values) => -onTop('cc-rye-heading')(values),
  NA20: (values) => -tilledIn(1.1, 'cc-rye-heading')(values),
  NA21: (values) =>
    -incubate(
      {
        kind: 'mature',
        carbonToNitrogen: carbonToNitrogenOf('straw-barley', values),
        celsius: 15,
        days: 28,
      },
      values,
    ).nitrogenPercent,
  MV13: (values) => {
    const plantings = [plantingOf('tomato', '2014-05-10', japan, values)];
    const layers = [layerOf('cc-hairy-vetch', '2014-05-05', 12, values)];
    const last = (bed: Parameters<typeof bedAt>[2]): number =>
      runSeason(bedAt(japan, values, bed)).pools.mineralTop.at(-1)!;
    return last({ layers, plantings }) - last({ plantings });
  },
  MV21: (values) => {
    const planting = plantingOf('sweet_corn', '2014-05-15', michigan, values);
    const recovery = (placement: 'laid' | 'dug'): number =>
      recoveredPercent(
        michigan,
        [layerOf('cc-hairy-vetch', '2014-05-05', 12, values, { placement })],
        planting,
        values,
      );
    return recovery('dug') - recovery('laid');
  },
};
