import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayFromParts, dayOf, textFromDay } from '../../app/core/days';
import { seeded } from '../../app/core/random';
import { answerBed, type BedAnswer, type BedQuestion } from '../../app/core/season/bedAnswer';
import { pools } from '../../app/core/season/flows';
import { runSeason } from '../../app/core/season/season';
import type { SeasonResult } from '../../app/core/season/result';
import { runPlan, lowerDepthFor } from '../../app/core/season/runPlan';
import { bedQuestion } from '../../app/document/bedQuestion';
import { bedSeasonAccounts } from '../../app/document/seasonsAccount';
import { parseGarden } from '../../app/document/parse';
import { serializeGarden } from '../../app/document/serialize';
import type { Garden } from '../../app/document/schema';
import { limits } from '../../app/tables/thresholds';
import { seasonWord } from '../../app/words/seasonAccountWords';
import { ledger } from '../../main/command/ledger';
import { newFolder } from '../main/folders';
import { exampleGarden } from './exampleGarden';

/** 1 January to 1 July 2013; both seasons that begin then have 365 days. */
const halfYear = 181;
const firstDay = dayFromParts(2013, 1, 1);
const later = (date: string): string => textFromDay(dayOf(date) + halfYear);
const maybeLater = (date: string | null): string | null => date && later(date);
const turned = (months: readonly number[]): number[] =>
  months.map((_value, month) => months[(month + 6) % 12]!);

/** A year of made days: winter in January, rain on every third day or so. */
function northernDays(): [string, number, number, number][] {
  const random = seeded(38);
  return Array.from({ length: 365 }, (_, at) => {
    const mean = 12 - 9 * Math.cos((2 * Math.PI * (at - 15)) / 365) + 4 * (random() - 0.5);
    const rain = random() < 0.3 ? Math.round(120 * random()) / 10 : 0;
    const [low, high] = [mean - 5, mean + 5].map((celsius) => Math.round(celsius * 10) / 10);
    return [textFromDay(firstDay + at), low!, high!, rain];
  });
}

const north = ((): Garden => {
  const garden = exampleGarden();
  const move = <Entry extends { date: string }>(entry: Entry): Entry => ({
    ...entry,
    date: `2013${entry.date.slice(4)}`,
  });
  garden.garden = {
    ...garden.garden,
    latitudeDegrees: 38,
    seasonStartMonth: 1,
    today: '2013-09-20',
  };
  garden.beds[0]!.knownSince = null;
  garden.beds[1]!.knownSince = null;
  garden.mowings = garden.mowings.map(move);
  garden.applications = garden.applications.map(move);
  garden.stock = garden.stock.map(move);
  garden.events = garden.events.map(move);
  garden.plantings = garden.plantings.map((one) => ({
    ...one,
    started: `2013${one.started.slice(4)}`,
    firstHarvest: one.firstHarvest && `2013${one.firstHarvest.slice(4)}`,
    cleared: one.cleared && `2013${one.cleared.slice(4)}`,
  }));
  garden.plantings.push({
    ...garden.plantings[0]!,
    id: 'stalks',
    cropId: 'rhubarb',
    bedId: garden.beds[1]!.id,
    share: 0.25,
    started: '2010-04-01',
    how: 'planted',
    firstHarvest: null,
    cleared: null,
  });
  const { normals } = garden.weather;
  garden.weather = {
    normals: { ...normals, lastSpringFrost: '05-10', firstAutumnFrost: '10-05' },
    bundledRecord: null,
    days: northernDays(),
  } as Garden['weather'];
  return garden;
})();

