import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { DotsChart } from '../../app/charts/dots/Chart';
import { dotRadius, dotsGeometry, dotsPast } from '../../app/charts/dots/geometry';
import { dotsTable } from '../../app/charts/dots/tableData';
import { dotsSay } from '../../app/words/dotsWords';

const values = fc
  .array(fc.double({ min: 0, max: 12, noNaN: true }), { minLength: 20, maxLength: 20 })
  .map((some) => some.sort((one, other) => one - other));

describe('imagined seasons as dots', () => {
  test('law: each stands at its own value, inside, and none on another', () => {
    fc.assert(
      fc.property(
        values,
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        fc.constantFrom(260, 400, 560),
        (some, line, width) => {
          const drawing = dotsGeometry(some, line, width);
          const perUnit = drawing.x(1) - drawing.x(0);
          for (const [at, { value, x, y }] of drawing.dots.entries()) {
            expect(x).toBeCloseTo(drawing.x(0) + value * perUnit, 6);
            expect(x + dotRadius).toBeLessThanOrEqual(width);
            expect(x - dotRadius).toBeGreaterThanOrEqual(0);
            expect(y - dotRadius).toBeGreaterThan(0);
            expect(y + dotRadius).toBeLessThanOrEqual(drawing.floor);
            for (const other of drawing.dots.slice(at + 1))
              expect(Math.hypot(x - other.x, y - other.y)).toBeGreaterThanOrEqual(2 * dotRadius);
          }
          expect(drawing.x(line)).toBeLessThan(width);
        },
      ),
    );
  });

  test('what is pressed is the value there, to a tenth, and never off the scale', () => {
    const drawing = dotsGeometry([0.5, 2], 1.2, 500);
    expect(drawing.valueAt(drawing.x(1.5))).toBeCloseTo(1.5, 9);
    expect(drawing.valueAt(-40)).toBe(0);
    expect(drawing.valueAt(900)).toBe(drawing.top);
  });

  const twenty = Array.from({ length: 20 }, (_, at) => 0.5 + at / 10);
  const markup = (line: number | null) =>
    renderToStaticMarkup(<DotsChart values={twenty} overFedLine={line} />);

  test('the count that is stated is that of the open dots drawn past the line', () => {
    for (const line of [0.2, 0.85, 1.2, 2.35, 9]) {
      const drawn = markup(line);
      const open = [...drawn.matchAll(/class="dots-dot dots-past"/g)].length;
      const past = twenty.filter((value) => value > line).length;
      expect(open).toBe(past);
      expect([...drawn.matchAll(/class="dots-dot/g)]).toHaveLength(20);
      expect(drawn).toContain(`>${dotsSay(past, 20, line, line)}<`);
      // and each lies to the right of the line
      const x = Number(/class="dots-line" d="M(\S+) /.exec(drawn)![1]);
      for (const [, kind, at] of drawn.matchAll(/class="(dots-dot[^"]*)" cx="([^"]+)"/g))
        expect(Number(at) > x).toBe(kind === 'dots-dot dots-past');
    }
    expect(dotsPast(twenty, 1.2)).toBe(12);
  });

  test('in words', () => {
    expect(dotsSay(7, 20, 1.389, 1.389)).toBe(
      '7 of 20 dots lie past 1.4 times, where it has too much.',
    );
    expect(dotsSay(1, 20, 2, 1.2)).toBe('1 of 20 dots lies past 2 times.');
    expect(dotsSay(0, 20, 9, null)).toBe('None of 20 dots lies past 9 times.');
    expect(dotsSay(20, 20, 1, null)).toBe('All 20 dots lie past once.');
  });

  test('it is a slider that says where the line stands; where there is no line of too much it stands at once', () => {
    expect(markup(1.2)).toMatch(/role="slider"[^>]*aria-valuenow="1.2" aria-valuetext="1.2 times"/);
    expect(markup(null)).toMatch(/aria-valuenow="1" aria-valuetext="once"/);
  });

  test('the numbers taken away are the dots', () => {
    expect(dotsTable([0.5, 2]).rows).toEqual([
      [1, 0.5],
      [2, 2],
    ]);
  });
});
