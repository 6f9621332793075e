import type { UnitSet } from '../amounts/unitSystem';
import type { ShownUnit } from '../core/shownUnit';
import type { ExcessClass } from '../core/season/input';
import type { Caution, CautionKind } from '../core/season/verdict';
import { dayWord, percent } from './chartFormat';
import { dayStyle } from './dates';
import { estimate, estimateWithUnit, timesWords, twoFigures } from './figures';
import { overFeedingSentence } from './overFeedingWords';
import { excessHarm, otherCauses } from './states';

/** A caution with its figures in words: what the sentences below are put together from. */
interface Figures {
  readonly caution: Caution;
  readonly units: UnitSet;
  readonly number: number;
  readonly threshold: number;
  /** a detail as text, '' when absent */
  readonly text: (key: string) => string;
  /** a detail as a number, 0 when absent */
  readonly value: (key: string) => number;
  readonly day: string;
  readonly depth: (millimetres: number) => string;
  readonly nitrogen: (gramsPerM2: number) => string;
  readonly rain: (millimetres: number) => string;
  readonly degrees: (celsius: number) => string;
  /** what grows there, or words for it */
  readonly crop: string;
  /** one of two verbs or pronouns, by whether the crop's name is a plural */
  readonly byCrop: (one: string, many: string) => string;
  /** the lawn, the stock or the place it came from */
  readonly source: string;
  readonly dayOf: (day: number) => string;
}

const inUnit =
  (unit: ShownUnit) =>
  (inside: number): string =>
    estimateWithUnit(inside, unit);

function figuresOf(caution: Caution, units: UnitSet): Figures {
  const style = dayStyle(units.system);
  const dayOf = (day: number): string => dayWord(day, style);
  const text = (key: string): string => String(caution.detail[key] ?? '');
  const crop = text('crop') === '' ? 'what grows there' : text('crop').toLowerCase();
  const isPlural = crop.endsWith('s') && crop !== 'asparagus';
  return {
    caution,
    units,
    number: caution.number ?? 0,
    threshold: caution.threshold ?? 0,
    text,
    value: (key) => Number(caution.detail[key] ?? 0),
    day: caution.date === null ? '' : dayOf(caution.date),
    depth: inUnit(units.depth),
    nitrogen: inUnit(units.nitrogenPerArea),
    rain: inUnit(units.rain),
    degrees: inUnit(units.temperature),
    crop,
    byCrop: (one, many) => (isPlural ? many : one),
    source: text('source') === '' ? 'this material' : text('source'),
    dayOf,
  };
}

const large = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const plainDays = (days: number): string =>
  `${String(Math.round(days))} ${Math.round(days) === 1 ? 'day' : 'days'}`;

const clippingsWords: Readonly<Record<string, string>> = {
  'just cut': 'just-cut clippings',
  limp: 'limp clippings',
  crisp: 'crisp clippings',
  browns: 'browns',
};

function layerDepth({ caution, depth, number, threshold, text, value }: Figures): string {
  const harm =
    text('condition') === 'browns' || text('condition') === 'crisp'
      ? {
          note: 'it is a thick layer',
          caution: 'rain is slow to get through',
          stop: 'rain hardly gets through',
        }
      : { note: 'it is a thick layer', caution: 'it mats', stop: 'it heats and turns slimy' };
  const what = clippingsWords[text('condition')] ?? 'it';
  const from = caution.weight === 'stop' && caution.row === 'layer just cut' ? 'from' : 'past';
  // what was laid earlier that day counts in, and rounding must not make it the line itself
  const over = caution.weight !== 'stop' && depth(number) === depth(threshold) ? 'Just over ' : '';
  const together = value('others') > 0 ? ', with the rest of that day' : '';
  return `${over}${depth(number)} of ${what} as laid${together}: ${from} ${depth(threshold)} ${harm[caution.weight]}.`;
}

