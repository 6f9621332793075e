const pxPerRem = 16;

const holds = (width: number, sign: string, rem: number): boolean => {
  const line = rem * pxPerRem;
  if (sign === '<') return width < line;
  if (sign === '<=') return width <= line;
  if (sign === '>') return width > line;
  return width >= line;
};

/**
 * A media query as it would hold on paper of a width, told to a screen: print always, screen never,
 * conditions of width settled, others kept.
 */
export function asPrinted(query: string, width: number): string {
  return query
    .split(',')
    .map((one) => {
      if (/\bscreen\b/.test(one)) return 'not all';
      let isHeld = true;
      const rest = one
        .replace(
          /\(\s*width\s*(<=|>=|<|>)\s*([\d.]+)rem\s*\)/g,
          (_whole, sign: string, rem: string) => {
            isHeld &&= holds(width, sign, Number(rem));
            return '';
          },
        )
        .replace(/\bprint\b/, 'all')
        .split(/\band\b/)
        .map((part) => part.trim())
        .filter((part) => part !== '' && part !== 'all');
      return isHeld ? ['all', ...rest].join(' and ') : 'not all';
    })
    .join(', ');
}
