import { drawAmount, likelyRange } from '../core/drawRow';
import { seeded, seedFrom } from '../core/random';
import { flowKinds } from '../core/season/flows';
import type { BedEvent, BedSeason, LayerInput } from '../core/season/input';
import type { SeasonResult } from '../core/season/result';
import { sameDayEventOrder } from '../core/season/sameDay';
import { seasonsOf } from '../core/season/seasonAccounts';
import { seasonStart, yearOf, type DayNumber } from '../core/days';
import { cropMineralsOf, greenTopsNitrogen } from '../tables/cropMinerals';
import { materialMinerals } from '../tables/materialMinerals';
import type { Row } from '../tables/shapes';
import { broughtLayers, leftAfter, lyingOnEve } from './broughtLayers';
import { cropById } from './cropValues';
import { materialById, materialFrom } from './materialValues';
import { rowOrMeasured } from './measuredRow';
import type { Garden, OwnMaterial } from './schema';

export type Mineral = 'phosphorus' | 'potassium';
export const minerals: readonly Mineral[] = ['phosphorus', 'potassium'];

/** 10, 50 and 90 % of what it may be. */
export interface MineralRange {
  readonly low: number;
  readonly typical: number;
  readonly high: number;
}
export type MineralFigures = Readonly<Record<Mineral, MineralRange>>;

/** One kind of thing that came in or went out; g of the element per m2 of bed. */
export interface MineralLine {
  readonly way: 'laid' | 'raked off' | 'picked' | 'tops taken away';
  /** of the material or the crop */
  readonly name: string;
  readonly figures: MineralFigures;
  /** its contents in per cent of dry matter, of a pick in grams a kilogram as picked: what its figures rest on */
  readonly contents: Readonly<Record<Mineral, Row>>;
  /** a number behind it was not read anywhere */
  readonly isRecalled: boolean;
}

export interface MineralSeason {
  /** the year it starts in */
  readonly year: number;
  readonly firstDay: DayNumber;
  readonly lastDay: DayNumber;
  /** no day of it lies ahead */
  readonly isOver: boolean;
  readonly lines: readonly MineralLine[];
  /** what came in less what went out */
  readonly balance: MineralFigures;
}

const draws = 300;
const perCent = 1 / 100;
const gramsPerKilogram = 1000;

/** Draws of a row under a name: the same name always gets the same draws, so that sums hold together. */
function drawsOf(row: Row, name: string): Float64Array {
  const random = seeded(seedFrom(...Array.from(name, (letter) => letter.codePointAt(0) ?? 0)));
  return Float64Array.from({ length: draws }, () => drawAmount(row, random));
}

const unread = (row: Row): boolean => ['memory', 'mixed', 'assumed'].includes(row.standing);

interface Content {
  readonly row: Readonly<Record<Mineral, Row>>;
  readonly name: string;
}

/** Contents of a material in per cent of dry matter; what a laboratory said of one's own goes first. */
function contentOf(materialRowId: string, own?: OwnMaterial): Content {
  const rows = materialMinerals(materialRowId);
  const measured = (row: Row, value: number | undefined): Row =>
    value === undefined ? row : rowOrMeasured(row, value);
  return {
    // all clippings are drawn as one stuff
    name: own?.id ?? (materialRowId.startsWith('grass-') ? 'clippings' : materialRowId),
    row: {
      phosphorus: measured(rows.phosphorusPercent, own?.phosphorusPercent),
      potassium: measured(rows.potassiumPercent, own?.potassiumPercent),
    },
  };
}

interface Moved {
  readonly way: MineralLine['way'];
  readonly name: string;
  readonly day: DayNumber;
  readonly content: Content;
  /** g of the element for each unit of the row */
  readonly amount: number;
}

/** Every laying, raking, pick and clearing of a run, as amounts of something whose contents have rows. */
function movements(garden: Garden, input: BedSeason, result: SeasonResult): readonly Moved[] {
  const moved: Moved[] = [];
  const applications = new Map(garden.applications.map((one) => [one.id, one]));
  const whatOf = (layer: LayerInput): { readonly name: string; readonly content: Content } => {
    const application = applications.get(layer.id);
    const material = application
      ? materialFrom(garden, application.from)
      : materialById(garden, layer.materialId);
    const isGrass = material.row.id.startsWith('grass-');
    return {
      name: isGrass ? 'Clippings' : material.name,
      content: contentOf(
        material.row.id,
        garden.materials.find(({ id }) => id === material.id),
      ),
    };
  };
  const rake = (layer: LayerInput, dryKgPerM2: number, events: readonly BedEvent[]): void => {
    if (layer.placement !== 'laid') return;
    for (const [at, event] of events.entries()) {
      if (event.kind !== 'rake off' || event.day <= layer.day || event.day > result.today) continue;
      // what was raked off or dug in earlier that day is no longer there
      const earlier = events.slice(0, at).filter(({ day }) => day === event.day);
      const lay = lyingOnEve(result, layer.id, event.day - result.firstDay) * leftAfter(earlier);
      const amount = -dryKgPerM2 * gramsPerKilogram * perCent * event.share * lay;
      if (amount < 0) moved.push({ way: 'raked off', day: event.day, amount, ...whatOf(layer) });
    }
  };
  const done = input.events.toSorted(sameDayEventOrder);
  for (const layer of input.layers) {
    if (layer.day > result.today) continue;
    const amount = layer.dryKgPerM2 * gramsPerKilogram * perCent;
    moved.push({ way: 'laid', day: layer.day, amount, ...whatOf(layer) });
    rake(layer, layer.dryKgPerM2, done);
  }
  // laid on the ground and counted there; raked off here
  for (const { layer, dryKgPerM2, morning } of broughtLayers(input))
    rake(layer, dryKgPerM2, [...morning.toSorted(sameDayEventOrder), ...done]);
  for (const whole of result.plantings) {
    const planting = withoutBrought(whole);
    const typed = garden.plantings.find(({ id }) => id === planting.id);
    const crop = typed && cropById(garden, typed.cropId);
    if (!crop) continue;
    const picks: readonly {
      day: DayNumber;
      harvested: number;
      removed: number;
    }[] = [
      ...(planting.earlierSeasons ?? []).map(({ lastDay, harvested, removed }) => ({
        day: lastDay,
        harvested,
        removed,
      })),
      {
        day: Math.min(result.today, planting.clearingDay ?? result.today),
        harvested: pickedBy(result, planting),
        removed: pickedBy(result, planting) + topsTaken(result, planting),
      },
    ];
    const rows = cropMineralsOf(crop.tableId);
    for (const { day, harvested, removed } of picks) {
      const kilograms = harvested / crop.removedPerKilogram.typical;
      if (kilograms > 0)
        moved.push({
          way: 'picked',
          name: crop.name,
          day,
          content: { name: `pick of ${crop.tableId}`, row: rows },
          amount: -kilograms,
        });
      // tops: green matter with the nitrogen that the run says went with them
      const topsDry =
        (removed - harvested) / (greenTopsNitrogen.typical * perCent * gramsPerKilogram);
      if (topsDry > 1e-9)
        moved.push({
          way: 'tops taken away',
          name: crop.name,
          day,
          content: contentOf('green tops'),
          amount: -topsDry * gramsPerKilogram * perCent,
        });
    }
  }
  return moved;
}

