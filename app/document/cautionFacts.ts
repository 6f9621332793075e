import { dayFromParts, dayOf, seasonEnd, seasonStart, yearOf, type DayNumber } from '../core/days';
import type {
  CautionFacts,
  Hazard,
  LayerFacts,
  OnHand,
  PlantingFacts,
  SourceFacts,
  TreatmentFacts,
} from '../core/season/cautions/facts';
import type { CropId } from '../tables/crops';
import { frostOf } from '../tables/frost';
import { burnsPlants, carriesSeed, composts, poisonsToDogs } from '../tables/materialGroups';
import { anyBed } from './bedPast';
import { mowingAccount, mowingMass } from './accounts';
import { clippingsKeep } from './clippingsKeep';
import { looksOf } from './looks';
import { materialFrom, mowingOf } from './materialValues';
import { ofBed } from './ofBed';
import { keptWith } from './keptParts';
import { sortedOnce } from './sortedOnce';
import type { Application, Garden, Mowing, Treatment } from './schema';
import { cropById, type CropValues } from './cropValues';

const dayOrNull = (text: string | undefined | null): DayNumber | null =>
  text === undefined || text === null ? null : dayOf(text);

export const treatmentFacts = (treatment: Treatment): TreatmentFacts => ({
  answer: treatment.answer,
  product: treatment.product ?? '',
  date: dayOrNull(treatment.date),
  label: treatment.label ?? null,
  intervalDays: treatment.intervalDays ?? null,
  beanTestPassed: dayOrNull(treatment.beanTestPassed),
});

/** Found or grown on the spot: nothing was put on it that the gardener would not know. */
const ownGrowth: TreatmentFacts = {
  answer: 'nothing',
  product: '',
  date: null,
  label: null,
  intervalDays: null,
  beanTestPassed: null,
};

const mowingsOfLawn = sortedOnce(({ lawnId }: Mowing) => lawnId);
const mowingDays = keptWith<readonly Mowing[], readonly DayNumber[]>();

/** Days a lawn was mown, read once for all layers that came from it. */
function mowingDaysOf(all: readonly Mowing[], lawnId: string): readonly DayNumber[] {
  const own = mowingsOfLawn(all, lawnId);
  return mowingDays(own, [], () => own.map(({ date }) => dayOf(date)));
}

function sourceFacts(garden: Garden, from: Application['from']): SourceFacts {
  const { row, name } = materialFrom(garden, from);
  const mowing = mowingOf(garden, from);
  const lawn = garden.lawns.find(({ id }) => id === mowing?.lawnId);
  if (lawn) {
    return {
      kind: 'lawn',
      name: lawn.name,
      mayCarryWeedkiller: row.mayCarryWeedkiller,
      treatment: treatmentFacts(lawn.treatment),
      earlierTreatments: (lawn.earlierTreatments ?? []).map(treatmentFacts),
      mowingDays: mowingDaysOf(garden.mowings, lawn.id),
      creepingGrass: lawn.creepingGrass,
      seedHeadsSeen: dayOrNull(lawn.seedHeadsSeen),
    };
  }
  const stock =
    from.source === 'stock' ? garden.stock.find(({ id }) => id === from.stockId) : undefined;
  return {
    kind: stock?.role ?? 'elsewhere',
    name: stock?.name ?? name,
    mayCarryWeedkiller: stock !== undefined && row.mayCarryWeedkiller,
    treatment: stock ? treatmentFacts(stock.treatment) : ownGrowth,
    mowingDays: [],
    creepingGrass: false,
    seedHeadsSeen: null,
  };
}

function layerFacts(garden: Garden, application: Application): LayerFacts {
  const { from } = application;
  const material = materialFrom(garden, from);
  const mowing = mowingOf(garden, from);
  const lawn = garden.lawns.find(({ id }) => id === mowing?.lawnId);
  const stock =
    from.source === 'stock' ? garden.stock.find(({ id }) => id === from.stockId) : undefined;
  const hazards: Hazard[] = [
    ...(lawn?.fouledByPets ? (['fouled grass'] as const) : []),
    ...(poisonsToDogs.has(material.row.id) ? (['dog poison'] as const) : []),
    ...(lawn?.hazards ?? stock?.hazards ?? []),
  ];
  return {
    source: sourceFacts(garden, from),
    materialName: material.name,
    cutOn: dayOf(mowing?.date ?? application.date),
    seedHeaded: (mowing?.kind ?? lawn?.kind) === 'seed-headed',
    isRawManure: material.row.id.startsWith('manure-'),
    burnsPlants: burnsPlants.has(material.row.id),
    carriesSeed: carriesSeed.has(material.row.id),
    isCompost: composts.has(material.row.id),
    hazards,
  };
}

