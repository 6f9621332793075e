import { useState } from 'react';
import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { basisOf } from '../../tables/thresholds';
import { cautionWords } from '../../words/cautions';
import { isRakeAdvice } from '../../words/insteadWords';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { CarryDialog } from './CarryDialog';
import { RakeDialog } from './RakeDialog';
import { takenOff, type Raking } from './raking';

type Step =
  | { readonly is: 'raking' }
  /** the bed is reckoned anew; then it is asked where it goes */
  | { readonly is: 'raked'; readonly eventId: string }
  | { readonly is: 'done'; readonly says: string };

/** From the advice to rake off and carry straight to both: the raking, then the bed it goes on. */
export function RakeAdvised({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const { units } = useShown();
  const [step, setStep] = useState<Step | null>(null);
  const isAdvised = results.cautions.some((caution) =>
    isRakeAdvice(cautionWords(caution, basisOf(caution), units).instead),
  );
  const raking =
    step?.is === 'raked'
      ? garden.events.find(
          (event): event is Raking => event.kind === 'rake off' && event.id === step.eventId,
        )
      : undefined;
  const taken = raking ? takenOff(garden, bed, results, raking) : null;
  return (
    <>
      {step?.is === 'done' && <p className="done">{step.says}</p>}
      {isAdvised && (
        <div>
          <button type="button" className="button" onClick={() => setStep({ is: 'raking' })}>
            Rake the last layer off…
          </button>
        </div>
      )}
      {step?.is === 'raking' && (
        <RakeDialog
          bed={bed}
          results={results}
          event={null}
          onClose={() => setStep((now) => (now?.is === 'raking' ? null : now))}
          onRaked={(eventId) =>
            setStep(
              garden.beds.length > 1
                ? { is: 'raked', eventId }
                : { is: 'done', says: 'Raked off, and out of the sums of this bed.' },
            )
          }
        />
      )}
      {raking && taken && (
        <CarryDialog
          from={bed}
          raking={raking}
          taken={taken}
          onClose={() =>
            setStep((now) =>
              now?.is === 'raked'
                ? {
                    is: 'done',
                    says: 'Raked off. Should it go on another bed after all, say so in its line under “What was done”.',
                  }
                : now,
            )
          }
          onLaid={(where) => setStep({ is: 'done', says: `${where}. Undo takes it back.` })}
        />
      )}
    </>
  );
}
