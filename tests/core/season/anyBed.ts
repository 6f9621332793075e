import fc from 'fast-check';
import { type Random, seeded } from '../../../app/core/random';
import type { Coefficients } from '../../../app/core/season/coefficients';
import type {
  BedEvent,
  BedSeason,
  Condition,
  CropInput,
  LayerInput,
  Placement,
  PlantingInput,
  SeasonWeather,
  TopsFate,
} from '../../../app/core/season/input';
import { coefficientRows, typicalCoefficients } from '../../../app/tables/coefficients';
import {
  bareBed,
  beanCrop,
  clippings,
  compost,
  firstOf2013,
  fruitingCrop,
  newYorkNormals,
  normalDegreeDays,
  steadyWeather,
  straw,
} from './handMadeBed';

/** Runs and seed of every law here; a law that fails prints its path besides. */
export const lawRuns = { numRuns: 1000, seed: 20_130_520 } as const;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const whole = (min: number, max: number) => fc.integer({ min, max });

interface Climate {
  readonly seed: number;
  readonly yearMean: number;
  readonly yearSwing: number;
  readonly daySwing: number;
  readonly rainChance: number;
  readonly rainMean: number;
  readonly drySpellStart: number;
  readonly drySpellDays: number;
}

const anyClimate: fc.Arbitrary<Climate> = fc.record({
  seed: whole(1, 1_000_000),
  yearMean: between(2, 22),
  yearSwing: between(2, 16),
  daySwing: between(3, 16),
  rainChance: between(0.05, 0.5),
  rainMean: between(2, 18),
  drySpellStart: whole(60, 200),
  drySpellDays: fc.constantFrom(0, 0, 30, 60),
});

function weatherOf(climate: Climate, days: number): SeasonWeather {
  const random: Random = seeded(climate.seed);
  const weather = steadyWeather(days, 0, 0);
  let odd = 0;
  for (let day = 0; day < days; day++) {
    odd = 0.7 * odd + 3 * (random() - 0.5);
    const season = -Math.cos((2 * Math.PI * (day - 15)) / 365);
    const mean = climate.yearMean + climate.yearSwing * season + odd;
    const swing = (climate.daySwing / 2) * (0.3 + random());
    weather.minimumCelsius[day] = mean - swing;
    weather.maximumCelsius[day] = mean + swing;
    const rains = random() < climate.rainChance;
    const amount = -climate.rainMean * Math.log(1 - random());
    const sinceSpell = day - climate.drySpellStart;
    const isDry = sinceSpell >= 0 && sinceSpell < climate.drySpellDays;
    weather.rainMillimetres[day] = rains && !isDry ? amount : 0;
  }
  return weather;
}

interface PlantingPlan {
  readonly isLegume: boolean;
  readonly need: number;
  readonly harvestShare: number;
  readonly start: number;
  readonly usualDays: number;
  readonly stays: number;
  readonly isCleared: boolean;
  readonly share: number;
  readonly rootDepth: number;
  readonly rootShare: number;
  readonly topsFate: TopsFate;
  readonly isGreenResidue: boolean;
  readonly nodulesSeen: boolean | null;
}

const anyPlanting: fc.Arbitrary<PlantingPlan> = fc.record({
  isLegume: fc.boolean(),
  need: between(1, 35),
  harvestShare: between(0, 0.95),
  start: whole(-20, 280),
  usualDays: whole(35, 200),
  stays: between(0.3, 1.3),
  isCleared: fc.boolean(),
  share: fc.constantFrom(0.25, 0.5, 0.5, 1, 1),
  rootDepth: fc.constantFrom(200, 280, 450, 700, 1200),
  rootShare: between(0.05, 0.6),
  topsFate: fc.constantFrom<TopsFate>('left', 'dug in', 'taken away', 'pulled with roots'),
  isGreenResidue: fc.boolean(),
  nodulesSeen: fc.constantFrom(null, null, true, false),
});

function plantingOf(plan: PlantingPlan, at: number): PlantingInput {
  const base = plan.isLegume ? beanCrop : fruitingCrop;
  const crop: CropInput = {
    ...base,
    need: plan.need,
    harvestNitrogen: plan.harvestShare * plan.need,
    usualDays: plan.usualDays,
    firstHarvestDays: Math.round(0.6 * plan.usualDays),
    flowerDays: Math.round(0.4 * plan.usualDays),
    fullRootDepth: plan.rootDepth,
    rootShare: plan.rootShare,
    residueIsGreen: plan.isGreenResidue,
  };
  const startDay = firstOf2013 + plan.start;
  const clearingDay = startDay + Math.max(1, Math.round(plan.stays * plan.usualDays));
  return {
    id: `planting ${at}`,
    crop,
    share: plan.share,
    startDay,
    sown: true,
    firstHarvestDay: startDay + crop.firstHarvestDays,
    usualEndDay: startDay + crop.usualDays,
    clearingDay: plan.isCleared ? clearingDay : null,
    cleared: plan.isCleared,
    topsFate: plan.topsFate,
    normalDegreeDays: normalDegreeDays(newYorkNormals, startDay, crop.usualDays, crop.baseCelsius),
    nodulesSeen: plan.nodulesSeen,
  };
}

