import { memo } from 'react';
import { coverSays, smotheredToday } from '../coverSays';
import { finishedCrop } from '../finishedCrop';
import { useShown } from '../shown';
import { NitrogenWord } from '../StateWords';
import { useGarden, useMowings } from '../store';
import type { QuietBed, QuietGroups } from './quietGroups';
import { quietGroups } from './quietGroups';
import { StateSays } from '../why/StateSays';
import { usePlanOfBed } from './plan/planOfBed';
import { PlanOfBedLine } from './plan/PlanOfBedLine';
import { RoomLine } from './RoomLine';
import { TryInWhatIf } from './TryInWhatIf';

const headings: readonly (readonly [keyof QuietGroups, string])[] = [
  ['planned', 'In today’s plan'],
  ['couldTake', 'Could take some'],
  ['toCover', 'Their ground wants cover'],
  ['finished', 'Finished, it seems'],
  ['leave', 'Leave as they are today'],
];

/** Beds on which nothing presses, by what could be done for them. */
export function QuietBeds(props: {
  readonly beds: Parameters<typeof quietGroups>[1];
  readonly onLayHere: ((bedId: string) => void) | null;
}) {
  const garden = useGarden();
  const bedResults = useMowings((state) => state.bedResults);
  const plan = useMowings((state) => state.plan.answer);
  // what the plan will have for them nobody knows yet
  const isAwaited = useMowings((state) => !state.plan.answer && state.plan.state === 'working');
  const groups = quietGroups(garden, props.beds, bedResults, plan);
  return (
    <>
      {headings.map(
        ([group, heading]) =>
          groups[group].length > 0 && (
            <div key={group} className="quiet">
              <h3>{group === 'leave' && isAwaited ? 'Nothing presses here' : heading}</h3>
              <ul className="plain-list">
                {groups[group].map((one) => (
                  <li key={one.bed.id}>
                    <Quiet one={one} group={group} onLayHere={props.onLayHere} />
                  </li>
                ))}
              </ul>
            </div>
          ),
      )}
    </>
  );
}

const Quiet = memo(
  QuietBedLine,
  (before, now) =>
    before.one.bed === now.one.bed &&
    before.one.results === now.one.results &&
    before.group === now.group &&
    before.onLayHere === now.onLayHere,
);

function QuietBedLine(props: {
  readonly one: QuietBed;
  readonly group: keyof QuietGroups;
  readonly onLayHere: ((bedId: string) => void) | null;
}) {
  const { group, onLayHere } = props;
  const { bed, results } = props.one;
  const openBed = useMowings((state) => state.openBed);
  const goTo = useMowings((state) => state.goTo);
  const shown = useShown();
  const finished = finishedCrop(results);
  const plan = usePlanOfBed(bed.id);
  // the plan tells of seedlings in its own line
  const isTold =
    plan?.kind === 'left out' &&
    plan.left.reason.kind === 'caution' &&
    plan.left.reason.caution.row === 'cover over seedlings';
  const isOpen = results.verdict.coverState !== 'good';
  const saysCover =
    isOpen &&
    !isTold &&
    (group === 'couldTake' ||
      group === 'toCover' ||
      (group === 'leave' && smotheredToday(results) !== null));
  return (
    <>
      <div className="quiet-bed-line">
        <button
          type="button"
          className="button-plain quiet-bed"
          onClick={() => {
            goTo('beds');
            openBed(bed.id);
          }}
        >
          {bed.name}
        </button>{' '}
        <NitrogenWord state={results.verdict.state} finished={finished !== null} />
        {group === 'couldTake' && onLayHere && (
          <button type="button" className="button-small" onClick={() => onLayHere(bed.id)}>
            Lay some on {bed.name}
          </button>
        )}
        {group === 'couldTake' && <TryInWhatIf bed={bed} results={results} />}
      </div>
      {group === 'couldTake' && <RoomLine bed={bed} results={results} />}
      <PlanOfBedLine bedId={bed.id} isHeaded={group === 'planned'} />
      {(finished || results.verdict.wantsMoreLater) && (
        <StateSays bed={bed} results={results} className="small" />
      )}
      {saysCover && <p className="small">{coverSays(results, shown)}</p>}
    </>
  );
}
