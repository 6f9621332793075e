import type { AmountFailure, Dimension, Field } from '../amounts/amount';
import type { DayFailure } from '../amounts/readDay';
import { assertNever } from '../core/result';

/** What a field takes, for the sentence that says what to type. */
const wanted: Readonly<Record<Field, string>> = {
  mowing: 'a number of bags, a volume, a weight, or an area and what came off it',
  layer: 'a number of bags or buckets, a volume, a weight or a depth',
  stock: 'a number of bags or buckets, a volume or a weight',
  water: 'a depth, a volume or a number of cans',
  rain: 'a depth of rain',
  area: 'an area, or a length times a width',
  length: 'a length',
  depth: 'a depth',
  volume: 'a volume',
  weight: 'a weight',
  temperature: 'a temperature',
};

const found: Readonly<Record<Dimension, string>> = {
  number: 'a number alone',
  containers: 'a number of containers',
  volume: 'a volume',
  mass: 'a weight',
  length: 'a length',
  area: 'an area',
  temperature: 'a temperature',
  other: 'no measure that a garden uses',
};

/** Words a person typed, in marks, and cut where they would swamp the sentence. */
const typed = (text: string): string => `“${text.length > 40 ? `${text.slice(0, 40)}…` : text}”`;

/**
 * Why an entry was not taken and what to type instead. The entry stays in its field; the likely
 * value (`suggestion`) stands beside the sentence and is not repeated in it.
 */
export function amountFailureSentence(failure: AmountFailure): string {
  const takes = wanted[failure.field];
  switch (failure.kind) {
    case 'empty':
      return `Nothing is typed yet. This field takes ${takes}.`;
    case 'too-long':
      return `That is longer than ${failure.limit} characters. Keep the amount here and put the rest in a note.`;
    case 'strange-character':
      return `The sign ${typed(failure.character)} has no meaning in an amount. Leave it out.`;
    case 'not-an-amount':
      return `No amount could be made of that. This field takes ${takes}.`;
    case 'vague':
      return `${typed(failure.word)} could be any number. A guess will do: say “about” and the range is kept wide.`;
    case 'no-unit':
      return 'A number alone does not say of what. Add a unit or the name of a container.';
    case 'unknown-unit':
      return `${typed(failure.word)} is neither a unit nor a name in this garden. Check the spelling, or leave the word out.`;
    case 'unknown-container':
      return `This garden has no container called ${typed(failure.word)}. Say how much it holds under Garden, or use another.`;
    case 'unknown-place':
      return `There is no bed or crop called ${typed(failure.word)} in this garden. Use the bed’s own name.`;
    case 'no-lawn':
      return 'That says what came off, but not from how much lawn. Name the lawn, or type its area first.';
    case 'wrong-dimension':
      return `That is ${found[failure.found]}. This field takes ${takes}.`;
    case 'mixed-dimensions':
      return 'Those cannot be added or multiplied: they are different kinds of measure. Use one kind, such as litres.';
    case 'two-amounts':
      return 'There are two amounts here. Put “+” between them if both count, or keep one.';
    case 'ambiguous-number':
      return `${typed(failure.text)} can be read in two ways. Leave the comma out for thousands, or use a point for decimals.`;
    case 'zero':
      return 'That comes to nothing. Type how much there was, or leave this entry out.';
    case 'negative':
      return 'That is less than nothing. Type how much there was, without a minus.';
    case 'too-large':
      return `That is more than is believed here: the most is ${failure.limit}. Check the number and its unit.`;
    case 'ambiguous-date':
      return `${typed(failure.text)} can be two days of the year. Write the month as a word.`;
    case 'unknown-day':
      return `There is no such day as ${typed(failure.text)}. Check the day and the month.`;
    case 'future-day':
      return `${typed(failure.text)} has not come yet. Only what was done can be logged: check the date.`;
    case 'no-start':
      return 'That says how often, but not since when. Add “since” and a day or a month.';
    default:
      return assertNever(failure);
  }
}

/** Why a date was not taken and how to write it. */
export function dayFailureSentence(failure: DayFailure): string {
  switch (failure.kind) {
    case 'empty':
      return `No day is typed yet. Write it as 8 June, yesterday or ${failure.suggestion}.`;
    case 'not-a-day':
      return `${typed(failure.text)} is not a day that can be read. Write it as 8 June, yesterday or ${failure.suggestion}.`;
    case 'month-alone':
      return `On which day of ${failure.text}? A guess will do.`;
    case 'ambiguous-date':
      return `${typed(failure.text)} can be two days of the year. Write the month as a word.`;
    case 'unknown-day':
      return `There is no such day as ${typed(failure.text)}. Check the day and the month.`;
    default:
      return assertNever(failure);
  }
}
