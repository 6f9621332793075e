import { join } from 'node:path';
import { highsSolver } from '../../../app/solve/highsSolver';
import type { BenchPart } from '../part';
import { compareGarden, type Compared } from '../plan/compareGardens';
import { median, table } from '../table';

/** Gardens of the goal; `PLAN_GARDENS=20 npm run bench -- plan` plays the first twenty. */
const allGardens = 200;
const wantedShare = 0.95;

const share = (count: number, of: number): string => `${((100 * count) / of).toFixed(1)} %`;

function summary(all: readonly Compared[]): string {
  const against = (name: string, of: (one: Compared) => number): string[] => {
    const wins = all.filter((one) => one.plan < of(one)).length;
    return [
      name,
      `${wins} of ${all.length}`,
      share(wins, all.length),
      median(all.map((one) => one.plan / of(one))).toFixed(2),
      wins >= wantedShare * all.length ? 'met' : '**missed**',
    ];
  };
  return table(
    ['against', 'gardens where the plan is better', 'share', 'median of plan / other', 'goal 95 %'],
    [
      against('all on the nearest bed', (one) => one.nearest),
      against('evenly over all beds', (one) => one.evenly),
      against('both', (one) => Math.min(one.nearest, one.evenly)),
      against('nothing laid', (one) => one.nothing),
    ],
  );
}

const row = (one: Compared): string[] => [
  String(one.seed),
  String(one.beds),
  one.nothing.toFixed(0),
  one.plan.toFixed(0),
  one.nearest.toFixed(0),
  one.evenly.toFixed(0),
  one.why,
];

export const part: BenchPart = {
  title: 'the weekly plan against two rules of thumb',
  async run({ top, say }) {
    const count = Number(process.env['PLAN_GARDENS'] ?? allGardens);
    const solve = await highsSolver({
      locate: (file) => join(top, 'node_modules', 'highs', 'build', file),
      seconds: 60,
    });
    const all: Compared[] = [];
    for (let seed = 1; seed <= count; seed++) {
      all.push(compareGarden(seed, solve));
      if (seed % 10 === 0) say(`${seed} of ${count} gardens`);
    }
    const losers = all.filter(({ why }) => why !== '');
    const head = ['garden', 'beds', 'nothing', 'plan', 'nearest', 'evenly', 'where the plan loses'];
    return `Made-up gardens number 1 to ${count}: two to seven beds of mixed soils and crops, lawns three to thirty times as large as all beds together, leaves and straw or none. Every week for two months, then every fourth, the lawns are mown, the plan is made anew from what is known on that day, and what it says for that day is done; then weather comes that no plan knew, warmer or colder and wetter or drier than usual, and yields other than expected. The rules of thumb lay all greens and browns there are. Scores are the distance of nitrogen and ground from what is wanted, in g N, by the full model, summed over the weeks to the season's end; the smaller the better.

${summary(all)}

${losers.length === 0 ? 'The plan loses nowhere.' : `Where it loses:\n\n${table(head, losers.map(row))}`}

The first twenty:

${table(head, all.slice(0, 20).map(row))}`;
  },
};
