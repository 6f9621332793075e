/**
 * Gives ids that no thing of a list has: "bed-4". Nobody sees or reads them; counting on
 * keeps a file's differences small.
 */
export function freshIds(prefix: string, taken: readonly { readonly id: string }[]): () => string {
  const used = new Set(taken.map(({ id }) => id));
  let number = used.size;
  return () => {
    do number++;
    while (used.has(`${prefix}-${String(number)}`));
    return `${prefix}-${String(number)}`;
  };
}
