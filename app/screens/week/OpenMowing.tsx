import { useEffect, useRef } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { dayOf } from '../../core/days';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { mowingMark } from '../../document/mowingMarks';
import type { Mowing } from '../../document/schema';
import { mowingMarkWords } from '../../words/mowingMarkWords';
import { mowingAccount } from '../../store/selectors';
import { amountWords } from '../amountWords';
import { OneCaution } from '../CautionList';
import { treatedWords } from '../treatedWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { LayForm, type WantedBed } from './LayForm';
import { MowingFigures } from './MowingFigures';
import { RestChoice } from './RestChoice';
import { partOfMowing } from './partOfMowing';

export interface OpenMowingProps {
  readonly mowing: Mowing;
  readonly isOpen: boolean;
  readonly focusOnShow: boolean;
  /** a bed that was asked for from elsewhere on the page */
  readonly wanted: WantedBed | null;
  readonly onOpen: () => void;
}

/** Clippings in hand: what they hold, bed by bed where they go, and where the rest goes. */
export function OpenMowing({ mowing, isOpen, focusOnShow, wanted, onOpen }: OpenMowingProps) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const showDialog = useMowings((state) => state.showDialog);
  const announce = useAnnounce();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (focusOnShow) heading.current?.focus();
  }, [focusOnShow]);
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  const held = lawn ? lawnHeldBack(garden, lawn, dayOf(mowing.date)) : null;
  const account = mowingAccount(garden, mowing);
  const rest = partOfMowing(garden, mowing, account.leftDryKilograms, shown);
  const isWhole = account.layers.length === 0 && account.gone.length === 0;
  return (
    <article className="sheet in-hand" aria-labelledby={`in-hand-${mowing.id}`}>
      <div className="section-head">
        <h3 id={`in-hand-${mowing.id}`} tabIndex={-1} ref={heading}>
          {amountWords(mowing.amount, garden, context, shown)}, {mowing.wetness}, from {lawn?.name}
          {mowingMarkWords({ ...mowingMark(garden, mowing.id), day: null }, shown.dayWord)}
        </h3>
        <p className="small soft">Mown {shown.dayNear(mowing.date, today)}</p>
      </div>
      {held && <OneCaution caution={held} />}
      {lawn && (
        <p className="small">
          {treatedWords(lawn.treatment, shown)}{' '}
          <button
            type="button"
            className="button-small"
            onClick={() => showDialog({ kind: 'treatment', lawnId: lawn.id })}
          >
            {lawn.treatment.answer === 'not asked' ? 'Answer now' : 'Change the answer'}
          </button>
        </p>
      )}
      {isWhole ? (
        <MowingFigures mowing={mowing} />
      ) : (
        <p>
          Laid so far: {partOfMowing(garden, mowing, account.laidDryKilograms, shown)}. Still in
          hand: <strong>{rest}</strong>.
        </p>
      )}
      {isOpen ? (
        <>
          <section className="form not-printed" aria-label="Onto the beds">
            <h4>Onto the beds</h4>
            <LayForm
              what={`mowing:${mowing.id}`}
              bedId={null}
              earliest={mowing.date}
              wanted={wanted}
              onLaid={() => requestAnimationFrame(() => heading.current?.focus())}
            />
          </section>
          <RestChoice
            mowing={mowing}
            words={isWhole ? `What you lay on no bed (now all ${rest})` : `The rest (${rest})`}
            onChosen={(words) => announce(words)}
          />
        </>
      ) : (
        <div>
          <button type="button" className="button" onClick={onOpen}>
            Say where it goes
          </button>
        </div>
      )}
    </article>
  );
}
