import type { Read, Write } from './gardenSlice';
import type { ViewSlice } from './contract';

/** What is open. In no file and in no history. */
export function viewSlice(read: Read, write: Write): ViewSlice {
  return {
    place: 'this week',
    openBedId: null,
    dialog: null,
    tourStop: null,
    shownUnits: 'metric',
    goTo: (place) => write({ place }),
    openBed: (openBedId) => {
      write({ openBedId });
      if (openBedId !== null) read().wantHistory(openBedId);
    },
    showDialog: (dialog) => write({ dialog }),
    goOnTour: (tourStop) => write({ tourStop }),
    setUnits: (shownUnits) => write({ shownUnits }),
  };
}
