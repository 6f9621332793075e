import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import type { BedStrip } from '../../charts/strips/data';
import type { DaySpan } from '../../charts/season/data';
import { StripsChart, type StripDays } from '../../charts/strips/StripsChart';
import { ChartFiguresIn } from '../../charts/ChartSays';
import { stripsTable } from '../../charts/strips/tableData';
import { useAnnounce } from '../../controls/Announcer';
import { Figured } from '../../controls/Figured';
import { Disclosure } from '../../controls/Disclosure';
import { movedPlanting } from '../../document/movedPlanting';
import type { Planting } from '../../document/schema';
import { dayOriginsOf } from '../../document/weatherFrom';
import { editFailureSentence } from '../../words/messages';
import { foundWords, movingWords, type PlantingPart } from '../../words/seasonPlaceWords';
import { finishedCrop } from '../finishedCrop';
import { matchWords } from '../find/matchWords';
import { useShown } from '../shown';
import { NitrogenWord, WeightWord } from '../StateWords';
import { useGarden, useMowings } from '../store';
import { SearchField } from '../tables/SearchField';
import { TakeAway } from '../takeAway/TakeAway';
import { useToday } from '../useReadingContext';
import { PlantingFields } from './PlantingFields';
import { SeasonLawns } from './SeasonLawns';
import { stripFigures } from './stripFigures';
import { ComingSeasonLine } from './ComingSeasonLine';
import { bedStrips, stripPlanting } from './stripsData';
import { useComingRanges, useComingSeason } from './useComingSeason';

/** from more beds than these on they can be looked for by name and by what grows there */
const manyBeds = 8;

