import type { UnitSet } from '../amounts/unitSystem';
import type { DayNumber } from '../core/days';
import type {
  BedLeftOut,
  BedStanding,
  MowAdvice,
  PlanAmount,
  PlanAnswer,
  PlanLayer,
  PlanLimit,
  PlanLine,
  PlanOdds,
  PlanTurn,
} from '../core/plan/answer';
import type { PairedOdds } from '../core/plan/pairedDraws';
import type { GrassHeight, PlanSourceRef } from '../core/plan/question';
import type { GardenNames } from '../document/planNames';
import { cautionSentence } from './cautionSentences';
import { dayWord, listed, percent } from './chartFormat';
import { dayStyle } from './dates';
import { mowingMarkWords } from './mowingMarkWords';
import { aboutWords, countOf, estimateWithUnit, timesWords, twoFigures } from './figures';
import { nitrogenStateWords } from './states';
import { unaskedSources } from './unaskedSources';
import { pairedOddsWords } from './whatIfWords';

/** What the sentences of a plan need to know of the garden. */
export interface PlanNames extends GardenNames {
  readonly units: UnitSet;
}

/** A day of the plan, in a sentence. */
export const dayIn = (day: DayNumber, { units }: PlanNames): string =>
  dayWord(day, dayStyle(units.system));

/** "clippings of Back lawn", "Chopped leaves" */
export function planSourceWords(ref: PlanSourceRef, names: PlanNames): string {
  switch (ref.source) {
    case 'mowing':
      return `clippings of ${names.lawnOfMowing(ref.mowingId)}${mowingMarkWords(names.markOfMowing(ref.mowingId), (day) => dayIn(day, names))}`;
    case 'coming':
      return `clippings of ${names.lawn(ref.lawnId)}`;
    case 'stock':
      return names.stock(ref.stockId);
  }
}

/** Whole and half containers to the half, also above ten: what is carried must add up. */
function halves(count: number, one: string, many: string): string {
  const half = Math.round(count * 2);
  if (Math.abs(half / 2 - count) > 1e-6) return countOf(count, one, many);
  const number = half === 1 ? '1/2' : `${Math.floor(half / 2)}${half % 2 === 1 ? ' 1/2' : ''}`;
  return `${number} ${half > 0 && half <= 2 ? one : many}`;
}

/** "2 bags", "about 1 1/4 bags"; null where it is hardly any of one. */
function inBags(litres: number, { bag }: PlanNames): string | null {
  const quarters = bag ? Math.round((4 * litres) / bag.litres) : 0;
  if (!bag || quarters < 1) return null;
  const isExact = Math.abs(litres / bag.litres - quarters / 4) < 0.02;
  const words = countOf(quarters / 4, bag.name, bag.plural);
  return isExact ? words : aboutWords(words);
}

/** "2 1/2 buckets" or, where there is no bucket, bags and litres: "1 bag (45 L)". */
export function planAmountWords(
  { litres, counted }: Pick<PlanAmount, 'litres' | 'counted'>,
  names: PlanNames,
): string {
  const container = counted ? names.container(counted.containerId) : null;
  if (counted && container) return halves(counted.count, container.name, container.plural);
  const volume = estimateWithUnit(litres, names.units.volume);
  const bags = inBags(litres, names);
  return bags === null ? volume : `${bags} (${volume})`;
}

const wayWords = { laid: 'laid on', hoed: 'hoed in', dug: 'dug in' } as const;

/** "2 buckets of clippings of Back lawn, about 6 mm thick, laid on" */
export function planLayerWords(layer: PlanLayer, names: PlanNames): string {
  const { units } = names;
  return (
    `${planAmountWords(layer.amount, names)} of ${planSourceWords(layer.ref, names)}, ` +
    `about ${estimateWithUnit(layer.depthMillimetres, units.depth)} thick, ${wayWords[layer.placement]}`
  );
}

/** "7 buckets of clippings of Back lawn and 6 buckets of Compost, laid on" */
export function planLayersWords(layers: readonly PlanLayer[], names: PlanNames): string {
  const ways = [...new Set(layers.map(({ placement }) => placement))];
  return ways
    .map((way) => {
      const those = layers.filter(({ placement }) => placement === way);
      const what = those.map(
        ({ amount, ref }) => `${planAmountWords(amount, names)} of ${planSourceWords(ref, names)}`,
      );
      return `${listed(what)}, ${wayWords[way]}`;
    })
    .join('; ');
}

/** "0.25 times" what it can use is in hand and to come: the ratio behind a bed's state, as told there. */
export const inHandWords = ({ supply, need }: BedStanding): string => {
  if (need <= 0) return 'nothing asked for';
  // two of them are compared: a number in each place, and no "once"
  const times = Math.max(0, supply / need);
  return twoFigures(times) === '1' ? '1.0 times' : timesWords(times);
};

