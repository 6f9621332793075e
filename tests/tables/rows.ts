import type { Row } from '../../app/tables/shapes';

export interface FoundRow {
  readonly where: string;
  readonly row: Row;
}

const isRow = (value: object): value is Row =>
  'low' in value && 'typical' in value && 'high' in value && 'source' in value;

/** Every cited number in every module of app/tables, with the path that leads to it. */
export function everyRow(): readonly FoundRow[] {
  const modules = import.meta.glob<Record<string, unknown>>('../../app/tables/**/*.ts', {
    eager: true,
  });
  const found: FoundRow[] = [];
  const seen = new Set<object>();
  const walk = (value: unknown, where: string): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return;
    seen.add(value);
    if (isRow(value)) {
      found.push({ where, row: value });
      return;
    }
    for (const [key, item] of Object.entries(value)) walk(item, `${where}.${key}`);
  };
  for (const [path, module] of Object.entries(modules)) {
    walk(module, path.slice(path.indexOf('tables/') + 'tables/'.length));
  }
  return found;
}
