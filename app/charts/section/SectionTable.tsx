import { Scroller } from '../Scroller';
import type { PanelDrawing } from './Panel';

/** All parts of the drawings and what they say, evening beside evening. */
export function SectionTable({
  id,
  panels,
  bedName,
}: {
  readonly id: string;
  readonly panels: readonly PanelDrawing[];
  readonly bedName: string;
}) {
  const rows = new Map<string, string>();
  for (const { parts } of panels)
    for (const { key, name } of parts) if (!rows.has(key)) rows.set(key, name);
  const [today] = panels;
  return (
    <Scroller id={id} className="chart-table" label={`Section of ${bedName} as a table`}>
      <table className="section-table">
        <caption>What the section of {bedName} shows, part by part.</caption>
        <thead>
          <tr>
            <th scope="col" className="chart-table-words">
              part
            </th>
            {panels.map(({ title }) => (
              <th key={title} scope="col" className="chart-table-words">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {[...rows].map(([key, name]) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              {panels.map(({ title, parts }) => (
                <td key={title} className="chart-table-words">
                  {parts.find((part) => part.key === key)?.says ?? 'not there'}
                </td>
              ))}
            </tr>
          ))}
          {today?.facts.vanished.map(({ layer }) => (
            <tr key={layer.id}>
              <th scope="row">{layer.name}</th>
              <td className="chart-table-words" colSpan={panels.length}>
                Laid earlier; nothing one could see of it is left.
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroller>
  );
}
