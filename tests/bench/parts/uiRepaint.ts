import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';
import { ofOneYear, inBrowser } from '../ui/inBrowser';
import { repaints } from '../ui/repaint';

/** even, so that the layer lies there again at the end */
const rounds = 10;
const ms = (value: number): string => value.toFixed(0);

export const part: BenchPart = {
  title: 'from an edit to its repaint',
  async run(bench) {
    const measured = await inBrowser(bench, (browser, address) =>
      repaints(browser, address, rounds),
    );
    const rows = measured.flatMap(([{ beds, repaintLimit }, repaint]) =>
      repaint.map(({ place, milliseconds, worked }) => [
        `${beds} beds, ${place}`,
        ms(median(milliseconds)),
        ms(Math.min(...milliseconds)),
        ms(Math.max(...milliseconds)),
        ms(median(worked)),
        String(repaintLimit),
        verdictOf(median(milliseconds), repaintLimit),
      ]),
    );
    const head = ['', 'median [ms]', 'fastest', 'slowest', 'worked [ms]', 'limit', ''];
    return `${ofOneYear}. A layer of 30 L on one bed is taken back and done again by key, ${rounds} times: from the key's own time to the frame that shows the bed's cover without it or with it, at typical values; imagined seasons go on beside it. Worked is the median processor time of the page's own thread meanwhile, and until somebody looked.

${table(head, rows)}`;
  },
};
