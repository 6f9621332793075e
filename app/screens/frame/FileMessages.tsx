import { useEffect, useRef } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { fileMessageSentence } from '../../words/messages';
import { useMowings } from '../store';
import { useCommands } from './commands';

/** What happened to the file: quiet when well, on the page until put away when not. */
export function FileMessages() {
  const message = useMowings((state) => state.message);
  const dismiss = useMowings((state) => state.dismissMessage);
  const announce = useAnnounce();
  const commands = useCommands();
  const box = useRef<HTMLDivElement>(null);
  const isTrouble =
    message?.kind === 'refused' || message?.kind === 'draft-refused' || message?.kind === 'failed';
  useEffect(() => {
    if (message && !isTrouble) announce(fileMessageSentence(message));
  }, [message, isTrouble, announce]);
  // it stands above the page; whoever has scrolled down would not see it
  useEffect(() => {
    if (message && isTrouble) box.current?.scrollIntoView({ block: 'center' });
  }, [message, isTrouble]);
  if (!message || (message.kind === 'failed' && message.error.kind === 'cancelled')) return null;
  if (!isTrouble && message.kind !== 'restored') return null;
  return (
    <div
      ref={box}
      className={isTrouble ? 'message message-wrong' : 'message'}
      role={isTrouble ? 'alert' : undefined}
    >
      <p>{fileMessageSentence(message)}</p>
      <div className="button-row">
        {message.kind === 'restored' ? (
          <>
            <button type="button" className="button-small" onClick={dismiss}>
              Go on with it
            </button>
            <button type="button" className="button-small" onClick={commands.newGarden}>
              Close it and start another
            </button>
          </>
        ) : (
          <button type="button" className="button-small" onClick={dismiss}>
            All right
          </button>
        )}
      </div>
    </div>
  );
}
