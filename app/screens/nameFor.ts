/** "Lawn", "Lawn 2": a name that is still free. */
export function nameFor(taken: readonly string[], name: string): string {
  if (!taken.includes(name)) return name;
  let count = 2;
  while (taken.includes(`${name} ${count}`)) count += 1;
  return `${name} ${count}`;
}
