import { failure, success, type Result } from '../result';
import { answerBed, type BedAnswer } from '../season/bedAnswer';
import type { LayerInput, Placement } from '../season/input';
import type { PlanTrouble } from './answer';
import { keptLeaves } from './keptLeaves';
import type { PlanBed, PlanPin, PlanQuestion, PlanSource } from './question';
import { bedResponse, layerOf, type BedResponse } from './response';
import { looksOf, type Look } from './spells';
import { aimsOf, noAim, withLayers, type Aim, type SpellAim } from './standing';

/** A layer the gardener insists on. */
export interface PinnedLayer {
  readonly source: number;
  readonly millimetres: number;
  readonly layer: LayerInput;
}

/** A bed with everything the plan is made from. */
export interface ReadyBed {
  readonly bed: PlanBed;
  readonly steps: number;
  /** as it is, and with what is pinned */
  readonly base: BedAnswer;
  readonly withPins: BedAnswer;
  /** of the spell that is now, or comes next; and of each */
  readonly aim: Aim;
  readonly aims: readonly SpellAim[];
  readonly looks: readonly Look[];
  readonly pinned: readonly PinnedLayer[];
  readonly response: BedResponse;
  /** k of the engine's curve of ground hidden [m2/kg] */
  readonly perKilogram: number;
}

export interface Ready {
  readonly question: PlanQuestion;
  /** nearest first; beds alike in every number keep no order that matters */
  readonly beds: readonly ReadyBed[];
  readonly sources: readonly PlanSource[];
  /** of each source, pinned amounts taken out; of what may come, what is counted on;
   * of leaves what is not kept for the heap [L] */
  readonly litres: readonly number[];
}

const compare = (one: number | string, other: number | string): number =>
  one < other ? -1 : one > other ? 1 : 0;

/** Order by what things are, so that neither ids nor the file's order matter. */
function byContent<Item>(
  items: readonly Item[],
  keysOf: (item: Item) => readonly (number | string)[],
): Item[] {
  return items
    .map((item) => ({ item, keys: keysOf(item) }))
    .sort((one, other) => {
      for (let at = 0; at < one.keys.length; at++) {
        const order = compare(one.keys[at]!, other.keys[at]!);
        if (order !== 0) return order;
      }
      return 0;
    })
    .map(({ item }) => item);
}

const kinds = { mowing: 0, coming: 1, stock: 2 } as const;

const sourcesInOrder = (sources: readonly PlanSource[]): PlanSource[] =>
  byContent(sources, ({ ref, day, litres, oneMillimetre, id }) => [
    kinds[ref.source],
    day ?? 0,
    oneMillimetre.materialId,
    litres,
    oneMillimetre.nitrogen,
    oneMillimetre.dryKgPerM2,
    id,
  ]);

/** Steps of beds that were not measured: the mean of those that were. */
function usualSteps(beds: readonly PlanBed[]): number {
  const known = beds.flatMap(({ steps }) => (steps === null ? [] : [steps]));
  return known.length > 0 ? known.reduce((sum, steps) => sum + steps, 0) / known.length : 0;
}

function pinTrouble(question: PlanQuestion): PlanTrouble | null {
  const [today] = question.days;
  const asked = new Map<string, number>();
  for (const { bedId, sourceId, litres } of question.wishes.pins) {
    const source = question.sources.find(({ id }) => id === sourceId);
    const isThere = source !== undefined && (source.day === null || source.day === today);
    const isKnown =
      question.beds.some((bed) => bed.bedId === bedId) &&
      (sourceId === null ? litres === 0 : litres === 0 || isThere);
    if (!isKnown) return { kind: 'pinned unknown', bedId, sourceId };
    if (sourceId !== null) asked.set(sourceId, (asked.get(sourceId) ?? 0) + litres);
  }
  for (const { id, litres } of question.sources) {
    const wanted = asked.get(id) ?? 0;
    if (wanted > litres * (1 + 1e-9))
      return { kind: 'pinned too much', sourceId: id, asked: wanted, there: litres };
  }
  return null;
}

