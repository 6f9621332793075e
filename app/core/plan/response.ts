import type { DayNumber } from '../days';
import type { BedAnswer } from '../season/bedAnswer';
import type { CautionFacts } from '../season/cautions/facts';
import type { LayerInput } from '../season/input';
import type { Limits } from '../season/limits';
import { isStanding } from '../season/plantingAccount';
import { at, seasonFirstDay } from '../season/seasonAccount';
import type { Caution } from '../season/verdict';
import { BedTrack } from './bedTrack';
import { blockedBy, depthLine } from './fixedRules';
import type { PlanBed, PlanSource, PlanWeights } from './question';
import type { Look } from './spells';
import type { SpellAim } from './standing';

/** What a millimetre of a source, laid on a bed on a day of the plan, does; all per m2 of bed. */
export interface LayerResponse {
  /** places in the question's `sources` and `days` */
  readonly source: number;
  readonly day: number;
  /** on top, or worked into the first few centimetres with a hoe */
  readonly placement: 'laid' | 'hoed';
  /** what keeps it off however thin it is; the rest then says nothing */
  readonly blocked: Caution | null;
  /** deepest the layer may be, with what was laid that day already: greens under the line of a note, for
   * thick ones mat; all else under its caution line [mm] */
  readonly mostMillimetres: number;
  /** g N of supply to clearing, of a thin layer, by the bed's spells */
  readonly supplies: readonly number[];
  /** what browns hold back for an over-fed bed, by its spells */
  readonly held: readonly HeldBack[];
  /** g N that legumes fix less */
  readonly fixedLess: number;
  /** g N of the highest nitrate with nobody to take it */
  readonly idlePeak: number;
  /** g total N that counts against the room, and in the season's total */
  readonly greensNitrogen: number;
  readonly feedingNitrogen: number;
  /** kg dry matter lying on the evening of each look; 0 before it is laid */
  readonly dry: Float64Array;
  /** depth lying of it on those days [mm], laid deep on its own day and settled after it */
  readonly depth: Float64Array;
  /** of the layer itself still lying on those days, and how full of water the cover is 0-1 */
  readonly left: Float64Array;
  readonly fill: Float64Array;
}

/**
 * What browns hold back [g N]: a thin layer most by the millimetre, each further one less.
 *
 *     held <= thin x mm,  held <= start + further x mm,  held <= most
 */
export interface HeldBack {
  readonly thin: number;
  readonly start: number;
  readonly further: number;
  /** all that a layer just under the line of a note holds back */
  readonly most: number;
}

const nothingHeld: HeldBack = { thin: 0, start: 0, further: 0, most: 0 };

/** A bed as the programme takes it. */
export interface BedResponse {
  readonly bedId: string;
  readonly areaM2: number;
  readonly steps: number;
  readonly looks: readonly Look[];
  /** of each spell, and its supply without the plan */
  readonly aims: readonly SpellAim[];
  readonly supplies: readonly number[];
  readonly fixed: number;
  readonly idlePeak: number;
  /** nothing stands: the ground may hold nitrogen with nobody to take it */
  readonly isEmpty: boolean;
  /** null as well where hardly anything is wanted any more: the ratio alone is held to then */
  readonly room: number | null;
  readonly laidThisSeason: number;
  readonly hasLegumes: boolean;
  /** without the plan: on the looks, and on the days of the plan */
  readonly dry: Float64Array;
  readonly coverDepth: Float64Array;
  readonly layers: readonly LayerResponse[];
}

/** A layer of a source, so many millimetres deep as it is handled. */
export const layerOf = (
  source: PlanSource,
  millimetres: number,
  day: DayNumber,
  id: string,
  placement: LayerInput['placement'] = 'laid',
): LayerInput => {
  const one = source.oneMillimetre;
  return {
    ...one,
    id,
    day,
    placement,
    freshKgPerM2: one.freshKgPerM2 * millimetres,
    dryKgPerM2: one.dryKgPerM2 * millimetres,
    nitrogen: one.nitrogen * millimetres,
    carbon: one.carbon * millimetres,
    laidDepth: one.laidDepth * millimetres,
  };
};

/** A probe is half as deep as the thinnest layer that gets a note: no one lays thinner ones by hand. */
const probeShare = 0.5;

