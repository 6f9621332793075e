export interface Paper {
  readonly name: string;
  /** what the margins leave [CSS px] */
  readonly width: number;
  readonly height: number;
}

const pxPerMillimetre = 96 / 25.4;
/** As `@page` in the styles has it. */
const margin = 15;
const paper = (name: string, width: number, height: number): Paper => ({
  name,
  width: (width - 2 * margin) * pxPerMillimetre,
  height: (height - 2 * margin) * pxPerMillimetre,
});

// ISO 216 and ANSI Y14.1: exact by definition
export const papers: readonly Paper[] = [paper('A4', 210, 297), paper('Letter', 215.9, 279.4)];
