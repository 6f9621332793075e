const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/**
 * Whether the engine is asked the very same, to the last bit, so that its answer stands. Looks into
 * plain objects, lists, maps and arrays of numbers; what is one and the same object is not looked
 * into.
 */
export function sameQuestion(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (!isObject(one) || !isObject(other)) return false;
  if (Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return false;
  if (ArrayBuffer.isView(one) && ArrayBuffer.isView(other)) return sameNumbers(one, other);
  if (one instanceof Map && other instanceof Map) return sameQuestion([...one], [...other]);
  const keys = Object.keys(one);
  if (keys.length !== Object.keys(other).length) return false;
  return keys.every((key) => key in other && sameQuestion(one[key], other[key]));
}

function sameNumbers(one: ArrayBufferView, other: ArrayBufferView): boolean {
  const [left, right] = [one as Float64Array, other as Float64Array];
  if (left.length !== right.length) return false;
  for (let at = 0; at < left.length; at++) if (!Object.is(left[at], right[at])) return false;
  return true;
}
