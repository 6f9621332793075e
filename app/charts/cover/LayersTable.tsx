import { amount, dayWord, percent } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { ageWords } from '../../words/coverChart';
import { Scroller } from '../Scroller';
import type { CoverFacts } from './geometry';

/** The layers of a bed as a list, the youngest first, those that have vanished at the end. */
export function LayersTable(props: {
  readonly id: string;
  readonly facts: CoverFacts;
  readonly units: ChartUnits;
}) {
  const { facts, units } = props;
  const unit = units.depth.long;
  const rows = [...facts.lying.toReversed(), ...facts.vanished.toReversed()];
  return (
    <Scroller id={props.id} className="chart-table" label="Layers of this bed">
      <table>
        <caption>Layers from the top down; depths in {unit}.</caption>
        <thead>
          <tr>
            <th scope="col" className="chart-table-words">
              layer
            </th>
            <th scope="col">laid on</th>
            <th scope="col">age</th>
            <th scope="col">depth as laid</th>
            <th scope="col">depth now, settled</th>
            <th scope="col">dry weight left</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ layer, depth, left, daysOld }) => (
            <tr key={layer.id}>
              <th scope="row">{layer.name}</th>
              <td>{dayWord(layer.day, units)}</td>
              <td>{ageWords(daysOld)}</td>
              <td>{amount(layer.laidDepth, units.depth)}</td>
              <td>{amount(depth, units.depth)}</td>
              <td>{percent(left)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
