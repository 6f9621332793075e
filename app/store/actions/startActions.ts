import { failure, success } from '../../core/result';
import { faultOfChange } from '../../document/change';
import { weekOn } from '../../document/nextWeek';
import { parseGarden } from '../../document/parse';
import { stepNames } from '../../words/stepNames';
import type { GardenActions } from '../contract';
import type { FileDoor } from '../fileSlice';
import { openGarden, type ActionTools } from './changing';

type StartActions = Pick<
  GardenActions,
  'startSample' | 'startOwn' | 'editGarden' | 'editNormals' | 'goOnAWeek'
>;

/** Beginning a garden, and what concerns it as a whole. */
export function startActions(
  tools: ActionTools,
  file: Pick<FileDoor, 'begin'>,
  sample: () => Promise<string>,
): StartActions {
  let starting: ReturnType<StartActions['startSample']> | null = null;
  const startSample = async (): ReturnType<StartActions['startSample']> => {
    const parsed = parseGarden(await sample());
    if (!parsed.ok) return parsed;
    file.begin(parsed.value, parsed.value.garden.name, false);
    return success(null);
  };
  return {
    startSample: () => {
      starting ??= startSample().finally(() => {
        starting = null;
      });
      return starting;
    },

    startOwn: (ownGarden, answers) => {
      const garden = ownGarden(answers, tools.today());
      if (!garden) return failure({ kind: 'missing', what: 'climate station' });
      const fault = faultOfChange(null, garden);
      if (fault) return failure({ kind: 'broken', where: fault.where, what: fault.what });
      file.begin(garden, garden.garden.name, true);
      return success(null);
    },

    editGarden: (changes) =>
      tools.edit(stepNames.editGarden(), (garden) => {
        Object.assign(garden.garden, changes);
      }),

    editNormals: (normals) =>
      tools.edit(stepNames.editNormals(), (garden) => {
        garden.weather.normals = normals;
      }),

    goOnAWeek: async () => {
      // days of years are brought when they are asked for, not with the window
      const { bundledRecord } = await import('../../tables/bundledRecords');
      const open = openGarden(tools);
      if (!open.ok) return open;
      const next = weekOn(open.value, bundledRecord);
      if (!next) return failure({ kind: 'no-more-record' });
      const edited = tools.edit(stepNames.goOnAWeek(), (garden) => {
        garden.weather.days = next.days;
        garden.garden.today = next.today;
      });
      return edited.ok ? success({ today: next.today }) : edited;
    },
  };
}
