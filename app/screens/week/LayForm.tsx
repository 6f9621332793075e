import { useEffect, useMemo, useRef, useState } from 'react';
import { useAnnounce, useHeardAtRest } from '../../controls/Announcer';
import { DateField } from '../../controls/DateField';
import { textFromDay } from '../../core/days';
import type { Application } from '../../document/schema';
import type { LayingDraft, StopCaution } from '../../store/contract';
import { mowingAccount, unaskedSource } from '../../store/selectors';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { useDesk } from '../desk';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { TroubleReason } from '../WorkTrouble';
import { useReadingContext, useToday } from '../useReadingContext';
import { LayRowFields } from './LayRowFields';
import type { LayAdvice } from './layAdvice';
import { newRow, readRows, takenBy, type LayRow, type ReadRow } from './layRows';
import { partOfMowing } from './partOfMowing';
import type { StoppedPlace } from './StopsDialog';
import { stopsDialog, treatmentQuestion } from '../places';
import { previewHeard } from './previewHeard';

export interface LayFormProps {
  /** what is laid, "mowing:ID", or null: chosen in each line */
  readonly what: string | null;
  /** the bed it goes on, or null: chosen in each line */
  readonly bedId: string | null;
  /** first day it can have been laid, YYYY-MM-DD */
  readonly earliest?: string | undefined;
  /** the lines filled in, to be looked at once more before they are laid */
  readonly filled?: readonly LayRow[];
  /** the day it was laid, where it is not today unless chosen otherwise */
  readonly day?: string;
  /** beds for which the plan had something: those that get nothing here are written down as left out */
  readonly insteadOn?: readonly string[];
  /** a bed that was asked for from elsewhere on the page, anew with every press */
  readonly wanted?: WantedBed | null;
  readonly onLaid: (applicationIds: readonly string[]) => void;
  readonly onCancel?: () => void;
}

/** A bed that was pressed elsewhere on the page, with what is advised for it. */
export interface WantedBed {
  readonly bedId: string;
  readonly press: number;
  readonly advice: LayAdvice | null;
}

type Question =
  | { readonly kind: 'treatment'; readonly of: { lawnId: string } | { stockId: string } }
  | { readonly kind: 'stops'; readonly stops: readonly StopCaution[] };

