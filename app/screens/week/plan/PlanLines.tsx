import { useId, useState } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { Disclosure } from '../../../controls/Disclosure';
import { Icon } from '../../../controls/marks/Icon';
import type { PlanAnswer, PlanLine } from '../../../core/plan/answer';
import { listed } from '../../../words/chartFormat';
import { editFailureSentence } from '../../../words/messages';
import {
  planLayerWords,
  planLimitWords,
  planTurnWords,
  planWhyWords,
} from '../../../words/planWords';
import { unaskedSource } from '../../../store/selectors';
import { CautionList } from '../../CautionList';
import { CoverWord, NitrogenWord } from '../../StateWords';
import { useGarden, useMowings } from '../../store';
import { planAmount, planDrafts } from './planDrafts';
import { usePlanNames } from './usePlanNames';

/** The list alone goes on paper; everything else that is printed has the garden's menu. */
function printList(): void {
  const { classList } = document.documentElement;
  classList.add('prints-list');
  window.addEventListener('afterprint', () => classList.remove('prints-list'), { once: true });
  window.print();
}

/** Bed by bed what to lay today; one line or all of them can be written down as done. */
export function PlanLines(props: {
  readonly answer: PlanAnswer;
  readonly isBehind: boolean;
  readonly onChange: ((bedId: string, amount: string) => void) | null;
}) {
  const { answer, isBehind } = props;
  const garden = useGarden();
  const names = usePlanNames();
  const layIt = useMowings((state) => state.layIt);
  const showDialog = useMowings((state) => state.showDialog);
  const announce = useAnnounce();
  const [busy, setBusy] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);

  const done = async (lines: readonly PlanLine[]) => {
    const drafts = planDrafts(garden, lines);
    for (const { parts } of drafts)
      for (const { from } of parts) {
        const unasked = unaskedSource(garden, from);
        if (unasked) return showDialog({ kind: 'treatment', ...unasked });
      }
    setBusy(true);
    const result = await layIt(drafts);
    setBusy(false);
    if (result.ok) {
      setRefused(null);
      return announce(
        `Laid on ${listed([...new Set(drafts.map(({ bedId }) => names.bed(bedId)))])}. Undo takes it back.`,
      );
    }
    if (result.error.kind === 'stops')
      return setRefused(
        'Something has changed since, and a stop speaks against it now. Lay it by hand, where the stop is told.',
      );
    if (result.error.kind === 'engine-failed')
      return setRefused('The sums did not come out, so nobody can say what speaks against it.');
    setRefused(editFailureSentence(result.error));
  };

  if (answer.lines.length === 0)
    return (
      <div className="plan-lay">
        <h3>
          <Icon name="barrow" /> Lay today
        </h3>
        <p>Nothing. No bed gains by what is on hand; where it goes instead stands below.</p>
      </div>
    );
  return (
    <div className="plan-lay">
      <h3>
        <Icon name="barrow" /> Lay today
      </h3>
      <ol className="plain-list plan-lines">
        {answer.lines.map((line) => (
          <Line
            key={line.bedId}
            line={line}
            isReady={!busy && !isBehind}
            onDone={() => void done([line])}
            onChange={props.onChange}
          />
        ))}
      </ol>
      {refused && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {refused}
        </p>
      )}
      <div className="button-row not-printed">
        {answer.lines.length > 1 && (
          <button
            type="button"
            className="button-main"
            aria-disabled={busy || isBehind}
            onClick={() => {
              if (!busy && !isBehind) void done(answer.lines);
            }}
          >
            I laid all of this
          </button>
        )}
        <button type="button" className="button" onClick={printList}>
          Print a list to take outside
        </button>
      </div>
      <p className="small soft not-printed">
        Did something else, or nothing? Write down what was laid under “Clippings in hand”, and
        where the rest went; the plan follows.
      </p>
    </div>
  );
}

function Line(props: {
  readonly line: PlanLine;
  readonly isReady: boolean;
  readonly onDone: () => void;
  readonly onChange: ((bedId: string, amount: string) => void) | null;
}) {
  const { line, isReady, onChange } = props;
  const garden = useGarden();
  const names = usePlanNames();
  const pinPlan = useMowings((state) => state.pinPlan);
  const { before, after, limit, turns } = line.why;
  const name = names.bed(line.bedId);
  const nameId = useId();
  const stronger = line.cautions.filter(({ weight }) => weight !== 'note');
  const notes = line.cautions.filter(({ weight }) => weight === 'note');
  const ofMowing = line.layers.find(({ ref }) => ref.source === 'mowing');
  return (
    <li className="plan-line">
      <h4 id={nameId}>{name}</h4>
      <ul className="plain-list">
        {line.layers.map((layer) => (
          <li key={layer.layerId} className="plan-amount">
            {planLayerWords(layer, names)}
          </li>
        ))}
      </ul>
      <p>{planWhyWords(line, names)}</p>
      <dl className="plan-states">
        {(
          [
            ['Now', before],
            ['With this', after],
          ] as const
        ).map(([when, { state, coverState }]) => (
          <div key={when}>
            <dt>{when}</dt>
            <dd>
              <NitrogenWord state={state} />{' '}
              <span className="plan-ground">
                <span aria-hidden="true">·</span> ground <CoverWord state={coverState} />
              </span>
            </dd>
          </div>
        ))}
      </dl>
      {stronger.length > 0 && <CautionList cautions={stronger} />}
      {notes.length > 0 && (
        <Disclosure
          summary={notes.length === 1 ? '1 note on it' : `${notes.length} notes on it`}
          describedBy={nameId}
          quiet
        >
          <CautionList cautions={notes} />
        </Disclosure>
      )}
      <Disclosure summary="Why not more, and what would change it" describedBy={nameId} quiet>
        <p>{planLimitWords(limit, names)}</p>
        {turns.map((turn) => (
          <p key={turn.kind}>{planTurnWords(turn, names)}</p>
        ))}
      </Disclosure>
      <div className="button-row not-printed">
        <button
          type="button"
          className="button"
          aria-label={`Laid as planned: ${name}`}
          aria-disabled={!isReady}
          onClick={() => {
            if (isReady) props.onDone();
          }}
        >
          Laid as planned
        </button>
        {onChange && ofMowing && (
          <button
            type="button"
            className="button"
            aria-label={`Change the amount: ${name}`}
            onClick={() => onChange(line.bedId, planAmount(garden, ofMowing).text)}
          >
            Change…
          </button>
        )}
        <button
          type="button"
          className="button"
          aria-label={`Nothing here: ${name}`}
          onClick={() => pinPlan(line.bedId, null, 0)}
        >
          Nothing here
        </button>
      </div>
    </li>
  );
}
