import { useEffect, useRef } from 'react';
import type { readAmount } from '../../amounts/readAmount';
import { amountTrouble } from '../../controls/amountTrouble';
import { Field } from '../../controls/Field';
import { PickOne, type PickGroup } from '../../controls/PickOne';
import { aimWords } from '../../words/mixWords';
import { wetnessChoices } from '../choices';
import { useShown } from '../shown';
import { mostMixed, withAim, withPart, type MixAim, type MixDraft, type MixRow } from './mixDraft';

const wetnessGroups: readonly PickGroup[] = [
  { label: null, options: wetnessChoices.map(({ value }) => ({ value, label: value })) },
];

const aimGroups: readonly PickGroup[] = [
  {
    label: null,
    options: (['heats', 'rots', 'any', 'exact'] as const).map((value) => ({
      value,
      label: aimWords[value],
    })),
  },
];

const opening = (index: number): string => (index === 0 ? 'To' : index === 1 ? 'add' : 'and');

/** One sentence with gaps to fill: what is there, what joins it, what for. An empty amount is the question. */
export function MixSentence(props: {
  readonly draft: MixDraft;
  readonly rows: readonly {
    readonly row: MixRow;
    readonly name: string;
    readonly reading: ReturnType<typeof readAmount>;
    /** what was found for an empty amount */
    readonly found: string | null;
  }[];
  readonly materials: readonly PickGroup[];
  readonly onDraft: (change: (now: MixDraft) => MixDraft) => void;
}) {
  const { rows, onDraft } = props;
  const { system } = useShown();
  const change = (key: number, changes: Partial<MixRow>) =>
    onDraft((now) => ({
      ...now,
      rows: now.rows.map((row) => (row.key === key ? { ...row, ...changes } : row)),
    }));
  const lines = useRef<HTMLOListElement>(null);
  const isAdding = useRef(false);
  useEffect(() => {
    // what joined it is to be said next: which stuff, and how much
    if (isAdding.current)
      lines.current
        ?.querySelector<HTMLElement>(':scope > li:last-child .mix-material select')
        ?.focus();
    isAdding.current = false;
  });
  return (
    <>
      <ol ref={lines} className="plain-list mix-lines">
        {rows.map(({ row, name, reading, found }, index) => (
          <li key={row.key} className="mix-line" aria-label={name}>
            <span className="mix-word">{opening(index)}</span>
            <Field
              label={<span className="only-heard">How much of {name}</span>}
              className="mix-slot mix-amount"
              echo={found}
              trouble={row.text.trim() === '' ? null : amountTrouble(reading)}
              onSuggestion={(text) => change(row.key, { text })}
            >
              {(links) => (
                <input
                  {...links}
                  type="text"
                  autoComplete="off"
                  spellCheck={false}
                  maxLength={200}
                  placeholder="how much?"
                  value={row.text}
                  onChange={(event) => change(row.key, { text: event.target.value })}
                />
              )}
            </Field>
            <span className="mix-word">of</span>
            <div className="mix-slot">
              <PickOne
                label={<span className="only-heard">How wet {name} is</span>}
                value={row.wetness}
                groups={wetnessGroups}
                onPick={(wetness) => change(row.key, { wetness: wetness as MixRow['wetness'] })}
              />
            </div>
            <div className="mix-slot mix-material">
              <PickOne
                label={<span className="only-heard">Material {index + 1}</span>}
                value={row.materialId}
                groups={props.materials}
                onPick={(materialId) => change(row.key, { materialId })}
              />
            </div>
            {rows.length > 1 && (
              <button
                type="button"
                className="button-small mix-out"
                aria-label={`Leave out ${name}`}
                onClick={() =>
                  onDraft((now) => ({
                    ...now,
                    rows: now.rows.filter(({ key }) => key !== row.key),
                  }))
                }
              >
                Leave out
              </button>
            )}
          </li>
        ))}
      </ol>
      <div className="mix-line">
        <span className="mix-word">for a heap that</span>
        <div className="mix-slot mix-aim">
          <PickOne
            label={<span className="only-heard">For a heap that</span>}
            value={props.draft.aim}
            groups={aimGroups}
            onPick={(aim) => onDraft((now) => withAim(now, aim as MixAim))}
          />
        </div>
        <button
          type="button"
          className="button-small mix-out"
          disabled={props.draft.rows.length >= mostMixed}
          onClick={() => {
            onDraft((now) => withPart(now, system));
            isAdding.current = true;
          }}
        >
          And something else
        </button>
      </div>
      <p className="small soft">
        Leave the amount empty that you want to know. Say the others as you have them: 2 bags,{' '}
        {system === 'us' ? '15 gal, 20 lb' : '60 L, 10 kg'}.
      </p>
    </>
  );
}
