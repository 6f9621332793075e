import { cpus, setPriority } from 'node:os';
import { join } from 'node:path';
import type { Bench, BenchPart } from '../part';
import type { Compared } from '../plan/compareGardens';
import { playGardens } from '../plan/gardenPlayers';
import { gardenSets, type GardenSet } from '../plan/gardenSets';
import { codeOf, keptGardens } from '../plan/keptGardens';
import { median, table } from '../table';

const wantedShare = 0.95;
/** Others at work on the machine come first: it takes many minutes. */
const niceness = 5;
const mostThreads = 2;
const worker = 'planWorker';

const share = (count: number, of: number): string => `${((100 * count) / of).toFixed(1)} %`;

const seedsOf = ({ first, last }: GardenSet, most: number): number[] =>
  Array.from({ length: Math.min(most, last - first + 1) }, (_unused, at) => first + at);

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

const head = ['garden', 'beds', 'nothing', 'plan', 'nearest', 'evenly', 'where the plan loses'];
const row = (one: Compared): string[] => [
  String(one.seed),
  String(one.beds),
  one.nothing.toFixed(0),
  one.plan.toFixed(0),
  one.nearest.toFixed(0),
  one.evenly.toFixed(0),
  one.why,
];

/** How the plan did in a set of gardens. */
function report(set: GardenSet, all: readonly Compared[]): string {
  const whole = set.last - set.first + 1;
  const losers = all.filter(({ why }) => why !== '');
  const partial =
    all.length < whole
      ? ` **Partial: only ${all.length} of the ${whole} gardens were played; nothing is claimed of the rest.**`
      : '';
  return `### Gardens ${set.first} to ${set.last}, ${set.name}

${set.note[0]!.toUpperCase()}${set.note.slice(1)}.${partial}

${summary(all)}

${losers.length === 0 ? 'The plan loses nowhere.' : `Where it loses:\n\n${table(head, losers.map(row))}`}`;
}

/** One of each set after the other, so that a run that is cut short has as much of each. */
const inTurns = (sets: readonly (readonly number[])[]): number[] =>
  Array.from({ length: Math.max(...sets.map(({ length }) => length)) }, (_unused, at) =>
    sets.flatMap((seeds) => seeds[at] ?? []),
  ).flat();

async function played(bench: Bench, most: number): Promise<ReadonlyMap<number, Compared>> {
  const kept = keptGardens(codeOf(bench.folder, worker));
  const seeds = inTurns(gardenSets.map((set) => seedsOf(set, most)));
  const missing = seeds.filter((seed) => !kept.bySeed.has(seed));
  bench.say(`${missing.length} of ${seeds.length} gardens to play; ${kept.file}`);
  await playGardens(
    bench.worker(worker),
    { solverFolder: join(bench.top, 'node_modules', 'highs', 'build') },
    missing,
    Math.min(mostThreads, cpus().length),
    (garden) => {
      kept.keep(garden);
      const done = seeds.filter((seed) => kept.bySeed.has(seed)).length;
      if (done % 10 === 0) bench.say(`${done} of ${seeds.length} gardens`);
    },
  );
  return kept.bySeed;
}

/**
 * Cut short, it goes on where it was as long as no code was changed. `PLAN_GARDENS=20` plays the first
 * twenty of every set.
 */
export const part: BenchPart = {
  title: 'the weekly plan against two rules of thumb',
  async run(bench) {
    setPriority(niceness);
    const most = Number(process.env['PLAN_GARDENS'] ?? Infinity);
    const all = await played(bench, most);
    const reports = gardenSets.map((set) =>
      report(
        set,
        seedsOf(set, most).map((seed) => all.get(seed)!),
      ),
    );
    return `Made-up gardens: two to seven beds of mixed soils and crops, lawns three to thirty times as large as all beds together, leaves and straw or none. Every week for two months, then every fourth, the lawns are mown, the plan is made anew from what is known on that day, and what it says for that day is done; then weather comes that no plan knew, warmer or colder and wetter or drier than usual, and yields other than expected. The rules of thumb lay all greens and browns there are, on as many beds as they like. Scores are the distance of nitrogen and ground from what is wanted, in g N, by the full model, summed over the weeks to the season's end; the smaller the better.

${reports.join('\n\n')}`;
  },
};
