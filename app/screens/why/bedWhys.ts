import { standingPlantings } from '../../core/season/plantingAccount';
import { at } from '../../core/season/seasonAccount';
import type { LineId } from '../../core/season/limits';
import type { Garden } from '../../document/schema';
import { cropById, type CropValues } from '../../document/cropValues';
import type { BedDraws, BedResults } from '../../store/contract';
import { weedControl } from '../../tables/coverBenefits';
import { limits, thresholdRow } from '../../tables/thresholds';
import { rootShares, wantedShares } from '../../tables/wanted';
import { percent } from '../../words/chartFormat';
import { twoFigures } from '../../words/figures';
import { isSeldom, likelyPercent, likelyTimes, seldomReason } from '../../words/imaginedWords';
import { rangeOdds } from '../../words/ranges';
import { soilWeightWords } from '../../words/chartUnits';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { needMet } from '../needMet';
import type { Shown } from '../shown';
import { bedGives, rootsTake } from './notInSum';
import { lineSource, rowSource } from './sourcesOf';

/** Everything behind the figures of one bed. */
export interface BedWhyFacts {
  readonly garden: Garden;
  readonly results: BedResults;
  readonly draws: BedDraws | undefined;
  readonly shown: Shown;
}

const overFedRow: Readonly<Partial<Record<string, LineId>>> = {
  'tender storage': 'over-fed tender storage',
  storage: 'over-fed storage',
  fruit: 'over-fed fruit',
  flower: 'over-fed flower',
  leaf: 'over-fed leaf',
  head: 'over-fed head',
  perennial: 'over-fed perennial',
};

const perArea =
  ({ shown }: BedWhyFacts) =>
  (gramsPerM2: number): string =>
    shown.estimate(gramsPerM2, shown.units.nitrogenPerArea);

const odds = (words: string): string => `${words}, ${rangeOdds}`;

/** Sources of what crops need, crop by crop; one that grows twice is told once. */
export function cropNeedSources(crops: readonly CropValues[]): readonly string[] {
  const rows = [...new Map(crops.map((row) => [row.id, row])).values()];
  if (rows.length === 0) return [];
  return [
    ...rows.map((row) => rowSource(`${row.name}, in tops and crop at a good yield`, row.uptake)),
    rowSource(
      'Roots',
      rows.every(({ legume }) => legume !== null) ? rootShares.legume : rootShares.usual,
    ),
    rowSource('The usual pick', wantedShares.usual),
  ];
}

/** Sources of the need of what stands there today. */
const needSources = ({ garden, results: { input } }: BedWhyFacts): readonly string[] =>
  cropNeedSources(
    standingPlantings(input, input.today).flatMap(({ crop }) => cropById(garden, crop.id) ?? []),
  );

/** All that the crops can use from first day to last. */
export function needWhy(facts: BedWhyFacts): Why {
  const { results, garden } = facts;
  const { input } = results;
  const grams = perArea(facts);
  return {
    of: 'All the crop can use.',
    formula:
      'What stands in the whole plant at a good yield, roots counted in, × what you want of that yield × its share of the bed.',
    inputs: standingPlantings(input, input.today).map(({ crop, share }) => [
      cropById(garden, crop.id)?.name ?? crop.id,
      `${grams(crop.need)} × ${percent(share)} of the bed`,
    ]),
    range: null,
    sources: needSources(facts),
  };
}

