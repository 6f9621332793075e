import { dayOf } from '../core/days';
import type { ParseFailure } from './failures';
import { knownRows, type KnownRows } from './knownRows';
import type { Amount, ExtraColumn, ExtraWeather, Garden } from './schema';

type Fault = Extract<ParseFailure, { kind: 'dangling' | 'broken' }>;

/** Beyond these a number was surely meant otherwise (a slip of the point, grams for kilograms). */
const believable = {
  kilograms: 100_000,
  litres: 1_000_000,
  containers: 10_000,
  depthMillimetres: 2_000,
  mownMillimetres: 1_000,
  areaM2: 1_000_000,
  containerLitres: 20_000,
  /** heavier than wet stone */
  kilogramsPerLitre: 3,
  waterMillimetres: 1_000,
  testDepthCentimetres: 200,
  nitrateMgPerKg: 2_000,
  firstYear: 1900,
  lastYear: 2199,
} as const;

const firstDay = dayOf(`${String(believable.firstYear)}-01-01`);
const lastDay = dayOf(`${String(believable.lastYear)}-12-31`);

/**
 * What the schema cannot say of a garden: ids are unique in their list, nothing points at what is
 * not there, amounts and days are believable, recorded days rise. Answers the first fault, or null.
 * Linear in the garden.
 */
