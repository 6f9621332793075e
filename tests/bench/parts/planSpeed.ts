import { join } from 'node:path';
import { dayOf } from '../../../app/core/days';
import { makePlan } from '../../../app/core/plan/makePlan';
import { parseGarden } from '../../../app/document/parse';
import { planQuestion } from '../../../app/document/planQuestion';
import { sampleText } from '../../../app/document/sampleGarden';
import type { Garden } from '../../../app/document/schema';
import { highsSolver } from '../../../app/solve/highsSolver';
import type { BenchPart } from '../part';
import { median, table, verdictOf } from '../table';

const times = 9;
const goals = { big: 1500, usual: 300 } as const;

/** The sample with so many beds: its own, and again from the first. */
function withBeds(garden: Garden, count: number): Garden {
  const more = garden.beds.slice(0, Math.max(0, count - garden.beds.length));
  const again = (id: string): string => `${id}-again`;
  const isAgain = ({ bedId }: { readonly bedId: string }): boolean =>
    more.some(({ id }) => id === bedId);
  const twice = <Thing extends { readonly id: string; readonly bedId: string }>(
    things: readonly Thing[],
  ): Thing[] => [
    ...things,
    ...things
      .filter(isAgain)
      .map((thing) => ({ ...thing, id: again(thing.id), bedId: again(thing.bedId) })),
  ];
  return {
    ...garden,
    beds: [...garden.beds, ...more.map((bed) => ({ ...bed, id: again(bed.id) }))],
    plantings: twice(garden.plantings),
    applications: twice(garden.applications),
  };
}

const timed = <Value>(run: () => Value): { readonly value: Value; readonly ms: number } => {
  const start = performance.now();
  const value = run();
  return { value, ms: performance.now() - start };
};

export const part: BenchPart = {
  title: 'how long a weekly plan takes',
  async run({ top, say }) {
    const parsed = parseGarden(sampleText);
    if (!parsed.ok || parsed.value.garden.today === null) throw new Error('No sample');
    const today = dayOf(parsed.value.garden.today);
    const loading = performance.now();
    const solve = await highsSolver({
      locate: (file) => join(top, 'node_modules', 'highs', 'build', file),
    });
    const load = performance.now() - loading;
    const rows: string[][] = [];
    for (const [name, beds, weeks, goal] of [
      ['the sample: 9 beds, 10 weeks', 9, 10, goals.usual],
      ['12 beds, 20 weeks', 12, 20, goals.big],
    ] as const) {
      const garden = withBeds(parsed.value, beds);
      const asked = timed(() => planQuestion(garden, today, undefined, weeks));
      const materials = new Set(
        asked.value.sources
          .filter(({ heldBack }) => heldBack === null)
          .map(({ ref }) => (ref.source === 'stock' ? ref.stockId : 'clippings')),
      ).size;
      const plan = (): number => {
        const { value, ms } = timed(() => makePlan(asked.value, solve));
        if (!value.ok || value.value.how.kind !== 'solved') throw new Error(`${name}: no plan`);
        return ms;
      };
      const cold = plan();
      const warm = median(Array.from({ length: times }, plan));
      rows.push([
        `${name}, ${materials} materials`,
        asked.ms.toFixed(0),
        cold.toFixed(0),
        warm.toFixed(0),
        String(goal),
        verdictOf(warm, goal),
      ]);
      say(name);
    }
    return `The solver takes ${load.toFixed(0)} ms to load. Cold is the first plan of a run, warm the median of ${times} more.

${table(['', 'question [ms]', 'cold [ms]', 'warm [ms]', 'goal [ms]', ''], rows)}`;
  },
};