/** "In hand and to come: from 0.25 times to 0.65 times what it can use." */
export const fromTo = (before: BedStanding, after: BedStanding): string =>
  `from ${inHandWords(before)} to ${inHandWords(after)} what it can use`;

/** Said to whoever listens to the screen, once a plan is there or came out another than before. */
export function planHeard(
  { lines, leftOut }: Pick<PlanAnswer, 'lines' | 'leftOut'>,
  names: PlanNames,
): string {
  const unasked = unaskedSources({ leftOut });
  const ask = unasked.length === 0 ? '' : ` Say first what was put on ${listed(unasked)}.`;
  return lines.length === 0
    ? `The plan is there: nothing to lay ${ask === '' ? 'today' : 'yet'}.${ask}`
    : `The plan is there. ${lines
        .map(
          ({ bedId, layers }) =>
            `${names.bed(bedId)}: ${listed(layers.map((layer) => `${planAmountWords(layer.amount, names)} of ${planSourceWords(layer.ref, names)}`))}.`,
        )
        .join(' ')}${ask}`;
}

/** What opens the list of beds that get nothing, and of what is expected later. */
export function leftOutTitle(beds: number, hasComing: boolean, hasLines: boolean): string {
  if (beds === 0) return 'The coming weeks';
  const other = hasLines ? 'other ' : '';
  const others = beds === 1 ? `The ${other}bed` : `The ${beds} ${other}beds`;
  return hasComing ? `${others}, and the coming weeks` : others;
}

/** One sentence from numbers: why a bed gets something. */
export function planWhyWords({ why }: PlanLine, names: PlanNames): string {
  const { before, after, reason } = why;
  const hides = `hides ${percent(after.covered)} of its ground, now ${percent(before.covered)}`;
  // browns alone feed nobody this season, and a bed that is also hungry is told what they do do
  const isFed = before.need > 0 && after.supply > before.supply;
  const feeds = isFed ? `brings what is in hand and to come ${fromTo(before, after)}` : '';
  const state =
    before.shortOn === null
      ? nitrogenStateWords(before.state)
      : `short from ${dayIn(before.shortOn, names)}`;
  // a bed that has enough as it stands, and gains by more
  const wants =
    before.state === 'short' || before.shortOn !== null ? 'is hungry' : 'could use more';
  // "about right" beside what it lacks would say two things at once
  const called = before.shortOn === null && before.state === 'about right' ? '' : ` (${state})`;
  const isTold = isFed || reason === 'pinned' || reason === 'too much';
  switch (isTold ? reason : 'bare ground') {
    case 'hungry':
      return `It ${wants}${called}. This ${feeds}.`;
    case 'bare ground':
      return `Its ground wants hiding. This ${hides}.`;
    case 'too much':
      return `It has more than it can use, and browns hold some back. In hand and to come: ${fromTo(before, after)}.`;
    case 'hungry and bare':
      return `It ${wants}${called} and lies open. This ${feeds}. It ${hides}.`;
    case 'pinned':
      return isFed ? `You said so. This ${feeds}.` : `You said so. This ${hides}.`;
  }
}

/** Marks drawn for a line's odds, each for a tenth of its imagined seasons. */
export const marksOfLine = 10;

/** A line's odds as shares, for the marks and words that "What if" has too. */
export const sharesOfOdds = ({ better, worse, of }: PlanOdds): PairedOdds => ({
  better: of > 0 ? better / of : 0,
  worse: of > 0 ? worse / of : 0,
  alike: of > 0 ? 1 - (better + worse) / of : 1,
});

/** "Against laying nothing: better in 8 of 10 imagined seasons, worse in 1." */
export const planOddsWords = (odds: PlanOdds): string => {
  const words = pairedOddsWords(sharesOfOdds(odds));
  return `Against laying nothing: ${words.charAt(0).toLowerCase()}${words.slice(1)}.`;
};

/** What keeps a bed from getting more. */
export function planLimitWords(limit: PlanLimit, names: PlanNames): string {
  const { units } = names;
  switch (limit.kind) {
    case 'layer depth':
      return `More in one go would pass ${estimateWithUnit(limit.millimetres, units.depth)} and mat.`;
    case 'all cover':
      return `More would make the whole cover thicker than ${estimateWithUnit(limit.millimetres, units.depth)}.`;
    case 'room':
      return `There is room for ${estimateWithUnit(limit.grams, units.nitrogenPerArea)} of nitrogen in greens and no more.`;
    case 'season total':
      return `More would pass ${estimateWithUnit(limit.grams, units.nitrogenPerArea)} laid in one season.`;
    case 'legume':
      return `More would make the beans or peas gather ${percent(limit.share)} less for themselves.`;
    case 'empty bed':
      return 'Nothing grows there that could take up more.';
    case 'caution':
      return 'More would raise the caution below.';
    case 'all used':
      return 'That is all there is of it.';
    case 'kept to mix':
      return 'The rest is kept to mix with the grass of the coming weeks.';
    case 'better elsewhere':
      return 'More does more good on another bed, or in a later week.';
    case 'pinned':
      return 'You set the amount.';
  }
}

