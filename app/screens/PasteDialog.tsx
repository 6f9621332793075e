import { useMemo, useState } from 'react';
import { pastedKey, readPasted, type PastedKind, type PastedLine } from '../amounts/readPasted';
import type { DateOrder } from '../amounts/pastedCells';
import { Scroller } from '../charts/Scroller';
import { useAnnounce, useHeardAtRest } from '../controls/Announcer';
import { ChoiceRow } from '../controls/ChoiceRow';
import { Dialog } from '../controls/Dialog';
import { DialogEnd } from '../controls/DialogEnd';
import { Field } from '../controls/Field';
import { textFromDay } from '../core/days';
import type { Garden } from '../document/schema';
import { editFailureSentence } from '../words/messages';
import {
  pastedLeftSentence,
  pastedRefusalSentence,
  pastedSummary,
  pastedWords,
} from '../words/pastedWords';
import { useShown } from './shown';
import { useGarden, useMowings } from './store';
import { useReadingContext, useToday } from './useReadingContext';

/** Lines drawn; further ones are counted. */
const mostDrawn = 200;

type Fate = 'new' | 'known' | 'refused';
interface Told {
  readonly line: PastedLine;
  readonly fate: Fate;
}

/** What the garden has already, by the same key. */
const knownKeys = (garden: Garden, kind: PastedKind): ReadonlySet<string> =>
  new Set(
    kind === 'mowings'
      ? garden.mowings.map(({ date, lawnId }) => `${date} ${lawnId}`)
      : garden.events.flatMap((event) => (event.kind === 'rain gauge' ? [event.date] : [])),
  );

/**
 * Mowings or rain pasted from a spreadsheet: looked at line by line before anything is kept, then
 * brought in as one step. What the garden has already is left as it is.
 */
