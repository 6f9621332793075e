import { tidyText } from './tidyText';

/** A part of what is at hand: of all that is there, or of what other entries leave of it. */
export interface ShareReading {
  readonly share: number;
  readonly of: 'all' | 'the rest';
}

const parts: Readonly<Record<string, number>> = {
  half: 1 / 2,
  'a half': 1 / 2,
  'a third': 1 / 3,
  'one third': 1 / 3,
  'two thirds': 2 / 3,
  'a quarter': 1 / 4,
  'one quarter': 1 / 4,
  'three quarters': 3 / 4,
};

const whole =
  /^(?:all|everything|the lot|the whole lot|the whole of it|all (?:of )?(?:it|this|that|them))$/;
const rest =
  /^(?:the |all the |all of the )?(?:rest|remainder|remaining|others?)(?: of (?:it|this|that|them))?$|^(?:all )?(?:what|that) (?:is|'s) left(?: over)?$|^what's left(?: over)?$/;
const ofIt = /^(.+?) of (it|this|that|them|the rest|what is left|what's left)$/;

/**
 * "Half", "a third of it", "all of it", "the rest", "half of the rest": how a person who stands
 * before a heap says how much.
 *
 * @returns null for anything else: "half a bag" and "1/2" are amounts
 */
export function readShare(text: string): ShareReading | null {
  const tidy = tidyText(text, 'metric');
  if (!tidy.ok) return null;
  const said = tidy.value.replace(/[.!]$/, '').trim();
  if (whole.test(said)) return { share: 1, of: 'all' };
  if (rest.test(said)) return { share: 1, of: 'the rest' };
  const [, part, what] = ofIt.exec(said) ?? [null, said, 'it'];
  const share = parts[part ?? ''];
  if (share === undefined) return null;
  return { share, of: /rest|left/.test(what ?? '') ? 'the rest' : 'all' };
}
