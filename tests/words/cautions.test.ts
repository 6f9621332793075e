import { describe, expect, test } from 'vitest';
import { metricUnits, usUnits } from '../../app/amounts/unitSystem';
import { dayFromParts } from '../../app/core/days';
import { factIds, insteadKeys, type RowId } from '../../app/core/season/limits';
import {
  type Caution,
  cautionKinds,
  type CautionKind,
  type Weight,
} from '../../app/core/season/verdict';
import { basisOf, thresholdRow, thresholdRows } from '../../app/tables/thresholds';
import { cautionWords, nothingHeldBack } from '../../app/words/cautions';
import { insteadWords } from '../../app/words/insteadWords';
import { footLines, safetyLines } from '../../app/words/safetyLines';
import { sourceLine } from '../../app/words/sourceLine';

const day = dayFromParts(2013, 7, 4);

const detail = {
  condition: 'just cut',
  laidOn: day - 30,
  excessClass: 'fruit',
  ratioBefore: 1.2,
  fixedBefore: 5.6,
  fixedAfter: 3.8,
  welcome: 0,
  room: 12,
  crop: 'Climbing beans',
  nitrate: 33,
  nightCelsius: 15.9,
  source: 'the front lawn',
  material: 'Grass clippings',
  pickFrom: day + 60,
  hotDays: 5,
  hotAbove: 32,
  dryDays: 4,
};

const made = (
  kind: CautionKind,
  row: RowId,
  weight: Weight,
  changes: Partial<Caution> = {},
): Caution => ({
  kind,
  weight,
  number: 14.2,
  threshold: 13,
  unit: 'mm',
  row,
  date: day,
  detail,
  layerId: 'layer',
  ...changes,
});

const rowsOf: Readonly<Record<CautionKind, readonly RowId[]>> = {
  'layer depth': ['layer just cut', 'layer limp', 'layer crisp'],
  'all cover': ['all cover'],
  'too soon': ['greens too soon'],
  room: [
    'room tender storage',
    'room storage',
    'room fruit',
    'room flower',
    'room leaf',
    'room head',
    'room perennial',
    'greens on an empty bed',
  ],
  'over-feeding': ['over-feeding odds', 'over-feeding all but sure'],
  'season total': ['season total'],
  enough: ['greens on enough for now', 'greens on enough to the end', 'greens past enough'],
  legume: ['legume loss'],
  short: ['short of nitrogen'],
  'tied up': ['tied up'],
  'washing out': ['washing out at clearing', 'washing out in an empty bed', 'rain on nitrate'],
  seedlings: ['cover over seedlings', 'stems'],
  'cold soil': ['cold soil'],
  'seed fly': ['seed fly'],
  slugs: ['slug weather', 'slugs seen'],
  'sour mat': ['sour mat'],
  'dry soil': ['dry soil first'],
  'ammonia under glass': ['fresh greens under glass'],
  frost: ['frost over cover'],
  runners: ['creeping grass'],
  'seed heads': ['seed heads', 'hay seeds', 'hay seeds thin'],
  'compost phosphorus': ['compost depth'],
  'treated lawn': [
    'not asked',
    'label forbids',
    'label interval',
    'label silent',
    'label silent sensitive',
    'unknown lawn',
    'unknown lawn flowers',
  ],
  'treated source': [
    'not asked',
    'label forbids',
    'unknown source',
    'unknown source flowers',
    'unknown source sensitive',
    'treated source',
  ],
  'raw manure': ['manure splashed', 'manure off the ground', 'manure burn'],
  fouled: ['fouled grass'],
  'salad nitrate': ['leaf nitrate', 'greens before a salad'],
  'share over one': ['share of the bed'],
  'frost kill': ['killed by frost'],
  overdue: ['overdue'],
  'outside validity': ['outside what was tested'],
  safety: [
    'dog poison',
    'poisonous plants',
    'painted wood',
    'roadside',
    'old house',
    'mouldy',
    'walnut',
    'diseased tops',
    'bought in',
    'own well',
  ],
};

/** Rows that the core never raises without a day. */
const alwaysDated: readonly RowId[] = [
  'overdue',
  'slugs seen',
  'sour mat',
  'short of nitrogen',
  'frost over cover',
  'killed by frost',
  'fresh greens under glass',
  'washing out at clearing',
  'greens on an empty bed',
];

