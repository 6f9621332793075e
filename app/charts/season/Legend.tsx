import { amount } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { seasonLineWords, testWords } from '../../words/seasonChart';
import type { EndLabel, NitrateGeometry } from './geometry';
import { NitrateKey, nitrateLabelWords } from './NitratePanel';
import { LabelKey } from './SupplyPanel';

/** The words that stand at the ends of bands and lines, below the drawing where it is too narrow for them. */
export function Legend(props: {
  readonly labels: readonly EndLabel[];
  readonly weaves: string;
  readonly units: ChartUnits;
  readonly nitrate: NitrateGeometry;
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
      {props.nitrate.labels.map((label) => (
        <li key={label.name}>
          <svg
            className="chart-legend-key"
            viewBox="0 0 18 14"
            width="18"
            height="14"
            aria-hidden="true"
            focusable="false"
          >
            <NitrateKey name={label.name} x={1} y={7} weaves={props.weaves} />
          </svg>
          {nitrateLabelWords(label, props.nitrate)}
        </li>
      ))}
      {props.nitrate.tests.map((test) => (
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
