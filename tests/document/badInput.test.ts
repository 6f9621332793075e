import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dayOf } from '../../app/core/days';
import { dayKinds } from '../../app/core/season/input';
import { runSeason } from '../../app/core/season/season';
import { faultOfChange } from '../../app/document/change';
import { leftOutOf } from '../../app/document/leftOut';
import { parseGarden } from '../../app/document/parse';
import { bedSeason, soilOf } from '../../app/document/seasonInput';
import { serializeGarden } from '../../app/document/serialize';
import { weatherKnown } from '../../app/document/weatherKnown';
import type { Bed, Garden } from '../../app/document/schema';
import { editFailureSentence, faultPhrase, parseSentence } from '../../app/words/messages';
import { leftOutSentence } from '../../app/words/leftOutWords';
import { ledger } from '../../main/command/ledger';
import { exitCodes } from '../../main/command/exitCodes';
import { newFolder } from '../main/folders';
import { exampleGarden } from './exampleGarden';

const today = dayOf('2021-06-20');
type File = Record<string, any>;
const changed = (change: (file: File) => void): File => {
  const file = JSON.parse(serializeGarden(exampleGarden())) as File;
  change(file);
  return file;
};

/** The command line on a file with this text. */
function say(text: string) {
  const folder = newFolder();
  writeFileSync(join(folder, 'barn.mowings'), text);
  const said = { answers: '', complaints: [] as string[] };
  const code = ledger(
    ['barn.mowings'],
    folder,
    folder,
    { name: 'x', version: '0' },
    {
      answer: (words) => void (said.answers += words),
      complain: (sentence) => void said.complaints.push(sentence),
    },
  );
  return { code, ...said };
}

/** What cannot be: the change, what the sentence must name, and the cure it must hold. */
const impossible: readonly (readonly [
  string,
  (file: File) => void,
  names: string,
  cure: string,
])[] = [
  [
    'a pick before the sowing',
    (f) => (f['events'][4].date = '2021-05-01'),
    'harvest of 2021-05-01 on “Long bed”',
    'before its planting was planted (2021-05-25): change one of the two days',
  ],
  [
    'a pick after the clearing',
    (f) => (f['events'][4].date = '2021-11-01'),
    'harvest of 2021-11-01 on “Long bed”',
    'after its planting was cleared (2021-10-05): change one of the two days',
  ],
  [
    'a first harvest before the start',
    (f) => (f['plantings'][1].firstHarvest = '2021-05-01'),
    'planting 2 “Tomatoes” on “Long bed”, first harvest',
    'before the start (2021-05-01 and 2021-05-25)',
  ],
  [
    'a bed of no area',
    (f) => (f['beds'][0].areaM2 = 0),
    'bed 1 “Long bed”, area',
    'more than 0 is wanted, not 0',
  ],
  [
    'a lawn of no area',
    (f) => (f['lawns'][0].areaM2 = 0),
    'lawn 1 “Orchard grass”, area',
    'more than 0 is wanted',
  ],
  [
    'a layer of negative depth',
    (f) => (f['applications'][2].amount.quantity.millimetres = -5),
    'layer 3 of 2021-06-05 on “Frame”, amount, quantity, depth',
    'at least 0 is wanted, not -5',
  ],
  [
    'a soil sample from above the ground',
    (f) => (f['events'][5].depthCentimetres = -30),
    'soil test of 2021-04-15 on “Long bed”, depth of the sample',
    'more than 0 is wanted, not -30',
  ],
  [
    'stuff that is all water',
    (f) => (f['materials'][0].moisturePercent = 100),
    'material 1 “Barley straw, tested”, water',
    'at most 97 is wanted, not 100',
  ],
  [
    'a layer on a bed that is gone',
    (f) => f['beds'].pop(),
    'layer 3 of 2021-06-05',
    'names a bed that is not there. Put that back or take this out',
  ],
  [
    'a layer laid before it was mown',
    (f) => (f['applications'][0].date = '2021-05-20'),
    'layer 1 of 2021-05-20 on “Long bed”',
    'before it was mown (2021-05-29): change one of the two days',
  ],
  [
    'recorded days out of order',
    (f) => f['weather'].days.reverse(),
    'weather of 2021-06-19',
    'comes after 2021-06-20; days must rise',
  ],
  [
    'a recorded day twice',
    (f) => f['weather'].days.splice(1, 0, f['weather'].days[0]),
    'weather of 2021-06-18',
    'is there twice',
  ],
  [
    'a day colder at noon than at night',
    (f) => (f['weather'].days[0] = ['2021-06-18', 20, 10, 0]),
    'weather of 2021-06-18',
    'lies above its highest (20 and 10)',
  ],
  [
    'rain below nought',
    (f) => (f['weather'].days[0] = ['2021-06-18', 10, 20, -3]),
    'weather of 2021-06-18',
    'at least 0 is wanted, not -3',
  ],
  [
    'a thermometer upside down',
    (f) => (f['weather'].thermometer = [['2021-06-18', 25, 12]]),
    'weather of 2021-06-18',
    'lies above its highest (25 and 12)',
  ],
  [
    'a humidity of 140 per cent',
    (f) =>
      (f['weather'].extra = {
        columns: ['wind m/s at 2 m', 'humidity %'],
        days: [['2021-06-18', 2, 140]],
      }),
    'weather of 2021-06-18',
    '0 to 100 can be, not 140',
  ],
  [
    'a day with more values than columns',
    (f) => (f['weather'].extra = { columns: ['humidity %'], days: [['2021-06-18', 2, 60]] }),
    'weather of 2021-06-18',
    'a value for each column',
  ],
  [
    'a day that is none',
    (f) => (f['plantings'][0].started = '2021-02-30'),
    'planting 1 “Climbing beans” on “Long bed”, start',
    'not a day, wanted YYYY-MM-DD',
  ],
  [
    'half the nitrate of the world',
    (f) => (f['events'][5].nitrateMgPerKg = 90_000),
    'soil test of 2021-04-15 on “Long bed”, nitrate',
    'more than can be believed (90000)',
  ],
];