function room(figures: Figures): string {
  const { caution, number, threshold, nitrogen, day, text, units } = figures;
  if (caution.row === 'greens on an empty bed')
    return `Nothing grows there: ${nitrogen(number)} would lie ready about ${day}; over ${nitrogen(threshold)} goes to the rain.`;
  const harm = excessHarm[(text('excessClass') || 'storage') as ExcessClass];
  const weather = text('excessClass') === 'fruit' ? otherCauses(caution.detail, units) : '';
  // a bed's state names the line from which it is too much: the stop lies further on and says so
  const why = {
    note: 'nothing more is wanted',
    caution: `is too much: ${harm}`,
    stop: `is the stop: ${harm}`,
  }[caution.weight];
  const start = caution.layerId === null ? '' : 'with it, ';
  return `${large(`${start}in hand and to come: ${timesWords(number)} what the crop can use; past ${twoFigures(threshold)} ${why}.`)}${weather}`;
}

function enough({ caution, number, threshold, value }: Figures): string {
  if (caution.row === 'greens on enough for now')
    return `The soil holds all the crop can take up now: ${twoFigures(number)} mg/kg, and ${twoFigures(threshold)} is enough.`;
  const before = timesWords(value('ratioBefore'));
  return caution.row === 'greens past enough'
    ? `It has ${before} what it can use already; this makes it ${twoFigures(number)}, and past ${twoFigures(threshold)} is too much.`
    : `It has ${before} what it can use already; this makes it ${twoFigures(number)}.`;
}

function legume({ number, value, crop, byCrop, nitrogen }: Figures): string {
  if (value('welcome') === 1)
    return `A first thin layer is welcome. It costs ${crop} ${percent(number)} of what ${byCrop('it', 'they')} would fix from the air.`;
  return `It costs ${crop} ${percent(number)} of what ${byCrop('it', 'they')} would fix from the air: ${nitrogen(value('fixedAfter'))} in place of ${nitrogen(value('fixedBefore'))}.`;
}

function short({ number, nitrogen, day, value }: Figures): string {
  const water = value('dryFirst') === 1 ? ' The soil is dry: water first.' : '';
  return `Hungry from ${day}: ${nitrogen(number)} too little to its end, room for ${nitrogen(value('room'))} of greens’ nitrogen.${water}`;
}

function washingOut({ caution, number, threshold, nitrogen, day, rain, value }: Figures): string {
  if (caution.row === 'rain on nitrate')
    return `${rain(number)} of rain is due this week on ${twoFigures(value('nitrate'))} mg/kg: some will wash out.`;
  if (caution.row === 'washing out at clearing')
    return `${nitrogen(number)} will be left in the soil on clearing, ${day}; over ${nitrogen(threshold)} goes to the rain.`;
  return `${nitrogen(number)} lies ready and nothing grows there; over ${nitrogen(threshold)} goes to the rain.`;
}

function seedlings({ caution, crop, byCrop, day, dayOf, value }: Figures): string {
  if (caution.row === 'cover over seedlings') {
    const small =
      value('up') > 0
        ? `${byCrop('comes', 'come')} up about ${dayOf(value('up'))}`
        : `${byCrop('is', 'are')} not a hand high yet`;
    return `${large(crop)} ${small}: a cover smothers ${byCrop('it', 'them')}.${day === '' ? '' : ` Look again about ${day}.`}`;
  }
  return day === ''
    ? `${large(crop)} ${byCrop('is', 'are')} still small: a cover on the stems rots them.`
    : `Seed of ${crop} goes in on ${day}: a cover would lie on it.`;
}

