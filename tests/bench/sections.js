const head = `# How fast

\`npm run bench\` writes this file: each part its own section, with the machine and the load it was measured under. Times are of that machine alone; what must hold on every machine (work in proportion to beds, draws and days) is in the tests beside it.
`;

/**
 * A results file with some sections written anew. A section is headed by the name of its part;
 * those of parts that no longer exist go.
 *
 * @param {string} before the file as it is, or nothing
 * @param {readonly string[]} parts in the order they are to stand
 * @param {ReadonlyMap<string, string>} sections new ones by part, heading included
 */
export function mergeSections(before, parts, sections) {
  /** @type {Map<string, string>} */
  const kept = new Map();
  for (const section of before.split(/^(?=## )/m)) {
    const name = /^## (\S+):/.exec(section)?.[1];
    if (name) kept.set(name, section);
  }
  const all = parts.flatMap((name) => sections.get(name) ?? kept.get(name) ?? []);
  return [head, ...all.map((section) => section.trim())].join('\n').replaceAll('\n## ', '\n\n## ');
}
