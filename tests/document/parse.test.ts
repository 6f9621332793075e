import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { firstJsonFault, lineAndColumn, nestingDepth } from '../../app/document/jsonPosition';
import {
  isUnbroken,
  migrate,
  migrations,
  type Migration,
} from '../../app/document/migrations/chain';
import { characterLimit, levelLimit, parseGarden } from '../../app/document/parse';
import { gardenSchema, schemaVersion, type Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import { exampleGarden } from './exampleGarden';

const documents = join(import.meta.dirname, '../documents');

/** The example with some of its file changed, as a hand or another program might. */
const withFile = (change: (file: Record<string, any>) => void): string => {
  const file = JSON.parse(serializeGarden(exampleGarden())) as Record<string, any>;
  change(file);
  return JSON.stringify(file);
};
const faultOf = (text: string) => {
  const result = parseGarden(text);
  return result.ok ? null : result.error;
};

describe('a garden written and read back', () => {
  test('says the same', () => {
    const result = parseGarden(serializeGarden(exampleGarden()));
    expect(result).toEqual({ ok: true, value: exampleGarden() });
  });
  test('save, load, save gives the same bytes', () => {
    const once = serializeGarden(exampleGarden());
    const read = parseGarden(once);
    expect(read.ok && serializeGarden(read.value)).toBe(once);
  });
  test('the order in which keys were made does not show', () => {
    const reversed = (value: unknown): unknown =>
      Array.isArray(value)
        ? value.map(reversed)
        : value !== null && typeof value === 'object'
          ? Object.fromEntries(
              Object.entries(value)
                .reverse()
                .map(([key, item]) => [key, reversed(item)]),
            )
          : value;
    const upsideDown = reversed(exampleGarden()) as Garden;
    expect(Object.keys(upsideDown)[0]).toBe('weather');
    expect(serializeGarden(upsideDown)).toBe(serializeGarden(exampleGarden()));
  });
  test('two-space JSON, a day of weather to a line, a line end at the end', () => {
    const lines = serializeGarden(exampleGarden()).split('\n');
    expect(lines[1]).toBe('  "format": "mowings-garden",');
    expect(lines).toContain('      ["2021-06-19", 13, null, 2.4],');
    expect(lines.at(-1)).toBe('');
  });
  test('any text a person can type survives', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 40 }), (name) => {
        const garden = exampleGarden();
        garden.garden.name = name;
        const read = parseGarden(serializeGarden(garden));
        expect(read.ok && read.value.garden.name).toBe(name);
      }),
    );
  });
  test('a byte order mark before the text is no fault', () => {
    expect(parseGarden(`\uFEFF${serializeGarden(exampleGarden())}`).ok).toBe(true);
  });
});

