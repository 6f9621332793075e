import { useState } from 'react';
import type { Bed } from '../../../document/schema';
import { anyBed } from '../../../document/bedPast';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { ResizeDialog } from './ResizeDialog';
import { RetireDialog } from './RetireDialog';
import { SplitDialog } from './SplitDialog';

/** What can be done to a bed as a whole, and what it was before. */
export function BedTools(props: { readonly bed: Bed; readonly onSheet: () => void }) {
  const { bed } = props;
  const [open, setOpen] = useState<'size' | 'split' | 'retire' | null>(null);
  const close = () => setOpen(null);
  return (
    <>
      <BedOrigin bed={bed} />
      <div className="button-row" role="group" aria-label={`Change ${bed.name}`}>
        <button type="button" className="button-small" onClick={() => setOpen('size')}>
          Another size…
        </button>
        <button type="button" className="button-small" onClick={() => setOpen('split')}>
          Split in two…
        </button>
        <button type="button" className="button-small" onClick={() => setOpen('retire')}>
          Put away…
        </button>
        <button type="button" className="button-small" onClick={props.onSheet}>
          A sheet for paper…
        </button>
      </div>
      {open === 'size' && <ResizeDialog bed={bed} onClose={close} />}
      {open === 'split' && <SplitDialog bed={bed} onClose={close} />}
      {open === 'retire' && (
        <RetireDialog beds={[bed]} onClose={close} onRetired={() => undefined} />
      )}
    </>
  );
}

function BedOrigin({ bed }: { readonly bed: Bed }) {
  const garden = useGarden();
  const shown = useShown();
  const openBed = useMowings((state) => state.openBed);
  const { ground, earlierAreas } = bed;
  return (
    <>
      {earlierAreas && (
        <p className="small soft">
          {earlierAreas
            .map(
              ({ until, areaM2 }) =>
                `${shown.estimate(areaM2, shown.units.area)} until ${shown.dayWord(until)}`,
            )
            .join(', ')}
          . Figures for the whole bed are for its size of today.
        </p>
      )}
      {ground && (
        <p className="small soft">
          Made on {shown.day(ground.on)} of{' '}
          {ground.parts.map(({ bedId, areaM2 }, at) => (
            <span key={bedId}>
              {at > 0 && (at === ground.parts.length - 1 ? ' and ' : ', ')}
              {shown.estimate(areaM2, shown.units.area)} of{' '}
              <button
                type="button"
                className="button-small in-words"
                onClick={() => openBed(bedId)}
              >
                {anyBed(garden, bedId)?.name ?? 'a bed'} as it was
              </button>
            </span>
          ))}
          . Its sums start there, from what that ground had come to hold.
        </p>
      )}
    </>
  );
}
