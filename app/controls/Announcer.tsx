import { createContext, useContext, useEffect, useRef, useState, type ReactNode } from 'react';

/** What is said; what it is about, where newer words make older ones idle. */
type Announce = (words: string, about?: string) => void;

const AnnounceContext = createContext<Announce>(() => undefined);
const WordsContext = createContext('');

/**
 * Says something to whoever listens to the screen, without moving focus. With `about`, words that
 * still wait to be said about the same thing give way.
 */
export const useAnnounce = (): Announce => useContext(AnnounceContext);

/** So long an entry must rest before what came of it is said. */
const restMilliseconds = 800;

/**
 * Says what came of an entry once the typing rests, and again only when it is other than before.
 *
 * @param words the whole sentence, or '' while there is nothing to say
 */
export function useHeardAtRest(words: string, about: string): void {
  const announce = useAnnounce();
  const last = useRef('');
  useEffect(() => {
    if (words === '' || words === last.current) return undefined;
    const timer = setTimeout(() => {
      last.current = words;
      announce(words, about);
    }, restMilliseconds);
    return () => clearTimeout(timer);
  }, [about, announce, words]);
}

/** A region only speaks up when its words change: this long it is empty in between. */
const emptyMilliseconds = 60;
/** So long words stay before the next come, or a reader that is busy never meets them. */
const heldMilliseconds = 1000;

/** Lets words through one after the other. The same words twice are said twice. */
function turns(show: (words: string) => void) {
  let waiting: { readonly words: string; readonly about: string | undefined }[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = () => {
    timer = undefined;
    const said = waiting.shift();
    if (!said) return;
    show('');
    timer = setTimeout(() => {
      show(said.words);
      timer = setTimeout(next, heldMilliseconds);
    }, emptyMilliseconds);
  };
  return {
    say: (words: string, about?: string) => {
      if (about !== undefined) waiting = waiting.filter((each) => each.about !== about);
      waiting.push({ words, about });
      if (timer === undefined) next();
    },
    stop: () => {
      clearTimeout(timer);
      timer = undefined;
      waiting = [];
    },
  };
}

/** Gives every part of the window its voice, and holds the page's polite live region. */
export function Announcer({ children }: { readonly children: ReactNode }) {
  const [words, setWords] = useState('');
  const [queue] = useState(() => turns(setWords));
  useEffect(() => queue.stop, [queue]);
  return (
    <AnnounceContext.Provider value={queue.say}>
      <WordsContext.Provider value={words}>
        {children}
        <Spoken where="announcements" />
      </WordsContext.Provider>
    </AnnounceContext.Provider>
  );
}

/**
 * The words being said. While a dialog is open the rest of the page is shut off, its live region
 * with it, so every dialog holds one of its own.
 */
export function Spoken({ where }: { readonly where: 'announcements' | 'dialog' }) {
  const words = useContext(WordsContext);
  // what was said before a question came up is not to be read at its end as part of it
  const [old, setOld] = useState(where === 'dialog' ? words : '');
  if (old !== '' && words !== old) setOld('');
  return (
    <div role="status" aria-live="polite" className="only-heard" data-live={where}>
      {words === old ? '' : words}
    </div>
  );
}