interface LayerPlan {
  readonly material: 'clippings' | 'weeds' | 'straw' | 'leaves' | 'compost' | 'meal' | 'wood';
  readonly day: number;
  readonly placement: Placement;
  readonly condition: Condition;
  readonly millimetres: number;
  readonly richness: number;
}

const anyLayer: fc.Arbitrary<LayerPlan> = fc.record({
  material: fc.constantFrom<LayerPlan['material']>(
    'clippings',
    'clippings',
    'weeds',
    'straw',
    'leaves',
    'compost',
    'meal',
    'wood',
  ),
  day: whole(0, 340),
  placement: fc.constantFrom<Placement>('laid', 'laid', 'hoed', 'dug'),
  condition: fc.constantFrom<Condition>('just cut', 'limp', 'crisp'),
  millimetres: between(0.5, 120),
  richness: between(0.4, 1.5),
});

function layerOf(plan: LayerPlan, at: number): LayerInput {
  const day = firstOf2013 + plan.day;
  const make = {
    compost,
    meal: compost,
    straw,
    leaves: straw,
    wood: straw,
    clippings,
    weeds: clippings,
  }[plan.material];
  const thickness = plan.material === 'meal' ? plan.millimetres / 100 : plan.millimetres;
  const plain = make(day, thickness);
  return {
    ...plain,
    id: `layer ${at}`,
    materialId: plan.material,
    placement: plan.placement,
    condition: plan.condition,
    nitrogen: plain.nitrogen * plan.richness * (plan.material === 'meal' ? 6 : 1),
    ...(plan.material === 'wood' ? { materialClass: 'inert' as const } : {}),
    ...(plan.material === 'meal' ? { mineralShare: 0.02, slowShare: 0.7 } : {}),
  };
}

type EventPlan = {
  readonly kind: BedEvent['kind'];
  readonly day: number;
  readonly size: number;
  readonly planting: number;
};

const anyEvent: fc.Arbitrary<EventPlan> = fc.record({
  kind: fc.constantFrom<BedEvent['kind']>('water', 'dig cover in', 'rake off', 'harvest'),
  day: whole(0, 340),
  size: between(0.05, 1),
  planting: whole(0, 2),
});

function eventOf(plan: EventPlan): BedEvent {
  const day = firstOf2013 + plan.day;
  if (plan.kind === 'water') return { kind: 'water', day, depth: 60 * plan.size };
  if (plan.kind === 'harvest')
    return {
      kind: 'harvest',
      day,
      plantingId: `planting ${plan.planting}`,
      kilogramsPerM2: 5 * plan.size,
    };
  // A whole share now and then: the last gram of a pool is where rounding shows.
  const share = plan.size > 0.7 ? 1 : plan.size;
  return { kind: plan.kind, day, share };
}

interface BedPlan {
  readonly climate: Climate;
  readonly days: number;
  readonly turn: number | null;
  readonly fieldCapacity: number;
  readonly wiltingShare: number;
  readonly bulkDensity: number;
  readonly organicMatter: number;
  readonly nitrate: number | null;
  readonly keptMoist: boolean;
  readonly drawn: number | null;
  readonly todayShare: number;
  readonly plantings: readonly PlantingPlan[];
  readonly layers: readonly LayerPlan[];
  readonly events: readonly EventPlan[];
}

/** Each coefficient at its low, likely or high value, by a seed. */
function drawnCoefficients(seed: number): Coefficients {
  const random = seeded(seed);
  return Object.fromEntries(
    Object.entries(coefficientRows).map(([name, row]) => {
      const pick = random();
      return [name, pick < 1 / 3 ? row.low : pick < 2 / 3 ? row.typical : row.high];
    }),
  ) as unknown as Coefficients;
}

function bedOf(plan: BedPlan): BedSeason {
  const { days } = plan;
  return bareBed({
    firstDay: firstOf2013,
    lastDay: firstOf2013 + days - 1,
    today: firstOf2013 + Math.floor(plan.todayShare * (days - 1)),
    seasonStarts: plan.turn === null ? [] : [firstOf2013 + plan.turn],
    weather: weatherOf(plan.climate, days),
    soil: {
      fieldCapacity: plan.fieldCapacity,
      wiltingPoint: plan.wiltingShare * plan.fieldCapacity,
      bulkDensityKgPerL: plan.bulkDensity,
      organicMatterPercent: plan.organicMatter,
      startingMineralTop: plan.nitrate,
    },
    keptMoist: plan.keptMoist,
    coefficients: plan.drawn === null ? typicalCoefficients() : drawnCoefficients(plan.drawn),
    plantings: plan.plantings.map(plantingOf),
    layers: plan.layers.map(layerOf),
    events: plan.events.map(eventOf),
  });
}

