import { useEffect, useMemo, useRef, useState } from 'react';
import { useAnnounce, useHeardAtRest } from '../../../controls/Announcer';
import { ChoiceRow } from '../../../controls/ChoiceRow';
import { Disclosure } from '../../../controls/Disclosure';
import type { Bed } from '../../../document/schema';
import type { BedResults } from '../../../store/contract';
import type { WhatIfDraft } from '../../../store/whatIfContract';
import { planWeights } from '../../../tables/planning';
import { nothingHeldBack } from '../../../words/cautions';
import {
  betterWords,
  layAlternativeWords,
  markWorth,
  pairedOddsWords,
} from '../../../words/whatIfWords';
import { CautionList } from '../../CautionList';
import { useDesk } from '../../desk';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { TroubleReason } from '../../WorkTrouble';
import { useReadingContext, useToday } from '../../useReadingContext';
import { AlternativeFields } from './AlternativeFields';
import {
  copyOf,
  dayOfAlternative,
  firstAlternative,
  mostAlternatives,
  readAlternative,
  type Alternative,
} from './alternatives';
import { alternativeWords } from './alternativeWords';
import { LayAlternative } from './LayAlternative';
import { OddsKey } from '../../OddsMarks';
import { WhatIfTable, type Weighed } from './WhatIfTable';

/** "What if…": layers that are only thought of, beside the bed as it is. */
export function WhatIfSection({
  bed,
  results,
}: {
  readonly bed: Bed;
  readonly results: BedResults;
}) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const announce = useAnnounce();
  const weigh = useMowings((state) => state.weighWhatIf);
  const kept = useMowings((state) => state.whatIf);
  const whatIf = kept?.bedId === bed.id ? kept : null;
  const [alternatives, setAlternatives] = useDesk<readonly Alternative[]>(
    `what if ${bed.id}`,
    () => [],
  );
  const [chosen, setChosen] = useState(0);
  const [isLaying, setLaying] = useState(false);
  const [done, setDone] = useState<string | null>(null);
  const holder = useRef<HTMLElement>(null);

  const reads = useMemo(
    () => alternatives.map((one) => readAlternative(garden, context, bed, one, today)),
    [alternatives, garden, context, bed, today],
  );
  const drafts = useMemo(
    () =>
      reads.flatMap(({ row, draft }): WhatIfDraft[] => (draft ? [{ key: row.key, draft }] : [])),
    [reads],
  );
  useEffect(() => weigh(bed.id, drafts), [weigh, bed.id, drafts]);
  useEffect(() => () => weigh(bed.id, []), [weigh, bed.id]);

  const at = Math.min(chosen, alternatives.length - 1);
  const current = alternatives[at];
  const read = reads[at];
  const odds = read && whatIf?.draws.odds[read.row.key];
  useHeardAtRest(odds ? `${nameOf(at)}: ${pairedOddsWords(odds)}.` : '', 'what if');

  const add = () => {
    setDone(null);
    const next = current ? copyOf(current) : firstAlternative(garden, bed, results, shown);
    setAlternatives([...alternatives, next]);
    setChosen(alternatives.length);
    announce(`Alternative ${alternatives.length + 1}. Change it in the fields.`);
    requestAnimationFrame(() => holder.current?.querySelector('select')?.focus());
  };
  const takeAway = (index: number) => {
    setAlternatives(alternatives.filter((_, place) => place !== index));
    setChosen(Math.max(0, index - 1));
    requestAnimationFrame(() =>
      holder.current?.querySelector<HTMLButtonElement>('.what-if-add')?.focus(),
    );
  };
  const weighed = reads.flatMap((one, index): Weighed[] => {
    const { draft, row } = one;
    if (!draft) return [];
    const weeks = alternatives[index]?.weeks ?? '0';
    return [
      {
        key: row.key,
        name: nameOf(index),
        words: alternativeWords(garden, context, shown, draft.parts, weeks, draft.placement),
        day: dayOfAlternative(weeks, today),
      },
    ];
  });
  const cautions = read ? whatIf?.likely[read.row.key]?.cautions : undefined;
  const stops = cautions?.filter(({ weight }) => weight === 'stop').length ?? 0;

  return (
    <section className="section what-if" aria-labelledby="bed-what-if" ref={holder}>
      <div className="section-head">
        <h2 id="bed-what-if" tabIndex={-1}>
          What if…
        </h2>
        {alternatives.length < mostAlternatives && (
          <button type="button" className="button what-if-add" onClick={add}>
            {current ? 'Another alternative' : 'Try a layer'}
          </button>
        )}
      </div>
      {done !== null && <p className="done">{done}</p>}
      {!current && (
        <p>
          Try a layer before you carry it: how the bed would stand, and in how many imagined seasons
          it would be the better for it. Nothing is written down.
        </p>
      )}
      {current && read && (
        <>
          {alternatives.length > 1 && (
            <ChoiceRow
              legend="Which one do you change?"
              choices={alternatives.map((_, index) => ({
                value: String(index),
                label: nameOf(index),
              }))}
              value={String(at)}
              onChoose={(value) => setChosen(Number(value))}
            />
          )}
          <fieldset className="lay-row">
            <legend className="lay-legend">{nameOf(at)}</legend>
            <AlternativeFields
              bed={bed}
              alternative={current}
              read={read}
              onChange={(changed) =>
                setAlternatives(alternatives.map((one, index) => (index === at ? changed : one)))
              }
            />
            {cautions &&
              (cautions.length > 0 ? (
                <CautionList cautions={cautions} />
              ) : (
                <p className="small soft">{nothingHeldBack}</p>
              ))}
            <div className="button-row">
              {current.weeks === '0' ? (
                <button
                  type="button"
                  className={stops > 0 ? 'button' : 'button-main'}
                  disabled={read.draft === null}
                  onClick={() => setLaying(true)}
                >
                  {layAlternativeWords(stops)}
                </button>
              ) : (
                <p className="small soft">
                  It can be laid from {shown.dayWord(dayOfAlternative(current.weeks, today))} on.
                </p>
              )}
              <button type="button" className="button" onClick={() => takeAway(at)}>
                Drop {nameOf(at).toLowerCase()}
              </button>
            </div>
          </fieldset>
          {whatIf?.state === 'failed' && (
            <div className="field-trouble">
              <p role="alert">
                <span aria-hidden="true" className="field-trouble-mark" />
                What this would do cannot be reckoned. What you typed is kept; try another amount.
              </p>
              <TroubleReason reason={whatIf.reason} />
            </div>
          )}
          {weighed.length > 0 && (
            <WhatIfTable bed={bed} asItIs={results} weighed={weighed} whatIf={whatIf} />
          )}
          <ImaginedOfAlternatives />
        </>
      )}
      {isLaying && current && (
        <LayAlternative
          bed={bed}
          row={current.row}
          condition={read?.condition ?? null}
          onClose={() => setLaying(false)}
          onLaid={() => {
            setLaying(false);
            takeAway(at);
            setDone(`Laid on ${bed.name}. It stands under “What was done”; undo takes it back.`);
          }}
        />
      )}
    </section>
  );
}

