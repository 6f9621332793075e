import type { ChartSaying } from '../../charts/ChartSays';
import { coefficientRows } from '../../tables/coefficients';
import type { SeasonMore } from '../../words/seasonChart';
import { lengthUnit } from '../../words/sectionWords';
import { figuresWith } from '../../words/why';
import type { FigureInText, Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { coverDepthWhy, needWhy, readyWhy, type BedWhyFacts } from './bedWhys';
import { hiddenWhy, layerLineFigures } from './coverWhys';
import { ledgerTotalsWhys, supplyWhy, wayWhy } from './ledgerWhys';
import { bedGives, rootsTake, soilGives } from './notInSum';
import { heightWhy } from './sectionWhys';
import { rowSource } from './sourcesOf';

/** What the crops have taken up and gathered up to a day. */
function takenWhy(): Why {
  return {
    of: 'What they have got.',
    formula: 'Taken up from the soil + gathered from the air, day by day up to today.',
    inputs: [],
    range: null,
    sources: [whyWords.model, ...rootsTake()],
  };
}

/** What stands behind a sentence on what the season's drawing shows besides. */
function moreWhys({ garden, results }: BedWhyFacts, more: SeasonMore): readonly Why[] {
  switch (more.about) {
    case 'taken':
      return [
        {
          ...takenWhy(),
          of: 'What they take by the end.',
          formula:
            'Taken up from the soil + gathered from the air, day by day to the season’s end.',
        },
      ];
    case 'likely at the end':
      return [
        {
          of: 'Ready on the last evening.',
          formula:
            'Every imagined season, with other weather and other numbers, run to its last evening: 1 of 10 ends below the lower, 1 of 10 above the higher.',
          inputs: [],
          range: null,
          sources: [whyWords.model, ...bedGives(garden, results.input.bedId)],
        },
      ];
    case 'sources':
      return more.sources.map(supplyWhy);
  }
}

/** The same on another evening: how it is made, without the numbers of today. */
const onThatEvening = (why: Why): Why => ({ ...why, inputs: [], range: null });

/** The figures of a chart's finding, in the order in which it has them. */
export function findingFigures(
  facts: BedWhyFacts,
  saying: ChartSaying,
  says: string,
): readonly FigureInText[] {
  const { shown, results } = facts;
  const { chart } = shown;
  const grams = figuresWith(says, chart.nitrogen.short);
  const each = (texts: readonly string[], whys: readonly Why[]): readonly FigureInText[] =>
    texts.flatMap((text, at) => {
      const why = whys[Math.min(at, whys.length - 1)];
      return why ? [{ text, why }] : [];
    });
  switch (saying.of) {
    case 'season': {
      const need = needWhy(facts);
      const soFar = {
        ...need,
        of: 'What they could use up to today.',
        formula: 'All the crop can use × how far along its curve it is by the warmth it had.',
      };
      // with three figures: up to today, got, to the end; with two nothing to speak of was got
      const whys =
        grams.length >= 3 ? [soFar, takenWhy(), need] : grams.length === 2 ? [soFar, need] : [need];
      return each(grams, whys);
    }
    case 'season more':
      return each(grams, moreWhys(facts, saying.more));
    case 'cover':
      return [
        ...each(figuresWith(says, chart.depth.short), [coverDepthWhy(facts)]),
        ...each(figuresWith(says, '%'), [hiddenWhy]),
      ];
    case 'cover layer':
      return layerLineFigures(facts, says);
    case 'way':
      return each(grams, [wayWhy(saying.key)]);
    case 'ledger':
      return each(grams, ledgerTotalsWhys(saying.ledger, chart));
    case 'section': {
      const isToday = saying.day === results.season.today;
      const as = (why: Why): Why => (isToday ? why : onThatEvening(why));
      const tall = figuresWith(says, lengthUnit(chart).short).filter((text) =>
        says.includes(`${text} tall`),
      );
      const ready = readyWhy(facts);
      const top = {
        ...ready,
        of: `Ready in the top ${chart.topSoil}.`,
        formula:
          'What came free there or was washed in − what was taken up, held back, washed out or lost, day by day.',
        inputs: ready.inputs.slice(0, 1),
      };
      return [
        ...each(tall, [as(heightWhy(facts))]),
        ...each(
          figuresWith(says, chart.depth.short).filter((text) => says.includes(`${text} of cover`)),
          [as(coverDepthWhy(facts))],
        ),
        ...each(figuresWith(says, '%'), [hiddenWhy]),
        ...each(grams, [as(top)]),
      ];
    }
    case 'strip':
    case 'lawn':
      return [];
  }
}

/** What of what is left comes free in the next season. */
export const expectedFigures = (
  facts: Pick<BedWhyFacts, 'shown'>,
  says: string,
): readonly FigureInText[] =>
  figuresWith(says, facts.shown.chart.nitrogen.short).map((text) => ({
    text,
    why: {
      of: 'What should come free next season.',
      formula:
        'The bed run on through a whole season with nothing laid and nothing planted, 60 times over with other weather and other numbers; the middle of these, and what holds 8 of 10.',
      inputs: [],
      range: null,
      sources: [
        whyWords.model,
        rowSource('Of young humus comes free', coefficientRows.youngHumusRate),
        rowSource('Of compost comes free', coefficientRows.slowRate),
        ...soilGives(null).slice(1, 2),
      ],
    },
  }));
