import { useLayoutEffect, useState } from 'react';

let isPressed = false;
const waiting = new Set<() => void>();

const release = () => {
  isPressed = false;
  // the click that the press becomes comes first
  setTimeout(() => {
    for (const run of waiting) run();
    waiting.clear();
  }, 0);
};

const press = () => {
  isPressed = true;
};

// a list that drops down keeps the release to itself
const chosen = ({ target }: Event) => {
  if (target instanceof HTMLSelectElement) release();
};

let isListening = false;
function listen(): void {
  if (isListening) return;
  isListening = true;
  document.addEventListener('pointerdown', press, true);
  for (const end of ['pointerup', 'pointercancel', 'dragend', 'contextmenu', 'keydown'])
    document.addEventListener(end, release, true);
  document.addEventListener('change', chosen, true);
}

/** Runs at once, or while something is being pressed when that is over; returns how to call it off. */
function afterPress(run: () => void): () => void {
  if (!isPressed) {
    run();
    return () => undefined;
  }
  waiting.add(run);
  return () => {
    waiting.delete(run);
  };
}

/**
 * A value as it was before the press that is going on. What comes and goes below a field when it is
 * left must not move what the pointer is on between press and release: the click would be lost.
 *
 * @param key what tells one value from another
 */
export function useAfterPress<Value>(value: Value, key: string): Value {
  const [shown, setShown] = useState({ value, key });
  useLayoutEffect(listen, []);
  useLayoutEffect(
    () => afterPress(() => setShown((was) => (was.key === key ? was : { value, key }))),
    // a value made anew at every drawing is the same one by its key
    [key, value],
  );
  return shown.value;
}
