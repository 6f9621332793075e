import { useId, useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { Figured } from '../../controls/Figured';
import { DeleteButton } from '../../controls/DeleteButton';
import type { Bed, Planting } from '../../document/schema';
import { percent } from '../../words/chartFormat';
import { editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { emergenceLine } from './emergenceLine';
import { plantingFigures } from '../why/plantingWhys';
import { PlantingDialog } from './PlantingDialog';
import { cropById, cropName } from '../../document/cropValues';

/** What stands, stood and will stand on a bed. */
export function BedPlantings(props: {
  readonly bed: Bed;
  /** the heading it stands under decides its own */
  readonly heading?: 'h2' | 'h3';
}) {
  const { bed, heading: Heading = 'h2' } = props;
  const headingId = useId();
  const garden = useGarden();
  const shown = useShown();
  const results = useMowings((state) => state.bedResults[bed.id]);
  const deletePlanting = useMowings((state) => state.deletePlanting);
  const announce = useAnnounce();
  const [open, setOpen] = useState<Planting | 'new' | null>(null);
  const plantings = garden.plantings
    .filter(({ bedId }) => bedId === bed.id)
    .sort((one, other) => (one.started < other.started ? 1 : -1));
  const line = (planting: Planting): string => {
    const parts = [
      `${planting.how} ${shown.day(planting.started)}`,
      results
        ? emergenceLine(
            planting,
            cropById(garden, planting.cropId)?.tableId ?? '',
            results.season,
            shown.style,
          )
        : '',
      planting.share < 1 ? `on ${percent(planting.share)} of the bed` : '',
      planting.firstHarvest ? `first pick ${shown.dayWord(planting.firstHarvest)}` : '',
      planting.cleared ? `cleared ${shown.day(planting.cleared)}, tops ${planting.tops}` : '',
    ];
    return parts.filter(Boolean).join(', ');
  };
  const gets = ({ demandMet, fixed }: { demandMet: number; fixed: number }): string =>
    `From first day to last it gets ${percent(demandMet)} of what it could use${
      fixed > 0
        ? `, ${shown.estimate(fixed, shown.units.nitrogenPerArea)} of it fixed from the air`
        : ''
    }.`;
  return (
    <section className="section" aria-labelledby={headingId}>
      <div className="section-head">
        <Heading id={headingId}>
          {Heading === 'h2' ? 'In the ground' : `In the ground of ${bed.name}`}
        </Heading>
      </div>
      <div>
        <button type="button" className="button" onClick={() => setOpen('new')}>
          Sow or plant something…
        </button>
      </div>
      {plantings.length === 0 && <p>Nothing has been sown or planted here yet.</p>}
      <ol className="plain-list log-list">
        {plantings.map((planting) => {
          const name = cropName(garden, planting.cropId);
          const result = results?.season.plantings.find(({ id }) => id === planting.id);
          return (
            <li key={planting.id} id={`entry-${planting.id}`} tabIndex={-1} className="log-entry">
              <Figured
                before={
                  <strong>
                    {name}
                    {planting.variety && `, ${planting.variety}`}
                  </strong>
                }
                says={` ${line(planting)}.${result && result.demand > 0 ? ` ${gets(result)}` : ''}`}
                figures={
                  results && result && result.demand > 0
                    ? plantingFigures({ garden, results, draws: undefined, shown }, result)
                    : []
                }
              />
              <div className="button-row">
                <button
                  type="button"
                  className="button-small"
                  aria-label={`Change ${name}`}
                  onClick={() => setOpen(planting)}
                >
                  Change
                </button>
                <DeleteButton
                  label={`Delete ${name}`}
                  onDelete={() => {
                    const deleted = deletePlanting(planting.id);
                    announce(
                      deleted.ok
                        ? `Deleted: ${name}. Undo brings it back.`
                        : editFailureSentence(deleted.error),
                    );
                  }}
                >
                  Delete
                </DeleteButton>
              </div>
            </li>
          );
        })}
      </ol>
      {open !== null && (
        <PlantingDialog
          bedId={bed.id}
          planting={open === 'new' ? null : open}
          onClose={() => setOpen(null)}
        />
      )}
    </section>
  );
}
