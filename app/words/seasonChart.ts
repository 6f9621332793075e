import type { DayNumber } from '../core/days';
import type { SupplySource } from '../core/season/ledger';
import type { BedVerdict, NitrogenState } from '../core/season/verdict';
import { amount, amountWithUnit, dayWord, listed } from './chartFormat';
import type { ChartUnits } from './chartUnits';

/** Names of the bands and lines, as they stand at their ends and head the table's columns. */
export const seasonLineWords: Readonly<
  Record<'start' | SupplySource | 'demand' | 'got' | 'usable' | 'gone', string>
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
  usable: 'there for the crop',
  gone: 'lost or held back',
};

export const seasonPanelWords = {
  supply: 'What it can use, and what it gets',
  state: 'State, as it was known on the day',
  plantings: 'In the ground',
  layers: 'Laid on or dug in',
  layersHow: 'up: laid; down: dug or hoed in',
  noPlanting: 'nothing on these days',
  noLayer: 'nothing on these days',
  rain: 'Rain and watering',
  warmth: 'Warmth of air and soil',
  imagined: 'imagined from here',
  today: 'today',
  test: 'soil test',
} as const;

/** "Nitrogen ready in the top 30 cm": short enough for the narrowest drawing. */
export const nitrateTitle = (units: Pick<ChartUnits, 'topSoil'>): string =>
  `Nitrogen ready in the top ${units.topSoil}`;

/** Lines of the key beside the lower panels. */
export const keyWords = {
  ready: 'ready',
  likely: '8 seasons of 10',
  from: 'enough from',
  past: 'ample from',
  rain: 'rain',
  watered: 'watered',
  air: 'air',
  soil: 'soil',
} as const;

/** A laboratory's number beside its mark. */
export const testWords = (mgPerKg: number): string =>
  `${seasonPanelWords.test} ${Math.round(mgPerKg)} mg/kg`;

/** What a band of most imagined seasons is taken for, and is not. */
export const bandMeaning =
  'The true course runs somewhere within that range; it is no swing from one day to the next.';

/** How the upper panel is to be read, for whoever meets it first. */
export const howToRead = (since: string): string =>
  `Upwards: all the nitrogen that came within reach of the roots ${since}, by where it came from. ` +
  'Downwards: what of it was lost, or is held back for a while by browns and cover crops. ' +
  'The thin line is what remains for the crop, the thick one what the crop could use, the dotted one what it has taken. ' +
  'Thin far above thick: too much. Dotted under thick: hungry. ' +
  'In the next panel the line is the likely course, and the pale band holds 8 imagined seasons of 10. ' +
  `${bandMeaning} ` +
  'On a crop’s stem a seed, a star, a fruit and two strokes are its start, first flower, first pick and clearing.';

export const dayKindWords = {
  measured: 'measured weather',
  own: 'weather by your own gauge or thermometer',
  'own and record': 'weather of the record, bettered by your own readings',
  record: 'weather of the record',
  downloaded: 'weather downloaded for the place',
  filled: 'weather filled in from normal months',
  imagined: 'imagined weather',
} as const;

/** Marks on a planting's stem, in the key. */
export const stageWords = {
  start: 'sown or planted',
  flower: 'first flower',
  pick: 'first pick',
  cleared: 'cleared',
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
  readonly gotToEnd: number;
  /** where what is ready in the top layer lies in 8 imagined seasons of 10 on the last evening */
  readonly likelyAtEnd?: {
    readonly day: DayNumber;
    readonly low: number;
    readonly high: number;
  } | null;
  /** g/m2 by source up to today, without what was there at the start */
  readonly bySource: Readonly<Record<SupplySource, number>>;
}

/** A sentence on what the drawing shows besides, and what its figures are of. */
export type SeasonMore = { readonly says: string } & (
  | { readonly about: 'taken' | 'likely at the end' }
  | { readonly about: 'sources'; readonly sources: readonly SupplySource[] }
);

/** The season chart in words, for whoever cannot or need not read the drawing: what matters, and the rest. */
export interface SeasonFinding {
  readonly first: string;
  readonly more: readonly SeasonMore[];
}

export function seasonFinding(facts: SeasonFindingFacts, units: ChartUnits): SeasonFinding {
  const grams = (value: number) => amountWithUnit(value, units.nitrogen);
  const sentences = [stateSentences[facts.verdict.state]];
  if (facts.verdict.state === 'short' && facts.verdict.turnsOn !== null)
    sentences[0] = `The crop goes short from about ${dayWord(facts.verdict.turnsOn, units)}.`;
  if (facts.couldUse > 0.05)
    sentences.push(
      `By ${dayWord(facts.today, units)} the crops could use ${grams(facts.couldUse)} and have got ${facts.got < 0.05 ? 'next to nothing' : grams(facts.got)}; to the season’s end, ${grams(facts.couldUseToEnd)}.`,
    );
  else if (facts.couldUseToEnd > 0.05)
    sentences.push(
      `Over the whole season the crops could use ${grams(facts.couldUseToEnd)}, nearly all of it still to come.`,
    );
  const more: SeasonMore[] = [];
  if (facts.gotToEnd > facts.couldUseToEnd * 1.05 && facts.gotToEnd > facts.couldUseToEnd + 0.2)
    more.push({
      about: 'taken',
      says: `Where much is ready they take more than they can use: ${grams(facts.gotToEnd)} by the end.`,
    });
  const given = (Object.entries(facts.bySource) as [SupplySource, number][])
    .filter(([, value]) => value > 0.05)
    .toSorted((a, b) => b[1] - a[1])
    .slice(0, 2);
  const told = given.map(
    ([source, value]) =>
      `${source === 'air' ? 'the air' : seasonLineWords[source]} (${grams(value)})`,
  );
  if (facts.likelyAtEnd)
    more.push({
      about: 'likely at the end',
      says: `On ${dayWord(facts.likelyAtEnd.day, units)} the top ${units.topSoil} will hold ${amount(facts.likelyAtEnd.low, units.nitrogen)} to ${amountWithUnit(facts.likelyAtEnd.high, units.nitrogen)} in 8 imagined seasons of 10.`,
    });
  if (given.length > 0)
    more.push({
      about: 'sources',
      sources: given.map(([source]) => source),
      says: `Most of what the bed got came from ${listed(told)}.`,
    });
  return { first: sentences.join(' '), more };
}
