import { amount } from '../../words/chartFormat';
import type { ChartUnit } from '../../words/chartUnits';
import { seasonLineWords, seasonPanelWords } from '../../words/seasonChart';
import { weaveId } from '../weaves/Weaves';
import type { BandName } from './series';
import type { EndLabel, SupplyGeometry } from './geometry';
import { type SeasonLayout, supplyTitleLift } from './layout';
import { PanelTitle, ValueAxis } from './PanelParts';

const isBand = (name: EndLabel['name']): name is BandName =>
  name !== 'demand' && name !== 'got' && name !== 'usable' && name !== 'gone';

/** What a word of the legend stands for, as it looks in the drawing. */
export function LabelKey(props: {
  readonly name: EndLabel['name'];
  readonly x: number;
  readonly y: number;
  readonly weaves: string;
}) {
  const { name, x, y, weaves } = props;
  if (isBand(name))
    return (
      <rect
        className={`chart-key source-${name.replaceAll(' ', '-')}`}
        x={x}
        y={y - 6}
        width="16"
        height="12"
        fill={`url(#${weaveId(weaves, name)})`}
      />
    );
  if (name === 'gone')
    return (
      <rect
        className="chart-key chart-key-gone"
        x={x}
        y={y - 6}
        width="16"
        height="12"
        fill={`url(#${weaves}-gone)`}
      />
    );
  return <path className={`chart-line chart-line-${name}`} d={`M${x} ${y} h16`} />;
}

/** What the crop could use against what the bed gets: bands that add up, two lines, words at their ends. */
export function SupplyPanel(props: {
  readonly geometry: SupplyGeometry;
  readonly layout: SeasonLayout;
  readonly weaves: string;
  readonly unit: ChartUnit;
  /** "since 1 April" */
  readonly since: string;
}) {
  const { geometry, layout, weaves, unit } = props;
  const labelX = layout.right + 16;
  return (
    <g className="chart-panel">
      <PanelTitle
        layout={layout}
        panel={geometry.panel}
        words={seasonPanelWords.supply}
        lift={supplyTitleLift}
        small={`${unit.short} of bed, added up ${props.since}`}
      />
      {geometry.bands.map((band) => (
        <g key={band.name} className={`source-${band.name.replaceAll(' ', '-')}`}>
          <path d={band.path} fill={`url(#${weaveId(weaves, band.name)})`} />
          <path className="chart-band-edge" d={band.edge} />
        </g>
      ))}
      <path d={geometry.gone} className="chart-gone-veil" />
      <path d={geometry.gone} fill={`url(#${weaves}-gone)`} />
      <ValueAxis layout={layout} panel={geometry.panel} ticks={geometry.ticks} />
      <path className="chart-casing chart-casing-thin" d={geometry.usable} />
      <path className="chart-line chart-line-usable" d={geometry.usable} />
      <path className="chart-casing" d={geometry.got} />
      <path className="chart-line chart-line-got" d={geometry.got} />
      <path className="chart-casing" d={geometry.demand} />
      <path className="chart-line chart-line-demand" d={geometry.demand} />
      {(layout.isNarrow ? [] : geometry.labels).map((label) => (
        <g key={label.name}>
          <path
            className="chart-leader"
            d={`M${layout.right + 1} ${label.at} L${labelX - 3} ${label.y}`}
          />
          <LabelKey name={label.name} x={labelX} y={label.y} weaves={weaves} />
          <text
            className={isBand(label.name) ? 'chart-label' : 'chart-label chart-label-strong'}
            x={labelX + 21}
            y={label.y}
            dy="0.35em"
          >
            {seasonLineWords[label.name]} {amount(label.grams, unit)}
          </text>
        </g>
      ))}
    </g>
  );
}
