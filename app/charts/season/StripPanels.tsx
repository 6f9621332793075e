import { amount } from '../../words/chartFormat';
import type { ChartUnit } from '../../words/chartUnits';
import { classOfWord, nitrogenShapes } from '../../words/markShapes';
import { seasonPanelWords } from '../../words/seasonChart';
import type { SeasonLayout } from './layout';
import { PanelTitle, ValueAxis } from './PanelParts';
import type { WarmthGeometry } from './warmth';
import { labelRoom } from './strips';

import type { LayerMark, PlantingBar, RainBar, Stage, StateSegment } from './strips';

/** The state over past weeks: a run of one state is a bar that begins with its mark and word. */
export function StateStrip(props: {
  readonly segments: readonly StateSegment[];
  readonly layout: SeasonLayout;
}) {
  const { layout } = props;
  const { top, bottom } = layout.state;
  return (
    <g className="chart-panel">
      <PanelTitle layout={layout} panel={layout.state} words={seasonPanelWords.state} />
      {props.segments.map((segment) => {
        const shape = nitrogenShapes[segment.state];
        const showMark = segment.width > 14 || segment.wordFits;
        return (
          <g key={segment.from} className={`mark-state-${classOfWord(segment.state)}`}>
            <path
              className="chart-state-bar"
              d={`M${segment.x + 0.75} ${bottom - 2.5} H${segment.x + Math.max(2.5, segment.width - 0.75)}`}
            />
            <path className="chart-state-post" d={`M${segment.x + 0.75} ${top} V${bottom}`} />
            {showMark && (
              <g transform={`translate(${segment.x + 4} ${top + 1}) scale(0.8)`}>
                {shape.solid !== '' && (
                  <path className="mark-solid" fillRule="evenodd" d={shape.solid} />
                )}
                {shape.open !== '' && <path className="mark-open" d={shape.open} />}
              </g>
            )}
            {segment.wordFits && (
              <text className="chart-label chart-on-plot" x={segment.wordX} y={top + 9} dy="0.35em">
                {segment.state}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** how far above a row's lower edge its stem runs [px] */
export const stemLift = 8;

/** Outlines about (0, 0) on the stem: a seed, a flower, a fruit, a cut. */
const stageShapes: Readonly<Record<Stage, { readonly d: string; readonly isSolid: boolean }>> = {
  start: { d: 'M0 -4 C3.5 -4 3.5 4 0 4 C-3.5 4 -3.5 -4 0 -4 Z', isSolid: true },
  flower: {
    d: 'M0 -6 L1.8 -1.8 L6 0 L1.8 1.8 L0 6 L-1.8 1.8 L-6 0 L-1.8 -1.8 Z',
    isSolid: false,
  },
  pick: {
    d: 'M0 -3 L3 -8 M0 -3.5 A4 4 0 1 0 0.01 -3.5 Z',
    isSolid: true,
  },
  cleared: { d: 'M-2.5 5 L2.5 -5 M1.5 5 L6.5 -5', isSolid: false },
};

const leafPath = (length: number, isUp: boolean): string => {
  const lift = (isUp ? -1 : 1) * length * 0.8;
  return `M0 0 C${length * 0.1} ${lift} ${length * 0.6} ${lift * 1.1} ${length} ${lift * 0.9} C${length * 0.9} ${lift * 0.3} ${length * 0.5} 0 0 0 Z`;
};

/**
 * What is in the ground, one row a planting: its days as a stem with leaves that grow, its name at
 * the start, a seed, a flower, a fruit and a cut where these fall.
 */
export function PlantingRows(props: {
  readonly bars: readonly PlantingBar[];
  readonly layout: SeasonLayout;
}) {
  const first = props.layout.plantings[0];
  return (
    <g className="chart-panel">
      {first && (
        <PanelTitle layout={props.layout} panel={first} words={seasonPanelWords.plantings} />
      )}
      {first && props.bars.length === 0 && (
        <text
          className="chart-title-small chart-on-plot"
          x={props.layout.left + 5}
          y={first.top + 13}
        >
          {seasonPanelWords.noPlanting}
        </text>
      )}
      {props.bars.map((bar) => (
        <PlantingStem key={bar.id} bar={bar} />
      ))}
    </g>
  );
}

/** One planting: stem and leaves over its days, its name, and a mark where each stage begins. */
export function PlantingStem({
  bar,
  isChosen = false,
}: {
  readonly bar: PlantingBar;
  readonly isChosen?: boolean;
}) {
  return (
    <g>
      <path
        className={isChosen ? 'chart-stem chart-stem-chosen' : 'chart-stem'}
        d={`M${bar.x} ${bar.bottom - stemLift} H${bar.x + bar.width}`}
      />
      {bar.leaves.map((leaf) => (
        <path
          key={leaf.x}
          className="chart-leaf"
          d={leafPath(leaf.length, leaf.isUp)}
          transform={`translate(${leaf.x} ${bar.bottom - stemLift})`}
        />
      ))}
      <text
        className="chart-label chart-label-strong chart-on-plot"
        x={bar.nameX}
        y={bar.top + 9}
        dy="0.35em"
      >
        {bar.name}
      </text>
      {bar.marks.map((mark) => (
        <StageShape key={mark.stage} stage={mark.stage} x={mark.x} y={bar.bottom - stemLift} />
      ))}
    </g>
  );
}

/** A seed, a flower, a fruit or a cut at a place of a drawing. */
export function StageShape(props: {
  readonly stage: Stage;
  readonly x: number;
  readonly y: number;
}) {
  const { d, isSolid } = stageShapes[props.stage];
  return (
    <path
      className={`chart-stage ${isSolid ? 'chart-stage-solid' : ''}`}
      d={d}
      transform={`translate(${props.x} ${props.y})`}
    />
  );
}

/** Layings as bars on their day, as tall as the layer was deep; hollow where it went into the soil. */
export function LayerStrip(props: {
  readonly marks: readonly LayerMark[];
  readonly layout: SeasonLayout;
  /** at the upper end of the strip [mm] */
  readonly deepest: number;
  readonly unit: ChartUnit;
}) {
  const { layout } = props;
  const base = props.marks[0]?.bottom ?? layout.layers.bottom - labelRoom;
  return (
    <g className="chart-panel">
      <PanelTitle
        layout={layout}
        panel={layout.layers}
        words={seasonPanelWords.layers}
        small={`${props.unit.short}, ${seasonPanelWords.layersHow}`}
      />
      {props.marks.length > 0 && (
        <>
          <path
            className="chart-grid"
            d={`M${layout.left} ${layout.layers.top} H${layout.right}`}
          />
          <text
            className="chart-number chart-number-left"
            x={layout.left - 7}
            y={layout.layers.top}
            dy="0.35em"
          >
            {amount(props.deepest, props.unit)}
          </text>
          <text className="chart-number chart-number-left" x={layout.left - 7} y={base} dy="0.35em">
            0
          </text>
        </>
      )}
      <path className="chart-base" d={`M${layout.left} ${base} H${layout.right}`} />
      {props.marks.length === 0 && (
        <text className="chart-title-small chart-on-plot" x={layout.left + 5} y={base - 8}>
          {seasonPanelWords.noLayer}
        </text>
      )}
      {props.marks.map((mark) => (
        <g key={mark.layer.id}>
          <rect
            className={`chart-layer stuff-${mark.layer.stuff ?? 'other'}`}
            x={mark.x - mark.width / 2}
            y={mark.layer.inSoil === true ? mark.bottom : mark.top}
            width={mark.width}
            height={mark.layer.inSoil === true ? 8 : mark.bottom - mark.top}
          />
          {mark.label !== null && (
            <text className="chart-number chart-number-middle" x={mark.x} y={mark.bottom + 22}>
              {mark.label}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}

/** Rain as bars, watering on top of it with its own edge; pale under an inked top where the weather is imagined. */
export function RainStrip(props: {
  readonly bars: readonly RainBar[];
  /** end of the scale, in the shown unit */
  readonly top: number;
  readonly layout: SeasonLayout;
  readonly unit: ChartUnit;
}) {
  const { layout } = props;
  const { top, bottom } = layout.rain;
  return (
    <g className="chart-panel">
      <PanelTitle
        layout={layout}
        panel={layout.rain}
        words={seasonPanelWords.rain}
        small={`${props.unit.short} a day`}
      />
      <path className="chart-grid" d={`M${layout.left} ${top} H${layout.right}`} />
      <path className="chart-base" d={`M${layout.left} ${bottom} H${layout.right}`} />
      <text className="chart-number chart-number-left" x={layout.left - 7} y={top} dy="0.35em">
        {props.top}
      </text>
      <text className="chart-number chart-number-left" x={layout.left - 7} y={bottom} dy="0.35em">
        0
      </text>
      {props.bars.map((bar) => (
        <g key={bar.day}>
          <rect
            className={`chart-rain chart-rain-${bar.kind}`}
            x={bar.x}
            y={bottom - bar.rain}
            width={bar.width}
            height={bar.rain}
          />
          {bar.kind === 'imagined' && bar.rain > 0 && (
            <path className="chart-rain-top" d={`M${bar.x} ${bottom - bar.rain} h${bar.width}`} />
          )}
          {bar.watered > 0 && (
            <rect
              className="chart-watered"
              x={bar.x}
              y={bottom - bar.rain - bar.watered}
              width={bar.width}
              height={bar.watered}
            />
          )}
        </g>
      ))}
    </g>
  );
}

/** The warmth of each day: air from its coldest to its warmest as a band, the soil as a line, frost as a broken line. */
export function WarmthStrip(props: {
  readonly geometry: WarmthGeometry;
  readonly layout: SeasonLayout;
  /** "°C" */
  readonly unit: string;
}) {
  const { geometry, layout } = props;
  return (
    <g className="chart-panel">
      <PanelTitle
        layout={layout}
        panel={layout.warmth}
        words={seasonPanelWords.warmth}
        small={props.unit}
      />
      <path className="chart-air" d={geometry.air} />
      <ValueAxis layout={layout} panel={layout.warmth} ticks={geometry.ticks} />
      {geometry.frost !== null && (
        <path className="chart-frost" d={`M${layout.left} ${geometry.frost} H${layout.right}`} />
      )}
      <path className="chart-casing chart-casing-thin" d={geometry.soil} />
      <path className="chart-line chart-line-soil" d={geometry.soil} />
    </g>
  );
}