/** In hand and to come, over all it can use: the sum behind the state. */
export function ratioWhy(facts: BedWhyFacts): Why {
  const { results, draws, shown } = facts;
  const { verdict } = results;
  const grams = perArea(facts);
  const isLegume = verdict.excessClass === 'legume';
  const line = overFedRow[verdict.excessClass ?? ''];
  const met = needMet(results);
  return {
    of: isLegume
      ? 'In hand and to come, over what it asks of the soil.'
      : 'In hand and to come, over all it can use.',
    formula: `(Taken up + ready + to come free − to be held back) ÷ ${isLegume ? 'what it asks of the soil, what it will gather from the air left out' : 'all it can use from first day to last'}.`,
    inputs: [
      ['Taken up so far, the picked part included', grams(verdict.inCrop)],
      ['Ready where roots reach or will reach', grams(verdict.inReach)],
      ['Expected to come free to the end', grams(verdict.expectedRelease)],
      ['Expected to be held back by browns', grams(verdict.expectedTieUp)],
      [isLegume ? 'What it asks of the soil' : 'All it can use', grams(verdict.need)],
      ...(verdict.overFedLine === null
        ? []
        : [['Over-fed past', twoFigures(verdict.overFedLine)] as const]),
      [`Nitrate in the top ${shown.chart.topSoil}`, `${twoFigures(verdict.nitrateMgPerKg)} mg/kg`],
      ...(verdict.turnsOn === null ? [] : [['Turns on', shown.dayWord(verdict.turnsOn)] as const]),
      ...(met === null ? [] : [['Share of what it could use that it gets', percent(met)] as const]),
    ],
    range: draws?.answer.ratio ? odds(likelyTimes(draws.answer.ratio)) : null,
    sources: [
      whyWords.model,
      ...(draws && isSeldom(draws.answer.states, verdict.state) ? [seldomReason] : []),
      ...needSources(facts),
      ...bedGives(facts.garden, facts.results.input.bedId),
      ...(line ? [lineSource('The line of over-fed', line)] : []),
    ],
  };
}

/** The line past which a bed counts as over-fed. */
export function overFedWhy({ results }: BedWhyFacts): Why | null {
  const { verdict } = results;
  const line = overFedRow[verdict.excessClass ?? ''];
  if (!line || verdict.overFedLine === null) return null;
  const row = thresholdRow(line);
  return {
    of: 'The line of over-fed.',
    formula:
      'Set for each kind of crop by what too much does to it; several crops weigh by their need.',
    inputs: [
      ['Over-fed past', twoFigures(row.caution?.typical ?? verdict.overFedLine)],
      ...(row.stop ? [['Strongly past', twoFigures(row.stop.typical)] as const] : []),
    ],
    range: null,
    sources: [lineSource('The line', line)],
  };
}

/** Share of what is still wanted that the days to come give. */
export function forecastWhy(facts: BedWhyFacts): Why {
  const { results } = facts;
  const { verdict } = results;
  const grams = perArea(facts);
  return {
    of: 'What it gets of what it could still use.',
    formula:
      'What roots take on the days to come, and what they gather from the air, ÷ what the crop wants on those days; more than it wants counts as all.',
    inputs: [
      ['Ready where roots reach or will reach', grams(verdict.inReach)],
      ['Expected to come free to the end', grams(verdict.expectedRelease)],
      ['Of all it can use still open', percent(verdict.openShare)],
      ['Counts as met from', percent(limits.numbers['forecast meets'])],
    ],
    range: facts.draws
      ? odds(likelyPercent(facts.draws.answer.needMet)) + ' of all it could use'
      : null,
    sources: [whyWords.model, ...needSources(facts), ...rootsTake()],
  };
}

/** Nitrate of the top layer in the laboratory's unit. */
export function nitrateWhy(facts: BedWhyFacts): Why {
  const { results, garden, shown, draws } = facts;
  const { input, season, verdict } = results;
  const grams = perArea(facts);
  const standing = standingPlantings(input, input.today);
  const crops = standing.flatMap(({ crop }) => cropById(garden, crop.id) ?? []);
  const week = draws?.answer.nitrateDays.findLastIndex((day) => day <= input.today) ?? -1;
  const band = draws?.answer.nitrate[week];
  return {
    of: `Nitrate in the top ${shown.chart.topSoil}.`,
    formula: `Nitrogen ready in the top ${shown.chart.topSoil} ÷ the weight of that soil.`,
    inputs: [
      ['Ready there', grams(at(season.pools.mineralTop, season, input.today))],
      ['The soil weighs', soilWeightWords(input.soil.bulkDensityKgPerL, shown.chart)],
      ['Comes to', `${twoFigures(verdict.nitrateMgPerKg)} mg/kg`],
    ],
    range: band ? odds(`${twoFigures(band.low)} to ${twoFigures(band.high)} mg/kg`) : null,
    sources: [
      whyWords.model,
      ...crops.map((row) =>
        rowSource(`Enough for ${row.name.toLowerCase()} from`, row.enoughNitrate),
      ),
      ...bedGives(facts.garden, facts.results.input.bedId),
    ],
  };
}

