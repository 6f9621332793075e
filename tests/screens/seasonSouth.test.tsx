// @vitest-environment happy-dom
// Season on the other side of the equator: the same garden half a year later is drawn the same.
import { describe, expect, test } from 'vitest';
import { dayOf, textFromDay } from '../../app/core/days';
import type { Garden } from '../../app/document/schema';
import { SeasonPlace } from '../../app/screens/season/SeasonPlace';
import { bigGarden } from '../bench/bigGarden';
import { sameThreadEngine, silentEngine, storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const page = drawnPage();

/** 1 January to 1 July; both seasons that begin in 2013 have 365 days. */
const halfYear = 181;

/** Every date half a year on, the usual months turned round, as far south as it was north. */
function inTheSouth(garden: Garden): Garden {
  const later = (value: unknown): unknown => {
    if (typeof value === 'string')
      return /^\d{4}-\d\d-\d\d$/.test(value) ? textFromDay(dayOf(value) + halfYear) : value;
    if (Array.isArray(value)) return value.map(later);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, later(one)]));
  };
  const turned = (value: unknown): unknown => {
    if (Array.isArray(value))
      return value.length === 12 ? value.map((_one, at) => value[(at + 6) % 12]) : value;
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one)]));
  };
  const south = later(garden) as Garden;
  return {
    ...south,
    weather: { ...south.weather, normals: turned(south.weather.normals) } as Garden['weather'],
    garden: {
      ...south.garden,
      latitudeDegrees: -garden.garden.latitudeDegrees,
      seasonStartMonth: 7,
    },
  };
}

const textsOf = (selector: string): readonly string[] =>
  [...page.place.querySelectorAll(selector)].map(({ textContent }) => textContent ?? '');

async function shown(garden: Garden, engine: typeof silentEngine) {
  const { store, time } = await storeWith(garden, { engine });
  store.setState({
    about: { native: false, version: '0', folder: '', today: garden.garden.today ?? '2013-06-15' },
  });
  await time.pass(2000);
  await page.draw(store, <SeasonPlace />);
  const told = {
    axis: page.place.querySelector('[role=slider]')?.getAttribute('aria-valuetext') ?? '',
    season: textsOf('.page').join(' '),
    beds: textsOf('.bed-open'),
    plantings: [...page.place.querySelectorAll<HTMLElement>('.strip-planting')].map((one) => ({
      left: one.style.insetInlineStart || one.style.left,
      width: one.style.inlineSize || one.style.width,
      says: one.getAttribute('aria-label') ?? one.textContent ?? '',
    })),
  };
  await page.leave();
  return told;
}

describe.each([
  [3, () => sameThreadEngine()],
  [60, () => silentEngine],
] as const)('with %d beds', (beds, engine) => {
  test('plantings lie where they lay, and are called by the days of the south', async () => {
    const garden = bigGarden({ beds, years: 2, seed: 5 });
    const north = await shown(garden, engine());
    const south = await shown(inTheSouth(garden), engine());
    expect(north.beds).toHaveLength(beds);
    expect(south.beds).toEqual(north.beds);
    expect(north.axis).toBe('Saturday 15 June 2013');
    expect(south.axis).toBe('Friday 13 December 2013');
    expect(north.season).toContain('2013');
    expect(south.season).toContain('2013–14');
    expect(north.plantings.length).toBeGreaterThanOrEqual(beds);
    expect(south.plantings).toHaveLength(north.plantings.length);
    const began = (says: string) => /(?:sown|planted) (\d+ \w+)/.exec(says)?.[1] ?? '';
    north.plantings.forEach(({ left, says }, at) => {
      const other = south.plantings[at]!;
      expect(left, says).not.toBe('');
      expect(other.left, says).toBe(left);
      const day = dayOf(textFromDay(Date.parse(`${began(says)} 2013 UTC`) / 86_400_000));
      const wanted = new Date((day + halfYear) * 86_400_000);
      expect(began(other.says), says).toBe(
        `${String(wanted.getUTCDate())} ${wanted.toLocaleString('en-GB', { month: 'long', timeZone: 'UTC' })}`,
      );
    });
  });
});
