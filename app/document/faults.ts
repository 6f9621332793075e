import { dayOf } from '../core/days';
import type { ParseFailure } from './failures';
import type { Garden } from './schema';
import { placeIn } from './thingNames';

export type Fault = Extract<ParseFailure, { kind: 'dangling' | 'broken' }>;

/** Years a garden's days may lie in. */
export const believableYears = { first: 1900, last: 2199 } as const;
const firstDay = dayOf(`${String(believableYears.first)}-01-01`);
const lastDay = dayOf(`${String(believableYears.last)}-12-31`);

/** Keeps the first fault that is told, with the name of the thing it is about. */
export class Faults {
  first: Fault | null = null;

  constructor(private readonly garden: Garden) {}

  private place(list: string, index: number | null, key: string | null): string {
    const path: PropertyKey[] = list.split(', ');
    if (index !== null) path.push(index);
    if (key !== null) path.push(key);
    return placeIn(this.garden, path);
  }

  broken(list: string, index: number | null, key: string | null, what: string): void {
    this.first ??= { kind: 'broken', where: this.place(list, index, key), what };
  }

  points(list: string, index: number, isThere: boolean, what: string): void {
    if (!isThere) this.first ??= { kind: 'dangling', where: this.place(list, index, null), what };
  }

  ids(list: string, things: readonly { readonly id: string }[]): Set<string> {
    const seen = new Set<string>();
    things.forEach(({ id }, index) => {
      if (seen.has(id)) this.broken(list, index, 'id', 'an id is used twice');
      seen.add(id);
    });
    return seen;
  }

  atMost(list: string, index: number, key: string, value: number, most: number): void {
    if (value > most) {
      this.broken(list, index, key, `more than can be believed (${String(value)})`);
    }
  }

  day(list: string, index: number | null, ...dates: readonly (string | null | undefined)[]): void {
    for (const date of dates) {
      if (typeof date !== 'string') continue;
      const day = dayOf(date);
      if (day >= firstDay && day <= lastDay) continue;
      const { first, last } = believableYears;
      const what = `a year from ${String(first)} to ${String(last)} is wanted, not ${date.slice(0, 4)}`;
      this.broken(list, index, null, what);
    }
  }
}
