import { answerBed, type BedAnswer } from '../season/bedAnswer';
import { layerCautions, type CautionFacts } from '../season/cautions/cautions';
import type { LayerInput } from '../season/input';
import { weightRank } from '../season/limits';
import type { Caution } from '../season/verdict';
import { layerIdOf, type Ready } from './ready';
import { layerOf } from './response';
import { withLayers } from './standing';
import { stepOf, type Amounts } from './settle';

/** A bed with this week's layers, by the full model. */
export interface CheckedBed {
  /** amounts found, none of which raises more than a note [mm] by place in `layers` */
  readonly amounts: ReadonlyMap<number, number>;
  /** pinned ones not among them */
  readonly layers: readonly LayerInput[];
  readonly answer: BedAnswer;
  readonly cautions: readonly Caution[];
  /** the caution that more would raise, where one stopped it */
  readonly stopped: Caution | null;
}

/** Layers of amounts, on the days they are for. */
export const layersOf = (
  { beds, sources, question }: Ready,
  bed: number,
  amounts: ReadonlyMap<number, number>,
): readonly LayerInput[] =>
  [...amounts].flatMap(([at, millimetres]) => {
    const { source, day, placement } = beds[bed]!.response.layers[at]!;
    const from = sources[source]!;
    const date = question.days[day]!;
    const id = layerIdOf(from.id, date, placement);
    return millimetres > 0 ? [layerOf(from, millimetres, date, id, placement)] : [];
  });

/** Facts of a bed with those of the plan's layers. */
export function factsWith({ beds, sources, question }: Ready, bed: number): CautionFacts {
  const { facts } = beds[bed]!.bed.question;
  const own = sources.flatMap((source) =>
    question.days.flatMap((day) =>
      (['laid', 'hoed'] as const).map(
        (placement) => [layerIdOf(source.id, day, placement), source.facts] as const,
      ),
    ),
  );
  return { ...facts, layers: { ...facts.layers, ...Object.fromEntries(own) } };
}

const answerWith = (ready: Ready, bed: number, layers: readonly LayerInput[]): BedAnswer => {
  const { bed: planBed, withPins } = ready.beds[bed]!;
  return answerBed(
    {
      ...planBed.question,
      input: withLayers(withPins.input, layers),
      facts: factsWith(ready, bed),
    },
    ready.question.limits,
  );
};

/** A bed with layers of the plan by the full model; the bed as it is where there are none. */
export const answerWithAmounts = (
  ready: Ready,
  bed: number,
  amounts: ReadonlyMap<number, number>,
): BedAnswer => {
  const layers = layersOf(ready, bed, amounts);
  return layers.length === 0 ? ready.beds[bed]!.withPins : answerWith(ready, bed, layers);
};

const cautionsOf = (
  ready: Ready,
  bed: number,
  layers: readonly LayerInput[],
  after: BedAnswer,
): readonly Caution[] => {
  const before = ready.beds[bed]!.withPins;
  return layerCautions(
    { input: before.input, result: before.season, verdict: before.verdict },
    { input: after.input, result: after.season, verdict: after.verdict },
    layers.map(({ id }) => id),
    factsWith(ready, bed),
    ready.question.limits,
  );
};

/**
 * This week's layers of a bed by the full model, made thinner step by step until no caution or stop
 * speaks against them.
 */
export function checkedBed(ready: Ready, bed: number, wanted: Amounts[number]): CheckedBed {
  const amounts = new Map(wanted);
  let stopped: Caution | null = null;
  for (;;) {
    const layers = layersOf(ready, bed, amounts);
    if (layers.length === 0)
      return {
        amounts: new Map(),
        layers,
        answer: ready.beds[bed]!.withPins,
        cautions: [],
        stopped,
      };
    const answer = answerWith(ready, bed, layers);
    const cautions = cautionsOf(ready, bed, layers, answer);
    const worst = cautions.find(({ weight }) => weightRank[weight] >= weightRank.caution);
    if (!worst) return { amounts, layers, answer, cautions, stopped };
    stopped = worst;
    thin(ready, bed, amounts, layers, worst);
  }
}

/** Takes a step off the layer that a caution is about; off all where it is about none. */
function thin(
  ready: Ready,
  bed: number,
  amounts: Map<number, number>,
  layers: readonly LayerInput[],
  { layerId }: Caution,
): void {
  const at = layers.findIndex(({ id }) => id === layerId);
  const keys = [...amounts.keys()].filter((key) => (amounts.get(key) ?? 0) > 0);
  for (const key of at >= 0 && keys[at] !== undefined ? [keys[at]] : keys) {
    const rest = (amounts.get(key) ?? 0) - stepOf(ready, bed, key);
    if (rest > 1e-9) amounts.set(key, rest);
    else amounts.delete(key);
  }
}

/** What pinned layers raise, for the line they stand in. */
export function pinnedCautions(ready: Ready, bed: number): readonly Caution[] {
  const { pinned, base, withPins, bed: planBed } = ready.beds[bed]!;
  if (pinned.length === 0) return [];
  return layerCautions(
    { input: base.input, result: base.season, verdict: base.verdict },
    { input: withPins.input, result: withPins.season, verdict: withPins.verdict },
    pinned.map(({ layer }) => layer.id),
    { ...planBed.question.facts, layers: factsWith(ready, bed).layers },
    ready.question.limits,
  );
}
