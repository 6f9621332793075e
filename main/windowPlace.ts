import { writeFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Rectangle } from 'electron';
import { z } from 'zod';

const shape = z.strictObject({
  x: z.number().int(),
  y: z.number().int(),
  width: z.number().int().positive(),
  height: z.number().int().positive(),
  maximised: z.boolean(),
});

/** Where the window stood and how large it was, unmaximised. */
export type WindowPlace = z.infer<typeof shape>;

export const smallest = { width: 480, height: 400 };
const usual = { width: 1280, height: 860 };
/** So much of the title bar must lie on a screen for the window to be caught hold of. */
const gripPixels = 80;

/**
 * Options for the window: the last place where it still lies on a screen, otherwise only the last
 * size, cut to the largest screen there is.
 *
 * @param screens  the usable areas, the main screen first
 */
export function placeOptions(
  last: WindowPlace | null,
  screens: readonly Rectangle[],
): { width: number; height: number; x?: number; y?: number } {
  const width = last?.width ?? usual.width;
  const height = last?.height ?? usual.height;
  const home = last && screens.find((screen) => isWithinReach(last, screen));
  if (home) return { x: last.x, y: last.y, width, height };
  const main = screens[0];
  return {
    width: Math.max(smallest.width, Math.min(width, main?.width ?? width)),
    height: Math.max(smallest.height, Math.min(height, main?.height ?? height)),
  };
}

function isWithinReach(place: WindowPlace, screen: Rectangle): boolean {
  const shared =
    Math.min(place.x + place.width, screen.x + screen.width) - Math.max(place.x, screen.x);
  return (
    shared >= Math.min(gripPixels, place.width) &&
    place.y >= screen.y &&
    place.y <= screen.y + screen.height - gripPixels
  );
}

const file = (dataFolder: string) => join(dataFolder, 'window.json');

/** null when there is none or it is damaged: a window in the usual place is no loss. */
export async function readWindowPlace(dataFolder: string): Promise<WindowPlace | null> {
  try {
    return shape.parse(JSON.parse(await readFile(file(dataFolder), 'utf8')));
  } catch {
    return null;
  }
}

/** Written at once, without the care that gardens get: the program is about to end. */
export function keepWindowPlace(dataFolder: string, place: WindowPlace): void {
  try {
    writeFileSync(file(dataFolder), JSON.stringify(place), { mode: 0o600 });
  } catch {
    // The next start uses the usual place.
  }
}