const everyCaution: readonly Caution[] = cautionKinds.flatMap((kind) =>
  rowsOf[kind].flatMap((row) =>
    (['note', 'caution', 'stop'] as const).flatMap((weight) => [
      made(kind, row, weight),
      made(kind, row, weight, {
        layerId: null,
        date: alwaysDated.includes(row) ? day : null,
      }),
      made(kind, row, weight, { unit: 'days', detail: { ...detail, condition: 'browns' } }),
      made(kind, row, weight, { unit: 'mowings', detail: {} }),
    ]),
  ),
);

/** Figures, units and short words count as read: this keeps a line a line. */
const wordsIn = (text: string): number =>
  text.split(/\s+/).filter((word) => /[a-z]/i.test(word)).length;

describe('every caution in words', () => {
  test.each([metricUnits, usUnits])('$system: one short whole line', (units) => {
    expect(everyCaution.length).toBeGreaterThan(200);
    for (const caution of everyCaution) {
      const { says, instead, source } = cautionWords(caution, basisOf(caution), units);
      for (const text of [says, instead, source]) {
        expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object/);
        expect(text).not.toMatch(/\n| {2}|\.\./);
        expect(text).not.toMatch(/\bsafe\b|\bharmless\b|Epsom|bloom booster|wash .* away with/i);
      }
      expect(says, caution.row).toMatch(/^[A-Z0-9].*[.?]$/);
      const sentences = says.split(/(?<=[.?]) /);
      for (const sentence of sentences) expect(wordsIn(sentence), says).toBeLessThanOrEqual(25);
      expect(sentences.length, says).toBeLessThanOrEqual(2);
      expect(wordsIn(instead), instead).toBeLessThanOrEqual(25);
      expect(source.length).toBeGreaterThan(10);
    }
  });

  test('metric says no inches and US no millimetres', () => {
    for (const caution of everyCaution) {
      const metric = cautionWords(caution, basisOf(caution), metricUnits).says;
      const us = cautionWords(caution, basisOf(caution), usUnits).says;
      expect(metric).not.toMatch(/\d (in(?! place)|lb|oz|°F)\b/);
      expect(us).not.toMatch(/\d (mm|g\/m2|°C)\b/);
    }
  });

  test('phosphorus is only spoken of as what builds up', () => {
    for (const caution of everyCaution) {
      const { says, instead } = cautionWords(caution, basisOf(caution), metricUnits);
      if (caution.kind === 'compost phosphorus') expect(says).toMatch(/builds up/);
      else expect(`${says} ${instead}`).not.toMatch(/phosph/i);
    }
  });

  test('every caution and stop says what to do instead', () => {
    for (const caution of everyCaution)
      if (caution.weight !== 'note')
        expect(cautionWords(caution, basisOf(caution), metricUnits).instead, caution.row).not.toBe(
          '',
        );
  });

  test('every row of the table that raises a caution has a sentence of its own', () => {
    const spoken = new Set<string>(Object.values(rowsOf).flat());
    const silent = ['raw manure', 'raw manure close'];
    for (const id of factIds) if (!silent.includes(id)) expect([...spoken]).toContain(id);
  });
});

