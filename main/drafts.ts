import { randomUUID } from 'node:crypto';
import { readFile, readdir, rm } from 'node:fs/promises';
import { uptime } from 'node:os';
import { join } from 'node:path';
import { z } from 'zod';
import type { Result } from '../app/core/result';
import type { HostError, Restored } from '../app/host/contract';
import { writeWhole } from './files';

const shape = z.strictObject({
  run: z.number().int(),
  id: z.string().nullable(),
  name: z.string(),
  text: z.string(),
  savedAt: z.number(),
});
type Draft = z.infer<typeof shape>;

/** Work in hand, kept outside the document. Each run of the program has its own, so that two never overwrite each other. */
export interface Drafts {
  keep(draft: Pick<Restored, 'id' | 'name' | 'text'>): Promise<Result<null, HostError>>;
  /** this run's own, otherwise the newest that a run left which has ended; null when there is none */
  restore(): Promise<Restored | null>;
  /** drops this run's own and the one it restored */
  discard(): Promise<void>;
}

export interface Surroundings {
  readonly run: number;
  readonly now: () => number;
  readonly isAlive: (run: number) => boolean;
  /** milliseconds since 1970 */
  readonly bootedAt: () => number;
}

const surroundings: Surroundings = {
  run: process.pid,
  now: () => Date.now(),
  isAlive: (run) => {
    try {
      process.kill(run, 0);
      return true;
    } catch (error) {
      // Alive, but somebody else's.
      return error instanceof Error && 'code' in error && error.code === 'EPERM';
    }
  },
  bootedAt: () => Date.now() - uptime() * 1000,
};

export function createDrafts(
  dataFolder: string,
  { run, now, isAlive, bootedAt }: Surroundings = surroundings,
): Drafts {
  const own = `draft-${randomUUID()}.json`;
  let restored: string | null = null;

  /**
   * Our own number on another file is an earlier run's, which has ended; so is any number once the
   * machine was started anew, whoever has it now.
   */
  const isLeftBehind = (draft: Draft) =>
    draft.run === run || !isAlive(draft.run) || draft.savedAt < bootedAt();

  async function all(): Promise<{ file: string; draft: Draft }[]> {
    const names = await readdir(dataFolder).catch(() => []);
    const found = await Promise.all(
      names
        .filter((file) => /^draft-[\w-]+\.json$/.test(file))
        .map(async (file) => {
          try {
            const draft = shape.parse(JSON.parse(await readFile(join(dataFolder, file), 'utf8')));
            return [{ file, draft }];
          } catch {
            return [];
          }
        }),
    );
    return found.flat().toSorted((a, b) => b.draft.savedAt - a.draft.savedAt);
  }

  const drop = async (file: string | null) => {
    if (file) await rm(join(dataFolder, file), { force: true });
  };

  return {
    async keep({ id, name, text }) {
      const draft: Draft = { run, id, name, text, savedAt: now() };
      const kept = await writeWhole(join(dataFolder, own), JSON.stringify(draft), name, {
        mode: 0o600,
      });
      // What was restored lives on in the new draft.
      if (kept.ok) {
        await drop(restored);
        restored = null;
      }
      return kept;
    },
    async restore() {
      const found = await all();
      const mine = found.find(({ file }) => file === own || file === restored);
      const chosen = mine ?? found.find(({ draft }) => isLeftBehind(draft));
      if (!chosen) return null;
      if (chosen.file !== own) restored = chosen.file;
      const { id, name, text, savedAt } = chosen.draft;
      return { id, name, text, savedAt };
    },
    async discard() {
      await drop(own);
      await drop(restored);
      restored = null;
    },
  };
}
