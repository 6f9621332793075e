import type { ReactNode, Ref } from 'react';

/** A named box that scrolls sideways when what it holds is wider than the window. */
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
  readonly box?: Ref<HTMLDivElement>;
  readonly children: ReactNode;
}) {
  return (
    <div
      id={id}
      ref={box}
      className={className}
      role="group"
      aria-label={label}
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- a box that scrolls must be reachable by key
      tabIndex={0}
    >
      {children}
    </div>
  );
}
