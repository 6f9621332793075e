// The head always says where the work in hand is: in a file, kept aside, or neither.
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { SaveState } from '../../app/screens/frame/SaveState';
import { StoreProvider } from '../../app/screens/store';
import type { MowingsState } from '../../app/store/contract';

const said = (state: Partial<MowingsState>): string =>
  renderToStaticMarkup(
    <StoreProvider
      store={createStore(
        () =>
          ({
            saving: false,
            unsaved: false,
            draft: 'none',
            fileId: null,
            fileName: '',
            ...state,
          }) as MowingsState,
      )}
    >
      <SaveState />
    </StoreProvider>,
  ).replace(/<[^>]*>/g, '');
const inFile = { fileId: 'f1', fileName: 'Plot' } as const;

test.each([
  ['No changes yet', {}],
  ['Saved in Plot', inFile],
  ['Saving…', { ...inFile, saving: true, unsaved: true }],
  ['Changed…', { unsaved: true }],
  ['Changed…', { ...inFile, unsaved: true }],
  ['Changes kept, not yet in a file', { unsaved: true, draft: 'kept' }],
  ['Changes kept, not yet saved in Plot', { ...inFile, unsaved: true, draft: 'kept' }],
  ['Changes could not be kept: save now', { unsaved: true, draft: 'failed' }],
] as const)('%s', (words, state) => {
  expect(said(state as Partial<MowingsState>)).toBe(words);
});
