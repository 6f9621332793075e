import type { BenchPart } from '../part';
import { table, verdictOf } from '../table';
import { ofOneYear, inBrowser } from '../ui/inBrowser';
import { tasksWhileTyping } from '../ui/typing';

const taskLimit = 100;
const ms = (value: number): string => value.toFixed(0);

export const part: BenchPart = {
  title: 'long tasks while typing',
  async run(bench) {
    const measured = await inBrowser(bench, tasksWhileTyping);
    const rows = measured.flatMap(([{ beds }, typing]) =>
      typing.map(({ field, tasks, workedALetter }) => {
        const longest = Math.max(0, ...tasks);
        return [
          `${beds} beds, ${field}`,
          String(tasks.length),
          longest > 0 ? ms(longest) : 'none over 50',
          ms(workedALetter),
          verdictOf(longest, taskLimit),
        ];
      }),
    );
    const head = ['', 'over 50 ms', 'longest [ms]', 'worked a letter [ms]', `limit ${taskLimit}`];
    return `${ofOneYear}. Tasks that kept the page's own thread for over 50 ms while somebody typed, and for three seconds after; worked is the processor time of that thread, for each letter.

${table(head, rows)}`;
  },
};
