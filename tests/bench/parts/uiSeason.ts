import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';
import { grownGardens, howMeasured, inBrowser } from '../ui/inBrowser';
import { placeTimes } from '../ui/season';

/** even, so that the planting stands where it stood at the end */
const rounds = 6;
const ms = (value: number): string => value.toFixed(0);

export const part: BenchPart = {
  title: 'the other places, and a planting moved in Season',
  async run(bench) {
    const measured = await inBrowser(
      bench,
      (browser, address, { repaintLimit }) => placeTimes(browser, address, rounds, repaintLimit),
      grownGardens,
    );
    const rows = measured.flatMap(([{ beds, years = 1 }, times]) =>
      times.map(({ what, milliseconds, worked, limit }) => [
        `${beds} beds, ${years === 1 ? '1 year' : `${years} years`}: ${what}`,
        ms(median(milliseconds)),
        ms(Math.min(...milliseconds)),
        ms(Math.max(...milliseconds)),
        ms(median(worked)),
        String(limit),
        verdictOf(median(milliseconds), limit),
      ]),
    );
    const head = ['', 'median [ms]', 'fastest', 'slowest', 'worked [ms]', 'limit', ''];
    return `${howMeasured}. A place is opened twice from This week: from the press to the frame that shows it with its parts. In Season a planting is moved a week by key and kept with Enter, ${rounds} times: from the key's own time to the frame that shows it there, and to the frame that shows its bed's soil reckoned anew. Worked is the median processor time of the page's own thread meanwhile.

${table(head, rows)}`;
  },
};
