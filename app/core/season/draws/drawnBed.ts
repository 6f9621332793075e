import type { Coefficients } from '../coefficients';
import type { BedSeason, CropInput, LayerInput, LegumeInput, SoilProperties } from '../input';
import { ownBed } from '../ownInput';
import { newWatch } from '../seasonWatch';
import type { Draws } from './columns';
import type { SeasonSpread } from './spread';

type Writable<Thing> = { -readonly [Key in keyof Thing]: Thing[Key] };

/** A bed of its own whose uncertain numbers are written anew for each draw. */
export interface DrawnBed {
  readonly input: BedSeason;
  readonly layers: readonly LayerInput[];
  /** makes `input` the season of a draw, 0 - count-1 */
  write(draw: number): void;
}

interface LayerColumns {
  readonly from: LayerInput;
  readonly to: Writable<LayerInput>;
  readonly mass: Float64Array;
  readonly nitrogen: Float64Array;
  readonly acting: Float64Array | null;
  readonly ready: Float64Array | null;
  readonly slow: Float64Array | null;
  readonly typicalNitrogen: number;
}

/**
 * Carbon of a material stays; its nitrogen and so its C:N are drawn together (model 1). The C:N it
 * rots by is drawn besides, as carbon that acts more or less than it weighs.
 */
function writeLayer({ from, to, ...columns }: LayerColumns, draw: number): void {
  const mass = columns.mass[draw]!;
  const nitrogen = columns.nitrogen[draw]! / columns.typicalNitrogen;
  to.freshKgPerM2 = from.freshKgPerM2 * mass;
  to.dryKgPerM2 = from.dryKgPerM2 * mass;
  to.nitrogen = from.nitrogen * mass * nitrogen;
  to.carbon = from.carbon * mass * (columns.acting ? columns.acting[draw]! : 1);
  if (columns.ready) to.mineralShare = columns.ready[draw]!;
  if (columns.slow) to.slowShare = columns.slow[draw]!;
}

interface FixingColumns {
  readonly from: LegumeInput;
  readonly to: Writable<LegumeInput>;
  readonly usual: Float64Array;
  readonly limit: Float64Array;
}

/**
 * Nodules that give little in poor soil cannot rise to the row's high share either: it falls with
 * them in proportion (assumed). Those that give more than it rise to their own.
 */
function writeFixing({ from, to, usual, limit }: FixingColumns, draw: number): void {
  const own = usual[draw]!;
  const most = from.highShareFixed * Math.min(1, own / from.usualShareFixed);
  to.usualShareFixed = own;
  to.highShareFixed = Math.max(most, own);
  to.leafyLimit = from.leafyLimit * limit[draw]!;
  to.poddingLimit = from.poddingLimit * limit[draw]!;
}

/**
 * @param input at typical values; it stays as it is. Its weather is kept: the draws have their own,
 *   save for the days of the ground it was made of, which are over
 * @returns a bed that is the typical one until a draw is written into it
 */
export function drawnBed(input: BedSeason, spread: SeasonSpread, draws: Draws): DrawnBed {
  const drawn = ownBed(input);
  const coefficients: Writable<Coefficients> = drawn.coefficients;
  const soil: Writable<SoilProperties> = drawn.soil;
  const { layers } = drawn;
  const crops: readonly Writable<CropInput>[] = drawn.plantings.map(({ crop }) => crop);

  const coefficientColumns = spread.coefficients.map((quantity) => ({
    key: quantity.key,
    column: draws.column(quantity),
  }));
  const matter = spread.organicMatter && draws.column(spread.organicMatter);
  const layerColumns = input.layers.flatMap((from, at): LayerColumns[] => {
    const own = spread.layers[from.id];
    if (!own) return [];
    const { mass, nitrogen, acting, ready, slow } = own;
    return [
      {
        from,
        to: layers[at]!,
        mass: draws.column(mass),
        nitrogen: draws.column(nitrogen),
        acting: acting ? draws.column(acting) : null,
        ready: ready ? draws.column(ready) : null,
        slow: slow ? draws.column(slow) : null,
        typicalNitrogen: nitrogen.typical,
      },
    ];
  });
  const needColumns = input.plantings.flatMap(({ id, crop }, at) => {
    const own = spread.needs[id];
    return own ? [{ from: crop, to: crops[at]!, column: draws.column(own) }] : [];
  });
  const fixingColumns = input.plantings.flatMap(({ id, crop }, at): FixingColumns[] => {
    const own = spread.fixing?.[id];
    if (!own || !crop.legume) return [];
    const to = { ...crop.legume };
    crops[at]!.legume = to;
    const [usual, limit] = [draws.column(own.usual), draws.column(own.limit)];
    return [{ from: crop.legume, to, usual, limit }];
  });

  // the bed's past is as uncertain as its present, in the same draws
  const grounds = input.ground?.map((ground) => drawnBed(ground.input, spread, draws));
  const withGround: Writable<BedSeason> = drawn;
  withGround.ground = input.ground?.map((one, at) => {
    const ground = grounds![at]!.input;
    const looked = one.found?.looks.map(({ day }) => day - ground.firstDay) ?? [];
    return {
      ...one,
      input: ground,
      watch: one.found && newWatch(ground, [...new Set(looked)]),
    };
  });

  return {
    input: drawn,
    layers,
    write(draw) {
      for (const each of grounds ?? []) each.write(draw);
      for (const { key, column } of coefficientColumns) coefficients[key] = column[draw]!;
      if (matter) soil.organicMatterPercent = input.soil.organicMatterPercent * matter[draw]!;
      for (const layer of layerColumns) writeLayer(layer, draw);
      for (const { from, to, column } of needColumns) {
        to.need = from.need * column[draw]!;
        to.harvestNitrogen = from.harvestNitrogen * column[draw]!;
      }
      for (const legume of fixingColumns) writeFixing(legume, draw);
    },
  };
}