describe('texts that are refused, each with its kind', () => {
  test.each([
    ['nothing', '', 1, 1],
    ['a cut file', '{\n  "format": "mowings-garden",\n  "sch', 3, 7],
    ['a trailing comma', '{"a": [1, 2,]}', 1, 13],
    ['a comma forgotten', '{\r\n  "a": 1\r\n  "b": 2\r\n}', 3, 3],
    ['a word', '{"a": nil}', 1, 8],
    ['a number that is none', '{"a": 01}', 1, 8],
    ['a line end in a text', '{"a": "x\ny"}', 1, 9],
    ['a second value', '{} {}', 1, 4],
    ['a lone escape', '["\\x"]', 1, 4],
  ])('not JSON: %s', (_name, text, line, column) => {
    expect(faultOf(text)).toEqual({ kind: 'not-json', line, column });
  });
  test('the place of the fault is found exactly when the engine refuses the text', () => {
    const json = fc
      .json()
      .chain((text) =>
        fc.tuple(
          fc.constant(text),
          fc.nat(text.length),
          fc.constantFrom('', ',', '"', '}', ']', '\\', '1', 'e', '-', '.', '\n', 'x', ' '),
        ),
      );
    fc.assert(
      fc.property(json, ([text, at, put]) => {
        const spoiled = text.slice(0, at) + put + text.slice(at + 1);
        let isJson = true;
        try {
          JSON.parse(spoiled);
        } catch {
          isJson = false;
        }
        expect(firstJsonFault(spoiled) === null).toBe(isJson);
      }),
      { numRuns: 2000 },
    );
  });
  test('lines end as editors end them', () => {
    expect(lineAndColumn('a\nb\r\nc\rde', 8)).toEqual({ line: 4, column: 2 });
  });
  test.each(['[]', 'null', '3', '"mowings-garden"', '{}', '{"format": "other"}'])(
    'not a garden: %s',
    (text) => {
      expect(faultOf(text)).toEqual({ kind: 'not-a-garden' });
    },
  );
  test('newer than this program, whatever else is in it', () => {
    const text = withFile((file) => {
      file['schemaVersion'] = 7;
      file['beds'] = 'something else by then';
    });
    expect(faultOf(text)).toEqual({ kind: 'newer', version: 7, known: schemaVersion });
  });
  test.each(['1', 0, -1, 1.5, null])('a version of %s is broken', (version) => {
    expect(faultOf(withFile((file) => (file['schemaVersion'] = version)))).toMatchObject({
      kind: 'broken',
      where: 'schemaVersion',
    });
  });
  test.each<[string, (file: Record<string, any>) => void, string, string]>([
    ['a missing area', (f) => delete f['beds'][1].areaM2, 'bed 2 “Frame”, area', 'it is missing'],
    [
      'an area in words',
      (f) => (f['beds'][0].areaM2 = '6'),
      'bed 1 “Long bed”, area',
      'a number is wanted',
    ],
    [
      'an area of nothing',
      (f) => (f['beds'][0].areaM2 = 0),
      'bed 1 “Long bed”, area',
      'more than 0 is wanted, not 0',
    ],
    [
      'a day that is none',
      (f) => (f['mowings'][0].date = '2021-02-29'),
      'mowing 1 of 2021-02-29, day',
      'not a day, wanted YYYY-MM-DD',
    ],
    [
      'a key too many',
      (f) => (f['beds'][0].colour = 'red'),
      'bed 1 “Long bed”',
      'not known here: colour',
    ],
    ['other units', (f) => (f['units'].mass = 'lb'), 'units, mass', 'one of these is wanted: kg'],
    [
      'thirteen months',
      (f) => f['weather'].normals.wetDays.push(1),
      'weather, usual weather, wet days',
      'it has more than 12 entries',
    ],
    [
      'an unknown way',
      (f) => (f['plantings'][0].how = 'flown'),
      'planting 1 “Climbing beans” on “Long bed”, how',
      'one of these is wanted: sown, planted',
    ],
    [
      'an unknown quantity',
      (f) => (f['mowings'][0].amount.quantity = { kind: 'heaps', count: 2 }),
      'mowing 1 of 2021-05-29, amount, quantity, kind',
      'not one of the forms that are known',
    ],
    [
      'an id used twice',
      (f) => (f['beds'][1].id = 'bed-1'),
      'bed 2 “Frame”, id',
      'an id is used twice',
    ],
    [
      'days that fall',
      (f) => f['weather'].days.reverse(),
      'weather of 2021-06-19',
      '2021-06-19 comes after 2021-06-20; days must rise',
    ],
    [
      'a mown layer',
      (f) => (f['applications'][0].amount = f['mowings'][1].amount),
      'layer 1 of 2021-05-29 on “Long bed”, amount',
      'it cannot be given as mown here',
    ],
    [
      'an end before the start',
      (f) => (f['plantings'][1].cleared = '2021-05-01'),
      'planting 2 “Tomatoes” on “Long bed”, day it was cleared',
      'it lies before the start (2021-05-01 and 2021-05-25)',
    ],
    [
      'a bag heavier than stone',
      (f) => (f['containers'][0].weighed.kilograms = 12500),
      'container 1 “bag”, what it weighed',
      'more than can be believed (12500)',
    ],
    [
      'tonnes of straw',
      (f) => (f['stock'][1].amount.quantity.kilograms = 1.8e6),
      'stock 2 “Straw”, amount',
      'more than can be believed (1800000)',
    ],
    [
      'a garden of antiquity',
      (f) => (f['mowings'][0].date = '0021-05-29'),
      'mowing 1 of 0021-05-29',
      'a year from 1900 to 2199 is wanted, not 0021',
    ],
    [
      'upside-down normals',
      (f) => (f['weather'].normals.minimumCelsius[2] = 20),
      'usual weather of March, lowest temperature',
      'it lies above the highest (20 and 9)',
    ],
  ])('broken: %s', (_name, change, where, what) => {
    expect(faultOf(withFile(change))).toEqual({ kind: 'broken', where, what });
  });
  test.each<[string, (file: Record<string, any>) => void, string, string]>([
    ['planting', (f) => (f['plantings'][0].bedId = 'bed-9'), 'planting 1 “Climbing beans”', 'bed'],
    [
      'crop',
      (f) => (f['plantings'][0].cropId = 'moonwort'),
      'planting 1 on “Long bed”',
      'crop "moonwort"',
    ],
    ['mowing', (f) => (f['mowings'][1].lawnId = 'x'), 'mowing 2 of 2021-06-12', 'lawn'],
    [
      'heap that is a store',
      (f) => (f['mowings'][0].rest.stockId = 'stock-2'),
      'mowing 1 of 2021-05-29',
      'heap',
    ],
    ['container', (f) => f['containers'].pop(), 'layer 1 of 2021-05-29 on “Long bed”', 'container'],
    [
      'laying from a mowing',
      (f) => (f['applications'][0].from.mowingId = 'x'),
      'layer 1 of 2021-05-29 on “Long bed”',
      'mowing',
    ],
    [
      'laying from a stock',
      (f) => (f['applications'][1].from.stockId = 'x'),
      'layer 2 of 2021-05-29 on “Long bed”',
      'stock',
    ],
    [
      'material',
      (f) => (f['applications'][2].from.materialId = 'moss'),
      'layer 3 of 2021-06-05 on “Frame”',
      'material "moss"',
    ],
    [
      'own material',
      (f) => (f['materials'][0].basedOn = 'own-1'),
      'material 1 “Barley straw, tested”',
      'material "own-1"',
    ],
    ['event', (f) => (f['events'][0].bedId = 'x'), 'entry 1, water of 2021-06-01', 'bed'],
    [
      'harvest of another bed',
      (f) => (f['events'][4].bedId = 'bed-2'),
      'entry 5, harvest of 2021-06-18 on “Frame”',
      'planting of that bed',
    ],
  ])('dangling: %s', (_name, change, where, what) => {
    expect(faultOf(withFile(change))).toEqual({ kind: 'dangling', where, what });
  });
});