function treated({ caution, source: name, number, threshold, day }: Figures): string {
  const source = large(name);
  const from = day === '' ? '' : ` From ${day} on.`;
  switch (caution.row) {
    case 'not asked':
      return `Was ${source} ever treated: against weeds, moss, grubs, or with a feed that also weeds?`;
    case 'label forbids':
      return `${source} was treated, and the label forbids mulch.`;
    case 'label interval':
      return `${source} was treated ${plainDays(number)} before this was cut; its label asks ${String(threshold)}.${from}`;
    case 'label silent':
      if (caution.unit === 'mowings')
        return `${source} was treated: ${String(number)} of ${String(threshold)} mowings since are logged.`;
      return caution.unit === 'days'
        ? `${source} was treated ${plainDays(number)} before this was cut; a silent label asks for ${String(threshold)}.${from}`
        : `${source} was treated, and the day is not known.`;
    case 'label silent sensitive':
      return `${source} was treated this season: a trace can deform what grows here.`;
    case 'unknown lawn':
    case 'unknown lawn flowers':
      return `Nobody knows what was put on ${name}.`;
    case 'unknown source sensitive':
      return `${source} may carry weedkiller, and a trace can deform what grows here.`;
    case 'treated source':
      return `${source} was treated.`;
    default:
      return `Nobody knows what was put on ${name}: test it first.`;
  }
}

function seeds({ caution, source, day, depth, number, threshold, value }: Figures): string {
  if (caution.row === 'hay seeds')
    return 'Hay brings seeds of grass and weeds: some come up where it wears thin.';
  if (caution.row === 'hay seeds thin')
    return value('workedIn') === 1
      ? 'Hay brings seeds of grass and weeds: worked into the ground they are sown.'
      : `Hay brings seeds of grass and weeds: ${depth(number)} lets them grow, ${depth(threshold)} holds most down.`;
  return `${large(source)} had seed heads${day === '' ? '' : ` on ${day}`}: look again before laying.`;
}

function rawManure(figures: Figures): string {
  const { crop, byCrop, number, threshold, caution, value, dayOf } = figures;
  if (caution.row === 'manure burn')
    return `Fresh poultry manure is rich in ammonia: it burns ${crop} where ${byCrop('it stands', 'they stand')}.`;
  return `${large(crop)} ${byCrop('is', 'are')} picked ${plainDays(number)} after raw manure; ${String(threshold)} are asked ${
    caution.row === 'manure splashed' ? 'where food touches soil' : 'for what hangs clear'
  }. Pick from ${dayOf(value('pickFrom'))} on.`;
}

const hazardSentences: Readonly<Record<string, string>> = {
  'dog poison': 'can poison a dog that eats it, and smells good to it',
  'poisonous plants': 'holds poisonous plants: no mulch of it, and no burning',
  'painted wood': 'may be painted or treated wood',
  roadside: 'comes from beside a road or railway: dust, metals, sprays',
  'old house': 'comes from an old house’s drip line or an old orchard: lead and arsenic',
  mouldy: 'is dusty or mouldy: damp it, wear a mask',
  walnut: 'holds walnut leaves, which tomatoes do not bear',
  'diseased tops': 'holds diseased tops: not on the cold heap',
  'bought in': 'was brought in: look for jumping worms',
};

function safety({ caution, text, source }: Figures): string {
  if (caution.row === 'own well')
    return 'What washes out here may reach your well: infants should not drink over 10 mg/L of nitrate-N.';
  const what = text('material') || source;
  return `${large(what)} ${hazardSentences[caution.row] ?? 'is better kept off'}.`;
}

