// A plan that waits for an answer says for which, and has the question at hand.
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import type { BedLeftOut, PlanAnswer } from '../../app/core/plan/answer';
import { AskFirst } from '../../app/screens/week/plan/AskFirst';
import { StoreProvider } from '../../app/screens/store';
import type { MowingsState } from '../../app/store/contract';
import { exampleGarden } from '../document/exampleGarden';

function page(row: string, source: string): string {
  const garden = exampleGarden();
  const leftOut = [
    { reason: { kind: 'caution', caution: { row, detail: { source } } } },
  ] as unknown as readonly BedLeftOut[];
  return renderToStaticMarkup(
    <StoreProvider store={createStore(() => ({ garden }) as unknown as MowingsState)}>
      <AskFirst answer={{ leftOut } as PlanAnswer} />
    </StoreProvider>,
  );
}
const lawn = exampleGarden().lawns[0]!.name;

test('the lawn by its name, and a button with the question', () => {
  expect(page('not asked', lawn)).toMatch(
    new RegExp(
      `First say whether weedkiller or feed was put on ${lawn}:.*<button.*${lawn}</button`,
    ),
  );
});

test('what is no lawn is asked where it is kept; other cautions ask nothing', () => {
  expect(page('not asked', 'Straw from next door')).toMatch(/Straw from next door: till then/);
  expect(page('not asked', 'Straw from next door')).not.toMatch(/<button/);
  expect(page('cover over seedlings', lawn)).toBe('');
});
