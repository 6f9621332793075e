import { useMemo } from 'react';
import { Icon } from '../../../controls/marks/Icon';
import { monthOf, yearOf } from '../../../core/days';
import type { PlanAnswer, SourceAccount } from '../../../core/plan/answer';
import { leavesToKeep } from '../../../document/heapAccount';
import { leafBagOf } from '../../../document/leafBag';
import { planningRows } from '../../../tables/planning';
import { monthWord } from '../../../words/chartFormat';
import { keptLeavesWords, leavesForJuneWords, planSays } from '../../../words/planSays';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { usePlanNames } from './usePlanNames';

/** Leaves that are on hand and not laid: for the heap of these weeks, and for next June's grass. */
export function KeptLeaves({ answer }: { readonly answer: PlanAnswer }) {
  const kept = answer.sources.filter((source) => (source.kept?.litres ?? 0) > 0);
  if (kept.length === 0) return null;
  return (
    <div className="plan-rest">
      <h3>
        <Icon name="bag" /> {planSays.keptHeading}
      </h3>
      {kept.map((source) => (
        <Kept key={source.sourceId} source={source} />
      ))}
    </div>
  );
}

function Kept({ source }: { readonly source: SourceAccount }) {
  const garden = useGarden();
  const today = useToday();
  const names = usePlanNames();
  const { ref, was, laid, kept } = source;
  const stock =
    ref.source === 'stock' ? garden.stock.find(({ id }) => id === ref.stockId) : undefined;
  const june = useMemo(
    () => (stock ? leavesToKeep(garden, stock, today) : null),
    [garden, stock, today],
  );
  if (!stock || !kept) return null;
  return (
    <>
      <p>
        {keptLeavesWords({ was, laid, kept }, stock.name, planningRows.keptWeeks.typical, names)}
      </p>
      {june && (
        <p>
          {leavesForJuneWords(
            {
              ...june,
              month: `${monthWord(monthOf(june.monthFirst))} ${yearOf(june.monthFirst)}`,
              bagLitres: leafBagOf(garden),
            },
            names,
          )}
        </p>
      )}
    </>
  );
}
