import { useMemo } from 'react';
import { Figured } from '../../controls/Figured';
import { dayOf } from '../../core/days';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { lawnOutlook, mowingHabit } from '../../document/lawnOutlook';
import type { Lawn } from '../../document/schema';
import { lawnDroughtSentence, lawnReadySentence } from '../../words/lawnOutlookWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { droughtFigures, readyFigures } from '../why/lawnReadyWhys';
import { useToday } from '../useReadingContext';

/** What each lawn that may be used should give next time. */
export function LawnReady() {
  const garden = useGarden();
  const today = useToday();
  const lawns = garden.lawns.filter((lawn) => !lawnHeldBack(garden, lawn, today));
  return lawns.map((lawn) => <ReadyLine key={lawn.id} lawn={lawn} />);
}

function ReadyLine({ lawn }: { readonly lawn: Lawn }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const outlook = useMemo(() => {
    const last = garden.mowings
      .filter(({ lawnId }) => lawnId === lawn.id)
      .reduce((latest, { date }) => Math.max(latest, dayOf(date)), -Infinity);
    // the next mowing is as long after the last as is usual for the lawn, today at the earliest
    const day = Math.max(today, last + Math.round(mowingHabit(lawn).typical));
    return lawnOutlook(garden, lawn.id, day, today);
  }, [garden, lawn, today]);
  const container =
    garden.containers.find(({ id }) => id === outlook.containers?.containerId) ?? null;
  return (
    <>
      <Figured
        className="small soft"
        says={lawnReadySentence(
          outlook,
          lawn.name,
          shown.dayNear(outlook.day, today),
          container,
          shown.units.mass,
        )}
        figures={readyFigures(outlook, lawn, container, shown.units.mass)}
      />
      {outlook.kind === 'lean' && lawn.kind !== 'lean' && (
        <Figured
          className="small soft"
          says={lawnDroughtSentence(outlook)}
          figures={droughtFigures(outlook)}
        />
      )}
    </>
  );
}
