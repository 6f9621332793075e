import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { Result } from '../app/core/result';
import { colourSchemes, type HostError, type ColourScheme } from '../app/host/contract';
import { writeWhole } from './files';

const shape = z.strictObject({ scheme: z.enum(colourSchemes) });
const file = (dataFolder: string) => join(dataFolder, 'colourScheme.json');

/** Light or dark as somebody chose it; as the computer has it where nobody did, or what is kept is damaged. */
export async function readColourScheme(dataFolder: string): Promise<ColourScheme> {
  try {
    return shape.parse(JSON.parse(await readFile(file(dataFolder), 'utf8'))).scheme;
  } catch {
    return 'system';
  }
}

export const keepColourScheme = (
  dataFolder: string,
  scheme: ColourScheme,
): Promise<Result<null, HostError>> =>
  writeWhole(file(dataFolder), JSON.stringify({ scheme }), 'colour scheme', { mode: 0o600 });

/**
 * The page with the chosen scheme in its first tag, so that its very first frame has it; as it is where
 * the computer's own holds.
 */
export const withColourScheme = (html: string, scheme: ColourScheme): string =>
  scheme === 'system' ? html : html.replace('<html ', `<html data-theme="${scheme}" `);
