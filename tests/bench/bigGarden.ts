import {
  dayFromParts,
  dayOf,
  partsFromDay,
  textFromDay,
  type DayNumber,
} from '../../app/core/days';
import { seeded, type Random } from '../../app/core/random';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Application, Garden, GardenEvent, Mowing, Planting } from '../../app/document/schema';
import { bundledRecord } from '../../app/tables/bundledRecords';

export interface GardenSize {
  readonly beds: number;
  /** years of log, the last one up to `today`: the year that is judged */
  readonly years: number;
  readonly seed: number;
  /** a day of 2013, the middle of June unless said */
  readonly today?: string;
  /** the log begins so many years before `today` to the day, not on a New Year's Day */
  readonly toTheDay?: boolean;
}

const lastYear = 2013;

interface Turn {
  readonly cropId: string;
  readonly how: Planting['how'];
  /** month and day */
  readonly started: readonly [number, number];
  readonly cleared: readonly [number, number];
  readonly tops: Planting['tops'];
  /** kilograms per m2 and day of the month of each pick that is written down */
  readonly picks?: readonly (readonly [number, number, number])[];
}

/** What a bed bears in a year; a bed goes from one to the next. */
const rotation: readonly (readonly Turn[])[] = [
  [
    { cropId: 'pea', how: 'sown', started: [3, 24], cleared: [6, 12], tops: 'left' },
    { cropId: 'kale', how: 'planted', started: [7, 5], cleared: [12, 5], tops: 'taken away' },
  ],
  [
    {
      cropId: 'tomato',
      how: 'planted',
      started: [5, 15],
      cleared: [10, 10],
      tops: 'taken away',
      picks: [
        [8, 1, 0.9],
        [8, 15, 1.4],
        [9, 1, 1.2],
      ],
    },
  ],
  [
    {
      cropId: 'lettuce_leaf',
      how: 'planted',
      started: [4, 14],
      cleared: [6, 5],
      tops: 'pulled with roots',
      picks: [
        [5, 12, 0.4],
        [5, 26, 0.7],
      ],
    },
    { cropId: 'snap_bean_bush', how: 'sown', started: [6, 8], cleared: [9, 10], tops: 'dug in' },
    { cropId: 'spinach', how: 'sown', started: [9, 14], cleared: [12, 10], tops: 'left' },
  ],
  [{ cropId: 'potato', how: 'planted', started: [4, 18], cleared: [8, 20], tops: 'left' }],
  [{ cropId: 'winter_squash', how: 'sown', started: [5, 25], cleared: [10, 1], tops: 'left' }],
];

/** The daily record that comes with the program, its years in an order of the seed's own. */
function weatherDays(years: number, today: DayNumber, random: Random): Garden['weather']['days'] {
  const record = bundledRecord('new-york');
  if (!record) throw new Error('The record of New York is gone');
  const recordFirst = dayOf(record.firstDay);
  const whole = Array.from(
    { length: Math.floor(record.minimumCelsius.length / 365.25) },
    (_, year) => partsFromDay(recordFirst).year + year,
  );
  const days: Garden['weather']['days'] = [];
  for (let year = lastYear + 1 - years; year <= lastYear; year++) {
    const from = whole[Math.floor(random() * whole.length)]!;
    for (let day = dayFromParts(year, 1, 1); day <= today && day < dayFromParts(year + 1, 1, 1);) {
      const { month, dayOfMonth } = partsFromDay(day);
      // where the record's year has no 29 February, its 28th stands in
      const isLeapDay = month === 2 && dayOfMonth === 29;
      const at = dayFromParts(from, month, isLeapDay ? 28 : dayOfMonth) - recordFirst;
      days.push([
        textFromDay(day),
        record.minimumCelsius[at]!,
        record.maximumCelsius[at]!,
        record.rainMillimetres[at]!,
      ]);
      day += 1;
    }
  }
  return days;
}

const litres = (amount: number): Application['amount'] => ({
  text: `${amount} L`,
  quantity: { kind: 'volume', litres: amount },
  certainty: 'plain',
});

/** Everything that was done on one bed, and the mowings are laid in turn. */
class BedBook {
  readonly plantings: Planting[] = [];
  readonly applications: Application[] = [];
  readonly events: GardenEvent[] = [];
  private readonly bedId: string;
  private readonly since: DayNumber;
  private readonly today: DayNumber;

  constructor(bedId: string, since: DayNumber, today: DayNumber) {
    this.bedId = bedId;
    this.since = since;
    this.today = today;
  }

  private isLogged(day: DayNumber): boolean {
    return day >= this.since && day <= this.today;
  }

  bear(year: number, turns: readonly Turn[], areaM2: number): void {
    for (const { cropId, how, started, cleared, tops, picks } of turns) {
      const id = `planting-${this.bedId}-${year}-${cropId}`;
      const start = dayFromParts(year, ...started);
      if (start < this.since) continue;
      const end = dayFromParts(year, ...cleared);
      this.plantings.push({
        id,
        bedId: this.bedId,
        cropId,
        share: 1,
        started: textFromDay(start),
        how,
        firstHarvest: null,
        cleared: end <= this.today ? textFromDay(end) : null,
        tops,
        wanted: 'usual',
        nodules: 'not looked',
      });
      for (const [month, dayOfMonth, kilogramsPerM2] of picks ?? []) {
        const day = dayFromParts(year, month, dayOfMonth);
        if (!this.isLogged(day)) continue;
        this.events.push({
          id: `pick-${id}-${day}`,
          date: textFromDay(day),
          kind: 'harvest',
          bedId: this.bedId,
          plantingId: id,
          kilograms: kilogramsPerM2 * areaM2,
        });
      }
    }
  }

