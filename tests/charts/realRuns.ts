import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dayOf } from '../../app/core/days';
import type { BedSeason } from '../../app/core/season/input';
import type { SeasonResult } from '../../app/core/season/result';
import { runSeason } from '../../app/core/season/season';
import { parseGarden } from '../../app/document/parse';
import { bedSeason } from '../../app/document/seasonInput';

const folder = join(import.meta.dirname, '../../assets/gardens');
const files = [
  'sample.mowings',
  ...readdirSync(join(folder, 'checks')).map((name) => `checks/${name}`),
].filter((name) => name.endsWith('.mowings'));

export interface RealRun {
  readonly name: string;
  readonly input: BedSeason;
  readonly result: SeasonResult;
}

/** Every bed of the sample and of the check gardens, run by the engine: results as the window draws them. */
export const realRuns = (): readonly RealRun[] =>
  files.flatMap((file) => {
    const parsed = parseGarden(readFileSync(join(folder, file), 'utf8'));
    if (!parsed.ok) throw new Error(`${file} is no garden: ${parsed.error.kind}`);
    const garden = parsed.value;
    return garden.beds.map((bed) => {
      const input = bedSeason(garden, bed.id, dayOf(garden.garden.today ?? '2013-06-15'));
      return { name: `${file} ${bed.name}`, input, result: runSeason(input) };
    });
  });
