/** A number as it opens an entry, and the words after it. */
export interface LeadingNumber {
  readonly value: number;
  /** in lower case, its blanks single */
  readonly rest: string;
}

const decimal = /^-?\d{1,7}(?:[.,]\d{1,6})?/;
const fraction = /^(?:(\d{1,4}) )?(\d{1,4})\/(\d{1,4})(?![\d/.,])/;

/** The number that an entry begins with: "2.4", "2,4", "1/2", "2 1/2", "2½", "-3"; null where there is none. */
export function leadingNumber(text: string): LeadingNumber | null {
  const tidy = text
    .toLowerCase()
    // a whole number and a sign of a fraction stand close together
    .replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize('NFKC')}`)
    .replaceAll('⁄', '/')
    .replaceAll('−', '-')
    .replace(/\s+/g, ' ')
    .trim();
  const broken = fraction.exec(tidy);
  if (broken && Number(broken[3]) > 0)
    return {
      value: Number(broken[1] ?? 0) + Number(broken[2]) / Number(broken[3]),
      rest: tidy.slice(broken[0].length).trim(),
    };
  const plain = decimal.exec(tidy)?.[0];
  return plain === undefined
    ? null
    : { value: Number(plain.replace(',', '.')), rest: tidy.slice(plain.length).trim() };
}
