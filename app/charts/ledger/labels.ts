import type { StreamShape } from './streamShape';

/** A stretch of the drawing [px]. */
export interface Block {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where a place's name stands. */
export interface LabelPlace {
  /** left edge and baseline */
  readonly x: number;
  readonly y: number;
  /** a line from the name to its place, where the name stands off; '' for none */
  readonly leader: string;
}

/** What is to be named, and how wide its words are. */
export interface Named {
  readonly x: number;
  readonly top: number;
  readonly height: number;
  readonly width: number;
  readonly words: number;
}

/** above its baseline and below it [px] */
const letters = { up: 12, down: 4 } as const;
const gap = 7;
/** so far from its place a name is looked for [px], and in such steps */
const farthest = 96;
const step = 8;
const edge = 2;

/** Points of a stream's middle, near enough to each other to be held against words. */
function middleOf({ course, width }: StreamShape): readonly Block[] {
  return course.slice(1).flatMap((to, index) => {
    const from = course[index];
    if (!from) return [];
    const count = Math.max(4, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 6));
    return Array.from({ length: count + 1 }, (_value, at): Block => {
      const t = at / count;
      const bend = 3 * t * (1 - t);
      // a stream bends level at both ends: its handles lie half way between them
      const x = (1 - t) ** 3 * from.x + (bend * (from.x + to.x)) / 2 + t ** 3 * to.x;
      const y = (1 - t) ** 2 * (1 + 2 * t) * from.y + t ** 2 * (3 - 2 * t) * to.y;
      const half = Math.max(width, 2) / 2;
      return { left: x, right: x, top: y - half, bottom: y + half };
    });
  });
}

const meet = (one: Block, other: Block): boolean =>
  one.left <= other.right &&
  other.left <= one.right &&
  one.top <= other.bottom &&
  other.top <= one.bottom;

/**
 * Names of places where nothing runs: above their place or beneath it, to its right or its left, as
 * near as there is room; one that stands off has a leader. Where nothing is free the name stands
 * where it covers least.
 *
 * @param taken what else stands in the drawing
 */
export function labelPlaces(
  places: readonly Named[],
  streams: readonly StreamShape[],
  taken: readonly Block[],
  sheet: { readonly width: number; readonly height: number },
): readonly LabelPlace[] {
  const flows = streams.flatMap(middleOf);
  const named: Block[] = [];
  return places.map((place) => {
    const right = place.x + place.width;
    let best: { cost: number; box: Block; label: LabelPlace } | null = null;
    for (let off = 0; off <= farthest; off += step)
      for (const side of ['above', 'below'] as const)
        for (const x of [place.x, right - place.words, (place.x + right - place.words) / 2]) {
          const y =
            side === 'above'
              ? place.top - gap - off
              : place.top + place.height + gap + letters.up + off;
          const box = {
            left: x - 3,
            right: x + place.words + 3,
            top: y - letters.up,
            bottom: y + letters.down,
          };
          if (
            box.left < edge ||
            box.right > sheet.width - edge ||
            box.top < edge ||
            box.bottom > sheet.height - edge
          )
            continue;
          const isOnWords = named.some((other) => meet(box, other));
          const cost =
            off / 50 +
            (side === 'below' ? 0.3 : 0) +
            flows.filter((flow) => meet(box, flow)).length +
            20 * taken.filter((other) => meet(box, other)).length +
            (isOnWords ? 1000 : 0);
          if (best && best.cost <= cost) continue;
          const middle = place.x + place.width / 2;
          const leader =
            off === 0
              ? ''
              : side === 'above'
                ? `M${middle} ${y + letters.down} V${place.top - 1}`
                : `M${middle} ${y - letters.up} V${place.top + place.height + 1}`;
          best = { cost, box, label: { x, y, leader } };
        }
    if (best) named.push(best.box);
    return best?.label ?? { x: place.x, y: place.top - gap, leader: '' };
  });
}
