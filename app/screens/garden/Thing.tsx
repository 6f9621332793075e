import { useEffect, useRef, useState, type ReactNode } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { DeleteButton } from '../../controls/DeleteButton';
import type { Edited } from '../../store/contract';
import { editFailureSentence } from '../../words/messages';

export interface ThingProps {
  readonly name: string;
  /** id of what it stands for, for those who come from elsewhere */
  readonly of?: string;
  readonly summary: ReactNode;
  readonly startsOpen?: boolean;
  /** it was just added: its first field is where one goes on, and its button stays below it */
  readonly startsFocused?: boolean;
  readonly onDelete: () => Edited;
  /** said and asked before it is deleted: what goes with it; null where nothing does */
  readonly goesWithIt?: string | null;
  readonly children: ReactNode;
}

/**
 * One lawn, bag, bed or store: a line of what it is, its fields when opened, and a way to delete it.
 * What nobody opened has no fields yet: those of sixty beds would keep the page from coming.
 */
export function Thing(props: ThingProps) {
  const announce = useAnnounce();
  const [wasOpened, setWasOpened] = useState(props.startsOpen ?? false);
  const show = (): void => setWasOpened(true);
  const [refused, setRefused] = useState<string | null>(null);
  const [asking, setAsking] = useState(false);
  const holder = useRef<HTMLDetailsElement>(null);
  const [isNew] = useState(props.startsFocused);
  useEffect(() => {
    if (isNew) holder.current?.querySelector<HTMLElement>('.thing-body input')?.focus();
  }, [isNew]);
  return (
    <details
      className="thing"
      id={props.of === undefined ? undefined : `thing-${props.of}`}
      open={props.startsOpen}
      ref={holder}
      onToggle={({ currentTarget }) => {
        // opened by whoever comes from elsewhere
        if (currentTarget.open) show();
      }}
    >
      <summary onClick={show}>
        <span className="thing-name">{props.name}</span>
        <span className="small soft">{props.summary}</span>
      </summary>
      {wasOpened && (
        <div className="thing-body">
          {props.children}
          {refused && (
            <p role="alert" className="field-trouble">
              {refused}
            </p>
          )}
          {asking && props.goesWithIt && <p role="alert">{props.goesWithIt}</p>}
          <div className="button-row">
            <DeleteButton
              onDelete={() => {
                if (props.goesWithIt && !asking) return setAsking(true);
                const next = holder.current?.nextElementSibling;
                const result = props.onDelete();
                if (!result.ok) return setRefused(editFailureSentence(result.error));
                announce(`Deleted: ${props.name}. Undo brings it back.`);
                next?.querySelector<HTMLElement>('summary, button')?.focus();
              }}
            >
              Delete {props.name}
              {asking && props.goesWithIt ? ' all the same' : ''}
            </DeleteButton>
            {asking && props.goesWithIt && (
              <button type="button" className="button-small" onClick={() => setAsking(false)}>
                Keep it
              </button>
            )}
          </div>
        </div>
      )}
    </details>
  );
}
