import type { Holding } from '../../core/season/ledger';
import type { LedgerPlace } from '../../core/season/ledgerStreams';
import { gramsOf, type Sinks, type Springs, type WayEnd } from './ends';
import { throughput } from './places';

/** Where everything lies from the top down, in px. */
export interface Levels {
  readonly pxPerGram: number;
  readonly ground: number;
  readonly height: number;
  /** upper edge of a place */
  readonly top: (holding: Holding) => number;
  readonly middle: (holding: Holding) => number;
  /** the middle of an end, by side and key */
  readonly end: (side: 'left' | 'right', key: string) => number;
}

/** the least room of a word at either edge */
const slot = 21;
/** room above a place for its name */
const headRoom = 22;
const leastPlace = 14;
const margin = 10;
const air = 8;
/** what all that passes through the taller side of the drawing comes to */
const tallest = 270;

const under: readonly Holding[] = [
  'in young humus',
  'rotting in the soil',
  'in compost',
  'in the soil itself',
];

/**
 * Cover and plants stand on the ground; what is under it lies one beneath the other, each with a
 * level of its own, so that no stream runs through a place it does not touch.
 */
export function levelsOf(places: readonly LedgerPlace[], springs: Springs, sinks: Sinks): Levels {
  const named = (holding: Holding) => places.find((place) => place.holding === holding);
  const through = (holding: Holding): number => {
    const place = named(holding);
    return place ? throughput(place) : 0;
  };
  const atRight = through('ready in the soil') + through('in the crop');
  const all = places.reduce((sum, place) => sum + throughput(place), 0);
  const most = Math.max(all - atRight, atRight);
  const pxPerGram = most > 0 ? tallest / most : 0;

  const roomOf = (end: WayEnd): number => Math.max(slot, gramsOf(end) * pxPerGram + 4);
  const bundle = (ends: readonly WayEnd[]): number =>
    ends.reduce((sum, end) => sum + roomOf(end), 0);
  const placeRoom = (holding: Holding, right: readonly WayEnd[] = []): number =>
    Math.max(
      through(holding) * pxPerGram,
      bundle(springs.beside(holding)),
      bundle(right),
      leastPlace,
    );

  const tops = new Map<Holding, number>();
  const middle = (holding: Holding): number =>
    (tops.get(holding) ?? 0) + (through(holding) * pxPerGram) / 2;
  const put = (holding: Holding, from: number, room: number) => {
    tops.set(holding, from + (room - through(holding) * pxPerGram) / 2);
  };

  const lanes = bundle(sinks.high) + bundle(springs.high);
  const coverRoom = placeRoom('in the cover');
  const cropRoom = placeRoom('in the crop', sinks.beside);
  const above = Math.max(
    named('in the cover') ? coverRoom + headRoom : 0,
    named('in the crop') ? cropRoom + headRoom : 0,
    2 * slot,
  );
  const ground = margin + lanes + above + air;
  put('in the cover', ground - air - coverRoom, coverRoom);
  put('in the crop', ground - air - cropRoom, cropRoom);

  let depth = ground + air;
  for (const holding of under) {
    if (!named(holding)) continue;
    const room = placeRoom(holding);
    put(holding, depth + headRoom, room);
    depth += headRoom + room;
  }
  const lowest = depth + air;
  if (springs.low.length > 0) depth = lowest + bundle(springs.low);
  const readyRoom = named('ready in the soil') ? placeRoom('ready in the soil', sinks.low) : 0;
  const spare = Math.max(0, depth - ground - air - headRoom - readyRoom);
  put('ready in the soil', ground + air + headRoom + spare / 2, readyRoom);

  const ends = new Map<string, number>();
  const stack = (side: 'left' | 'right', items: readonly WayEnd[], from: number) => {
    let y = from;
    for (const item of items) {
      ends.set(`${side} ${item.key}`, y + roomOf(item) / 2);
      y += roomOf(item);
    }
    return y;
  };
  const fan = (side: 'left' | 'right', items: readonly WayEnd[], at: number, from: number) =>
    stack(side, items, Math.max(from, at - bundle(items) / 2));
  stack('right', sinks.high, margin);
  stack('left', springs.high, margin + bundle(sinks.high));
  for (const { holding } of places) fan('left', springs.beside(holding), middle(holding), margin);
  stack('left', springs.low, lowest);
  fan('right', sinks.beside, middle('in the crop'), margin + bundle(sinks.high));
  const end = fan('right', sinks.low, middle('ready in the soil'), ground + air);
  return {
    pxPerGram,
    ground,
    height: Math.max(depth, ground + air + headRoom + readyRoom, end) + margin,
    top: (holding) => tops.get(holding) ?? ground,
    middle,
    end: (side, key) => ends.get(`${side} ${key}`) ?? ground,
  };
}
