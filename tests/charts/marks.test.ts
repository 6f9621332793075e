import { describe, expect, test } from 'vitest';
import { coverStates, nitrogenStates } from '../../app/core/season/verdict';
import { coverShapes, nitrogenShapes, weightShapes } from '../../app/words/markShapes';

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