export function findFault(garden: Garden, known: KnownRows = knownRows): Fault | null {
  const faults = new Faults();
  const beds = faults.ids('beds', garden.beds);
  const lawns = faults.ids('lawns', garden.lawns);
  const containers = faults.ids('containers', garden.containers);
  const materials = faults.ids('materials', garden.materials);
  const stock = faults.ids('stock', garden.stock);
  const heaps = new Set(garden.stock.filter(({ role }) => role === 'heap').map(({ id }) => id));
  faults.ids('plantings', garden.plantings);
  const bedOfPlanting = new Map(garden.plantings.map(({ id, bedId }) => [id, bedId]));
  const mowings = faults.ids('mowings', garden.mowings);
  faults.ids('applications', garden.applications);
  faults.ids('events', garden.events);
  const isMaterial = (id: string): boolean => materials.has(id) || known.hasMaterial(id);

  const amount = (list: string, index: number, value: Amount, allowed: readonly string[]): void => {
    const { quantity } = value;
    if (!allowed.includes(quantity.kind)) {
      faults.broken(list, index, 'amount', `it cannot be given as ${quantity.kind} here`);
    }
    switch (quantity.kind) {
      case 'containers':
        faults.points(list, index, containers.has(quantity.containerId), 'container');
        faults.atMost(list, index, 'amount', quantity.count, believable.containers);
        break;
      case 'mass':
        faults.atMost(list, index, 'amount', quantity.kilograms, believable.kilograms);
        break;
      case 'volume':
        faults.atMost(list, index, 'amount', quantity.litres, believable.litres);
        break;
      case 'depth':
        faults.atMost(list, index, 'amount', quantity.millimetres, believable.depthMillimetres);
        break;
      case 'mown':
        faults.atMost(list, index, 'amount', quantity.areaM2, believable.areaM2);
        faults.atMost(
          list,
          index,
          'amount',
          quantity.heightMillimetres,
          believable.mownMillimetres,
        );
        break;
    }
  };

  garden.lawns.forEach((lawn, index) => {
    faults.atMost('lawns', index, 'areaM2', lawn.areaM2, believable.areaM2);
    faults.day(
      'lawns',
      index,
      lawn.seedHeadsSeen,
      lawn.treatment.date,
      lawn.treatment.beanTestPassed,
    );
  });
  garden.containers.forEach(({ litres, weighed }, index) => {
    faults.atMost('containers', index, 'litres', litres, believable.containerLitres);
    if (!weighed) return;
    faults.day('containers', index, weighed.date);
    const heaviest = litres * believable.kilogramsPerLitre;
    faults.atMost('containers', index, 'weighed', weighed.kilograms, heaviest);
  });
  garden.materials.forEach(({ basedOn }, index) => {
    faults.points('materials', index, known.hasMaterial(basedOn), `material "${basedOn}"`);
  });
  garden.stock.forEach((item, index) => {
    faults.points('stock', index, isMaterial(item.materialId), `material "${item.materialId}"`);
    if (item.amount) amount('stock', index, item.amount, ['volume', 'mass', 'containers']);
    faults.day('stock', index, item.date, item.treatment.date, item.treatment.beanTestPassed);
  });
  garden.beds.forEach((bed, index) => {
    faults.atMost('beds', index, 'areaM2', bed.areaM2, believable.areaM2);
    faults.day('beds', index, bed.knownSince);
  });
  garden.plantings.forEach((planting, index) => {
    faults.points('plantings', index, beds.has(planting.bedId), 'bed');
    faults.points('plantings', index, known.hasCrop(planting.cropId), `crop "${planting.cropId}"`);
    faults.day('plantings', index, planting.started, planting.firstHarvest, planting.cleared);
    for (const key of ['firstHarvest', 'cleared'] as const) {
      const date = planting[key];
      if (date !== null && date < planting.started) {
        faults.broken('plantings', index, key, 'it lies before the start');
      }
    }
  });
  garden.mowings.forEach((mowing, index) => {
    faults.points('mowings', index, lawns.has(mowing.lawnId), 'lawn');
    if (mowing.rest.to === 'heap') {
      faults.points('mowings', index, heaps.has(mowing.rest.stockId), 'heap');
    }
    amount('mowings', index, mowing.amount, ['volume', 'mass', 'containers', 'mown']);
    faults.day('mowings', index, mowing.date);
  });
  garden.applications.forEach(({ bedId, from, date, ...application }, index) => {
    const list = 'applications';
    faults.points(list, index, beds.has(bedId), 'bed');
    if (from.source === 'mowing') faults.points(list, index, mowings.has(from.mowingId), 'mowing');
    else if (from.source === 'stock') faults.points(list, index, stock.has(from.stockId), 'stock');
    else faults.points(list, index, isMaterial(from.materialId), `material "${from.materialId}"`);
    amount(list, index, application.amount, ['volume', 'mass', 'containers', 'depth']);
    faults.day(list, index, date);
  });
  garden.events.forEach((event, index) => {
    const list = 'events';
    if (event.kind !== 'rain gauge') faults.points(list, index, beds.has(event.bedId), 'bed');
    faults.day(list, index, event.date);
    if (event.kind === 'harvest') {
      const isThere = bedOfPlanting.get(event.plantingId) === event.bedId;
      faults.points(list, index, isThere, 'planting of that bed');
      faults.atMost(list, index, 'kilograms', event.kilograms, believable.kilograms);
    } else if (event.kind === 'water' || event.kind === 'rain gauge') {
      faults.atMost(list, index, 'millimetres', event.millimetres, believable.waterMillimetres);
    } else if (event.kind === 'soil test') {
      const { depthCentimetres, nitrateMgPerKg } = event;
      faults.atMost(list, index, 'depth', depthCentimetres, believable.testDepthCentimetres);
      faults.atMost(list, index, 'nitrate', nitrateMgPerKg ?? 0, believable.nitrateMgPerKg);
    }
  });
  faults.day('garden', null, garden.garden.today);
  weatherFaults(garden, faults);
  return faults.first;
}

/** Dates rise, each once. */
function risingDays(
  list: string,
  rows: readonly (readonly [string, ...unknown[]])[],
  faults: Faults,
): void {
  let before = '';
  rows.forEach(([date], index) => {
    if (date === before) faults.broken(list, index, null, `${date} is there twice`);
    else if (date < before) {
      faults.broken(list, index, null, `${date} comes after ${before}; days must rise`);
    }
    before = date;
  });
  faults.day(list, 0, rows[0]?.[0]);
  faults.day(list, rows.length - 1, rows.at(-1)?.[0]);
}