export function PasteDialog(props: { readonly kind: PastedKind; readonly onClose: () => void }) {
  const { kind, onClose } = props;
  const garden = useGarden();
  const context = useReadingContext();
  const today = useToday();
  const announce = useAnnounce();
  const bringList = useMowings((state) => state.bringList);
  const [text, setText] = useState('');
  const [order, setOrder] = useState<DateOrder | null>(null);
  const [wasAsked, setWasAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const [broughtIn, setBroughtIn] = useState<string | null>(null);
  const words = pastedWords[kind];
  const pasted = useMemo(
    () => readPasted(text, kind, { ...context, today }, order),
    [text, kind, context, today, order],
  );
  const asks =
    pasted.asksDateOrder || wasAsked || (pasted.order !== null && pasted.eitherWay !== null);
  const known = useMemo(() => knownKeys(garden, kind), [garden, kind]);
  const told = useMemo(() => {
    const seen = new Set<string>();
    return pasted.lines.map((line): Told => {
      if (!line.read.ok) return { line, fate: 'refused' };
      const key = pastedKey(line.read.entry);
      // a lawn mown twice on a day is believed; a gauge has one reading a day
      const isKnown = known.has(key) || (kind === 'rain' && seen.has(key));
      seen.add(key);
      return { line, fate: isKnown ? 'known' : 'new' };
    });
  }, [pasted, known, kind]);
  // what has to be mended is seen before what was understood
  const drawn = useMemo(
    () =>
      [...told]
        .sort((one, other) => Number(other.fate === 'refused') - Number(one.fate === 'refused'))
        .slice(0, mostDrawn),
    [told],
  );
  const undrawn = told.length - drawn.length;
  const count = (fate: Fate) => told.filter((one) => one.fate === fate).length;
  const summary =
    text.trim() === ''
      ? ''
      : pastedSummary({
          lines: pasted.lines.length,
          new: count('new'),
          known: count('known'),
          refused: count('refused'),
          leftOut: pasted.leftOut,
        });
  useHeardAtRest(summary, 'pasted list');

  const keep = () => {
    const entries = told.flatMap(({ line, fate }) =>
      fate === 'new' && line.read.ok ? [line.read.entry] : [],
    );
    if (entries.length === 0)
      return setRefused('There is nothing to bring in yet. Paste lines with a day and an amount.');
    const result = bringList(
      entries.flatMap((entry) =>
        entry.kind === 'mowing'
          ? [
              {
                date: textFromDay(entry.day),
                lawnId: entry.lawnId,
                amount: entry.amount,
                wetness: entry.wetness,
                kind: null,
              },
            ]
          : [],
      ),
      entries.flatMap((entry) =>
        entry.kind === 'rain'
          ? [{ date: textFromDay(entry.day), millimetres: entry.millimetres }]
          : [],
      ),
    );
    if (!result.ok) return setRefused(editFailureSentence(result.error));
    const done = `Brought in: ${entries.length} ${words.noun[entries.length === 1 ? 0 : 1]}. Undo takes all of them back.`;
    announce(done);
    const left = told.flatMap(({ line, fate }) => (fate === 'refused' ? [line.raw] : []));
    if (pasted.leftOutText !== '') left.push(pasted.leftOutText);
    if (left.length === 0) return onClose();
    // what was not taken stays to be mended
    setText([...(pasted.header ? [pasted.header.raw] : []), ...left].join('\n'));
    setBroughtIn(`${done} ${pastedLeftSentence(count('refused'), pasted.leftOut)}`);
  };

  return (
    <Dialog title={words.title} wide onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        {broughtIn !== null && <p>{broughtIn}</p>}
        <Field label="The cells" hint={words.hint} echo={summary || undefined}>
          {(links) => (
            <textarea
              {...links}
              data-focus-first
              rows={6}
              spellCheck={false}
              value={text}
              onChange={(event) => {
                setText(event.target.value);
                setRefused(null);
              }}
            />
          )}
        </Field>
        {asks && (
          <ChoiceRow
            legend={`Which way round is ${pasted.eitherWay ?? '3/4/2013'}?`}
            choices={[
              { value: 'day first', label: 'day first' },
              { value: 'month first', label: 'month first' },
            ]}
            value={pasted.order}
            onChoose={(chosen) => {
              setWasAsked(true);
              setOrder(chosen);
            }}
          />
        )}
        {told.length > 0 && (
          <Scroller className="table-scroll paste-lines" label="What was understood, line by line">
            <table>
              <thead>
                <tr>
                  <th scope="col">Line</th>
                  <th scope="col">Understood as</th>
                </tr>
              </thead>
              <tbody>
                {drawn.map(({ line, fate }) => (
                  <tr key={line.number}>
                    <th scope="row">{line.number}</th>
                    <td>
                      <Understood line={line} isKnown={fate === 'known'} garden={garden} />
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Scroller>
        )}
        {undrawn > 0 && <p className="small soft">And {undrawn} further lines.</p>}
        {garden.garden.isSample && told.length > 0 && (
          <p className="small">This is the sample garden: your own list belongs in your own.</p>
        )}
        <DialogEnd
          refused={refused}
          keep={count('new') > 0 ? `Bring in ${count('new')}` : 'Bring in'}
          leave={broughtIn === null ? undefined : 'Close'}
          onCancel={onClose}
        />
      </form>
    </Dialog>
  );
}

/** A line as it will be kept, or why it will not. */
function Understood(props: {
  readonly line: PastedLine;
  readonly isKnown: boolean;
  readonly garden: Garden;
}) {
  const shown = useShown();
  const { read, cells } = props.line;
  if (!read.ok)
    return (
      <>
        <span className="soft">{cells.filter(Boolean).join(' · ')}</span>
        <br />
        <span className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {pastedRefusalSentence(read.refusal, shown.dayField)}
        </span>
      </>
    );
  const { entry } = read;
  const what =
    entry.kind === 'rain'
      ? shown.estimate(entry.millimetres, shown.units.rain)
      : `${entry.amount.text}, ${entry.wetness}, ${props.garden.lawns.find(({ id }) => id === entry.lawnId)?.name ?? ''}`;
  return (
    <>
      {shown.dayField(entry.day)}: {what}
      {props.isKnown && <span className="soft"> (there already: left as it is)</span>}
    </>
  );
}
