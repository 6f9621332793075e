import { useState } from 'react';
import { PasteDialog } from '../PasteDialog';
import { useGarden } from '../store';
import { LawnAccount } from './LawnAccount';
import { LawnGrowth } from './LawnGrowth';
import { KeyedPage } from '../keys/KeyedPage';
import { LawnsPart } from './LawnsPart';

/** What the lawns grow, what was taken off them, what that costs them, and what they are. */
export function LawnPage() {
  const { lawns } = useGarden();
  const [isPasting, setPasting] = useState(false);
  return (
    <KeyedPage>
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>Lawn</h1>
          <p className="soft">
            What each lawn should give week by week, learnt from its mowings, and what taking it
            costs.
          </p>
        </div>
        {lawns.length > 0 && (
          <button
            data-doing="paste-mowings"
            type="button"
            className="button"
            onClick={() => setPasting(true)}
          >
            Mowings from a spreadsheet…
          </button>
        )}
      </div>
      {lawns.length === 0 && <p>There is no lawn yet. Add the first one below.</p>}
      {lawns.map((lawn) => (
        <section key={lawn.id} className="section" aria-labelledby={`lawn-${lawn.id}`}>
          <div className="section-head">
            <h2 id={`lawn-${lawn.id}`}>{lawn.name}</h2>
          </div>
          <LawnGrowth lawn={lawn} />
          <LawnAccount lawn={lawn} />
        </section>
      ))}
      <section className="section" aria-labelledby="lawns-themselves">
        <div className="section-head">
          <h2 id="lawns-themselves">The lawns themselves</h2>
        </div>
        <LawnsPart />
      </section>
      {isPasting && <PasteDialog kind="mowings" onClose={() => setPasting(false)} />}
    </KeyedPage>
  );
}
