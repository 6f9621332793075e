import type { CoverChartData, CoverLayerShown, Stuff } from '../../charts/cover/data';
import type { LayerOnChart, SeasonChartData } from '../../charts/season/data';
import { dayOf, seasonStart, type DayNumber } from '../../core/days';
import type { DrawsAnswer } from '../../core/season/draws/runDraws';
import type { PlantingInput } from '../../core/season/input';
import { growsFrom, mainPlanting } from '../../core/season/plantingAccount';
import { layerInput } from '../../document/layerInput';
import { materialFrom, type MaterialValues } from '../../document/materialValues';
import type { Application, Garden } from '../../document/schema';
import { withId } from '../../document/withId';
import type { BedResults, StateHistory } from '../../store/contract';
import type { ChartUnits } from '../../words/chartUnits';
import { cropById, cropName } from '../../document/cropValues';
import { dayOriginsOf } from '../../document/weatherFrom';

/** How a material looks in a drawing. */
export function stuffOf({ row }: MaterialValues): Stuff {
  if (row.materialClass === 'slow') return 'compost';
  if (/leaves|leaf/.test(row.id)) return 'leaves';
  if (/straw|hay|stalk/.test(row.id)) return 'straw';
  return row.isGreens ? 'greens' : 'other';
}

/** What a layer is called in charts and logs: clippings, or the material's name. */
export const stuffName = (material: MaterialValues): string =>
  material.row.id.startsWith('grass-') ? 'Clippings' : material.name;

/** The part of a run that the season chart and the ledger speak of: the season that holds today. */
export function seasonSpan(
  garden: Garden,
  results: BedResults,
): { readonly from: DayNumber; readonly to: DayNumber } {
  const { season } = results;
  return {
    from: Math.max(season.firstDay, seasonStart(season.today, garden.garden.seasonStartMonth)),
    to: season.firstDay + season.days - 1,
  };
}

const layersOf = (garden: Garden, results: BedResults, proposed: readonly Application[] = []) =>
  results.input.layers.flatMap((layer) => {
    const application =
      withId(garden.applications, layer.id) ?? proposed.find(({ id }) => id === layer.id);
    if (!application) return [];
    return [{ layer, material: materialFrom(garden, application.from) }];
  });

const isCoverCrop = ({ crop }: PlantingInput): boolean => crop.excessClass === 'cover';

/** Crops whose tops went into the soil: they feed what comes after, as anything that is dug in. */
const dugInCrops = (garden: Garden, { input, season }: BedResults): readonly LayerOnChart[] =>
  input.plantings.flatMap((planting) =>
    planting.topsFate === 'dug in' &&
    planting.clearingDay !== null &&
    planting.clearingDay <= season.today
      ? [
          {
            id: `tops ${planting.id}`,
            name: cropName(garden, planting.crop.id),
            day: planting.clearingDay,
            laidDepth: 0,
            inSoil: true,
            stuff: planting.crop.residueIsGreen ? ('greens' as const) : ('straw' as const),
          },
        ]
      : [],
  );

