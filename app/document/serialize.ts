import { gardenSchema, type Garden } from './schema';

/**
 * The garden as the text of its file: UTF-8 JSON, two spaces, keys in the schema's order whatever
 * order they were made in, lists of plain values (a day's weather, twelve months) on one line each,
 * a line end at the end. Reading it back and writing it again gives the same bytes.
 */
export function serializeGarden(garden: Garden): string {
  // The strict schema hands its keys back in its own order. A garden it would refuse is written
  // as it stands: a file that needs mending is better than work that was not kept.
  const checked = gardenSchema.safeParse(garden);
  return `${written(checked.success ? checked.data : garden, '')}\n`;
}

function written(value: unknown, indent: string): string {
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.length === 0) return '[]';
    if (value.every((item) => item === null || typeof item !== 'object')) {
      return `[${value.map((item) => JSON.stringify(item)).join(', ')}]`;
    }
    return `[\n${value.map((item) => inner + written(item, inner)).join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  if (entries.length === 0) return '{}';
  const lines = entries.map(
    ([key, item]) => `${inner}${JSON.stringify(key)}: ${written(item, inner)}`,
  );
  return `{\n${lines.join(',\n')}\n${indent}}`;
}
