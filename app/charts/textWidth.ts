/**
 * Advance widths of the text face (Ysabeau Office, weight 480, tabular figures) in hundredths of
 * its size, as Chromium measures them; what is not listed is taken as an ordinary letter.
 */
const advances: readonly (readonly [hundredths: number, characters: string])[] = [
  [25, ' .:l·’'],
  [26, "'ij"],
  [28, '!,;'],
  [31, 'I'],
  [33, '²J'],
  [36, '?[]f'],
  [38, '()-/|\\rst'],
  [44, 'ac"'],
  [46, 'ekvxz'],
  [48, 'gy*'],
  [53, '0123456789$bdhnopquS<>F'],
  [55, '+=L–−~_'],
  [59, 'BEP'],
  [63, 'CKTXYZ#'],
  [68, 'ARV%&'],
  [73, 'DGUw'],
  [78, 'HNOQm…'],
  [92, 'M@'],
  [99, 'W'],
];
const widthOf = new Map(
  advances.flatMap(([hundredths, characters]) =>
    [...characters].map((character) => [character, hundredths / 100] as const),
  ),
);

/** Type size of a chart's words [px]: `--size-chart` of app/style/tokens.css. */
export const chartTextSize = 14;

/**
 * Width in px of a chart's words, a twentieth on the generous side, so that words are left out or
 * given room rather than run into each other.
 */
export const textWidth = (text: string, strong = false): number =>
  [...text].reduce((sum, character) => sum + (widthOf.get(character) ?? 0.53), 0) *
  chartTextSize *
  (strong ? 1.07 : 1.05);
