import { dotsWords } from '../../words/dotsWords';
import type { TableData } from '../export/tableData';

/** The dots as numbers, the least first. */
export const dotsTable = (values: readonly number[]): TableData => ({
  head: [dotsWords.dot, dotsWords.value],
  rows: values.map((value, at) => [at + 1, value]),
});
