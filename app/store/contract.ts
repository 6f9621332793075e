import type { AheadSlice } from './aheadSlice';
import type { CarriedSlice } from './carried';
import type { ComingRangesSlice } from './comingRanges';
import type { FileSlice } from './fileContract';
import type { GardenSlice } from './gardenContract';
import type { LateDoors } from './lateDoors';
import type { NextSeasonSlice } from './nextSeasonSlice';
import type { PlanSlice } from './planContract';
import type { ResultsSlice } from './resultsContract';
import type { GardenActions } from './actionsContract';
import type { ViewSlice } from './viewContract';
import type { WaterSlice } from './waterSlice';
import type { WhatIfSlice } from './whatIfContract';
import type { StoreApi } from 'zustand/vanilla';

/*
 * What the screens see of the store. Four slices: `garden` (saved, undoable), `file` (where it
 * lives), `results` (what the worker made of it), `view` (what is open; in no file and no history).
 * Everything that can be computed from these is a selector (`selectors.ts`).
 */

export * from './gardenContract';
export * from './fileContract';
export * from './resultsContract';
export * from './viewContract';
export * from './actionsContract';
export type { ClimateAnswer, OwnBedAnswer, OwnGardenAnswers } from '../document/startGarden';

export interface MowingsState
  extends
    GardenSlice,
    FileSlice,
    ResultsSlice,
    PlanSlice,
    WhatIfSlice,
    WaterSlice,
    CarriedSlice,
    NextSeasonSlice,
    ComingRangesSlice,
    LateDoors,
    AheadSlice,
    ViewSlice,
    GardenActions {}

export type MowingsStore = StoreApi<MowingsState>;
