import type { Read, Write } from './gardenSlice';
import type { ViewSlice } from './contract';

/** What is open. In no file and in no history. */
export function viewSlice(read: Read, write: Write): ViewSlice {
  return {
    place: 'this week',
    visits: 0,
    openBedId: null,
    dialog: null,
    tourStop: null,
    shownUnits: 'metric',
    goTo: (place) => write({ place, visits: read().visits + 1 }),
    openBed: (openBedId) => {
      write({ openBedId });
      if (openBedId !== null) read().wantHistory(openBedId);
    },
    showDialog: (dialog) => write({ dialog }),
    goOnTour: (tourStop) => write({ tourStop }),
    setUnits: (shownUnits) => write({ shownUnits }),
  };
}
