import { memo } from 'react';
import { weightShapes } from '../../words/markShapes';
import { seasonPlaceWords } from '../../words/seasonPlaceWords';
import type { CalendarStretch } from '../season/calendar';
import type { Stretch } from '../season/geometry';
import { PlantingStem } from '../season/StripPanels';
import { layerShape } from './layerShape';
import { uprightPieces, type BedStripGeometry } from './geometry';
import type { StripLayout, StripScale } from './layout';
import { StripFrame } from './StripFrame';

/** The cut through one bed's season. What can be pressed lies over it and is no part of the drawing. */
export const StripDrawing = memo(function StripDrawing(props: {
  readonly name: string;
  readonly geometry: BedStripGeometry;
  readonly layout: StripLayout;
  readonly scale: StripScale;
  readonly months: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  /** null: not in view */
  readonly todayX: number | null;
  readonly weaves: string;
  /** said in place of the soil: its sums are still to come, or there are none */
  readonly lacking: string | null;
  /** the planting whose fields are open */
  readonly selected: string | null;
}) {
  const { geometry, layout, scale } = props;
  const { surface, height, foot: bottom } = geometry;
  const { todayX } = props;
  return (
    <StripFrame name={props.name} days={props} height={height} bottom={bottom}>
      {scale.ticks.map(({ value, depth }) => (
        <g key={value}>
          <path className="chart-grid" d={`M${layout.left} ${surface + depth} H${layout.right}`} />
          <text
            className="chart-number chart-number-left"
            x={layout.left - 6}
            y={surface + depth}
            dy="0.35em"
          >
            {value}
          </text>
        </g>
      ))}
      {geometry.soil.map(({ from, isImagined, path }) => (
        <path
          key={from}
          className={isImagined ? 'strip-soil' : 'strip-soil strip-soil-known'}
          d={path}
          {...(isImagined ? { fill: `url(#${props.weaves}-ahead)` } : {})}
        />
      ))}
      {geometry.likely && (
        <g>
          <path
            className="chart-likely"
            d={geometry.likely.path}
            fill={`url(#${props.weaves}-likely)`}
          />
          <path className="strip-likely" d={geometry.likely.edges} />
        </g>
      )}
      <path className="strip-surface" d={`M${layout.left} ${surface} H${layout.right}`} />
      {geometry.layers.map(({ layer, ...box }) =>
        layer.inSoil === true ? (
          <rect key={layer.id} className="strip-layer strip-layer-in" {...box} />
        ) : (
          <path
            key={layer.id}
            className={`strip-layer stuff-${layer.stuff ?? 'other'}`}
            d={layerShape(layer.stuff ?? 'other', box)}
          />
        ),
      )}
      {todayX !== null && (
        <path
          className="chart-today"
          d={uprightPieces(todayX, geometry)
            .map((piece) => `M${todayX} ${piece.top} V${piece.bottom}`)
            .join(' ')}
        />
      )}
      {geometry.bars.map((bar) => (
        <PlantingStem key={bar.id} bar={bar} isChosen={bar.id === props.selected} />
      ))}
      {geometry.crowded.map(({ x, width, y }) => (
        <path
          key={x}
          className="strip-crowded"
          d={`M${x} ${y + 5} V${y} H${x + width} V${y + 5} M${x} ${y - 4} H${x + width}`}
        />
      ))}
      {geometry.troubles.map(({ id, x, y, weight }) => (
        <g
          key={id}
          className={`mark-weight-${weight}`}
          transform={`translate(${x - 7} ${y}) scale(0.7)`}
        >
          <path className="mark-solid" fillRule="evenodd" d={weightShapes[weight].solid} />
          <path className="mark-open" d={weightShapes[weight].open} />
        </g>
      ))}
      {geometry.bars.length === 0 && (
        <text className="chart-title-small chart-on-plot" x={layout.left + 5} y={20}>
          {seasonPlaceWords.nothingPlanted}
        </text>
      )}
      {props.lacking !== null && (
        <text className="chart-title-small chart-on-plot" x={layout.left + 5} y={surface + 18}>
          {props.lacking}
        </text>
      )}
    </StripFrame>
  );
});
