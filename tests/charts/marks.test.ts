import { describe, expect, test } from 'vitest';
import { coverStates, nitrogenStates } from '../../app/core/season/verdict';
import { coverShapes, nitrogenShapes, weightShapes } from '../../app/words/markShapes';
import { inkOf, overlap } from './inkOf';

describe('every state and weight has an outline of its own', () => {
  test('none is missing, none is shared', () => {
    expect(Object.keys(nitrogenShapes).toSorted()).toEqual([...nitrogenStates].toSorted());
    expect(Object.keys(coverShapes).toSorted()).toEqual([...coverStates].toSorted());
    expect(Object.keys(weightShapes)).toEqual(['note', 'caution', 'stop']);
    const outlines = [nitrogenShapes, coverShapes, weightShapes].flatMap((shapes) =>
      Object.values(shapes).map((shape) => shape.solid + shape.open),
    );
    expect(new Set(outlines).size).toBe(outlines.length);
    for (const outline of outlines) expect(outline).toMatch(/^M/);
  });
});

describe('without any colour the marks are told apart by what they ink', () => {
  test('the reckoning: a square is itself, and half of itself is half', () => {
    const square = inkOf({ solid: 'M0 0 H20 V20 H0 Z', open: '' });
    expect(square.size).toBe(1600);
    expect(overlap(square, square)).toBe(1);
    expect(overlap(square, inkOf({ solid: 'M0 0 H10 V20 H0 Z', open: '' }))).toBe(0.5);
    // a disc of radius 7.5 over the whole box, and the bow drawn as an arc of the same size
    expect(inkOf(nitrogenShapes['enough to the end']).size / 4).toBeCloseTo(Math.PI * 7.5 ** 2, -1);
  });

  test.each([
    ['nitrogen', nitrogenShapes],
    ['cover', coverShapes],
    ['weight', weightShapes],
  ])('%s: no two share more than two thirds', (_, shapes) => {
    const inks = Object.entries(shapes).map(([name, shape]) => ({ name, ink: inkOf(shape) }));
    for (const one of inks) {
      expect(one.ink.size, one.name).toBeGreaterThan(80);
      for (const other of inks)
        if (one !== other)
          expect(overlap(one.ink, other.ink), `${one.name}, ${other.name}`).toBeLessThan(2 / 3);
    }
  });
});