function pinnedLayers(
  bed: PlanBed,
  pins: readonly PlanPin[],
  sources: readonly PlanSource[],
  today: number,
): readonly PinnedLayer[] {
  const { areaM2 } = bed.question.input;
  return sources.flatMap((source, at): PinnedLayer[] => {
    const litres = pins
      .filter(({ bedId, sourceId }) => bedId === bed.bedId && sourceId === source.id)
      .reduce((sum, pin) => sum + pin.litres, 0);
    if (!(litres > 0)) return [];
    const millimetres = litres / areaM2;
    return [
      {
        source: at,
        millimetres,
        layer: layerOf(source, millimetres, today, layerIdOf(source.id, today)),
      },
    ];
  });
}

/** Walks of today that are taken already: to beds with something pinned, or laid. */
export const walksTaken = ({ beds }: Pick<Ready, 'beds'>): number =>
  beds.filter(({ pinned, bed }) => pinned.length > 0 || bed.isWalkedToday === true).length;

export const layerIdOf = (sourceId: string, day: number, placement: Placement = 'laid'): string =>
  `plan ${sourceId} ${day}${placement === 'laid' ? '' : ` ${placement}`}`;

/**
 * Runs every bed as it is, lays what is pinned, and asks each for its responses.
 *
 * @param tellDone told before each bed how many are done
 * @returns fails where there is no bed, nothing to lay, or pins ask for what is not there
 */
export function ready(
  question: PlanQuestion,
  tellDone?: (beds: number) => void,
): Result<Ready, PlanTrouble> {
  const { limits, weights, days } = question;
  const [today] = days;
  if (question.beds.length === 0 || today === undefined) return failure({ kind: 'no beds' });
  const trouble = pinTrouble(question);
  if (trouble) return failure(trouble);
  const sources = sourcesInOrder(question.sources);
  const elsewhere = usualSteps(question.beds);
  const beds = question.beds.map((bed, done): ReadyBed => {
    tellDone?.(done);
    const base = answerBed(bed.question, limits);
    const looks = looksOf(days, base.input.lastDay);
    const aims = aimsOf(base, looks, limits, weights);
    const aim = aims[0] ?? noAim(weights);
    const pinned = pinnedLayers(bed, question.wishes.pins, sources, today);
    const layers = pinned.map(({ layer }) => layer);
    const withPins =
      pinned.length === 0
        ? base
        : answerBed({ ...bed.question, input: withLayers(bed.question.input, layers) }, limits);
    const steps = bed.steps ?? elsewhere;
    return {
      bed,
      steps,
      base,
      withPins,
      aim,
      aims,
      looks,
      pinned,
      response: bedResponse(bed, withPins, aims, steps, looks, sources, days, limits, weights),
      perKilogram: base.input.coefficients.coverFractionPerKilogram,
    };
  });
  const used = sources.map((_source, at) =>
    beds.reduce(
      (sum, { pinned, base }) =>
        sum +
        pinned
          .filter(({ source }) => source === at)
          .reduce((litres, { millimetres }) => litres + millimetres * base.input.areaM2, 0),
      0,
    ),
  );
  const kept = keptLeaves(question);
  return success({
    question,
    beds: byContent(beds, ({ steps, response, aim, bed }) => [
      steps,
      response.areaM2,
      aim.need,
      response.supplies[0] ?? 0,
      response.dry[0] ?? 0,
      bed.bedId,
    ]),
    sources,
    litres: sources.map(({ id, litres, ref, day }, at) => {
      const isSure = ref.source !== 'coming' || day === today;
      const there = (isSure ? 1 : weights.sureOfComing) * litres - (kept.get(id) ?? 0);
      return Math.max(0, there - used[at]!);
    }),
  });
}

/** Nothing may be added there today: the gardener said "none here", or "exactly this". */
export const isPinned = (
  { question, beds, sources }: Ready,
  bed: number,
  source: number,
): boolean =>
  question.wishes.pins.some(
    ({ bedId, sourceId }) =>
      bedId === beds[bed]!.bed.bedId && (sourceId === null || sourceId === sources[source]!.id),
  );
