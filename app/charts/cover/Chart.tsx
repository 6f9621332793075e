import { useId, useRef, useState } from 'react';
import { ChartSays } from '../ChartSays';
import { amountWithUnit, dayWord } from '../../words/chartFormat';
import { ageWords, coverFinding, leftWords } from '../../words/coverChart';
import { Scroller } from '../Scroller';
import { TableButton } from '../TableButton';
import { useWidth } from '../useWidth';
import type { CoverChartData } from './data';
import { coverFacts, coverGeometry } from './geometry';
import { LayersTable } from './LayersTable';
import { StuffWeaves, stuffWeaveId } from './StuffWeaves';

export interface CoverChartProps extends CoverChartData {
  /** "Gate bed" */
  readonly bedName: string;
}

const coverSaying = { of: 'cover' } as const;
const layerSaying = { of: 'cover layer' } as const;

/** A cut through what lies on a bed: layers by age, to scale, each with its date and what is left of it. */
export function CoverChart(props: CoverChartProps) {
  const { units } = props;
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const width = useWidth(box, 760);
  const [listShown, showList] = useState(false);
  const facts = coverFacts(props);
  const drawing = coverGeometry(facts, width, units.depth);
  const { left, right, surface } = drawing;
  const wordsX = right + 40;
  return (
    <figure className="chart cover-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>
          Cover on {props.bedName}, {dayWord(facts.day, units)}
        </h3>
        <ChartSays
          saying={coverSaying}
          says={coverFinding(
            {
              state: props.coverState,
              layers: facts.lying.length,
              totalDepth: facts.totalDepth,
              hidden: facts.hidden,
            },
            units,
          )}
        />
      </figcaption>
      {props.layers.length > 0 && (
        <div className="chart-tools">
          <TableButton
            tableId={`${id}-list`}
            isShown={listShown}
            onShow={showList}
            words={{ table: 'The same as a list', hideTable: 'Hide the list' }}
          />
        </div>
      )}
      <Scroller
        box={box}
        className="chart-scroll"
        label={`Drawing of the cover on ${props.bedName}`}
      >
        <svg
          className="chart-drawing"
          viewBox={`0 0 ${drawing.width} ${drawing.height}`}
          width={drawing.width}
          height={drawing.height}
          aria-hidden="true"
          focusable="false"
        >
          <StuffWeaves prefix={id} />
          <text className="chart-title-small" x={left} y={18}>
            {units.depth.short} above the soil as settled, to scale
          </text>
          {drawing.ticks.map((tick) => (
            <g key={tick.value}>
              <path className="chart-grid" d={`M${left} ${tick.y} H${right}`} />
              <path className="chart-tick" d={`M${left - 5} ${tick.y} h5`} />
              <text className="chart-number chart-number-left" x={left - 8} y={tick.y} dy="0.35em">
                {tick.value}
              </text>
            </g>
          ))}
          <path d={drawing.soil} fill={`url(#${id}-soil)`} />
          {drawing.layers.map((shape) => (
            <g key={shape.lying.layer.id} className={`stuff-${shape.lying.layer.stuff}`}>
              <path d={shape.path} fill={`url(#${stuffWeaveId(id, shape.lying.layer.stuff)})`} />
              {/* the more of it is gone, the more it looks like soil */}
              <path
                className="stuff-rotted"
                d={shape.path}
                fillOpacity={0.55 * (1 - shape.lying.left)}
              />
              <path className="stuff-edge" d={shape.path} />
            </g>
          ))}
          {drawing.layers.length > 0 && !drawing.isNarrow && (
            <g>
              <path
                className="chart-bracket"
                d={`M${right + 5} ${drawing.top} h7 V${surface} h-7`}
              />
            </g>
          )}
          {(drawing.isNarrow ? [] : drawing.layers).map(({ lying, top, bottom, labelY }) => (
            <g key={lying.layer.id}>
              <path
                className="chart-leader"
                d={`M${right + 12} ${(top + bottom) / 2} L${wordsX - 6} ${labelY}`}
              />
              <text className="chart-label chart-label-strong" x={wordsX} y={labelY - 3}>
                {lying.layer.name}, {dayWord(lying.layer.day, units)}
              </text>
              <text className="chart-title-small" x={wordsX} y={labelY + 12}>
                {ageWords(lying.daysOld)};{' '}
                {leftWords(lying.left, lying.depth, lying.layer.laidDepth, units)}
              </text>
            </g>
          ))}
          <text className="chart-label chart-label-on-soil" x={left + 10} y={surface + 32}>
            {drawing.layers.length === 0
              ? 'bare soil'
              : `soil under ${amountWithUnit(facts.totalDepth, units.depth)} of cover`}
          </text>
        </svg>
      </Scroller>
      {drawing.isNarrow && facts.lying.length > 0 && (
        <ol className="plain-list small">
          {facts.lying.toReversed().map((lying) => (
            <li key={lying.layer.id}>
              <ChartSays
                saying={layerSaying}
                says={`${lying.layer.name}, ${dayWord(lying.layer.day, units)}: ${ageWords(lying.daysOld)}; ${leftWords(lying.left, lying.depth, lying.layer.laidDepth, units)}`}
                className="small"
              />
            </li>
          ))}
        </ol>
      )}
      {listShown && <LayersTable id={`${id}-list`} facts={facts} units={units} />}
    </figure>
  );
}