describe('what cannot be gets a sentence that names the thing and the cure', () => {
  test.each(impossible)('%s', (_name, change, names, cure) => {
    const file = changed(change);
    const text = JSON.stringify(file);
    const read = parseGarden(text);
    if (read.ok) throw new Error('it was taken');
    const sentence = parseSentence(read.error);
    expect(sentence).toContain(names);
    expect(sentence).toContain(cure);

    // the command line says the same, with the code of a garden that cannot be read
    const { code, answers, complaints } = say(text);
    expect([code, answers]).toEqual([exitCodes.garden, '']);
    expect(complaints).toEqual([`"barn.mowings": ${sentence}`]);

    // and so does the window, where the same change is made by hand
    const fault = faultOfChange(exampleGarden(), file as unknown as Garden);
    expect(fault).toEqual(read.error);
    if (!fault) return;
    const kept = { kind: 'broken', where: fault.where, what: faultPhrase(fault) } as const;
    expect(editFailureSentence(kept)).toContain(names);
    expect(editFailureSentence(kept)).toContain(faultPhrase(fault));
  });
});

describe('what looks impossible and has a meaning', () => {
  const open = (change: (garden: Garden) => void): Garden => {
    const garden = exampleGarden();
    change(garden);
    const read = parseGarden(serializeGarden(garden));
    if (!read.ok) throw new Error(parseSentence(read.error));
    return read.value;
  };
  const runs = (garden: Garden): void => {
    for (const bed of garden.beds) {
      expect(runSeason(bedSeason(garden, bed.id, today)).residual).toBeLessThan(1e-9);
    }
    const { code, complaints } = say(serializeGarden(garden));
    expect([code, complaints]).toEqual([exitCodes.done, []]);
  };

  test('two tests on a day: the later entry counts', () => {
    const garden = open((one) => {
      const [first] = one.events.filter(({ kind }) => kind === 'soil test');
      if (first?.kind !== 'soil test') throw new Error('no test');
      one.events.push({ ...first, id: 'event-77', nitrateMgPerKg: 21 });
    });
    const start = dayOf('2021-04-20');
    const { startingMineralTop, bulkDensityKgPerL } = soilOf(
      garden,
      garden.beds[0] as Bed,
      start,
      today,
    );
    expect(startingMineralTop).toBeCloseTo(21 * bulkDensityKgPerL * 0.3, 10);
    runs(garden);
    // and the one that does not count is not passed over in silence
    const bed = garden.beds[0]!;
    const said = leftOutOf(garden, bed.id, today).map((one) =>
      leftOutSentence(one, bed.name, () => 'D'),
    );
    expect(said).toEqual([
      'Two soil tests of “Long bed” are of D: the one written down last counts. Delete the other, or change its day.',
    ]);
    expect(say(serializeGarden(garden)).answers.replace(/\s+/g, ' ')).toContain(
      'Two soil tests of “Long bed” are of',
    );
    expect(
      leftOutOf(
        open(() => undefined),
        bed.id,
        today,
      ),
    ).toEqual([]);
  });

  test('what was done before a bed is known, or a day to come from which it will be, is said', () => {
    const late = open((one) => {
      one.beds[0]!.knownSince = '2021-06-15';
    });
    const { id, name } = late.beds[0]!;
    const before = [...late.applications, ...late.events].filter(
      (one) =>
        'bedId' in one &&
        one.bedId === id &&
        one.date < '2021-06-15' &&
        !('kind' in one && (one.kind === 'soil test' || one.kind === 'look and dig')),
    );
    expect(before.length).toBeGreaterThan(1);
    const said = leftOutOf(late, id, today);
    expect(said).toEqual([
      { kind: 'before it was known', count: before.length, since: dayOf('2021-06-15') },
    ]);
    const sentence = leftOutSentence(said[0]!, name, () => 'D');
    expect(sentence).toContain('Give “Known since” an earlier day, or none.');
    expect(say(serializeGarden(late)).answers.replace(/\s+/g, ' ')).toContain(
      `${String(before.length)} entries of “Long bed” from before`,
    );
    const ahead = open((one) => {
      one.beds[0]!.knownSince = '2021-09-01';
    });
    expect(leftOutOf(ahead, id, today)).toEqual([
      { kind: 'not known yet', since: dayOf('2021-09-01') },
    ]);
    expect(say(serializeGarden(ahead)).answers.replace(/\s+/g, ' ')).toContain('a day to come');
  });

  test('a year without weather: imagined from the usual weather, marked, and said', () => {
    const garden = open((one) => {
      one.weather.days = [];
      one.events = one.events.filter(({ kind }) => kind !== 'rain gauge');
    });
    const { weather } = bedSeason(garden, 'bed-1', today);
    expect(new Set(weather.kind)).toEqual(new Set([dayKinds.indexOf('imagined')]));
    expect(weatherKnown(garden, today)).toMatchObject({ measured: 0, filled: 0 });
    runs(garden);
    expect(say(serializeGarden(garden)).answers.replace(/\s+/g, ' ')).toContain(
      'No weather of this season was recorded: all its days are imagined from the usual weather of Invented.',
    );
  });

  test('a garden without beds, or without lawns, is a garden', () => {
    runs(
      open((one) => {
        one.beds = [];
        one.plantings = [];
        one.applications = [];
        one.events = [];
      }),
    );
  });

  test.each<[string, (garden: Garden) => void]>([
    [
      'shares of a bed over one',
      (one) => one.plantings.forEach((planting) => (planting.share = 1)),
    ],
    [
      'cleared before the first pick',
      (one) => {
        one.plantings[1]!.cleared = '2021-06-19';
      },
    ],
    [
      'cleared on the day it was planted',
      (one) => {
        one.plantings[0]!.cleared = one.plantings[0]!.started;
      },
    ],
    [
      'an amount of nothing',
      (one) => {
        one.applications[1]!.amount.quantity = { kind: 'mass', kilograms: 0 };
      },
    ],
    [
      'a bed known from a day to come',
      (one) => {
        one.beds[0]!.knownSince = '2021-09-01';
      },
    ],
    [
      'a bed known from a day after its first entries',
      (one) => {
        one.beds[0]!.knownSince = '2021-06-15';
      },
    ],
    [
      'a plant that stays for years, planted before anything was written',
      (one) => {
        one.plantings[0]!.cropId = 'rhubarb';
        one.plantings[0]!.started = '1990-04-01';
        one.plantings[0]!.firstHarvest = null;
        one.plantings[0]!.cleared = null;
      },
    ],
    [
      'a plant that stays for years, planted on 29 February and cleared on a season’s first day',
      (one) => {
        one.plantings[0]!.cropId = 'asparagus';
        one.plantings[0]!.started = '2020-02-29';
        one.plantings[0]!.firstHarvest = null;
        one.plantings[0]!.cleared = '2021-01-01';
      },
    ],
    [
      'two readings of the gauge on a day',
      (one) => {
        one.events.push({ id: 'event-77', date: '2021-06-02', kind: 'rain gauge', millimetres: 4 });
      },
    ],
    [
      'months with rain and no wet day',
      (one) => {
        one.weather.normals.wetDays = Array<number>(12).fill(0);
      },
    ],
    [
      'no rain at all',
      (one) => {
        one.weather.normals.rainMillimetres = Array<number>(12).fill(0);
      },
    ],
    [
      'a garden whose today lies before everything in it',
      (one) => {
        one.garden.today = '2020-01-01';
      },
    ],
    [
      'a layer from a store before the day of its stock-taking',
      (one) => {
        one.stock[1]!.date = '2021-06-15';
      },
    ],
  ])('%s', (_name, change) => {
    runs(open(change));
  });
});
