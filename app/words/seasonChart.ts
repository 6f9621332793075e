import type { DayNumber } from '../core/days';
import type { SupplySource } from '../core/season/ledger';
import type { BedVerdict, NitrogenState } from '../core/season/verdict';
import { amountWithUnit, dayWord, listed } from './chartFormat';
import type { ChartUnits } from './chartUnits';

/** Names of the bands and lines, as they stand at their ends and head the table's columns. */
export const seasonLineWords: Readonly<
  Record<'start' | SupplySource | 'demand' | 'got' | 'gone', string>
> = {
  start: 'there at the start',
  soil: 'the soil itself',
  'last year': 'last year’s humus',
  compost: 'compost',
  'dug in': 'dug-in material',
  cover: 'the cover',
  rain: 'rain',
  air: 'fixed from the air',
  demand: 'could use',
  got: 'has got',
  gone: 'lost or held back',
};

export const seasonPanelWords = {
  supply: 'What it can use, and what it gets',
  belowNought: 'below 0: lost or held back',
  nitrate: 'Nitrogen ready in the top 30 cm of soil',
  state: 'State, as it was known on the day',
  plantings: 'In the ground',
  layers: 'Laid on or dug in',
  noPlanting: 'nothing on these days',
  noLayer: 'nothing on these days',
  rain: 'Rain and watering',
  imagined: 'imagined from here',
  today: 'today',
  enough: 'enough for the crop',
  test: 'soil test',
} as const;

export const dayKindWords = {
  measured: 'measured weather',
  filled: 'weather filled in from normal months',
  imagined: 'imagined weather',
} as const;

export const stageSentences = {
  flower: 'first flower',
  pick: 'first pick',
  cleared: 'cleared',
} as const;

const stateSentences: Readonly<Record<NitrogenState, string>> = {
  'over-fed': 'The bed is over-fed: more is on its way than the crop can use.',
  'enough to the end': 'There is enough to the end of this crop.',
  'enough for now': 'There is enough for now.',
  short: 'The crop is short of nitrogen, or soon will be.',
  'about right': 'Nitrogen is about right.',
  'nothing planted': 'Nothing is planted.',
};

export interface SeasonFindingFacts {
  readonly today: DayNumber;
  readonly verdict: Pick<BedVerdict, 'state' | 'turnsOn'>;
  /** up to today, g/m2 */
  readonly couldUse: number;
  readonly got: number;
  /** to the end of the season */
  readonly couldUseToEnd: number;
  /** g/m2 by source up to today, without what was there at the start */
  readonly bySource: Readonly<Record<SupplySource, number>>;
}

/** The season chart in two or three sentences, for whoever cannot or need not read the drawing. */
export function seasonFinding(facts: SeasonFindingFacts, units: ChartUnits): string {
  const grams = (value: number) => amountWithUnit(value, units.nitrogen);
  const sentences = [stateSentences[facts.verdict.state]];
  if (facts.verdict.state === 'short' && facts.verdict.turnsOn !== null)
    sentences[0] = `The crop goes short from about ${dayWord(facts.verdict.turnsOn, units)}.`;
  if (facts.couldUse > 0.05)
    sentences.push(
      `By ${dayWord(facts.today, units)} the plants could use ${grams(facts.couldUse)} and have got ${grams(facts.got)}; over the whole season they could use ${grams(facts.couldUseToEnd)}.`,
    );
  else if (facts.couldUseToEnd > 0.05)
    sentences.push(
      `Over the whole season the plants could use ${grams(facts.couldUseToEnd)}, nearly all of it still to come.`,
    );
  const given = (Object.entries(facts.bySource) as [SupplySource, number][])
    .filter(([, value]) => value > 0.05)
    .toSorted((a, b) => b[1] - a[1])
    .slice(0, 2)
    .map(
      ([source, value]) =>
        `${source === 'air' ? 'the air' : seasonLineWords[source]} (${grams(value)})`,
    );
  if (given.length > 0) sentences.push(`Most of what the bed got came from ${listed(given)}.`);
  return sentences.join(' ');
}
