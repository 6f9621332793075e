import type { Read, Write } from './gardenSlice';
import type { Surroundings } from './surroundings';

/** A part of the store that comes with the place that needs it, and goes with it. */
export interface LateDoor {
  /** garden or day are other than before */
  changed(): void;
  /** the place was left */
  close(): void;
}

export type MakeLateDoor<Door extends LateDoor> = (
  read: Read,
  write: Write,
  surroundings: Surroundings,
) => Door;

export interface LateDoors {
  /** opens a door; from then on it hears of changes, until it is closed */
  openDoor<Door extends LateDoor>(make: MakeLateDoor<Door>): Door;
}
