import { describe, expect, test } from 'vitest';
import { ownGarden } from '../../app/document/startGarden';
import {
  answersIn,
  emptyAnswers,
  oneBedMore,
  readAnswers,
  type Answers,
} from '../../app/screens/first/answers';

const filled = (changes: Partial<Answers> = {}): Answers => ({
  ...emptyAnswers('2013-06-15', 'en-GB'),
  lawnArea: '20 x 11 m',
  bedArea: '1.2 x 5 m',
  stationId: 'portland-oregon',
  ...changes,
});
const months = (value: (month: number) => number): string[] =>
  Array.from({ length: 12 }, (_, month) => String(value(month)));

describe('the five answers', () => {
  test('become what the store asks for, in inside units', () => {
    const { answers, troubles } = readAnswers(filled({ bedName: '  By the fence ' }));
    expect(troubles).toEqual({});
    expect(answers).toMatchObject({
      lawnAreaM2: 220,
      container: { name: 'bag', plural: 'bags', litres: 45 },
      bed: { name: 'By the fence', areaM2: 6 },
      climate: { kind: 'station', stationId: 'portland-oregon' },
      shownUnits: 'metric',
    });
  });

  test('a number alone is in the units chosen', () => {
    const { answers } = readAnswers(
      filled({ units: 'us', lawnArea: '1000', bedArea: '32', bagSize: '12' }),
    );
    // 0.3048 m to the foot and 3.785411784 L to the gallon, exact by definition
    expect(answers?.lawnAreaM2).toBeCloseTo(92.903_04, 6);
    expect(answers?.bed.areaM2).toBeCloseTo(2.972_897_28, 6);
    expect(answers?.container.litres).toBeCloseTo(45.424_941, 5);
  });

  test('each open question has its own trouble, and nothing is answered', () => {
    const { answers, troubles } = readAnswers(
      filled({ lawnArea: '', bedArea: 'big', bagSize: '3 kg', bedName: ' ', stationId: 'nowhere' }),
    );
    expect(answers).toBeNull();
    expect(Object.keys(troubles).sort()).toEqual([
      'bagSize',
      'bedArea',
      'bedName',
      'lawnArea',
      'stationId',
    ]);
  });

  test('US units where the language of the computer is American, else metric', () => {
    expect(emptyAnswers('2013-06-15', 'en-US').units).toBe('us');
    expect(emptyAnswers('2013-06-15', 'en-GB').units).toBe('metric');
    expect(emptyAnswers('2013-06-15', 'de').units).toBe('metric');
  });
});

describe('beds after the first', () => {
  const two = (area: string) => {
    const more = oneBedMore(filled({ cropId: 'snap_bean_pole', how: 'sown' }));
    return { ...more, further: more.further.map((bed) => ({ ...bed, bedArea: area })) };
  };

  test('begin as the last one did, with a name of their own', () => {
    const three = oneBedMore(two('8'));
    expect(three.further.map(({ bedName, cropId, how }) => [bedName, cropId, how])).toEqual([
      ['Bed 2', 'snap_bean_pole', 'sown'],
      ['Bed 3', 'snap_bean_pole', 'sown'],
    ]);
    expect(new Set(three.further.map(({ key }) => key)).size).toBe(2);
  });

  test('are read like the first, and each has its own trouble', () => {
    const { answers } = readAnswers(two('1 x 8 m'));
    expect(answers?.further).toEqual([
      {
        bed: { name: 'Bed 2', areaM2: 8 },
        crop: { cropId: 'snap_bean_pole', started: '2013-06-15', how: 'sown' },
      },
    ]);
    expect(Object.keys(readAnswers(two('')).troubles)).toEqual(['bedArea 1']);
  });

  test('one left out takes its trouble with it, and the next has another key', () => {
    const three = oneBedMore(two(''));
    const left = { ...three, further: three.further.slice(1) };
    expect(Object.keys(readAnswers(left).troubles)).toEqual(['bedArea 2']);
    expect(oneBedMore(left).further.at(-1)?.key).toBe(3);
  });

  test('stand in the garden, each with what grows in it', () => {
    const { answers } = readAnswers(two('8'));
    const garden = ownGarden(answers!, '2013-06-15');
    expect(garden?.beds.map(({ id, name, areaM2 }) => [id, name, areaM2])).toEqual([
      ['bed-1', 'Bed 1', 6],
      ['bed-2', 'Bed 2', 8],
    ]);
    expect(garden?.plantings.map(({ id, bedId, cropId }) => [id, bedId, cropId])).toEqual([
      ['planting-1', 'bed-1', 'snap_bean_pole'],
      ['planting-2', 'bed-2', 'snap_bean_pole'],
    ]);
  });
});

