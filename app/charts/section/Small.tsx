import { memo, useMemo } from 'react';
import { Drawing } from './Drawing';
import type { SectionFacts } from './facts';
import { sectionGeometry } from './geometry';
import { type SectionBox, sectionScale, type SectionScale } from './scale';

export const smallWidth = 208;
const smallHeight = 172;
const cell = 14;
const gauge = 9;
const rulerWidth = 0;

export const smallBox: SectionBox = {
  width: smallWidth - rulerWidth - gauge - 6,
  height: smallHeight - 6,
  mostCover: 34,
  cell,
  mostDots: 60,
};

/** What all beds of a list share, so that dots and covers can be compared from bed to bed. */
export function smallShared(
  all: readonly SectionFacts[],
): Pick<SectionScale, 'coverPerMillimetre' | 'gramsPerDot'> {
  const deepest = Math.max(
    1,
    ...all.map(({ cover }) => cover.reduce((sum, one) => sum + one.depth, 0)),
  );
  return {
    coverPerMillimetre: Math.min(1, smallBox.mostCover / deepest),
    gramsPerDot: sharedDot(all),
  };
}

const sharedDot = (all: readonly SectionFacts[]): number =>
  Math.max(0.2, ...all.map((facts) => sectionScale([facts], smallBox).gramsPerDot));

/** The section of one bed among others; says nothing the words beside it do not. */
export const SmallSection = memo(function SmallSection(props: {
  readonly facts: SectionFacts;
  readonly coverPerMillimetre: number;
  readonly gramsPerDot: number;
  readonly weaves: string;
}) {
  const { facts, coverPerMillimetre, gramsPerDot, weaves } = props;
  const { drawing, height } = useMemo(() => {
    const scale = sectionScale([facts], smallBox, { coverPerMillimetre, gramsPerDot });
    const made = sectionGeometry(facts, scale, {
      left: rulerWidth,
      right: smallWidth,
      top: 6,
      gauge,
      cell,
      leastPlant: 27,
    });
    return { drawing: made, height: Math.ceil(made.bottom) };
  }, [facts, coverPerMillimetre, gramsPerDot]);
  return (
    <svg
      className="section-small"
      viewBox={`0 0 ${smallWidth} ${height}`}
      width={smallWidth}
      height={height}
      aria-hidden="true"
      focusable="false"
    >
      <Drawing
        facts={facts}
        drawing={drawing}
        weaves={weaves}
        cell={cell}
        gauge={gauge}
        withoutMarks
      />
    </svg>
  );
});
