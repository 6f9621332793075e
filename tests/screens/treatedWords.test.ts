// What is told of a treatment: day, packet, label, and the label's own words.
import { expect, test } from 'vitest';
import type { Treatment } from '../../app/document/schema';
import type { Shown } from '../../app/screens/shown';
import { labelInItsWords, treatedWords } from '../../app/screens/treatedWords';

// the words read nothing else of how a person reads
const shown = { dayWord: (date: string) => `<${date}>` } as Shown;
const treated: Treatment = {
  answer: 'treated',
  product: 'moss killer',
  date: '2013-05-04',
  label: 'interval',
  intervalDays: 28,
  labelWords: 'do not mulch for four weeks',
};

test('an interval ends on a day: 28 days after 4 May is 1 June', () => {
  expect(treatedWords(treated, shown)).toBe(
    'Treated on <2013-05-04> 2013 (moss killer): the label says to wait 28 days, till <2013-06-01>.',
  );
  const { date: _unknown, ...undated } = treated;
  expect(treatedWords(undated, shown)).toBe(
    'Treated (moss killer): the label says to wait 28 days.',
  );
});

test('the label is quoted where its words were typed, and only there', () => {
  expect(labelInItsWords(treated)).toBe('The label’s words: “do not mulch for four weeks”');
  expect(labelInItsWords({ answer: 'nothing' })).toBeNull();
});

test('a passed bean test is told of a silent label and of unknown stuff', () => {
  const passed = { beanTestPassed: '2013-06-10' };
  for (const treatment of [
    { answer: 'treated', label: 'silent', ...passed },
    { answer: 'unknown', ...passed },
  ] as const)
    expect(treatedWords(treatment, shown)).toContain('a bean-pot test passed on <2013-06-10>');
});
