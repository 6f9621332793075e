/** "My wheat straw", or with a number where that is taken. */
export function freeName(of: string, taken: readonly string[]): string {
  const first = `My ${of.charAt(0).toLowerCase()}${of.slice(1)}`.slice(0, 70);
  let name = first;
  for (let number = 2; taken.includes(name); number++) name = `${first} ${number}`;
  return name;
}

/** Brings the row that was just opened into sight, its name focused; it may stand far above. */
export function showOpenRow(): void {
  setTimeout(() => {
    const line = document.querySelector<HTMLElement>('.row-name[aria-expanded="true"]');
    line?.scrollIntoView({ block: 'start' });
    line?.focus({ preventScroll: true });
  });
}
