import type { ReactElement } from 'react';
import type { Stuff } from './data';

/** What each material looks like in a cut: blades, leaves, stalks, crumbs, chips. */
const figures: Readonly<
  Record<Stuff, { readonly width: number; readonly height: number; readonly figure: ReactElement }>
> = {
  greens: {
    width: 22,
    height: 10,
    figure: <path d="M1 8 L7 4 M6 9 L13 7 M11 3 L18 6 M15 9 L21 5 M2 2 L8 1" />,
  },
  leaves: {
    width: 26,
    height: 14,
    figure: (
      <path d="M2 9 Q7 4 12 8 Q7 12 2 9 Z M12 8 L14 9 M15 4 Q20 0 25 4 Q20 7 15 4 Z M14 12 L18 13" />
    ),
  },
  straw: {
    width: 34,
    height: 10,
    figure: <path d="M0 2.5 H15 M19 1.5 L33 3.5 M5 6 L24 5 M27 7 H34 M0 8.5 L11 8 M14 9 H25" />,
  },
  compost: {
    width: 12,
    height: 10,
    figure: <path d="M2 2.5 h1.6 M7 1.5 h2.2 M4.5 5.5 h2.4 M10 5 h1.2 M1.5 8 h1.8 M8 8.5 h2" />,
  },
  other: { width: 14, height: 10, figure: <path d="M1 3 L5 1 M8 6 L12 4 M2 8 H6" /> },
};

export const stuffWeaveId = (prefix: string, stuff: Stuff): string => `${prefix}-stuff-${stuff}`;

/** Pattern definitions of the materials and of soil; `prefix` keeps several drawings apart. */
export function StuffWeaves({ prefix }: { readonly prefix: string }) {
  return (
    <defs>
      {(Object.keys(figures) as Stuff[]).map((stuff) => {
        const { width, height, figure } = figures[stuff];
        return (
          <pattern
            key={stuff}
            id={stuffWeaveId(prefix, stuff)}
            width={width}
            height={height}
            patternUnits="userSpaceOnUse"
            className={`stuff-${stuff}`}
          >
            <rect className="stuff-ground" width={width} height={height} />
            <g className="stuff-figure">{figure}</g>
          </pattern>
        );
      })}
      <pattern id={`${prefix}-soil`} width="19" height="17" patternUnits="userSpaceOnUse">
        <rect className="soil-ground" width="19" height="17" />
        <path
          className="soil-figure"
          d="M3 4 h1.4 M9 2 h2 M15.5 6 h1 M6 9.5 h1.4 M12.5 11 h2 M2 14 h1 M8.5 15 h1.8 M17 14.5 h1"
        />
      </pattern>
    </defs>
  );
}
