/** A stream of numbers in [0, 1) that depends on its seed alone. */
export type Random = () => number;

/** Mulberry32 (public domain, T. Ettinger 2017): small, fast, 32-bit state; enough for weather and draws. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** One seed from several whole numbers (FNV-1a over their bytes), so that nearby inputs give unlike streams. */
export function seedFrom(...parts: readonly number[]): number {
  let hash = 0x811c9dc5;
  for (const part of parts) {
    let rest = part | 0;
    for (let byte = 0; byte < 4; byte++) {
      hash = Math.imul(hash ^ (rest & 0xff), 0x01000193);
      rest >>= 8;
    }
  }
  return hash >>> 0;
}

/** A standard normal number (Box-Muller). */
export function normal(random: Random): number {
  const radius = Math.sqrt(-2 * Math.log(1 - random()));
  return radius * Math.cos(2 * Math.PI * random());
}
