import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import type { Mowing } from '../../document/schema';
import { mowingAccount } from '../../store/selectors';
import { editFailureSentence } from '../../words/messages';
import { goneWords } from '../../words/weekWords';
import { amountWords } from '../amountWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { LayForm } from './LayForm';
import { partOfMowing } from './partOfMowing';
import { RestChoice } from './RestChoice';

/** Clippings from earlier that nobody gave a place; what most gardens show none of comes on demand. */
export function GoneMowings({ mowings }: { readonly mowings: readonly Mowing[] }) {
  return (
    <>
      {mowings.length > 2 && <GoneTogether mowings={mowings} />}
      {mowings.map((mowing) => (
        <GoneMowing key={mowing.id} mowing={mowing} />
      ))}
    </>
  );
}

/** A notebook's worth of mowings: most gardeners did the same with all of them. */
function GoneTogether({ mowings }: { readonly mowings: readonly Mowing[] }) {
  const announce = useAnnounce();
  const leaveLying = useMowings((state) => state.leaveLying);
  const [refused, setRefused] = useState<string | null>(null);
  const count = mowings.length;
  return (
    <div className="form not-printed">
      <p>{goneWords.many(count)}</p>
      <div className="button-row">
        <button
          type="button"
          className="button"
          onClick={() => {
            const result = leaveLying(mowings.map(({ id }) => id));
            setRefused(result.ok ? null : editFailureSentence(result.error));
            if (result.ok) announce(`${goneWords.allLeft(count)}. Undo takes it back.`);
          }}
        >
          {goneWords.allLeft(count)}
        </button>
      </div>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
    </div>
  );
}

/** Clippings that nobody said anything of in time: they are fresh no more; asked is where they went. */
function GoneMowing({ mowing }: { readonly mowing: Mowing }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const announce = useAnnounce();
  const [isLaying, setLaying] = useState(false);
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  const { leftDryKilograms } = mowingAccount(garden, mowing);
  const headingId = `gone-${mowing.id}`;
  return (
    <article className="sheet in-hand" aria-labelledby={headingId}>
      <div className="section-head">
        <h3 id={headingId}>{goneWords.title}</h3>
        <p className="small soft">Mown {shown.dayNear(mowing.date, today)}</p>
      </div>
      <p>
        {amountWords(mowing.amount, garden, context, shown)} from {lawn?.name}. {goneWords.says}
      </p>
      <RestChoice
        mowing={mowing}
        words={partOfMowing(garden, mowing, leftDryKilograms, shown)}
        isPast
        onBed={() => setLaying(true)}
        onChosen={announce}
      />
      {isLaying && (
        <section className="form not-printed" aria-label={goneWords.onBed}>
          <LayForm
            what={`mowing:${mowing.id}`}
            bedId={null}
            earliest={mowing.date}
            day={mowing.date}
            onLaid={() => setLaying(false)}
            onCancel={() => setLaying(false)}
          />
        </section>
      )}
    </article>
  );
}
