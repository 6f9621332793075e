import { act, type ReactNode } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, vi } from 'vitest';
import { Announcer } from '../../app/controls/Announcer';
import { DeskProvider } from '../../app/screens/desk';
import { StoreProvider } from '../../app/screens/store';
import type { MowingsStore } from '../../app/store/contract';

export interface DrawnPage {
  /** where it is drawn; another one for each test */
  readonly place: HTMLElement;
  /** draws a part with all that the window gives its parts, or draws it anew */
  draw(store: MowingsStore, part: ReactNode): Promise<void>;
  /** takes it away, so that the next is drawn from nothing */
  leave(): Promise<void>;
}

/** A page for every test of a file or a group: there before it, gone after it. */
export function drawnPage(): DrawnPage {
  let place: HTMLElement;
  let root: Root | null = null;
  const leave = async (): Promise<void> => {
    await act(async () => root?.unmount());
    root = null;
  };
  beforeEach(() => {
    vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true);
    // nothing is brought while nothing else is to be done: a test asks for what it wants
    vi.stubGlobal('requestIdleCallback', () => 0);
    vi.stubGlobal('cancelIdleCallback', () => undefined);
    place = document.createElement('div');
    document.body.append(place);
  });
  afterEach(async () => {
    await leave();
    place.remove();
    vi.unstubAllGlobals();
  });
  return {
    get place() {
      return place;
    },
    leave,
    draw: (store, part) =>
      act(async () => {
        root ??= createRoot(place);
        root.render(
          <StoreProvider store={store}>
            <Announcer>
              <DeskProvider>{part}</DeskProvider>
            </Announcer>
          </StoreProvider>,
        );
      }),
  };
}