/** Beds that a gardener might have, and some that nobody should: every part of the day is asked for. */
export const anyBed: fc.Arbitrary<BedSeason> = fc
  .record<BedPlan>({
    climate: anyClimate,
    days: whole(200, 400),
    turn: fc.option(whole(100, 390)),
    fieldCapacity: between(0.12, 0.42),
    wiltingShare: between(0.25, 0.6),
    bulkDensity: between(0.7, 1.6),
    organicMatter: fc.oneof(between(0.2, 1), between(1, 5), between(5, 20)),
    nitrate: fc.option(between(0, 25)),
    keptMoist: fc.boolean(),
    drawn: fc.option(whole(1, 1_000_000)),
    todayShare: between(0, 1),
    plantings: fc.array(anyPlanting, { maxLength: 3 }),
    layers: fc.array(anyLayer, { maxLength: 10 }),
    events: fc.array(anyEvent, { maxLength: 6 }),
  })
  .map(bedOf);

/** What a generated bed exercises; a generator that stops asking for one of these fails its law. */
const features: Readonly<Record<string, (bed: BedSeason) => boolean>> = {
  'browns dug or hoed into poor soil (under 1 %)': (bed) =>
    bed.soil.organicMatterPercent < 1 &&
    bed.layers.some((one) => one.materialClass === 'mature' && one.placement !== 'laid'),
  'two plantings standing at once': (bed) =>
    bed.plantings.some((one, at) =>
      bed.plantings.some(
        (other, where) =>
          where > at &&
          one.startDay <= (other.clearingDay ?? bed.lastDay) &&
          other.startDay <= (one.clearingDay ?? bed.lastDay),
      ),
    ),
  'shares over the whole bed': (bed) => bed.plantings.reduce((sum, one) => sum + one.share, 0) > 1,
  'dry spell of 30 days or more': (bed) => longestDrySpell(bed) >= 30,
  'frost (a day of -1 C or less)': (bed) =>
    bed.weather.minimumCelsius.some(
      (low, day) => (low + bed.weather.maximumCelsius[day]!) / 2 <= -1,
    ),
  'roots that stay in the top 30 cm': (bed) =>
    bed.plantings.some((one) => one.crop.fullRootDepth <= 300),
  'roots below 30 cm': (bed) => bed.plantings.some((one) => one.crop.fullRootDepth > 300),
  legumes: (bed) => bed.plantings.some((one) => one.crop.legume !== null),
  'legumes without nodules': (bed) =>
    bed.plantings.some((one) => one.crop.legume !== null && one.nodulesSeen === false),
  'compost or meal': (bed) => bed.layers.some((one) => one.materialClass === 'slow'),
  'wood on top': (bed) =>
    bed.layers.some((one) => one.materialClass === 'inert' && one.placement === 'laid'),
  'hoed in': (bed) => bed.layers.some((one) => one.placement === 'hoed'),
  'cover dug in': (bed) => bed.events.some((one) => one.kind === 'dig cover in'),
  'cover raked off': (bed) => bed.events.some((one) => one.kind === 'rake off'),
  'watering logged': (bed) => bed.events.some((one) => one.kind === 'water'),
  'kept moist': (bed) => bed.keptMoist && bed.plantings.length > 0,
  'picking logged': (bed) =>
    bed.events.some(
      (one) => one.kind === 'harvest' && bed.plantings.some((other) => other.id === one.plantingId),
    ),
  'tops left lying': (bed) =>
    bed.plantings.some((one) => one.topsFate === 'left' && one.clearingDay !== null),
  'season boundary': (bed) => bed.seasonStarts.some((day) => day <= bed.lastDay),
};

function longestDrySpell(bed: BedSeason): number {
  let longest = 0;
  let now = 0;
  for (const rain of bed.weather.rainMillimetres) {
    now = rain > 0 ? 0 : now + 1;
    longest = Math.max(longest, now);
  }
  return longest;
}

/** Counts what the beds of a law exercised, says it, and tells which feature was never asked for. */
export class Coverage {
  private readonly counts = new Map<string, number>(
    [...Object.keys(features), 'browns that starved for nitrogen'].map((name) => [name, 0]),
  );
  private beds = 0;

  count(bed: BedSeason, isStarved: boolean): void {
    this.beds += 1;
    const add = (name: string): void => void this.counts.set(name, this.counts.get(name)! + 1);
    for (const [name, has] of Object.entries(features)) if (has(bed)) add(name);
    if (isStarved) add('browns that starved for nitrogen');
  }

  report(): string {
    const lines = [...this.counts].map(([name, count]) => `${String(count).padStart(5)}  ${name}`);
    return [`seed ${lawRuns.seed}, ${this.beds} beds, of them with`, ...lines].join('\n');
  }

  fewest(): number {
    return Math.min(...this.counts.values());
  }
}
