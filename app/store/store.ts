import { createStore } from 'zustand/vanilla';
import type { Host, WindowDescribed } from '../host/contract';
import { noPlanner, type Planner } from '../worker/planClient';
import type { Engine } from '../worker/protocol';
import { aheadDoor } from './aheadSlice';
import { eventActions } from './actions/eventActions';
import { layingActions } from './actions/layingActions';
import { mowingActions } from './actions/mowingActions';
import { offerActions } from './actions/offerActions';
import { startActions } from './actions/startActions';
import { thingActions } from './actions/thingActions';
import { weatherActions } from './actions/weatherActions';
import type { MowingsState, MowingsStore } from './contract';
import type { LateDoor } from './lateDoors';
import { fileDoor } from './fileSlice';
import { gardenDoor } from './gardenSlice';
import { planDoor } from './planSlice';
import { resultsDoor } from './resultsSlice';
import { sameQuestion } from './sameQuestion';
import { redoLabel, undoLabel } from './selectors';
import type { Later } from './surroundings';
import { localToday, todayTextOf } from './today';
import { viewSlice } from './viewSlice';
import { nextSeasonDoor } from './nextSeasonSlice';
import { waterDoor } from './waterSlice';
import { whatIfDoor } from './whatIfSlice';

export interface StoreOptions {
  readonly host: Host;
  readonly engine: Engine;
  /** where the week's plan is made; without one none is */
  readonly planner?: Planner;
  /** brings the text of the sample garden's file, if not of the one that comes with the program */
  readonly sample?: () => Promise<string>;
  readonly later?: Later;
  readonly computerToday?: () => string;
  readonly breathe?: () => Promise<void>;
}

const laterByClock: Later = (milliseconds, run) => {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
};

const describedAs = (state: MowingsState): WindowDescribed => ({
  name: state.fileName,
  unsaved: state.unsaved,
  undo: undoLabel(state),
  redo: redoLabel(state),
});

const breatheByClock = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

const bringSample = async (): Promise<string> =>
  (await import('../document/sampleGarden')).sampleText;

/**
 * The store of one window: garden with its history, file, results, view. It reaches the world
 * through the host and the engine alone. Call `start()` once it is shown.
 */
export function createMowingsStore({
  host,
  engine,
  planner = noPlanner,
  sample = bringSample,
  later = laterByClock,
  computerToday = localToday,
  breathe = breatheByClock,
}: StoreOptions): MowingsStore {
  const surroundings = { host, engine, later, computerToday, breathe };
  let gardenChanged = (): void => undefined;
  let resultsChanged = (): void => undefined;
  let planChanged = (): void => undefined;
  let whatIfChanged = (): void => undefined;
  let waterChanged = (): void => undefined;
  let aheadChanged = (): void => undefined;
  let comingSeasonChanged = (): void => undefined;
  const lateDoors = new Set<LateDoor>();
  const store = createStore<MowingsState>()((set, get) => {
    const garden = gardenDoor(get, set);
    const file = fileDoor(get, set, surroundings, garden);
    const results = resultsDoor(get, set, surroundings);
    gardenChanged = file.gardenChanged;
    const plan = planDoor(get, set, planner, surroundings);
    resultsChanged = results.changed;
    planChanged = plan.changed;
    const whatIf = whatIfDoor(get, set, surroundings);
    whatIfChanged = whatIf.changed;
    const water = waterDoor(get, set, surroundings);
    waterChanged = water.changed;
    const ahead = aheadDoor(get, set, surroundings);
    aheadChanged = ahead.changed;
    const coming = nextSeasonDoor(get, set, surroundings);
    comingSeasonChanged = coming.changed;
    const tools = {
      read: get,
      edit: garden.slice.edit,
      today: () => todayTextOf(get(), computerToday),
    };
    return {
      ...garden.slice,
      ...file.slice,
      ...results.slice,
      ...plan.slice,
      ...whatIf.slice,
      ...water.slice,
      carried: null,
      ...ahead.slice,
      ...coming.slice,
      comingRanges: null,
      openDoor: (make) => {
        const door = make(get, set, surroundings);
        lateDoors.add(door);
        return {
          ...door,
          close: () => {
            lateDoors.delete(door);
            door.close();
          },
        };
      },
      ...viewSlice(get, set),
      ...startActions(tools, file, sample),
      ...mowingActions(tools),
      ...layingActions(tools, engine),
      ...offerActions(tools, engine),
      ...eventActions(tools),
      ...thingActions(tools),
      ...weatherActions(tools),
    };
  });

  store.subscribe((state, before) => {
    const isOther = state.garden !== before.garden;
    const hasDayTurned = todayTextOf(state, computerToday) !== todayTextOf(before, computerToday);
    if (isOther || hasDayTurned) {
      resultsChanged();
      planChanged();
      whatIfChanged();
      waterChanged();
      aheadChanged();
      comingSeasonChanged();
      for (const door of lateDoors) door.changed();
    }
    if (isOther) gardenChanged();
    const [now, was] = [describedAs(state), describedAs(before)];
    if (!sameQuestion(now, was)) void host.describeWindow(now);
  });
  return store;
}
