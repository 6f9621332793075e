import { join } from 'node:path';
import { unitsOf } from '../../app/amounts/unitSystem';
import type { PlanAnswer } from '../../app/core/plan/answer';
import { dayFromText, textFromDay, type DayNumber } from '../../app/core/days';
import type { Solver } from '../../app/core/plan/linearProgramme';
import { makePlan } from '../../app/core/plan/makePlan';
import { oddsOf, runPaired } from '../../app/core/plan/pairedDraws';
import { planNamesOf } from '../../app/document/planNames';
import { planOddsQuestions } from '../../app/document/planOdds';
import { planQuestion } from '../../app/document/planQuestion';
import type { Garden } from '../../app/document/schema';
import { highsSolver } from '../../app/solve/highsSolver';
import { basisOf, limits } from '../../app/tables/thresholds';
import { cautionWords } from '../../app/words/cautions';
import { dayFull } from '../../app/words/chartFormat';
import { chartUnits } from '../../app/words/chartUnits';
import {
  leftOutWords,
  mowWords,
  planAmountWords,
  planLayerWords,
  planLimitWords,
  planSourceWords,
  planTurnWords,
  planWhyWords,
  worthWords,
  type PlanNames,
} from '../../app/words/planWords';
import { restWords } from '../../app/words/restWords';
import {
  effectWords,
  mendWords,
  planTroubleWords,
  simpleRuleWords,
} from '../../app/words/planWorth';
import { planOddsWords } from '../../app/words/planOddsWords';
import { footLines } from '../../app/words/safetyLines';
import { exitCodes } from './exitCodes';
import { fileSentence } from './fileSentence';
import { readGarden } from './gardenFile';
import { dayOfGarden, type Voice } from './ledger';
import { folded } from './ledgerText';

interface WeekWishes {
  /** null: the sample garden */
  readonly file: string | null;
  /** null: the garden's own day */
  readonly day: DayNumber | null;
  readonly json: boolean;
}

/** Reads the words after `week`; a sentence when they make no sense. */
export function weekWishes(words: readonly string[]): WeekWishes | string {
  let file: string | null = null;
  let day: DayNumber | null = null;
  let json = false;
  for (let at = 0; at < words.length; at++) {
    const word = words[at]!;
    if (word === '--json') json = true;
    else if (word === '--date') {
      const text = words[++at] ?? '';
      day = dayFromText(text);
      if (day === null) return `"--date" wants a day after it, such as 2013-06-15, not "${text}".`;
    } else if (word.startsWith('--'))
      return `"${word}" is not known here. There are --date D and --json.`;
    else if (file !== null) return `Only one garden at a time: "${file}" or "${word}".`;
    else file = word;
  }
  return { file, day, json };
}

/** A garden with nothing written down after a day: what could have been known on it. */
function gardenAsOf(garden: Garden, today: DayNumber): Garden {
  const last = textFromDay(today);
  const until = <Thing extends { readonly date: string }>(things: readonly Thing[]): Thing[] =>
    things.filter(({ date }) => date <= last);
  const mowings = until(garden.mowings);
  const isThere = new Set(mowings.map(({ id }) => id));
  return {
    ...garden,
    mowings,
    applications: until(garden.applications).filter(
      ({ from }) => from.source !== 'mowing' || isThere.has(from.mowingId),
    ),
    events: until(garden.events),
  };
}

/** Imagined seasons that each line is counted in. */
const imaginedSeasons = 100;

/** A plan with the odds of its lines. */
function withOdds(garden: Garden, plan: PlanAnswer): PlanAnswer {
  const questions = planOddsQuestions(garden, plan.today, plan, imaginedSeasons);
  return {
    ...plan,
    lines: plan.lines.map((line, at) => ({
      ...line,
      odds: oddsOf(runPaired(questions[at]!, limits)),
    })),
  };
}

