import type {
  BedLedger,
  CameIn,
  Holding,
  Moved,
  SupplySource,
  WentOut,
} from '../../core/season/ledger';
import { coefficientRows } from '../../tables/coefficients';
import { accountAmount } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { cameInWords, holdingWords, wentOutWords } from '../../words/ledgerWords';
import { seasonLineWords } from '../../words/seasonChart';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { rowSource } from './sourcesOf';

type LineKey = Holding | CameIn | WentOut | Moved;

const rows = coefficientRows;

/** How each line is made, and the numbers that weigh most in it. */
const lines: Readonly<Record<LineKey, readonly [formula: string, ...sources: string[]]>> = {
  'ready in the soil': [
    'What came free or was washed in − what was taken up, held back, washed out or lost, day by day.',
    rowSource('What the soil gives of its own', rows.soilReleaseRate),
  ],
  'in the cover': ['All nitrogen in what lies on top, rotten or not, and what is free in it.'],
  'rotting in the soil': ['What was dug in, roots and stubble, and what rots them.'],
  'in compost': [
    'Of compost, manure and meals what will still come free.',
    rowSource('Of compost comes free', rows.slowRate),
  ],
  'in young humus': [
    'What earlier seasons’ rotting left behind.',
    rowSource('Of young humus comes free', rows.youngHumusRate),
  ],
  'in the crop': ['Taken up + gathered from the air − picked, cleared and left lying.'],
  'in the soil itself': ['What of compost became soil − what the soil released.'],
  'laid on': ['Dry weight of every layer laid on × its share of nitrogen.'],
  'dug in': ['Dry weight of all that was dug or hoed in × its share of nitrogen.'],
  'compost and manure': ['Dry weight of compost, manure and meals × their share of nitrogen.'],
  rain: [
    'The rain of each day × what rain brings in a year, spread over its rain.',
    rowSource('Nitrogen in a year’s rain', rows.rainNitrogenPerYear),
  ],
  'fixed from the air': [
    'Day by day: what a legume wants × its share from the air, less as nitrate rises.',
  ],
  'reached by deeper roots': [
    'What stood in the soil between last season’s deepest root and this one’s.',
    rowSource('Nitrate there at a first season’s start', rows.startingMineralTop),
  ],
  picked: ['Weight picked × nitrogen of the picked part; what nobody wrote down as usual.'],
  'cleared away': ['What stood in the plants on the day they were taken away.'],
  'raked off': ['What lay on the bed that evening × the share raked off.'],
  'lost to the air': [
    'A share promised at laying, by nitrogen, depth and how just cut, that leaves by warmth and wetness.',
    rowSource('What of it is left if limp', rows.ammoniaLimp),
  ],
  'washed out': [
    'Day by day and layer by layer: nitrate × (1 − e to the power of − water that drains ÷ water held).',
    'A well-mixed layer: so by definition; how far soil is one is our estimate.',
  ],
  'lost from wet soil': [
    'A share of the nitrate on days on which more drains than a line.',
    rowSource('The share', rows.denitrifiedShare),
  ],
  'left below shallower roots': ['What stood in the soil below this season’s deepest root.'],
  'released by the soil': [
    'The soil’s own store × a daily rate by warmth and moisture.',
    rowSource('The rate', rows.soilReleaseRate),
  ],
  'released by last year’s humus': [
    'Young humus × a daily rate by warmth and moisture.',
    rowSource('The rate', rows.youngHumusRate),
  ],
  'released by compost': [
    'Its slow part × a daily rate by warmth and moisture.',
    rowSource('The rate', rows.slowRate),
  ],
  'released by what was dug in': [
    'What microbes free as they rot it, day by day, by its carbon to nitrogen.',
    rowSource('Carbon that microbes build in', rows.assimilation),
  ],
  'washed in from the cover': [
    'What is free in the cover × a share by how much rain goes through it.',
    rowSource('The share, at least', rows.washBase),
  ],
  'held back by browns': [
    'What microbes take from the soil to rot what has too little nitrogen of its own.',
    rowSource('Carbon that microbes build in', rows.assimilation),
  ],
  'taken up by the crop': [
    'Each day what it wants along its curve, with arrears; at most a share of what is in reach.',
    rowSource('Of what is ready, roots take in a day', rows.uptakeShare),
  ],
  'cover dug in': ['What lay on top × the share that was dug in.'],
  'left by the crop': ['Nitrogen in roots, and in tops that were not taken away.'],
  'turned to humus at the season’s end': ['What of the rotten is humus on the last evening.'],
  'compost turned to soil': ['The part of compost that gives nothing this year or next.'],
};

