/** Rules of letters that the page has; style sheets of other places cannot be read and are none of ours. */
const rulesOf = (sheet: CSSStyleSheet): readonly CSSRule[] => {
  try {
    return [...sheet.cssRules];
  } catch {
    return [];
  }
};

const inBase64 = (file: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(String(reader.result)));
    reader.addEventListener('error', () => reject(reader.error ?? new Error('not read')));
    reader.readAsDataURL(file);
  });

/** Covers the letters of a text: ours are bundled by ranges of letters, and most drawings want the first alone. */
function covers(range: string, text: string): boolean {
  const spans = [...range.matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/gi)].map((match) => ({
    from: Number.parseInt(match[1] ?? '0', 16),
    to: Number.parseInt(match[2] ?? match[1] ?? '0', 16),
  }));
  if (spans.length === 0) return true;
  return [...text].some((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return code > 32 && spans.some(({ from, to }) => code >= from && code <= to);
  });
}

/**
 * The page's own letters as rules that carry their files in themselves, for drawings that are taken
 * away: those of their families that their text wants. '' where none can be had.
 */
export async function fontFaces(drawings: readonly SVGSVGElement[]): Promise<string> {
  const families = new Set(
    drawings
      .flatMap((drawing) => [drawing, ...drawing.querySelectorAll('text, tspan')])
      .map(
        (element) => getComputedStyle(element).fontFamily.split(',')[0]?.replace(/["']/g, '') ?? '',
      ),
  );
  const text = drawings.map(({ textContent }) => textContent ?? '').join('');
  const faces = [...document.styleSheets]
    .flatMap(rulesOf)
    .filter((rule): rule is CSSFontFaceRule => rule instanceof CSSFontFaceRule)
    .filter(({ style }) => {
      const family = style.getPropertyValue('font-family').replace(/["']/g, '');
      return families.has(family) && covers(style.getPropertyValue('unicode-range'), text);
    });
  const rules = await Promise.all(
    faces.map(async ({ style, parentStyleSheet }) => {
      const address = /url\(["']?([^"')]+)["']?\)/.exec(style.getPropertyValue('src'))?.[1];
      if (address === undefined) return '';
      const answer = await fetch(new URL(address, parentStyleSheet?.href ?? document.baseURI));
      if (!answer.ok) return '';
      const data = await inBase64(await answer.blob());
      const weight = style.getPropertyValue('font-weight') || 'normal';
      return `@font-face{font-family:${style.getPropertyValue('font-family')};font-weight:${weight};src:url(${data}) format('woff2')}`;
    }),
  ).catch(() => []);
  return rules.join('');
}
