import type { ReactElement } from 'react';
import type { BandName } from '../season/series';

/**
 * A weave for each source of nitrogen, so that bands are told apart without colour, and none by long lines, which could be taken for a
 * curve: crosses on bare paper for what was there at the start, crumbs for the
 * soil, dashes for old humus, a lattice for compost, slants for what was dug in, blades for the
 * cover, drops for rain, beads (as on bean roots) for the air.
 */
const figures: Readonly<
  Record<BandName, { readonly size: number; readonly figure: ReactElement }>
> = {
  start: { size: 9, figure: <path d="M2.5 4.5 H6.5 M4.5 2.5 V6.5" /> },
  soil: {
    size: 9,
    figure: (
      <>
        <circle className="weave-dot" cx="2.2" cy="2.2" r="1.1" />
        <circle className="weave-dot" cx="6.7" cy="6.7" r="1.1" />
      </>
    ),
  },
  'last year': { size: 10, figure: <path d="M1 2.5 H5 M6 7.5 H10" /> },
  compost: { size: 8, figure: <path d="M0 0 L8 8 M8 0 L0 8" /> },
  'dug in': {
    size: 7,
    figure: <path d="M-1.75 1.75 L1.75 -1.75 M0 7 L7 0 M5.25 8.75 L8.75 5.25" />,
  },
  cover: { size: 10, figure: <path d="M1 9 L3 3 M3.4 9 L6.4 1.5 M6 9 L9 4" /> },
  rain: { size: 8, figure: <path d="M2 0.5 V3.5 M6 4.5 V7.5" /> },
  air: { size: 10, figure: <circle className="weave-ring" cx="5" cy="5" r="2.4" /> },
};

export const weaveId = (prefix: string, name: BandName): string =>
  `${prefix}-${name.replaceAll(' ', '-')}`;

/** The pattern definitions of one drawing; `prefix` keeps the ids of several drawings apart. */
export function Weaves({ prefix }: { readonly prefix: string }) {
  return (
    <defs>
      {(Object.keys(figures) as BandName[]).map((name) => {
        const { size, figure } = figures[name];
        return (
          <pattern
            key={name}
            id={weaveId(prefix, name)}
            width={size}
            height={size}
            patternUnits="userSpaceOnUse"
            className={`weave${name === 'start' ? ' weave-inked' : ''} source-${name.replaceAll(' ', '-')}`}
          >
            <rect className="weave-paper" width={size} height={size} />
            <rect className="weave-ground" width={size} height={size} />
            <g className="weave-figure">{figure}</g>
          </pattern>
        );
      })}
      <pattern id={`${prefix}-gone`} width="6" height="6" patternUnits="userSpaceOnUse">
        <path className="weave-gone" d="M-1 1 L1 -1 M0 6 L6 0 M5 7 L7 5" />
      </pattern>
      <pattern id={`${prefix}-likely`} width="7" height="7" patternUnits="userSpaceOnUse">
        <rect className="weave-likely-ground" width="7" height="7" />
        <path className="weave-likely" d="M1.75 0.5 V3 M5.25 4 V6.5" />
      </pattern>
      <pattern id={`${prefix}-imagined`} width="14" height="14" patternUnits="userSpaceOnUse">
        <path className="weave-imagined" d="M-1 1 L1 -1 M0 14 L14 0 M13 15 L15 13" />
      </pattern>
    </defs>
  );
}
