/** A generous width in px of a chart's small text, so that words are left out or given room rather than run into each other. */
export const textWidth = (text: string, strong = false): number => text.length * (strong ? 8.2 : 7);