/** What would make the answer another one. */
export function planTurnWords(turn: PlanTurn, names: PlanNames): string {
  const { units } = names;
  return turn.kind === 'hoed in'
    ? `Hoed into the top instead of laid on, it would give the crop ${estimateWithUnit(turn.supplyGain, units.nitrogenPerArea)} more by the end.`
    : `Should a lab’s nitrate test show more than ${twoFigures(turn.mgPerKg)} mg/kg, it would get none.`;
}

/** Why a bed gets nothing. */
export function leftOutWords({ reason, from, standing }: BedLeftOut, names: PlanNames): string {
  const again = from === null ? '' : ` Look again on ${dayIn(from, names)}.`;
  switch (reason.kind) {
    case 'caution': {
      const { caution } = reason;
      if (caution.row === 'not asked')
        return `it waits till you say what was put on ${String(caution.detail['source'])}.`;
      const says = cautionSentence(caution, names.units);
      // most cautions that pass name their day themselves
      const isDated = from !== null && says.includes(dayIn(from, names));
      // its caution asks for greens all the same
      const other =
        caution.kind === 'treated lawn' && standing.state === 'short'
          ? ' Greens from elsewhere would feed it.'
          : '';
      return `held back. ${says}${isDated ? '' : again}${other}`;
    }
    case 'pinned':
      return 'nothing, as you said.';
    case 'enough':
      return standing.state === 'over-fed'
        ? `has far more than it can use.${again}`
        : `has what it needs, and its ground is hidden.${again}`;
    case 'only browns':
      return `has enough nitrogen; leaves or straw would hide its ground, and none are to spare.${again}`;
    case 'beds a day':
      return `would gain a little; other beds come first today.${again}`;
    case 'better elsewhere':
      return `gains more in a later week, or others gain more now.${again}`;
    case 'nothing on hand':
      return `nothing on hand suits it.${again}`;
  }
}

/** Of a mowing to come, in the bags of its lawn where there are any. */
export function mowAmountWords(
  { bag }: Pick<MowAdvice, 'bag'>,
  litres: number,
  names: PlanNames,
): string {
  const container = bag ? names.container(bag.containerId) : null;
  return bag && container
    ? countOf(litres / bag.litres, container.name, container.plural)
    : estimateWithUnit(litres, names.units.volume);
}

/** What to collect of a lawn's next mowing. */
export function mowWords(
  advice: MowAdvice,
  names: PlanNames,
  today: DayNumber,
  isUnasked = false,
): string {
  const lawn = names.lawn(advice.lawnId);
  const when = advice.mowsOn === today ? 'today' : `on ${dayIn(advice.mowsOn, names)}`;
  const litresOrBags = (litres: number): string => mowAmountWords(advice, litres, names);
  const { low, typical, high } = advice.expectedLitres;
  const expected = `${aboutWords(litresOrBags(typical))} (${litresOrBags(low)} to ${litresOrBags(high)})`;
  const lies = advice.collect.litres <= 0;
  const collect = lies
    ? 'leave it all lying'
    : advice.collect.litres >= typical * 0.99
      ? `collect all of it, up to ${litresOrBags(advice.collect.litres)}`
      : `collect ${litresOrBags(advice.collect.litres)} and leave the rest lying`;
  const head = `${lawn}, ${when}: ${collect}.`;
  switch (advice.why.kind) {
    case 'held back':
      return `${head} It is held back from beds by what was put on it.`;
    case 'beds':
      return `${head} ${listed(advice.why.bedIds.map(names.bed))} will take it; it should give ${expected}.`;
    case 'no bed wants it':
      if (isUnasked)
        return `${head} No bed may have it till you have said what was put on it. It should give ${expected}.`;
      return `${head} No bed gains by it; it should give ${expected}, and the lawn lives on what lies.`;
    case 'enough waiting':
      return `${head} What is cut and waiting is enough; it should give ${expected}.`;
    case 'nothing expected':
      return `${head} Hardly anything should stand there.`;
  }
}

/** What one bag more would be worth, in grams of nitrogen brought nearer to what beds want. */
export const worthWords = ({ worthOfOneMore, bag }: MowAdvice, names: PlanNames): string => {
  const container = bag ? names.container(bag.containerId) : null;
  const one = container
    ? `One ${container.name} more`
    : `Another ${estimateWithUnit(10, names.units.volume)}`;
  return worthOfOneMore < 0.5
    ? `${one} would bring no bed nearer to what it wants.`
    : `${one} would bring the beds ${estimateWithUnit(worthOfOneMore, names.units.nitrogen)} of nitrogen nearer to what they want.`;
};

export const grassHeightWords: Readonly<Record<GrassHeight, string>> = {
  'hardly grown': 'hardly grown',
  usual: 'as usual',
  ankle: 'up to the ankles',
};
