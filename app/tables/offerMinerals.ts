import { row } from './row';
import type { Row } from './shapes';

/** What an offered material brings besides nitrogen, % of dry matter. */
export interface MineralRows {
  /** as the element */
  readonly phosphorusPercent: Row;
  /** as the element */
  readonly potassiumPercent: Row;
  /** all that dissolves, potassium included */
  readonly saltsPercent: Row;
}

type Three = readonly [low: number, typical: number, high: number];

const recalled = (values: Three, place: string, unit = '% of dry matter'): Row =>
  row(...values, unit, 'Assumed', place, 'memory', { drawnPer: 'material' });

const minerals = (phosphorus: Three, potassium: Three, salts: Three): MineralRows => ({
  phosphorusPercent: recalled(phosphorus, 'no table was at hand'),
  potassiumPercent: recalled(potassium, 'no table was at hand'),
  saltsPercent: recalled(
    salts,
    'recalled, very rough: lots differ by more than kinds do',
    '% salts of dry matter',
  ),
});

/**
 * By kind of material, from memory throughout: enough to tell a lot that brings much phosphorus or
 * salt from one that does not, and not enough to feed by. A lab's report of the lot outranks it.
 */
const kinds = {
  hay: minerals([0.15, 0.25, 0.4], [1, 1.8, 3], [2, 4, 7]),
  straw: minerals([0.04, 0.08, 0.15], [0.6, 1.2, 2], [1, 2.5, 5]),
  leaves: minerals([0.04, 0.1, 0.2], [0.2, 0.4, 0.9], [0.5, 1, 2.5]),
  wood: minerals([0.01, 0.04, 0.1], [0.05, 0.15, 0.4], [0.1, 0.4, 1]),
  paper: minerals([0.005, 0.02, 0.06], [0.01, 0.05, 0.2], [0.1, 0.5, 1.5]),
  greens: minerals([0.2, 0.4, 0.8], [1.5, 2.5, 4.5], [3, 6, 10]),
  cow: minerals([0.3, 0.7, 1.2], [0.8, 1.8, 3.5], [2, 4, 8]),
  horse: minerals([0.25, 0.5, 0.9], [0.8, 1.5, 2.8], [2, 4, 7]),
  hen: minerals([1, 1.8, 3], [1, 2, 3], [3, 6, 10]),
  sheep: minerals([0.3, 0.8, 1.3], [1, 2.2, 3.5], [2, 5, 9]),
  compost: minerals([0.15, 0.35, 0.8], [0.3, 0.9, 1.8], [0.5, 1.5, 4]),
  manureCompost: minerals([0.4, 1, 2], [0.6, 1.6, 3], [1.5, 4, 8]),
  seaweed: minerals([0.08, 0.2, 0.4], [1.5, 3.5, 8], [8, 18, 35]),
  meal: minerals([0.1, 0.4, 1], [0.1, 0.8, 2.5], [0.5, 2, 5]),
} as const satisfies Record<string, MineralRows>;

const byBeginning: readonly (readonly [string, keyof typeof kinds])[] = [
  ['hay-', 'hay'],
  ['straw-', 'straw'],
  ['pea-straw', 'straw'],
  ['corn-stalks', 'straw'],
  ['bracken', 'straw'],
  ['cocoa-hulls', 'greens'],
  ['leaves-', 'leaves'],
  ['pine-needles', 'leaves'],
  ['leaf-mould', 'leaves'],
  ['wood-', 'wood'],
  ['bark-', 'wood'],
  ['sawdust', 'wood'],
  ['paper', 'paper'],
  ['newspaper', 'paper'],
  ['cardboard', 'paper'],
  ['manure-cow', 'cow'],
  ['manure-horse', 'horse'],
  ['manure-hen', 'hen'],
  ['manure-broiler', 'hen'],
  ['manure-sheep', 'sheep'],
  ['manure-rabbit', 'sheep'],
  ['compost-cattle', 'manureCompost'],
  ['compost-poultry', 'manureCompost'],
  ['compost-mushroom', 'manureCompost'],
  ['compost-', 'compost'],
  ['vermicompost', 'compost'],
  ['seaweed', 'seaweed'],
  ['blood-meal', 'meal'],
  ['feather-meal', 'meal'],
  ['alfalfa-meal', 'meal'],
];

/** Minerals of a material of the tables; of green plants where nothing nearer is known. */
export const mineralsOf = (materialId: string): MineralRows =>
  kinds[byBeginning.find(([beginning]) => materialId.startsWith(beginning))?.[1] ?? 'greens'];

/** All rows, for the walk over every cell. */
export const offerMineralRows: readonly MineralRows[] = Object.values(kinds);
