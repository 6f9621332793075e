import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';
import { firstPaints } from '../ui/firstPaint';
import { ofOneYear, inBrowser } from '../ui/inBrowser';

const paintLimit = 1000;
const rounds = 5;
const ms = (value: number): string => value.toFixed(0);

export const part: BenchPart = {
  title: 'the first page',
  async run(bench) {
    const measured = await inBrowser(bench, (browser, address) =>
      firstPaints(browser, address, rounds),
    );
    const rows = measured.flatMap(([{ beds }, first]) =>
      first.map(({ what, milliseconds }) => [
        `${beds} beds, ${what}`,
        ms(median(milliseconds)),
        ms(Math.max(...milliseconds)),
        verdictOf(median(milliseconds), paintLimit),
      ]),
    );
    return `${ofOneYear}. From the request of the page, nothing kept from before, medians of ${rounds}.

${table(['first useful paint', 'median [ms]', 'slowest', `limit ${paintLimit} ms`], rows)}`;
  },
};
