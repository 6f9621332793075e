import { useState } from 'react';
import { DotsChart } from '../../charts/dots/Chart';
import { dotsTable } from '../../charts/dots/tableData';
import { Figured } from '../../controls/Figured';
import { yearOf } from '../../core/days';
import type { Band } from '../../core/season/draws/bands';
import type { Headline } from '../../core/season/draws/runDraws';
import { lastDayOf, seasonFirstDay } from '../../core/season/seasonAccount';
import type { Bed, Garden } from '../../document/schema';
import type { BedDraws, BedResults } from '../../store/contract';
import { remedyWords, type Remedy } from '../../words/drawnWords';
import { heldAgainstMeasured } from '../../tables/heldAgainst';
import {
  behindWords,
  heldAgainstWords,
  keptLikelyWords,
  likelyPercent,
  likelyTimes,
  restingWords,
} from '../../words/imaginedWords';
import { rangeWords } from '../../words/ranges';
import { useGoToPart } from '../garden/wantedPart';
import { headlineWhy } from '../why/headlineWhys';
import { useShown } from '../shown';
import { TakeAway } from '../takeAway/TakeAway';
import { drawnName } from './drawnName';
import { EventDialog } from './EventDialog';
import { hasUnweighedBags } from './unweighedBags';

/** weaker than this a quantity hardly moves a number: rank correlation, our own choice */
const leastCorrelation = 0.15;
/** less than this is told as nothing [g/m2] */
const leastGrams = 0.05;

interface Told {
  readonly name: Headline;
  readonly words: string;
  readonly range: string;
}

/**
 * The bed's headline numbers with the ends between which 8 imagined seasons of 10 lie, what each
 * hangs on most, and what would be worth measuring.
 */
export function HowSure(props: {
  readonly bed: Bed;
  /** what the results are answers to */
  readonly garden: Garden;
  readonly results: BedResults;
  readonly draws: BedDraws;
}) {
  const { bed, garden, results, draws } = props;
  const { answer } = draws;
  const shown = useShown();
  const goToPart = useGoToPart();
  const [testing, setTesting] = useState(false);
  const { input, season } = results;
  const isLegume = results.verdict.excessClass === 'legume';
  const grams = ({ low, middle, high }: Band): string => {
    const { likely, between } = rangeWords(
      { low, typical: middle, high },
      shown.units.nitrogenPerArea,
    );
    return high < leastGrams ? 'next to nothing' : (between ?? likely);
  };
  const told: readonly Told[] = [
    ...(answer.ratio
      ? [
          {
            name: 'ratio' as const,
            words: isLegume
              ? 'In hand and to come, over what it asks of the soil'
              : 'In hand and to come, over all it can use',
            range: likelyTimes(answer.ratio),
          },
          {
            name: 'needMet' as const,
            words: 'Share of what its crops can use that they get',
            range: likelyPercent(answer.needMet),
          },
        ]
      : []),
    ...(answer.fixed.high >= leastGrams
      ? [
          {
            name: 'fixed' as const,
            words: 'Gathered from the air by its roots',
            range: grams(answer.fixed),
          },
        ]
      : []),
    {
      name: 'leached',
      words: 'Washed out below the roots',
      range: grams(answer.leached),
    },
  ];
  const causes = (name: Told['name']) =>
    answer.mattersMost[name]
      .filter(({ correlation }) => Math.abs(correlation) >= leastCorrelation)
      .flatMap((influence) => drawnName(garden, influence.name, shown.dayWord) ?? []);
  const remedies = [
    ...new Set([
      // each mowing is drawn by itself and seldom leads, but one weighing narrows them all
      ...(hasUnweighedBags(garden, bed.id) ? (['weigh'] as const) : []),
      ...told.flatMap(({ name }) => causes(name).map(({ remedy }) => remedy)),
    ]),
  ].filter((remedy) => remedy !== 'picks' || answer.ratio !== null);
  const resting = restingWords(answer);
  const dayWithYear = (day: number): string => `${shown.dayWord(day)} ${String(yearOf(day))}`;

  return (
    <section className="section how-sure" aria-labelledby="bed-sure">
      <h2 id="bed-sure" tabIndex={-1} className="section-head">
        How sure that is
      </h2>
      <p className="small soft">
        From {dayWithYear(seasonFirstDay(input, input.today))} to {dayWithYear(lastDayOf(season))},
        in 8 imagined seasons of 10{draws.isBehind ? ` (${behindWords})` : ''}. Each has other
        weather to come, and other true values of most that nobody measured. {resting}
      </p>
      <p className="small soft">
        {keptLikelyWords} {heldAgainstWords(heldAgainstMeasured.inside, heldAgainstMeasured.of)}
      </p>
      <dl className="sure-list">
        {told.map(({ name, words, range }) => (
          <div key={name}>
            <dt>{words}</dt>
            <dd>
              <Figured
                className="strong"
                says={range}
                figures={[
                  {
                    text: range,
                    why: headlineWhy(name, { garden, results, draws, shown }, range),
                  },
                ]}
              />
              {causes(name).length > 0 && (
                <div className="small">
                  <p className="soft">Hangs most on</p>
                  <ul>
                    {causes(name).map((cause) => (
                      <li key={cause.words}>{cause.words}</li>
                    ))}
                  </ul>
                </div>
              )}
            </dd>
          </div>
        ))}
      </dl>
      {answer.ratioDots && (
        <TakeAway
          name={`Imagined seasons of ${bed.name}`}
          table={() => dotsTable(answer.ratioDots ?? [])}
        >
          <DotsChart values={answer.ratioDots} overFedLine={results.verdict.overFedLine} />
        </TakeAway>
      )}
      {remedies.length > 0 && (
        <div className="sure-measure">
          <h3>Worth measuring</h3>
          <ul className="plain-list">
            {remedies.map((remedy) => (
              <li key={remedy}>
                <span>{remedyWords[remedy](shown.chart.topSoil)}</span>
                <RemedyButton
                  remedy={remedy}
                  onWeigh={() => goToPart('garden-containers')}
                  onTest={() => setTesting(true)}
                />
              </li>
            ))}
          </ul>
        </div>
      )}
      {testing && (
        <EventDialog bed={bed} kind="soil test" event={null} onClose={() => setTesting(false)} />
      )}
    </section>
  );
}

/** Where the window can take down what was measured. */
function RemedyButton(props: {
  readonly remedy: Remedy;
  readonly onWeigh: () => void;
  readonly onTest: () => void;
}) {
  const { remedy } = props;
  if (remedy === 'weigh')
    return (
      <button type="button" className="button-small" onClick={props.onWeigh}>
        To the bags and buckets
      </button>
    );
  if (remedy === 'nitrate test' || remedy === 'humus test')
    return (
      <button type="button" className="button-small" onClick={props.onTest}>
        {remedy === 'nitrate test'
          ? 'Write down a nitrate test…'
          : 'Write down an organic matter test…'}
      </button>
    );
  return null;
}