/** The beds of one season: looked for, drawn, changed, taken away. */
export function SeasonStrips(props: {
  readonly span: DaySpan;
  readonly name: string;
  /** earlier and later */
  readonly years: ReactNode;
}) {
  const { span, name } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const results = useMowings((state) => state.bedResults);
  const coming = useComingSeason(span);
  const likely = useComingRanges(span);
  const rangesState = likely.ranges?.state ?? null;
  const rangesOfBeds = likely.ranges?.beds ?? null;
  const editPlanting = useMowings((state) => state.editPlanting);
  const openBed = useMowings((state) => state.openBed);
  const goTo = useMowings((state) => state.goTo);
  const announce = useAnnounce();
  const [typed, setTyped] = useState('');
  const { from } = span;
  // the fields of a planting stay with the season in which they were opened
  const [opened, setOpened] = useState<{ readonly id: string; readonly from: number } | null>(null);
  const selected = opened?.from === from ? opened.id : null;
  const select = useCallback(
    (id: string | null) => setOpened(id === null ? null : { id, from }),
    [from],
  );
  const box = useRef<HTMLDivElement>(null);
  const bedPickRef = useRef(false);

  const all = useMemo(
    () =>
      bedStrips(garden, results, span, today, shown, {
        beds: coming.beds,
        ranges: rangesState && rangesOfBeds && { state: rangesState, beds: rangesOfBeds },
      }),
    [garden, results, span, today, shown, coming.beds, rangesState, rangesOfBeds],
  );
  // a planting that is moved changes neither
  const { weather, events } = garden;
  const origins = useMemo(
    () => dayOriginsOf({ weather, events }, span.from, Math.min(span.to, today)),
    [weather, events, span, today],
  );
  const found = useMemo(
    () =>
      typed.trim() === ''
        ? all
        : all.filter(
            (bed) =>
              matchWords(
                [{ words: bed.name, also: bed.plantings.map((planting) => planting.name) }],
                typed,
              ).things.length > 0,
          ),
    [all, typed],
  );

  const of = (plantingId: string) => {
    const planting = garden.plantings.find(({ id }) => id === plantingId);
    const bed = planting && garden.beds.find(({ id }) => id === planting.bedId);
    return planting && bed ? { planting, bed, results: results[bed.id] } : null;
  };
  const afterMove = (
    planting: Planting,
    part: PlantingPart,
    by: number,
    shownEnd: number | null,
  ): Planting => ({ ...planting, ...movedPlanting(planting, part, by, shownEnd) });
  const moved = (plantingId: string, part: PlantingPart, by: number) => {
    const thing = of(plantingId);
    if (!thing) return null;
    const { planting, bed } = thing;
    const now = stripPlanting(garden, bed, planting, thing.results, today);
    const after = afterMove(planting, part, by, now.end);
    return stripPlanting(garden, bed, after, thing.results, today);
  };
  const onMove = (plantingId: string, part: PlantingPart, by: number) => {
    const thing = of(plantingId);
    const before = thing && stripPlanting(garden, thing.bed, thing.planting, thing.results, today);
    const after = moved(plantingId, part, by);
    if (!thing || !before || !after) return;
    const dates = movedPlanting(thing.planting, part, by, before.end);
    if (Object.keys(dates).length === 0) return;
    const result = editPlanting(plantingId, dates);
    announce(
      result.ok
        ? `${after.name}: ${movingWords(part, after, shown.chart)}. Undo puts it back.`
        : editFailureSentence(result.error),
    );
  };
  // the same as long as the season is: a row is drawn again only when its own bed is another
  const onOpenBed = useCallback(
    (bedId: string) => {
      openBed(bedId);
      goTo('beds');
    },
    [goTo, openBed],
  );
  const renderState = useCallback(
    (bedId: string) => <StateToday bedId={bedId} span={span} />,
    [span],
  );
  const renderTroubles = useCallback(
    (bed: BedStrip, isFolded: boolean) => <Troubles bed={bed} span={span} isFolded={isFolded} />,
    [span],
  );
  const renderFields = useCallback(
    (plantingId: string) => (
      <PlantingFields
        key={plantingId}
        plantingId={plantingId}
        bedPickRef={bedPickRef}
        onClose={() => {
          select(null);
          box.current
            ?.querySelector<HTMLElement>(`[data-planting="${CSS.escape(plantingId)}"]`)
            ?.focus();
        }}
      />
    ),
    [select],
  );
  const renderBelow = useCallback(
    (days: StripDays) => <SeasonLawns span={span} days={days} />,
    [span],
  );

  return (
    <div ref={box} className="strips-part">
      <div className="strip-tools not-printed">
        {props.years}
        {all.length > manyBeds && (
          <SearchField
            label="Beds with this name or crop"
            text={typed}
            onText={setTyped}
            found={foundWords(found.length, all.length)}
          />
        )}
      </div>
      <ComingSeasonLine coming={coming} likely={likely} span={span} />
      <TakeAway name={name} isStacked table={() => stripsTable(found, span, shown.chart, origins)}>
        <ChartFiguresIn value={stripFigures}>
          <StripsChart
            span={span}
            today={today}
            beds={found}
            allBeds={all}
            units={shown.chart}
            origins={origins}
            selected={selected}
            onSelect={select}
            moved={moved}
            onMove={onMove}
            onOpenBed={onOpenBed}
            renderState={renderState}
            renderTroubles={renderTroubles}
            renderFields={renderFields}
            renderBelow={renderBelow}
          />
        </ChartFiguresIn>
      </TakeAway>
    </div>
  );
}

/** How a bed stands today, where today is in view. */
function StateToday({ bedId, span }: { readonly bedId: string; readonly span: DaySpan }) {
  const today = useToday();
  const own = useMowings((state) => state.bedResults[bedId]);
  if (!own || today < span.from || today > span.to) return null;
  return (
    <span className="strip-value">
      today: <NitrogenWord state={own.verdict.state} finished={finishedCrop(own) !== null} />
    </span>
  );
}

/** What does not go together on a bed in the season shown, in words beside its marks. */
function Troubles(props: {
  readonly bed: BedStrip;
  readonly span: DaySpan;
  readonly isFolded: boolean;
}) {
  const { span, bed } = props;
  const troubles = bed.troubles.filter(({ day }) => day >= span.from && day <= span.to);
  if (troubles.length === 0) return null;
  const list = (
    <ul className="plain-list strip-troubles small">
      {troubles.map(({ id, weight, says, figures }) => (
        <li key={id}>
          <Figured
            before={
              <>
                <WeightWord weight={weight} />{' '}
              </>
            }
            says={says}
            figures={figures ?? []}
          />
        </li>
      ))}
    </ul>
  );
  if (!props.isFolded) return list;
  const count = troubles.length === 1 ? '1 remark' : `${troubles.length} remarks`;
  return (
    <Disclosure summary={`${count} on ${bed.name}`} quiet>
      {list}
    </Disclosure>
  );
}