/** Bed by bed: what goes where; nothing is kept before its effect and its cautions were seen. */
export function LayForm(props: LayFormProps) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const propose = useMowings((state) => state.propose);
  const preview = useMowings((state) => state.preview);
  const layIt = useMowings((state) => state.layIt);
  const announce = useAnnounce();
  const { filled: start } = props;
  const first = () => start ?? [newRow(props.what ?? '', props.bedId ?? '')];
  const deskKey = `lay ${props.what ?? ''} ${props.bedId ?? ''}${start ? JSON.stringify(start) : ''}`;
  const [rows, setRows, clearRows] = useDesk<readonly LayRow[]>(deskKey, first);
  const [chosenDate, setDate] = useState<string | null>(props.day ?? null);
  // unless another day was chosen it is today, also when today moves on
  const date = chosenDate ?? textFromDay(today);
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const [engineFailed, setEngineFailed] = useState(false);
  const [failureReason, setFailureReason] = useState<string | null>(null);
  const [question, setQuestion] = useState<Question | null>(null);
  const holder = useRef<HTMLDivElement>(null);

  const read = useMemo(() => readRows(garden, context, rows, date), [rows, garden, context, date]);
  const filled = read.filter((row) => !row.isBlank || props.bedId !== null);
  const drafts = useMemo(() => read.flatMap(({ draft }) => (draft ? [draft] : [])), [read]);
  useEffect(() => propose(drafts), [drafts, propose]);
  useEffect(() => () => propose([]), [propose]);
  useHeardAtRest(
    preview?.state === 'ready' ? previewHeard(preview.beds, garden.beds, shown.units) : '',
    'effect',
  );

  const { wanted, what } = props;
  const wantedSeen = useRef(wanted?.press);
  /** the bed whose line is to be focused once it is drawn; '' for a line without one */
  const focusBed = useRef<string | null>(null);
  useEffect(() => {
    if (!wanted || wantedSeen.current === wanted.press) return;
    wantedSeen.current = wanted.press;
    const advised: Partial<LayRow> = { bedId: wanted.bedId, ...wanted.advice };
    setRows((now) => {
      const own = now.findIndex(({ bedId }) => bedId === wanted.bedId);
      const at = own < 0 ? now.findIndex(({ bedId }) => bedId === '') : own;
      if (at < 0) return [...now, { ...newRow(what ?? ''), ...advised }];
      // what was typed for this bed already is the person's own
      return now.map((row, index) =>
        index === at && row.amount.trim() === '' ? { ...row, ...advised } : row,
      );
    });
    focusBed.current = wanted.bedId;
  }, [wanted, what, setRows]);
  useEffect(() => {
    if (focusBed.current === null) return;
    const isNew = focusBed.current === '';
    const line = isNew
      ? [...(holder.current?.querySelectorAll('.lay-row') ?? [])].at(-1)
      : holder.current?.querySelector(`[data-bed="${CSS.escape(focusBed.current)}"]`);
    if (!line) return;
    focusBed.current = null;
    if (isNew) return line.querySelector('select')?.focus();
    const amount = line.querySelector<HTMLInputElement>('input[type=text]');
    amount?.focus();
    // what is advised stands there already: typing takes its place
    amount?.select();
  });

  /** mowings of which more would be laid than there is */
  const over = garden.mowings.flatMap((mowing) => {
    const taken = takenBy(read, `mowing:${mowing.id}`);
    if (taken <= 0) return [];
    const left = Math.max(0, mowingAccount(garden, mowing).leftDryKilograms);
    return taken > left * 1.005 ? [{ mowing, taken, left }] : [];
  });
  const change = (key: string, changes: Partial<LayRow>) =>
    setRows((now) => now.map((row) => (row.key === key ? { ...row, ...changes } : row)));
  const askFirstTrouble = (): void => {
    requestAnimationFrame(() =>
      holder.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus(),
    );
  };

  const unasked = () => {
    const froms = drafts.flatMap(({ parts }) => parts.map(({ from }): Application['from'] => from));
    return froms.map((from) => unaskedSource(garden, from)).find((source) => source !== null);
  };

  const lay = async (laid: readonly LayingDraft[], option?: 'without cautions') => {
    setBusy(true);
    const without = (props.insteadOn ?? []).filter((id) => laid.every(({ bedId }) => bedId !== id));
    const result = await layIt(laid, option, without);
    setBusy(false);
    if (result.ok) {
      const names = [
        ...new Set(laid.map(({ bedId }) => garden.beds.find(({ id }) => id === bedId)?.name)),
      ];
      announce(`Laid on ${names.join(', ')}. Undo takes it back.`);
      setAsked(false);
      setRefused(null);
      setEngineFailed(false);
      clearRows();
      props.onLaid(result.value);
    } else if (result.error.kind === 'stops') {
      setQuestion({ kind: 'stops', stops: result.error.stops });
    } else if (result.error.kind === 'engine-failed') {
      setEngineFailed(true);
      setFailureReason(result.error.reason);
      setRefused('The sums did not come out, so nobody can say what speaks against it.');
    } else setRefused(editFailureSentence(result.error));
  };

  const submit = () => {
    setAsked(true);
    setRefused(null);
    if (filled.length === 0 || filled.some(({ draft }) => draft === null)) {
      announce('Something is still missing.');
      askFirstTrouble();
      return;
    }
    // the day it stood at before is not the one that was meant
    if (holder.current?.querySelector('.lay-end [aria-invalid]')) return askFirstTrouble();
    if (over.length > 0) return;
    const source = unasked();
    if (source) setQuestion({ kind: 'treatment', of: source });
    else void lay(drafts);
  };

  const placesOf = (stops: readonly StopCaution[]): StoppedPlace[] =>
    [...new Set(stops.map(({ bedId }) => bedId))].map((id) => ({
      id,
      name: garden.beds.find((bed) => bed.id === id)?.name ?? '',
      stops: stops.filter(({ bedId }) => bedId === id).map(({ caution }) => caution),
    }));

  const effectOf = ({ bed, draft }: ReadRow) =>
    bed && draft ? preview?.beds.find(({ bedId }) => bedId === bed.id) : undefined;

  return (
    <div className="form" ref={holder}>
      {read.map((row, index) => (
        <LayRowFields
          key={row.row.key}
          read={row}
          number={index + 1}
          mayChooseWhat={props.what === null}
          mayChooseBed={props.bedId === null}
          asked={asked && (!row.isBlank || filled.length === 0)}
          effect={effectOf(row)}
          isWorking={preview?.state === 'working'}
          onChange={(changes) => change(row.row.key, changes)}
          onRemove={
            rows.length > 1
              ? () => setRows((now) => now.filter(({ key }) => key !== row.row.key))
              : null
          }
        />
      ))}
      {asked && filled.length === 0 && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          Choose a bed and say how much goes on it.
        </p>
      )}
      {preview?.state === 'failed' && (
        <div className="field-trouble">
          <p role="alert">
            <span aria-hidden="true" className="field-trouble-mark" />
            What this would do cannot be reckoned. Nothing that you typed is lost; try another
            amount, or lay it and look at the bed’s page.
          </p>
          <TroubleReason reason={preview.reason} />
        </div>
      )}
      {over.map(({ mowing, taken, left }) => (
        <p key={mowing.id} role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          That is more than there is: {partOfMowing(garden, mowing, taken, shown)}, of{' '}
          {partOfMowing(garden, mowing, left, shown)} in hand. Lay less, or change what was mown.
        </p>
      ))}
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      {engineFailed && <TroubleReason reason={failureReason} />}
      <div className="lay-end">
        <DateField
          label="Laid when?"
          day={date}
          today={textFromDay(today)}
          earliest={props.earliest}
          latest={textFromDay(today)}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={setDate}
        />
        <div className="button-row">
          <button
            type="button"
            className="button-main"
            aria-disabled={busy || undefined}
            onClick={() => {
              if (!busy) submit();
            }}
          >
            {busy
              ? 'Looking at what it does…'
              : filled.length > 1
                ? `Lay on these ${filled.length}`
                : 'Lay it'}
          </button>
          {props.bedId === null && (
            <button
              type="button"
              className="button"
              onClick={() => {
                setRows((now) => [...now, newRow(props.what ?? '')]);
                focusBed.current = '';
              }}
            >
              Another bed
            </button>
          )}
          {engineFailed && (
            <button
              type="button"
              className="button"
              onClick={() => void lay(drafts, 'without cautions')}
            >
              Write it down all the same
            </button>
          )}
          {props.onCancel && (
            <button type="button" className="button" onClick={props.onCancel}>
              Cancel
            </button>
          )}
        </div>
      </div>
      {question?.kind === 'treatment' && (
        <treatmentQuestion.Part
          of={question.of}
          onClose={() => setQuestion(null)}
          onAnswered={() => {
            setQuestion(null);
            announce('Answer kept. Look at the cautions once more, then lay it.');
          }}
        />
      )}
      {question?.kind === 'stops' && (
        <stopsDialog.Part
          places={placesOf(question.stops)}
          onClose={() => setQuestion(null)}
          onPass={() => {
            const { stops } = question;
            setQuestion(null);
            void lay(
              drafts.map((draft) => ({
                ...draft,
                passedStops: stops
                  .filter(({ bedId }) => bedId === draft.bedId)
                  .map(({ caution }) => caution.kind),
              })),
            );
          }}
        />
      )}
    </div>
  );
}
