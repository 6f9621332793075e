import { dayWord } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import type { ButtonOfValue } from '../ChartSays';
import { textWidth } from '../textWidth';
import { weaveId } from '../weaves/Weaves';
import type { KeyName, KeyRow, KeyRows } from './keyRows';
import { keyRowSteps, type Panel, type SeasonLayout } from './layout';
import type { DayReading } from './reading';
import { bandNames, type BandName } from './series';
import { StageShape } from './StripPanels';
import { stages } from './strips';

const isBand = (name: KeyName): name is BandName => (bandNames as readonly string[]).includes(name);

const markWidth = 16;

/** What a line of the key stands for, as it looks in the drawing, about the height `y`. */
export function KeyMark(props: {
  readonly name: KeyName;
  readonly x: number;
  readonly y: number;
  readonly weaves: string;
}) {
  const { name, x, y, weaves } = props;
  const block = (className: string, fill?: string) => (
    <rect
      className={className}
      x={x}
      y={y - 6}
      width={markWidth}
      height="12"
      {...(fill === undefined ? {} : { fill: `url(#${fill})` })}
    />
  );
  const stroke = (className: string) => (
    <path className={className} d={`M${x} ${y} h${markWidth}`} />
  );
  if (isBand(name))
    return block(`chart-key source-${name.replaceAll(' ', '-')}`, weaveId(weaves, name));
  const stage = stages.find((one) => name === `stage ${one}`);
  if (stage) return <StageShape stage={stage} x={x + markWidth / 2 - 1} y={y} />;
  if (name.startsWith('laid ')) return block(`chart-layer stuff-${name.slice('laid '.length)}`);
  switch (name) {
    case 'gone':
      return block('chart-key chart-key-gone', `${weaves}-gone`);
    case 'demand':
    case 'got':
    case 'usable':
      return stroke(`chart-line chart-line-${name}`);
    case 'ready':
      return stroke('chart-line chart-line-nitrate');
    case 'likely':
      return (
        <g>
          {block('chart-likely', `${weaves}-likely`)}
          <path
            className="chart-likely-edge"
            d={`M${x} ${y - 6} h${markWidth} M${x} ${y + 6} h${markWidth}`}
          />
        </g>
      );
    case 'from':
    case 'past':
      return stroke(`chart-enough chart-enough-${name}`);
    case 'rain of the day':
      return block('chart-rain');
    case 'watered':
      return block('chart-watered');
    case 'air warmth':
      return block('chart-air');
    default:
      return stroke('chart-line chart-line-soil');
  }
}

/** A line of the key beside the drawing. */
export interface PlacedKeyRow {
  readonly row: KeyRow;
  /** middle of the line [px] */
  readonly y: number;
}

/** The lines of a key where they stand, each beside its panel from the top of that on. */
export function placedKeyRows(rows: KeyRows, layout: SeasonLayout): readonly PlacedKeyRow[] {
  const beside = (panel: Panel, lines: readonly KeyRow[], lift = 0): readonly PlacedKeyRow[] => {
    const step = lines.some(({ value }) => value !== '') ? keyRowSteps.value : keyRowSteps.mark;
    return lines.map((row, index) => ({ row, y: panel.top - lift + 6 + index * step }));
  };
  const [stem] = layout.plantings;
  return [
    ...beside(layout.supply, rows.supply),
    ...beside(layout.nitrate, rows.nitrate),
    ...(stem ? beside(stem, rows.plantings, 14) : []),
    ...beside(layout.layers, rows.layers),
    ...beside(layout.rain, rows.rain),
    ...beside(layout.warmth, rows.warmth),
  ];
}

/** from the drawing's right edge to the end of the values */
const valueEnd = 6;

/** The key beside the panels, which is the reading of the chosen day as well. */
export function Key(props: {
  readonly rows: readonly PlacedKeyRow[];
  readonly reading: DayReading;
  readonly layout: SeasonLayout;
  readonly weaves: string;
  readonly units: ChartUnits;
}) {
  const { layout } = props;
  const x = layout.keyX;
  const end = layout.width - valueEnd;
  return (
    <g>
      <text className="chart-title chart-label-end" x={end} y={layout.supply.top - 12}>
        {dayWord(props.reading.day, props.units)}
      </text>
      {props.rows.map(({ row, y }) => (
        <g key={row.name}>
          <KeyMark name={row.name} x={x} y={y} weaves={props.weaves} />
          <text className="chart-label" x={x + markWidth + 7} y={y} dy="0.35em">
            {row.words}
          </text>
          <text
            className="chart-label chart-label-strong chart-label-end"
            x={end}
            y={y}
            dy="0.35em"
          >
            {row.value}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Over each value of the key that is drawn: the button that opens what stands behind it. */
export function KeyButtons(props: {
  readonly rows: readonly PlacedKeyRow[];
  readonly layout: SeasonLayout;
  readonly button: ButtonOfValue;
}) {
  const { layout } = props;
  return (
    <div className="chart-key-buttons not-printed">
      {props.rows.map(({ row, y }) => {
        const button = props.button(row.name, true);
        if (button === null) return null;
        const width = Math.max(keyRowSteps.value, Math.ceil(textWidth(row.value, true)));
        return (
          <span
            key={row.name}
            style={{
              insetInlineStart: layout.width - valueEnd - width,
              insetBlockStart: y - keyRowSteps.value / 2,
              width,
              height: keyRowSteps.value,
            }}
          >
            {button}
          </span>
        );
      })}
    </div>
  );
}

/** The same below the drawing, where it is too narrow for words beside it. */
export function KeyList(props: {
  readonly rows: KeyRows;
  readonly weaves: string;
  readonly heads: Readonly<Record<keyof KeyRows, string>>;
  readonly button: ButtonOfValue;
}) {
  const panels = Object.keys(props.heads) as (keyof KeyRows)[];
  return (
    <div className="chart-legend">
      {panels
        .filter((panel) => props.rows[panel].length > 0)
        .map((panel) => (
          <section key={panel} aria-label={props.heads[panel]}>
            <p className="small soft">{props.heads[panel]}</p>
            <ul className="plain-list">
              {props.rows[panel].map((row) => (
                <li key={row.name}>
                  <svg
                    className="chart-legend-key"
                    viewBox="0 0 18 14"
                    width="18"
                    height="14"
                    aria-hidden="true"
                    focusable="false"
                  >
                    <KeyMark name={row.name} x={1} y={7} weaves={props.weaves} />
                  </svg>
                  <span>{row.words}</span>
                  {props.button(row.name) ?? <strong>{row.value}</strong>}
                </li>
              ))}
            </ul>
          </section>
        ))}
    </div>
  );
}
