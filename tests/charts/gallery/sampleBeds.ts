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
import type { ExampleBed } from './exampleBeds';

/** The beds of the sample garden as the program sees them on its day. */
export function sampleBeds(): readonly ExampleBed[] {
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
