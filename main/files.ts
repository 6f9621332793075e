import { randomUUID } from 'node:crypto';
import { open } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { failure, success, type Result } from '../app/core/result';
import type { HostError } from '../app/host/contract';
import { realFileSystem, type FileSystem, type WritableFile } from './fileSystem';
import { codeOf, HeldFile, hostErrorOf, ReadOnlyFile } from './hostErrors';

/** Waits between tries while another program (a virus scanner, an indexer) holds the target; some five seconds in all. */
const renameWaits = [25, 50, 100, 200, 400, 800, 1600, 2000];
const heldCodes = new Set(['EPERM', 'EACCES', 'EBUSY']);
/** Where the system has no flush for folders it says one of these. */
const unsyncableFolder = {
  win32: new Set(['EPERM', 'EACCES', 'EISDIR', 'EINVAL', 'ENOTSUP']),
  others: new Set(['EINVAL', 'ENOTSUP']),
};

export interface WriteOptions {
  /** permission bits of a file that does not exist yet; an existing file keeps its own */
  readonly mode?: number;
  readonly fileSystem?: FileSystem;
}

/**
 * Replaces a file whole: everything is written beside it, flushed to the disk, and only then renamed
 * over it. After a crash at any moment the path holds the old content or the new.
 *
 * @param path  followed to its target where it is a link; its folder must exist
 * @param name  what the person calls it, for the error
 * @returns any file kind of HostError; the old file is then as it was, and nothing is left beside it
 *   except where another program held the file for good, when the error names what is kept
 */
export const writeWhole = (
  path: string,
  text: string,
  name: string,
  options: WriteOptions = {},
): Promise<Result<null, HostError>> => writeBytes(path, Buffer.from(text, 'utf8'), name, options);

/** As `writeWhole`, for what is no text. */
export async function writeBytes(
  path: string,
  bytes: Uint8Array,
  name: string,
  { mode = 0o666, fileSystem = realFileSystem }: WriteOptions = {},
): Promise<Result<null, HostError>> {
  try {
    const target = await existing(path, fileSystem);
    if (target && (target.mode & 0o222) === 0) throw new ReadOnlyFile();
    const place = target?.path ?? path;
    try {
      await writeBeside(place, bytes, target?.mode ?? null, mode, fileSystem);
    } catch (error) {
      // After a failed flush the system may call the same pages clean, so a second flush of the same
      // file would prove nothing: the one retry starts from a new file.
      if (!(error instanceof FlushFailure) || error.isHopeless) throw error;
      await writeBeside(place, bytes, target?.mode ?? null, mode, fileSystem);
    }
    return success(null);
  } catch (error) {
    return failure(hostErrorOf(error instanceof FlushFailure ? error.cause : error, name));
  }
}

class FlushFailure extends Error {
  constructor(override readonly cause: unknown) {
    super('flush failed');
  }
  get isHopeless(): boolean {
    return ['ENOSPC', 'EDQUOT', 'EROFS'].includes(codeOf(this.cause) ?? '');
  }
}

async function existing(
  path: string,
  fileSystem: FileSystem,
): Promise<{ path: string; mode: number } | null> {
  try {
    const whole = await fileSystem.realpath(path);
    return { path: whole, mode: (await fileSystem.mode(whole)) & 0o7777 };
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

async function writeBeside(
  target: string,
  bytes: Uint8Array,
  keptMode: number | null,
  newMode: number,
  fileSystem: FileSystem,
): Promise<void> {
  const folder = dirname(target);
  const beside = join(folder, `.mowings-${randomUUID()}.part`);
  const file = await fileSystem.create(beside, keptMode ?? newMode);
  try {
    try {
      // The mode given at creation is cut by the process's mask.
      if (keptMode !== null && fileSystem.platform !== 'win32') await file.chmod(keptMode);
      await writeAll(file, bytes);
      await file.sync().catch((error: unknown) => {
        throw new FlushFailure(error);
      });
    } catch (error) {
      await file.close().catch(() => undefined);
      throw error;
    }
    await file.close();
    await renameOver(beside, target, fileSystem);
  } catch (error) {
    if (!(error instanceof HeldFile)) await fileSystem.remove(beside).catch(() => undefined);
    throw error;
  }
  await syncFolder(folder, fileSystem);
}

async function writeAll(file: WritableFile, bytes: Uint8Array): Promise<void> {
  for (let written = 0; written < bytes.length;) {
    const { bytesWritten } = await file.write(bytes, written, bytes.length - written);
    if (bytesWritten <= 0) throw new Error('The system took no more bytes and gave no reason.');
    written += bytesWritten;
  }
}

async function renameOver(from: string, to: string, fileSystem: FileSystem): Promise<void> {
  const waits = fileSystem.platform === 'win32' ? renameWaits : [];
  for (let attempt = 0; ; attempt++) {
    try {
      await fileSystem.rename(from, to);
      return;
    } catch (error) {
      if (fileSystem.platform !== 'win32' || !heldCodes.has(codeOf(error) ?? '')) throw error;
      const wait = waits[attempt];
      if (wait === undefined) throw new HeldFile(basename(from));
      await fileSystem.wait(wait);
    }
  }
}

async function syncFolder(folder: string, fileSystem: FileSystem): Promise<void> {
  const tolerated =
    fileSystem.platform === 'win32' ? unsyncableFolder.win32 : unsyncableFolder.others;
  try {
    const handle = await fileSystem.openFolder(folder);
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  } catch (error) {
    // A folder that may be written but not listed cannot be opened; the file itself is safe.
    if (!tolerated.has(codeOf(error) ?? '') && codeOf(error) !== 'EACCES') throw error;
  }
}

export interface ReadFile {
  readonly text: string;
  /** milliseconds since 1970 */
  readonly savedAt: number;
}

/**
 * Reads a whole text file of at most `limitBytes`.
 *
 * @returns `too-large`; `failed` when it is a folder, a device or not UTF-8; or what the system says.
 *   What the text means is not looked at.
 */
export async function readWhole(
  path: string,
  name: string,
  limitBytes: number,
): Promise<Result<ReadFile, HostError>> {
  try {
    const file = await open(path, 'r');
    try {
      const about = await file.stat();
      if (!about.isFile()) return failure({ kind: 'failed', reason: 'That is not a file.' });
      if (about.size > limitBytes) return failure({ kind: 'too-large', name, limitBytes });
      const bytes = await file.readFile();
      // Lossy decoding would write the damage back at the next save.
      const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
      return success({ text, savedAt: about.mtimeMs });
    } finally {
      await file.close();
    }
  } catch (error) {
    if (codeOf(error) === 'ERR_ENCODING_INVALID_ENCODED_DATA')
      return failure({ kind: 'failed', reason: 'The file is not text in UTF-8.' });
    return failure(hostErrorOf(error, name));
  }
}
