import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { dayOf } from '../../app/core/days';
import { answerBed } from '../../app/core/season/bedAnswer';
import { bedQuestion } from '../../app/document/bedQuestion';
import { SeasonsAccount } from '../../app/screens/beds/SeasonsAccount';
import { StoreProvider } from '../../app/screens/store';
import type { MowingsState } from '../../app/store/contract';
import { limits } from '../../app/tables/thresholds';
import { exampleGarden } from '../document/exampleGarden';

function page(knownSince: string | null, month = 1): string {
  const garden = exampleGarden();
  garden.beds[0]!.knownSince = knownSince;
  garden.garden.seasonStartMonth = month;
  const results = answerBed(bedQuestion(garden, 'bed-1', dayOf('2021-06-20')), limits);
  return renderToStaticMarkup(
    <StoreProvider store={createStore(() => ({ garden }) as MowingsState)}>
      <SeasonsAccount results={results} />
    </StoreProvider>,
  );
}
const heads = (markup: string): string[] =>
  [...markup.matchAll(/<th scope="col">([^<]*)/g)].map(([, words]) => words!);

test('a bed of one season: as it should end, and what is left for next year', () => {
  const markup = page(null);
  expect(heads(markup)).toEqual(['Season', '2021, as it should end']);
  expect(markup).toContain('Left for next year');
  expect(markup).toMatch(/in the cover<\/th><td>\d+\.\d\d/);
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
