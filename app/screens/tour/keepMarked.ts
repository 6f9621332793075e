/** What may make another element the one that is meant: the page, or a name in it, is drawn anew. */
const watched = { childList: true, subtree: true };

/**
 * Keeps a sign on the element that a selector finds, for as long as it is wanted: when it comes
 * later than asked for, when it is drawn anew, and when another is put in its place. No more than
 * one element bears the sign at a time, and none once it is called off.
 *
 * @param selector the part of the page that is meant, the first where there are several
 * @param sign     name of the attribute that marks it
 * @param onFound  told once, of the first element that was marked
 * @returns takes the sign away and looks no longer; harmless when called again
 */
export function keepMarked(
  selector: string,
  sign: string,
  onFound: (element: HTMLElement) => void,
): () => void {
  let marked: HTMLElement | null = null;
  let wasFound = false;
  const mark = (): void => {
    const meant = document.querySelector<HTMLElement>(selector);
    if (meant !== marked) marked?.removeAttribute(sign);
    marked = meant;
    if (!meant) return;
    if (!meant.hasAttribute(sign)) meant.setAttribute(sign, '');
    if (wasFound) return;
    wasFound = true;
    onFound(meant);
  };
  const observer = new MutationObserver(mark);
  observer.observe(document.body, { ...watched, attributeFilter: ['aria-labelledby', sign] });
  mark();
  return () => {
    observer.disconnect();
    marked?.removeAttribute(sign);
    marked = null;
  };
}
