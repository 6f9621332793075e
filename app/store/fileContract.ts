import type { Result } from '../core/result';
import type { ParseFailure } from '../document/failures';
import type { About, Host, HostError, RecentFile } from '../host/contract';

export type DraftState = 'none' | 'waiting' | 'kept' | 'failed';

/** The last thing worth telling about the file; the screens put it into words. */
export type FileMessage =
  | { readonly kind: 'saved'; readonly name: string }
  | { readonly kind: 'opened'; readonly name: string }
  | { readonly kind: 'restored'; readonly name: string; readonly savedAt: number }
  | { readonly kind: 'refused'; readonly name: string; readonly failure: ParseFailure }
  | { readonly kind: 'draft-refused'; readonly name: string; readonly failure: ParseFailure }
  | {
      readonly kind: 'failed';
      readonly doing: 'open' | 'save' | 'keep-draft' | 'restore' | 'recent' | 'about';
      readonly error: HostError;
    };

export interface FileSlice {
  readonly fileId: string | null;
  readonly fileName: string;
  readonly unsaved: boolean;
  readonly saving: boolean;
  readonly draft: DraftState;
  readonly recent: readonly RecentFile[];
  readonly about: About | null;
  readonly message: FileMessage | null;
  /** true once `start` has looked for kept work; before that show neither garden nor first run */
  readonly started: boolean;
  /** how many gardens were opened, started or put away so far; a save under a new name is none */
  readonly openings: number;

  /** at program start: who is the host, what is recent, is there kept work to bring back */
  start(): Promise<void>;
  /** `id` null: let the person choose (native); the page's own picker passes a recent id */
  openFile(id: string | null): Promise<Result<null, HostError | ParseFailure>>;
  /** dropped or pasted text; saving asks where */
  openText(text: string, name: string): Result<null, ParseFailure>;
  /** saves to the file it came from; `cancelled` when there is none and the host is not native: show the save-as dialog */
  save(): Promise<Result<{ readonly name: string }, HostError>>;
  saveAs(name: string, replace: boolean): Promise<Result<{ readonly name: string }, HostError>>;
  /** writes a drawing, a picture or a table beside the gardens; nothing of the garden changes */
  exportFile: Host['exportFile'];
  /** the weather service, asked at the person's word; nothing of the garden changes */
  askWeather: Host['askWeather'];
  callOffWeather: Host['callOffWeather'];
  forgetWeather: Host['forgetWeather'];
  /** of this computer, not of the garden */
  chooseColourScheme: Host['chooseColourScheme'];
  /** puts the garden away and shows the first run again; kept work is discarded */
  closeGarden(): Promise<void>;
  refreshRecent(): Promise<void>;
  dismissMessage(): void;
  /** keeps the work in hand now instead of within seconds (before closing) */
  keepDraftNow(): Promise<void>;
}