// They are so long that whatever takes the square of a text's length for it would not end.
describe('hostile texts are answered at all', () => {
  const within = (text: string, kind: string) => {
    const result = parseGarden(text);
    expect(result.ok ? 'read' : result.error.kind).toBe(kind);
  };
  test('too much text', () => within(' '.repeat(characterLimit + 1), 'too-large'));
  test('deep nesting', () => {
    within('['.repeat(5_000_000), 'too-large');
    within(
      withFile((file) => (file['x'] = JSON.parse('['.repeat(40) + ']'.repeat(40)))),
      'too-large',
    );
  });
  test('brackets inside a text are no nesting', () => {
    expect(nestingDepth(JSON.stringify(['['.repeat(100), '\\"[[']), levelLimit)).toBe(1);
  });
  test('one enormous text', () => {
    within(
      withFile((file) => (file['garden'].name = 'x'.repeat(10_000_000))),
      'broken',
    );
  });
  test('an unclosed text', () => within(`{"a": "${'\\u0041'.repeat(2_000_000)}`, 'not-json'));
  test('millions of entries', () => {
    within(
      withFile((file) => (file['beds'] = Array.from({ length: 4_000_000 }, () => 1))),
      'broken',
    );
    within(
      withFile((file) => (file['beds'] = Array.from({ length: 200 }, () => Array(30_000).fill(1)))),
      'broken',
    );
  });
  test('tens of thousands of keys', () => {
    const keys = Object.fromEntries(
      Array.from({ length: 39_000 }, (_unused, key) => [`k${key}`, 1]),
    );
    within(
      withFile((file) => (file['garden'] = keys)),
      'broken',
    );
  });
  test('forty thousand wrong days', () => {
    within(
      withFile((file) => (file['weather'].days = Array(40_000).fill(['x', 1, 2, 3]))),
      'broken',
    );
  });
  test.each(['', 'garden', 'beds'])('a prototype slipped in at "%s" reaches nothing', (key) => {
    const plain = serializeGarden(exampleGarden());
    const evil = '"__proto__": {"polluted": true, "areaM2": 5},';
    const text =
      key === ''
        ? plain.replace('{', `{${evil}`)
        : plain.replace(new RegExp(`"${key}": (\\[\\s*)?\\{`), (found) => found + evil);
    expect(text).not.toBe(plain);
    expect(faultOf(text)).toMatchObject({ kind: 'broken', what: 'not known here: __proto__' });
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });
  test('a constructor as a value is only a wrong value', () => {
    expect(
      faultOf(withFile((file) => (file['garden'].constructor = { prototype: {} }))),
    ).toMatchObject({
      kind: 'broken',
    });
  });
  test('any JSON at all is refused or read, never thrown', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(parseGarden(JSON.stringify(value)).ok).toBe(false);
      }),
    );
  });
  test('a garden with any one place replaced by any value is refused or read, never thrown', () => {
    const pathsOf = (value: unknown, path: (string | number)[] = []): (string | number)[][] =>
      value !== null && typeof value === 'object'
        ? [
            path,
            ...Object.entries(value).flatMap(([key, item]) =>
              pathsOf(item, [...path, Array.isArray(value) ? Number(key) : key]),
            ),
          ]
        : [path];
    const paths = pathsOf(exampleGarden()).filter((path) => path.length > 0);
    fc.assert(
      fc.property(fc.constantFrom(...paths), fc.jsonValue({ maxDepth: 2 }), (path, value) => {
        const text = withFile((file) => {
          let place: any = file;
          for (const step of path.slice(0, -1)) place = place[step];
          place[path.at(-1) ?? ''] = value;
        });
        const result = parseGarden(text);
        if (result.ok) expect(gardenSchema.safeParse(result.value).success).toBe(true);
        else expect(result.error.kind).not.toBe('not-json');
      }),
      { numRuns: 500 },
    );
  });
});