describe('sentences', () => {
  const says = (caution: Caution, units = metricUnits): string =>
    cautionWords(caution, basisOf(caution), units).says;

  test('a layer in the hand', () => {
    const stop = made('layer depth', 'layer just cut', 'stop', { number: 26, threshold: 25 });
    expect(says(stop)).toBe(
      '26 mm of just-cut clippings as laid: from 25 mm it heats and turns slimy.',
    );
    // limits table: just-cut clippings mat past 13 mm
    const more = made('layer depth', 'layer just cut', 'caution', { number: 13.3, threshold: 13 });
    expect(says({ ...more, detail: { ...more.detail, others: 1 } })).toBe(
      'Just over 13 mm of just-cut clippings as laid, with the rest of that day: past 13 mm it mats.',
    );
    expect(says(stop, usUnits)).toBe(
      '1 in of just-cut clippings as laid: from 1 in it heats and turns slimy.',
    );
  });

  test('a bed that has had far too much', () => {
    const gate = made('room', 'room tender storage', 'stop', {
      number: 3.29,
      threshold: 1.5,
      layerId: null,
      detail: { excessClass: 'tender storage', lyingMm: 30 },
    });
    const raked = { ...gate, detail: { ...gate.detail, lyingMm: 1 } };
    expect(cautionWords(raked, basisOf(raked), metricUnits).instead).toMatch(/^Lay only straw/);
    expect(says(gate)).toBe(
      'In hand and to come: 3.3 times what the crop can use; past 1.5 is the stop: it grows tops in place of roots.',
    );
    expect(cautionWords(gate, basisOf(gate), metricUnits).instead).toMatch(
      /^Rake off what was laid last/,
    );
  });

  test('over-feeding names the weather when the weather does it too', () => {
    const fruit = made('room', 'room fruit', 'caution', { number: 1.4, threshold: 1.3 });
    expect(says(fruit)).toMatch(/heat over 32 °C and dry roots can keep fruit from setting too\.$/);
    expect(says(fruit, usUnits)).toMatch(/heat over 90 °F/);
    expect(says({ ...fruit, detail: { excessClass: 'fruit' } })).not.toMatch(/heat/);
  });

  test('odds are seasons out of ten, with the weather beside them where it did the like', () => {
    const odds = (changes: Partial<Caution> = {}): Caution =>
      made('over-feeding', 'over-feeding odds', 'caution', {
        number: 6.2,
        threshold: 5,
        unit: 'in 10',
        layerId: null,
        detail: { crop: 'Tomatoes', excessClass: 'fruit' },
        ...changes,
      });
    expect(says(odds())).toBe(
      'Tomatoes: too much ready at first flower, about 4 July, in 6 of 10 imagined seasons: leaf first, fruit late.',
    );
    const hot = { ...odds().detail, hotDays: 5, hotAbove: 32 };
    expect(says(odds({ detail: hot }))).toMatch(
      / The fortnight’s heat over 32 °C can keep fruit from setting too\.$/,
    );
    expect(says(odds({ layerId: 'layer', detail: { ...odds().detail, without: 3.6 } }))).toMatch(
      /in 6 of 10 imagined seasons \(4 without it\): leaf first/,
    );
    expect(says(odds({ number: 9.7, row: 'over-feeding all but sure' }))).toBe(
      'Tomatoes: all but surely too much ready at first flower, about 4 July, in nearly all imagined seasons: leaf first, fruit late.',
    );
    // the trials on flowers speak against the lore, so no harm is named
    expect(says(odds({ detail: { crop: 'Zinnia', excessClass: 'flower' } }))).toMatch(/seasons\.$/);
    expect(says(odds({ detail: { crop: 'Onions', excessClass: 'storage' } }))).toMatch(
      /^Onions: too much ready while they fill, from about 4 July, .* tops, and poor keeping\.$/,
    );
  });

  test('a first thin layer under beans is welcome', () => {
    const first = made('legume', 'legume loss', 'note', {
      number: 0.12,
      detail: { ...detail, welcome: 1 },
    });
    expect(says(first)).toBe(
      'A first thin layer is welcome. It costs climbing beans 12 % of what they would fix from the air.',
    );
  });

  test('a hungry bed is told what of today’s greens would mend it', () => {
    const hungry = made('short', 'short of nitrogen', 'caution', {
      detail: { room: 38, mendWith: 'clippings from Back', mendLitres: 67.5 },
    });
    const { instead } = cautionWords(hungry, basisOf(hungry), metricUnits);
    expect(instead).toBe(
      'Hoe in about 68 L of clippings from Back, thin; laid on it works more slowly. Look again in a week.',
    );
    const inBags = {
      ...hungry,
      detail: { ...hungry.detail, mendCount: 1.5, mendOne: 'bag', mendMany: 'bags' },
    };
    expect(cautionWords(inBags, basisOf(inBags), metricUnits).instead).toMatch(
      /^Hoe in about 1 1\/2 bags of clippings from Back/,
    );
  });

  test('a crop’s name and its verb agree', () => {
    const small = (crop: string): string =>
      says(made('seedlings', 'cover over seedlings', 'caution', { detail: { crop } }));
    expect(small('Carrots')).toMatch(/^Carrots are not a hand high yet: a cover smothers them\./);
    expect(small('Sweet corn')).toMatch(
      /^Sweet corn is not a hand high yet: a cover smothers it\./,
    );
    expect(small('Asparagus')).toMatch(/^Asparagus is/);
  });

  test('seed that is not up yet', () => {
    const seed = (crop: string): string =>
      says(made('seedlings', 'cover over seedlings', 'caution', { detail: { crop, up: day - 7 } }));
    expect(seed('Carrots')).toBe(
      'Carrots come up about 27 June: a cover smothers them. Look again about 4 July.',
    );
    expect(seed('Sweet corn')).toMatch(/^Sweet corn comes up about 27 June: a cover smothers it/);
  });

  test('wood in the ground is told by what it is, not by its carbon to nitrogen', () => {
    const of = (what: string) =>
      says(
        made('outside validity', 'outside what was tested', 'note', {
          number: 160,
          threshold: 150,
          detail: { ...detail, what },
        }),
      );
    expect(of('wood')).toMatch(/^Wood in the ground holds nitrogen for years/);
    expect(of('')).toMatch(/^Carbon to nitrogen is 160/);
  });

  test('a treated lawn', () => {
    const wait = made('treated lawn', 'label silent', 'stop', {
      number: 2,
      threshold: 4,
      unit: 'mowings',
    });
    expect(says(wait)).toBe('The front lawn was treated: 2 of 4 mowings since are logged.');
    const instead = (caution: Caution) =>
      cautionWords(caution, basisOf(caution), metricUnits).instead;
    expect(instead(wait)).toMatch(/^Leave it lying on the lawn/);
    expect(instead({ ...wait, detail: { ...wait.detail, lies: 1 } })).toMatch(/^Rake off/);
  });

  test('nothing found is said as just that', () => {
    expect(nothingHeldBack).toBe('No reason was found to hold it back.');
  });
});

