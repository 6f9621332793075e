import '../../style/charts/heap.css';
import { useId, useRef } from 'react';
import type { Stuff } from '../cover/data';
import { StuffWeaves, stuffWeaveId } from '../cover/StuffWeaves';
import { textWidth } from '../textWidth';
import { useWidth } from '../useWidth';
import { heapGeometry, type HeapLayer } from './geometry';

export interface ShownHeapLayer extends HeapLayer {
  readonly stuff: Stuff;
  /** "Maple leaves" */
  readonly name: string;
  /** "34 cm" */
  readonly thick: string;
}

const stackHigh = 230;
const labelGap = 40;
const edge = 6;
const leastStack = 56;
const mostStack = 230;
const leader = 20;

/**
 * What is stacked, layer on layer, the first at the bottom and each as thick as the others are to
 * it. Its words are read out as a list; the drawing is theirs.
 */
export function HeapLayers(props: {
  readonly layers: readonly ShownHeapLayer[];
  /** "The layers on a square metre" */
  readonly title: string;
}) {
  const id = useId();
  const holder = useRef<HTMLDivElement>(null);
  const width = Math.min(480, useWidth(holder, 400));
  const { layers, height } = heapGeometry(props.layers, stackHigh, labelGap);
  const longest = Math.max(...props.layers.map(({ name }) => textWidth(name, true)));
  const stack = Math.max(leastStack, Math.min(mostStack, width - leader - longest - 2));
  const words = props.layers.map(({ name, thick }) => `${name} ${thick}`).toReversed();
  return (
    <div ref={holder}>
      <svg
        className="chart-drawing heap-layers"
        viewBox={`0 0 ${width} ${height + 2 * edge}`}
        width={width}
        height={height + 2 * edge}
        role="img"
        aria-label={`${props.title}, from the top: ${words.join(', ')}.`}
      >
        <StuffWeaves prefix={id} />
        <g transform={`translate(0 ${edge})`}>
          {layers.map(({ top, bottom, label }, at) => {
            const shown = props.layers[at];
            if (!shown) return null;
            const path = `M1 ${top}H${stack}V${bottom}H1Z`;
            return (
              // oxlint-disable-next-line react/no-array-index-key -- layers have no name of their own and keep their order
              <g key={at} className={`stuff-${shown.stuff}`}>
                <path d={path} fill={`url(#${stuffWeaveId(id, shown.stuff)})`} />
                <path className="section-layer-edge" d={path} />
                <path
                  className="heap-leader"
                  d={`M${stack + 2} ${(top + bottom) / 2}L${stack + leader - 4} ${label}`}
                />
                <text className="heap-name" x={stack + leader} y={label - 3}>
                  {shown.name}
                </text>
                <text className="heap-thick" x={stack + leader} y={label + 14}>
                  {shown.thick}
                </text>
              </g>
            );
          })}
          <path className="heap-ground" d={`M0 ${height + 1}H${stack + 1}`} />
        </g>
      </svg>
    </div>
  );
}
