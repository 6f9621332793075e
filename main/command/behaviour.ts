import { join } from 'node:path';
import { dayFromParts, dayOf, yearOf, type DayNumber } from '../../app/core/days';
import { answerBed, type BedAnswer } from '../../app/core/season/bedAnswer';
import { flowKinds, type FlowKind } from '../../app/core/season/flows';
import { runSeason } from '../../app/core/season/season';
import { stateHistory } from '../../app/core/season/stateHistory';
import { bedQuestion } from '../../app/document/bedQuestion';
import type { Garden } from '../../app/document/schema';
import { bedSeason } from '../../app/document/seasonInput';
import { limits } from '../../app/tables/thresholds';
import { exitCodes } from './exitCodes';
import { fileSentence } from './fileSentence';
import { readGarden } from './gardenFile';
import type { Voice } from './ledger';

interface Checked {
  readonly holds: boolean;
  readonly says: string;
}

interface Bench {
  /** runs the only bed of a check garden on its own day */
  readonly bed: (name: string) => { garden: Garden; answer: BedAnswer; today: DayNumber };
}

const sumOf = (answer: BedAnswer, wanted: (kind: FlowKind) => boolean): number =>
  flowKinds.reduce(
    (sum, kind, index) =>
      wanted(kind) ? sum + answer.season.flows[index]!.reduce((all, one) => all + one, 0) : sum,
    0,
  );

const figure = (value: number): string => (value === 0 ? '0' : value.toPrecision(3));
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const fixedBy = (answer: BedAnswer): number => answer.season.plantings[0]!.fixed;

/** One line each: what must be so, and what the engine says on `assets/gardens/checks`. */
const checks: readonly ((bench: Bench) => Checked)[] = [
  ({ bed }) => {
    const taken = sumOf(
      bed('straw-laid').answer,
      ({ from, to }) => from === 'mineralTop' && (to === 'coverMicrobes' || to === 'dugMicrobes'),
    );
    return {
      holds: taken < 0.5,
      says: `10 cm of straw laid on costs the soil ${figure(taken)} g/m2 all season (under 0.5)`,
    };
  },
  ({ bed }) => {
    const met = bed('straw-dug').answer.season.plantings[0]!.demandMet;
    return {
      holds: met < 0.25,
      says: `the same straw dug in on planting day leaves the tomato ${percent(met)} of its need (under 25 %)`,
    };
  },
  ({ bed }) => {
    const share = fixedBy(bed('beans-one-layer').answer) / fixedBy(bed('beans-bare').answer);
    const stops = bed('beans-one-layer').answer.cautions.filter(({ weight }) => weight === 'stop');
    return {
      holds: share >= 0.8 && stops.length === 0,
      says: `one 6 mm layer on climbing beans keeps ${percent(share)} of the bare bed's fixation (at least 80 %), stops: ${stops.length} (none)`,
    };
  },
  ({ bed }) => {
    const { answer } = bed('beans-weekly');
    const share = fixedBy(answer) / fixedBy(bed('beans-bare').answer);
    const first = [...answer.input.layers].sort((a, b) => a.day - b.day)[0]!;
    const stopped = answer.cautions.some(
      ({ weight, layerId }) => weight === 'stop' && layerId === first.id,
    );
    return {
      holds: share <= 0.2 && stopped,
      says: `25 mm weekly leaves ${percent(share)} of it (at most 20 %), stop on the first layer: ${stopped ? 'yes' : 'no'} (yes)`,
    };
  },
  ({ bed }) => {
    const leached = sumOf(bed('dry').answer, ({ to }) => to === 'leached');
    return {
      holds: leached === 0,
      says: `no rain and no watering: leached ${figure(leached)} g/m2 (exactly 0)`,
    };
  },
  ({ bed }) => {
    const { answer } = bed('frozen');
    const moved = sumOf(
      answer,
      ({ from, to, why }) =>
        why === 'eaten' || to === 'ammonia' || from === 'soilOrganic' || from === 'youngHumus',
    );
    return {
      holds: moved === 0 && answer.input.layers.length > 0,
      says: `air at -5 C all year: decay, release and ammonia ${figure(moved)} g/m2 (exactly 0)`,
    };
  },
  ({ bed }) => {
    const { answer, today } = bed('bare');
    const { season } = answer;
    const year = yearOf(today);
    const from = dayFromParts(year, 4, 1) - season.firstDay;
    const to = dayFromParts(year, 10, 31) - season.firstDay;
    const released = flowKinds.reduce(
      (sum, kind, index) =>
        kind.from === 'soilOrganic'
          ? sum + season.flows[index]!.slice(from, to + 1).reduce((all, one) => all + one, 0)
          : sum,
      0,
    );
    const share = released / season.start.soilOrganic;
    return {
      holds: share >= 0.01 && share <= 0.02,
      says: `a bare bed releases ${percent(share)} of its organic nitrogen April to October (1.0-2.0 %)`,
    };
  },
  ({ bed }) => {
    const { garden, answer, today } = bed('beans-bare');
    const sown = Math.min(...garden.plantings.map(({ started }) => dayOf(started)));
    const weeks = stateHistory(
      sown,
      today,
      (day) => {
        const input = bedSeason(garden, answer.bedId, day, { knownThen: true });
        return { input, result: runSeason(input) };
      },
      limits,
    );
    const short = weeks.filter(({ verdict }) => verdict.state === 'short').length;
    return {
      holds: short === 0 && weeks.length > 10,
      says: `a bare bed of climbing beans is short in ${short} of ${weeks.length} weeks (never)`,
    };
  },
  ({ bed }) => {
    const wet = bed('rain').answer.verdict.state;
    const dry = bed('rain-twin').answer.verdict.state;
    return {
      holds: dry === 'over-fed' && wet !== 'about right' && wet !== 'short',
      says: `100 mm of rain on an over-fed bed leaves it "${wet}" (its twin without the rain: "${dry}")`,
    };
  },
];

/**
 * `behaviour`: what the engine must do on the check gardens (New York weather of 2013, loam, 3 %
 * organic matter), one line each.
 */
export function behaviour(program: string, voice: Voice): number {
  const seen = new Map<string, ReturnType<Bench['bed']>>();
  const bed: Bench['bed'] = (name) => {
    const known = seen.get(name);
    if (known) return known;
    const read = readGarden(join(program, 'assets/gardens/checks', `${name}.mowings`), program);
    if (!read.ok) throw new Error(fileSentence(read.error));
    const garden = read.value;
    const [only] = garden.beds;
    if (!only || garden.garden.today === null) throw new Error(`${name} has no bed or no day`);
    const today = dayOf(garden.garden.today);
    const answer = answerBed(bedQuestion(garden, only.id, today), limits);
    const made = { garden, answer, today };
    seen.set(name, made);
    return made;
  };
  let failed = 0;
  for (const check of checks) {
    const { holds, says } = check({ bed });
    if (!holds) failed++;
    voice.answer(`${holds ? 'holds' : 'FAILS'}  ${says}\n`);
  }
  return failed === 0 ? exitCodes.done : exitCodes.behaviour;
}
