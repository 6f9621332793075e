import { useEffect, useRef } from 'react';
import { DeskProvider } from '../desk';
import { FirstRun } from '../first/FirstRun';
import { useMowings } from '../store';
import { ThisWeek } from '../week/ThisWeek';
import { Dialogs } from './Dialogs';
import { FileMessages } from './FileMessages';
import { Foot } from './Foot';
import { Head } from './Head';
import {
  bedPage,
  beds,
  bringPlaces,
  gardenPage,
  lawnPage,
  seasonPlace,
  tables,
  tour,
} from '../places';
import { UndoNotice } from './UndoNotice';
import { useDroppedFile } from './useDroppedFile';
import { useHeardResults } from './useHeardResults';
import { useKeptFocus } from './useKeptFocus';
import { useKeys } from './useKeys';
import { useWindowHistory } from './useWindowHistory';

/** Of its own, so that the window is not drawn again with every answer. */
function HeardResults() {
  useHeardResults();
  return null;
}

/** The whole window. */
export function Frame() {
  useKeys();
  useDroppedFile();
  useKeptFocus();
  useWindowHistory();
  const started = useMowings((state) => state.started);
  const openings = useMowings((state) => state.openings);
  const hasGarden = useMowings((state) => state.garden !== null);
  const place = useMowings((state) => state.place);
  const openBedId = useMowings((state) => state.openBedId);
  const isOnTour = useMowings((state) => state.tourStop !== null);
  const main = useRef<HTMLElement>(null);

  const where = hasGarden ? `${openings} ${place} ${openBedId ?? ''}` : 'first';
  const lastPlace = useRef(where);
  useEffect(() => {
    if (lastPlace.current === where) return;
    lastPlace.current = where;
    window.scrollTo(0, 0);
    // A new place is read out from its heading; the press that led here stays reachable by Shift+Tab.
    main.current?.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
  }, [where]);

  useEffect(() => {
    if (started) bringPlaces();
  }, [started]);

  return (
    <div className="frame">
      <button type="button" className="skip" onClick={() => main.current?.focus()}>
        To the page
      </button>
      <HeardResults />
      <Head />
      <main id="place" ref={main} tabIndex={-1}>
        <FileMessages />
        {!started ? (
          <p className="page soft">Looking for your garden…</p>
        ) : hasGarden ? (
          <DeskProvider key={openings}>
            {place === 'garden' ? (
              <gardenPage.Part />
            ) : place === 'season' ? (
              <seasonPlace.Part />
            ) : place === 'lawn' ? (
              <lawnPage.Part />
            ) : place === 'tables' ? (
              <tables.Part />
            ) : place === 'beds' ? (
              openBedId === null ? (
                <beds.Part />
              ) : (
                <bedPage.Part key={openBedId} bedId={openBedId} />
              )
            ) : (
              <ThisWeek />
            )}
            <Dialogs />
          </DeskProvider>
        ) : (
          <>
            <FirstRun />
            <Dialogs />
          </>
        )}
        <UndoNotice />
        {isOnTour && <tour.Part />}
      </main>
      <Foot />
    </div>
  );
}
