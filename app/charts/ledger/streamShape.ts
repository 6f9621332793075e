import { area, curveBumpX, line } from 'd3-shape';
import type { LedgerStream } from '../../core/season/ledgerStreams';
import { streamKind, type WayKind } from './places';

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** One stream as it is drawn; of one that turns back the parts at the right and at the left are two. */
export interface StreamShape {
  readonly key: string;
  readonly stream: LedgerStream;
  readonly kind: WayKind;
  /** px, to scale at every upright cut */
  readonly width: number;
  /** the middle of it, from end to end */
  readonly course: readonly Point[];
  readonly outline: string;
  /** its two banks, and lines within it, as of water */
  readonly banks: string;
  readonly currents: string;
  /** too thin to be seen at its own width: drawn as a dotted thread along `course` */
  readonly thread: string | null;
}

/** a stream thinner than this is a thread [px] */
export const leastWidth = 1.5;
/** between two lines of a stream, and how many it has at most */
const currentGap = 6;
const mostCurrents = 12;

/** A stream of an even upright width along its course, bending only between its points. */
export function streamShape(
  key: string,
  stream: LedgerStream,
  course: readonly Point[],
  width: number,
): StreamShape {
  const alongAt = (shift: number): string =>
    line<Point>()
      .x(({ x }) => x)
      .y(({ y }) => y + shift)
      .curve(curveBumpX)(course) ?? '';
  const gap = Math.max(currentGap, width / (mostCurrents + 1));
  const count = Math.max(0, Math.floor(width / gap - 0.6));
  const currents = Array.from(
    { length: count },
    (_value, index) => (index + 1) * (width / (count + 1)) - width / 2,
  );
  return {
    key,
    stream,
    kind: streamKind(stream),
    width,
    course,
    outline:
      area<Point>()
        .x(({ x }) => x)
        .y0(({ y }) => y - width / 2)
        .y1(({ y }) => y + width / 2)
        .curve(curveBumpX)(course) ?? '',
    banks: `${alongAt(-width / 2)} ${alongAt(width / 2)}`,
    currents: currents.map(alongAt).join(' '),
    thread: width < leastWidth ? alongAt(0) : null,
  };
}

/** What is there, beside its place: flat where it touches it, round at the other end. `out` is its reach, below 0 to the left. */
export function basin(x: number, top: number, height: number, out: number): string {
  const tall = Math.max(height, leastWidth);
  const middle = top + height / 2;
  const from = middle - tall / 2;
  const round = Math.min(Math.abs(out), tall / 2);
  const straight = x + out - Math.sign(out) * round;
  const bend = straight + Math.sign(out) * round * 0.55;
  const far = x + out;
  return (
    `M${x} ${from} H${straight} C${bend} ${from} ${far} ${middle - tall * 0.22} ${far} ${middle} ` +
    `C${far} ${middle + tall * 0.22} ${bend} ${from + tall} ${straight} ${from + tall} H${x} Z`
  );
}
