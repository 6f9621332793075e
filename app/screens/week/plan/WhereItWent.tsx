import { Disclosure } from '../../../controls/Disclosure';
import { dayOf } from '../../../core/days';
import type { PlanAnswer } from '../../../core/plan/answer';
import { mowingMark } from '../../../document/mowingMarks';
import { mowingMarkWords } from '../../../words/mowingMarkWords';
import { useShown } from '../../shown';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { MowingShares } from '../MowingShares';

const large = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** So long a mowing that is settled still stands beside the plan (ours). */
const shownDays = 7;

/** Mowings of the last week that are settled: every kilogram of them, by place. */
export function WhereItWent({ answer }: { readonly answer: PlanAnswer }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const waiting = new Set(
    answer.sources.flatMap(({ ref }) => (ref.source === 'mowing' ? [ref.mowingId] : [])),
  );
  const settled = garden.mowings
    .filter(({ id, date, rest }) => {
      const age = today - dayOf(date);
      return age >= 0 && age < shownDays && (rest.to !== 'undecided' || !waiting.has(id));
    })
    .sort((one, other) => (one.date < other.date ? 1 : -1));
  if (settled.length === 0) return null;
  return (
    <Disclosure summary="Where the last week’s mowings went">
      <ul className="plain-list plan-went">
        {settled.map((mowing) => (
          <li key={mowing.id}>
            <p>
              {large(shown.dayNear(mowing.date, today))},{' '}
              {garden.lawns.find(({ id }) => id === mowing.lawnId)?.name}
              {mowingMarkWords({ ...mowingMark(garden, mowing.id), day: null }, String)}
            </p>
            <MowingShares mowing={mowing} />
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
