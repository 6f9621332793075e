import type { BedStrip, StripPlanting, StripTrouble } from '../../charts/strips/data';
import type { DaySpan } from '../../charts/season/data';
import { dayOf, type DayNumber } from '../../core/days';
import { crowdedSpells } from '../../core/season/cautions/crowded';
import type { CautionKind } from '../../core/season/verdict';
import { cropName } from '../../document/cropValues';
import { layerInput, soilOf } from '../../document/seasonInput';
import { materialFrom } from '../../document/materialValues';
import { plantingDays } from '../../document/plantingDays';
import type { Bed, Garden, Planting } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { basisOf, limits } from '../../tables/thresholds';
import { cautionWords } from '../../words/cautions';
import { crowdedWords } from '../../words/seasonPlaceWords';
import { stuffName, stuffOf } from '../beds/chartData';
import type { Shown } from '../shown';

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
          },
        ];
  });
}

/** Everything a strip shows of one bed. */
export function bedStrip(
  garden: Garden,
  bed: Bed,
  results: BedResults | undefined,
  span: DaySpan,
  today: DayNumber,
  shown: Shown,
): BedStrip {
  const plantings = garden.plantings
    .filter(({ bedId }) => bedId === bed.id)
    .map((planting) => stripPlanting(garden, bed, planting, results, today));
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
    run: results?.season ?? null,
    bulkDensityKgPerL: (results?.input.soil ?? soilOf(garden, bed, today, today)).bulkDensityKgPerL,
    plantings,
    layers: garden.applications
      .filter(({ bedId, date }) => {
        const day = dayOf(date);
        return bedId === bed.id && day >= span.from && day <= span.to;
      })
      .map((application) => {
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
      ...troublesOf(results, plantings, shown),
    ],
  };
}

/** Days of the seasons one can step to: from the first thing written down to the season after this one. */
export function firstDayKnown(
  garden: Garden,
  results: Readonly<Record<string, BedResults>>,
  today: DayNumber,
): DayNumber {
  const dates = [
    ...garden.plantings.map(({ started }) => dayOf(started)),
    ...garden.applications.map(({ date }) => dayOf(date)),
    ...garden.mowings.map(({ date }) => dayOf(date)),
    ...Object.values(results).map(({ season }) => season.firstDay),
  ];
  return dates.reduce((first, day) => Math.min(first, day), today);
}
