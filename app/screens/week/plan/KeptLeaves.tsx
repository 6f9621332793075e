import { useMemo } from 'react';
import { Disclosure } from '../../../controls/Disclosure';
import { Figured } from '../../../controls/Figured';
import { monthOf, yearOf } from '../../../core/days';
import type { PlanAnswer, SourceAccount } from '../../../core/plan/answer';
import { leavesToKeep } from '../../../document/heapAccount';
import { leafBagOf } from '../../../document/leafBag';
import { planningRows } from '../../../tables/planning';
import { monthWord } from '../../../words/chartFormat';
import { keptLeavesWords, leavesForJuneWords, leavesSum, planSays } from '../../../words/planSays';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { juneFigures, leavesFigures } from '../../why/restWhys';
import { heapedLeaves, plannedRests, type PlannedRest } from './planRests';
import { usePlanNames } from './usePlanNames';

/** Leaves that are on hand and not laid: for the heap of these weeks, and for next June's grass. */
export function KeptLeaves({ answer }: { readonly answer: PlanAnswer }) {
  const kept = answer.sources.filter((source) => (source.kept?.litres ?? 0) > 0);
  const rests = plannedRests(answer);
  if (kept.length === 0) return null;
  return (
    <Disclosure summary={planSays.keptHeading}>
      {kept.map((source) => (
        <Kept key={source.sourceId} source={source} rests={rests} />
      ))}
    </Disclosure>
  );
}

function Kept(props: { readonly source: SourceAccount; readonly rests: readonly PlannedRest[] }) {
  const { source } = props;
  const garden = useGarden();
  const today = useToday();
  const names = usePlanNames();
  const { ref, was, laid, kept } = source;
  const stock =
    ref.source === 'stock' ? garden.stock.find(({ id }) => id === ref.stockId) : undefined;
  const staying = stock ? was.litres - laid.litres - heapedLeaves(props.rests, stock.id) : 0;
  const june = useMemo(() => {
    const keep = stock ? leavesToKeep(garden, stock, today) : null;
    return (
      keep && {
        ...keep,
        onHandLitres: Math.max(0, staying),
        month: `${monthWord(monthOf(keep.monthFirst))} ${yearOf(keep.monthFirst)}`,
        bagLitres: leafBagOf(garden),
      }
    );
  }, [garden, stock, staying, today]);
  const weeks = planningRows.keptWeeks.typical;
  if (!stock || !kept) return null;
  const sum = leavesSum({ was, laid }, heapedLeaves(props.rests, stock.id), names);
  return (
    <>
      <Figured
        says={keptLeavesWords(sum, stock.name, weeks)}
        figures={leavesFigures(sum, kept, names)}
      />
      {june && (
        <Figured says={leavesForJuneWords(june, names)} figures={juneFigures(june, names)} />
      )}
    </>
  );
}
