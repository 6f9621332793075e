import { useState } from 'react';
import { amountTrouble } from '../../controls/amountTrouble';
import { useAnnounce, useHeardAtRest } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { amountText } from '../../amounts/amountText';
import { readBackLog } from '../../amounts/readBackLog';
import { editFailureSentence } from '../../words/messages';
import { conditionChoices, wetnessChoices } from '../choices';
import { useDesk } from '../desk';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { backLogRecipe, regularDraft } from './backLog';
import { TreatmentQuestion } from './TreatmentDialog';

interface Entry {
  readonly text: string;
  readonly lawnId: string;
  /** '' left lying, 'as said' the bed the line names */
  readonly bedId: string;
  readonly wetness: 'soaked' | 'damp' | 'dry';
  readonly condition: 'just cut' | 'limp' | 'crisp';
}

/** Weeks of earlier mowings in one line, looked at before they are kept. */
export function BackLog() {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const logBacklog = useMowings((state) => state.logBacklog);
  const edit = useMowings((state) => state.edit);
  const announce = useAnnounce();
  const [entry, setEntry, clear] = useDesk<Entry>('back-log', () => ({
    text: '',
    lawnId: garden.lawns[0]?.id ?? '',
    bedId: '',
    wetness: 'damp',
    condition: 'just cut',
  }));
  const [left, setLeft] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const [question, setQuestion] = useState(false);
  const change = (changes: Partial<Entry>) => setEntry((now) => ({ ...now, ...changes }));

  const reading = readBackLog(entry.text, 'mowing', { ...context, lawnId: entry.lawnId }, today);
  const entries = reading.ok ? reading.value.entries : [];
  const saidBed = entries.find(({ reading: each }) => each.placeId !== null)?.reading.placeId;
  const bedId = entry.bedId || saidBed || '';
  const bed = garden.beds.find(({ id }) => id === bedId);
  const isBlank = entry.text.trim() === '';
  const count = entries.length === 1 ? '1 mowing' : `${entries.length} mowings`;
  const where =
    (bed ? `laid on ${bed.name}` : 'left on the lawn') +
    (reading.ok && reading.value.daysAreGuessed ? '; the days are guessed, so look at them' : '');
  const dayLines = entries.map(({ day, reading: each }) => ({
    day,
    words:
      `${shown.dayShort(day)}: ${each.amount.certainty === 'plain' ? '' : 'about '}` +
      (amountText(each.amount.quantity, shown.system, garden.containers) ?? each.amount.text),
  }));
  useHeardAtRest(
    entries.length === 0
      ? ''
      : `This makes ${count}, ${where}. ${dayLines.map(({ words }) => words).join('; ')}.`,
    'back-log',
  );

  const keep = () => {
    setLeft(true);
    if (!reading.ok || entries.length === 0) return;
    const lawn = garden.lawns.find(({ id }) => id === entry.lawnId);
    if (bed && lawn?.treatment.answer === 'not asked') return setQuestion(true);
    const regular = regularDraft(entries, { ...entry, bedId });
    const result = regular
      ? logBacklog(regular)
      : edit(
          `Add ${entries.length} earlier mowings`,
          backLogRecipe(entries, { ...entry, bedId }, garden),
        );
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    setRefused(null);
    setLeft(false);
    clear();
    announce(`${entries.length} earlier mowings are kept. Undo takes them back.`);
  };

  return (
    <div className="form">
      <QuantityField
        label="What was mown before, and where it went"
        hint="In one line: roughly two bags a week on the squash from 1 May · 2 bags on 8, 15 and 22 June"
        text={entry.text}
        wide
        onText={(text) => change({ text })}
        onEnd={() => setLeft(!isBlank)}
        onEnter={keep}
        trouble={left && !isBlank ? amountTrouble(reading) : null}
      />
      <div className="fields">
        {garden.lawns.length > 1 && (
          <PickOne
            label="From which lawn?"
            value={entry.lawnId}
            groups={[
              {
                label: null,
                options: garden.lawns.map(({ id, name }) => ({ value: id, label: name })),
              },
            ]}
            onPick={(lawnId) => change({ lawnId })}
          />
        )}
        <PickOne
          label="Where it went"
          value={bedId}
          groups={[
            {
              label: null,
              options: [
                { value: '', label: 'back on the lawn' },
                ...garden.beds.map(({ id, name }) => ({ value: id, label: name })),
              ],
            },
          ]}
          onPick={(next) => change({ bedId: next })}
        />
        <ChoiceRow
          legend="How wet, mostly?"
          choices={wetnessChoices}
          value={entry.wetness}
          onChoose={(wetness) => change({ wetness })}
        />
        {bed && (
          <ChoiceRow
            legend="Laid in what state?"
            choices={conditionChoices}
            value={entry.condition}
            onChoose={(condition) => change({ condition })}
          />
        )}
      </div>
      {reading.ok && entries.length > 0 && (
        <div className="preview">
          <p>
            This makes <strong>{count}</strong>, {where}:
          </p>
          <ol className="plain-list preview-days">
            {dayLines.map(({ day, words }) => (
              <li key={day}>{words}</li>
            ))}
          </ol>
        </div>
      )}
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      <div>
        <button type="button" className="button-main" onClick={keep}>
          Keep {entries.length > 1 ? `these ${entries.length}` : 'it'}
        </button>
      </div>
      {question && unaskedLawn(garden, entry.lawnId) && (
        <TreatmentQuestion
          of={{ lawnId: entry.lawnId }}
          onClose={() => setQuestion(false)}
          onAnswered={() => setQuestion(false)}
        />
      )}
    </div>
  );
}

const unaskedLawn = (garden: ReturnType<typeof useGarden>, lawnId: string): boolean =>
  garden.lawns.some(({ id, treatment }) => id === lawnId && treatment.answer === 'not asked');
