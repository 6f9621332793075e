import type { Mineral, MineralLine } from '../document/mineralAccount';
import type { GardenEvent } from '../document/schema';

type LabMinerals = NonNullable<Extract<GardenEvent, { kind: 'soil test' }>['minerals']>;

/** "phosphorus 42 ppm (the lab: optimum, Mehlich-3)", for each that was printed. */
export function labMineralWords(lab: LabMinerals | undefined): readonly string[] {
  if (!lab) return [];
  const one = (name: string, value: string | undefined, rating: string | undefined): string => {
    if (value === undefined && rating === undefined) return '';
    const brackets = [rating === undefined ? '' : `the lab: ${rating}`, lab.extractant ?? '']
      .filter(Boolean)
      .join(', ');
    return `${name}${value === undefined ? '' : ` ${value}`}${brackets ? ` (${brackets})` : ''}`;
  };
  const { extractant, ...figures } = lab;
  // kept though nothing was printed that it goes with
  if (extractant !== undefined && Object.keys(figures).length === 0)
    return [`method for phosphorus and potassium: ${extractant}`];
  return [
    one('phosphorus', lab.phosphorus, lab.phosphorusRating),
    one('potassium', lab.potassium, lab.potassiumRating),
  ].filter(Boolean);
}

export const mineralNames: Readonly<Record<Mineral, string>> = {
  phosphorus: 'Phosphorus',
  potassium: 'Potassium',
};

/** A line of the account: "Clippings laid", "Tomatoes picked". */
export const mineralLineWords = ({ way, name }: MineralLine): string => `${name} ${way}`;

/** What the balance means, and what it does not. */
export const mineralAdvice = {
  untested:
    'More comes in than goes out in most mulched gardens. Whether that is too much, a soil test tells; without one nothing is advised here.',
  tested:
    'The laboratory’s own words stand above. What it advises goes before anything reckoned here.',
  recalled:
    'Contents marked ≈ are recalled or estimated, not read: good to tell much from little, not to feed by.',
} as const;