/** The same garden under the same sky half a year later, on the other side of the earth. */
const south = ((): Garden => {
  const garden = structuredClone(north);
  garden.garden = {
    ...garden.garden,
    latitudeDegrees: -38,
    seasonStartMonth: 7,
    today: later('2013-09-20'),
  };
  const move = <Entry extends { date: string }>(entry: Entry): Entry => ({
    ...entry,
    date: later(entry.date),
  });
  garden.mowings = garden.mowings.map(move);
  garden.applications = garden.applications.map(move);
  garden.stock = garden.stock.map(move);
  garden.events = garden.events.map(move);
  garden.lawns = garden.lawns.map((lawn) => ({
    ...lawn,
    seedHeadsSeen: maybeLater(lawn.seedHeadsSeen),
  }));
  garden.plantings = garden.plantings.map((one) => ({
    ...one,
    started: later(one.started),
    firstHarvest: maybeLater(one.firstHarvest),
    cleared: maybeLater(one.cleared),
  }));
  const { normals } = garden.weather;
  garden.weather = {
    ...garden.weather,
    normals: {
      ...normals,
      minimumCelsius: turned(normals.minimumCelsius),
      maximumCelsius: turned(normals.maximumCelsius),
      rainMillimetres: turned(normals.rainMillimetres),
      wetDays: turned(normals.wetDays),
      lastSpringFrost: later('2013-05-10').slice(5),
      firstAutumnFrost: later('2013-10-05').slice(5),
    },
    days: garden.weather.days.map(([date, ...rest]) => [later(date), ...rest]),
  } as Garden['weather'];
  return garden;
})();

const read = (garden: Garden): Garden => {
  const parsed = parseGarden(serializeGarden(garden));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  return parsed.value;
};
const todayOf = (garden: Garden) => dayOf(garden.garden.today!);
const questionOf = (garden: Garden, bed: number): BedQuestion =>
  bedQuestion(garden, garden.beds[bed]!.id, todayOf(garden));

type Input = BedQuestion['input'];
type Clock = Pick<
  Input['plantings'][number],
  'firstHarvestDay' | 'usualEndDay' | 'normalDegreeDays'
>;

/** The sun is nearer in January, which half a year does not turn round: both under the north's. */
const underOneSun = (input: Input, of: Input): Input => ({
  ...input,
  weather: {
    ...input.weather,
    referenceEvapotranspiration: runPlan(of, lowerDepthFor(of)).evapotranspiration,
  },
});

/** February has 28 days and August 31: both by the north's usual months. */
function underOneCalendar(input: Input, of: Input): Input {
  const clock = ({ firstHarvestDay, usualEndDay, normalDegreeDays }: Clock): Clock => ({
    firstHarvestDay: firstHarvestDay + halfYear,
    usualEndDay: usualEndDay + halfYear,
    normalDegreeDays,
  });
  return {
    ...input,
    plantings: input.plantings.map((planting, at) => {
      const twin = of.plantings[at]!;
      const seasons = planting.seasons?.map((season, year) => {
        const other = twin.seasons![year]!;
        return { ...season, ...clock(other), startDay: other.startDay + halfYear };
      });
      return { ...planting, ...clock(twin), ...(seasons ? { seasons } : {}) };
    }),
  };
}

