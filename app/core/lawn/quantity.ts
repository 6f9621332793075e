import type { Kilograms, Litres, Millimetres, SquareMetres } from '../units';

/** The quantity a person meant. Mass is worked out from it each time and never stored beside it. */
export type Quantity =
  | { readonly kind: 'volume'; readonly litres: Litres }
  | { readonly kind: 'mass'; readonly kilograms: Kilograms }
  | { readonly kind: 'containers'; readonly count: number; readonly containerId: string }
  | {
      readonly kind: 'mown';
      readonly areaM2: SquareMetres;
      readonly heightMillimetres: Millimetres;
    }
  | { readonly kind: 'depth'; readonly millimetres: Millimetres };

/** How sure the person said they were; a wider range follows, never another middle. */
export type Certainty = 'plain' | 'about' | 'not sure';
export type Wetness = 'soaked' | 'damp' | 'dry';
