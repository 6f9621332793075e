import { Figured } from '../../controls/Figured';
import { flowerWeather } from '../../core/season/flowerWeather';
import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { limits } from '../../tables/thresholds';
import { percent } from '../../words/chartFormat';
import { timesWords, twoFigures } from '../../words/figures';
import { stateSentence } from '../../words/states';
import type { FigureInText } from '../../words/why';
import { finishedCrop } from '../finishedCrop';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import {
  forecastWhy,
  nitrateWhy,
  overFedWhy,
  ratioWhy,
  readyWhy,
  type BedWhyFacts,
} from './bedWhys';

/** What stands behind the figures that a state's sentence may hold, wherever they stand in it. */
function figuresOfState(facts: BedWhyFacts): readonly FigureInText[] {
  const { verdict } = facts.results;
  const { shown } = facts;
  const line = overFedWhy(facts);
  return [
    ...(verdict.ratio === null
      ? [
          {
            text: shown.estimate(verdict.inReach, shown.units.nitrogenPerArea),
            why: readyWhy(facts),
          },
        ]
      : [
          { text: timesWords(verdict.ratio), why: ratioWhy(facts) },
          { text: percent(verdict.forecastMet), why: forecastWhy(facts) },
          { text: `${twoFigures(verdict.nitrateMgPerKg)} mg/kg`, why: nitrateWhy(facts) },
        ]),
    ...(line && verdict.overFedLine !== null
      ? [{ text: twoFigures(verdict.overFedLine), why: line }]
      : []),
  ];
}

/** The state of a bed in a sentence whose figures say why. */
export function StateSays(props: {
  readonly bed: Bed;
  readonly results: BedResults;
  readonly className?: string;
}) {
  const { bed, results, className } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const draws = useMowings((state) => state.draws[bed.id]);
  const finished = finishedCrop(results);
  const says = stateSentence(results.verdict, shown.units, {
    today,
    weather: flowerWeather(results.season, today, limits),
    finished,
  });
  return (
    <Figured
      says={says}
      figures={finished ? [] : figuresOfState({ garden, results, draws, shown })}
      {...(className === undefined ? {} : { className })}
    />
  );
}
