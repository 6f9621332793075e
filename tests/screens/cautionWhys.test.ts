// What stands in a caution's sentence and rests on its line opens why.
import { expect, test } from 'vitest';
import { metricUnits } from '../../app/amounts/unitSystem';
import type { Caution } from '../../app/core/season/verdict';
import { figuresAndLines } from '../../app/screens/why/cautionWhys';
import { limits } from '../../app/tables/thresholds';
import { cautionSentence } from '../../app/words/cautionSentences';
import { cutAtFigures } from '../../app/words/why';

const laid: Caution = {
  kind: 'season total',
  row: 'season total',
  weight: 'stop',
  number: 83,
  threshold: limits.lines['season total'].stop,
  unit: 'g/m2',
  date: null,
  layerId: null,
  detail: {},
};

test('the figure of a stop and the line it is past have one why', () => {
  const figures = figuresAndLines(laid, metricUnits);
  const open = cutAtFigures(
    cautionSentence(laid, metricUnits),
    figures.map(({ text }) => text),
  ).flatMap((stretch) => (typeof stretch === 'string' ? [] : [stretch.text]));
  expect(open).toEqual(['83 g/m2', '80 g/m2']);
  expect(new Set(figures.map(({ why }) => why)).size).toBe(1);
});

test('a stop without a number has nothing to open', () => {
  expect(figuresAndLines({ ...laid, number: null }, metricUnits)).toEqual([]);
});
