import { describe, expect, test } from 'vitest';
import { iconPaths } from '../../app/controls/marks/iconPaths';

describe('icons', () => {
  test('no two share a path', () => {
    const paths = Object.values(iconPaths);
    expect(new Set(paths).size).toBe(paths.length);
  });

  test.each(Object.entries(iconPaths))(
    '%s keeps inside its box, written out in full',
    (_, path) => {
      // capital letters only: every number is a place in the box, but for the six of an arc
      expect(path).toMatch(/^M[\d\s.MLHVCAZ-]+$/);
      const places = path.replaceAll(/A[\d.]+ [\d.]+ 0 [01] [01]/g, 'L').match(/-?[\d.]+/g) ?? [];
      for (const place of places.map(Number)) {
        expect(place).toBeGreaterThanOrEqual(0.5);
        expect(place).toBeLessThanOrEqual(19.5);
      }
    },
  );
});
