import { type RefObject, useEffect } from 'react';

/**
 * Keeps a form from being sent while one of its own fields holds words that could not be taken: what
 * the field said last would be kept in their place, and nobody would see it. Focus goes to the field,
 * which says what is wrong.
 *
 * For fields that hand out what was typed when they are left; what a form reads itself it refuses itself.
 *
 * @param isRefused whether the words in it were refused
 */
export function useHeldForm(field: RefObject<HTMLInputElement | null>, isRefused: boolean): void {
  useEffect(() => {
    const form = field.current?.form;
    if (!isRefused || !form) return undefined;
    const hold = (event: Event): void => {
      event.preventDefault();
      event.stopImmediatePropagation();
      field.current?.focus();
    };
    form.addEventListener('submit', hold, true);
    return () => form.removeEventListener('submit', hold, true);
  }, [field, isRefused]);
}
