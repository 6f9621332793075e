import { useLayoutEffect, useRef } from 'react';
import { ChartSays } from '../ChartSays';
import { amountWithUnit } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { lengthUnit } from '../../words/sectionWords';
import { Drawing } from './Drawing';
import type { SectionFacts } from './facts';
import type { SectionGeometry } from './geometry';
import type { SectionPart } from './parts';
import { breakPath, coverTicks, rulerTicks } from './ruler';
import type { SectionScale } from './scale';

export interface PanelDrawing {
  readonly facts: SectionFacts;
  readonly drawing: SectionGeometry;
  readonly scale: SectionScale;
  readonly parts: readonly SectionPart[];
  readonly width: number;
  readonly height: number;
  readonly title: string;
}

export interface PanelProps {
  readonly panel: PanelDrawing;
  /** 0: today */
  readonly place: number;
  readonly finding: string;
  readonly bedName: string;
  readonly weaves: string;
  readonly cell: number;
  readonly gauge: number;
  readonly units: ChartUnits;
  readonly activeKey: string | null;
  readonly isTold: boolean;
  readonly onTell: (key: string) => void;
  /** what is told goes soon, unless something stays */
  readonly onLeave: () => void;
  readonly onStay: () => void;
}

/** One evening: the drawing, its ruler, and a place on each part that tells what it is. */
export function Panel(props: PanelProps) {
  const { panel, place, finding, bedName, weaves, cell, gauge, units, activeKey, isTold } = props;
  const { drawing, facts, parts, scale, width, height, title } = panel;
  const told = isTold ? parts.find(({ key }) => key === activeKey) : undefined;
  const { left } = drawing;
  const isBroken = facts.cover.length > 0 && scale.coverPerMillimetre > scale.perMillimetre;
  return (
    <div className="section-panel">
      <div>
        <p className="section-title">{title}</p>
        <ChartSays saying={{ of: 'section', day: facts.day }} says={finding} className="small" />
      </div>
      <div className="section-stage">
        <svg
          className="chart-drawing"
          viewBox={`0 0 ${width} ${height}`}
          width={width}
          height={height}
          role="listbox"
          aria-label={`${bedName}, ${title}: its parts from the top down`}
        >
          <g aria-hidden="true">
            <text className="chart-number chart-number-left" x={left - 8} y="14">
              {lengthUnit(units).short}
            </text>
            {rulerTicks(drawing, scale, units).map(({ y, label, isGround }) => (
              <g key={`${label} ${y}`}>
                <path className="chart-tick" d={`M${left - 5} ${y}h5`} />
                {label !== '' && (
                  <text
                    className={`chart-number chart-number-left${isGround ? ' section-ground-tick' : ''}`}
                    x={left - 8}
                    y={y}
                    dy="0.35em"
                  >
                    {label}
                  </text>
                )}
              </g>
            ))}
            {isBroken && (
              <path
                className="section-break"
                d={breakPath(left - 11, (drawing.surface + drawing.coverTop) / 2)}
              />
            )}
            <Drawing facts={facts} drawing={drawing} weaves={weaves} cell={cell} gauge={gauge} />
            {isBroken &&
              coverTicks(drawing, scale, units).map(({ y, millimetres }) => (
                <g key={y} className="section-cover-tick">
                  <path d={`M${left} ${y}h6`} />
                  <text x={left + 9} y={y} dy="0.32em">
                    {amountWithUnit(millimetres, units.depth)}
                  </text>
                </g>
              ))}
          </g>
          {parts.map((part) => {
            const roots = drawing.plants.find(({ plant }) => part.key === `roots ${plant.id}`);
            const { x, y, width: wide, height: high } = part.box;
            return (
              <g
                key={part.key}
                data-part={`${place} ${part.key}`}
                className={`section-part${part.key === activeKey && isTold ? ' section-part-told' : ''}`}
                role="option"
                aria-selected={part.key === activeKey}
                aria-label={`${part.name}: ${part.says}`}
                tabIndex={part.key === activeKey ? 0 : -1}
                onFocus={() => props.onTell(part.key)}
                onBlur={props.onLeave}
                onPointerEnter={() => props.onTell(part.key)}
                onPointerLeave={props.onLeave}
              >
                {roots && <path className="section-hit-line" d={roots.roots} />}
                <rect
                  className={roots ? 'section-frame' : 'section-frame section-hit'}
                  x={x}
                  y={y}
                  width={wide}
                  height={high}
                />
              </g>
            );
          })}
        </svg>
        {told && <Tip part={told} panel={panel} onEnter={props.onStay} onLeave={props.onLeave} />}
      </div>
    </div>
  );
}

const tipWidth = 248;

/** What a part is, beside it; can be pointed at, and goes with Escape. */
function Tip({
  part,
  panel,
  onEnter,
  onLeave,
}: {
  readonly part: SectionPart;
  readonly panel: PanelDrawing;
  readonly onEnter: () => void;
  readonly onLeave: () => void;
}) {
  const tip = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const shown = tip.current;
    if (!shown) return;
    const { box } = part;
    const wide = Math.min(tipWidth, panel.width - 8);
    const x = Math.max(4, Math.min(panel.width - wide - 4, box.x + box.width / 2 - wide / 2));
    // under the part where there is room, else over it
    const below = box.y + Math.min(box.height, 64) + 4;
    const y =
      below + shown.offsetHeight <= panel.height
        ? below
        : Math.max(0, box.y - shown.offsetHeight - 4);
    shown.style.setProperty('inline-size', `${wide}px`);
    shown.style.setProperty('translate', `${x}px ${y}px`);
  }, [part, panel.width, panel.height]);
  return (
    <div
      ref={tip}
      className="section-tip"
      aria-hidden="true"
      onPointerEnter={onEnter}
      onPointerLeave={onLeave}
    >
      <strong>{part.name}</strong>
      <p>{part.says}</p>
    </div>
  );
}
