/**
 * The memory that an answer's numbers lie in, each piece once, so that they can be handed over instead
 * of copied: ten years of sixty beds are some hundred megabytes.
 *
 * @param answer plain objects, lists, maps and arrays of numbers; whoever hands it over must have no
 *   further use for it
 */
export function buffersOf(answer: unknown): ArrayBuffer[] {
  const found = new Set<ArrayBuffer>();
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if (ArrayBuffer.isView(value)) {
      if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
      return;
    }
    const parts = value instanceof Map ? value.values() : Object.values(value);
    for (const part of parts) walk(part);
  };
  walk(answer);
  return [...found];
}
