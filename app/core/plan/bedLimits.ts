import type { Limits } from '../season/limits';
import type { PlanLimit } from './answer';
import { depthLine } from './fixedRules';
import type { PlanSource } from './question';
import type { BedResponse, LayerResponse } from './response';

/** sum over layers of `of` x millimetres <= `most`, all on one bed. */
export interface BedLimit {
  readonly limit: PlanLimit;
  /** places in the bed's `layers` that count */
  readonly layers: readonly number[];
  readonly of: (layer: LayerResponse) => number;
  readonly most: number;
}

interface Placed {
  readonly layer: LayerResponse;
  readonly at: number;
  readonly source: PlanSource;
}

/**
 * What a bed may not get more of: depth of layers laid or hoed in together, and of all cover, room for greens,
 * the ratio of its class, the season's total, what legumes lose, nitrogen nobody takes. None of
 * these lines is past its caution.
 */
export function bedLimits(
  bed: BedResponse,
  sources: readonly PlanSource[],
  limits: Limits,
): readonly BedLimit[] {
  const placed = bed.layers.flatMap((layer, at): Placed[] =>
    layer.blocked === null ? [{ layer, at, source: sources[layer.source]! }] : [],
  );
  const found: BedLimit[] = [];
  const add = (
    limit: PlanLimit,
    some: readonly Placed[],
    of: BedLimit['of'],
    most: number,
  ): void => {
    if (some.length > 0)
      found.push({ limit, layers: some.map(({ at }) => at), of, most: Math.max(0, most) });
  };
  addDepths(bed, placed, limits, add);

  const feeding = placed.filter(({ layer }) => layer.feedingNitrogen > 0);
  const roomLeft = { kind: 'room', grams: bed.room ?? 0 } as const;
  bed.aims.forEach(({ ratioLine, need }, spell) => {
    if (ratioLine === null) return;
    const supplied = ({ supplies }: LayerResponse): number => supplies[spell]!;
    add(roomLeft, feeding, supplied, ratioLine * need - bed.supplies[spell]!);
  });
  // Of the coming weeks' room nobody knows yet: it is reckoned anew from what today's layers did; so
  // is what lies on an empty bed, where one layer's peak is over before the next one's comes.
  const fedToday = feeding.filter(({ layer }) => layer.day === 0);
  if (bed.room !== null) add(roomLeft, fedToday, (layer) => layer.greensNitrogen, bed.room);
  const total = limits.lines['season total'].caution;
  add(
    { kind: 'season total', grams: total },
    feeding,
    (layer) => layer.feedingNitrogen,
    total - bed.laidThisSeason,
  );
  const loss = limits.lines['legume loss'].caution;
  if (bed.hasLegumes)
    add(
      { kind: 'legume', share: loss },
      feeding,
      (layer) => layer.fixedLess,
      loss * Math.max(bed.fixed, limits.numbers['legume least fixed']),
    );
  const idle = limits.lines['greens on an empty bed'].caution;
  if (bed.isEmpty)
    add(
      { kind: 'empty bed', grams: idle },
      fedToday,
      (layer) => layer.idlePeak,
      idle - bed.idlePeak,
    );
  return found;
}

function addDepths(
  bed: BedResponse,
  placed: readonly Placed[],
  limits: Limits,
  add: (limit: PlanLimit, some: readonly Placed[], of: BedLimit['of'], most: number) => void,
): void {
  const cover = limits.lines['all cover'].caution;
  for (let day = 0; day < bed.coverDepth.length; day++) {
    const lines = new Map<string, Placed[]>();
    for (const one of placed) {
      if (one.layer.day !== day) continue;
      const { materialClass } = one.source.oneMillimetre;
      const key = `${depthLine(one.source.oneMillimetre)} ${materialClass}`;
      lines.set(key, [...(lines.get(key) ?? []), one]);
    }
    for (const together of lines.values()) {
      const [first] = together;
      if (!first) continue;
      const of = limits.lines[depthLine(first.source.oneMillimetre)];
      const line = first.source.oneMillimetre.isGreens ? of.note : of.caution;
      const depthOf = ({ source }: LayerResponse): number =>
        together.find(({ layer }) => layer.source === source)!.source.oneMillimetre.laidDepth;
      const most = Math.max(...together.map(({ layer }) => layer.mostMillimetres * depthOf(layer)));
      add({ kind: 'layer depth', millimetres: line }, together, depthOf, most);
    }
    add(
      { kind: 'all cover', millimetres: cover },
      placed.filter(({ layer }) => layer.day <= day),
      (layer) => layer.depth[day]!,
      cover - bed.coverDepth[day]!,
    );
  }
}

/** Which limit an amount of layers passes, the first of them, or null; amounts by place in `layers`. */
export function passedLimit(
  all: readonly BedLimit[],
  bed: BedResponse,
  millimetres: ReadonlyMap<number, number>,
): PlanLimit | null {
  for (const { limit, layers, of, most } of all) {
    let sum = 0;
    for (const at of layers) sum += of(bed.layers[at]!) * (millimetres.get(at) ?? 0);
    if (sum > most * (1 + 1e-9) + 1e-7) return limit;
  }
  return null;
}