describe.each([0, 1])('bed %d, half a year later on the other side of the earth', (bed) => {
  const northern = questionOf(read(north), bed);
  const southern = questionOf(read(south), bed);
  const above = answerBed(northern, limits);
  const sameSun = underOneSun(southern.input, northern.input);
  const below = runSeason(sameSun);
  const twin = runSeason(underOneCalendar(sameSun, northern.input));
  const freely = answerBed(southern, limits);

  test('the season is a July to June, called by the year it starts in', () => {
    const { input } = southern;
    expect(textFromDay(input.firstDay)).toBe('2013-07-01');
    expect(textFromDay(input.lastDay)).toBe('2014-06-30');
    const accounts = bedSeasonAccounts(south, input, freely.season);
    expect(accounts.map(({ year }) => seasonWord(year, 7))).toEqual(['2013–14']);
  });

  test('every stage falls half a year later', () => {
    northern.input.plantings.forEach((planting, at) => {
      const other = southern.input.plantings[at]!;
      for (const key of ['startDay', 'firstHarvestDay', 'usualEndDay'] as const) {
        // regrowth goes by smooth months, and August has three days more than February
        const off = planting.seasons && key !== 'startDay' ? 3 : 0;
        expect(Math.abs(other[key] - planting[key] - halfYear), key).toBeLessThanOrEqual(off);
      }
      expect((other.clearingDay ?? 0) - (planting.clearingDay ?? 0)).toBe(
        planting.clearingDay === null ? 0 : halfYear,
      );
      expect(other.normalDegreeDays / planting.normalDegreeDays).toBeCloseTo(1, 1);
    });
  });

  test('the last frost lies in the same season, half a year later', () => {
    const frost = southern.facts.lastSpringFrost!;
    expect(frost).toBe(northern.facts.lastSpringFrost! + halfYear);
    expect(textFromDay(frost)).toBe('2013-11-07');
  });

  // what was measured; the days after are imagined month by month, each with its own dice
  const days = northern.input.today - northern.input.firstDay;
  const largest = (result: SeasonResult): number =>
    Math.max(
      ...pools.map((pool) => {
        const [ours, theirs] = [above.season.pools[pool], result.pools[pool]];
        let most = 0;
        for (let day = 0; day <= days; day++) {
          const size = Math.max(1, Math.abs(ours[day]!));
          most = Math.max(most, Math.abs(ours[day]! - theirs[day]!) / size);
        }
        return most;
      }),
    );

  test('under one sun and calendar every pool is the same on every measured day', () => {
    expect(largest(twin)).toBeLessThan(1e-9);
  });

  test('months of other lengths move no pool by more than a tenth, and by something', () => {
    expect(largest(below)).toBeLessThan(0.1);
    expect(largest(below)).toBeGreaterThan(1e-6);
  });

  const told = ({ verdict }: BedAnswer) => ({
    state: verdict.state,
    coverState: verdict.coverState,
  });
  test('both states are the same under each its own sun', () => {
    expect(told(freely)).toEqual(told(above));
    expect(freely.season.residual).toBeLessThan(1e-9);
  });

  test('each its own sun moves the numbers by no more than the sun does', () => {
    // 6.8 % of the sun's light between January and July
    if (above.verdict.ratio !== null)
      expect(freely.verdict.ratio! / above.verdict.ratio).toBeCloseTo(1, 1);
    expect(freely.cautions.map(({ kind }) => kind)).toEqual(above.cautions.map(({ kind }) => kind));
  });
});

describe('the command line on the southern garden', () => {
  const say = (words: readonly string[]) => {
    const folder = newFolder();
    writeFileSync(join(folder, 'south.mowings'), serializeGarden(south));
    const said = { answers: '', complaints: [] as string[] };
    const code = ledger(
      ['south.mowings', ...words],
      folder,
      folder,
      { name: 'x', version: '0' },
      {
        answer: (text) => void (said.answers += text),
        complain: (sentence) => void said.complaints.push(sentence),
      },
    );
    return { code, ...said };
  };

  test('tells the season since July', () => {
    const { code, answers, complaints } = say([]);
    expect(complaints).toEqual([]);
    expect(code).toBe(0);
    expect(answers).toContain('1 Jul to 20 Mar');
    expect(answers).toContain('Both sides come out the same: no gram is missing.');
  });

  test('and in JSON from the first of July to the last of June', () => {
    const { beds } = JSON.parse(say(['--json']).answers) as {
      beds: {
        residual: number;
        days: { date: string[] };
        seasons: { year: number; to: string }[];
      }[];
    };
    for (const { residual, days, seasons } of beds) {
      expect(residual).toBeLessThan(1e-9);
      expect([days.date[0], days.date.at(-1)]).toEqual(['2013-07-01', '2014-06-30']);
      expect(seasons).toMatchObject([{ year: 2013, to: '2014-06-30', isOver: false }]);
    }
  });
});
