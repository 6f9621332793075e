import { row } from './row';

/** How far a laboratory's nitrate of a bed may be off what is in it. */
export const nitrateTestRows = {
  /** standard deviation over the value, of a sample that went through 0-30 cm */
  spread: row(
    0.1,
    0.2,
    0.3,
    'share',
    'Assumed',
    'ten to fifteen cores mixed and kept cool; beds are patchy, and laboratories differ little',
    'assumed',
    { drawnPer: 'nothing' },
  ),
};
