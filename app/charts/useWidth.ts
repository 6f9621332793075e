import { type RefObject, useLayoutEffect, useState } from 'react';

/** The inner width of an element in CSS pixels, kept up to date; `before` until it is known. */
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
  return width;
}
