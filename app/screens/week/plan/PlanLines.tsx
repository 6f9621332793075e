import { useId } from 'react';
import { Disclosure } from '../../../controls/Disclosure';
import { Figured } from '../../../controls/Figured';
import { Icon } from '../../../controls/marks/Icon';
import type { PlanAnswer, PlanLine } from '../../../core/plan/answer';
import {
  planLayerWords,
  planLimitWords,
  planTurnWords,
  planWhyWords,
} from '../../../words/planWords';
import { restsWords } from '../../../words/restWords';
import { unaskedSources } from '../../../words/unaskedSources';
import { planSays } from '../../../words/planSays';
import { CautionList } from '../../CautionList';
import { CoverWord, NitrogenWord } from '../../StateWords';
import { layerFigures, limitFigures, lineFigures, turnFigures } from '../../why/planWhys';
import { restFigures } from '../../why/restWhys';
import { OddsKey } from '../../OddsMarks';
import { PlanOddsMarks } from './PlanOddsMarks';
import { leavesLitres, plannedRests, toldRests, type PlannedRest } from './planRests';
import { usePlanNames } from './usePlanNames';

/** The list alone goes on paper; everything else that is printed has the garden's menu. */
function printList(): void {
  const { classList } = document.documentElement;
  classList.add('prints-list');
  window.addEventListener('afterprint', () => classList.remove('prints-list'), { once: true });
  window.print();
}

/** Why the plan lays nothing at all today. */
function nothingWords(answer: PlanAnswer): string {
  if (answer.leftOut.some(({ reason }) => reason.kind === 'beds a day'))
    return planSays.noMoreWalks;
  if (unaskedSources(answer).length > 0) return planSays.nothingYet;
  const isInHand = answer.sources.some(({ ref, was }) => ref.source !== 'coming' && was.litres > 0);
  return isInHand ? planSays.nothing : planSays.nothingInHand;
}

/** Bed by bed what to lay today; one line or all of them can be written down as done, or as not. */
export function PlanLines(props: {
  readonly answer: PlanAnswer;
  readonly isReady: boolean;
  readonly onDone: (lines: readonly PlanLine[], rests: readonly PlannedRest[]) => void;
  readonly onNothing: (lines: readonly PlanLine[]) => void;
  readonly onElse: (lines: readonly PlanLine[]) => void;
  readonly onExactly: (bedId: string) => void;
}) {
  const { answer, isReady } = props;
  const { lines } = answer;
  const names = usePlanNames();
  const rests = plannedRests(answer);
  const all = restsWords(toldRests(rests), names);
  if (lines.length === 0)
    return (
      <div className="plan-lay plan-lay-none">
        <h3>
          <Icon name="barrow" /> Lay today
        </h3>
        <p>{nothingWords(answer)}</p>
      </div>
    );
  return (
    <div className="plan-lay">
      <h3>
        <Icon name="barrow" /> Lay today
      </h3>
      <ol className="plain-list plan-lines">
        {lines.map((line) => (
          <Line
            key={line.bedId}
            line={line}
            isReady={isReady}
            onDone={() => props.onDone([line], [])}
            onNothing={() => props.onNothing([line])}
            onElse={() => props.onElse([line])}
            onExactly={() => props.onExactly(line.bedId)}
          />
        ))}
      </ol>
      {lines.some(({ odds }) => odds) && <OddsKey />}
      <div className="button-row not-printed plan-all">
        <button
          type="button"
          className="button-main"
          aria-disabled={!isReady}
          onClick={() => {
            if (isReady) props.onDone(lines, rests);
          }}
        >
          I did all of this
        </button>
        {lines.length > 1 && (
          <>
            <button
              type="button"
              className="button"
              aria-disabled={!isReady}
              onClick={() => {
                if (isReady) props.onElse(lines);
              }}
            >
              I did something else…
            </button>
            <button
              type="button"
              className="button"
              aria-disabled={!isReady}
              onClick={() => {
                if (isReady) props.onNothing(lines);
              }}
            >
              I did none of it
            </button>
          </>
        )}
        <button type="button" className="button" onClick={printList}>
          Print a list to take outside
        </button>
      </div>
      <div className="not-printed">
        <Figured
          className="small soft"
          says={planSays.all(lines.length, all)}
          figures={rests.flatMap((rest) => restFigures(rest.choice, names, leavesLitres(rest)))}
        />
      </div>
    </div>
  );
}

function Line(props: {
  readonly line: PlanLine;
  readonly isReady: boolean;
  readonly onDone: () => void;
  readonly onNothing: () => void;
  readonly onElse: () => void;
  readonly onExactly: () => void;
}) {
  const { line, isReady } = props;
  const names = usePlanNames();
  const { before, after, limit, turns } = line.why;
  const name = names.bed(line.bedId);
  const nameId = useId();
  const stronger = line.cautions.filter(({ weight }) => weight !== 'note');
  const notes = line.cautions.filter(({ weight }) => weight === 'note');
  return (
    <li className="plan-line">
      <h4 id={nameId}>{name}</h4>
      <ul className="plain-list plan-amounts">
        {line.layers.map((layer) => (
          <li key={layer.layerId}>
            <Figured
              className="plan-amount"
              says={planLayerWords(layer, names)}
              figures={layerFigures(layer, names)}
            />
          </li>
        ))}
        <li className="not-printed">
          <button
            type="button"
            className="button-small"
            aria-label={`Exactly this: ${name}`}
            onClick={props.onExactly}
          >
            Exactly this…
          </button>
        </li>
      </ul>
      <Figured says={planWhyWords(line, names)} figures={lineFigures(line, names)} />
      {line.odds && <PlanOddsMarks odds={line.odds} />}
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
                ground <CoverWord state={coverState} />
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
        <Figured says={planLimitWords(limit, names)} figures={limitFigures(limit, names)} />
        {turns.map((turn) => (
          <Figured
            key={turn.kind}
            says={planTurnWords(turn, names)}
            figures={turnFigures(turn, names)}
          />
        ))}
      </Disclosure>
      <div className="button-row not-printed plan-acts">
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
        <button
          type="button"
          className="button-small"
          aria-label={`Something else: ${name}`}
          aria-disabled={!isReady}
          onClick={() => {
            if (isReady) props.onElse();
          }}
        >
          Something else…
        </button>
        <button
          type="button"
          className="button-small"
          aria-label={`Nothing here: ${name}`}
          aria-disabled={!isReady}
          onClick={() => {
            if (isReady) props.onNothing();
          }}
        >
          Nothing here
        </button>
      </div>
    </li>
  );
}
