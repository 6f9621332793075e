import type { CoverState, NitrogenState, Weight } from '../core/season/verdict';
import { listed } from './chartFormat';
import { nothingHeldBack } from './cautions';

/*
 * What is said to whoever listens to the screen, when something on it changed by itself: whole
 * sentences with their subject, since nothing stands beside them.
 */

/** Both states of a bed at one time. */
export interface HeardStates {
  readonly id: string;
  readonly name: string;
  readonly nitrogen: NitrogenState;
  readonly cover: CoverState;
}

/** A caution in so many words; `says` as it stands on the screen. */
export interface HeardCaution {
  readonly weight: Weight;
  readonly says: string;
}

const numbers = (count: number, one: string): string => `${count} ${one}${count === 1 ? '' : 's'}`;

const changed = <State extends string>(before: State, after: State): string =>
  before === after ? `${after} as before` : `${after}, before ${before}`;

/** Stops and cautions in full, the strongest first; notes are only counted. */
function cautionsHeard(cautions: readonly HeardCaution[]): string {
  if (cautions.length === 0) return nothingHeldBack;
  const of = (weight: Weight) => cautions.filter((each) => each.weight === weight);
  const full = (['stop', 'caution'] as const).flatMap((weight) => {
    const found = of(weight);
    return found.length === 0
      ? []
      : [`${numbers(found.length, weight)}: ${found.map(({ says }) => says).join(' ')}`];
  });
  const notes = of('note').length;
  return [...full, ...(notes > 0 ? [`${numbers(notes, 'note')}.`] : [])].join(' ');
}

/** What a proposed laying does to one bed, said once the typing rests. */
export const effectHeard = (
  before: HeardStates,
  after: HeardStates,
  cautions: readonly HeardCaution[],
): string =>
  `${after.name} with this: nitrogen ${changed(before.nitrogen, after.nitrogen)}; ` +
  `cover ${changed(before.cover, after.cover)}. ${cautionsHeard(cautions)}`;

/**
 * What became of the beds: every state that is another than before; of a garden heard of for the
 * first time, how many beds and which are over-fed or short. '' where nothing changed.
 */
export function bedsHeard(before: readonly HeardStates[], after: readonly HeardStates[]): string {
  if (after.length === 0) return '';
  const old = new Map(before.map((each) => [each.id, each]));
  if (!after.some(({ id }) => old.has(id))) {
    const named = (state: NitrogenState, word: string) => {
      const beds = after.filter(({ nitrogen }) => nitrogen === state).map(({ name }) => name);
      return beds.length > 0 ? ` ${word}: ${listed(beds)}.` : '';
    };
    const count = after.length === 1 ? '1 bed is' : `${after.length} beds are`;
    return `${count} reckoned.${named('over-fed', 'Over-fed')}${named('short', 'Short')}`;
  }
  return after
    .flatMap(({ id, name, nitrogen, cover }) => {
      const was = old.get(id);
      if (!was) return [`${name}: ${nitrogen}, cover ${cover}.`];
      return [
        ...(was.nitrogen === nitrogen ? [] : [`${name}: now ${nitrogen}, before ${was.nitrogen}.`]),
        ...(was.cover === cover ? [] : [`Cover on ${name}: now ${cover}, before ${was.cover}.`]),
      ];
    })
    .join(' ');
}

/** One figure of a mowing: its name, and its words with the range as they stand on the screen. */
export interface HeardFigure {
  readonly label: string;
  readonly words: string;
}

/** What a mowing being typed holds: "It weighs about 25 kg, likely 22 to 31 kg (8 times in 10)." */
export const figuresHeard = (figures: readonly HeardFigure[]): string =>
  figures.map(({ label, words }) => `${label} ${words}.`).join(' ');
