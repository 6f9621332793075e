import type { HostError } from '../app/host/contract';

/** Another program held the target for too long; the new content stays beside it under this name. */
export class HeldFile extends Error {
  constructor(readonly keptAs: string) {
    super('the file is held by another program');
  }
}

/** The file exists and is marked as not to be written. */
export class ReadOnlyFile extends Error {}

/**
 * What went wrong with a file, in the kinds that the page has words for.
 *
 * @param name  the garden's name, never a path
 */
export function hostErrorOf(error: unknown, name: string): HostError {
  if (error instanceof ReadOnlyFile) return { kind: 'read-only', name };
  if (error instanceof HeldFile)
    return {
      kind: 'failed',
      reason: `Another program is holding the file. What you saved lies beside it as ${error.keptAs}.`,
    };
  const code = codeOf(error);
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return { kind: 'not-found', name };
    case 'EACCES':
    case 'EPERM':
      return { kind: 'no-permission', name };
    case 'ENOSPC':
    case 'EDQUOT':
      return { kind: 'disk-full', name };
    case 'EROFS':
      return { kind: 'read-only', name };
    case 'ENAMETOOLONG':
      return { kind: 'bad-name', name };
    default:
      return {
        kind: 'failed',
        reason: code
          ? `The system answered ${code}.`
          : error instanceof Error
            ? error.message
            : 'Unknown.',
      };
  }
}

/** The system's own code of a failed call, such as ENOENT; undefined for anything else. */
export function codeOf(error: unknown): string | undefined {
  return error instanceof Error && 'code' in error && typeof error.code === 'string'
    ? error.code
    : undefined;
}
