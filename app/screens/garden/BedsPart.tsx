import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { MeasureField } from '../../controls/MeasureField';
import { SettledQuantityField } from '../../controls/QuantityField';
import { TextField } from '../../controls/TextField';
import { ofBed } from '../../document/ofBed';
import type { Bed } from '../../document/schema';
import { listed } from '../../words/chartFormat';
import { dayFailureSentence } from '../../words/messages';
import { BedPlantings } from '../beds/BedPlantings';
import { BedSoil } from '../beds/BedSoil';
import { plantedWords } from '../plantedWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';
import { AddBedDialog } from './AddBedDialog';
import { Thing } from './Thing';

/** Beds with what they are and what grows in them. */
export function BedsPart() {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const deleteBed = useMowings((state) => state.deleteBed);
  const announce = useAnnounce();
  const [added, setAdded] = useState<string | null>(null);
  const [adding, setAdding] = useState(false);
  return (
    <>
      {garden.beds.map((bed) => (
        <Thing
          key={bed.id}
          name={bed.name}
          startsOpen={bed.id === added}
          onDelete={() => deleteBed(bed.id)}
          goesWithIt={goesWithBed(garden, bed.id)}
          summary={
            <>
              {shown.estimate(bed.areaM2, shown.units.area)}, {bed.texture}.{' '}
              {plantedWords(garden, bed.id, today, shown)}.
            </>
          }
        >
          <BedFields bed={bed} />
        </Thing>
      ))}
      <div>
        <button type="button" className="button" onClick={() => setAdding(true)}>
          Add a bed…
        </button>
      </div>
      {adding && (
        <AddBedDialog
          onClose={() => setAdding(false)}
          onAdded={(bedId, name) => {
            setAdded(bedId);
            announce(`${name} was added.`);
          }}
        />
      )}
    </>
  );
}

/** What would be deleted along with a bed, as a question; null for a bed on which nothing was done. */
function goesWithBed(garden: ReturnType<typeof useGarden>, bedId: string): string | null {
  const counts: readonly (readonly [number, string, string])[] = [
    [ofBed(garden.applications, bedId).length, 'layer', 'layers'],
    [ofBed(garden.plantings, bedId).length, 'planting', 'plantings'],
    [ofBed(garden.events, bedId).length, 'line of its log', 'lines of its log'],
  ];
  const words = counts.flatMap(([count, one, many]) =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : many}`],
  );
  return words.length === 0
    ? null
    : `With it go ${listed(words)}. What lay on it is lost to the sums; its mowings still say where it went.`;
}

function BedFields({ bed }: { readonly bed: Bed }) {
  const shown = useShown();
  const today = useToday();
  const editBed = useMowings((state) => state.editBed);
  const results = useMowings((state) => state.bedResults[bed.id]);
  const change = (changes: Partial<Bed>) => editBed(bed.id, changes);
  return (
    <>
      <div className="fields">
        <TextField label="Name" value={bed.name} onCommit={(name) => change({ name })} />
        {bed.ground || bed.earlierAreas ? null : (
          <MeasureField
            label={`How big (${shown.units.area.symbol})`}
            hint="Length times width will do. This puts the measure right for its whole log; a bed that was made bigger or smaller has “Another size” on its page."
            measure="area"
            units={shown.system}
            value={bed.areaM2}
            echo={
              bed.lengthMetres !== null && bed.widthMetres !== null
                ? `${shown.estimate(bed.widthMetres, shown.units.length)} by ${shown.estimate(bed.lengthMetres, shown.units.length)}`
                : undefined
            }
            onCommit={(areaM2, sides) =>
              areaM2 === null
                ? undefined
                : change({
                    areaM2,
                    lengthMetres: sides ? Math.max(...sides) : null,
                    widthMetres: sides ? Math.min(...sides) : null,
                  })
            }
          />
        )}
        <SettledQuantityField
          label="Walk from the gate (steps)"
          hint="Leave it empty if it does not matter."
          value={bed.steps}
          mayBeEmpty
          show={(value) => String(value)}
          read={(text) => {
            const value = Number(text.trim().replace(/\s*steps?$/i, ''));
            return value >= 0 && value <= 10_000
              ? { value }
              : {
                  trouble: { sentence: 'Steps are a number, such as 25.', suggestion: '25' },
                };
          }}
          onCommit={(steps) => change({ steps })}
        />
        {!bed.ground && (
          <DateField
            label="Known since"
            hint="Empty: from the season of its first layer. What you wrote of days before it is left out of the sums."
            day={bed.knownSince}
            today={shown.iso(today)}
            latest={shown.iso(today)}
            mayBeEmpty
            write={shown.dayField}
            sentence={dayFailureSentence}
            onDay={(knownSince) => change({ knownSince })}
          />
        )}
      </div>
      <ChoiceRow
        legend="Above it"
        choices={[
          { value: 'open', label: 'open sky' },
          { value: 'glass or film', label: 'glass or film' },
        ]}
        value={bed.roof}
        onChoose={(roof) => change({ roof })}
      />
      <BedSoil bed={bed} results={results} heading="h3" />
      <BedPlantings bed={bed} heading="h3" />
    </>
  );
}