describe('migrations', () => {
  const chain: readonly Migration[] = [
    { to: 2, says: 'Two.', up: (document) => ({ ...document, two: true }) },
    {
      to: 3,
      says: 'Three.',
      up: (document) => {
        const { two, ...rest } = document;
        return { ...rest, three: two === true ? 'from two' : 'alone' };
      },
    },
  ];
  test('the shipped chain has no gaps and ends at the version that is written', () => {
    expect(isUnbroken(migrations, schemaVersion)).toBe(true);
  });
  test('a gap, a repeat, a missing end are seen', () => {
    expect(isUnbroken(chain, 3)).toBe(true);
    expect(isUnbroken(chain.slice(1), 3)).toBe(false);
    expect(isUnbroken([...chain, ...chain.slice(1)], 4)).toBe(false);
    expect(isUnbroken(chain, 4)).toBe(false);
  });
  test('every step after the version of the file is taken, in order, on a copy', () => {
    const first = { schemaVersion: 1 };
    expect(migrate(first, 1, chain)).toEqual({ schemaVersion: 3, three: 'from two' });
    expect(migrate({ schemaVersion: 2 }, 2, chain)).toEqual({ schemaVersion: 3, three: 'alone' });
    expect(first).toEqual({ schemaVersion: 1 });
  });
  test('every shipped step has a frozen file of the version before it', () => {
    for (const { to } of migrations) {
      expect(readFileSync(join(documents, `v${String(to - 1)}.json`), 'utf8')).not.toBe('');
    }
  });
  test('a step that cannot read its file is a broken file, not a crash', () => {
    const failing: Migration[] = [
      {
        to: 1.5,
        says: '',
        up: () => {
          throw new Error('no such field');
        },
      },
    ];
    const result = parseGarden(serializeGarden(exampleGarden()), failing);
    expect(result).toMatchObject({ ok: false, error: { kind: 'broken', where: 'file version 1' } });
  });
});
