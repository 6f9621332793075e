import { amount, dayWord, percent } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { ageWords } from '../../words/coverChart';
import { ChartValues } from '../ChartSays';
import { Scroller } from '../Scroller';
import type { CoverFacts } from './geometry';

const columns = (['laid depth', 'depth', 'left'] as const).map((key) => ({
  key,
  text: { 'laid depth': 'depth as laid', depth: 'depth now, settled', left: 'dry weight left' }[
    key
  ],
  of: 'the column',
}));

/**
 * The layers of a bed as a list, the youngest first, those that have vanished at the end; the head
 * of a column opens how its figures are made.
 */
export function LayersTable(props: {
  readonly id: string;
  readonly facts: CoverFacts;
  readonly units: ChartUnits;
}) {
  const { facts, units } = props;
  const unit = units.depth.long;
  const rows = [...facts.lying.toReversed(), ...facts.vanished.toReversed()];
  return (
    <ChartValues values={{ of: 'cover layers' }} written={columns}>
      {(button) => (
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
                {columns.map(({ key, text }) => (
                  <th key={key} scope="col">
                    {button(key) ?? text}
                  </th>
                ))}
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
      )}
    </ChartValues>
  );
}
