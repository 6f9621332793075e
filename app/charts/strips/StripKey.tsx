import { seasonPlaceWords as words } from '../../words/seasonPlaceWords';
import { weightShapes } from '../../words/markShapes';
import { stuffWords } from '../../words/stuffWords';
import { stuffs } from '../cover/data';
import type { DaySpan } from '../season/data';
import { layerShape } from './layerShape';
import type { BedStrip } from './data';
import { knownSpan } from './layout';
import { stages } from '../season/strips';
import { StageShape } from '../season/StripPanels';

/** What is drawn as what, of all that is drawn. */
export function StripKey({
  weaves,
  beds,
  span,
}: {
  readonly weaves: string;
  readonly beds: readonly BedStrip[];
  readonly span: DaySpan;
}) {
  const isIn = ({ day }: { readonly day: number }) => day >= span.from && day <= span.to;
  const layers = beds.flatMap((bed) => bed.layers.filter(isIn));
  const laid = new Set(
    layers.flatMap(({ inSoil, stuff }) => (inSoil === true ? [] : [stuff ?? 'other'])),
  );
  const runs = beds.flatMap(({ run }) => {
    const known = knownSpan(run, span);
    return run && known ? [{ run, known }] : [];
  });
  const weights = [
    ...new Set(beds.flatMap(({ troubles }) => troubles.filter(isIn).map(({ weight }) => weight))),
  ];
  const hasKnown = runs.some(({ run, known }) => known.from <= run.today);
  return (
    <ul className="plain-list lawn-key small">
      {hasKnown && (
        <li>
          <svg width="26" height="16" aria-hidden="true" focusable="false">
            <path className="strip-soil strip-soil-known" d="M0 3 H26 V12 L0 9 Z" />
          </svg>
          {words.known}
        </li>
      )}
      {runs.some(({ run, known }) => known.to > run.today) && (
        <li>
          <svg width="26" height="16" aria-hidden="true" focusable="false">
            <path className="strip-soil" d="M0 3 H26 V12 L0 9 Z" fill={`url(#${weaves}-ahead)`} />
          </svg>
          {hasKnown ? words.ahead : words.onlyAhead}
        </li>
      )}
      {beds.some(({ range }) => typeof range === 'object') && (
        <li>
          <svg width="26" height="16" aria-hidden="true" focusable="false">
            <path className="chart-likely" d="M0 4 H26 V12 H0 Z" fill={`url(#${weaves}-likely)`} />
            <path className="strip-likely" d="M0 4 H26 M0 12 H26" />
          </svg>
          {words.range}
        </li>
      )}
      {stuffs
        .filter((stuff) => laid.has(stuff))
        .map((stuff, index) => (
          <li key={stuff}>
            <svg width="16" height="16" aria-hidden="true" focusable="false">
              <path className="strip-surface" d="M0 14 H16" />
              <path
                className={`strip-layer stuff-${stuff}`}
                d={layerShape(stuff, { x: 4, y: 3, width: 8, height: 11 })}
              />
            </svg>
            {stuffWords[stuff]}
            {index === 0 && words.laid}
          </li>
        ))}
      {layers.some(({ inSoil }) => inSoil === true) && (
        <li>
          <svg width="16" height="16" aria-hidden="true" focusable="false">
            <path className="strip-surface" d="M0 4 H16" />
            <rect className="strip-layer strip-layer-in" x="4" y="5" width="8" height="7" />
          </svg>
          {words.dugIn}
        </li>
      )}
      <li>
        <svg width="72" height="16" aria-hidden="true" focusable="false">
          {stages.map((stage, index) => (
            <StageShape key={stage} stage={stage} x={8 + index * 18} y={9} />
          ))}
        </svg>
        {words.stages}
      </li>
      {weights.length > 0 && (
        <li>
          {weights.map((weight) => (
            <svg key={weight} width="16" height="16" aria-hidden="true" focusable="false">
              <g className={`mark-weight-${weight}`} transform="scale(0.75)">
                <path className="mark-solid" fillRule="evenodd" d={weightShapes[weight].solid} />
                <path className="mark-open" d={weightShapes[weight].open} />
              </g>
            </svg>
          ))}
          {words.trouble}
        </li>
      )}
    </ul>
  );
}
