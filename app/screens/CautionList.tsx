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
}) {
  const { caution } = props;
  const { units } = useShown();
  const saysId = useId();
  const words = cautionWords(caution, basisOf(caution), units);
  return (
    <div className={`caution caution-${caution.weight}`}>
      <p id={saysId} className="caution-says">
        <WeightWord weight={caution.weight} /> {words.says}
      </p>
      {words.instead && !props.isInsteadSaid && <p className="caution-instead">{words.instead}</p>}
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
export function CautionList({ cautions }: { readonly cautions: readonly Caution[] }) {
  const { units } = useShown();
  const insteads = cautions.map((each) => cautionWords(each, basisOf(each), units).instead);
  return (
    <ul className="plain-list cautions">
      {cautions.map((caution, index) => (
        <li key={`${caution.kind} ${caution.row} ${caution.layerId} ${index}`}>
          <OneCaution
            caution={caution}
            isInsteadSaid={insteads.indexOf(insteads[index] ?? '') < index}
          />
        </li>
      ))}
    </ul>
  );
}
