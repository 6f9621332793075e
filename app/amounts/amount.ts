import type { DayNumber } from '../core/days';
import type { Certainty, Quantity, Wetness } from '../core/lawn/quantity';
import type { Condition } from '../core/season/input';
import type { ShownUnit } from '../core/shownUnit';

/** What was typed and what was meant; the same shape as the document keeps. */
export interface Amount {
  readonly text: string;
  readonly quantity: Quantity;
  readonly certainty: Certainty;
}

export type UnitSystem = 'metric' | 'us';

export interface KnownContainer {
  readonly id: string;
  readonly name: string;
  readonly plural: string;
  readonly litres: number;
}
export interface KnownLawn {
  readonly id: string;
  readonly name: string;
  readonly areaM2: number;
}
/** A place an entry may name ("on the tomatoes"): a bed by its name and what stands on it. */
export interface KnownPlace {
  readonly id: string;
  readonly names: readonly string[];
}

/** Fields that take an amount of stuff. `stock` is what lies in a heap or store. */
export type AmountField = 'mowing' | 'layer' | 'stock';
/** Fields that take one measure. `depth` is a ruler's reading, `harvest` a weight. */
export type MeasureField =
  'water' | 'rain' | 'area' | 'length' | 'depth' | 'volume' | 'weight' | 'temperature';
export type Field = AmountField | MeasureField;

/** What the reader knows of the garden. The first container is the usual one. */
export interface ReadingContext {
  readonly units: UnitSystem;
  readonly containers: readonly KnownContainer[];
  readonly lawns?: readonly KnownLawn[];
  /** the lawn chosen in the form: its area stands in where none is typed */
  readonly lawnId?: string | null;
  readonly places?: readonly KnownPlace[];
  /** dates in the text are read only when this is given */
  readonly today?: DayNumber;
  /** true when the label of the field already says the unit, so a number alone will do */
  readonly bareNumber?: boolean;
}

/** The unit an entry was typed in. Lengths are in mm inside for depths, in m for sides of a bed. */
export interface TypedUnit {
  readonly dimension: 'volume' | 'mass' | 'length' | 'area';
  readonly shown: ShownUnit;
}

/** Everything one entry said. What was not said is null. */
export interface AmountReading {
  readonly amount: Amount;
  readonly wetness: Wetness | null;
  readonly condition: Condition | null;
  readonly lawnId: string | null;
  readonly placeId: string | null;
  readonly day: DayNumber | null;
  /** the unit that came in, so that the answer can go back in it; null for containers */
  readonly unit: TypedUnit | null;
}

export type Dimension =
  'number' | 'containers' | 'volume' | 'mass' | 'length' | 'area' | 'temperature' | 'other';

/** Why an entry could not be read. `suggestion` is an entry that can be read in the same field. */
export type AmountFailure = { readonly field: Field; readonly suggestion: string } & (
  | { readonly kind: 'empty' }
  | { readonly kind: 'too-long'; readonly limit: number }
  | { readonly kind: 'strange-character'; readonly character: string }
  | { readonly kind: 'not-an-amount' }
  | { readonly kind: 'vague'; readonly word: string }
  | { readonly kind: 'no-unit'; readonly number: number }
  | { readonly kind: 'unknown-unit'; readonly word: string }
  | { readonly kind: 'unknown-container'; readonly word: string }
  | { readonly kind: 'unknown-place'; readonly word: string }
  | { readonly kind: 'no-lawn' }
  | { readonly kind: 'wrong-dimension'; readonly found: Dimension }
  | { readonly kind: 'mixed-dimensions' }
  | { readonly kind: 'two-amounts' }
  | { readonly kind: 'ambiguous-number'; readonly text: string }
  | { readonly kind: 'zero' }
  | { readonly kind: 'negative' }
  | { readonly kind: 'too-large'; readonly limit: string }
  | { readonly kind: 'ambiguous-date'; readonly text: string }
  | { readonly kind: 'unknown-day'; readonly text: string }
  | { readonly kind: 'future-day'; readonly text: string }
  | { readonly kind: 'no-start' }
);

type WithoutAdvice<Failure> = Failure extends AmountFailure
  ? Omit<Failure, 'field' | 'suggestion'>
  : never;
/** A failure before the door adds field and suggestion. */
export type Refusal = WithoutAdvice<AmountFailure>;
export type AmountFailureKind = AmountFailure['kind'];

/** Longest entry read; the document keeps up to 200 characters. */
export const longestEntry = 160;
