import { single } from '../row';
import type { CropRow } from '../shapes';
import type { SourceKey } from '../sources';

type Curve = Pick<CropRow, 'curveMiddle' | 'curveSteepness' | 'familyCurve'>;

/** x = share of the season by degree-days; the curve is a logistic stretched to run from 0 to 1. */
const fitted = (middle: number, steepness: number, source: SourceKey, place: string): Curve => ({
  curveMiddle: single(middle, 'share of the season', source, place, 'derived'),
  curveSteepness: single(steepness, 'per season', source, place, 'derived'),
  familyCurve: false,
});

const borrowed = (middle: number, steepness: number, source: SourceKey, place: string): Curve => ({
  curveMiddle: single(middle, 'share of the season', source, place, 'assumed'),
  curveSteepness: single(steepness, 'per season', source, place, 'assumed'),
  familyCurve: true,
});

const fit = 'our fit to the uptake readings';

/**
 * How a crop's uptake runs over its season. No source printed a logistic: the shapes are our own
 * fits to readings, or borrowed from a relative. A curve read from sowing is shifted for a crop
 * that is set out as a plant, and the other way round: the young plant's days before the start
 * (x0 of the whole life) are cut off or put in front, x' = (x - x0)/(1 - x0), k' = k (1 - x0).
 */
export const curves = {
  tomato: fitted(0.55, 9, 'HartzBottoms2009', `${fit}, from setting out`),
  tomatoFamily: borrowed(0.55, 9, 'HartzBottoms2009', 'tomato, from setting out'),
  tomatoSownFamily: borrowed(
    0.63,
    11,
    'HartzBottoms2009',
    'tomato with 28 days as a seedling put in front of its 125',
  ),
  pepper: fitted(0.56, 7, 'Claimon', `${fit}, from setting out`),
  lettuceFamily: borrowed(0.72, 9, 'CdfaLettuce', 'head lettuce, from sowing'),
  lettuceSetOut: fitted(
    0.62,
    6.7,
    'CdfaLettuce',
    `${fit} from sowing (0.72, 9), less the first 25 of 95 days`,
  ),
  lettuceSetOutFamily: borrowed(
    0.62,
    6.7,
    'CdfaLettuce',
    'head lettuce from sowing (0.72, 9), less the first 25 of 95 days',
  ),
  spinach: fitted(0.72, 8, 'Spinach2011', `${fit}, from sowing`),
  sweetCorn: fitted(0.58, 10, 'Heckman2007', `${fit}, from sowing`),
  potato: fitted(0.52, 9, 'Westermann1985', `${fit}, from planting`),
  cole: fitted(0.6, 9, 'Everaarts2000', `${fit}, from setting out`),
  coleFamily: borrowed(0.6, 9, 'Everaarts2000', 'cauliflower and broccoli, from setting out'),
  snapBean: fitted(0.7, 8, 'Fernandes2013', `${fit}, from sowing, cut off at picking`),
  dryBean: fitted(0.53, 8, 'Fernandes2013', `${fit}, from sowing`),
  onion: fitted(0.7, 10, 'CdfaOnion', `${fit}, from sowing`),
  onionFamily: borrowed(0.7, 10, 'CdfaOnion', 'onion, from sowing'),
  carrot: fitted(0.52, 7, 'CdfaCarrot', `${fit}, from sowing`),
  carrotFamily: borrowed(0.52, 7, 'CdfaCarrot', 'carrot, from sowing'),
  sunflower: fitted(
    0.36,
    18,
    'CdfaSunflower',
    `${fit}: 5 % at a fifth of the season, 97 % at flowering`,
  ),
  beet: borrowed(0.52, 8, 'Assumed', 'roots, a little steeper'),
  sweetPotato: borrowed(0.5, 7, 'Assumed', 'even growth of vines and roots'),
  longPicked: borrowed(0.55, 7, 'Assumed', 'picked, flowering or growing for long'),
} as const satisfies Record<string, Curve>;
