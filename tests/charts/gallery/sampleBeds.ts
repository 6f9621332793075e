import sampleText from '../../../assets/gardens/sample.mowings?raw';
import { coverLayersOf, seasonDataOf, type BedNames } from '../../../app/charts/fromBed';
import { dayOf } from '../../../app/core/days';
import { answerBed } from '../../../app/core/season/bedAnswer';
import { stateHistory } from '../../../app/core/season/stateHistory';
import { runSeason } from '../../../app/core/season/season';
import { bedQuestion } from '../../../app/document/bedQuestion';
import { materialOfApplication } from '../../../app/document/materialValues';
import { parseGarden } from '../../../app/document/parse';
import { bedSeason } from '../../../app/document/seasonInput';
import { cropOf } from '../../../app/tables/crops';
import { limits } from '../../../app/tables/thresholds';
import { metricChartUnits } from '../../../app/words/chartUnits';
import type { ExampleBed } from './exampleBeds';

/** The beds of the sample garden as the program sees them on its day. */
export function sampleBeds(): readonly ExampleBed[] {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const garden = parsed.value;
  const today = dayOf(garden.garden.today ?? '2013-06-15');
  const names: BedNames = {
    planting: (id) => {
      const planting = garden.plantings.find((one) => one.id === id);
      return (planting && cropOf(planting.cropId)?.name) ?? id;
    },
    layer: (id) => {
      const application = garden.applications.find((one) => one.id === id);
      return application ? materialOfApplication(garden, application).name : id;
    },
  };
  return garden.beds.map((bed) => {
    const { input, season, verdict } = answerBed(bedQuestion(garden, bed.id, today), limits);
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
      cover: coverLayersOf(input, names),
      season: {
        ...seasonDataOf(input, season, names),
        verdict,
        history: history.map((then) => ({ day: then.day, state: then.verdict.state })),
        units: metricChartUnits,
      },
    };
  });
}
