import '../../style/screens/keys.css';
import { type FocusEvent, type ReactNode, useId, useRef, useState } from 'react';
import { figuresHint } from '../../words/keyHints';
import { isAmongFigures, useFigureStops, wayFrom } from './useFigureStops';

interface Hint {
  readonly words: string;
  /** the half of the window that what is focused does not lie in */
  readonly at: 'top' | 'bottom';
}

/**
 * A place of the window whose figures, where they stand together, are one stop of the Tab key. Who
 * comes there by keys is shown how to go on, at the edge of the window away from what is focused.
 *
 * @param hintOf how to go on from something else that has keys of its own; null where it has none
 */
export function KeyedPage(props: {
  readonly className?: string;
  readonly hintOf?: (focused: Element) => string | null;
  readonly children: ReactNode;
}) {
  const { className = 'page', hintOf } = props;
  const page = useRef<HTMLDivElement>(null);
  const hintId = useId();
  const stops = useFigureStops(page, hintId);
  const [hint, setHint] = useState<Hint | null>(null);
  const onFocus = ({ target }: FocusEvent): void => {
    stops.comeTo(target);
    const words = !target.matches(':focus-visible')
      ? null
      : isAmongFigures(target)
        ? figuresHint
        : (hintOf?.(target) ?? null);
    if (words === null) return setHint(null);
    // once it has been scrolled to, if one has not gone on by then
    requestAnimationFrame(() => {
      if (document.activeElement !== target) return;
      setHint({
        words,
        at: target.getBoundingClientRect().top > window.innerHeight / 2 ? 'top' : 'bottom',
      });
    });
  };
  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- hears keys of the buttons within
    <div
      ref={page}
      className={className}
      onFocus={onFocus}
      onBlur={({ relatedTarget }) => {
        if (!(relatedTarget instanceof Node) || !page.current?.contains(relatedTarget))
          setHint(null);
        requestAnimationFrame(() => stops.put());
      }}
      onKeyDown={(event) => {
        const { target, altKey, ctrlKey, metaKey, shiftKey } = event;
        if (event.defaultPrevented || altKey || ctrlKey || metaKey || shiftKey) return;
        const next =
          target instanceof HTMLElement && isAmongFigures(target)
            ? wayFrom(target, event.key)
            : undefined;
        if (!next) return;
        event.preventDefault();
        next.focus();
      }}
    >
      {props.children}
      <p id={hintId} hidden>
        {figuresHint}
      </p>
      {hint && (
        <p className={`key-hint key-hint-${hint.at} not-printed`} aria-hidden="true">
          {hint.words}
        </p>
      )}
    </div>
  );
}