/** The usual last spring frost that falls in the season of `today`, or null where none is known. */
function lastSpringFrost(garden: Garden, today: DayNumber): DayNumber | null {
  const [month, dayOfMonth] = (garden.weather.normals.lastSpringFrost ?? '').split('-').map(Number);
  if (!month || !dayOfMonth) return null;
  const first = seasonStart(today, garden.garden.seasonStartMonth);
  const last = seasonEnd(today, garden.garden.seasonStartMonth);
  for (const year of [yearOf(first), yearOf(last)]) {
    const day = dayFromParts(year, month, dayOfMonth);
    if (day >= first && day <= last) return day;
  }
  return null;
}

/** The last of each garden. */
const onHand = keptWith<Garden, readonly OnHand[]>();

/**
 * Greens of the last days that are neither laid nor given to the lawn or the heap, freshest first: of
 * all beds the same, so found once for a garden that nobody can change any more.
 */
export function onHandOf(
  garden: Garden,
  today: DayNumber,
  proposed: readonly Application[] = [],
): readonly OnHand[] {
  const find = (): readonly OnHand[] => foundOnHand(garden, today, proposed);
  return proposed.length > 0 || !Object.isFrozen(garden) ? find() : onHand(garden, [today], find);
}

function foundOnHand(
  garden: Garden,
  today: DayNumber,
  proposed: readonly Application[],
): readonly OnHand[] {
  const withProposed: Garden =
    proposed.length === 0
      ? garden
      : { ...garden, applications: [...garden.applications, ...proposed] };
  return garden.mowings
    .filter((mowing) => mowing.rest.to === 'undecided' && clippingsKeep(mowing, today))
    .sort((a, b) => dayOf(b.date) - dayOf(a.date))
    .map((mowing) => {
      const { litres, nitrogenGrams } = mowingMass(garden, mowing);
      const left = Math.max(0, mowingAccount(withProposed, mowing).leftShare);
      const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
      const { quantity } = mowing.amount;
      const counted =
        quantity.kind === 'containers'
          ? garden.containers.find(({ id }) => id === quantity.containerId)
          : undefined;
      return {
        container: counted
          ? { one: counted.name, many: counted.plural, litres: counted.litres }
          : null,
        name: lawn ? `clippings from ${lawn.name}` : 'clippings',
        litres: litres * left,
        nitrogenGrams: nitrogenGrams * left,
      };
    })
    .filter(({ litres }) => litres > 0);
}

/** The likely killing temperature of a crop of the tables, where one is known. */
function killedAt(row: CropValues | undefined): Pick<PlantingFacts, 'killedAtCelsius'> {
  const killed = row && frostOf(row.tableId as CropId)?.killedAt;
  return killed ? { killedAtCelsius: killed.typical } : {};
}

/** What cautions need to know of a bed beyond what the engine is given. */
export function cautionFacts(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  extraApplications: readonly Application[] = [],
): CautionFacts {
  const bed = anyBed(garden, bedId);
  if (!bed) throw new Error(`No bed ${bedId}`);
  const layers = [...ofBed(garden.applications, bedId), ...ofBed(extraApplications, bedId)].map(
    (application): [string, LayerFacts] => [application.id, layerFacts(garden, application)],
  );
  const plantings = ofBed(garden.plantings, bedId).map((planting): [string, PlantingFacts] => {
    const row = cropById(garden, planting.cropId);
    return [
      planting.id,
      {
        cropName: row?.name ?? planting.cropId,
        weedkillerSensitive: row?.weedkillerSensitive ?? false,
        ...killedAt(row),
      },
    ];
  });
  return {
    seasonStartMonth: garden.garden.seasonStartMonth,
    roof: bed.roof,
    lastSpringFrost: lastSpringFrost(garden, today),
    ownWell: garden.garden.ownWell,
    dogs: garden.garden.dogs,
    looks: looksOf(garden, bedId),
    onHand: onHandOf(garden, today, extraApplications),
    layers: Object.fromEntries(layers),
    plantings: Object.fromEntries(plantings),
  };
}
