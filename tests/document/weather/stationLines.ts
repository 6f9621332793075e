/** One value of a made-up station. */
export interface Made {
  readonly value: number;
  readonly measurement?: string;
  readonly quality?: string;
}

const id = 'XX000000001';
const two = (value: number): string => String(value).padStart(2, '0');

/**
 * A line of a .dly file built from its description: station 1-11, year 12-15, month 16-17, element
 * 18-21, then 31 times a value of five characters and the flags of measurement, quality, source.
 */
export const monthLine = (
  year: number,
  month: number,
  element: string,
  days: Readonly<Record<number, Made | number>>,
  station = id,
): string => {
  const cells = Array.from({ length: 31 }, (_unused, at) => {
    const found = days[at + 1];
    if (found === undefined) return '-9999   ';
    const made = typeof found === 'number' ? { value: found } : found;
    return `${String(made.value).padStart(5)}${made.measurement ?? ' '}${made.quality ?? ' '}X`;
  });
  return `${station}${String(year)}${two(month)}${element}${cells.join('')}`;
};

/** A line of the long form: station, day, element, value, three flags, time. */
export const listLine = (
  date: string,
  element: string,
  { value, measurement = '', quality = '' }: Made,
  station = id,
): string => `${station},${date},${element},${String(value)},${measurement},${quality},X,0700`;