  lay(day: DayNumber, from: Application['from'], amount: number, more: Partial<Application>): void {
    if (!this.isLogged(day)) return;
    this.applications.push({
      id: `layer-${this.bedId}-${day}-${this.applications.length}`,
      date: textFromDay(day),
      bedId: this.bedId,
      from,
      amount: litres(amount),
      condition: 'just cut',
      wetness: 'dry',
      placement: 'laid',
      mixtureId: null,
      passedStops: [],
      ...more,
    });
  }

  happen(
    day: DayNumber,
    event:
      { kind: 'water'; millimetres: number } | { kind: 'dig cover in' | 'rake off'; share: number },
  ): void {
    if (!this.isLogged(day)) return;
    const id = `event-${this.bedId}-${day}-${event.kind}`;
    this.events.push({ id, date: textFromDay(day), bedId: this.bedId, ...event });
  }
}

/** What is brought to a bed in a year besides clippings. */
function feed(book: BedBook, year: number, at: number): void {
  const day = (month: number, dayOfMonth: number) => dayFromParts(year, month, dayOfMonth);
  const bought = (materialId: string) => ({ source: 'elsewhere', materialId }) as const;
  if ((year + at) % 2 === 0) book.lay(day(3, 10), bought('compost-garden'), 60, {});
  if ((year + at) % 3 === 0)
    book.lay(day(6, 10), bought('straw-wheat'), 120, { condition: 'crisp' });
  if ((year + at) % 5 === 0)
    book.lay(day(3, 12), bought('manure-cow-farmyard'), 25, { placement: 'dug' });
  book.lay(day(10, 20), bought('leaves-mixed-shredded'), 90, { condition: 'crisp' });
  if ((year + at) % 4 === 0) book.happen(day(3, 8), { kind: 'dig cover in', share: 0.8 });
  if ((year + at) % 4 === 2) book.happen(day(4, 2), { kind: 'rake off', share: 0.5 });
  for (let week = 0; week < 8; week++)
    book.happen(day(6, 3) + 7 * week, { kind: 'water', millimetres: 12 });
}

/**
 * A made-up garden of any size, every bed with the same kind of log: about ten layers, two plantings
 * and a dozen entries a year. Beds are known since the first of the years.
 *
 * @returns a garden that went through the door every file goes through
 */
export function bigGarden({
  beds,
  years,
  seed,
  today: date = '2013-06-15',
  toTheDay = false,
}: GardenSize): Garden {
  const parsed = parseGarden(sampleText);
  if (!parsed.ok) throw new Error('The sample does not open');
  const sample = parsed.value;
  const today = dayOf(date);
  const random = seeded(seed);
  const firstYear = lastYear + (toTheDay ? 0 : 1) - years;
  const { month, dayOfMonth } = partsFromDay(today);
  const since = toTheDay
    ? dayFromParts(firstYear, month, dayOfMonth)
    : dayFromParts(firstYear, 1, 1);
  const knownSince = textFromDay(since);
  const textures = ['loam', 'sandy loam', 'silt loam', 'clay loam'] as const;
  const ownBeds = Array.from({ length: beds }, (_, at): Garden['beds'][number] => ({
    ...sample.beds[0]!,
    id: `bed-${at}`,
    name: `Bed ${at + 1}`,
    areaM2: 4 + Math.round(40 * random()) / 10,
    texture: textures[at % textures.length]!,
    organicMatterPercent: Math.round(20 + 40 * random()) / 10,
    watering: at % 6 === 5 ? 'kept moist' : 'as logged',
    knownSince,
  }));
  const books = ownBeds.map(({ id }) => new BedBook(id, since, today));
  const mowings: Mowing[] = [];
  let next = 0;
  for (let year = firstYear; year <= lastYear; year++) {
    books.forEach((book, at) => {
      book.bear(year, rotation[(at + year) % rotation.length]!, ownBeds[at]!.areaM2);
      feed(book, year, at);
    });
    for (let week = 0; week < 28; week++) {
      const day = dayFromParts(year, 4, 13) + 7 * week;
      if (day > today) break;
      if (day < since) continue;
      const id = `mowing-${textFromDay(day)}`;
      mowings.push({
        ...sample.mowings[0]!,
        id,
        date: textFromDay(day),
        amount: litres(1000 * beds),
        wetness: (['dry', 'damp', 'dry', 'soaked'] as const)[week % 4]!,
        kind: (['lean', null, 'fed', null] as const)[week % 4]!,
        rest: { to: 'lawn' },
      });
      // a quarter of the beds each week
      for (let laid = 0; laid < beds / 4; laid++, next++) {
        const amount = 15 + Math.round(30 * random());
        books[next % beds]!.lay(day, { source: 'mowing', mowingId: id }, amount, {});
      }
    }
  }
  const garden: Garden = {
    ...sample,
    garden: {
      ...sample.garden,
      name: `${beds} beds, ${years} years`,
      isSample: false,
      today: date,
    },
    beds: ownBeds,
    mowings,
    plantings: books.flatMap((book) => book.plantings),
    applications: books.flatMap((book) => book.applications),
    events: books.flatMap((book) => book.events),
    weather: {
      ...sample.weather,
      bundledRecord: null,
      days: weatherDays(lastYear + 1 - firstYear, today, random),
    },
  };
  const checked = parseGarden(JSON.stringify(garden));
  if (!checked.ok) throw new Error(`The made-up garden is refused: ${JSON.stringify(checked)}`);
  return checked.value;
}
