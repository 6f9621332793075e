import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { MeasureField } from '../../controls/MeasureField';
import { TextField } from '../../controls/TextField';
import { Tick } from '../../controls/Tick';
import { dayOf, seasonStart, type DayNumber } from '../../core/days';
import type { Garden, Lawn, SourceHazard, Treatment } from '../../document/schema';
import { countOf } from '../../words/figures';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { lawnKindChoices, mowingHabitChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { treatedWords } from '../treatedWords';
import { TreatmentLine } from '../TreatmentLine';
import { useToday } from '../useReadingContext';
import { SourceTicks } from '../garden/SourceTicks';
import { Thing } from '../garden/Thing';
import { nameFor } from '../nameFor';

/** Lawns: how large, what grass, and what was put on them. */
export function LawnsPart() {
  const garden = useGarden();
  const addLawn = useMowings((state) => state.addLawn);
  const deleteLawn = useMowings((state) => state.deleteLawn);
  const announce = useAnnounce();
  const [added, setAdded] = useState<string | null>(null);
  const add = () => {
    const result = addLawn({
      name: nameFor(
        garden.lawns.map(({ name }) => name),
        'Lawn',
      ),
      areaM2: 100,
      grass: 'cool',
      kind: 'ordinary',
      creepingGrass: false,
      seedHeadsSeen: null,
      fouledByPets: false,
      treatment: { answer: 'not asked' },
    });
    if (result.ok) setAdded(result.value);
    announce(result.ok ? 'A lawn was added.' : editFailureSentence(result.error));
  };
  return (
    <>
      {garden.lawns.map((lawn) => (
        <Thing
          key={lawn.id}
          name={lawn.name}
          startsOpen={lawn.id === added}
          startsFocused={lawn.id === added}
          onDelete={() => deleteLawn(lawn.id)}
          summary={<LawnSummary lawn={lawn} />}
        >
          <LawnFields lawn={lawn} />
        </Thing>
      ))}
      <div>
        <button type="button" className="button" onClick={add}>
          Add a lawn
        </button>
      </div>
    </>
  );
}

/** ", mown every week"; nothing where nobody said. */
function habitOf({ mownEveryDays: days }: Lawn): string {
  if (days === undefined) return '';
  const choice = mowingHabitChoices.find(({ value }) => value === String(days));
  return `, mown ${choice ? String(choice.label) : `every ${String(days)} days`}`;
}

function LawnSummary({ lawn }: { readonly lawn: Lawn }) {
  const shown = useShown();
  const { materials } = useGarden();
  const counted = materials.filter(({ id }) => lawn.ownClippings?.includes(id));
  return (
    <>
      {shown.estimate(lawn.areaM2, shown.units.area)}, {lawn.kind}
      {habitOf(lawn)}
      {counted.length > 0 && `, counted by ${counted.map(({ name }) => name).join(', ')}`}.{' '}
      {treatedWords(lawn.treatment, shown)}
      {lawn.earlierTreatments &&
        ` ${countOf(lawn.earlierTreatments.length, 'earlier treatment holds', 'earlier treatments hold')} as well.`}
    </>
  );
}

const ofLawns: readonly SourceHazard[] = ['roadside', 'old house', 'poisonous plants', 'walnut'];

/** Treated in this season under a label that says nothing, and no pot of beans grew straight since. */
const isSilentThisSeason = (
  lawn: Lawn,
  { garden: { seasonStartMonth } }: Garden,
  today: DayNumber,
): boolean =>
  [lawn.treatment, ...(lawn.earlierTreatments ?? [])].some(
    ({ answer, label, date, beanTestPassed }: Treatment) =>
      answer === 'treated' &&
      label === 'silent' &&
      !beanTestPassed &&
      (!date || dayOf(date) >= seasonStart(today, seasonStartMonth)),
  );

function LawnFields({ lawn }: { readonly lawn: Lawn }) {
  const shown = useShown();
  const today = useToday();
  const garden = useGarden();
  const editLawn = useMowings((state) => state.editLawn);
  const showDialog = useMowings((state) => state.showDialog);
  const announce = useAnnounce();
  const change = (changes: Partial<Lawn>) => editLawn(lawn.id, changes);
  const earlier = lawn.earlierTreatments ?? [];
  return (
    <>
      <div className="fields">
        <TextField label="Name" value={lawn.name} onCommit={(name) => change({ name })} />
        <MeasureField
          label={`How big, the part you mow (${shown.units.area.symbol})`}
          measure="area"
          units={shown.system}
          value={lawn.areaM2}
          onCommit={(areaM2) => change(areaM2 === null ? {} : { areaM2 })}
        />
        <DateField
          label="Seed heads seen"
          hint="Empty: none seen."
          day={lawn.seedHeadsSeen}
          today={shown.iso(today)}
          mayBeEmpty
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(seedHeadsSeen) => change({ seedHeadsSeen })}
        />
      </div>
      <TreatmentLine
        name={lawn.name}
        treatment={lawn.treatment}
        onAsk={() => showDialog({ kind: 'treatment', lawnId: lawn.id })}
        more={{
          earlier,
          onTakeOut: (index) => {
            const left = earlier.filter((_one, at) => at !== index);
            change({ earlierTreatments: left.length > 0 ? left : undefined });
            announce('Taken out. Undo brings it back.');
          },
          onAdd: () => showDialog({ kind: 'treatment', lawnId: lawn.id, isAnother: true }),
        }}
      />
      {isSilentThisSeason(lawn, garden, today) && (
        <p className="small soft">
          Its clippings wait some mowings first; beans, tomatoes and what else a trace deforms get
          none this season.
        </p>
      )}
      <ChoiceRow
        legend="What sort of grass is it mostly?"
        choices={lawnKindChoices}
        value={lawn.kind}
        onChoose={(kind) => change({ kind })}
      />
      <ChoiceRow
        legend="When does it grow most?"
        choices={[
          { value: 'cool', label: 'spring and autumn', hint: 'rye grass, fescue, bluegrass' },
          { value: 'warm', label: 'high summer', hint: 'bermuda, zoysia' },
        ]}
        value={lawn.grass}
        onChoose={(grass) => change({ grass })}
      />
      <ChoiceRow
        legend="How often do you mow it while it grows?"
        choices={mowingHabitChoices}
        value={
          mowingHabitChoices.find(({ value }) => value === String(lawn.mownEveryDays ?? ''))
            ?.value ?? null
        }
        onChoose={(days) => change({ mownEveryDays: days === '' ? undefined : Number(days) })}
      />
      <div>
        <Tick
          label="Creeping grass or runners in it"
          hint="couch, bermuda, creeping buttercup: pieces take root"
          checked={lawn.creepingGrass}
          onChange={(creepingGrass) => change({ creepingGrass })}
        />
        <Tick
          label="Dogs, cats or geese foul it"
          checked={lawn.fouledByPets}
          onChange={(fouledByPets) => change({ fouledByPets })}
        />
        <SourceTicks
          asked={ofLawns}
          ticked={lawn.hazards ?? []}
          onChange={(hazards) => change({ hazards })}
        />
      </div>
    </>
  );
}