/** The plan for reading in a terminal, or on a paper to take outside. */
function planAsText(garden: Garden, answer: PlanAnswer, names: PlanNames): string[] {
  const { today } = answer;
  const units = chartUnits(garden.garden.shownUnits);
  const screenUnits = unitsOf(garden.garden.shownUnits);
  const says = (caution: Parameters<typeof cautionWords>[0]): string =>
    `${caution.weight}: ${cautionWords(caution, basisOf(caution), screenUnits).says}`;
  const lines = answer.lines.flatMap(({ bedId, layers, odds, why, cautions }, at) => [
    names.bed(bedId),
    ...layers.flatMap((layer) => folded(planLayerWords(layer, names), '  ')),
    ...(odds ? folded(planOddsWords(odds), '    ') : []),
    ...folded(planWhyWords(answer.lines[at]!, names), '    '),
    ...folded(planLimitWords(why.limit, names), '    '),
    ...why.turns.flatMap((turn) => folded(planTurnWords(turn, names), '    ')),
    ...cautions.flatMap((caution) => folded(says(caution), '    ')),
    '',
  ]);
  const sources = answer.sources
    .filter(({ ref, role, was }) => role === 'greens' && ref.source !== 'coming' && was.litres > 0)
    .flatMap(({ ref, was, laid, rest, choices }) => {
      const [best] = choices.filter(({ not }) => not === null);
      return [
        ...folded(
          `${planSourceWords(ref, names)}: ${planAmountWords(was, names)}, of it laid ${planAmountWords(laid, names)}, left ${planAmountWords(rest, names)}.`,
          '  ',
        ),
        ...(best && rest.litres > 0 ? folded(restWords(best, names), '    ') : []),
      ];
    });
  return [
    `${garden.garden.name}, ${dayFull(today, units)}`,
    '',
    'Before you mow',
    ...answer.mow.flatMap((advice) => [
      ...folded(mowWords(advice, names, today), '  '),
      ...(advice.why.kind === 'held back' ? [] : folded(worthWords(advice, names), '    ')),
    ]),
    '',
    answer.lines.length > 0 ? 'Lay today' : 'Lay nothing today.',
    '',
    ...lines,
    ...(answer.how.kind === 'simple rule'
      ? folded(`${planTroubleWords(answer.how.because, names)} ${simpleRuleWords}`, '')
      : []),
    ...(sources.length > 0 ? ['What is cut', ...sources, ''] : []),
    'The other beds',
    ...answer.leftOut.flatMap((left) =>
      folded(`${names.bed(left.bedId)}: ${leftOutWords(left, names)}`, '  '),
    ),
    '',
    ...(answer.mends.length > 0
      ? [
          'To mend what has too much',
          ...answer.mends.flatMap((move) => folded(mendWords(move, names), '  ')),
          '',
        ]
      : []),
    ...folded(effectWords(answer.effects, names), ''),
    '',
  ];
}

/**
 * `week [FILE] [--date D] [--json]`: what to collect, what to lay where, and where the rest goes.
 *
 * @param folder the caller's folder, against which FILE is resolved
 * @param program the program's own folder, where the sample garden is
 * @param solver of the plan's programme; the usual one gives up after some seconds
 * @returns the exit code
 */
export async function week(
  words: readonly string[],
  folder: string,
  program: string,
  about: { readonly name: string; readonly version: string },
  voice: Voice,
  solver: () => Promise<Solver> = highsSolver,
): Promise<number> {
  const wishes = weekWishes(words);
  if (typeof wishes === 'string') {
    voice.complain(wishes);
    return exitCodes.usage;
  }
  const read = readGarden(wishes.file ?? join(program, 'assets/gardens/sample.mowings'), folder);
  if (!read.ok) {
    voice.complain(fileSentence(read.error));
    return read.error.kind === 'refused' ? exitCodes.garden : exitCodes.file;
  }
  const today = wishes.day ?? dayOfGarden(read.value, new Date());
  const garden = gardenAsOf(read.value, today);
  const names = planNamesOf(garden, unitsOf(garden.garden.shownUnits));
  const made = makePlan(planQuestion(garden, today), await solver());
  if (!made.ok) {
    voice.complain(planTroubleWords(made.error, names));
    return exitCodes.plan;
  }
  const plan = withOdds(garden, made.value);
  if (wishes.json)
    voice.answer(
      `${JSON.stringify({
        program: about,
        garden: garden.garden.name,
        today: textFromDay(today),
        plan,
      })}\n`,
    );
  else voice.answer([...planAsText(garden, plan, names), ...footLines, ''].join('\n'));
  return exitCodes.done;
}
