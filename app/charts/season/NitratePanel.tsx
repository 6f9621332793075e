import type { ChartUnits } from '../../words/chartUnits';
import { nitrateTitle, testWords } from '../../words/seasonChart';
import type { NitrateGeometry } from './geometry';
import type { SeasonLayout } from './layout';
import { PanelTitle, ValueAxis } from './PanelParts';

/**
 * What is ready in the top 30 cm: the likely course as a line, where most imagined seasons lie as a
 * band about it, two broken lines from which on it is enough, the laboratory's unit at the right.
 */
export function NitratePanel(props: {
  readonly geometry: NitrateGeometry;
  readonly layout: SeasonLayout;
  readonly units: ChartUnits;
  readonly weaves: string;
}) {
  const { geometry, layout, weaves } = props;
  return (
    <g className="chart-panel">
      <PanelTitle
        layout={layout}
        panel={geometry.panel}
        words={nitrateTitle(props.units)}
        small={`${props.units.nitrogen.short}; at the right mg/kg`}
      />
      {geometry.likely && (
        <g>
          <path className="chart-likely" d={geometry.likely.path} fill={`url(#${weaves}-likely)`} />
          <path className="chart-likely-edge" d={geometry.likely.edges} />
        </g>
      )}
      <ValueAxis layout={layout} panel={geometry.panel} ticks={geometry.ticks} />
      {geometry.enough.map((line) => (
        <path
          key={line.name}
          className={`chart-enough chart-enough-${line.name}`}
          d={`M${layout.left} ${line.y} H${layout.right}`}
        />
      ))}
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
