import { useEffect, useSyncExternalStore, type ComponentType } from 'react';
import { lostPartSentence } from '../words/lostPart';

type Stage<Props> =
  | { readonly is: 'away' | 'coming' }
  | { readonly is: 'here'; readonly Page: ComponentType<Props> }
  | { readonly is: 'lost' };

/** A part of the window whose code is not there from the start. */
export interface OnDemand<Props> {
  /** draws the part; while its code is on the way, a word that it is */
  readonly Part: ComponentType<Props>;
  /** brings the code ahead of time; asked twice, it is brought once */
  bring(): Promise<void>;
}

/**
 * A part of the window whose code is brought when it is first wanted, so that the first page need
 * not wait for what it does not show. Once there it is drawn at once, like any other.
 *
 * @param title heading that stands in the part's place until it comes; '' where it has none of its own
 * @param load  its code; a load that failed is tried again when asked
 */
export function onDemand<Props extends object>(
  title: string,
  load: () => Promise<ComponentType<Props>>,
): OnDemand<Props> {
  let stage: Stage<Props> = { is: 'away' };
  let coming: Promise<void> | null = null;
  const listeners = new Set<() => void>();
  const put = (next: Stage<Props>): void => {
    stage = next;
    for (const listener of listeners) listener();
  };
  const bring = (): Promise<void> => {
    if (stage.is === 'here') return Promise.resolve();
    if (stage.is === 'lost') put({ is: 'coming' });
    coming ??= load()
      .then(
        (Page) => put({ is: 'here', Page }),
        () => put({ is: 'lost' }),
      )
      .finally(() => {
        coming = null;
      });
    return coming;
  };
  const listen = (listener: () => void) => {
    listeners.add(listener);
    return () => void listeners.delete(listener);
  };

  function Part(props: Props) {
    const now = useSyncExternalStore(listen, () => stage);
    useEffect(() => void bring(), []);
    if (now.is === 'here') return <now.Page {...props} />;
    return <NotYet title={title} isLost={now.is === 'lost'} onAgain={() => void bring()} />;
  }
  return { Part, bring };
}

function NotYet(props: {
  readonly title: string;
  readonly isLost: boolean;
  readonly onAgain: () => void;
}) {
  return (
    <div className={props.title ? 'page' : 'not-yet'}>
      {props.title && <h1 tabIndex={-1}>{props.title}</h1>}
      {props.isLost ? (
        <div className="message message-wrong" role="alert">
          <p>{lostPartSentence}</p>
          <div className="button-row">
            <button type="button" className="button-small" onClick={props.onAgain}>
              Try again
            </button>
          </div>
        </div>
      ) : (
        <p className="soft" role="status">
          One moment…
        </p>
      )}
    </div>
  );
}
