import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { dayOf } from '../../app/core/days';
import { waterNeeds } from '../../app/core/season/waterNeeds';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import type { Garden } from '../../app/document/schema';
import { waterQuestions } from '../../app/document/waterQuestion';
import { canOf } from '../../app/screens/week/water/canOf';
import { Water } from '../../app/screens/week/water/Water';
import { StoreProvider } from '../../app/screens/store';
import type { MowingsState } from '../../app/store/contract';
import type { Water as WaterState } from '../../app/store/waterSlice';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('no sample');
const sample: Garden = parsed.value;

/** The sample on a day. */
const gardenOn = (today: string): Garden => ({ ...sample, garden: { ...sample.garden, today } });
const reckoned = (garden: Garden): WaterState['beds'] =>
  Object.fromEntries(
    waterQuestions(garden, dayOf(garden.garden.today!)).map((question) => [
      question.input.bedId,
      // three weeks without a drop, so that something is due
      waterNeeds({
        ...question,
        input: {
          ...question.input,
          weather: {
            ...question.input.weather,
            rainMillimetres: question.input.weather.rainMillimetres.map((rain, index) =>
              question.input.firstDay + index > question.input.today - 21 ? 0 : rain,
            ),
          },
        },
      }),
    ]),
  );

function shown(water: Partial<WaterState>, shownUnits: 'metric' | 'us' = 'metric'): string {
  const garden = gardenOn('2013-06-15');
  const state = {
    garden,
    about: null,
    shownUnits,
    water: { state: 'ready', reason: null, beds: {}, ...water },
    wantWater: () => undefined,
    leaveWater: () => undefined,
    bedResults: {},
  } as unknown as MowingsState;
  return renderToStaticMarkup(
    <StoreProvider store={createStore(() => state)}>
      <Water />
    </StoreProvider>,
  ).replace(/<!-- -->/g, '');
}

const inWords = (markup: string): string => markup.replace(/<[^>]+>/g, '');

describe('water on This week', () => {
  test('in a drought each bed that is due has its cans and a button; leaving is told bed by bed', () => {
    const markup = shown({ beds: reckoned(gardenOn('2013-06-15')) });
    expect(inWords(markup)).toMatch(/: due today, [\d.]+ mm, [\d /]+ cans of 10 L\./);
    // the cans open what stands behind them as the depth does
    expect(markup).toMatch(/aria-label="[\d /]+ cans of 10 L: why\?"/);
    expect(markup).toMatch(/<button[^>]+aria-label="[\d.]+ mm: why\?"[^>]*aria-expanded="false"/);
    expect(markup).toMatch(/aria-label="Watered so much: [^"]+"/);
    expect(markup).toContain('Going away for two weeks');
    expect(inWords(markup)).toMatch(
      /: water it to the full before you leave \([\d.]+ mm, [\d /]+ cans/,
    );
    expect(markup).toContain('The soil under what you laid gave off roughly');
    expect(markup).not.toContain('No bed is due');
  });

  test('in inches and gallons where they are read', () => {
    const markup = shown({ beds: reckoned(gardenOn('2013-06-15')) }, 'us');
    expect(inWords(markup)).toMatch(/due today, [\d./ ]+ in, [\d /]+ cans of 2 gal/);
    expect(markup).not.toContain(' mm');
  });

  test('nothing due, nothing reckoned yet, and what failed each say so', () => {
    const beds = Object.fromEntries(
      sample.beds.map(({ id }) => [id, { bedId: id, due: null, saved: null, away: null }]),
    );
    expect(shown({ beds })).toContain('No bed is due for water within a week.');
    expect(shown({ beds })).toContain('No bed needs water before 29 June');
    expect(shown({ state: 'working' })).toContain('Reckoning when each bed is due…');
    expect(shown({ state: 'working' })).toContain('aria-busy="true"');
    const failed = shown({ state: 'failed', reason: 'a stone' });
    expect(failed).toContain('role="alert"');
    expect(failed).toContain('Feel the soil a finger deep instead');
  });

  test('the garden’s own can is used where it has one', () => {
    const can = { id: 'can', name: 'green can', plural: 'green cans', litres: 8, weighed: null };
    expect(canOf({ containers: [...sample.containers, can] }, 'metric')).toMatchObject({
      litres: 8,
      plural: 'green cans',
      size: '',
    });
    expect(canOf(sample, 'metric')).toMatchObject({ litres: 10, size: 'of 10 L' });
  });
});
