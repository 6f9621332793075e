import { row } from './row';

/**
 * How the C:N by which a material rots differs from its own, as a factor drawn once per material.
 *
 * The relations of decomposition know a plant by its C:N alone; what else it is made of moves the
 * C:N above which nothing is freed. Authors put that between 20 and 40: 20 and 30 as the two ends of
 * a guide (Alberta Agriculture, ch. 4.3, read), 24 in 47 residues (Trinsoutrot and others 2000,
 * abstract read), 40-41 (Vigil & Kissel 1991, recalled). The middle of 20 and 40 on the log scale is
 * 28, and both lie a factor of 1.4 from it.
 */
export const actingRatio = row(
  1 / 1.4,
  1,
  1.4,
  'factor on C:N',
  'AlbertaGuide',
  'ch. 4.3: C:N below 20 frees, above 30 holds; with 40 recalled of Vigil & Kissel 1991 a span of 1.4 both ways',
  'derived',
  { drawnPer: 'material', note: 'materials of one C:N free unlike shares; not drawn for composts' },
);
