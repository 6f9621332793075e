import type { ChartUnits } from '../../words/chartUnits';
import { nitrateTitle, seasonPanelWords, testWords } from '../../words/seasonChart';
import type { NitrateGeometry } from './geometry';
import type { SeasonLayout } from './layout';
import { PanelTitle, ValueAxis } from './PanelParts';

const middle = (stretch: { readonly top: number; readonly bottom: number }): number =>
  (stretch.top + stretch.bottom) / 2;

/** What is ready in the top 30 cm, with the band that is enough for the crop and the laboratory's unit small at the right. */
export function NitratePanel(props: {
  readonly geometry: NitrateGeometry;
  readonly layout: SeasonLayout;
  readonly units: ChartUnits;
  readonly band: { readonly lowMgPerKg: number; readonly highMgPerKg: number } | null;
}) {
  const { geometry, layout } = props;
  const { enough } = geometry;
  return (
    <g className="chart-panel">
      <PanelTitle
        layout={layout}
        panel={geometry.panel}
        words={nitrateTitle(props.units)}
        small={`${props.units.nitrogen.short}; at the right mg/kg`}
      />
      {enough && (
        <g>
          <rect
            className="chart-enough"
            x={layout.left}
            y={enough.top}
            width={layout.right - layout.left}
            height={Math.max(1, enough.bottom - enough.top)}
          />
          <path
            className="chart-enough-edge"
            d={`M${layout.left} ${enough.top} H${layout.right} M${layout.left} ${enough.bottom} H${layout.right}`}
          />
          {!layout.isNarrow && (
            <text className="chart-title-small" x={layout.right + 34} y={middle(enough) - 3}>
              {seasonPanelWords.enough},
              <tspan x={layout.right + 34} dy="14">
                {props.band?.lowMgPerKg}–{props.band?.highMgPerKg} mg/kg
              </tspan>
            </text>
          )}
        </g>
      )}
      <ValueAxis layout={layout} panel={geometry.panel} ticks={geometry.ticks} />
      {geometry.labTicks.map((tick) => (
        <text
          key={tick.value}
          className="chart-number chart-number-lab"
          x={layout.right + 7}
          y={tick.y}
          dy="0.35em"
        >
          {tick.value}
        </text>
      ))}
      <path className="chart-casing" d={geometry.path} />
      <path className="chart-line chart-line-nitrate" d={geometry.path} />
      {geometry.tests.map((test) => (
        <g key={test.x}>
          <path className="chart-test" d={`M${test.x} ${test.y - 6} l6 6 l-6 6 l-6 -6 Z`} />
          {test.side !== null && (
            <text
              className={`chart-label chart-on-plot ${test.side === 'before' ? 'chart-label-end' : ''}`}
              x={test.side === 'before' ? test.x - 10 : test.x + 10}
              y={test.y - 6}
            >
              {testWords(test.mgPerKg)}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}
