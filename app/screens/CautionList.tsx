import { useId } from 'react';
import { Disclosure } from '../controls/Disclosure';
import type { Caution } from '../core/season/verdict';
import { basisOf } from '../tables/thresholds';
import { cautionWords } from '../words/cautions';
import { cautionFigure } from './cautionFigure';
import { useShown } from './shown';
import { WeightWord } from './StateWords';

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
        {caution.number !== null && caution.threshold !== null && (
          <p>
            Here: {cautionFigure(caution.number, caution.unit, units)}. The line is at{' '}
            {cautionFigure(caution.threshold, caution.unit, units)}.
          </p>
        )}
        <p>{words.source}</p>
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
