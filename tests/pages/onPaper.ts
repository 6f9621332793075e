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

/** Reads a document as Chromium printed it: where its letters lie, how tall and in what colours. */
export async function readPaper(pdf: Buffer): Promise<PrintedPaper> {
  const { OPS } = await getResolvedPDFJS();
  const document = await getDocumentProxy(new Uint8Array(pdf));
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
    const kept: (readonly number[])[] = [];
    let fill: readonly number[] = [0, 0, 0];
    fnArray.forEach((operation: number, at: number) => {
      const given = argsArray[at] as unknown[];
      if (operation === OPS.save) kept.push(fill);
      else if (operation === OPS.restore) fill = kept.pop() ?? [0, 0, 0];
      else if (operation === OPS.setFillRGBColor) fill = given.slice(0, 3).map(Number);
      else if (operation === OPS.showText) {
        const letters = given[0] as readonly { readonly unicode?: string }[];
        const sample = letters.map(({ unicode }) => unicode ?? '').join('');
        if (sample.trim() !== '' && !inks.has(fill.join()))
          inks.set(fill.join(), { rgb: fill, sample });
      }
    });
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
