import { amount } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { seasonLineWords, seasonPanelWords, testWords } from '../../words/seasonChart';
import type { EndLabel, NitrateGeometry } from './geometry';
import { LabelKey } from './SupplyPanel';

/** The words that stand at the ends of bands and lines, below the drawing where it is too narrow for them. */
export function Legend(props: {
  readonly labels: readonly EndLabel[];
  readonly weaves: string;
  readonly units: ChartUnits;
  readonly tests: NitrateGeometry['tests'];
  readonly band: { readonly lowMgPerKg: number; readonly highMgPerKg: number } | null;
}) {
  return (
    <ul className="plain-list chart-legend">
      {props.labels.map((label) => (
        <li key={label.name}>
          <svg
            className="chart-legend-key"
            viewBox="0 0 18 14"
            width="18"
            height="14"
            aria-hidden="true"
            focusable="false"
          >
            <LabelKey name={label.name} x={1} y={7} weaves={props.weaves} />
          </svg>
          {seasonLineWords[label.name]} {amount(label.grams, props.units.nitrogen)}
        </li>
      ))}
      {props.band && (
        <li>
          <svg
            className="chart-legend-key"
            viewBox="0 0 18 14"
            width="18"
            height="14"
            aria-hidden="true"
            focusable="false"
          >
            <rect className="chart-enough" x="1" y="1" width="16" height="12" />
            <path className="chart-enough-edge" d="M1 1 H17 M1 13 H17" />
          </svg>
          {seasonPanelWords.enough}, {props.band.lowMgPerKg}–{props.band.highMgPerKg} mg/kg
        </li>
      )}
      {props.tests.map((test) => (
        <li key={test.x}>
          <svg
            className="chart-legend-key"
            viewBox="0 0 18 14"
            width="18"
            height="14"
            aria-hidden="true"
            focusable="false"
          >
            <path className="chart-test" d="M9 1 l6 6 l-6 6 l-6 -6 Z" />
          </svg>
          {testWords(test.mgPerKg)}
        </li>
      ))}
    </ul>
  );
}