const supplyLines: Readonly<Record<SupplySource, LineKey>> = {
  soil: 'released by the soil',
  'last year': 'released by last year’s humus',
  compost: 'released by compost',
  'dug in': 'released by what was dug in',
  cover: 'washed in from the cover',
  rain: 'rain',
  air: 'fixed from the air',
};

/** What stands behind all that came within reach of the roots from a source up to today. */
export function supplyWhy(source: SupplySource): Why {
  const [formula, ...sources] = lines[supplyLines[source]];
  const words = source === 'air' ? 'the air' : seasonLineWords[source];
  return {
    of: `From ${words}, up to today.`,
    formula,
    inputs: [],
    range: null,
    sources: [whyWords.model, ...sources],
  };
}

/**
 * What stands behind a line of a bed's ledger, or a sum of lines.
 *
 * @param line a line's own key, or the words of a sum
 * @param figures as they stand in the line
 */
export function ledgerLineWhy(
  ledger: BedLedger,
  line: string,
  words: string,
  figures: readonly [perArea: string, onBed: string],
  units: ChartUnits,
): Why {
  const own = Object.hasOwn(lines, line) ? lines[line as LineKey] : null;
  const [perArea, onBed] = figures;
  const inputs = [
    ['On each square of the bed', `${perArea} ${units.nitrogen.short}`],
    ['On the whole bed', `${onBed} ${units.nitrogenOnBed.short}`],
  ] as const;
  const of = `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  if (own)
    return { of, formula: own[0], inputs, range: null, sources: [whyWords.model, ...own.slice(1)] };
  const isSides = words === line;
  return {
    of,
    formula: isSides
      ? 'The sums of the two parts above it; both sides must come out the same.'
      : 'The lines above it, added up before they are rounded.',
    inputs: [
      ...inputs,
      [
        'The two sides differ by',
        `${accountAmount(ledger.difference, units.nitrogen)} ${units.nitrogen.short}`,
      ],
    ],
    range: null,
    sources: [whyWords.model, whyWords.balance],
  };
}

/**
 * What stands behind a place or a stream of the ledger's drawing.
 *
 * @param key a place, or a stream's two ends: "from > to"
 */
export function wayWhy(key: string): Why {
  // of a stream the end outside the bed has a line of its own
  const own = key.split(' > ').find((end) => !Object.hasOwn(holdingWords, end)) ?? key;
  const [formula, ...sources] = Object.hasOwn(lines, own)
    ? lines[own as LineKey]
    : ['All that went from the one place to the other, day by day, added up.'];
  return {
    of: Object.hasOwn(holdingWords, key)
      ? 'What is there, came and went on.'
      : 'What went this way, and its share.',
    formula,
    inputs: [],
    range: null,
    sources: [whyWords.model, ...sources, whyWords.balance],
  };
}

/** What was on hand, came in and went out, line by line. */
export function ledgerTotalsWhys(ledger: BedLedger, units: ChartUnits): readonly Why[] {
  const told = <Key extends LineKey>(
    list: readonly { readonly key: Key; readonly gM2: number }[],
    words: Readonly<Record<Key, string>>,
  ) =>
    list
      .filter(({ gM2 }) => Math.abs(gM2) >= 0.005)
      .map(
        ({ key, gM2 }) =>
          [words[key], `${accountAmount(gM2, units.nitrogen)} ${units.nitrogen.short}`] as const,
      );
  const common = { range: null, sources: [whyWords.model, whyWords.balance] };
  return [
    {
      of: 'On hand at the start.',
      formula: 'All that the bed held on that morning, its own store apart.',
      inputs: told(ledger.opening, holdingWords),
      ...common,
    },
    {
      of: 'Came in.',
      formula: 'All that crossed the bed’s edge inwards.',
      inputs: told(ledger.cameIn, cameInWords),
      ...common,
    },
    {
      of: 'Went out.',
      formula: 'All that crossed the bed’s edge outwards.',
      inputs: told(ledger.wentOut, wentOutWords),
      ...common,
    },
  ];
}
