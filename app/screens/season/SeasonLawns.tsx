import { memo, useEffect, useMemo, useReducer } from 'react';
import type { DaySpan } from '../../charts/season/data';
import { hasGrowth } from '../../charts/lawn/geometry';
import { drawnOfLawn, LawnKey } from '../../charts/lawn/LawnKey';
import { DayCross } from '../../charts/strips/DayCross';
import { LawnStrip, lawnStage } from '../../charts/strips/LawnStrip';
import type { StripDays } from '../../charts/strips/StripsChart';
import { lawnCuts } from '../../document/lawnCurve';
import { dayOf, type DayNumber } from '../../core/days';
import type { Garden, Lawn } from '../../document/schema';
import { lawnChartWords } from '../../words/lawnChartWords';
import { growthIn, growthShown } from '../lawn/growthShown';
import { hasLawnCurve, keptLawnCurve } from '../lawn/keptLawnCurve';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';

/** so long a lawn waits while other things are to be done [ms] */
const longestWait = 2000;

/** The lawns under the beds: what they should give, and what was mown. */
export function SeasonLawns(props: { readonly span: DaySpan; readonly days: StripDays }) {
  const garden = useGarden();
  const today = useToday();
  const goTo = useMowings((state) => state.goTo);
  const { lawns } = garden;
  // a lawn takes many imagined seasons: one after the other, once the beds are drawn
  const next = lawns.find((lawn) => !hasLawnCurve(garden, lawn, today));
  const [, tellReckoned] = useReducer((times: number) => times + 1, 0);
  useEffect(() => {
    if (!next) return undefined;
    const waiting = requestIdleCallback(
      () => {
        keptLawnCurve(garden, next, today);
        tellReckoned();
      },
      { timeout: longestWait },
    );
    return () => cancelIdleCallback(waiting);
  }, [garden, next, today]);
  const { span } = props;
  // what is reckoned says itself what it draws
  const each = lawns
    .filter((lawn) => hasLawnCurve(garden, lawn, today))
    .map((lawn) =>
      drawnOfLawn({ today, ...growthShown(lawnInSpan(garden, lawn, span, today), 1) }),
    );
  const drawn = {
    weeks: each.some(({ weeks }) => weeks),
    ahead: each.some(({ ahead }) => ahead),
    cuts: each.some(({ cuts }) => cuts),
    tornCuts: each.some(({ tornCuts }) => tornCuts),
    firstCut: each.some(({ firstCut }) => firstCut),
  };
  if (lawns.length === 0) return null;
  return (
    <section className="strip-lawns" aria-labelledby="season-lawns">
      <h2 id="season-lawns">The lawns</h2>
      <ul className="plain-list">
        {lawns.map((lawn) => (
          <li key={lawn.id} className="strip-row">
            {hasLawnCurve(garden, lawn, today) ? (
              <LawnRow lawn={lawn} {...props} onOpen={goTo} />
            ) : (
              <p className="soft small strip-waits">Reckoning what {lawn.name} grows…</p>
            )}
          </li>
        ))}
      </ul>
      <LawnKey drawn={drawn} />
    </section>
  );
}

/** Of a lawn's curve what belongs to a season: in one that does not hold today, only what was mown. */
function lawnInSpan(garden: Garden, lawn: Lawn, span: DaySpan, today: DayNumber) {
  return today >= span.from && today <= span.to
    ? { ...keptLawnCurve(garden, lawn, today), today }
    : {
        today,
        weeks: [],
        cuts: lawnCuts(garden, lawn.id, span.from, Math.min(today, span.to)),
      };
}

const LawnRow = memo(function LawnRow(props: {
  readonly lawn: Lawn;
  readonly span: DaySpan;
  readonly days: StripDays;
  readonly onOpen: (place: 'lawn') => void;
}) {
  const { lawn, span, days } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const curve = useMemo(() => keptLawnCurve(garden, lawn, today), [garden, lawn, today]);
  const { size, unit } = growthIn(garden, curve.inAWeek, shown);
  const data = useMemo(() => {
    const inSpan = lawnInSpan(garden, lawn, span, today);
    return { firstDay: span.from, lastDay: span.to, today, ...growthShown(inSpan, size) };
  }, [garden, lawn, size, span, today]);
  // of several on one day the curve shows one
  const count = garden.mowings.filter(
    ({ lawnId, date }) => lawnId === lawn.id && dayOf(date) >= span.from && dayOf(date) <= span.to,
  ).length;
  return (
    <>
      <div className="strip-head">
        <h3>
          <button type="button" className="bed-open" onClick={() => props.onOpen('lawn')}>
            {lawn.name}
          </button>
        </h3>
        <span className="strip-value">
          {hasGrowth(data) && `${unit.aWeek}. `}
          {data.weeks.length === 0 && `${lawnChartWords.notReckoned} `}
          {count === 0
            ? 'No mowing in these months.'
            : count === 1
              ? '1 mowing.'
              : `${count} mowings.`}
        </span>
      </div>
      {(count > 0 || hasGrowth(data)) && (
        <div className="strip-stage">
          <LawnStrip name={`${lawn.name}, ${unit.aWeek}`} data={data} {...days} />
          <DayCross layout={days.layout} geometry={lawnStage} />
        </div>
      )}
    </>
  );
});
