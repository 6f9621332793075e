import { useState } from 'react';
import type { UnitSystem } from '../../../amounts/amount';
import { readMeasure } from '../../../amounts/readMeasure';
import { readShare } from '../../../amounts/readShare';
import { useAnnounce } from '../../../controls/Announcer';
import { ChoiceRow } from '../../../controls/ChoiceRow';
import { Field } from '../../../controls/Field';
import { NameField } from '../../../controls/NameField';
import { textFromDay } from '../../../core/days';
import { failure } from '../../../core/result';
import { plantingsFrom } from '../../../document/bedChanges/newGround';
import { splitBed, type PlantsAt } from '../../../document/bedChanges/splitBed';
import { cropName } from '../../../document/cropValues';
import type { Bed } from '../../../document/schema';
import { bedStepNames } from '../../../words/bedChangeWords';
import { nameFor } from '../../nameFor';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { useToday } from '../../useReadingContext';
import { ChangeDialog } from './ChangeDialog';
import { useBedChange, type Refused } from './useBedChange';

/** One bed into two: how big, what they are called, and where the plants stand then. */
export function SplitDialog({ bed, onClose }: { readonly bed: Bed; readonly onClose: () => void }) {
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const openBed = useMowings((state) => state.openBed);
  const announce = useAnnounce();
  const keepChange = useBedChange();
  const taken = garden.beds.flatMap(({ id, name }) => (id === bed.id ? [] : [name]));
  const [names, setNames] = useState<readonly [string, string]>(() => [
    bed.name,
    nameFor([...taken, bed.name], bed.name),
  ]);
  const [share, setShare] = useState('half');
  const [on, setOn] = useState(today);
  const [plants, setPlants] = useState<Readonly<Record<string, PlantsAt>>>({});
  const [refused, setRefused] = useState<Refused | null>(null);
  const first = firstShare(share, bed.areaM2, shown.system);
  const standing = plantingsFrom(garden, bed.id, on);
  const area = (part: number) => shown.estimate(part * bed.areaM2, shown.units.area);
  const change = (act: () => void) => {
    setRefused(null);
    act();
  };
  const keep = () => {
    const split =
      first === null
        ? failure({ kind: 'parts' as const })
        : splitBed(
            garden,
            {
              bedId: bed.id,
              on,
              names: [names[0].trim(), names[1].trim()],
              firstShare: first,
              plants,
            },
            today,
          );
    const empty = names.some((name) => name.trim() === '');
    const why = keepChange(
      bedStepNames.split(bed.name),
      empty
        ? failure({ kind: 'name', name: '' })
        : split.ok
          ? { ok: true, value: split.value.garden }
          : split,
    );
    if (why !== null) return setRefused(why);
    announce(`${bed.name} is two beds now. Undo joins them again.`);
    onClose();
    if (split.ok) openBed(split.value.bedIds[0] ?? null);
  };
  const nameField = (at: 0 | 1, label: string) => (
    <NameField
      label={label}
      name={names[at]}
      onName={(name) => change(() => setNames(at === 0 ? [name, names[1]] : [names[0], name]))}
    />
  );
  return (
    <ChangeDialog
      title={`Split ${bed.name}`}
      wide
      dayLabel="On which day?"
      day={on}
      today={today}
      onDay={(day) => change(() => setOn(day))}
      after={standing.map((planting) => (
        <ChoiceRow
          key={planting.id}
          legend={`${cropName(garden, planting.cropId)}, ${planting.how} ${shown.dayWord(planting.started)}`}
          choices={[
            { value: 'both', label: 'on both' },
            { value: 'first', label: `on ${names[0] || 'the first'}` },
            { value: 'second', label: `on ${names[1] || 'the second'}` },
          ]}
          value={plants[planting.id] ?? 'both'}
          onChoose={(where) => change(() => setPlants((now) => ({ ...now, [planting.id]: where })))}
        />
      ))}
      refused={refused}
      keep="Split it"
      onKeep={keep}
      onClose={onClose}
    >
      <p>
        Each part starts with what this bed had come to hold, square metre for square metre. The bed
        as it was is put away with its log. What is written down for that day was done before.
      </p>
      <Field
        label="How much is the first part?"
        hint={`Half, a third, 40 %, or its size: ${shown.system === 'us' ? '4 x 8 ft' : '1.2 x 2 m'}.`}
        echo={
          first !== null && first > 0 && first < 1
            ? `${area(first)} and ${area(1 - first)}.`
            : undefined
        }
        trouble={
          first === null || first <= 0 || first >= 1
            ? { sentence: 'Say a share of the bed, such as half or 40 %.', suggestion: 'half' }
            : null
        }
        onSuggestion={(suggestion) => change(() => setShare(suggestion))}
      >
        {(links) => (
          <input
            {...links}
            type="text"
            autoComplete="off"
            value={share}
            onChange={(event) => change(() => setShare(event.target.value))}
          />
        )}
      </Field>
      <div className="fields">
        {nameField(0, 'The first part is called')}
        {nameField(1, 'The second')}
      </div>
    </ChangeDialog>
  );
}

/** "half", "40 %" or a size as a share of the bed; null where it is none of these. */
function firstShare(text: string, areaM2: number, units: UnitSystem): number | null {
  const said = readShare(text);
  if (said) return said.of === 'all' ? said.share : null;
  const percent = /^(\d+(?:[.,]\d+)?)\s*(?:%|per ?cent)$/.exec(text.trim());
  if (percent) return Number(percent[1]!.replace(',', '.')) / 100;
  const size = readMeasure(text, 'area', { units, containers: [], bareNumber: false });
  return size.ok ? size.value.value / areaM2 : null;
}
