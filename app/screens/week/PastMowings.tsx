import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { DeleteButton } from '../../controls/DeleteButton';
import { Figured } from '../../controls/Figured';
import { dayOf } from '../../core/days';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import type { Mowing } from '../../document/schema';
import { mowingMark } from '../../document/mowingMarks';
import { mowingAccount, mowingMass } from '../../store/selectors';
import { heapHeldBack } from '../../words/insteadWords';
import { editFailureSentence } from '../../words/messages';
import { mowingMarkWords } from '../../words/mowingMarkWords';
import { amountWords } from '../amountWords';
import { OneCaution } from '../CautionList';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { mowingDialog } from '../places';
import { mowingWeightWhy } from '../why/mowingWhys';
import { MowingShares } from './MowingShares';

const firstShown = 3;

/** So long clippings can still be taken in hand again; later they are grass no more (ours). */
const inHandDays = 7;

/** Every mowing with where each kilogram of it went; to change or to delete. */
export function PastMowings() {
  const garden = useGarden();
  const [all, setAll] = useState(false);
  const mowings = [...garden.mowings].sort((one, other) => (one.date < other.date ? 1 : -1));
  const listed = all ? mowings : mowings.slice(0, firstShown);
  return (
    <section className="section" aria-labelledby="past">
      <div className="section-head">
        <h2 id="past" tabIndex={-1}>
          Mowings so far
        </h2>
        <p className="small soft">Every kilogram of each ends somewhere.</p>
      </div>
      {mowings.length === 0 && <p>None yet. The first one goes in the line above.</p>}
      {listed.length > 0 && (
        <ol className="plain-list past-list">
          {listed.map((mowing) => (
            <li key={mowing.id}>
              <PastMowing mowing={mowing} />
            </li>
          ))}
        </ol>
      )}
      {mowings.length > firstShown && (
        <div className="not-printed">
          <button type="button" className="button" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? 'Show the latest only' : `Show all ${mowings.length}`}
          </button>
        </div>
      )}
    </section>
  );
}

const large = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function PastMowing({ mowing }: { readonly mowing: Mowing }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const deleteMowing = useMowings((state) => state.deleteMowing);
  const restOf = useMowings((state) => state.restOf);
  const announce = useAnnounce();
  const [editing, setEditing] = useState(false);
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  const account = mowingAccount(garden, mowing);
  const whole = mowingMass(garden, mowing);
  const weight = shown.estimate(whole.freshKilograms, shown.units.mass);
  const remove = () => {
    const result = deleteMowing(mowing.id);
    announce(
      result.ok
        ? `Deleted the mowing of ${shown.dayWord(mowing.date)}${
            result.value.layers > 0
              ? `, with ${result.value.layers === 1 ? 'its layer' : `its ${result.value.layers} layers`}`
              : ''
          }. Undo brings it back.`
        : editFailureSentence(result.error),
    );
  };
  const isRecent = today - dayOf(mowing.date) <= inHandDays;
  const held =
    lawn && mowing.rest.to === 'heap' && account.leftShare > 0.005
      ? lawnHeldBack(garden, lawn, dayOf(mowing.date))
      : null;
  const mark = mowingMarkWords({ ...mowingMark(garden, mowing.id), day: null }, shown.dayWord);
  const title = `${large(shown.dayNear(mowing.date, today))}, ${lawn?.name ?? ''}${mark}`;
  return (
    <article className="past" aria-label={title}>
      <div className="past-what">
        <strong>{title}</strong>
        <Figured
          says={`${amountWords(mowing.amount, garden, context, shown)}, ${mowing.wetness}: about ${weight}`}
          figures={[{ text: weight, why: mowingWeightWhy(garden, mowing, shown) }]}
        />
      </div>
      <MowingShares mowing={mowing} opens={false} />
      {held && <OneCaution caution={held} instead={heapHeldBack} />}
      {account.leftShare < -0.02 && (
        <p className="small field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          More was laid than was mown. Change the mowing or a layer of it.
        </p>
      )}
      <div className="button-row past-tools">
        <button
          type="button"
          className="button-small"
          aria-label={`Change the mowing of ${title}`}
          onClick={() => setEditing(true)}
        >
          Change
        </button>
        {mowing.rest.to !== 'undecided' && account.leftShare > 0.005 && isRecent && (
          <button
            type="button"
            className="button-small"
            aria-label={`Take the rest of ${title} in hand again`}
            onClick={() => {
              restOf(mowing.id, { to: 'undecided' });
              announce('The rest is in hand again.');
            }}
          >
            Take the rest in hand
          </button>
        )}
        <DeleteButton label={`Delete the mowing of ${title}`} onDelete={remove}>
          Delete
        </DeleteButton>
      </div>
      {editing && <mowingDialog.Part mowing={mowing} onClose={() => setEditing(false)} />}
    </article>
  );
}
