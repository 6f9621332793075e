import { parseGarden } from '../../app/document/parse';
import { describe, expect, test } from 'vitest';
import type { AmountFailure, Field } from '../../app/amounts/amount';
import type { DayFailure } from '../../app/amounts/readDay';
import type { ParseFailure } from '../../app/document/failures';
import type { MixtureFailure } from '../../app/core/cover/mix';
import type { HostError } from '../../app/host/contract';
import {
  amountFailureSentence,
  dayFailureSentence,
  editFailureSentence,
  fileMessageSentence,
  hostSentence,
  mixtureFailureSentence,
  parseSentence,
  type EditTrouble,
  type FileNews,
  type HostTask,
} from '../../app/words/messages';

// one of every kind: a kind that is missing here does not compile
type OneOfEach<Failure extends { kind: string }> = {
  readonly [Kind in Failure['kind']]: Extract<Failure, { kind: Kind }>;
};
const asked = { field: 'mowing', suggestion: '2 bags' } as const;
const amounts: OneOfEach<AmountFailure> = {
  empty: { ...asked, kind: 'empty' },
  'too-long': { ...asked, kind: 'too-long', limit: 160 },
  'strange-character': { ...asked, kind: 'strange-character', character: '=' },
  'not-an-amount': { ...asked, kind: 'not-an-amount' },
  vague: { ...asked, kind: 'vague', word: 'some' },
  'no-unit': { ...asked, kind: 'no-unit', number: 2 },
  'unknown-unit': { ...asked, kind: 'unknown-unit', word: 'bgas' },
  'unknown-container': { ...asked, kind: 'unknown-container', word: 'trugs' },
  'unknown-place': { ...asked, kind: 'unknown-place', word: 'tomatos' },
  'no-lawn': { ...asked, kind: 'no-lawn' },
  'wrong-dimension': { ...asked, kind: 'wrong-dimension', found: 'length' },
  'mixed-dimensions': { ...asked, kind: 'mixed-dimensions' },
  'two-amounts': { ...asked, kind: 'two-amounts' },
  'ambiguous-number': { ...asked, kind: 'ambiguous-number', text: '1,000' },
  zero: { ...asked, kind: 'zero' },
  negative: { ...asked, kind: 'negative' },
  'too-large': { ...asked, kind: 'too-large', limit: '20000 kg' },
  'ambiguous-date': { ...asked, kind: 'ambiguous-date', text: '8/6' },
  'unknown-day': { ...asked, kind: 'unknown-day', text: '31 June' },
  'future-day': { ...asked, kind: 'future-day', text: '3 July' },
  'no-start': { ...asked, kind: 'no-start' },
};
const days: OneOfEach<DayFailure> = {
  empty: { kind: 'empty', suggestion: '2013-06-15' },
  'month-alone': { kind: 'month-alone', text: 'April', suggestion: '2013-04-15' },
  'not-a-day': { kind: 'not-a-day', text: 'soon', suggestion: '2013-06-15' },
  'ambiguous-date': { kind: 'ambiguous-date', text: '8/6', suggestion: '2013-06-08' },
  'unknown-day': { kind: 'unknown-day', text: '31 June', suggestion: '2012-06-30' },
};
const parses: OneOfEach<ParseFailure> = {
  'not-json': { kind: 'not-json', line: 12, column: 3 },
  'not-a-garden': { kind: 'not-a-garden' },
  newer: { kind: 'newer', version: 4, known: 1 },
  broken: { kind: 'broken', where: 'beds 3, areaM2', what: 'a number is wanted' },
  'too-large': { kind: 'too-large', limit: 20_000_000, unit: 'characters' },
  dangling: { kind: 'dangling', where: 'plantings 2', what: 'its bed is not in the file' },
};
const hosts: OneOfEach<HostError> = {
  cancelled: { kind: 'cancelled' },
  'not-found': { kind: 'not-found', name: 'Sorrel' },
  'no-permission': { kind: 'no-permission', name: 'Sorrel' },
  'disk-full': { kind: 'disk-full', name: 'Sorrel' },
  'read-only': { kind: 'read-only', name: 'Sorrel' },
  'too-large': { kind: 'too-large', name: 'Sorrel', limitBytes: 20_000_000 },
  'name-taken': { kind: 'name-taken', name: 'Sorrel' },
  'bad-name': { kind: 'bad-name', name: 'Sorrel?' },
  refused: { kind: 'refused', reason: 'wrong shape' },
  unreachable: { kind: 'unreachable' },
  failed: { kind: 'failed', reason: 'EIO' },
};
const edits: OneOfEach<EditTrouble> = {
  'no-garden': { kind: 'no-garden' },
  missing: { kind: 'missing', what: 'bed' },
  broken: { kind: 'broken', where: 'beds 3, areaM2', what: 'it is above 100000' },
  'in-use': { kind: 'in-use', by: '2 plantings' },
  'goes-on': { kind: 'goes-on' },
  'no-more-record': { kind: 'no-more-record' },
  'label-forbids': { kind: 'label-forbids', source: 'Front lawn' },
};
const mixtures: OneOfEach<MixtureFailure> = {
  'empty-mixture': { kind: 'empty-mixture' },
  'not-a-mass': { kind: 'not-a-mass', share: 0 },
  'not-a-fraction': { kind: 'not-a-fraction', share: 1 },
  'no-nitrogen': { kind: 'no-nitrogen' },
  'out-of-reach': { kind: 'out-of-reach' },
};
const tasks: readonly HostTask[] = [
  'open',
  'save',
  'keep-draft',
  'restore',
  'recent',
  'about',
  'colour scheme',
];

