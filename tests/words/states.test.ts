import { describe, expect, test } from 'vitest';
import { metricUnits, usUnits } from '../../app/amounts/unitSystem';
import { dayFromParts } from '../../app/core/days';
import {
  type BedVerdict,
  coverStates,
  nitrogenStates,
  type NitrogenState,
} from '../../app/core/season/verdict';
import {
  coverSentence,
  coverStateMeaning,
  nitrogenStateMeaning,
  nitrogenStateWords,
  stateSentence,
  weightMeaning,
} from '../../app/words/states';

const today = dayFromParts(2013, 6, 15);

const verdict = (changes: Partial<BedVerdict> = {}): BedVerdict => ({
  state: 'about right',
  coverState: 'good',
  ratio: 0.9,
  need: 10,
  inCrop: 1,
  inReach: 2,
  expectedRelease: 6,
  expectedTieUp: 0,
  nitrateMgPerKg: 22.4,
  turnsOn: null,
  forecastMet: 0.9,
  openShare: 0.8,
  dryFirst: false,
  wasShortOn: null,
  room: 5,
  excessClass: 'fruit',
  overFedLine: 1.3,
  wantsMoreLater: false,
  lackIsPast: null,
  strongly: false,
  flowerNitrate: null,
  laidThisSeason: 20,
  ...changes,
});
const says = (changes: Partial<BedVerdict>, units = metricUnits): string =>
  stateSentence(verdict(changes), units, { today });

describe('the state of a bed in one line', () => {
  test('each state', () => {
    expect(says({ state: 'over-fed', ratio: 1.42 })).toBe(
      'In hand and to come: 1.4 times what the crop can use. Past 1.3 is too much: it grows leaf first, and fruit comes late.',
    );
    expect(says({ state: 'enough to the end', ratio: 1.23 })).toBe(
      'In hand and to come: 1.2 times what the crop can use. No more greens this season.',
    );
    expect(says({ state: 'enough for now', turnsOn: dayFromParts(2013, 7, 4) })).toBe(
      'The soil holds all the crop can take up (22 mg/kg). Look again on 4 July.',
    );
    expect(says({ state: 'short', turnsOn: dayFromParts(2013, 7, 4), forecastMet: 0.16 })).toBe(
      'Hungry from 4 July: it gets 16 % of what it could still use.',
    );
    expect(says({})).toBe('In hand and to come: 0.9 times what the crop can use.');
    expect(says({ ratio: 1.02 })).toBe('In hand and to come: once what the crop can use.');
    expect(says({ state: 'nothing planted', ratio: null })).toBe(
      'Nothing planted. 2 g/m2 is ready in the soil.',
    );
  });

  test('dry and earlier hunger are said beside it', () => {
    expect(says({ state: 'short', turnsOn: today + 1, dryFirst: true })).toMatch(
      /^Hungry from tomorrow.*water first\.$/,
    );
    expect(says({ wasShortOn: dayFromParts(2013, 5, 21) })).toMatch(/It was short from 21 May\.$/);
  });

  test('flowers are spoken of mildly, and the weather is named when it explains the same', () => {
    expect(says({ state: 'over-fed', excessClass: 'flower', ratio: 1.5 })).toMatch(
      /it is more than the flowers can use\.$/,
    );
    const hot = { hotAbove: 32, hotDays: 4, hotNights: 0, coldNights: 0, dryDays: 0 };
    const sentence = stateSentence(verdict({ state: 'over-fed' }), usUnits, {
      today,
      weather: hot,
    });
    expect(sentence).toMatch(/heat over 90 °F/);
  });

  test('in US units and days', () => {
    expect(says({ state: 'enough for now', turnsOn: dayFromParts(2013, 7, 4) }, usUnits)).toMatch(
      /on July 4\.$/,
    );
    expect(says({ state: 'nothing planted' }, usUnits)).toMatch(/lb\/1,000 sq ft/);
  });

  test('a crop past its end is asked about, whatever the sums call the bed', () => {
    const finished = { crop: 'Lettuce', since: dayFromParts(2013, 6, 9) };
    const line = stateSentence(verdict(), metricUnits, { today, finished });
    expect(line).toMatch(/^Lettuce: by the calendar over since .*9 June.*Still standing\?/);
    expect(line).not.toMatch(/times/);
  });

  test('about right for now says when it will not last; a legume’s ratio is of the soil’s share', () => {
    expect(says({ ratio: 0.56, forecastMet: 0.54, wantsMoreLater: true })).toBe(
      'Right for the coming weeks, lean later. In hand and to come: 0.56 times what the crop can use. As things stand it gets 54 % of what it could still use.',
    );
    expect(says({ ratio: 1.2, forecastMet: 0.8, wantsMoreLater: true })).toMatch(
      /1\.2 times what the crop can use\. .* 80 % .*: the rest comes too late for it\.$/,
    );
    expect(says({ ratio: 0.8, forecastMet: 0.9 })).not.toMatch(/lean/);
    expect(says({ excessClass: 'legume' })).toMatch(/what it asks of the soil\.$/);
  });

  test('about right with less than its need says that the lack is past', () => {
    expect(says({ ratio: 0.23, lackIsPast: 'wants little', wasShortOn: today - 30 })).toMatch(
      /0\.23 times what the crop can use\. It wants little more now; what it went without is past\. It was short from/,
    );
    expect(says({ ratio: 0.8, lackIsPast: 'gets the rest' })).toMatch(/should get/);
  });

  test('strongly is a word of its own', () => {
    expect(nitrogenStateWords('over-fed', true)).toBe('strongly over-fed');
    expect(nitrogenStateWords('short', true)).toBe('short');
  });
});

describe('ground', () => {
  const fed: readonly NitrogenState[] = ['over-fed', 'enough to the end', 'enough for now'];
  test.each(fed)('%s and bare leads to browns, never to nothing', (state) => {
    expect(coverSentence({ coverState: 'bare', state, room: 0, excessClass: 'fruit' })).toMatch(
      /straw, leaves or crisp clippings/,
    );
  });
  test('over seedlings nothing is to be laid, whatever the bed could use', () => {
    const bare = { coverState: 'bare', room: 9, excessClass: 'fruit', state: 'short' } as const;
    expect(coverSentence(bare, '9 December')).toBe(
      'The ground is bare. Leave it so till what grows there is a hand high, about 9 December: a cover smothers it.',
    );
    expect(coverSentence(bare, '')).toMatch(/hand high: a cover smothers it\.$/);
  });
  test('a hungry bare bed is fed and covered; a growing cover crop is left alone', () => {
    const bare = { coverState: 'bare', room: 9, excessClass: 'fruit' } as const;
    expect(coverSentence({ ...bare, state: 'short' })).toMatch(/greens/);
    expect(coverSentence({ ...bare, state: 'enough to the end', excessClass: 'cover' })).toMatch(
      /close over it/,
    );
  });
});

test('every word of the guide has a meaning', () => {
  for (const state of nitrogenStates) expect(nitrogenStateMeaning(state)).toMatch(/\.$/);
  for (const state of coverStates) expect(coverStateMeaning(state)).toMatch(/\.$/);
  for (const weight of ['note', 'caution', 'stop'] as const)
    expect(weightMeaning(weight)).toMatch(/\.$/);
});
