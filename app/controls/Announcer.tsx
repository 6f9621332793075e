import {
  createContext,
  useCallback,
  useContext,
  useEffect,
  useRef,
  useState,
  type ReactNode,
} from 'react';

const AnnounceContext = createContext<(words: string) => void>(() => undefined);

/** Says something to whoever listens to the screen, without moving focus. */
export const useAnnounce = (): ((words: string) => void) => useContext(AnnounceContext);

/** Holds the page's one polite live region. The same words twice are said twice. */
export function Announcer({ children }: { readonly children: ReactNode }) {
  const [words, setWords] = useState('');
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const announce = useCallback((next: string) => {
    setWords('');
    clearTimeout(timer.current);
    timer.current = setTimeout(() => setWords(next), 60);
  }, []);
  useEffect(() => () => clearTimeout(timer.current), []);
  return (
    <AnnounceContext.Provider value={announce}>
      {children}
      <div role="status" aria-live="polite" className="only-heard" data-live="announcements">
        {words}
      </div>
    </AnnounceContext.Provider>
  );
}
