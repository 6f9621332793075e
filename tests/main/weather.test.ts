import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { serializeGarden } from '../../app/document/serialize';
import { exitCodes } from '../../main/command/exitCodes';
import { weather } from '../../main/command/weather';
import { weatherWishes } from '../../main/command/weatherWishes';
import { exampleGarden } from '../document/exampleGarden';
import { newFolder } from './folders';

const made = 'date,tmax (C),tmin (C),rain (mm)\n2021-07-01,28,14,3\n2021-07-03,5,14,-1\n';

function folderWith(csv = made) {
  const folder = newFolder();
  writeFileSync(join(folder, 'own.csv'), csv);
  writeFileSync(join(folder, 'barn.mowings'), serializeGarden(exampleGarden()));
  return folder;
}

async function say(words: readonly string[], folder: string) {
  const said = { answers: '', complaints: [] as string[] };
  const code = await weather(words, folder, {
    answer: (text) => void (said.answers += text),
    complain: (sentence) => void said.complaints.push(sentence),
  });
  return { code, ...said };
}

describe('weather FILE --into GARDEN', () => {
  test('prints what was understood and writes nothing', async () => {
    const folder = folderWith();
    const before = readFileSync(join(folder, 'barn.mowings'), 'utf8');
    const { code, answers, complaints } = await say(['own.csv', '--into', 'barn.mowings'], folder);
    expect([code, complaints]).toEqual([exitCodes.done, []]);
    expect(answers).toContain('highest temperature: tmax (C) (by its heading), °C (named there)');
    expect(answers).toContain('Line 3, 2021-07-03: rain below nought (-1).');
    expect(answers).toContain(
      'Line 3, 2021-07-03: the highest, 5 °C, lies below the lowest, 14 °C',
    );
    expect(answers).toContain('1 new day would be added to “Behind the barn”');
    expect(readFileSync(join(folder, 'barn.mowings'), 'utf8')).toBe(before);
  });

  test('--write replaces the garden whole and leaves nothing beside it', async () => {
    const folder = folderWith();
    const { code, answers } = await say(['own.csv', '--into', 'barn.mowings', '--write'], folder);
    expect(code).toBe(exitCodes.done);
    expect(answers).toContain('1 new day was added');
    const read = parseGarden(readFileSync(join(folder, 'barn.mowings'), 'utf8'));
    expect(read.ok && read.value.weather.days.at(-1)).toEqual(['2021-07-01', 14, 28, 3]);
    expect(read.ok && { ...read.value, weather: null }).toEqual({
      ...exampleGarden(),
      weather: null,
    });
    expect(readdirSync(folder).sort()).toEqual(['barn.mowings', 'own.csv']);
  });

  test('what is to be settled stops the writing, the option settles it', async () => {
    const folder = folderWith('date,rain (mm)\n02/01/2021,1\n');
    const words = ['own.csv', '--into', 'barn.mowings', '--write'];
    const before = readFileSync(join(folder, 'barn.mowings'), 'utf8');
    const first = await say(words, folder);
    expect(first.code).toBe(exitCodes.weather);
    expect(first.complaints).toHaveLength(1);
    expect(readFileSync(join(folder, 'barn.mowings'), 'utf8')).toBe(before);
    const second = await say([...words, '--dates', 'mdy'], folder);
    expect(second.code).toBe(exitCodes.done);
    expect(readFileSync(join(folder, 'barn.mowings'), 'utf8')).toContain('["2021-02-01"');
  });

  test('columns can be said', async () => {
    const folder = folderWith('when,a,b\n2021-07-01,28,14\n');
    const columns = ['--columns', 'date=when,max=a,min=3', '--temperature', 'C'];
    const { answers, code } = await say(['own.csv', ...columns], folder);
    expect(code).toBe(exitCodes.done);
    expect(answers).toContain('lowest temperature: b, °C (as you said)');
  });

  test.each<[string, readonly string[], string | null, number]>([
    ['no such file', ['none.csv'], null, exitCodes.file],
    ['a folder', ['.'], null, exitCodes.file],
    ['no such garden', ['own.csv', '--into', 'none.mowings'], null, exitCodes.file],
    ['not a garden', ['own.csv', '--into', 'own.csv'], null, exitCodes.garden],
    ['no weather', ['own.csv'], 'a,b\nc,d\n', exitCodes.weather],
    ['nothing', ['own.csv'], '', exitCodes.weather],
  ])('one sentence on stderr, nothing on stdout: %s', async (_name, words, csv, wanted) => {
    const { code, answers, complaints } = await say(words, folderWith(csv ?? made));
    expect([code, answers, complaints.length]).toEqual([wanted, '', 1]);
    expect(complaints[0]).toMatch(/[.]$/);
  });
});

describe('words that make no sense', () => {
  test.each([
    [[]],
    [['a.csv', 'b.csv']],
    [['a.csv', '--write']],
    [['a.csv', '--speed', '3']],
    [['a.csv', '--into']],
    [['a.csv', '--columns', 'max']],
    [['a.csv', '--columns', 'colour=3']],
    [['a.csv', '--temperature', 'K']],
    [['a.csv', '--temperature', 'constructor']],
    [['a.csv', '--dates', 'sometimes']],
    [['a.csv', '--from', '2021-02-30']],
    [['a.csv', '--wind-height', '-2']],
  ])('%j', async (words) => {
    expect(typeof weatherWishes(words)).toBe('string');
    const { code, complaints } = await say(words, folderWith());
    expect([code, complaints.length]).toEqual([exitCodes.usage, 1]);
  });
});
