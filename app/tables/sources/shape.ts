/** A book, paper, page or judgement a number came from. Keys are AuthorYear. */
export interface Source {
  readonly author: string;
  /** null where the source carries no date */
  readonly year: number | null;
  readonly title: string;
  /** journal, publisher or address: enough to find it again, and how far it was read */
  readonly where: string;
}

export const source = (
  author: string,
  year: number | null,
  title: string,
  where: string,
): Source => ({ author, year, title, where });
