import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Equation } from './comparison';

const top = join(import.meta.dirname, '../../..');

function programFiles(): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const folder of ['app', 'main']) {
    for (const name of readdirSync(join(top, folder), { recursive: true, encoding: 'utf8' })) {
      if (!/\.tsx?$/.test(name)) continue;
      const path = `${folder}/${name.replaceAll('\\', '/')}`;
      files.set(path, readFileSync(join(top, path), 'utf8'));
    }
  }
  return files;
}

const withoutComments = (text: string): string =>
  text.replaceAll(/\/\*[\s\S]*?\*\//g, '').replaceAll(/(^|\s)\/\/[^\n]*/g, '');

/** Whether a text imports a function, for more than its type, from a file of that name. */
export function imports(text: string, { name, file }: Equation): boolean {
  const found = withoutComments(text).matchAll(/import\s+\{([^}]*)\}\s+from\s+'([^']+)'/g);
  return [...found].some(
    ([, names = '', from = '']) =>
      basename(from) === basename(file) &&
      names.split(',').some((one) => one.trim().split(' as ')[0] === name),
  );
}

/** Equations that no other file of the program calls: what they give is not the program's answer. */
export function unusedOf(equations: readonly Equation[]): readonly Equation[] {
  const files = [...programFiles()];
  return equations.filter(
    (equation) =>
      !files.some(([path, text]) => path !== `${equation.file}.ts` && imports(text, equation)),
  );
}
