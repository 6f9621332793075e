import { readFileSync, statSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { failure, success, type Result } from '../../app/core/result';
import { characterLimit, parseGarden } from '../../app/document/parse';
import type { ParseFailure } from '../../app/document/failures';
import type { Garden } from '../../app/document/schema';

export type FileFailure =
  | { readonly kind: 'not-found'; readonly name: string }
  | { readonly kind: 'no-permission'; readonly name: string }
  | { readonly kind: 'a-folder'; readonly name: string }
  | { readonly kind: 'unreadable'; readonly name: string; readonly reason: string }
  | { readonly kind: 'refused'; readonly name: string; readonly why: ParseFailure };

/** Reads a garden through the same door as the window does. Nothing is written. */
export function readGarden(file: string, folder: string): Result<Garden, FileFailure> {
  const path = resolve(folder, file);
  const name = basename(path);
  let text: string;
  try {
    const found = statSync(path);
    if (found.isDirectory()) return failure({ kind: 'a-folder', name });
    if (found.size > characterLimit * 4)
      return failure({
        kind: 'refused',
        name,
        why: { kind: 'too-large', limit: characterLimit, unit: 'characters' },
      });
    text = readFileSync(path, 'utf8');
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code ?? 'unknown';
    if (code === 'ENOENT' || code === 'ENOTDIR') return failure({ kind: 'not-found', name });
    if (code === 'EACCES' || code === 'EPERM') return failure({ kind: 'no-permission', name });
    return failure({ kind: 'unreadable', name, reason: code });
  }
  const garden = parseGarden(text);
  return garden.ok ? success(garden.value) : failure({ kind: 'refused', name, why: garden.error });
}
