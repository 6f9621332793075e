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
  const [isWider, setWider] = useState(false);
  const [isTaller, setTaller] = useState(false);
  const isLarger = isWider || isTaller;
  useLayoutEffect(() => {
    const watched = view.current;
    if (!watched) return undefined;
    const measure = () => {
      setWider(watched.scrollWidth > watched.clientWidth + 1);
      setTaller(watched.scrollHeight > watched.clientHeight + 1);
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
      {isLarger && <p className="scroll-hint small soft">{goesOn(isWider, isTaller)}</p>}
    </>
  );
}

const goesOn = (isWider: boolean, isTaller: boolean): string =>
  `It goes on ${[isWider && 'to the right', isTaller && 'further down'].filter(Boolean).join(' and ')}: swipe or scroll.`;
