import { failure, success, type Result } from '../core/result';
import type { ParseFailure } from './failures';
import { firstJsonFault, lineAndColumn, nestingDepth } from './jsonPosition';
import { migrate, migrations, type Migration } from './migrations/chain';
import { findFault } from './references';
import { formatName, gardenSchema, schemaVersion, type Garden } from './schema';
import { placeIn } from './thingNames';
import { phraseOf } from './wherePhrases';

/** No garden comes near: 200 beds, 20 000 layers and a century of weather are about 12 million. */
export const characterLimit = 16_000_000;
export const levelLimit = 24;
/** entries of the longest list the schema knows, and of all lists together */
const longestList = 40_000;
const mostValues = 2_000_000;

/**
 * Reads the text of a garden file. Every door uses it: menu, drop, command line, kept work.
 *
 * In order: bounded size and nesting, JSON, is it ours, is it newer, the numbered migrations, the
 * strict schema, then what a schema cannot say (`findFault`: ids unique, nothing dangling, amounts
 * believable). Work is linear in the text, whatever is in it.
 */
export function parseGarden(
  text: string,
  chain: readonly Migration[] = migrations,
): Result<Garden, ParseFailure> {
  if (text.length > characterLimit) {
    return failure({ kind: 'too-large', limit: characterLimit, unit: 'characters' });
  }
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (nestingDepth(bare, levelLimit) > levelLimit) {
    return failure({ kind: 'too-large', limit: levelLimit, unit: 'levels' });
  }
  let document: unknown;
  try {
    document = JSON.parse(bare);
  } catch {
    return failure({ kind: 'not-json', ...lineAndColumn(bare, firstJsonFault(bare) ?? 0) });
  }
  if (!isRecord(document) || document['format'] !== formatName) {
    return failure({ kind: 'not-a-garden' });
  }
  const version = document['schemaVersion'];
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failure({
      kind: 'broken',
      where: 'schemaVersion',
      what: 'a whole number from 1 is wanted',
    });
  }
  if (version > schemaVersion) {
    return failure({ kind: 'newer', version, known: schemaVersion });
  }
  const excess = tooMany(document);
  if (excess !== null) return failure({ kind: 'broken', where: excess, what: 'too many entries' });
  let current: Record<string, unknown>;
  try {
    current = migrate(document, version, chain);
  } catch {
    return failure({
      kind: 'broken',
      where: `file version ${String(version)}`,
      what: 'it could not be brought up to date',
    });
  }
  const checked = gardenSchema.safeParse(current);
  if (!checked.success) {
    const [issue] = checked.error.issues;
    return failure({
      kind: 'broken',
      where: placeIn(current, issue?.path ?? []),
      what: issue ? phraseOf(issue, current) : 'not as it should be',
    });
  }
  const fault = findFault(checked.data);
  return fault ? failure(fault) : success(checked.data);
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The first list longer than any the schema allows, or the whole file when all lists together are. */
function tooMany(document: Record<string, unknown>): string | null {
  let values = 0;
  const waiting: { name: string; value: unknown }[] = [{ name: 'file', value: document }];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { name, value } = next;
    if (typeof value !== 'object' || value === null) continue;
    const isList = Array.isArray(value);
    const entries: unknown[] = isList ? value : Object.values(value);
    values += entries.length;
    if (entries.length > longestList || values > mostValues) return name;
    const keys = isList ? null : Object.keys(value);
    for (let at = 0; at < entries.length; at++) {
      const item = entries[at];
      if (typeof item === 'object' && item !== null) {
        waiting.push({ name: keys?.[at] ?? name, value: item });
      }
    }
  }
  return null;
}
