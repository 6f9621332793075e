/** The questions of the guided start that Enter goes to, one after the other, as the page has them. */
const questions = '[data-goes-on]';

const fieldOf = (question: Element): HTMLElement | null =>
  question.querySelector<HTMLElement>('input, select');

/** Puts the hand into a question; what stands there as usual is typed over. */
export function enter(question: Element | undefined): void {
  const field = question && fieldOf(question);
  field?.focus();
  if (field instanceof HTMLInputElement) field.select();
}

/** The question after the field one is in, or undefined after the last. */
export function questionAfter(form: Element, from: Element): Element | undefined {
  return [...form.querySelectorAll(questions)].find(
    (question) =>
      !question.contains(from) &&
      (from.compareDocumentPosition(question) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0,
  );
}

export const firstQuestion = (form: Element): Element | undefined =>
  form.querySelector(questions) ?? undefined;

/** The sizes of the last bed, which a press on "Another bed" asks for next. */
export const questionOfBed = (form: Element, key: number): Element | undefined =>
  form.querySelector(`[data-bed="${key}"] ${questions}`) ?? undefined;