/** Everything the season chart shows of a bed. */
export function seasonChartData(
  garden: Garden,
  results: BedResults,
  history: StateHistory['weeks'] | null,
  units: ChartUnits,
  draws?: DrawsAnswer,
): SeasonChartData {
  const { input, season, verdict } = results;
  const main = mainPlanting(input);
  const row = main ? cropById(garden, main.crop.id) : undefined;
  return {
    result: season,
    verdict,
    ...(history !== null
      ? {
          history: history.map(({ day, nitrogen }) => ({ day, state: nitrogen })),
        }
      : {}),
    cropBand:
      main && row
        ? {
            lowMgPerKg: main.crop.enoughNitrateLow,
            highMgPerKg: main.crop.enoughNitrateHigh,
          }
        : null,
    bulkDensityKgPerL: input.soil.bulkDensityKgPerL,
    ...(draws
      ? {
          likely: draws.nitrateDays.flatMap((day, week) => {
            const band = draws.nitrate[week];
            return band ? [{ day, low: band.low, high: band.high }] : [];
          }),
        }
      : {}),
    tests: garden.events.flatMap((event) =>
      event.kind === 'soil test' && event.bedId === results.bedId && event.nitrateMgPerKg !== null
        ? [{ day: dayOf(event.date), mgPerKg: event.nitrateMgPerKg }]
        : [],
    ),
    origins: dayOriginsOf(garden, results.season.firstDay, results.season.today),
    plantings: input.plantings.map((planting) => ({
      id: planting.id,
      name: cropName(garden, planting.crop.id),
      sown: planting.sown,
      flowerDay:
        planting.crop.flowerDays === null ? null : growsFrom(planting) + planting.crop.flowerDays,
      // nobody picks what is grown to be laid or dug in
      firstHarvestDay: isCoverCrop(planting) ? null : planting.firstHarvestDay,
      isCoverCrop: isCoverCrop(planting),
    })),
    layers: [
      ...layersOf(garden, results).map(({ layer, material }) => ({
        id: layer.id,
        name: stuffName(material),
        day: layer.day,
        laidDepth: layer.laidDepth,
        inSoil: layer.placement !== 'laid',
        stuff: stuffOf(material),
      })),
      ...dugInCrops(garden, results),
    ],
    units,
  };
}

/** Tops of crops that were left where they stood: cover too, though nobody laid them. */
const topsShown = (
  garden: Garden,
  { input, season }: BedResults,
  day: DayNumber,
): readonly CoverLayerShown[] => {
  const own = new Set(input.layers.map(({ id }) => id));
  return season.layers.flatMap(({ id, depth }) => {
    if (own.has(id)) return [];
    const planting = input.plantings
      .filter((one) => id.startsWith(`tops of ${one.id}`))
      .reduce<PlantingInput | null>(
        (best, one) => (best && best.id.length > one.id.length ? best : one),
        null,
      );
    const from = depth.findIndex((millimetres) => millimetres > 0);
    if (!planting || from < 0 || season.firstDay + from > day) return [];
    const name = cropName(garden, planting.crop.id);
    return [
      {
        id,
        name: `Tops of ${name.toLowerCase()}`,
        stuff: planting.crop.residueIsGreen ? ('greens' as const) : ('straw' as const),
        day: season.firstDay + from,
        laidDepth: depth[from] ?? 0,
      },
    ];
  });
};

/** What came with the ground of beds that were split or joined: it lies on, and its log is with them. */
const cameWithGround = (
  garden: Garden,
  { input, season }: BedResults,
  day: DayNumber,
): readonly CoverLayerShown[] => {
  const own = new Set(input.layers.map(({ id }) => id));
  return season.layers.flatMap(({ id }) => {
    if (own.has(id)) return [];
    const application = withId(garden.applications, id);
    const bed = garden.retiredBeds?.find((one) => one.id === application?.bedId);
    if (!application || !bed || dayOf(application.date) > day) return [];
    const material = materialFrom(garden, application.from);
    return [
      {
        id,
        name: stuffName(material),
        stuff: stuffOf(material),
        day: dayOf(application.date),
        laidDepth: layerInput(garden, bed, application).laidDepth,
      },
    ];
  });
};

/**
 * Layers that lie on a bed up to a day of its run.
 *
 * @param proposed those that are only thought of
 */
export const layersShown = (
  garden: Garden,
  results: BedResults,
  day: DayNumber,
  proposed: readonly Application[] = [],
): readonly CoverLayerShown[] => [
  ...layersOf(garden, results, proposed)
    .filter(({ layer }) => layer.placement === 'laid' && layer.day <= day)
    .map(({ layer, material }) => ({
      id: layer.id,
      name: stuffName(material),
      stuff: stuffOf(material),
      day: layer.day,
      laidDepth: layer.laidDepth,
    })),
  ...cameWithGround(garden, results, day),
  ...topsShown(garden, results, day),
];

/** Everything the drawing of a bed's cover shows. */
export const coverChartData = (
  garden: Garden,
  results: BedResults,
  units: ChartUnits,
): CoverChartData => ({
  result: results.season,
  layers: layersShown(garden, results, results.season.today),
  coverState: results.verdict.coverState,
  units,
});
