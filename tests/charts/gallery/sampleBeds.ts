import sampleText from '../../../assets/gardens/sample.mowings?raw';
import { dayOf } from '../../../app/core/days';
import { answerBed } from '../../../app/core/season/bedAnswer';
import { stateHistory } from '../../../app/core/season/stateHistory';
import { runSeason } from '../../../app/core/season/season';
import { bedQuestion } from '../../../app/document/bedQuestion';
import { parseGarden } from '../../../app/document/parse';
import { bedSeason } from '../../../app/document/seasonInput';
import { coverChartData, seasonChartData } from '../../../app/screens/beds/chartData';
import { limits } from '../../../app/tables/thresholds';
import { metricChartUnits } from '../../../app/words/chartUnits';
import type { CoverLayerShown } from '../../../app/charts/cover/data';
import type { SeasonChartData } from '../../../app/charts/season/data';
import type { CoverState } from '../../../app/core/season/verdict';

export interface ShownBed {
  readonly name: string;
  readonly areaM2: number;
  readonly season: SeasonChartData;
  readonly cover: readonly CoverLayerShown[];
  readonly coverState: CoverState;
}

/** The beds of the sample garden as the program sees them on its day. */
export function sampleBeds(): readonly ShownBed[] {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const garden = parsed.value;
  const today = dayOf(garden.garden.today ?? '2013-06-15');
  return garden.beds.map((bed) => {
    const answer = answerBed(bedQuestion(garden, bed.id, today), limits);
    const { input, verdict } = answer;
    const history = stateHistory(
      input.firstDay,
      today,
      (day) => {
        const known = bedSeason(garden, bed.id, day, { knownThen: true });
        return { input: known, result: runSeason(known) };
      },
      limits,
    );
    return {
      name: bed.name,
      areaM2: bed.areaM2,
      coverState: verdict.coverState,
      cover: coverChartData(garden, answer, metricChartUnits).layers,
      season: {
        ...seasonChartData(garden, answer, null, metricChartUnits),
        history: history.map((then) => ({ day: then.day, state: then.verdict.state })),
      },
    };
  });
}
