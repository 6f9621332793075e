import { dayWord } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { weaveId } from '../weaves/Weaves';
import type { KeyName, KeyRow, KeyRows } from './keyRows';
import { keyRowStep, type Panel, type SeasonLayout } from './layout';
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

/** One panel's lines of the key beside it: what each is, and its value on the chosen day. */
function KeyPanel(props: {
  readonly rows: readonly KeyRow[];
  readonly panel: Panel;
  readonly layout: SeasonLayout;
  readonly weaves: string;
  /** px above where the lines of other panels begin */
  readonly lift?: number;
}) {
  const { layout } = props;
  const x = layout.keyX;
  return (
    <g>
      {props.rows.map((row, index) => {
        const y = props.panel.top - (props.lift ?? 0) + 6 + index * keyRowStep;
        return (
          <g key={row.name}>
            <KeyMark name={row.name} x={x} y={y} weaves={props.weaves} />
            <text className="chart-label" x={x + markWidth + 7} y={y} dy="0.35em">
              {row.words}
            </text>
            <text
              className="chart-label chart-label-strong chart-label-end"
              x={layout.width - 6}
              y={y}
              dy="0.35em"
            >
              {row.value}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** The key beside the panels, which is the reading of the chosen day as well. */
export function Key(props: {
  readonly rows: KeyRows;
  readonly reading: DayReading;
  readonly layout: SeasonLayout;
  readonly weaves: string;
  readonly units: ChartUnits;
}) {
  const { rows, layout, weaves } = props;
  return (
    <g>
      <text className="chart-title chart-label-end" x={layout.width - 6} y={layout.supply.top - 12}>
        {dayWord(props.reading.day, props.units)}
      </text>
      <KeyPanel rows={rows.supply} panel={layout.supply} layout={layout} weaves={weaves} />
      <KeyPanel rows={rows.nitrate} panel={layout.nitrate} layout={layout} weaves={weaves} />
      {layout.plantings[0] && (
        <KeyPanel
          rows={rows.plantings}
          lift={14}
          panel={layout.plantings[0]}
          layout={layout}
          weaves={weaves}
        />
      )}
      <KeyPanel rows={rows.layers} panel={layout.layers} layout={layout} weaves={weaves} />
      <KeyPanel rows={rows.rain} panel={layout.rain} layout={layout} weaves={weaves} />
      <KeyPanel rows={rows.warmth} panel={layout.warmth} layout={layout} weaves={weaves} />
    </g>
  );
}

/** The same below the drawing, where it is too narrow for words beside it. */
export function KeyList(props: {
  readonly rows: KeyRows;
  readonly weaves: string;
  readonly heads: Readonly<Record<keyof KeyRows, string>>;
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
                  <strong>{row.value}</strong>
                </li>
              ))}
            </ul>
          </section>
        ))}
    </div>
  );
}
