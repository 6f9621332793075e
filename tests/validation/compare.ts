import { likelyRange } from '../../app/core/drawRow';
import { ammoniaCases } from './cases/ammonia';
import { cropCases } from './cases/crops';
import { emergenceCases } from './cases/emergence';
import { jars } from './cases/jars';
import { litterCases } from './cases/litter';
import type { Cases, Ours } from './cases/shape';
import { signCases } from './cases/signs';
import { tilled } from './cases/tilled';
import { draws, Values } from './drawn';
import measuredFacts from './measured.json' with { type: 'json' };
import signFacts from './signs.json' with { type: 'json' };

/**
 * Whether our numbers rest on the measurement. `none`: no. `kin`: it is of the kind that our own
 * factors were set against. `row`: a row of the tables was taken from it, so that agreement proves
 * little.
 */
export type SetBy = 'none' | 'kin' | 'row';

interface Fact {
  readonly id: string;
  readonly group: string;
  readonly what: string;
  readonly unit: string;
  readonly source: string;
  readonly place: string;
  readonly standing: string;
  readonly setBy: string;
  readonly low: number;
  readonly high: number;
  /** only an upper end is printed: less is no mistake */
  readonly atMost?: boolean;
}

export interface Compared {
  readonly fact: Fact;
  /** middle of what was measured */
  readonly measured: number;
  readonly typical: number;
  /** 10 and 90 % points of the draws */
  readonly low: number;
  readonly high: number;
  /** the middle of what was measured lies in our range */
  readonly isInside: boolean;
  /** it does not, but some of what was measured does */
  readonly touches: boolean;
}

export interface ComparedSign {
  readonly fact: (typeof signFacts)[number];
  readonly agreesTypically: boolean;
  /** draws that agree */
  readonly agreeing: number;
}

export interface Score {
  readonly cases: number;
  /** ours at likely values less the middle of what was measured, mean */
  readonly bias: number;
  readonly rootMeanSquare: number;
  readonly inside: number;
  readonly meanWidth: number;
}

const ours: Cases = {
  ...jars,
  ...tilled,
  ...litterCases,
  ...ammoniaCases,
  ...cropCases,
  ...emergenceCases,
};
export const casesWithoutFacts = (): string[] => {
  const known = new Set([...measuredFacts, ...signFacts].map(({ id }) => id));
  return [...Object.keys(ours), ...Object.keys(signCases)].filter((id) => !known.has(id));
};

interface Answer {
  readonly typical: number;
  readonly drawn: readonly number[];
}

/** Likely answer and draws; findings that one run answers share it. */
function answers(): (of: Ours) => Answer {
  const sets = Array.from({ length: draws }, (_, draw) => new Values(draw));
  const likely = new Values(null);
  const known = new Map<Ours, Answer>();
  return (of) => {
    const answer = known.get(of) ?? { typical: of(likely), drawn: sets.map(of) };
    known.set(of, answer);
    return answer;
  };
}

function lookUp(table: Cases, id: string): Ours {
  const found = table[id];
  if (!found) throw new Error(`Nothing of ours stands against ${id}`);
  return found;
}

/** Every measured number with ours and its range. */
export function compareAll(): Compared[] {
  const answer = answers();
  return measuredFacts.map((fact: Fact) => {
    const { typical, drawn } = answer(lookUp(ours, fact.id));
    const { low, high } = likelyRange(drawn);
    const measured = (fact.low + fact.high) / 2;
    const isInside = fact.atMost
      ? low <= fact.high && high >= fact.low
      : measured >= low && measured <= high;
    const touches = !isInside && fact.high >= low && fact.low <= high;
    return { fact, measured, typical, low, high, isInside, touches };
  });
}

/** Every finding that is only a direction, with how many draws agree. */
export function compareSigns(): ComparedSign[] {
  const answer = answers();
  return signFacts.map((fact) => {
    const { typical, drawn } = answer(lookUp(signCases, fact.id));
    return {
      fact,
      agreesTypically: typical > 0,
      agreeing: drawn.filter((value) => value > 0).length,
    };
  });
}

const mean = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

/** Bias, error and range of some cases of one unit. */
export function scoreOf(cases: readonly Compared[]): Score {
  const errors = cases.map((one) => one.typical - one.measured);
  return {
    cases: cases.length,
    bias: mean(errors),
    rootMeanSquare: Math.sqrt(mean(errors.map((error) => error * error))),
    inside: cases.filter((one) => one.isInside).length,
    meanWidth: mean(cases.map((one) => one.high - one.low)),
  };
}
