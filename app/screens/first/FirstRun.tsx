import { useState } from 'react';
import { lostPartSentence } from '../../words/lostPart';
import { parseSentence } from '../../words/messages';
import { PickFile } from '../file/PickFile';
import { RecentGardens } from '../file/RecentGardens';
import { ownGarden } from '../places';
import { useMowings } from '../store';
import { GardenCut } from './GardenCut';

/** What one meets before any garden is open: one's own, the sample, or one used before. */
export function FirstRun() {
  const [answering, setAnswering] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const startSample = useMowings((state) => state.startSample);
  const goOnTour = useMowings((state) => state.goOnTour);
  const recent = useMowings((state) => state.recent);
  const about = useMowings((state) => state.about);

  const begin = (onTour: boolean) =>
    void startSample().then(
      (result) => {
        if (!result.ok) setTrouble(parseSentence(result.error));
        else if (onTour) goOnTour(0);
      },
      () => setTrouble(lostPartSentence),
    );

  if (answering) return <ownGarden.Part onBack={() => setAnswering(false)} />;
  return (
    <>
      <div className="first-lead">
        <div className="first-words">
          <h1 tabIndex={-1}>Where should the grass go?</h1>
          <p className="lead">
            Every mowing is food for some bed and too much for another. Tell Mowings what came off
            and what grows where; it reckons, bed by bed, what the soil and the crops do with it.
          </p>
        </div>
        <GardenCut />
      </div>
      <div className="page first">
        <div className="first-ways">
          <section className="sheet" aria-labelledby="first-own">
            <h2 id="first-own">Your own garden</h2>
            <p>
              Five answers, about three minutes: your lawn, your mower’s bag, one bed, what grows in
              it, and the nearest climate. All of it can be changed later.
            </p>
            <div>
              <button type="button" className="button-main" onClick={() => setAnswering(true)}>
                Start my garden
              </button>
            </div>
          </section>
          <section className="sheet" aria-labelledby="first-sample">
            <h2 id="first-sample">A garden to look round in</h2>
            <p>
              Sorrel Lane is invented: nine beds, two lawns, one Saturday in June after a storm. Its
              weather is real: New York’s daily record, open data by way of vega-datasets. Change
              anything; it never mixes with a garden of your own.
            </p>
            <div>
              <div className="button-row">
                <button type="button" className="button" onClick={() => begin(false)}>
                  Look round Sorrel Lane
                </button>
                <button type="button" className="button" onClick={() => begin(true)}>
                  Be shown round
                </button>
              </div>
            </div>
            {trouble && (
              <p role="alert" className="field-trouble">
                {trouble}
              </p>
            )}
          </section>
          <section className="sheet" aria-labelledby="first-before">
            <h2 id="first-before">A garden you have</h2>
            {recent.length > 0 ? (
              <>
                <p className="soft small">Used lately{about ? `, in ${about.folder}` : ''}:</p>
                <RecentGardens />
              </>
            ) : (
              <p>Nothing has been saved on this computer yet.</p>
            )}
            <OpenOther />
          </section>
        </div>
      </div>
    </>
  );
}

function OpenOther() {
  const native = useMowings((state) => state.about?.native ?? false);
  const openFile = useMowings((state) => state.openFile);
  if (!native) return <PickFile />;
  return (
    <div>
      <button type="button" className="button" onClick={() => void openFile(null)}>
        Open a garden…
      </button>
    </div>
  );
}
