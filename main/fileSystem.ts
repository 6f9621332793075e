import { open, realpath, rename, rm, stat } from 'node:fs/promises';

/** One open file, as far as writing needs it. */
export interface WritableFile {
  /** May write fewer bytes than asked for, and says how many. */
  write(bytes: Uint8Array, offset: number, length: number): Promise<{ bytesWritten: number }>;
  chmod(mode: number): Promise<void>;
  sync(): Promise<void>;
  close(): Promise<void>;
}

/** The calls that saving makes, so that a test can watch their order and make any of them fail. */
export interface FileSystem {
  readonly platform: NodeJS.Platform;
  /** Exclusive: fails when the path exists. */
  create(path: string, mode: number): Promise<WritableFile>;
  openFolder(path: string): Promise<Pick<WritableFile, 'sync' | 'close'>>;
  rename(from: string, to: string): Promise<void>;
  remove(path: string): Promise<void>;
  /** The file behind a chain of links. */
  realpath(path: string): Promise<string>;
  mode(path: string): Promise<number>;
  wait(milliseconds: number): Promise<void>;
}

export const realFileSystem: FileSystem = {
  platform: process.platform,
  create: (path, mode) => open(path, 'wx', mode),
  openFolder: (path) => open(path, 'r'),
  rename,
  remove: (path) => rm(path, { force: true }),
  realpath,
  mode: async (path) => (await stat(path)).mode,
  wait: (milliseconds) => new Promise((resolve) => void setTimeout(resolve, milliseconds)),
};
