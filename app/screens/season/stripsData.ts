import type {
  BedStrip,
  StripPlanting,
  StripRange,
  StripRun,
  StripTrouble,
} from '../../charts/strips/data';
import type { DaySpan } from '../../charts/season/data';
import { dayOf, textFromDay, type DayNumber } from '../../core/days';
import { crowdedSpells } from '../../core/season/cautions/crowded';
import type { CautionKind } from '../../core/season/verdict';
import { cropName } from '../../document/cropValues';
import { layerInput } from '../../document/layerInput';
import { soilOf } from '../../document/seasonInput';
import { materialFrom } from '../../document/materialValues';
import { plantingDays } from '../../document/plantingDays';
import type { Application, Bed, Garden, Planting } from '../../document/schema';
import { tooSoonOn } from '../../document/tooSoonAfter';
import { idsOfPast } from '../../document/bedPast';
import type { BedResults } from '../../store/contract';
import type { ComingRanges } from '../../store/comingRanges';
import type { ComingSeason } from '../../store/nextSeasonSlice';
import { shortSource } from '../../tables/sources';
import { basisOf, limits } from '../../tables/thresholds';
import { cautionWords } from '../../words/cautions';
import { crowdedWords } from '../../words/seasonPlaceWords';
import { tooSoonWeight, tooSoonWords } from '../../words/tooSoonWords';
import { stuffName, stuffOf } from '../beds/chartData';
import type { Shown } from '../shown';
import { cautionFigures } from '../why/cautionWhys';

/** Cautions that are about what stands or lies where and when: they can be shown on the days of a bed. */
const dated: readonly CautionKind[] = [
  'raw manure',
  'treated lawn',
  'treated source',
  'seed fly',
  'cold soil',
  'frost',
  'seedlings',
  'tied up',
  'overdue',
];

/** A planting by its days; what the bed's sums know of them better than the calendar is taken from there. */
export function stripPlanting(
  garden: Garden,
  bed: Bed,
  planting: Planting,
  results: BedResults | undefined,
  today: DayNumber,
): StripPlanting {
  const soil = results?.input.soil ?? soilOf(garden, bed, today, today);
  const days = plantingDays(garden, planting, soil, today);
  const input = results?.input.plantings.find(({ id }) => id === planting.id);
  // of what stands for years the sums know this season's flower and pick, the calendar does not
  const flowers = input?.seasons?.at(-1);
  return {
    id: planting.id,
    name: planting.variety
      ? `${cropName(garden, planting.cropId)}, ${planting.variety}`
      : cropName(garden, planting.cropId),
    sown: planting.how === 'sown',
    share: planting.share,
    start: days.start,
    flower:
      flowers && input && input.crop.flowerDays !== null
        ? flowers.startDay + input.crop.flowerDays
        : days.flower,
    pick: flowers?.firstHarvestDay ?? days.pick,
    end: days.end,
    isEndTyped: planting.cleared !== null,
  };
}

/** What the engine's cautions say of a bed, each on its day. */
function troublesOf(
  results: BedResults | undefined,
  plantings: readonly StripPlanting[],
  shown: Shown,
): readonly StripTrouble[] {
  return (results?.cautions ?? []).flatMap((caution, index) => {
    if (!results || !dated.includes(caution.kind)) return [];
    const planting = plantings.find(({ id }) => id === caution.detail['plantingId']);
    const layer = results.input.layers.find(({ id }) => id === caution.layerId);
    const day =
      caution.kind === 'overdue'
        ? caution.date
        : (layer?.day ?? planting?.start ?? caution.date ?? results.season.today);
    return day === null
      ? []
      : [
          {
            id: `${caution.kind} ${caution.row} ${caution.layerId ?? ''} ${index}`,
            day,
            weight: caution.weight,
            says: cautionWords(caution, basisOf(caution), shown.units).says,
            figures: cautionFigures(caution, shown.units),
          },
        ];
  });
}

/** Crops of the season that come back to their ground too soon after their own family. */
function tooSoonTroubles(
  garden: Garden,
  { plantings, onGround }: OnBed,
  span: DaySpan,
  shown: Shown,
): readonly StripTrouble[] {
  return plantings.flatMap((planting): StripTrouble[] => {
    const { id, cropId, started, continues } = planting;
    const day = dayOf(started);
    if (continues || day < span.from) return [];
    const soon = tooSoonOn(garden, planting, onGround);
    if (!soon) return [];
    const source = shortSource(soon.family.freeSeasons.source);
    return [
      {
        id: `too soon ${id}`,
        day,
        weight: tooSoonWeight(soon),
        says: tooSoonWords(cropName(garden, cropId), soon, shown.day(soon.started), source),
      },
    ];
  });
}

/** What stood, stands or lies on a bed on some day of a season. */
interface OnBed {
  readonly plantings: Planting[];
  readonly applications: Application[];
  /** what was started on its ground before the season's end, in all years */
  readonly onGround: Planting[];
}

/** All that concerns a season, by bed; dates are compared as they are written, for there may be ten years of them. */
function byBed(garden: Garden, span: DaySpan): ReadonlyMap<string, OnBed> {
  const from = textFromDay(span.from);
  const to = textFromDay(span.to);
  const found = new Map(
    garden.beds.map(({ id }): [string, OnBed] => [
      id,
      { plantings: [], applications: [], onGround: [] },
    ]),
  );
  // a bed that was split or joined was other beds before
  const goesOnIn = new Map<string, OnBed[]>();
  for (const bed of garden.beds)
    for (const id of bed.ground ? idsOfPast(garden, bed) : [bed.id])
      goesOnIn.set(id, [...(goesOnIn.get(id) ?? []), found.get(bed.id)!]);
  for (const planting of garden.plantings) {
    if (planting.started > to) continue;
    for (const { onGround } of goesOnIn.get(planting.bedId) ?? []) onGround.push(planting);
    if (planting.cleared === null || planting.cleared > from)
      found.get(planting.bedId)?.plantings.push(planting);
  }
  for (const application of garden.applications)
    if (application.date >= from && application.date <= to)
      found.get(application.bedId)?.applications.push(application);
  return found;
}

