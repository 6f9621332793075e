import type { CameIn, Holding, WentOut } from '../../core/season/ledger';
import type { LedgerStream } from '../../core/season/ledgerStreams';
import { springWordsInto, turnWords, wentOutShort } from '../../words/ledgerWords';
import { isCameIn, turnOf } from './places';

/** The letter that stands where a stream goes under and again where it springs. */
export type TurnLetter = 'a' | 'b';

/** Where streams come into the drawing at its left, or leave it at its right. */
export interface WayEnd {
  readonly key: string;
  readonly words: string;
  readonly streams: readonly LedgerStream[];
  readonly turn: TurnLetter | null;
}

const turnLetters = { 'held back': 'a', left: 'b' } as const;

/** Ends at the right that lie above the plants, beside them and beside the soil, from the top down. */
const highEnds: readonly WentOut[] = ['lost to the air', 'raked off'];
const plantEnds: readonly WentOut[] = ['picked', 'cleared away'];
const lowEnds: readonly WentOut[] = [
  'lost from wet soil',
  'washed out',
  'left below shallower roots',
];
/** Springs that run above the cover to a place further on, and the one that runs beneath everything. */
const highSprings: readonly CameIn[] = ['fixed from the air', 'rain'];
const lowSpring: CameIn = 'reached by deeper roots';

export const gramsOf = ({ streams }: Pick<WayEnd, 'streams'>): number =>
  streams.reduce((all, { gM2 }) => all + gM2, 0);

export interface Springs {
  readonly high: readonly WayEnd[];
  readonly low: readonly WayEnd[];
  readonly beside: (holding: Holding) => readonly WayEnd[];
}

/** Every stream from outside, and every one that springs again, as an end at the left. */
export function springsOf(streams: readonly LedgerStream[]): Springs {
  const ends = streams.flatMap((stream): (WayEnd & { readonly stream: LedgerStream })[] => {
    const turn = turnOf(stream);
    const words = isCameIn(stream.from)
      ? springWordsInto(stream.from, stream.to)
      : turn === null
        ? null
        : turnWords[turn].again;
    if (words === null) return [];
    return [
      {
        key: `${stream.from} > ${stream.to}`,
        words,
        stream,
        streams: [stream],
        turn: turn === null ? null : turnLetters[turn],
      },
    ];
  });
  const isHigh = ({ from }: LedgerStream): boolean => isCameIn(from) && highSprings.includes(from);
  return {
    high: ends.filter(({ stream }) => isHigh(stream)),
    low: ends.filter(({ stream }) => stream.from === lowSpring),
    beside: (holding) =>
      ends.filter(
        ({ stream }) => stream.to === holding && !isHigh(stream) && stream.from !== lowSpring,
      ),
  };
}

export interface Sinks {
  readonly high: readonly WayEnd[];
  readonly beside: readonly WayEnd[];
  readonly low: readonly WayEnd[];
}

/** What leaves at the right or goes under there, from the top down. */
export function sinksOf(streams: readonly LedgerStream[]): Sinks {
  const outOf = (names: readonly WentOut[]): readonly WayEnd[] =>
    names.flatMap((name) => {
      const found = streams.filter(({ to }) => to === name);
      return found.length === 0
        ? []
        : [{ key: name, words: wentOutShort[name], streams: found, turn: null }];
    });
  const turning = (why: keyof typeof turnLetters): readonly WayEnd[] => {
    const found = streams.filter((stream) => turnOf(stream) === why);
    return found.length === 0
      ? []
      : [{ key: why, words: turnWords[why].under, streams: found, turn: turnLetters[why] }];
  };
  return {
    high: outOf(highEnds),
    beside: [...outOf(plantEnds), ...turning('left')],
    low: [...turning('held back'), ...outOf(lowEnds)],
  };
}