describe('a climate guessed from the time zone', () => {
  test('where one suits the whole zone; else the question stays open', () => {
    const guess = (zone: string) => emptyAnswers('2013-06-15', 'en-GB', zone).stationId;
    expect(guess('Europe/Amsterdam')).toBe('de-bilt');
    expect(guess('America/New_York')).toBe('');
    expect(guess('UTC')).toBe('');
    expect(guess('constructor')).toBe('');
  });
});

describe('months typed', () => {
  const typed = (changes: Partial<Answers> = {}): Answers =>
    filled({
      climate: 'typed',
      latitude: '45,5',
      side: 'south',
      lowest: months((month) => month - 3),
      highest: months((month) => month + 9),
      rain: months(() => 60),
      ...changes,
    });

  test('south of the equator the latitude is below 0', () => {
    const { answers } = readAnswers(typed());
    expect(answers?.climate).toMatchObject({
      kind: 'typed',
      latitudeDegrees: -45.5,
      minimumCelsius: Array.from({ length: 12 }, (_, month) => month - 3),
      wetDays: null,
    });
  });

  test('degrees Fahrenheit and inches come in as deg C and mm', () => {
    const { answers } = readAnswers(
      typed({
        units: 'us',
        lowest: months(() => 32),
        highest: months(() => 50),
        rain: months(() => 2),
      }),
    );
    const climate = answers?.climate;
    if (climate?.kind !== 'typed') throw new Error('not typed');
    expect(climate.minimumCelsius[0]).toBeCloseTo(0, 9);
    expect(climate.maximumCelsius[0]).toBeCloseTo(10, 9);
    expect(climate.rainMillimetres[0]).toBeCloseTo(50.8, 9);
  });

  test('a gap is counted, lowest above highest is named by month', () => {
    const gap = [...months((month) => month)];
    gap[4] = '';
    expect(readAnswers(typed({ lowest: gap })).troubles.months?.sentence).toContain(
      'One of the 36',
    );
    const turned = months((month) => (month === 6 ? 40 : month - 3));
    expect(readAnswers(typed({ lowest: turned })).troubles.months?.sentence).toContain('month 7');
  });

  test('a latitude beyond belief is refused with a likely value', () => {
    const { troubles } = readAnswers(typed({ latitude: '95' }));
    expect(troubles.latitude).toMatchObject({ suggestion: '45' });
  });
});

describe('other units', () => {
  const us = emptyAnswers('2013-06-15', 'en-US');
  test('the usual bag is the other system’s usual bag, and back', () => {
    expect(us.bagSize).toBe('12 gal');
    expect(answersIn('metric', us).bagSize).toBe('45 L');
    expect(answersIn('us', answersIn('metric', us))).toEqual(us);
  });

  test('what was typed stays the same amount, with a unit or without', () => {
    const metric = emptyAnswers('2013-06-15', 'en-GB');
    const typed = { ...metric, lawnArea: '220', bagSize: '60 L', bedArea: '1.2 x 5 m' };
    const turned = answersIn('us', typed);
    // a US gallon is 3.785411784 L, a foot 0.3048 m, both by definition
    expect(turned.lawnArea).toBe('2368.1 sq ft');
    expect(turned.bagSize).toBe('15.85 gal');
    expect(turned.bedArea).toBe('64.583 sq ft');
    expect(answersIn('metric', turned)).toMatchObject({
      lawnArea: '220 m2',
      bagSize: '60 L',
      bedArea: '6 m2',
    });
  });

  test('months typed without units mean the same warmth and rain; what cannot be read stays', () => {
    const metric = emptyAnswers('2013-06-15', 'en-GB');
    const lowest = ['-10', '10', 'cold', ...metric.lowest.slice(3)];
    const rain = ['25.4', ...metric.rain.slice(1)];
    const turned = answersIn('us', { ...metric, lowest, rain, lawnArea: 'big' });
    expect(turned.lowest.slice(0, 4)).toEqual(['14', '50', 'cold', '']);
    expect(turned.rain[0]).toBe('1');
    expect(turned.lawnArea).toBe('big');
    expect(answersIn('metric', turned).lowest.slice(0, 3)).toEqual(['-10', '10', 'cold']);
  });
});
