import type { UnitSet } from '../amounts/unitSystem';
import type { FlowerWeather } from '../core/season/flowerWeather';
import type { ExcessClass } from '../core/season/input';
import type { BedVerdict, CoverState, NitrogenState, Weight } from '../core/season/verdict';
import { percent } from './chartFormat';
import { dayNear, dayStyle } from './dates';
import { estimateWithUnit, timesWords, twoFigures } from './figures';

/** The word of a state; a bed far past its line is strongly over-fed. */
export const nitrogenStateWords = (state: NitrogenState, strongly = false): string =>
  state === 'over-fed' && strongly ? 'strongly over-fed' : state;

export const coverStateWords = (state: CoverState): string => state;

const nitrogenMeanings: Readonly<Record<NitrogenState, string>> = {
  'over-fed':
    'Far more is in hand and on its way than the crop can use: leaf grows at the cost of the rest.',
  'enough to the end': 'What is there and still to come lasts to the end of the crop.',
  'enough for now':
    'The soil holds all the crop can take up: wait, and look again on the day shown.',
  short: 'Within four weeks the crop wants more than it can get.',
  'about right':
    'No shortage within four weeks, and not fed past what the crop can use; later it may want more.',
  'nothing planted': 'Nobody is there to use it; a rich empty bed loses to the rain.',
};
export const nitrogenStateMeaning = (state: NitrogenState): string => nitrogenMeanings[state];

const coverMeanings: Readonly<Record<CoverState, string>> = {
  bare: 'Less than a third of the ground is hidden: it dries, crusts and grows weeds.',
  thin: 'Less than two thirds of the ground is hidden.',
  good: 'The ground is covered.',
  'too deep': 'Rain and air hardly get through.',
};
export const coverStateMeaning = (state: CoverState): string => coverMeanings[state];

const weightMeanings: Readonly<Record<Weight, string>> = {
  note: 'Worth knowing; go on.',
  caution: 'There is a reason to do it another way.',
  stop: 'Do not, unless you say so a second time.',
};
export const weightMeaning = (weight: Weight): string => weightMeanings[weight];

/** What too much does, by class: mild where the evidence is thin. */
export const excessHarm: Readonly<Record<ExcessClass, string>> = {
  'tender storage': 'it grows tops in place of roots',
  storage: 'it grows tops, and the crop keeps badly',
  fruit: 'it grows leaf first, and fruit comes late',
  flower: 'it is more than the flowers can use',
  leaf: 'nitrate gathers in the leaves',
  head: 'nitrate gathers in the leaves',
  perennial: 'it grows leaf and runners in place of fruit',
  legume: 'they stop making their own',
  cover: 'the rest goes to the rain',
};

/**
 * What else keeps flowers from setting, when the weather of the fortnight did; else nothing.
 *
 * @returns a sentence that begins with a space, or ''
 */
export function otherCauses(weather: Partial<FlowerWeather>, units: UnitSet): string {
  const degrees = (celsius: number): string => estimateWithUnit(celsius, units.temperature);
  const causes = [
    (weather.hotDays ?? 0) > 0 ? `heat over ${degrees(weather.hotAbove ?? 0)}` : '',
    (weather.hotNights ?? 0) > 0 ? 'hot nights' : '',
    (weather.coldNights ?? 0) > 0 ? 'cold nights' : '',
    (weather.dryDays ?? 0) > 0 ? 'dry roots' : '',
  ].filter((cause) => cause !== '');
  if (causes.length === 0) return '';
  return ` The fortnight’s ${causes.join(' and ')} can keep fruit from setting too.`;
}

const times = (ratio: number | null): string => timesWords(ratio ?? 0);

/** More about a verdict than it holds itself. */
export interface StateSurroundings {
  readonly today: number;
  /** weather that keeps flowers from setting, where it matters */
  readonly weather?: FlowerWeather;
  /** nothing but this crop stands there, and it is past its end */
  readonly finished?: { readonly crop: string; readonly since: number } | null;
}

/** What a bed is called whose crop is past its end; the mark is that of a bed with nothing planted. */
export const finishedWord = 'finished?';