/** What is ready where roots reach or will reach. */
export function readyWhy(facts: BedWhyFacts): Why {
  const { results, shown } = facts;
  const { input, season } = results;
  const grams = perArea(facts);
  const pool = (name: 'mineralTop' | 'mineralLower') =>
    grams(at(season.pools[name], season, input.today));
  return {
    of: 'Ready in the soil.',
    formula:
      'What is ready in the top layer, and in the part below it that roots reach or will reach.',
    inputs: [
      [`In the top ${shown.chart.topSoil}`, pool('mineralTop')],
      ['Below', pool('mineralLower')],
      ['Of that within reach', percent(at(season.rootReach, season, input.today))],
    ],
    range: null,
    sources: [whyWords.model, ...bedGives(facts.garden, facts.results.input.bedId)],
  };
}

/** Room for greens to the end of the season. */
export function roomWhy(
  facts: BedWhyFacts,
  areaM2: number,
  bag: { readonly one: string; readonly grams: number } | null,
): Why {
  const { results, shown } = facts;
  const { verdict } = results;
  const grams = perArea(facts);
  const share = thresholdRow('room share').number;
  const limit = limits.numbers['room season limit'];
  return {
    of: 'Room for greens.',
    formula: `(${twoFigures(limits.numbers['room aim'])} × all it can use − in hand and to come) ÷ the share of a layer that counts this season; never more than ${grams(limit)} less what was laid.`,
    inputs: [
      ['All it can use', grams(verdict.need)],
      [
        'In hand and to come',
        grams(verdict.inCrop + verdict.inReach + verdict.expectedRelease - verdict.expectedTieUp),
      ],
      ['Of a layer counts', share ? percent(share.typical) : '–'],
      ['Laid this season', grams(verdict.laidThisSeason)],
      ['Room', grams(verdict.room ?? 0)],
      ['On the whole bed', shown.estimate((verdict.room ?? 0) * areaM2, shown.units.nitrogen)],
      ...(bag === null
        ? []
        : [
            [
              `In one ${bag.one} of clippings`,
              shown.estimate(bag.grams, shown.units.nitrogen),
            ] as const,
          ]),
    ],
    range: null,
    sources: [
      lineSource('The share', 'room share'),
      lineSource('The aim', 'room aim'),
      ...needSources(facts),
    ],
  };
}

/** How deep the cover lies today. */
export function coverDepthWhy({ results, shown }: BedWhyFacts): Why {
  const { season, input } = results;
  const depth = (millimetres: number) => shown.estimate(millimetres, shown.units.depth);
  const ends = results.season.layers
    .map((layer) => at(layer.depth, season, input.today))
    .filter((millimetres) => millimetres >= 0.5);
  return {
    of: 'How deep it lies today.',
    formula:
      'Layer by layer: its dry weight when laid × what is left of it ÷ what a heap of it weighs dry once settled.',
    inputs: [
      ['Layers that still lie', String(ends.length)],
      [
        'Dry weight that still lies',
        `${twoFigures(at(season.coverDryKg, season, input.today))} kg/m²`,
      ],
      ['Ground hidden', percent(at(season.coverFraction, season, input.today))],
      ['Together', depth(at(season.coverDepth, season, input.today))],
    ],
    range: null,
    sources: [
      whyWords.model,
      rowSource(
        'Small weed seeds stay down from',
        weedControl['stops small seeds while topped up'],
      ),
      rowSource('Most weeds from seed from', weedControl['stops annuals']),
    ],
  };
}
