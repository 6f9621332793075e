import { type ReactNode, type RefObject, useLayoutEffect, useRef, useState } from 'react';

/**
 * A named box that scrolls when what it holds is larger than it; only then a stop of the Tab key,
 * so that it can be scrolled without a pointer.
 */
export function Scroller({
  label,
  className,
  id,
  box,
  children,
}: {
  readonly label: string;
  readonly className: string;
  readonly id?: string;
  readonly box?: RefObject<HTMLDivElement | null>;
  readonly children: ReactNode;
}) {
  const own = useRef<HTMLDivElement>(null);
  const view = box ?? own;
  const [isLarger, setLarger] = useState(false);
  const [isWider, setWider] = useState(false);
  useLayoutEffect(() => {
    const watched = view.current;
    if (!watched) return undefined;
    const measure = () => {
      const wider = watched.scrollWidth > watched.clientWidth + 1;
      setWider(wider);
      setLarger(wider || watched.scrollHeight > watched.clientHeight + 1);
    };
    // the first look comes by itself, once it is laid out: asked for here, the layout is made twice
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    for (const inside of watched.children) observer.observe(inside);
    return () => observer.disconnect();
  }, [view]);
  return (
    <>
      <div
        id={id}
        ref={view}
        className={className}
        role="group"
        aria-label={label}
        // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a box that scrolls must be reachable by key
        tabIndex={isLarger ? 0 : undefined}
      >
        {children}
      </div>
      {isWider && (
        <p className="scroll-hint small soft">It goes on to the right: swipe or scroll.</p>
      )}
    </>
  );
}
