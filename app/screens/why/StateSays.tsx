import { Figured } from '../../controls/Figured';
import { flowerWeather } from '../../core/season/flowerWeather';
import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { limits } from '../../tables/thresholds';
import { percent } from '../../words/chartFormat';
import { timesWords, twoFigures } from '../../words/figures';
import { stateSentence } from '../../words/states';
import type { FigureInText, Why } from '../../words/why';
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

/**
 * What stands behind the figures that a state's sentence may hold, wherever they stand in it. Made
 * when somebody opens it: a page of sixty beds has two hundred of them.
 */
function figuresOfState(facts: BedWhyFacts): readonly FigureInText[] {
  const { verdict } = facts.results;
  const { shown } = facts;
  const figure = (text: string, why: () => Why): FigureInText => ({
    text,
    get why() {
      return why();
    },
  });
  const line = overFedWhy(facts);
  return [
    ...(verdict.ratio === null
      ? [
          figure(shown.estimate(verdict.inReach, shown.units.nitrogenPerArea), () =>
            readyWhy(facts),
          ),
        ]
      : [
          figure(timesWords(verdict.ratio), () => ratioWhy(facts)),
          figure(percent(verdict.forecastMet), () => forecastWhy(facts)),
          figure(`${twoFigures(verdict.nitrateMgPerKg)} mg/kg`, () => nitrateWhy(facts)),
        ]),
    ...(line && verdict.overFedLine !== null
      ? [figure(twoFigures(verdict.overFedLine), () => line)]
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
