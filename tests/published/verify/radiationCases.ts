import { join } from 'node:path';
import { oursOf } from '../Allen1998-penmanMonteith/ours';
import { readCases } from '../readCases';
import type { Comparison, ComparisonGroup } from './comparison';
import { pages, paper } from './waterCases';

const comparisons = readCases(join(import.meta.dirname, '../Allen1998-penmanMonteith')).rows.map(
  ([example = '', page = '', quantity = '', printed = '', seen, within]): Comparison => ({
    source: paper,
    place: `Example ${example}, ${pages(page)}`,
    quantity,
    printed,
    ours: oursOf(example, quantity),
    within: within === 'unit' ? 'unit' : 'digits',
    standing: seen === 'read' ? 'printed' : 'second-hand',
  }),
);

const equations = [{ name: 'penmanMonteith', file: 'app/core/soil/penmanMonteith' }];

export const radiationGroups: readonly ComparisonGroup[] = [
  {
    title: 'Evapotranspiration from humidity, wind and sun: worked examples',
    equations,
    comparisons: comparisons.filter(({ standing }) => standing === 'printed'),
  },
  {
    title: 'The same equations, examples seen second-hand',
    equations,
    comparisons: comparisons.filter(({ standing }) => standing !== 'printed'),
  },
];
