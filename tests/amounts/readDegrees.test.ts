import { describe, expect, test } from 'vitest';
import { readDegrees } from '../../app/amounts/readDegrees';

describe('degrees of a map', () => {
  test.each([
    ['52.5', 'latitude', 52.5],
    ['52,5°', 'latitude', 52.5],
    ['-1.3', 'longitude', -1.3],
    ['\u22121.3', 'longitude', -1.3],
    ['1.3 W', 'longitude', -1.3],
    ['E 13.4', 'longitude', 13.4],
    ['33.9s', 'latitude', -33.9],
    // half a degree is thirty minutes
    ['51° 30\u2032 N', 'latitude', 51.5],
    ['0° 7\' 30" w', 'longitude', -0.125],
    ['0', 'longitude', 0],
    ['0 W', 'longitude', 0],
  ] as const)('%s as %s', (text, which, degrees) => {
    expect(readDegrees(text, which)).toEqual({ ok: true, value: degrees });
  });

  test.each([
    ['', 'latitude'],
    ['north', 'latitude'],
    ['52.5 E', 'latitude'],
    ['13.4 N', 'longitude'],
    ['-13.4 W', 'longitude'],
    ['E 13 W', 'longitude'],
    ["51° 75'", 'latitude'],
    ['52.5, 13.4', 'latitude'],
    ['1e2', 'longitude'],
  ] as const)('%s is no %s', (text, which) => {
    expect(readDegrees(text, which)).toEqual({ ok: false, error: { kind: 'no degrees' } });
  });

  test('beyond the pole and the date line', () => {
    expect(readDegrees('91', 'latitude')).toEqual({
      ok: false,
      error: { kind: 'beyond', limit: 90 },
    });
    expect(readDegrees('181 E', 'longitude')).toMatchObject({ error: { limit: 180 } });
  });
});