/** The state of a bed in one line: the word, the number, the reason, the day. */
export function stateSentence(
  verdict: BedVerdict,
  units: UnitSet,
  { today, weather, finished }: StateSurroundings,
): string {
  const day = (one: number | null): string =>
    one === null ? '' : dayNear(one, today, dayStyle(units.system));
  const isLegume = verdict.excessClass === 'legume';
  const wanted = isLegume ? 'what it asks of the soil' : 'what the crop can use';
  const past = `In hand and to come: ${times(verdict.ratio)} ${wanted}.`;
  const was = verdict.wasShortOn === null ? '' : ` It was short from ${day(verdict.wasShortOn)}.`;
  if (finished) {
    const name = finished.crop.charAt(0).toUpperCase() + finished.crop.slice(1).toLowerCase();
    return `${name}: by the calendar over since ${day(finished.since)}, wanting nothing more. Still standing? Say when it was cleared, or when it will be.`;
  }
  switch (verdict.state) {
    case 'over-fed': {
      const excess = verdict.excessClass ?? 'storage';
      return `${past} Past ${twoFigures(verdict.overFedLine ?? 0)} is too much: ${excessHarm[excess]}.${
        excess === 'fruit' && weather ? otherCauses(weather, units) : ''
      }`;
    }
    case 'enough to the end':
      return `${past} No more greens this season.${was}`;
    case 'enough for now':
      return verdict.turnsOn === null
        ? `The soil holds all the crop can take up (${twoFigures(verdict.nitrateMgPerKg)} mg/kg). Wait.`
        : `The soil holds all the crop can take up (${twoFigures(verdict.nitrateMgPerKg)} mg/kg). Look again ${onDay(day(verdict.turnsOn))}.`;
    case 'short':
      return `Hungry from ${day(verdict.turnsOn)}: it gets ${percent(verdict.forecastMet)} of what it could still use.${
        verdict.dryFirst ? ' The soil is dry: water first.' : ''
      }`;
    case 'about right':
      return `${verdict.wantsMoreLater ? leanLater(verdict, past) : past}${
        verdict.lackIsPast ? ` ${pastLack[verdict.lackIsPast]}` : ''
      }${was}`;
    case 'nothing planted':
      return `Nothing planted. ${estimateWithUnit(verdict.inReach, units.nitrogenPerArea)} is ready in the soil.`;
  }
}

/** Why a bed with less than its crop can use is about right: the state asks what is still to come. */
const pastLack: Readonly<Record<NonNullable<BedVerdict['lackIsPast']>, string>> = {
  'gets the rest': 'What it still wants it should get; what it went without is past.',
  'wants little': 'It wants little more now; what it went without is past.',
};

/** Right for four weeks and not to the end: too little in all, or enough that comes too late. */
const leanLater = ({ ratio, forecastMet }: BedVerdict, past: string): string =>
  `Right for the coming weeks, lean later. ${past} As things stand it gets ${percent(forecastMet)} of what it could still use${
    (ratio ?? 0) >= 1 ? ': the rest comes too late for it' : ''
  }.`;

const onDay = (day: string): string =>
  day === 'today' || day === 'tomorrow' || day === 'yesterday' ? day : `on ${day}`;

/**
 * What to do about the ground: a fed bed that lies bare gets browns, never nothing, save where they
 * would lie on seedlings.
 *
 * @param waits what grows there is less than a hand high: until when, as a day, '' where not known;
 *   null where a cover may be laid
 */
export function coverSentence(
  verdict: Pick<BedVerdict, 'coverState' | 'state' | 'room' | 'excessClass'>,
  waits: string | null = null,
): string {
  const { coverState } = verdict;
  if (coverState === 'good') return 'The ground is covered.';
  if (coverState === 'too deep')
    return 'The cover is too deep: loosen it, or carry some elsewhere.';
  const ground = coverState === 'bare' ? 'The ground is bare' : 'The cover is thin';
  if (verdict.excessClass === 'cover')
    return `${ground} between the plants, which will close over it.`;
  if (waits !== null)
    return `${ground}. Leave it so till what grows there is a hand high${waits === '' ? '' : `, about ${waits}`}: a cover smothers it.`;
  if (verdict.state === 'short') return `${ground}: a thin layer of greens feeds and covers it.`;
  const isFed = verdict.state !== 'about right' || (verdict.room ?? 0) <= 0;
  return isFed
    ? `${ground}: straw, leaves or crisp clippings cover it without feeding it.`
    : `${ground}: browns, with a thin layer of greens under them.`;
}
