import {
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { amountWithUnit, dayWord } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { sectionFinding } from '../../words/sectionWords';
import { SectionWeaves } from './SectionWeaves';
import { TableButton } from '../TableButton';
import { useWidth } from '../useWidth';
import type { SectionData } from './data';
import { sectionFacts, type SectionFacts } from './facts';
import { sectionGeometry } from './geometry';
import { SectionKey } from './Key';
import { Panel, type PanelDrawing } from './Panel';
import { sectionParts } from './parts';
import { type SectionBox, sectionScale } from './scale';
import { SectionTable } from './SectionTable';

export interface SectionChartProps {
  /** "Gate bed" */
  readonly bedName: string;
  readonly now: SectionData;
  /** the same bed later, and under what: "In four weeks, as it stands"; null: nothing is known of it */
  readonly ahead: { readonly data: SectionData; readonly title: string } | null;
  /** how another "ahead" is chosen */
  readonly choice?: ReactNode;
  readonly units: ChartUnits;
}

const rulerWidth = 40;
const gauge = 16;
const cell = 20;
const between = 28;
/** From this width on both evenings stand side by side. */
const leastBeside = 676;
const leastPanel = 260;
/** Wider than this a drawing that stands alone gains nothing. */
const mostAlone = 640;
const drawnHeight = 430;

export const findingOf = (facts: SectionFacts, units: ChartUnits): string =>
  sectionFinding(
    {
      plants: facts.plants,
      coverDepth: facts.coverDepth,
      hidden: facts.hidden,
      ready: facts.top.nitrogen.ready,
      water: facts.top.water,
    },
    units,
  );

/** The panels of a section at a width, all to one scale. */
export function panelsOf(
  evenings: readonly { readonly data: SectionData; readonly title: string }[],
  containerWidth: number,
  units: ChartUnits,
): readonly PanelDrawing[] {
  const isBeside = evenings.length > 1 && containerWidth >= leastBeside;
  const width = Math.max(
    leastPanel,
    Math.floor(isBeside ? (containerWidth - between) / 2 : Math.min(containerWidth, mostAlone)),
  );
  const box: SectionBox = {
    width: width - rulerWidth - gauge - 8,
    height: drawnHeight,
    mostCover: 84,
    cell,
    mostDots: 60,
  };
  const facts = evenings.map(({ data }) => sectionFacts(data));
  const scale = sectionScale(facts, box);
  return facts.map((one, at) => {
    const drawing = sectionGeometry(one, scale, {
      left: rulerWidth,
      right: width - 2,
      top: 30,
      gauge,
      cell,
      leastPlant: 34,
    });
    return {
      facts: one,
      drawing,
      scale,
      parts: sectionParts(one, drawing, scale, units),
      width,
      height: Math.ceil(drawing.bottom + 6),
      title: evenings[at]?.title ?? '',
    };
  });
}

interface Active {
  readonly panel: number;
  readonly key: string;
}

/** A cut through a bed as the model has it, to scale, today and in some weeks; every part says what it is. */
export function SectionChart({ bedName, now, ahead, choice, units }: SectionChartProps) {
  const id = useId();
  const holder = useRef<HTMLDivElement>(null);
  const width = useWidth(holder, 760);
  const [tableShown, showTable] = useState(false);
  const [active, setActive] = useState<Active | null>(null);
  const [isTold, tell] = useState(false);
  const panels = useMemo(
    () =>
      panelsOf(
        [{ data: now, title: `Today, ${dayWord(now.day, units)}` }, ...(ahead ? [ahead] : [])],
        width,
        units,
      ),
    [now, ahead, width, units],
  );
  const current = currentOf(panels, active);

  // with the tip itself, not after it: who presses Escape at once is heard
  useLayoutEffect(() => {
    if (!isTold) return undefined;
    const onKey = ({ key }: globalThis.KeyboardEvent) => {
      if (key === 'Escape') tell(false);
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, [isTold]);

  const leaving = useRef<number | undefined>(undefined);
  const stay = () => window.clearTimeout(leaving.current);
  // long enough to get from a part onto what it tells
  const leave = () => {
    stay();
    leaving.current = window.setTimeout(() => tell(false), 180);
  };
  useEffect(() => () => window.clearTimeout(leaving.current), [leaving]);

  const goTo = (next: Active) => {
    stay();
    setActive(next);
    tell(true);
    requestAnimationFrame(() =>
      holder.current
        ?.querySelector<SVGElement>(`[data-part="${CSS.escape(`${next.panel} ${next.key}`)}"]`)
        ?.focus(),
    );
  };
  const onKey = (event: KeyboardEvent) => {
    // the figures of a panel's caption have keys of their own
    if (!(event.target instanceof Element) || !event.target.closest('[data-part]')) return;
    const next = neighbour(panels, current, event.key);
    if (!next) return;
    event.preventDefault();
    goTo(next);
  };
  const [today] = panels;
  return (
    <figure className="chart section-chart" aria-labelledby={`${id}-name`}>
      <figcaption>
        <h3 id={`${id}-name`}>Section of {bedName}</h3>
      </figcaption>
      <div className="chart-tools">
        {choice}
        <TableButton
          tableId={`${id}-table`}
          isShown={tableShown}
          onShow={showTable}
          words={{ table: 'The same as a table', hideTable: 'Hide the table' }}
        />
      </div>
      <SectionWeaves prefix={id} />
      {/* oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- keys of the parts inside, which have the focus */}
      <div ref={holder} className="section-panels" onKeyDown={onKey}>
        {panels.map((panel, at) => (
          <Panel
            key={at === 0 ? 'now' : 'ahead'}
            panel={panel}
            place={at}
            finding={findingOf(panel.facts, units)}
            bedName={bedName}
            weaves={id}
            cell={cell}
            gauge={gauge}
            units={units}
            activeKey={current.panel === at ? current.key : null}
            isTold={isTold && active?.panel === at}
            onTell={(key) => {
              stay();
              setActive({ panel: at, key });
              tell(true);
            }}
            onLeave={leave}
            onStay={stay}
          />
        ))}
      </div>
      {today && (
        <SectionKey panels={panels} dot={amountWithUnit(today.scale.gramsPerDot, units.nitrogen)} />
      )}
      {tableShown && <SectionTable id={`${id}-table`} panels={panels} bedName={bedName} />}
    </figure>
  );
}

/** The part that the Tab key comes to: the one last told of, else the first of today. */
const currentOf = (panels: readonly PanelDrawing[], active: Active | null): Active =>
  active && panels[active.panel]?.parts.some(({ key }) => key === active.key)
    ? active
    : { panel: 0, key: panels[0]?.parts[0]?.key ?? '' };

/** Where a key leads from a part; null for keys that lead nowhere. */
export function neighbour(
  panels: readonly PanelDrawing[],
  from: Active,
  key: string,
): Active | null {
  const parts = panels[from.panel]?.parts ?? [];
  const at = parts.findIndex((part) => part.key === from.key);
  const to = (place: number): Active | null => {
    const part = parts[Math.min(parts.length - 1, Math.max(0, place))];
    return part ? { panel: from.panel, key: part.key } : null;
  };
  switch (key) {
    case 'ArrowDown':
      return to(at + 1);
    case 'ArrowUp':
      return to(at - 1);
    case 'Home':
      return to(0);
    case 'End':
      return to(parts.length - 1);
    case 'ArrowLeft':
    case 'ArrowRight': {
      const panel = from.panel + (key === 'ArrowLeft' ? -1 : 1);
      const others = panels[panel]?.parts;
      if (!others) return null;
      // a layer that is gone by then: what lies where it was
      const same =
        others.find((part) => part.key === from.key) ?? others[Math.min(at, others.length - 1)];
      return same ? { panel, key: same.key } : null;
    }
    default:
      return null;
  }
}
