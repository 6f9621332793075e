import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import type { DrawsAnswer } from '../../app/core/season/draws/runDraws';
import { nitrogenStates } from '../../app/core/season/verdict';
import { ImaginedLine, StateOdds } from '../../app/screens/Imagined';
import { StoreProvider } from '../../app/screens/store';
import type { BedDraws, DrawsWork, MowingsState } from '../../app/store/contract';

const answer = (count: number): DrawsAnswer =>
  ({
    bedId: 'bed',
    count,
    effectiveCount: count,
    states: {
      ...Object.fromEntries(nitrogenStates.map((state) => [state, 0])),
      short: 0.8,
      'about right': 0.2,
    },
  }) as DrawsAnswer;
const drawn = (changes: Partial<BedDraws> = {}): BedDraws => ({
  answer: answer(1000),
  stage: 'whole',
  isBehind: false,
  ...changes,
});
const ready: DrawsWork = { state: 'ready', isStopped: false, done: 9000, of: 9000, reason: null };

function line(work: Partial<DrawsWork>, draws: Readonly<Record<string, BedDraws>> = {}): string {
  const state = { draws, drawsWork: { ...ready, ...work } } as MowingsState;
  return renderToStaticMarkup(
    <StoreProvider store={createStore(() => state)}>
      <ImaginedLine />
    </StoreProvider>,
  );
}
const buttons = (markup: string): readonly (string | undefined)[] =>
  [...markup.matchAll(/<button[^>]*>([^<]*)/g)].map(([, words]) => words);

describe('the line about the imagined seasons', () => {
  const states: readonly (readonly [string, Partial<DrawsWork>, RegExp, string])[] = [
    ['none yet', { state: 'idle' }, /No season has been imagined yet/, 'Stop imagining'],
    ['under way', { state: 'working', done: 1200 }, /1,200 of 9,000/, 'Stop imagining'],
    ['stopped', { state: 'idle', isStopped: true }, /Imagining is stopped/, 'Go on imagining'],
    ['failed', { state: 'failed', reason: 'no worker' }, /did not come out/, 'Stop imagining'],
  ];
  test.each(states)('%s: says so, with the one button', (_name, work, words, button) => {
    const markup = line(work);
    expect(markup).toMatch(words);
    expect(buttons(markup)).toEqual([button]);
    expect(markup.includes('<progress')).toBe(work.state === 'working');
  });
  test('all there: how many each bed rests on', () => {
    expect(line({}, { a: drawn(), b: drawn() })).toMatch(/come from 1,000 imagined seasons/);
    expect(line({}, { a: drawn(), b: drawn({ answer: answer(4000) }) })).toMatch(/1,000 to 4,000/);
  });
  test('a failure keeps the engine’s own words behind a press', () => {
    expect(line({ state: 'failed', reason: 'no worker' })).toMatch(/<details.*no worker/s);
  });
});

describe('the odds beside a state', () => {
  const odds = (draws: BedDraws | undefined): string =>
    renderToStaticMarkup(<StateOdds draws={draws} state="short" />);
  test('lead with the state that is shown', () =>
    expect(odds(drawn())).toContain('Short in 8 of 10 imagined seasons, about right in 2.'));
  test('say quietly when they are of before the last change', () => {
    expect(odds(drawn({ isBehind: true }))).toMatch(/soft.*from before the last change/);
    expect(odds(drawn())).not.toContain('before');
  });
  test('hold their place until they come', () =>
    expect(odds(undefined)).toContain('still to come'));
});