const all: readonly (readonly [string, string])[] = [
  ...Object.entries(amounts).map(
    ([kind, failure]) => [`amount ${kind}`, amountFailureSentence(failure)] as const,
  ),
  ...Object.entries(days).map(
    ([kind, failure]) => [`day ${kind}`, dayFailureSentence(failure)] as const,
  ),
  ...Object.entries(parses).map(
    ([kind, failure]) => [`file ${kind}`, parseSentence(failure)] as const,
  ),
  ...Object.entries(edits).map(
    ([kind, failure]) => [`edit ${kind}`, editFailureSentence(failure)] as const,
  ),
  ...Object.entries(mixtures).map(
    ([kind, failure]) =>
      [`mixture ${kind}`, mixtureFailureSentence(failure, ['clippings', 'straw'])] as const,
  ),
  ...tasks.flatMap((task) =>
    Object.entries(hosts).map(
      ([kind, failure]) => [`${task} ${kind}`, hostSentence(task, failure)] as const,
    ),
  ),
];

const sentencesOf = (text: string): string[] =>
  text.split(/(?<=[.!?:;])\s+/).filter((part) => part !== '');

describe('every failure in words', () => {
  test.each(all)('%s', (_name, text) => {
    expect(text).toMatch(/^[A-Z“]/);
    expect(text).toMatch(/[.…]$/);
    for (const sentence of sentencesOf(text))
      expect(sentence.split(/\s+/).length, sentence).toBeLessThan(25);
    // no kind, code or missing value shows through
    expect(text).not.toMatch(/undefined|null|NaN|\[object|-dimension|-json/);
    // it does not apologise, blame or shout
    expect(text).not.toMatch(/\b(?:sorry|invalid|illegal|error|oops|please)\b|!/i);
  });

  test('no two kinds of one list say the same', () => {
    for (const list of [amounts, days, parses, edits] as const) {
      const keys = Object.keys(list);
      const texts = all
        .filter(([name]) => keys.some((key) => name.endsWith(` ${key}`)))
        .map(([name, text]) => `${name.split(' ')[0] ?? ''} ${text}`);
      expect(new Set(texts).size).toBe(texts.length);
    }
  });

  test('what was typed is named, and cut where it would swamp the sentence', () => {
    expect(amountFailureSentence(amounts['unknown-unit'])).toContain('“bgas”');
    expect(amountFailureSentence(amounts['too-large'])).toContain('20000 kg');
    const long = { ...amounts['unknown-unit'], word: 'x'.repeat(150) };
    expect(amountFailureSentence(long).length).toBeLessThan(200);
  });

  test('each field says what it takes', () => {
    const fields: Field[] = [
      'mowing',
      'layer',
      'stock',
      'water',
      'rain',
      'area',
      'length',
      'depth',
      'volume',
      'weight',
      'temperature',
    ];
    const texts = fields.map((field) =>
      amountFailureSentence({ ...amounts['not-an-amount'], field }),
    );
    expect(new Set(texts).size).toBe(fields.length);
  });

  test('a refused file says where the fault is and that nothing was changed', () => {
    for (const failure of Object.values(parses))
      expect(parseSentence(failure)).toContain('Nothing was changed.');
    expect(parseSentence(parses['not-json'])).toContain('line 12, character 3');
    expect(parseSentence(parses.broken)).toContain('beds 3, areaM2');
    expect(parseSentence(parses.newer)).toContain('version 4');
    expect(parseSentence(parses['too-large'])).toContain('20,000,000 characters');
  });

  test('a shopping list is no damaged garden: it is none', () => {
    const list = parseGarden('3 eggs\nmilk');
    expect(list.ok ? '' : parseSentence(list.error)).toMatch(/not a garden of Mowings/);
    const cut = parseGarden('{"format": "mowings-garden", "schem');
    expect(cut.ok ? '' : parseSentence(cut.error)).toMatch(/cut short or damaged/);
  });

  test('a failed save says that the work is still there; a name is told', () => {
    expect(hostSentence('save', hosts['disk-full'])).toMatch(/“Sorrel”.*still open here/);
    expect(hostSentence('save', hosts['too-large'])).toContain('20 MB');
    expect(hostSentence('open', hosts['not-found'])).toContain('Nothing was changed.');
  });
});

describe('news of the file', () => {
  const news: OneOfEach<FileNews> = {
    saved: { kind: 'saved', name: 'Sorrel' },
    opened: { kind: 'opened', name: 'Sorrel' },
    restored: { kind: 'restored', name: 'Sorrel' },
    refused: { kind: 'refused', name: 'Sorrel', failure: parses['not-a-garden'] },
    'draft-refused': { kind: 'draft-refused', name: 'Sorrel', failure: parses.newer },
    failed: { kind: 'failed', doing: 'save', error: hosts['read-only'] },
  };
  test.each(Object.entries(news))('%s', (_kind, one) => {
    const text = fileMessageSentence(one);
    expect(text).toContain('“Sorrel”');
    expect(text).toMatch(/\.$/);
  });
});
