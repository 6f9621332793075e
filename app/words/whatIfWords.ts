import type { PairedOdds } from '../core/plan/pairedDraws';
import type { PlanWeights } from '../core/plan/question';
import { oddsWords, wholeParts } from './imaginedWords';

/** How an imagined season with a layer compares with the same season without. */
export const outcomes = ['better', 'alike', 'worse'] as const;
export type Outcome = (typeof outcomes)[number];

/** so many marks are drawn, each for a twentieth of the imagined seasons */
export const marksDrawn = 20;

/** Marks of each kind, together `drawn`. */
export function marksOf(
  odds: PairedOdds,
  drawn: number = marksDrawn,
): Readonly<Record<Outcome, number>> {
  const [better = 0, alike = 0, worse = 0] = wholeParts(
    outcomes.map((outcome) => odds[outcome]),
    drawn,
  );
  return { better, alike, worse };
}

/** "Better in 8 of 10 imagined seasons, worse in 1, as good as alike in 1" */
export function pairedOddsWords(odds: PairedOdds): string {
  const told = (['better', 'worse', 'alike'] as const).filter(
    (outcome) => odds[outcome] >= 0.05 || odds[outcome] > 0.5,
  );
  const tenths = wholeParts(
    told.map((outcome) => odds[outcome]),
    10,
  );
  const wordOf = { better: 'better', worse: 'worse', alike: 'as good as alike' };
  const line = told
    .flatMap((outcome, at) => {
      const count = tenths[at] ?? 0;
      if (count === 0) return [];
      if (at > 0) return [`${wordOf[outcome]} in ${String(count)}`];
      return [`${wordOf[outcome]} ${oddsWords(count === 10 ? odds[outcome] : count / 10)}`];
    })
    .join(', ');
  return line.charAt(0).toUpperCase() + line.slice(1);
}

/** What is read out in place of the marks. */
export function marksSpoken(odds: PairedOdds, drawn: number = marksDrawn): string {
  const { better, alike, worse } = marksOf(odds, drawn);
  return `Of ${String(drawn)} marks ${String(better)} better, ${String(worse)} worse, ${String(alike)} as good as alike`;
}

/** What one mark stands for. */
export function markWorth(count: number, effectiveCount: number): string {
  const seasons = count / marksDrawn;
  const each = `Each mark stands for ${String(seasons)} of ${String(count)} imagined seasons`;
  return effectiveCount < 0.95 * count
    ? `${each}, weighed by what was measured and seen.`
    : `${each}.`;
}

/** What is meant by better, for whoever asks. */
export function betterWords(weights: PlanWeights): readonly string[] {
  const { excess } = weights;
  return [
    'Each imagined season is gone through as the bed is, and once more with the layer. All else in it stays the same.',
    `Better means nearer to what the bed can use, and less of it bare. Under ${String(Math.round(100 * weights.lowShare))} % of it is too little, over ${String(Math.round(100 * weights.highShare))} % too much.`,
    `A gram too much counts ${String(excess.fruit)} times a gram too little where fruit, flowers or roots grow, and ${String(excess.legume)} times on beans and peas.`,
    `A bare square metre counts as ${String(weights.groundGrams)} g. These weights are our own judgement.`,
  ];
}

/** What lays an alternative; `stops` speak against it, and it says so. */
export const layAlternativeWords = (stops: number): string =>
  stops === 0 ? 'Lay it…' : `Lay it against ${stops === 1 ? 'a stop' : `${String(stops)} stops`}…`;

/** On the button beside room that is offered. */
export const tryWords = (bed: string): string => `In how many seasons it helps ${bed}`;
