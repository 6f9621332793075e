import { afterNextDrawing } from './afterNextDrawing';

/** A page whose code is still on its way is waited for no longer than this. */
const longestMilliseconds = 5000;

/**
 * Does something with an element once it stands on the page: after the next drawing where its place
 * is there already, else when it comes. Never, when it does not come.
 */
export function whenThere(selector: string, use: (element: HTMLElement) => void): void {
  const found = (): HTMLElement | null => document.querySelector<HTMLElement>(selector);
  afterNextDrawing(() => {
    const now = found();
    if (now) return use(now);
    const observer = new MutationObserver(() => {
      const element = found();
      if (!element) return;
      observer.disconnect();
      clearTimeout(timer);
      requestAnimationFrame(() => use(element));
    });
    const timer = setTimeout(() => observer.disconnect(), longestMilliseconds);
    observer.observe(document.body, { childList: true, subtree: true });
    return undefined;
  });
}
