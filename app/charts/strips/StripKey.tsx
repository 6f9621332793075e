import { seasonPlaceWords as words } from '../../words/seasonPlaceWords';
import { weightShapes } from '../../words/markShapes';
import { stages } from '../season/strips';
import { StageShape } from '../season/StripPanels';

/** What is drawn as what. */
export function StripKey({ weaves }: { readonly weaves: string }) {
  return (
    <ul className="plain-list lawn-key small">
      <li>
        <svg width="26" height="16" aria-hidden="true" focusable="false">
          <path className="strip-soil strip-soil-known" d="M0 3 H26 V12 L0 9 Z" />
        </svg>
        {words.known}
      </li>
      <li>
        <svg width="26" height="16" aria-hidden="true" focusable="false">
          <path className="strip-soil" d="M0 3 H26 V12 L0 9 Z" fill={`url(#${weaves}-ahead)`} />
        </svg>
        {words.ahead}
      </li>
      <li>
        <svg width="16" height="16" aria-hidden="true" focusable="false">
          <path className="strip-surface" d="M0 14 H16" />
          <rect className="strip-layer stuff-greens" x="4" y="3" width="8" height="11" />
        </svg>
        {words.laid}
      </li>
      <li>
        <svg width="16" height="16" aria-hidden="true" focusable="false">
          <path className="strip-surface" d="M0 4 H16" />
          <rect className="strip-layer strip-layer-in" x="4" y="5" width="8" height="7" />
        </svg>
        {words.dugIn}
      </li>
      <li>
        <svg width="72" height="16" aria-hidden="true" focusable="false">
          {stages.map((stage, index) => (
            <StageShape key={stage} stage={stage} x={8 + index * 18} y={9} />
          ))}
        </svg>
        {words.stages}
      </li>
      <li>
        <svg width="16" height="16" aria-hidden="true" focusable="false">
          <g className="mark-weight-caution" transform="scale(0.75)">
            <path className="mark-solid" d={weightShapes.caution.solid} />
          </g>
        </svg>
        {words.trouble}
      </li>
    </ul>
  );
}
