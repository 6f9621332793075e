import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { headlines } from '../../app/core/season/draws/runDraws';
import { pools, sinks, sources } from '../../app/core/season/flows';
import { ledger, ledgerWishes } from '../../main/command/ledger';
import { behaviour } from '../../main/command/behaviour';
import { newFolder } from './folders';

const program = join(import.meta.dirname, '../..');
const sampleText = readFileSync(join(program, 'assets/gardens/sample.mowings'), 'utf8');
const about = { name: 'Mowings', version: '0.0.0-test' };

function say(words: readonly string[], folder = program) {
  const said = { answers: '', complaints: [] as string[] };
  const code = ledger(words, folder, program, about, {
    answer: (text) => void (said.answers += text),
    complain: (sentence) => void said.complaints.push(sentence),
  });
  return { code, ...said };
}

interface BedJson {
  readonly [key: string]: unknown;
  readonly name: string;
  readonly residual: number;
  readonly days: Record<string, (number | string)[]>;
  readonly flows: { from: string; to: string; why: string; gM2: number }[];
  readonly start: Record<string, number>;
  readonly seasons: {
    readonly start: Record<string, number>;
    readonly in: Record<string, number>;
    readonly out: Record<string, number>;
    readonly end: Record<string, number>;
    readonly carriedOver: Record<string, unknown>;
  }[];
  readonly plantings: Record<string, unknown>[];
  readonly cautions: Record<string, unknown>[];
}

describe('ledger --json, as documented in DEVELOPERS.md', () => {
  const answer = JSON.parse(say(['--json']).answers) as {
    program: object;
    garden: string;
    today: string;
    beds: BedJson[];
  };
  const documented = readFileSync(join(program, 'DEVELOPERS.md'), 'utf8');

  test('top keys and every bed’s keys are the documented ones', () => {
    expect(Object.keys(answer)).toEqual(['program', 'garden', 'today', 'beds']);
    expect(answer.program).toEqual(about);
    expect([answer.garden, answer.today]).toEqual(['Sorrel Lane', '2013-06-15']);
    expect(answer.beds).toHaveLength(9);
    for (const bed of answer.beds) {
      expect(Object.keys(bed)).toEqual([
        'id',
        'name',
        'areaM2',
        'state',
        'coverState',
        'ratio',
        'residual',
        'start',
        'days',
        'insideFlows',
        'flows',
        'seasons',
        'plantings',
        'layers',
        'verdict',
        'cautions',
      ]);
      for (const key of Object.keys(bed)) expect(documented).toContain(`\`${key}\``);
    }
  });

  test('seasons chain: each starts with the pools the one before ended with, and leaves something', () => {
    for (const { seasons, start } of answer.beds) {
      expect(seasons[0]!.start).toEqual(start);
      seasons.forEach((season, at) => {
        if (at > 0) expect(season.start).toEqual(seasons[at - 1]!.end);
        const sum = (of: Record<string, number>) =>
          Object.values(of).reduce((total, grams) => total + grams, 0);
        expect(sum(season.start) + sum(season.in) - sum(season.out)).toBeCloseTo(
          sum(season.end),
          8,
        );
        const keys = Object.keys(season.carriedOver);
        for (const key of keys) expect(documented).toContain(`\`${key}\``);
        expect(keys.at(-1)).toBe('expectedNextSeason');
      });
      expect(seasons.at(-1)).toMatchObject({ year: 2013, to: '2013-12-31', isOver: false });
    }
  });

  test('days are parallel: date, kind, one column per pool and per place outside', () => {
    for (const { days } of answer.beds) {
      expect(Object.keys(days)).toEqual(['date', 'kind', ...pools, ...sources, ...sinks]);
      const lengths = new Set(Object.values(days).map((column) => column.length));
      expect(lengths.size).toBe(1);
      expect(days['date']!.at(-1)).toBe('2013-12-31');
      const at = days['date']!.indexOf('2013-06-15');
      expect(days['kind']![at]).toBe('measured');
      expect(days['kind']![at + 1]).toBe('imagined');
    }
  });

  test('a reader can draw the balance up anew from the columns, every day', () => {
    for (const { name, days, start, residual } of answer.beds) {
      expect(residual).toBeLessThan(1e-9);
      const column = (key: string): number[] => days[key] as number[];
      let expected = pools.reduce((sum, pool) => sum + start[pool]!, 0);
      column('crop').forEach((_, day) => {
        for (const place of sources) expected += column(place)[day]!;
        for (const place of sinks) expected -= column(place)[day]!;
        const held = pools.reduce((sum, pool) => sum + column(pool)[day]!, 0);
        expect(Math.abs(held - expected), `${name} day ${day}`).toBeLessThan(1e-9);
      });
    }
  });

  test('flows of the season are the columns summed', () => {
    for (const { days, flows } of answer.beds)
      for (const place of sinks) {
        const summed = (days[place] as number[]).reduce((sum, grams) => sum + grams, 0);
        const listed = flows
          .filter(({ to }) => to === place)
          .reduce((sum, { gM2 }) => sum + gM2, 0);
        expect(summed).toBeCloseTo(listed, 9);
      }
  });

  test('plantings and cautions carry what was promised', () => {
    for (const bed of answer.beds) {
      for (const planting of bed.plantings)
        for (const key of ['demand', 'uptake', 'fixed', 'demandMet', 'removed', 'left'])
          expect(typeof planting[key]).toBe('number');
      for (const caution of bed.cautions) {
        expect(['note', 'caution', 'stop']).toContain(caution['weight']);
        for (const key of ['kind', 'number', 'threshold', 'source', 'instead', 'says'])
          expect(caution).toHaveProperty(key);
        expect(String(caution['source']).length).toBeGreaterThan(10);
      }
    }
    const gate = answer.beds.find(({ name }) => name === 'Gate bed')!;
    expect(gate['state']).toBe('over-fed');
    expect(gate.cautions.some(({ weight }) => weight === 'stop')).toBe(true);
  });
});