/** The sums of a season: this and earlier ones from the bed's own run, the next from its going on. */
function runFor(
  bedId: string,
  results: BedResults | undefined,
  coming: ComingSeason['beds'],
  span: DaySpan,
): StripRun | null {
  const season = results?.season ?? null;
  if (season === null || span.from !== season.firstDay + season.days) return season;
  const next = coming[bedId];
  return next?.firstDay === span.from ? next : null;
}

/** The season to come as far as its sums have come. */
export interface ComingSums {
  readonly beds: ComingSeason['beds'];
  readonly ranges: Pick<ComingRanges, 'state' | 'beds'> | null;
}

/** The range of a bed in the season to come; undefined in any other, which tells none on its strip. */
function rangeFor(
  bedId: string,
  { ranges, beds }: ComingSums,
  span: DaySpan,
): StripRange | 'to come' | 'not there' | undefined {
  if (!ranges || beds[bedId]?.firstDay !== span.from) return undefined;
  const range = ranges.beds[bedId];
  if (range?.firstDay === span.from) return range;
  return ranges.state === 'working' ? 'to come' : 'not there';
}

/** Everything a strip shows of one bed. */
function bedStrip(
  garden: Garden,
  bed: Bed,
  own: OnBed,
  results: BedResults | undefined,
  coming: ComingSums,
  span: DaySpan,
  today: DayNumber,
  shown: Shown,
): BedStrip {
  const range = rangeFor(bed.id, coming, span);
  const plantings = own.plantings.map((planting) =>
    stripPlanting(garden, bed, planting, results, today),
  );
  const crowded = crowdedSpells(
    plantings.map(({ id, share, start, end }) => ({
      id,
      share,
      startDay: start,
      clearingDay: end,
    })),
    span.from,
    span.to,
    limits,
  );
  const names = (ids: readonly string[]): readonly string[] =>
    plantings.filter(({ id }) => ids.includes(id)).map(({ name }) => name);
  return {
    bedId: bed.id,
    name: bed.name,
    run: runFor(bed.id, results, coming.beds, span),
    ...(range !== undefined && { range }),
    bulkDensityKgPerL: (results?.input.soil ?? soilOf(garden, bed, today, today)).bulkDensityKgPerL,
    plantings,
    layers: own.applications.map((application) => {
      const material = materialFrom(garden, application.from);
      return {
        id: application.id,
        name: stuffName(material),
        day: dayOf(application.date),
        laidDepth: layerInput(garden, bed, application).laidDepth,
        inSoil: application.placement !== 'laid',
        stuff: stuffOf(material),
      };
    }),
    crowded,
    troubles: [
      ...crowded.map((spell) => ({
        id: `crowded ${spell.from}`,
        day: spell.from,
        weight: spell.weight,
        says: crowdedWords(
          names(spell.plantingIds),
          spell.share,
          spell.from,
          spell.to,
          shown.chart,
        ),
      })),
      ...tooSoonTroubles(garden, own, span, shown),
      ...troublesOf(results, plantings, shown),
    ],
  };
}

/** The last strip of each bed, and what it was made of. */
const made = new WeakMap<Bed, { readonly of: readonly unknown[]; readonly strip: BedStrip }>();

/**
 * The strips of all beds, from the gate outwards. A bed of which nothing is other than before keeps
 * its strip, so that it is not drawn again.
 */
export function bedStrips(
  garden: Garden,
  results: Readonly<Record<string, BedResults>>,
  span: DaySpan,
  today: DayNumber,
  shown: Shown,
  coming: ComingSums = { beds: {}, ranges: null },
): readonly BedStrip[] {
  const onBeds = byBed(garden, span);
  const { crops, materials, mowings, containers, lawns, stock } = garden;
  const shared = [span, today, shown, crops, materials, mowings, containers, lawns, stock];
  return [...garden.beds]
    .sort((one, other) => (one.steps ?? 1e9) - (other.steps ?? 1e9))
    .map((bed) => {
      const own = onBeds.get(bed.id) ?? { plantings: [], applications: [], onGround: [] };
      const answer = results[bed.id];
      const of = [
        ...shared,
        answer?.season,
        answer?.cautions,
        coming.beds[bed.id],
        rangeFor(bed.id, coming, span),
        own.plantings.length,
        own.onGround.length,
        ...own.plantings,
        ...own.applications,
        ...own.onGround,
      ];
      const before = made.get(bed);
      if (before?.of.length === of.length && before.of.every((one, at) => one === of[at]))
        return before.strip;
      const strip = bedStrip(garden, bed, own, answer, coming, span, today, shown);
      made.set(bed, { of, strip });
      return strip;
    });
}

/** The first day of which anything is written down or reckoned. */
export function firstDayKnown(
  garden: Garden,
  results: Readonly<Record<string, BedResults>>,
  today: DayNumber,
): DayNumber {
  let first = textFromDay(today);
  for (const { started } of garden.plantings) if (started < first) first = started;
  for (const list of [garden.applications, garden.mowings])
    for (const { date } of list) if (date < first) first = date;
  return Object.values(results).reduce(
    (earliest, { season }) => Math.min(earliest, season.firstDay),
    dayOf(first),
  );
}
