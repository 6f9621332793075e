import { describe, expect, test } from 'vitest';
import {
  answersIn,
  emptyAnswers,
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
