// A bed under what the plan proposes: the engine's own forecast, forgotten with the garden it was of.
import { describe, expect, test } from 'vitest';
import { answerProposal } from '../../app/core/season/bedAnswer';
import type { Amount } from '../../app/document/schema';
import type { LayingDraft } from '../../app/store/contract';
import { proposalOf } from '../../app/store/proposal';
import { limits } from '../../app/tables/thresholds';
import { dayOf } from '../../app/core/days';
import { sameThreadEngine } from '../../app/worker/client';
import type { Engine } from '../../app/worker/protocol';
import { exampleGarden } from '../document/exampleGarden';
import { settle, storeWith } from './surroundings';

const amount: Amount = {
  text: '20 L',
  quantity: { kind: 'volume', litres: 20 },
  certainty: 'plain',
};
const draft: LayingDraft = {
  bedId: 'bed-1',
  date: '2021-06-20',
  placement: 'laid',
  passedStops: [],
  parts: [
    {
      from: { source: 'mowing', mowingId: 'mowing-1' },
      amount,
      condition: 'limp',
      wetness: 'damp',
    },
  ],
};

describe('a bed under a proposal', () => {
  test('is what the engine makes of it, and is written down nowhere', async () => {
    const { store } = await storeWith(exampleGarden(), { engine: sameThreadEngine() });
    const drafts = [draft];
    store.getState().wantAhead('bed-1', drafts);
    expect(store.getState().ahead).toMatchObject({ bedId: 'bed-1', state: 'working' });
    await settle();
    const ahead = store.getState().ahead!;
    const garden = store.getState().garden!;
    const proposal = proposalOf(garden, drafts, dayOf('2021-06-20'));
    if (typeof proposal === 'string') throw new Error(proposal);
    expect(ahead.state).toBe('ready');
    expect(ahead.answer).toEqual(answerProposal(proposal.question.beds[0]!, limits));
    expect(ahead.applications).toEqual(proposal.applications);
    const laid = ahead.answer!.after.input.layers.map(({ id }) => id);
    for (const { id } of ahead.applications) expect(laid).toContain(id);
    expect(garden.applications).toEqual(exampleGarden().applications);
    expect(store.getState().past).toEqual([]);
  });

  test('is forgotten with none, and with the garden it was of', async () => {
    const { store } = await storeWith(exampleGarden(), { engine: sameThreadEngine() });
    store.getState().wantAhead('bed-1', [draft]);
    await settle();
    store.getState().wantAhead('bed-1', []);
    expect(store.getState().ahead).toBeNull();
    store.getState().wantAhead('bed-1', [draft]);
    store.getState().editBed('bed-1', { name: 'Another' });
    expect(store.getState().ahead).toBeNull();
    await settle();
    // the answer that comes late is of no bed that is there
    expect(store.getState().ahead).toBeNull();
  });

  test('what the garden could not hold, and what cannot be reckoned, fails', async () => {
    const { store } = await storeWith(exampleGarden(), { engine: sameThreadEngine() });
    const lost = {
      ...draft,
      parts: [{ ...draft.parts[0]!, from: { source: 'mowing', mowingId: 'none' } as const }],
    };
    store.getState().wantAhead('bed-1', [lost]);
    await settle();
    expect(store.getState().ahead).toMatchObject({ state: 'failed', answer: null });
    const broken: Engine = {
      ask: async () => ({ state: 'failed', reason: 'a stone' }),
      stop: () => undefined,
    };
    const other = await storeWith(exampleGarden(), { engine: broken });
    other.store.getState().wantAhead('bed-1', [draft]);
    await settle();
    expect(other.store.getState().ahead).toMatchObject({ state: 'failed', answer: null });
  });
});
