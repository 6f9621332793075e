import { randomUUID } from 'node:crypto';
import { readFile, stat } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import type { RecentFile } from '../app/host/contract';
import { nameOfPath } from './fileNames';
import { writeWhole } from './files';

const longestList = 10;

const listShape = z.array(
  z.strictObject({ id: z.uuid(), path: z.string().min(1), savedAt: z.number() }),
);
type Known = z.infer<typeof listShape>[number];

/** Gardens by opaque id. The page holds ids; paths never leave this side. */
export interface KnownGardens {
  /** null when this id was never given out, or is long forgotten */
  pathOf(id: string): Promise<string | null>;
  /** gives the path an id (its old one where it has one) without listing it as used */
  adopt(path: string): Promise<string>;
  /** adopts the path and puts it on top of the recent list */
  remember(path: string, savedAt: number): Promise<string>;
  recent(): Promise<RecentFile[]>;
}

export function createKnownGardens(dataFolder: string): KnownGardens {
  const listPath = join(dataFolder, 'recent.json');
  /** Everything given out in this run, also what has dropped off the list since. */
  const given = new Map<string, string>();

  async function list(): Promise<Known[]> {
    try {
      return listShape.parse(JSON.parse(await readFile(listPath, 'utf8')));
    } catch {
      // A list that is missing or damaged costs a convenience, not a garden.
      return [];
    }
  }

  async function idFor(path: string): Promise<string> {
    const listed = (await list()).find((known) => known.path === path)?.id;
    const id = listed ?? [...given].find(([, other]) => other === path)?.[0] ?? randomUUID();
    given.set(id, path);
    return id;
  }

  return {
    async pathOf(id) {
      return given.get(id) ?? (await list()).find((known) => known.id === id)?.path ?? null;
    },
    adopt: (path) => idFor(resolve(path)),
    async remember(path, savedAt) {
      const whole = resolve(path);
      const id = await idFor(whole);
      const others = (await list()).filter((known) => known.path !== whole);
      const next = [{ id, path: whole, savedAt }, ...others].slice(0, longestList);
      // The garden itself is safe by now; a list that could not be written is not worth an alarm.
      await writeWhole(listPath, JSON.stringify(next, null, 2), 'recent', { mode: 0o600 });
      return id;
    },
    async recent() {
      return Promise.all(
        (await list()).map(async ({ id, path, savedAt }) => {
          const now = await stat(path).catch(() => null);
          return {
            id,
            name: nameOfPath(path),
            savedAt: now?.mtimeMs ?? savedAt,
            missing: now === null,
          };
        }),
      );
    },
  };
}