const nameOf = (index: number): string => `Alternative ${String(index + 1)}`;

/** How far the imagined seasons of the alternatives are, and what their marks mean. */
function ImaginedOfAlternatives() {
  const draws = useMowings((state) => state.whatIf?.draws);
  const isReckoned = useMowings((state) => state.whatIf?.state === 'ready');
  const stop = useMowings((state) => state.stopWhatIf);
  const resume = useMowings((state) => state.resumeWhatIf);
  if (!draws) return null;
  const { state, done, of, count, effectiveCount, reason } = draws;
  const isBusy = state === 'working';
  const words = isBusy
    ? `Comparing imagined seasons: ${String(done)} of ${String(of)}`
    : state === 'ready'
      ? markWorth(count, effectiveCount)
      : state === 'failed'
        ? 'The imagined seasons did not come out: only the likely course is shown.'
        : isReckoned
          ? 'Comparing is stopped: only the likely course is shown.'
          : 'Imagined seasons come once the likely course is reckoned.';
  return (
    <>
      <div className="imagined-line what-if-work">
        <p className="small soft">{words}</p>
        {isBusy && <progress aria-label="Seasons compared" max={Math.max(1, of)} value={done} />}
        {isBusy ? (
          <button type="button" className="button-small" onClick={stop}>
            Stop comparing
          </button>
        ) : (
          isReckoned &&
          state !== 'ready' && (
            <button type="button" className="button-small" onClick={resume}>
              Compare them
            </button>
          )
        )}
        {state === 'failed' && <TroubleReason reason={reason} />}
      </div>
      {state === 'ready' && <OddsKey />}
      <Disclosure summary="What “better” means here" quiet>
        {betterWords(planWeights).map((sentence) => (
          <p key={sentence} className="small">
            {sentence}
          </p>
        ))}
      </Disclosure>
    </>
  );
}