describe('where a line comes from', () => {
  test('a published line, a line leaning on a source, and one of our own', () => {
    expect(sourceLine(basisOf({ row: 'manure splashed', weight: 'stop' }))).toBe(
      'United States Code of Federal Regulations: 7 CFR 205.203(c)(1). Read there.',
    );
    expect(sourceLine(basisOf({ row: 'layer just cut', weight: 'note' }))).toMatch(
      /Seen second-hand\. The line itself is our judgement\.$/,
    );
    expect(sourceLine(basisOf({ row: 'layer just cut', weight: 'stop' }))).toBe(
      'Our own judgement: an inch heats and turns slimy.',
    );
    expect(sourceLine(basisOf({ row: 'layer limp', weight: 'note' }))).toMatch(
      /^Growers: .* No trial behind it\.$/,
    );
  });
  test('of every row', () => {
    for (const row of thresholdRows)
      for (const weight of ['note', 'caution', 'stop'] as const)
        expect(sourceLine(basisOf({ row: row.id, weight })), row.id).toMatch(/^[A-Z0-9].*\.$/);
  });
});

test('every remedy has words, and every row names one', () => {
  const caution = made('layer depth', 'layer limp', 'stop', { detail: {} });
  for (const key of insteadKeys)
    if (key !== 'nothing') expect(insteadWords(caution, key, metricUnits)).toMatch(/^[A-Z].*\.$/);
  for (const row of thresholdRows) expect(insteadKeys).toContain(row.instead);
  expect(thresholdRow('room fruit').instead).toBe('other bed');
});

test('what may carry weedkiller is sent to no other bed and to no heap', () => {
  const row = 'unknown source sensitive';
  const caution = made('treated source', row, 'stop', { detail: {} });
  const words = insteadWords(caution, thresholdRow(row).instead, metricUnits);
  expect(words).toContain('until beans have grown straight in it');
  expect(words).not.toMatch(/hungrier bed|heap/);
});

test('safety lines weigh something and the foot sends people to those who know', () => {
  for (const { says } of safetyLines) expect(says).toMatch(/^[A-Z].*\.$/);
  expect(footLines[0]).toMatch(/estimates/);
  expect(footLines.join(' ')).toMatch(/poisons line/);
  expect([...safetyLines.map(({ says }) => says), ...footLines].join(' ')).not.toMatch(
    /\bis safe\b/,
  );
});
