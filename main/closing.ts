/** What closing a window with unsaved changes needs from its surroundings. */
export interface ClosingSteps {
  /** asks the person, naming the garden */
  ask(name: string): Promise<'save' | 'discard' | 'cancel'>;
  /** asks the page to save, as its menu would */
  requestSave(): void;
  discardDraft(): Promise<unknown>;
  close(): void;
}

export interface Closing {
  /** the window's close event */
  onClose(event: { preventDefault(): void }): void;
  /** the page said what the window holds */
  described(window: { name: string; unsaved: boolean }): void;
  /** the page's request to save was answered */
  saveAnswered(wasSaved: boolean): void;
  readonly isUnsaved: boolean;
}

/**
 * Guards the window's closing. Save closes only once the page has said that nothing is unsaved any
 * more; a save that fails or is cancelled leaves the window as it was.
 */
export function createClosing(steps: ClosingSteps): Closing {
  let window = { name: '', unsaved: false };
  let isAsking = false;
  let isAgreed = false;
  let waitsFor: 'nothing' | 'the save' | 'the page' = 'nothing';

  function agree() {
    isAgreed = true;
    steps.close();
  }

  async function ask() {
    isAsking = true;
    const choice = await steps.ask(window.name).finally(() => (isAsking = false));
    waitsFor = choice === 'save' ? 'the save' : 'nothing';
    if (choice === 'save') steps.requestSave();
    if (choice === 'discard') {
      await steps.discardDraft();
      agree();
    }
  }

  return {
    onClose(event) {
      if (isAgreed || !window.unsaved) return;
      event.preventDefault();
      if (!isAsking) void ask();
    },
    described(next) {
      window = next;
      if (waitsFor !== 'the page') return;
      waitsFor = 'nothing';
      if (!next.unsaved) agree();
    },
    saveAnswered(wasSaved) {
      if (waitsFor === 'the save') waitsFor = wasSaved ? 'the page' : 'nothing';
    },
    get isUnsaved() {
      return window.unsaved && !isAgreed;
    },
  };
}
