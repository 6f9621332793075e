import type { CoverState, NitrogenState, Weight } from '../core/season/verdict';

/**
 * One outline in a 20 x 20 box. `solid` is filled with the mark's colour, `open` only drawn
 * round, so that a mark keeps its shape without any colour.
 */
export interface MarkShape {
  readonly solid: string;
  readonly open: string;
}

/**
 * The bed as a bowl of nitrogen: three blades that have outgrown the ground, a full bowl with its
 * lid on, a bowl, a leaf, a drooping empty tip, a bare line. No two share an outline.
 */
export const nitrogenShapes: Readonly<Record<NitrogenState, MarkShape>> = {
  'over-fed': {
    solid: 'M10 18.5 L1 8 L7 10.5 L10 1 L13 10.5 L19 8 Z',
    open: '',
  },
  'enough to the end': {
    solid: 'M10 2.5 a7.5 7.5 0 1 0 0 15 a7.5 7.5 0 1 0 0 -15 Z',
    open: '',
  },
  'enough for now': {
    solid: 'M2 8.5 H18 A8 8 0 0 1 2 8.5 Z',
    open: '',
  },
  'about right': {
    solid: 'M10 1.5 C16 7 16 13 10 18.5 C4 13 4 7 10 1.5 Z',
    open: '',
  },
  short: {
    solid: '',
    open: 'M2.5 4 H17.5 L10 17 Z',
  },
  'nothing planted': {
    solid: '',
    open: 'M2 11.5 H18 V15.5 H2 Z',
  },
};

/** What one sees of the ground: crumbs, a broken mat, a rounded cover, a stack past the rim. */
export const coverShapes: Readonly<Record<CoverState, MarkShape>> = {
  bare: {
    solid:
      'M3 13 a1.6 1.6 0 1 0 0.1 0 Z M10 10.5 a1.6 1.6 0 1 0 0.1 0 Z M17 13 a1.6 1.6 0 1 0 0.1 0 Z',
    open: '',
  },
  thin: {
    solid: 'M1 12 H8 V16 H1 Z M12 12 H19 V16 H12 Z',
    open: '',
  },
  good: {
    solid: 'M1 16 C2 7 18 7 19 16 Z',
    open: '',
  },
  'too deep': {
    solid: 'M4 18 V12.5 H16 V18 Z M5 11 V6.5 H15 V11 Z M7 5 V1.5 H13 V5 Z',
    open: '',
  },
};

/** Things one pushes into a bed: a plant label, a pennant on its stake, a shut gate. */
export const weightShapes: Readonly<Record<Weight, MarkShape>> = {
  note: {
    solid: '',
    open: 'M6 2.5 H14 V12 L10 18 L6 12 Z',
  },
  caution: {
    solid: 'M4 1 H6.5 V2 L18 7 L6.5 12 V19 H4 Z',
    open: '',
  },
  stop: {
    solid: 'M1 2 H5 V6 H15 V2 H19 V18 H15 V14 H5 V18 H1 Z M5 8.5 V11.5 H15 V8.5 Z',
    open: '',
  },
};

/** Class names cannot hold the spaces of a state's word. */
export const classOfWord = (word: string): string => word.replaceAll(' ', '-');
