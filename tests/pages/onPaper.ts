import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';

/** A run of letters as it came out on paper; lengths in points, from the paper's lower left corner. */
export interface PrintedText {
  readonly page: number;
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  /** height of its letters */
  readonly size: number;
}

export interface PrintedPaper {
  readonly pages: number;
  /** of the first page [pt] */
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PrintedText[];
  /** each colour that letters are printed in, 0-255, with some of what is printed in it */
  readonly inks: ReadonlyMap<string, { readonly rgb: readonly number[]; readonly sample: string }>;
}

// asked for by the reader of documents, and not there before Node 21
const buffers = ArrayBuffer.prototype as { transferToFixedLength?: () => ArrayBuffer };
buffers.transferToFixedLength ??= function copied(this: ArrayBuffer) {
  return this.slice(0);
};

/** A colour as the reader of documents hands it over: "#rrggbb", or three numbers. */
function rgbOf([first, ...others]: readonly unknown[]): readonly number[] {
  if (typeof first !== 'string') return [first, ...others].slice(0, 3).map(Number);
  return [1, 3, 5].map((at) => Number.parseInt(first.slice(at, at + 2), 16));
}

interface Words {
  readonly rgb: readonly number[];
  readonly sample: string;
  /** where they begin */
  readonly at: string;
}

/** Each run of words with its colour; of words that are drawn twice on one spot, an edge first, the upper. */
function wordsOf(
  operations: readonly { readonly name: string; readonly given: readonly unknown[] }[],
): readonly Words[] {
  const found: Words[] = [];
  const kept: (readonly number[])[] = [];
  let fill: readonly number[] = [0, 0, 0];
  let [sample, at] = ['', ''];
  for (const { name, given } of operations) {
    if (name === 'save') kept.push(fill);
    else if (name === 'restore') fill = kept.pop() ?? [0, 0, 0];
    else if (name === 'setFillRGBColor') fill = rgbOf(given);
    else if (name === 'beginText') [sample, at] = ['', ''];
    else if (name === 'setTextMatrix') at = JSON.stringify(given);
    else if (name === 'showText') {
      const letters = given[0] as readonly { readonly unicode?: string }[];
      sample += letters.map(({ unicode }) => unicode ?? '').join('');
    } else if (name === 'endText' && sample.trim() !== '') {
      const under = found.at(-1);
      if (under?.sample === sample && under.at === at) found.pop();
      found.push({ rgb: fill, sample, at });
    }
  }
  return found;
}

/** Reads a document as Chromium printed it: where its letters lie, how tall and in what colours. */
export async function readPaper(pdf: Buffer): Promise<PrintedPaper> {
  const { OPS } = await getResolvedPDFJS();
  const nameOf = new Map(Object.entries(OPS).map(([name, code]) => [code as number, name]));
  const document = await getDocumentProxy(new Uint8Array(pdf), { verbosity: 0 });
  const texts: PrintedText[] = [];
  const inks = new Map<string, { rgb: readonly number[]; sample: string }>();
  let [width, height] = [0, 0];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [x0, y0, x1, y1] = page.view as [number, number, number, number];
    if (number === 1) [width, height] = [x1 - x0, y1 - y0];
    const { items } = await page.getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      const [a, b, , , left, bottom] = item.transform as number[];
      const size = Math.hypot(a!, b!);
      const from = left! - x0;
      texts.push({
        page: number,
        text: item.str,
        left: from,
        right: from + item.width,
        bottom: bottom! - y0,
        top: bottom! - y0 + size,
        size,
      });
    }
    const { fnArray, argsArray } = await page.getOperatorList();
    const operations = fnArray.map((code: number, at: number) => ({
      name: nameOf.get(code) ?? '',
      given: (argsArray[at] ?? []) as readonly unknown[],
    }));
    for (const { rgb, sample } of wordsOf(operations))
      if (!inks.has(rgb.join())) inks.set(rgb.join(), { rgb, sample });
  }
  return { pages: document.numPages, width, height, texts, inks };
}

/** How far a colour stands out from white paper in grey, as WCAG 2 reckons it. */
export function greyContrast(rgb: readonly number[]): number {
  const [red, green, blue] = rgb.map((value) => {
    const part = value / 255;
    return part <= 0.040_45 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 1.05 / (0.2126 * red! + 0.7152 * green! + 0.0722 * blue! + 0.05);
}
