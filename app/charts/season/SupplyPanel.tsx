import type { ChartUnit } from '../../words/chartUnits';
import { seasonPanelWords } from '../../words/seasonChart';
import { weaveId } from '../weaves/Weaves';
import type { SupplyGeometry } from './geometry';
import { type SeasonLayout, supplyTitleLift } from './layout';
import { PanelTitle, ValueAxis } from './PanelParts';

/** What the crop could use against what the bed gets: bands that add up, and three lines. */
export function SupplyPanel(props: {
  readonly geometry: SupplyGeometry;
  readonly layout: SeasonLayout;
  readonly weaves: string;
  readonly unit: ChartUnit;
  /** "since 1 April" */
  readonly since: string;
}) {
  const { geometry, layout, weaves, unit } = props;
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
          {band.isSeen && <path className="chart-band-edge" d={band.edge} />}
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
    </g>
  );
}