/** A planting with what it gave in this bed alone: what it gave before is in the account of that ground. */
function withoutBrought(planting: SeasonResult['plantings'][number]) {
  const { brought, harvested, removed } = planting;
  return brought
    ? {
        ...planting,
        harvested: harvested - brought.harvested,
        removed: removed - brought.removed,
      }
    : planting;
}

/**
 * What a planting gave up to today; a pick that lies ahead is none yet. The bed's picks day by day are
 * one flow, so of several plantings each is credited with its share of those in its own time.
 */
function pickedBy(result: SeasonResult, planting: SeasonResult['plantings'][number]): number {
  const end = planting.clearingDay ?? result.firstDay + result.days - 1;
  if (end <= result.today || planting.harvested === 0) return planting.harvested;
  const between = (from: DayNumber, to: DayNumber): number =>
    flowKinds.reduce(
      (sum, kind, index) =>
        kind.to === 'harvested'
          ? sum +
            (result.flows[index]
              ?.subarray(Math.max(0, from - result.firstDay), to + 1 - result.firstDay)
              .reduce((all, grams) => all + grams, 0) ?? 0)
          : sum,
      0,
    );
  const whole = between(planting.startDay, end);
  return whole > 0 ? (planting.harvested * between(planting.startDay, result.today)) / whole : 0;
}

const topsTaken = (
  { today }: SeasonResult,
  { clearingDay, removed, harvested }: SeasonResult['plantings'][number],
): number => (clearingDay !== null && clearingDay <= today ? removed - harvested : 0);

/**
 * Phosphorus and potassium of a bed, season by season: in with what is laid, out with what is
 * raked off, picked or cleared away. Neither is followed in the soil: nothing is said of how much a
 * crop finds there, which only a test tells.
 *
 * @param input,result the bed's run of `today`
 * @returns g of the element per m2 of bed, up to today, in 10-50-90 % of draws of the contents; one per season, earliest
 *   first. What a raking takes is the share of dry matter still lying, as if the minerals rotted in step.
 * @source mass balance; contents from `tables/offerMinerals`, `lawns`, `cropMinerals`, most of them recalled
 */
export function mineralAccount(
  garden: Garden,
  input: BedSeason,
  result: SeasonResult,
): readonly MineralSeason[] {
  const moved = movements(garden, input, result);
  const columns = new Map<Row, Float64Array>();
  const column = (row: Row, name: string): Float64Array => {
    const known = columns.get(row) ?? drawsOf(row, name);
    columns.set(row, known);
    return known;
  };
  const figuresOf = (some: readonly Moved[]): MineralFigures => {
    const range = (mineral: Mineral): MineralRange => {
      const sums = new Float64Array(draws);
      for (const { content, amount } of some) {
        const values = column(content.row[mineral], `${mineral} of ${content.name}`);
        for (let draw = 0; draw < draws; draw++) sums[draw]! += amount * values[draw]!;
      }
      return some.length === 0 ? { low: 0, typical: 0, high: 0 } : likelyRange(Array.from(sums));
    };
    return { phosphorus: range('phosphorus'), potassium: range('potassium') };
  };
  const { seasonStartMonth } = garden.garden;
  return seasonsOf(input).map(({ firstDay, lastDay }) => {
    const here = moved.filter(({ day }) => day >= firstDay && day <= lastDay);
    const kinds = new Map<string, Moved[]>();
    for (const one of here) {
      const key = `${one.way} ${one.name}`;
      kinds.set(key, [...(kinds.get(key) ?? []), one]);
    }
    return {
      year: yearOf(seasonStart(firstDay, seasonStartMonth)),
      firstDay,
      lastDay,
      isOver: lastDay <= result.today,
      lines: Array.from(kinds.values(), (same): MineralLine => {
        const [first] = same as [Moved, ...Moved[]];
        return {
          way: first.way,
          name: first.name,
          figures: figuresOf(same),
          contents: first.content.row,
          isRecalled: minerals.some((mineral) => unread(first.content.row[mineral])),
        };
      }),
      balance: figuresOf(here),
    };
  });
}
