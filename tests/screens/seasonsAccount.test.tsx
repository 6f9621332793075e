import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { answerCarried } from '../../app/core/season/draws/carriedRelease';
import { bedQuestion } from '../../app/document/bedQuestion';
import { carriedQuestions } from '../../app/document/seasonsAccount';
import { SeasonsAccount } from '../../app/screens/beds/SeasonsAccount';
import { StoreProvider } from '../../app/screens/store';
import type { MowingsState, WorkState } from '../../app/store/contract';
import { limits } from '../../app/tables/thresholds';
import { exampleGarden } from '../document/exampleGarden';

function page(knownSince: string | null, month = 1, state: WorkState = 'ready'): string {
  const garden = exampleGarden();
  garden.beds[0]!.knownSince = knownSince;
  garden.garden.seasonStartMonth = month;
  const results = answerBed(bedQuestion(garden, 'bed-1', dayOf('2021-06-20')), limits);
  const carried = {
    bedId: 'bed-1',
    state,
    reason: null,
    ends: state === 'ready' ? answerCarried(carriedQuestions(garden, results.input)) : [],
  };
  return renderToStaticMarkup(
    <StoreProvider store={createStore(() => ({ garden, carried }) as unknown as MowingsState)}>
      <SeasonsAccount garden={garden} results={results} />
    </StoreProvider>,
  );
}
const heads = (markup: string): string[] =>
  [...markup.matchAll(/<th scope="col">([^<]*)/g)].map(([, words]) => words!);

test('a bed of one season: as it should end, and what is left for next year', () => {
  const markup = page(null);
  expect(heads(markup)).toEqual(['Season', '2021, as it should end']);
  expect(markup).toContain('Left for next year');
  expect(markup).toMatch(/in the cover<\/th><td><button[^>]*>\d+\.\d\d</);
  expect(markup).toMatch(/left from 2021.* in 2022/);
});

test('a bed of many: the last that is over and this one, and what each leaves', () => {
  const markup = page('2017-03-01');
  expect(heads(markup)).toEqual(['Season', '2020', '2021, as it should end']);
  expect(markup.match(/<p>/g)).toHaveLength(2);
  expect(markup).toMatch(/left from 2020/);
  expect(markup).toMatch(/left from 2021/);
});

test('seasons over the turn of the year are called by both', () => {
  expect(heads(page('2019-03-01', 7))).toEqual(['Season', '2019–20', '2020–21, as it should end']);
});

test('while the worker is at it the account stands, and says what is still to come', () => {
  const markup = page('2017-03-01', 1, 'working');
  expect(heads(markup)).toEqual(['Season', '2020', '2021, as it should end']);
  expect(markup).toContain('aria-busy="true"');
  expect(markup).toMatch(/<p>What should come free of it next year is being reckoned\.<\/p>/);
  expect(markup).not.toMatch(/left from 2020/);
});

test('where it failed the account stands, and the cure is to go by what is left', () => {
  const markup = page('2017-03-01', 1, 'failed');
  expect(markup).toContain('Left for next year');
  expect(markup).toMatch(/role="alert".*cannot be reckoned just now/);
  expect(markup).not.toContain('is being reckoned');
});
