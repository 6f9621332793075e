import type { Look, LookKind } from '../core/season/draws/signs';

/** An answer as its key in the file, as a choice, and as a part of a line of the log. */
interface Answer {
  readonly value: string;
  readonly choice: string;
  readonly line: string;
}

interface Asked {
  readonly question: string;
  readonly hint?: string;
  readonly answers: readonly Answer[];
}

const answer = (value: string, choice: string, line: string): Answer => ({ value, choice, line });

/** What a look at a bed asks, in the order in which one walks up to it. */
export const lookQuestions: Readonly<Record<LookKind, Asked>> = {
  leaves: {
    question: 'Lower leaves',
    answers: [
      answer('yellow', 'yellow', 'lower leaves yellow'),
      answer('normal', 'as they should be', 'lower leaves as they should be'),
      answer('dark and lush', 'dark and lush', 'lower leaves dark and lush'),
    ],
  },
  soilSeen: {
    question: 'Soil that shows through the cover',
    answers: [
      answer('all', 'all of it', 'all the soil shows'),
      answer('some', 'some', 'some soil shows'),
      answer('none', 'none', 'no soil shows'),
    ],
  },
  smellsSour: {
    question: 'Smell of the cover when it is lifted',
    answers: [
      answer('no', 'sweet or none', 'cover smells well'),
      answer('yes', 'sour', 'cover smells sour'),
    ],
  },
  moistFingerDeep: {
    question: 'Soil a finger deep',
    answers: [
      answer('yes', 'moist', 'moist a finger deep'),
      answer('no', 'dry', 'dry a finger deep'),
    ],
  },
  slugsUnderBoard: {
    question: 'Under a board left overnight',
    answers: [
      answer('yes', 'slugs', 'slugs under the board'),
      answer('no', 'no slugs', 'no slugs under the board'),
    ],
  },
  nodules: {
    question: 'Root nodules, cut open',
    answers: [
      answer('pink', 'pink inside', 'nodules pink inside'),
      answer('white', 'white inside', 'nodules white inside'),
      answer('none', 'no nodules', 'no nodules'),
    ],
  },
};

export const lookOrder = Object.keys(lookQuestions) as readonly LookKind[];

/** The choice that stands for what was seen; null where it was not looked for. */
export function answerOf(look: Omit<Look, 'day'>, kind: LookKind): string | null {
  const seen = look[kind];
  if (seen === undefined) return null;
  return typeof seen === 'boolean' ? (seen ? 'yes' : 'no') : seen;
}

/** A look as one line of the log: "Looked and dug: lower leaves yellow, dry a finger deep". */
export function lookLine(look: Omit<Look, 'day'>): string {
  const parts = lookOrder.flatMap((kind) => {
    const seen = answerOf(look, kind);
    return lookQuestions[kind].answers
      .filter(({ value }) => value === seen)
      .map(({ line }) => line);
  });
  return `Looked and dug: ${parts.join(', ')}`;
}

/**
 * What yellow leaves are likely to mean with what else was found: thirst, cold or hunger. Empty
 * otherwise: a sour mat and slugs are cautions of the bed.
 *
 * @param isCold the soil that day was colder than crops want it, by the sums
 */
export function lookAdvice(look: Omit<Look, 'day'>, isCold: boolean): string {
  if (look.leaves !== 'yellow') return '';
  if (look.moistFingerDeep === false)
    return 'Yellow in dry soil is thirst before it is hunger: water, and look again in a week.';
  if (isCold) return 'Yellow in cold soil is often no more than cold: look again once it is warm.';
  return look.moistFingerDeep === true
    ? 'Yellow in moist, warm soil does look like hunger.'
    : 'Feel a finger deep as well: yellow leaves mean thirst as often as hunger.';
}