describe('ledger --draws N', () => {
  const asked = ['--bed', 'Gate bed', '--draws', '40'];
  const [bed] = (JSON.parse(say([...asked, '--json']).answers) as { beds: BedJson[] }).beds;
  const draws = bed!['draws'] as Record<string, any>;

  test('adds what the imagined seasons make of a bed, under the documented keys', () => {
    expect(Object.keys(bed!).at(-1)).toBe('draws');
    const documented = readFileSync(join(program, 'DEVELOPERS.md'), 'utf8');
    expect(documented).toContain('`draws`');
    for (const key of Object.keys(draws)) expect(documented).toContain(`\`${key}\``);
    expect(draws).toMatchObject({ count: 40, overFeeding: { odds: expect.any(Number) } });
    expect(draws['effectiveCount']).toBeGreaterThan(0);
    const { low, middle, high } = draws['ratio'] as Record<string, number>;
    expect(low).toBeLessThanOrEqual(middle!);
    expect(middle).toBeLessThanOrEqual(high!);
    const states = Object.values(draws['states'] as Record<string, number>);
    expect(states.reduce((sum, odds) => sum + odds, 0)).toBeCloseTo(1, 12);
    const { date, ...bands } = draws['nitrate'] as Record<string, unknown[]>;
    for (const band of Object.values(bands)) expect(band).toHaveLength(date!.length);
    expect(Object.keys(draws['mattersMost'] as object)).toEqual([...headlines]);
  });

  test('is the same every time, and is nothing without the option', () => {
    expect(say([...asked, '--json'])).toEqual(say([...asked, '--json']));
    expect(JSON.parse(say(['--bed', 'Gate bed', '--json']).answers).beds[0]).not.toHaveProperty(
      'draws',
    );
  });

  test('a bed says the same alone as among the others', () => {
    const all = JSON.parse(say(['--draws', '40', '--json']).answers) as { beds: BedJson[] };
    expect(all.beds.find(({ name }) => name === 'Gate bed')!['draws']).toEqual(draws);
  });

  test('is the odds and the ends in a line or two for reading', () => {
    const { code, answers } = say(asked);
    expect(code).toBe(0);
    expect(answers).toMatch(/of 10 imagined seasons|all imagined seasons/);
    expect(answers).toMatch(/In 8 of 10: .* times what can be used/);
    const own = answers.split('\n').filter((line) => /imagined seasons|In 8 of 10/.test(line));
    expect(own.length).toBeGreaterThan(1);
    for (const line of own) expect(line.length).toBeLessThanOrEqual(80);
  });
});

describe('ledger for reading', () => {
  test('one bed by name, whatever the letters’ size', () => {
    const { code, answers, complaints } = say(['--bed', 'gate BED']);
    expect(code).toBe(0);
    expect(complaints).toEqual([]);
    expect(answers).toContain('Gate bed: strongly over-fed');
    expect(answers).not.toContain('Far bed:');
    expect(answers).toContain('Both sides come out the same');
  });
  test('a file is looked for in the caller’s folder', () => {
    const folder = newFolder();
    writeFileSync(join(folder, 'mine.mowings'), sampleText.replace('Sorrel Lane', 'Dock End'));
    expect(say(['mine.mowings'], folder).answers).toContain('Dock End');
  });
});

describe('each failure: its code, one sentence, nothing on stdout', () => {
  const folder = newFolder();
  const made = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return name;
  };
  test.each([
    ['no such file', ['nowhere.mowings'], 3],
    ['a folder', ['.'], 3],
    ['cut short', [made('short.mowings', sampleText.slice(0, 5000))], 4],
    ['not a garden', [made('other.json', '{"a": 1}')], 4],
    [
      'newer',
      [made('newer.mowings', sampleText.replace('"schemaVersion": 1', '"schemaVersion": 999'))],
      4,
    ],
    ['no such bed', ['--bed', 'Moon bed'], 5],
    ['an unknown option', ['--loud'], 2],
    ['a bed without a name', ['--bed'], 2],
    ['two files', ['a.mowings', 'b.mowings'], 2],
    ['imagined seasons without a number', ['--draws'], 2],
    ['imagined seasons with a word', ['--draws', 'many'], 2],
    ['no imagined seasons', ['--draws', '0'], 2],
    ['too many imagined seasons', ['--draws', '10001'], 2],
  ])('%s', (_what, words, code) => {
    const said = say(words, folder);
    expect(said.code).toBe(code);
    expect(said.answers).toBe('');
    expect(said.complaints).toHaveLength(1);
    expect(said.complaints[0]).toMatch(/^[^\n]{20,}$/);
    expect(said.complaints[0]).not.toContain(folder);
  });
  test('options may come before and after the file', () => {
    expect(ledgerWishes(['--json', 'a', '--bed', 'b'])).toEqual({
      file: 'a',
      json: true,
      bed: 'b',
      draws: null,
    });
    expect(ledgerWishes(['--draws', '40', 'a', '--bed', 'b', '--json'])).toEqual({
      file: 'a',
      json: true,
      bed: 'b',
      draws: 40,
    });
  });
});

test('the check gardens behave', () => {
  let lines = '';
  const code = behaviour(program, {
    answer: (text) => void (lines += text),
    complain: () => undefined,
  });
  expect(lines.trim().split('\n')).toHaveLength(9);
  expect(lines).not.toContain('FAILS');
  expect(code).toBe(0);
});
