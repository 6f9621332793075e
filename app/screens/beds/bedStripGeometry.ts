import type { CoverLayerShown, Stuff } from '../../charts/cover/data';
import type { BedResults } from '../../store/contract';

/** What the strip shows: so much soil, and so much above it, in mm. */
const soilMillimetres = 300;
const aboveMillimetres = 200;
/** One dot stands for so many g of ready nitrogen in a m2 of the top 30 cm. */
export const gramsPerDot = 0.5;
const clumpCount = 10;
const plantCount = 5;
/** Height of a plant at the end of its progress, in mm of the drawing's scale. */
const grownMillimetres = 170;

export interface Clump {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly stuff: Stuff;
}

export interface BedStripGeometry {
  /** y of the ground */
  readonly surface: number;
  /** what lies there, by layer; broken into clumps where it does not hide all of the ground */
  readonly clumps: readonly Clump[];
  readonly dots: readonly { readonly x: number; readonly y: number }[];
  readonly plants: readonly { readonly x: number; readonly top: number; readonly foot: number }[];
}

/** Where things stand in the little cut through a bed, in the drawing's own units. */
export function bedStripGeometry(
  { season }: BedResults,
  layers: readonly CoverLayerShown[],
  width: number,
  height: number,
): BedStripGeometry {
  const index = season.today - season.firstDay;
  const at = (series: Float64Array): number => series[index] ?? 0;
  const perMillimetre = height / (soilMillimetres + aboveMillimetres);
  const surface = aboveMillimetres * perMillimetre;
  const hidden = Math.min(1, at(season.coverFraction));
  const pitch = width / clumpCount;
  const isWhole = hidden > 0.95;

  const clumps: Clump[] = [];
  let y = surface;
  const inOrder = [...layers].sort((one, other) => one.day - other.day);
  for (const layer of inOrder) {
    const result = season.layers.find(({ id }) => id === layer.id);
    const high = result ? at(result.depth) * perMillimetre : 0;
    if (high <= 0) continue;
    y -= high;
    if (isWhole) clumps.push({ x: 0, y, width, height: high, stuff: layer.stuff });
    else
      for (let clump = 0; clump < clumpCount; clump += 1)
        clumps.push({
          x: clump * pitch + (pitch * (1 - hidden)) / 2,
          y,
          width: pitch * hidden,
          height: high,
          stuff: layer.stuff,
        });
  }

  const step = 8;
  const perRow = Math.floor((width - 8) / step);
  const rows = Math.floor((height - surface - 8) / step);
  const count = Math.round(Math.max(0, at(season.pools.mineralTop)) / gramsPerDot);
  const dots = Array.from({ length: Math.min(count, perRow * rows) }, (_, dot) => ({
    x: 8 + (dot % perRow) * step,
    y: surface + 8 + Math.floor(dot / perRow) * step,
  }));

  const standing = season.plantings.filter(
    ({ startDay, clearingDay }) =>
      startDay <= season.today && (clearingDay === null || clearingDay > season.today),
  );
  const progress = Math.max(0, ...standing.map((planting) => at(planting.progress)));
  const tall = Math.max(6, progress * grownMillimetres * perMillimetre);
  const plants =
    standing.length === 0
      ? []
      : Array.from({ length: plantCount }, (_, plant) => ({
          x: (width / plantCount) * (plant + 0.5),
          top: y - tall,
          foot: y,
        }));
  return { surface, clumps, dots, plants };
}
