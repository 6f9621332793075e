import * as z from 'zod/mini';
import { dayFromText } from '../../core/days';

// The page's content policy forbids making code from text, which the schema library would try.
z.config({ jitless: true });

export const text = (most: number, least = 0) =>
  z.string().check(z.minLength(least), z.maxLength(most));
export const between = (least: number, most: number) => z.number().check(z.gte(least), z.lte(most));
export const list = <Item extends z.core.SomeType>(item: Item, most: number, least = 0) =>
  z.array(item).check(z.minLength(least), z.maxLength(most));
export const id = text(64, 1);
export const name = text(80, 1);
export const note = text(2000);
export const day = z
  .string()
  .check(
    z.refine((words) => dayFromText(words) !== null, { error: 'not a day, wanted YYYY-MM-DD' }),
  );
export const positive = z.number().check(z.positive(), z.lte(1e7));
export const nonNegative = between(0, 1e7);
export const share = between(0, 1);
export const months = <Item extends z.core.SomeType>(item: Item) =>
  z.array(item).check(z.length(12));
