/** Why a figure is what it is, in words that can be shown as they are. */
export interface Why {
  /** what the figure is: "in hand and to come, over all it can use" */
  readonly of: string;
  /** how it is made, in words */
  readonly formula: string;
  /** what went in, each with its value */
  readonly inputs: readonly (readonly [words: string, value: string])[];
  /** where it lies in most imagined seasons; null: not known, or not drawn */
  readonly range: string | null;
  /** where its numbers come from and how well they are known, a sentence each */
  readonly sources: readonly string[];
}

/** A figure as it stands in a sentence, with what stands behind it. */
export interface FigureInText {
  readonly text: string;
  readonly why: Why;
}

/** A stretch of a sentence: plain words, or a figure by its place in the list. */
export type Stretch = string | { readonly figure: number; readonly text: string };

/**
 * Cuts a sentence at its figures. Each is looked for from the start, one that is named twice at its
 * second place, and is left in the plain words where it is not there, lies over another, or is part
 * of a longer number.
 */
export function cutAtFigures(says: string, figures: readonly string[]): readonly Stretch[] {
  const found = figures
    .map((text, figure) => {
      const earlier = figures.slice(0, figure).filter((other) => other === text).length;
      let at = placeOf(says, text, 0);
      for (let nth = 0; nth < earlier && at >= 0; nth++) at = placeOf(says, text, at + text.length);
      return { text, figure, at };
    })
    .filter(({ at }) => at >= 0)
    .toSorted((one, other) => one.at - other.at);
  const stretches: Stretch[] = [];
  let from = 0;
  for (const { text, figure, at } of found) {
    if (at < from) continue;
    if (at > from) stretches.push(says.slice(from, at));
    stretches.push({ figure, text });
    from = at + text.length;
  }
  if (from < says.length) stretches.push(says.slice(from));
  return stretches;
}

/** The figures of a sentence that have a unit, "3.7 to 11 g/m²" as one. */
export function figuresWith(says: string, unit: string): readonly string[] {
  const number = String.raw`[−-]?\d[\d.,]*(?: \d+/\d+)?`;
  const escaped = unit.replaceAll(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);
  return says.match(new RegExp(`${number}(?: to ${number})? ${escaped}(?![\\w/²])`, 'g')) ?? [];
}

const isPartOfNumber = (character: string | undefined): boolean =>
  character !== undefined && /[\d.,/]/.test(character);

function placeOf(says: string, text: string, from: number): number {
  if (text === '') return -1;
  for (let at = says.indexOf(text, from); at >= 0; at = says.indexOf(text, at + 1))
    if (!isPartOfNumber(says[at - 1]) || !/^\d/.test(text)) {
      const after = says[at + text.length];
      const endsInNumber = /\d$/.test(text);
      if (!endsInNumber || !/\d/.test(after ?? '')) return at;
    }
  return -1;
}

/** The name of a figure's button. */
export const whyName = (text: string): string => `${text}: why?`;

/** What heads the parts of what stands behind a figure. */
export const whyWords = {
  goesIn: 'What goes in',
  range: 'Likely',
  from: 'Where from',
  model: 'Reckoned day by day from what was written down; days to come are imagined.',
  balance: 'Mass balance: so by definition.',
} as const;
