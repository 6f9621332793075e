import { coverCrop, killedAt } from './cells';

/** What winter kills in cover crops, and what it does not. */
export const coverCrops = [
  coverCrop(
    'buckwheat',
    'tender',
    killedAt(-2, 0, 'NoTill2014', 'mixed'),
    [],
    'dies in the first hard frost; the number is recalled',
  ),
  coverCrop(
    'sorghum, millets, cowpea, soybean',
    'tender',
    killedAt(-1, 0, 'NoTill2014', 'mixed'),
    ['edamame'],
    'killed by frost; the number is recalled',
  ),
  coverCrop('white mustard', 'frost tolerant', killedAt(-4, -4, 'Dawling2012', 'read'), []),
  coverCrop(
    'oats',
    'frost tolerant',
    killedAt(-17, -7, 'DawlingOats', 'derived'),
    [],
    'once at -17 or three nights at -7',
  ),
  coverCrop('autumn barley', 'frost tolerant', killedAt(-8, -8, 'DawlingOats', 'read'), []),
  coverCrop(
    'forage radish',
    'frost tolerant',
    killedAt(-11, -7, 'NoTill2014', 'derived'),
    [],
    'in the teens of degrees Fahrenheit',
  ),
  coverCrop('phacelia', 'frost tolerant', killedAt(-8, -6, 'Recalled', 'memory'), []),
  coverCrop('spring field pea', 'frost tolerant', killedAt(-9, -4, 'Recalled', 'memory'), []),
  coverCrop('Austrian winter pea', 'very hardy', killedAt(-23, -12, 'Recalled', 'memory'), []),
  coverCrop('crimson clover', 'very hardy', killedAt(-18, -12, 'Recalled', 'memory'), [
    'crimson_clover',
  ]),
  coverCrop('hairy vetch', 'very hardy', killedAt(-29, -20, 'Recalled', 'memory'), [
    'hairy_vetch',
    'rye_vetch',
  ]),
  coverCrop('red and white clover', 'very hardy', killedAt(-32, -25, 'Recalled', 'memory'), [
    'red_clover',
  ]),
  coverCrop(
    'winter wheat and rye',
    'very hardy',
    killedAt(-40, -30, 'HardinessCopy2018', 'mixed'),
    ['winter_rye'],
    '-40 read, the mild end recalled',
  ),
] as const;
