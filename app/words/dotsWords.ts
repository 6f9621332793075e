import { timesWords } from './figures';

export const dotsWords = {
  title: 'Imagined seasons, to be counted',
  how: 'Each dot is one in twenty, by what is in hand and to come over what the crop can use. Move the line with a press or the arrow keys, or type where it should stand.',
  slider: 'The line over the dots',
  field: 'The line stands at (times)',
  unreadable: 'Type how many times what the crop can use, such as 1.2.',
  asTable: 'The dots as a list',
  hideTable: 'Hide the dots in figures',
  dot: 'dot',
  value: 'times what the crop can use',
} as const;

/** "13 of 20 dots lie past 1.2 times, where it has too much." The line is told as it is shown. */
export function dotsSay(
  past: number,
  of: number,
  line: number,
  overFedLine: number | null,
): string {
  const isLine = overFedLine !== null && Math.abs(line - overFedLine) < 0.005;
  const count =
    past === of
      ? `All ${of} dots lie`
      : `${past === 0 ? 'None' : past} of ${of} dots ${past < 2 ? 'lies' : 'lie'}`;
  return `${count} past ${timesWords(line)}${isLine ? ', where it has too much' : ''}.`;
}
