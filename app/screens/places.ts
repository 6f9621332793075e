import { onDemand } from './onDemand';

/*
 * What the first page does not show. Everything here is brought as soon as the first page stands
 * and nothing else is to be done, so that going there is no wait either.
 */

export const beds = onDemand('Beds', async () => (await import('./beds/Beds')).Beds);
export const bedPage = onDemand('Bed', async () => (await import('./beds/BedPage')).BedPage);
export const gardenPage = onDemand(
  'Garden',
  async () => (await import('./garden/GardenPage')).GardenPage,
);
export const seasonPlace = onDemand(
  'Season',
  async () => (await import('./season/SeasonPlace')).SeasonPlace,
);
export const lawnPage = onDemand('Lawn', async () => (await import('./lawn/LawnPage')).LawnPage);
export const tables = onDemand('Tables', async () => (await import('./tables/Tables')).Tables);
export const findDialog = onDemand('', async () => (await import('./find/FindDialog')).FindDialog);
export const tour = onDemand('', async () => (await import('./tour/Tour')).Tour);
export const guideDialog = onDemand(
  '',
  async () => (await import('./file/GuideDialog')).GuideDialog,
);
export const bedSheets = onDemand(
  'Sheets for the beds',
  async () => (await import('./sheets/BedSheets')).BedSheets,
);
export const printDialog = onDemand(
  '',
  async () => (await import('./print/PrintDialog')).PrintDialog,
);
export const aboutDialog = onDemand(
  '',
  async () => (await import('./file/AboutDialog')).AboutDialog,
);
export const colourSchemeDialog = onDemand(
  '',
  async () => (await import('./file/ColourSchemeDialog')).ColourSchemeDialog,
);
export const ownGarden = onDemand(
  'Your garden in five answers',
  async () => (await import('./first/OwnGarden')).OwnGarden,
);
/* questions asked at a press */
export const openDialog = onDemand('', async () => (await import('./file/OpenDialog')).OpenDialog);
export const saveAsDialog = onDemand(
  '',
  async () => (await import('./file/SaveAsDialog')).SaveAsDialog,
);
export const unsavedDialog = onDemand(
  '',
  async () => (await import('./file/UnsavedDialog')).UnsavedDialog,
);
export const mowingDialog = onDemand(
  '',
  async () => (await import('./week/MowingDialog')).MowingDialog,
);
export const weekNewsBlock = onDemand(
  '',
  async () => (await import('./week/WeekNewsBlock')).WeekNewsBlock,
);
export const goneMowings = onDemand(
  '',
  async () => (await import('./week/GoneMowings')).GoneMowings,
);
export const exactDialog = onDemand(
  '',
  async () => (await import('./week/plan/ExactDialog')).ExactDialog,
);
export const somethingElse = onDemand(
  '',
  async () => (await import('./week/plan/SomethingElse')).SomethingElse,
);
export const treatmentDialog = onDemand(
  '',
  async () => (await import('./week/TreatmentDialog')).TreatmentDialog,
);
export const treatmentQuestion = onDemand(
  '',
  async () => (await import('./week/TreatmentDialog')).TreatmentQuestion,
);
export const stopsDialog = onDemand(
  '',
  async () => (await import('./week/StopsDialog')).StopsDialog,
);
export const backLog = onDemand('', async () => (await import('./week/BackLog')).BackLog);

const parts = [
  stopsDialog,
  treatmentQuestion,
  treatmentDialog,
  backLog,
  goneMowings,
  weekNewsBlock,
  mowingDialog,
  somethingElse,
  exactDialog,
  openDialog,
  saveAsDialog,
  unsavedDialog,
  findDialog,
  tour,
  ownGarden,
  beds,
  bedPage,
  gardenPage,
  seasonPlace,
  lawnPage,
  tables,
  bedSheets,
  guideDialog,
  aboutDialog,
  colourSchemeDialog,
];

/** Brings one part after the other while the window has nothing else to do. */
export function bringPlaces(): void {
  const next = (at: number): void => {
    const part = parts[at];
    if (part)
      requestIdleCallback(() => void part.bring().then(() => next(at + 1)), { timeout: 4000 });
  };
  next(0);
}
