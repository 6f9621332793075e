// Every figure of the sample's plan opens what stands behind it, and says where that comes from.
import { beforeAll, describe, expect, test } from 'vitest';
import sampleText from '../../assets/gardens/sample.mowings?raw';
import { unitsOf } from '../../app/amounts/unitSystem';
import { dayOf } from '../../app/core/days';
import type { PlanAnswer } from '../../app/core/plan/answer';
import { makePlan } from '../../app/core/plan/makePlan';
import { parseGarden } from '../../app/document/parse';
import { planNamesOf } from '../../app/document/planNames';
import { lawnOutlook } from '../../app/document/lawnOutlook';
import { planQuestion } from '../../app/document/planQuestion';
import * as whys from '../../app/screens/why/planWhys';
import * as restWhys from '../../app/screens/why/restWhys';
import { highsSolver } from '../../app/solve/highsSolver';
import * as lawnReadyWhys from '../../app/screens/why/lawnReadyWhys';
import * as lawnWhys from '../../app/screens/why/lawnWhys';
import * as accountWords from '../../app/words/lawnAccountWords';
import * as lawnWords from '../../app/words/lawnOutlookWords';
import { rangeOdds } from '../../app/words/ranges';
import { keptLeavesWords, leavesForJuneWords, leavesSum, planSays } from '../../app/words/planSays';
import * as words from '../../app/words/planWords';
import { restWords } from '../../app/words/restWords';
import { effectWords, mendWords } from '../../app/words/planWorth';
import { cutAtFigures, type FigureInText } from '../../app/words/why';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('the sample does not open');
const garden = parsed.value;
const names = planNamesOf(garden, unitsOf('metric'));
let answer: PlanAnswer;
beforeAll(async () => {
  const solve = await highsSolver({
    locate: (file) => `node_modules/highs/build/${file}`,
    limit: { branchings: 100_000 },
  });
  const made = makePlan(planQuestion(garden, dayOf('2013-06-15')), solve);
  if (!made.ok) throw new Error(made.error.kind);
  answer = made.value;
});

const months =
  'January|February|March|April|May|June|July|August|September|October|November|December';
/** What is left of a sentence's numbers when figures and days are taken out. */
const bare = (says: string, figures: readonly FigureInText[]): string =>
  cutAtFigures(
    says,
    figures.map(({ text }) => text),
  )
    .filter((stretch) => typeof stretch === 'string')
    .join(' ')
    .replace(new RegExp(`\\d+ (${months})|(${months}) \\d{4}`, 'g'), '')
    // how often a range holds is said in words that are the same everywhere
    .replaceAll(rangeOdds, '')
    .replaceAll(/Learnt from \d+ mowings?/g, '');

type Sentence = readonly [says: string, figures: readonly FigureInText[]];

const june = {
  month: 'June 2014',
  clippingsLitres: 200,
  leavesLitres: 240,
  onHandLitres: 300,
  bagLitres: 100,
};

const lawnSentences = (): readonly Sentence[] => {
  const lawn = garden.lawns[0]!;
  const outlook = lawnOutlook(garden, lawn.id, dayOf('2013-06-22'), dayOf('2013-06-15'));
  const bag = garden.containers.find(({ id }) => id === outlook.containers?.containerId)!;
  const { mass, nitrogenPerArea } = names.units;
  return [
    [
      lawnWords.lawnReadySentence(outlook, lawn.name, '22 June', bag, mass),
      lawnReadyWhys.readyFigures(outlook, lawn, bag, mass),
    ],
    [
      lawnWords.lawnReadySentence(outlook, lawn.name, '22 June', null, mass),
      lawnReadyWhys.readyFigures(outlook, lawn, null, mass),
    ],
    [accountWords.lawnRatioSentence(outlook), lawnWhys.ratioFigures(outlook, lawn)],
    [
      accountWords.lawnTakenSentence(outlook.taken, nitrogenPerArea),
      lawnWhys.takenFigures(outlook, lawn, nitrogenPerArea),
    ],
    [accountWords.lawnCostSentence(outlook), lawnWhys.costFigures(outlook)],
    [
      lawnWords.lawnDroughtSentence({ ...outlook, waterShare: 0.41 }),
      lawnReadyWhys.droughtFigures({ ...outlook, waterShare: 0.41 }),
    ],
  ];
};

const sentences = (): readonly Sentence[] => [
  ...answer.lines.flatMap((line): Sentence[] => [
    ...line.layers.map((layer): Sentence => [
      words.planLayerWords(layer, names),
      whys.layerFigures(layer, names),
    ]),
    [words.planWhyWords(line, names), whys.lineFigures(line, names)],
    [words.planLimitWords(line.why.limit, names), whys.limitFigures(line.why.limit, names)],
    ...line.why.turns.map((turn): Sentence => [
      words.planTurnWords(turn, names),
      whys.turnFigures(turn, names),
    ]),
  ]),
  ...answer.mow.flatMap((advice): Sentence[] => [
    [words.mowWords(advice, names, answer.today), whys.mowFigures(advice, names)],
    [words.worthWords(advice, names), whys.worthFigures(advice, names)],
  ]),
  ...answer.mends.map((move): Sentence => [mendWords(move, names), whys.mendFigures(move, names)]),
  ...answer.sources.flatMap(({ was, laid, kept }): Sentence[] =>
    kept === null
      ? []
      : [
          [
            keptLeavesWords(leavesSum({ was, laid }, 79, names), 'Chopped leaves', 3),
            restWhys.leavesFigures(leavesSum({ was, laid }, 79, names), kept, names),
          ],
          [leavesForJuneWords(june, names), restWhys.juneFigures(june, names)],
        ],
  ),
  ...lawnSentences(),
  [effectWords(answer.effects, names), whys.effectFigures(answer.effects, names)],
  ...answer.sources
    .filter(({ choices }) => choices.length > 0)
    .flatMap(({ was, laid, rest, choices }): Sentence[] => [
      [
        planSays.inHand(
          'clippings',
          ...([was, laid, rest].map((one) => words.planAmountWords(one, names)) as [
            string,
            string,
            string,
          ]),
        ),
        [was, laid, rest].map((one) => whys.amountFigure(one, planSays.whyRest, names)),
      ],
      ...choices.map((choice): Sentence => [
        restWords(choice, names),
        restWhys.restFigures(choice, names),
      ]),
    ]),
];

describe('the sample’s plan and lawns', () => {
  test('has a why for every figure but days', () => {
    expect(sentences().length).toBeGreaterThan(15);
    for (const [says, figures] of sentences()) expect(bare(says, figures), says).not.toMatch(/\d/);
  });

  test('says with each where it comes from, in short sentences without a laboratory’s words', () => {
    for (const [, figures] of sentences())
      for (const { why } of figures) {
        expect(why.sources.length, why.of).toBeGreaterThan(0);
        const said = [why.of, why.formula, ...why.inputs.flat(), ...why.sources].join(' ');
        expect(said).not.toMatch(/undefined|NaN|Infinity/);
      }
  });
});

test('a figure that is told twice is opened at its second place as well', () => {
  expect(cutAtFigures('from 25 % to 25 % of it', ['25 %', '25 %'])).toEqual([
    'from ',
    { figure: 0, text: '25 %' },
    ' to ',
    { figure: 1, text: '25 %' },
    ' of it',
  ]);
});