/** What is laid on that day already under the same line [mm]. */
const laidThatDay = (answer: BedAnswer, layer: LayerInput): number =>
  answer.input.layers
    .filter(
      (other) =>
        other.day === layer.day &&
        other.placement === 'laid' &&
        other.materialClass === layer.materialClass &&
        depthLine(other) === depthLine(layer),
    )
    .reduce((sum, other) => sum + other.laidDepth, 0);

/** Compost and the like that may be laid in a season before it wants a note, less what was laid [mm]. */
function feedDepthLeft({ input }: BedAnswer, facts: CautionFacts, limits: Limits): number {
  const from = seasonFirstDay(input, input.today);
  const laid = input.layers
    .filter(({ id, day }) => day >= from && facts.layers[id]?.isCompost === true)
    .reduce((sum, { laidDepth }) => sum + laidDepth, 0);
  return Math.max(0, limits.lines['compost depth'].note - laid);
}

/**
 * Share of what browns hold back that is counted on: the rate is assumed and wide, and what they do
 * for bare ground is sure.
 */
const countedShare = 0.5;

/** The two pieces through what a thin and a deep layer hold back. */
function heldBack(thin: number, thinDepth: number, most: number, deepDepth: number): HeldBack {
  const byThin = thin * thinDepth;
  const further = Math.min(thin, Math.max(0, (most - byThin) / (deepDepth - thinDepth)));
  return {
    thin: countedShare * thin,
    start: countedShare * (byThin - further * thinDepth),
    further: countedShare * further,
    most: countedShare * Math.max(byThin, most),
  };
}

/** A bed that is asked for its responses. */
interface Asked {
  readonly track: BedTrack;
  readonly answer: BedAnswer;
  readonly facts: CautionFacts;
  readonly days: readonly DayNumber[];
  readonly limits: Limits;
  /** it lacks nitrogen as things are */
  readonly isHungry: boolean;
}

function respond(
  { track, answer, facts, days, limits, isHungry }: Asked,
  source: PlanSource,
  place: Pick<LayerResponse, 'source' | 'day' | 'placement'>,
): LayerResponse {
  const line = limits.lines[depthLine(source.oneMillimetre)];
  const perMillimetre = source.oneMillimetre.laidDepth;
  const probe = perMillimetre > 0 ? (probeShare * line.note) / perMillimetre : 1;
  const day = days[place.day]!;
  const { placement } = place;
  const layer = layerOf(source, probe, day, `probe ${source.id}`, placement);
  const withFacts: CautionFacts = {
    ...facts,
    layers: { ...facts.layers, [layer.id]: source.facts },
  };
  const { verdict, input, season } = answer;
  const blocked = blockedBy({ input, result: season, verdict }, layer, withFacts, limits);
  const { oneMillimetre } = source;
  const deepest = oneMillimetre.isGreens ? line.note : line.caution;
  const feedDepth =
    source.role !== 'feed' ? Infinity : isHungry ? feedDepthLeft(answer, facts, limits) : 0;
  const empty = new Float64Array(days.length);
  const common = {
    ...place,
    blocked,
    mostMillimetres:
      perMillimetre > 0
        ? Math.max(0, Math.min(deepest - laidThatDay(answer, layer), feedDepth)) / perMillimetre
        : 0,
    greensNitrogen: oneMillimetre.isGreens ? oneMillimetre.nitrogen : 0,
    feedingNitrogen:
      oneMillimetre.materialClass === 'green'
        ? oneMillimetre.nitrogen
        : oneMillimetre.materialClass === 'slow'
          ? oneMillimetre.nitrogen *
            Math.min(1, oneMillimetre.mineralShare + oneMillimetre.slowShare)
          : 0,
  };
  if (blocked !== null)
    return {
      ...common,
      supplies: track.base.supplies.map(() => 0),
      held: track.base.supplies.map(() => nothingHeld),
      fixedLess: 0,
      idlePeak: 0,
      dry: empty,
      depth: empty,
      left: empty,
      fill: empty,
    };
  const after = track.with(layer);
  const { base } = track;
  const dry = after.dry.map((kilograms, index) => (kilograms - base.dry[index]!) / probe);
  const settled = oneMillimetre.settledDensityKgPerM3;
  // Browns help a bed's own soil along by keeping it moist, once: nothing to lay more of them for.
  const most = common.feedingNitrogen > 0 ? Infinity : 0;
  const supplies = after.supplies.map((supply, spell) =>
    Math.min(most, (supply - base.supplies[spell]!) / probe),
  );
  const deep = probe / probeShare;
  const holds = supplies.map((supply, spell) => supply < 0 && base.supplies[spell]! > 0);
  const withDeep = holds.includes(true)
    ? track.with(layerOf(source, deep, day, layer.id, placement)).supplies
    : base.supplies;
  const held = supplies.map((supply, spell) =>
    holds[spell]
      ? heldBack(-supply, probe, base.supplies[spell]! - withDeep[spell]!, deep)
      : nothingHeld,
  );
  return {
    ...common,
    supplies,
    held,
    fixedLess: (base.fixed - after.fixed) / probe,
    idlePeak: (after.idlePeak - base.idlePeak) / probe,
    dry,
    depth: dry.map((kilograms, index) =>
      placement === 'hoed'
        ? 0
        : index === place.day
          ? perMillimetre
          : Math.min(
              perMillimetre,
              (1000 * Math.max(0, kilograms)) /
                Math.max(settled, (1000 * oneMillimetre.dryKgPerM2) / perMillimetre),
            ),
    ),
    left: dry.map((kilograms) =>
      oneMillimetre.dryKgPerM2 > 0 ? kilograms / oneMillimetre.dryKgPerM2 : 0,
    ),
    fill: after.fill,
  };
}

