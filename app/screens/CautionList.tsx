import { useId } from 'react';
import { Disclosure } from '../controls/Disclosure';
import type { Caution } from '../core/season/verdict';
import { basisOf } from '../tables/thresholds';
import { cautionWords } from '../words/cautions';
import { timesWords } from '../words/figures';
import { cautionFigure } from './cautionFigure';
import { linesOfCaution } from './linesOfCaution';
import { useShown } from './shown';
import { WeightWord } from './StateWords';

/** Every limit of the rule in its order, so that two numbers on one bed explain each other. */
function linesWords(caution: Caution, figure: (value: number) => string): string {
  const lines = linesOfCaution(caution);
  if (lines.length < 2) return `The limit is ${figure(caution.threshold ?? 0)}.`;
  return `The limits: ${lines.map(({ weight, at }) => `${figure(at)} ${limitWords[weight]}`).join(', ')}.`;
}

const limitWords: Readonly<Record<Caution['weight'], string>> = {
  note: 'for a note',
  caution: 'for a caution',
  stop: 'for a stop',
};

/** One caution: its weight, one line of number and reason, what instead, and where the line comes from. */
export function OneCaution(props: {
  readonly caution: Caution;
  /** what to do instead was said by the caution before */
  readonly isInsteadSaid?: boolean;
  /** what stands in place of its own advice */
  readonly instead?: string;
}) {
  const { caution } = props;
  const { units } = useShown();
  const saysId = useId();
  const words = cautionWords(caution, basisOf(caution), units);
  const instead = props.instead ?? words.instead;
  return (
    <div className={`caution caution-${caution.weight}`}>
      <p id={saysId} className="caution-says">
        <WeightWord weight={caution.weight} /> {words.says}
      </p>
      {instead && !props.isInsteadSaid && <p className="caution-instead">{instead}</p>}
      <Disclosure summary="Why this line" quiet describedBy={saysId}>
        {words.why && <p>{words.why}</p>}
        {caution.number !== null && caution.threshold !== null && caution.unit !== '' && (
          <p>
            Here it is {cautionFigure(caution.number, caution.unit, units)}.{' '}
            {linesWords(caution, (value) =>
              caution.unit === 'ratio'
                ? timesWords(value)
                : cautionFigure(value, caution.unit, units),
            )}
          </p>
        )}
        <p className="soft">Where the line comes from: {words.source}</p>
      </Disclosure>
    </div>
  );
}

/** Cautions, strongest first as they come; the same advice is given once. */
export function CautionList(props: {
  readonly cautions: readonly Caution[];
  /** what feeds this bed by a plan that is there: every advice to feed it says that, and no other */
  readonly feed?: string | undefined;
}) {
  const { cautions, feed } = props;
  const { units } = useShown();
  const insteads = cautions.map((each) => {
    const basis = basisOf(each);
    return basis.instead === 'feed' && feed !== undefined
      ? feed
      : cautionWords(each, basis, units).instead;
  });
  return (
    <ul className="plain-list cautions">
      {cautions.map((caution, index) => (
        <li key={`${caution.kind} ${caution.row} ${caution.layerId} ${index}`}>
          <OneCaution
            caution={caution}
            instead={insteads[index] ?? ''}
            isInsteadSaid={insteads.indexOf(insteads[index] ?? '') < index}
          />
        </li>
      ))}
    </ul>
  );
}