function lowBelowHigh(
  list: string,
  rows: readonly (readonly [string, number | null, number | null, ...unknown[]])[],
  faults: Faults,
): void {
  rows.forEach(([date, low, high], index) => {
    if (low === null || high === null || low <= high) return;
    const both = `${String(low)} and ${String(high)}`;
    faults.broken(list, index, null, `the lowest of ${date} lies above its highest (${both})`);
  });
}

/** Beyond these no instrument on a farm reads. */
const extraLimits: Readonly<Record<ExtraColumn, readonly [number, number]>> = {
  'wind m/s at 2 m': [0, 60],
  'humidity %': [0, 100],
  'highest humidity %': [0, 100],
  'lowest humidity %': [0, 100],
  'dew point deg C': [-70, 40],
  'sunshine h': [0, 24],
  'radiation MJ/m2': [0, 45],
};

function extraFaults({ columns, days }: ExtraWeather, faults: Faults): void {
  const list = 'weather, extra, days';
  if (new Set(columns).size < columns.length) {
    faults.broken('weather, extra, columns', null, null, 'a column is named twice');
  }
  risingDays(list, days, faults);
  days.forEach(([, ...values], index) => {
    if (values.length !== columns.length) {
      const wanted = String(columns.length + 1);
      faults.broken(list, index, null, `a day and a value for each column are wanted (${wanted})`);
      return;
    }
    columns.forEach((column, at) => {
      const value = values[at] ?? null;
      const [low, high] = extraLimits[column];
      if (value !== null && (value < low || value > high)) {
        const bounds = `${String(low)} to ${String(high)}`;
        faults.broken(list, index, column, `${bounds} can be, not ${String(value)}`);
      }
    });
  });
}

function weatherFaults(garden: Garden, faults: Faults): void {
  risingDays('weather, days', garden.weather.days, faults);
  lowBelowHigh('weather, days', garden.weather.days, faults);
  lowBelowHigh('weather, thermometer', garden.weather.thermometer ?? [], faults);
  if (garden.weather.extra) extraFaults(garden.weather.extra, faults);
  risingDays('weather, thermometer', garden.weather.thermometer ?? [], faults);
  const { minimumCelsius, maximumCelsius } = garden.weather.normals;
  minimumCelsius.forEach((lowest, month) => {
    if (lowest > (maximumCelsius[month] ?? lowest)) {
      faults.broken('weather, normals, month', month, null, 'the lowest lies above the highest');
    }
  });
}

/** Keeps the first fault that is told. Lists are counted from 1, as in the schema's faults. */
class Faults {
  first: Fault | null = null;

  private tell(fault: Fault): void {
    this.first ??= fault;
  }

  broken(list: string, index: number | null, key: string | null, what: string): void {
    if (this.first) return;
    const place = index === null ? list : `${list} ${String(index + 1)}`;
    this.tell({ kind: 'broken', where: key === null ? place : `${place}, ${key}`, what });
  }

  points(list: string, index: number, isThere: boolean, what: string): void {
    if (!isThere) this.tell({ kind: 'dangling', where: `${list} ${String(index + 1)}`, what });
  }

  ids(list: string, things: readonly { readonly id: string }[]): Set<string> {
    const seen = new Set<string>();
    things.forEach(({ id }, index) => {
      if (seen.has(id)) this.broken(list, index, 'id', 'an id is used twice');
      seen.add(id);
    });
    return seen;
  }

  atMost(list: string, index: number, key: string, value: number, most: number): void {
    if (value > most) {
      this.broken(list, index, key, `more than can be believed (${String(value)})`);
    }
  }

  day(list: string, index: number | null, ...dates: readonly (string | null | undefined)[]): void {
    for (const date of dates) {
      if (typeof date !== 'string') continue;
      const day = dayOf(date);
      if (day < firstDay || day > lastDay) {
        const { firstYear, lastYear } = believable;
        this.broken(
          list,
          index,
          null,
          `a year from ${String(firstYear)} to ${String(lastYear)} is wanted`,
        );
      }
    }
  }
}
