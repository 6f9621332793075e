import { ChartValues } from '../ChartSays';
import { Scroller } from '../Scroller';
import type { PanelDrawing } from './Panel';
import type { SectionPart } from './parts';

/** The parts of all evenings in the order of the drawing: what comes later after what it follows there. */
export function partsOfAll(panels: readonly PanelDrawing[]): readonly SectionPart[] {
  const all: SectionPart[] = [];
  for (const { parts } of panels)
    parts.forEach((part, at) => {
      if (all.some(({ key }) => key === part.key)) return;
      const before = parts[at - 1];
      const place = before ? all.findIndex(({ key }) => key === before.key) + 1 : 0;
      all.splice(place, 0, part);
    });
  return all;
}

/**
 * All parts of the drawings and what they say, evening beside evening; the name of a part opens how
 * its figures are made.
 */
export function SectionTable({
  id,
  panels,
  bedName,
}: {
  readonly id: string;
  readonly panels: readonly PanelDrawing[];
  readonly bedName: string;
}) {
  const rows = partsOfAll(panels);
  const [today] = panels;
  const written = rows
    .filter(({ kind }) => kind !== 'mark')
    .map(({ key, name }) => ({ key, text: name, of: bedName }));
  return (
    <ChartValues
      values={{ of: 'section parts', kinds: new Map(rows.map(({ key, kind }) => [key, kind])) }}
      written={written}
    >
      {(button) => (
        <Scroller id={id} className="chart-table" label={`Section of ${bedName} as a table`}>
          <table className="section-table">
            <caption>What the section of {bedName} shows, part by part.</caption>
            <thead>
              <tr>
                <th scope="col" className="chart-table-words">
                  part
                </th>
                {panels.map(({ title }) => (
                  <th key={title} scope="col">
                    {title}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {rows.map(({ key, name }) => (
                <tr key={key}>
                  <th scope="row">{button(key) ?? name}</th>
                  {panels.map(({ title, parts }) => (
                    <td key={title}>
                      {parts.find((part) => part.key === key)?.says ?? 'not there'}
                    </td>
                  ))}
                </tr>
              ))}
              {today?.facts.vanished.map(({ layer }) => (
                <tr key={layer.id}>
                  <th scope="row">{layer.name}</th>
                  <td colSpan={panels.length}>
                    Laid earlier; nothing one could see of it is left.
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      )}
    </ChartValues>
  );
}
