import type { SeasonOfYear } from './seasonOfYear';

/** What has come up over the place one is at: a stem, and leaves or seeds filled. */
const plants: Readonly<Record<SeasonOfYear, { readonly stem: string; readonly leaves: string }>> = {
  // two seed leaves
  spring: {
    stem: 'M14 26 V12',
    leaves: 'M14 13 C9 14 5 11 4 5 C10 4 14 7 14 13 Z M14 13 C19 14 23 11 24 5 C18 4 14 7 14 13 Z',
  },
  // a plant in leaf with a flower on it
  summer: {
    stem: 'M14 26 V6 M14 19 L9 14 M14 15 L19 11',
    leaves:
      'M9.5 14.5 C5.5 15 3 12.5 2.5 9 C6.5 8.5 9 10.5 9.5 14.5 Z M18.5 11.5 C18.5 7.5 21.5 5.5 25.5 5.5 C25.5 9.5 22.5 12 18.5 11.5 Z M14 1 A3.4 3.4 0 1 1 13.9 1 Z',
  },
  // a head of seed, bent over
  autumn: {
    stem: 'M13 26 C13 16 12 8 19 5 M13 20 L8 16',
    leaves:
      'M8.5 16.5 C4.5 17.5 2.5 15.5 2 12.5 C6 11.5 8 13 8.5 16.5 Z M18 3 A2.2 2.2 0 1 1 17.9 3 Z M22 5.5 A2.2 2.2 0 1 1 21.9 5.5 Z M24 10 A2.2 2.2 0 1 1 23.9 10 Z M20 9 A1.8 1.8 0 1 1 19.9 9 Z',
  },
  // a bare stem with buds
  winter: {
    stem: 'M14 26 V3 M14 20 L8.5 14 V9 M14 16 L19.5 10 V6',
    leaves:
      'M8.5 5 L10.3 9 L8.5 11 L6.7 9 Z M19.5 2 L21.3 6 L19.5 8 L17.7 6 Z M14 0 L15.8 3.6 L14 6 L12.2 3.6 Z',
  },
};

/** Stands on the turf over the place one is at. Says nothing `aria-current` does not. */
export function Sprout({ season }: { readonly season: SeasonOfYear }) {
  return (
    <svg
      className="sprout"
      viewBox="0 0 28 26"
      width="28"
      height="26"
      aria-hidden="true"
      focusable="false"
    >
      <path className="sprout-stem" d={plants[season].stem} />
      <path className="sprout-leaves" d={plants[season].leaves} />
    </svg>
  );
}
