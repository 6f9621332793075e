import { useEffect } from 'react';
import { useAnnounce } from '../../../controls/Announcer';
import { Disclosure } from '../../../controls/Disclosure';
import { Figured } from '../../../controls/Figured';
import { textFromDay } from '../../../core/days';
import { daysAhead, daysAway, type WaterAnswer } from '../../../core/season/waterNeeds';
import type { Bed } from '../../../document/schema';
import { editFailureSentence } from '../../../words/messages';
import {
  awayWords,
  pourWords,
  savedDoubt,
  savedWords,
  waterForecastWords,
} from '../../../words/waterWords';
import { useShown } from '../../shown';
import { awayWhy, pourFigures, pourWhy, savedFigures } from '../../why/waterWhys';
import { useGarden, useMowings } from '../../store';
import { useToday } from '../../useReadingContext';
import { TroubleReason } from '../../WorkTrouble';
import { canOf } from './canOf';

/** Due within so many days it stands open on the page. */
const soonDays = 7;

interface BedWater {
  readonly bed: Bed;
  readonly water: WaterAnswer;
}

const byDue = (one: BedWater, other: BedWater): number =>
  (one.water.due?.day ?? Infinity) - (other.water.due?.day ?? Infinity);

/** Which bed is watered next and with how much; what covers saved; what to do before going away. */
export function Water() {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const water = useMowings((state) => state.water);
  const want = useMowings((state) => state.wantWater);
  const leave = useMowings((state) => state.leaveWater);
  useEffect(() => {
    want();
    return leave;
  }, [want, leave]);
  const known = garden.beds
    .flatMap((bed): BedWater[] => {
      const own = water.beds[bed.id];
      return own ? [{ bed, water: own }] : [];
    })
    .sort(byDue);
  const soon = known.filter((one) => one.water.due && one.water.due.day <= today + soonDays);
  const [next] = known;
  if (garden.beds.length === 0) return null;
  return (
    <section
      className="section water"
      aria-labelledby="water"
      aria-busy={water.state === 'working'}
    >
      <div className="section-head">
        <h2 id="water">Water</h2>
      </div>
      {water.state === 'failed' && (
        <div className="field-trouble">
          <p role="alert">
            <span aria-hidden="true" className="field-trouble-mark" />
            When to water cannot be reckoned just now. Feel the soil a finger deep instead.
          </p>
          <TroubleReason reason={water.reason} />
        </div>
      )}
      {known.length === 0 && water.state !== 'failed' && (
        <p className="soft">Reckoning when each bed is due…</p>
      )}
      {known.length > 0 && soon.length === 0 && (
        <p>
          No bed is due for water within a week.{' '}
          {next?.water.due
            ? `Next is ${next.bed.name}, about ${shown.dayWord(next.water.due.day)}.`
            : `Nor within ${daysAhead} days, if they are as wet as usual.`}
        </p>
      )}
      {soon.length > 0 && (
        <ul className="plain-list water-list">
          {soon.map((one) => (
            <DueBed key={one.bed.id} {...one} />
          ))}
        </ul>
      )}
      <Disclosure summary="Every bed, what its cover saved, and going away for two weeks">
        <p className="small soft">{waterForecastWords}</p>
        {known.length > 0 && (
          <>
            <WaterTable known={known} />
            <h3>Going away for two weeks</h3>
            <GoingAway known={known} />
          </>
        )}
      </Disclosure>
    </section>
  );
}

/** A bed that is due within the week, with the button that writes the watering down. */
function DueBed({ bed, water }: BedWater) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const logEvent = useMowings((state) => state.logEvent);
  const announce = useAnnounce();
  const results = useMowings((state) => state.bedResults[bed.id]);
  const { due } = water;
  if (!due) return null;
  const isDue = due.day <= today;
  const can = canOf(garden, shown.system);
  const pour = pourWords(due.pour, bed.areaM2, can, shown.units);
  return (
    <li className="water-due">
      <Figured
        before={<strong>{bed.name}</strong>}
        says={`: ${isDue ? 'due today' : `due by ${shown.dayNear(due.day, today)}`}, ${isDue ? pour : `then ${pour}`}.`}
        figures={pourFigures(due.pour, bed, can, shown, pourWhy(due, bed, results, garden, shown))}
      />
      {isDue && (
        <button
          type="button"
          className="button-small not-printed"
          aria-label={`Watered so much: ${bed.name}`}
          onClick={() => {
            const result = logEvent({
              kind: 'water',
              bedId: bed.id,
              date: textFromDay(today),
              millimetres: Math.round(due.pour * 10) / 10,
            });
            announce(
              result.ok
                ? `Watering of ${bed.name} written down. Undo takes it back.`
                : editFailureSentence(result.error),
            );
          }}
        >
          Watered so much
        </button>
      )}
    </li>
  );
}

function WaterTable({ known }: { readonly known: readonly BedWater[] }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const bedResults = useMowings((state) => state.bedResults);
  const can = canOf(garden, shown.system);
  return (
    <>
      <ul className="plain-list water-list">
        {known.map(({ bed, water: { due, saved } }) => (
          <li key={bed.id}>
            <Figured
              before={<strong>{bed.name}</strong>}
              says={
                due
                  ? `: ${due.day <= today ? 'due today' : `due about ${shown.dayWord(due.day)}`}, ${pourWords(due.pour, bed.areaM2, can, shown.units)}.`
                  : `: not due within ${daysAhead} days.`
              }
              figures={
                due
                  ? pourFigures(
                      due.pour,
                      bed,
                      can,
                      shown,
                      pourWhy(due, bed, bedResults[bed.id], garden, shown),
                    )
                  : []
              }
            />
            {saved && (
              <Figured
                className="small soft"
                says={savedWords(saved, shown.units)}
                figures={savedFigures(saved, shown)}
              />
            )}
          </li>
        ))}
      </ul>
      {known.some(({ water }) => water.saved !== null) && (
        <p className="small soft">Counted since the season began. {savedDoubt}</p>
      )}
    </>
  );
}

function GoingAway({ known }: { readonly known: readonly BedWater[] }) {
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const can = canOf(garden, shown.system);
  const needing = known.flatMap(({ bed, water: { away } }) => (away ? [{ bed, away }] : []));
  if (needing.length === 0)
    return (
      <p>
        No bed needs water before {shown.dayWord(today + daysAway)}, if the days are as usual. Pick
        what is ripe, and leave.
      </p>
    );
  return (
    <ul className="plain-list water-list">
      {needing.map(({ bed, away }) => (
        <li key={bed.id}>
          <Figured
            before={<strong>{bed.name}</strong>}
            says={`: ${awayWords(
              away,
              today + daysAway,
              (millimetres) => pourWords(millimetres, bed.areaM2, can, shown.units),
              shown.dayWord,
            )}`}
            figures={pourFigures(away.pour, bed, can, shown, awayWhy(away.pour, bed, shown))}
          />
        </li>
      ))}
    </ul>
  );
}
