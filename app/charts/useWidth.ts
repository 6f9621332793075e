import { type RefObject, useLayoutEffect, useState } from 'react';
import { usePaperWidth } from './paperWidth';

/**
 * The inner width of an element in CSS pixels, kept up to date; `before` until it is known. While the
 * page is printed no more than fits on the paper, so that letters keep their size.
 */
export function useWidth(element: RefObject<HTMLElement | null>, before: number): number {
  const [width, setWidth] = useState(before);
  useLayoutEffect(() => {
    const watched = element.current;
    if (!watched) return undefined;
    setWidth(watched.clientWidth);
    const observer = new ResizeObserver(() => setWidth(watched.clientWidth));
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  const paper = usePaperWidth();
  return paper === null ? width : Math.min(width, paper);
}