const sentences: Readonly<Record<CautionKind, (figures: Figures) => string>> = {
  'layer depth': layerDepth,
  'all cover': ({ depth, number, threshold }) =>
    `${depth(number)} lies on the bed: past ${depth(threshold)} rain and air hardly get through.`,
  'too soon': ({ number, value, dayOf }) =>
    `The layer of ${dayOf(value('laidOn'))} is still wet and ${percent(number)} of it still there: greens on it turn sour.`,
  room,
  'over-feeding': ({ caution, crop, byCrop, day, units }) =>
    overFeedingSentence(
      caution,
      { crop: large(crop), it: byCrop('it fills', 'they fill'), day },
      units,
    ),
  'season total': ({ nitrogen, number, threshold }) =>
    `${nitrogen(number)} of greens’ nitrogen laid this season; past ${nitrogen(threshold)} a bed takes no more.`,
  enough,
  legume,
  short,
  'tied up': ({ nitrogen, number, day, text }) =>
    `${text('what') === '' ? 'What rots in the soil' : `${text('what')}, rotting in the soil,`} has taken ${nitrogen(number)} from it and gives it back ${day === '' ? 'after this season' : `by about ${day}`}.`,
  'washing out': washingOut,
  seedlings,
  'cold soil': ({ crop, byCrop, degrees, number, threshold, day }) =>
    `The soil has ${degrees(number)} and ${crop} ${byCrop('wants', 'want')} ${degrees(threshold)}${day === '' ? '' : `, about ${day}`}: a cover keeps it cold.`,
  'seed fly': ({ crop, byCrop, number }) =>
    `Fresh greens in cold wet soil ${plainDays(number)} before ${crop} ${byCrop('is', 'are')} sown draw the seed fly.`,
  slugs: ({ caution, rain, number, degrees, value, day }) =>
    caution.row === 'slugs seen'
      ? `Slugs sat under the board on ${day}, and the cover shelters them.`
      : `Slug weather: ${rain(number)} of rain in a week and nights of ${degrees(value('nightCelsius'))}.`,
  'sour mat': ({ day }) => `The cover smelt sour on ${day}: it gets no air.`,
  'dry soil': ({ number, units }) =>
    `The soil has ${percent(number)} of its water left, and a dry cover drinks the first ${estimate(3, units.rain)} to ${estimateWithUnit(8, units.rain)} of rain.`,
  'ammonia under glass': ({ day }) =>
    `Fresh greens under glass give off ammonia that scorches leaves, till about ${day}.`,
  frost: ({ crop, day }) =>
    `Till the last frost, about ${day}, a cover makes clear nights colder for ${crop}.`,
  runners: ({ source }) => `${large(source)} has creeping grass: cut pieces root on a bed.`,
  'seed heads': seeds,
  'compost phosphorus': ({ depth, number, threshold }) =>
    `${depth(number)} of compost this season: past ${depth(threshold)} phosphorus builds up unseen.`,
  'treated lawn': treated,
  'treated source': treated,
  'raw manure': rawManure,
  fouled: ({ source }) =>
    `${large(source)} is fouled by dogs, cats or geese: not where food is eaten raw.`,
  'salad nitrate': ({ caution, crop, byCrop, number, threshold }) =>
    caution.row === 'leaf nitrate'
      ? `${twoFigures(number)} mg/kg under ${crop}: past ${twoFigures(threshold)} it only gathers in the leaves.`
      : `${large(crop)} ${byCrop('is', 'are')} cleared in ${plainDays(number)}: greens now only put nitrate in the leaves.`,
  'frost kill': ({ crop, byCrop, degrees, number, threshold, day }) =>
    `${degrees(number)} in the night of ${day}: ${crop} ${byCrop('dies', 'die')} at about ${degrees(threshold)}. Still alive?`,
  'share over one': ({ number }) =>
    `Plantings claim ${percent(number)} of the bed, more than there is.`,
  overdue: ({ crop, byCrop, day }) =>
    `${large(crop)} ${byCrop('was', 'were')} to end about ${day} and ${byCrop('needs', 'need')} nothing more. Still standing?`,
  'outside validity': ({ number, threshold, text }) =>
    text('what') === 'wood'
      ? 'Wood in the ground holds nitrogen for years. Its pace was taken from ground wood in jars; pieces are slower.'
      : `Carbon to nitrogen is ${twoFigures(number)}; the sums of rotting were tested ${number < threshold ? 'from' : 'up to'} ${twoFigures(threshold)}.`,
  safety,
};

/** One line for a caution: the number and the reason. */
export const cautionSentence = (caution: Caution, units: UnitSet): string =>
  sentences[caution.kind](figuresOf(caution, units));
