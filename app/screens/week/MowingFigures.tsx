import { useMemo } from 'react';
import { useHeardAtRest } from '../../controls/Announcer';
import { Disclosure } from '../../controls/Disclosure';
import type { Mowing } from '../../document/schema';
import { mowingHolds } from '../../document/mowingHolds';
import { figuresHeard } from '../../words/heardWords';
import { rangeOdds, rangeWords, withRange } from '../../words/ranges';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { HoldingWhy } from './HoldingWhy';

/** What a mowing weighs, its dry weight and its nitrogen, each with its range, and why. */
export function MowingFigures({
  mowing,
  isTyped = false,
}: {
  readonly mowing: Omit<Mowing, 'id' | 'rest'>;
  /** the figures follow what is being typed, and are said when it rests */
  readonly isTyped?: boolean;
}) {
  const garden = useGarden();
  const { units } = useShown();
  const holding = useMemo(
    () => mowingHolds(garden, { ...mowing, id: 'entry', rest: { to: 'undecided' } }),
    [garden, mowing],
  );
  const lines = [
    { label: 'It weighs', range: holding.freshKilograms, unit: units.mass },
    { label: 'Dry, that is', range: holding.dryKilograms, unit: units.mass },
    { label: 'Nitrogen in it', range: holding.nitrogenGrams, unit: units.nitrogen },
  ];
  const heard = lines.map(({ label, range, unit }) => ({ label, words: withRange(range, unit) }));
  useHeardAtRest(isTyped ? figuresHeard(heard) : '', 'figures');
  return (
    <div className="figures">
      <dl className="figures-row">
        {lines.map((line) => {
          const words = rangeWords(line.range, line.unit);
          const isSure = line.range.low === line.range.high;
          return (
            <div key={line.label} className="figure">
              <dt>{line.label}</dt>
              <dd>
                <span className="figure-number">
                  {isSure ? '' : 'about '}
                  {words.likely}
                </span>
                {words.between && <span className="figure-range">likely {words.between}</span>}
              </dd>
            </div>
          );
        })}
      </dl>
      <p className="small soft">The likely ranges hold {rangeOdds}.</p>
      <Disclosure summary="Why these figures" quiet>
        <HoldingWhy holding={holding} />
      </Disclosure>
    </div>
  );
}
