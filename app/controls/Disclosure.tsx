import type { ReactNode } from 'react';

export interface DisclosureProps {
  readonly summary: ReactNode;
  readonly children: ReactNode;
  readonly open?: boolean;
  /** quiet: reads as a link inside running text */
  readonly quiet?: boolean;
  /** id of what it tells more of, where many stand on one page under the same words */
  readonly describedBy?: string;
}

/** More, for whoever wants it; opened by click, Enter or Space. */
export function Disclosure({ summary, children, open, quiet, describedBy }: DisclosureProps) {
  return (
    <details className={quiet ? 'more more-quiet' : 'more'} open={open}>
      <summary aria-describedby={describedBy}>{summary}</summary>
      <div className="more-body">{children}</div>
    </details>
  );
}