/** Something stands, and so little lies that a hoe goes through it. */
function isOpenToTheHoe({ answer: { input, season }, limits }: Asked): boolean {
  const { today } = input;
  return (
    input.plantings.some((planting) => isStanding(planting, today)) &&
    at(season.coverFraction, season, today) < limits.numbers['cover thin']
  );
}

/**
 * What each source would do on a bed on each day of a plan: differences between runs of the engine
 * with a thin layer and without, divided by its depth.
 *
 *     response = (run(probe) - run(nothing)) / probe        probe: half the depth that gets a note
 *
 * Nitrogen goes into the soil nearly in proportion to what is laid; what the crop gains does not,
 * so supply is what is asked for. Where layers act on each other (browns hold greens back, deep
 * layers lose more to the air) the straight line errs: the full model says by how much afterwards.
 *
 * @param answer the bed as it is, pinned layers included
 * @param aims of the bed without what is pinned
 * @param steps to the bed
 */
export function bedResponse(
  bed: PlanBed,
  answer: BedAnswer,
  aims: readonly SpellAim[],
  steps: number,
  looks: readonly Look[],
  sources: readonly PlanSource[],
  days: readonly DayNumber[],
  limits: Limits,
  weights: PlanWeights,
): BedResponse {
  const within = days.filter((day) => day <= answer.input.lastDay);
  const later = looks.slice(within.length).map(({ day }) => day);
  const judgedOn = aims.map((aim) => aim.judgedOn);
  const track = new BedTrack(answer.input, within, later, judgedOn);
  const { verdict, season, input } = answer;
  const [aim] = aims;
  const asked: Asked = {
    track,
    answer,
    facts: bed.question.facts,
    days: within,
    limits,
    isHungry: aim !== undefined && track.base.supply < weights.lowShare * aim.need,
  };
  const canHoe = asked.isHungry && isOpenToTheHoe(asked);
  const layers = sources.flatMap((source, sourceAt) =>
    within.flatMap((day, dayAt) => {
      if (source.day !== null && source.day !== day) return [];
      const place = { source: sourceAt, day: dayAt };
      const laid = respond(asked, source, { ...place, placement: 'laid' });
      // of later days nobody knows yet how open the ground will lie
      const isHoed = canHoe && dayAt === 0 && source.role !== 'browns' && laid.blocked === null;
      return isHoed ? [laid, respond(asked, source, { ...place, placement: 'hoed' })] : [laid];
    }),
  );
  return {
    bedId: bed.bedId,
    areaM2: input.areaM2,
    steps,
    looks,
    aims,
    supplies: track.base.supplies,
    fixed: track.base.fixed,
    idlePeak: track.base.idlePeak,
    isEmpty: !((judgedOn[0] ?? Infinity) <= input.today),
    room: verdict.openShare < limits.numbers['little open'] ? null : verdict.room,
    laidThisSeason: verdict.laidThisSeason,
    hasLegumes: input.plantings.some(({ crop }) => crop.legume !== null),
    dry: track.base.dry,
    coverDepth: Float64Array.from(within, (day) => at(season.coverDepth, season, day)),
    layers,
  };
}
