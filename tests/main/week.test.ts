// `week`: the plan for reading and as JSON, by the same sums as the window.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import type { PlanAnswer } from '../../app/core/plan/answer';
import { week, weekWishes } from '../../main/command/week';
import { steadySolver } from '../solve/steadySolver';
import { newFolder } from './folders';

const program = join(import.meta.dirname, '../..');
const sampleText = readFileSync(join(program, 'assets/gardens/sample.mowings'), 'utf8');
const about = { name: 'Mowings', version: '0.0.0-test' };

async function say(words: readonly string[], folder = program) {
  const said = { answers: '', complaints: [] as string[] };
  const code = await week(
    words,
    folder,
    program,
    about,
    {
      answer: (text) => void (said.answers += text),
      complain: (sentence) => void said.complaints.push(sentence),
    },
    steadySolver,
  );
  return { code, ...said };
}

describe('on the sample', () => {
  let text: Awaited<ReturnType<typeof say>>;
  let json: { program: object; garden: string; today: string; plan: PlanAnswer };
  beforeAll(async () => {
    text = await say([]);
    json = JSON.parse((await say(['--json'])).answers) as typeof json;
  });

  test('feeds the hungry bed, gives the over-fed one nothing, and says so with the sample’s numbers', () => {
    expect(text.code).toBe(0);
    expect(text.answers).toMatch(/Far bed\n {2}[\d /]+buckets of clippings of Back lawn/);
    expect(text.answers).toMatch(/Gate bed: has far more than it can use/);
    expect(text.answers).toMatch(/Front lawn, today: leave it all lying\. It is held back/);
    // folded for a terminal
    for (const line of text.answers.split('\n').slice(0, -4))
      expect(line.length).toBeLessThanOrEqual(80);
  });

  test('says in JSON what it says in words: the same amounts on the same beds', () => {
    expect(Object.keys(json)).toEqual(['program', 'garden', 'today', 'plan']);
    expect([json.garden, json.today]).toEqual(['Sorrel Lane', '2013-06-15']);
    for (const { odds } of json.plan.lines) {
      expect(odds?.of).toBe(100);
      expect(odds?.better).toBeGreaterThan(50);
    }
    for (const { layers } of json.plan.lines)
      for (const { amount } of layers) {
        const half = Math.round((amount.counted?.count ?? 0) * 2);
        const count = half === 1 ? '1/2' : `${Math.floor(half / 2)}${half % 2 ? ' 1/2' : ''}`;
        expect(text.answers).toContain(`${count} bucket`);
      }
  });

  test('every litre of what was cut is laid or left', () => {
    for (const { was, laid, rest } of json.plan.sources) {
      expect(laid.litres + rest.litres).toBeCloseTo(was.litres, 9);
      expect(laid.nitrogenGrams + rest.nitrogenGrams).toBeCloseTo(was.nitrogenGrams, 9);
    }
  });

  test('for an earlier day knows nothing of what was written down after it', async () => {
    const may = await say(['--date', '2013-05-01', '--json']);
    const cut = JSON.parse(sampleText) as {
      mowings: { date: string }[];
      applications: { date: string }[];
    };
    cut.mowings = cut.mowings.filter(({ date }) => date <= '2013-05-01');
    cut.applications = cut.applications.filter(({ date }) => date <= '2013-05-01');
    const folder = newFolder();
    writeFileSync(join(folder, 'may.mowings'), JSON.stringify(cut));
    const known = await say(['may.mowings', '--date', '2013-05-01', '--json'], folder);
    expect((JSON.parse(may.answers) as typeof json).plan).toEqual(
      (JSON.parse(known.answers) as typeof json).plan,
    );
  });
});

describe('what it cannot answer', () => {
  test('words it does not know', () => {
    expect(weekWishes(['a.mowings', '--date', '2013-06-15', '--json'])).toEqual({
      file: 'a.mowings',
      day: expect.any(Number),
      json: true,
    });
    expect(weekWishes(['--when', 'now'])).toMatch(/"--when" is not known here/);
    expect(weekWishes(['--date', '15 June'])).toMatch(/wants a day/);
    expect(weekWishes(['a.mowings', 'b.mowings'])).toMatch(/one garden at a time/);
  });

  test('no such file, no garden, no beds: a sentence and a code of its own each', async () => {
    const folder = newFolder();
    expect((await say(['none.mowings'], folder)).code).toBe(3);
    writeFileSync(join(folder, 'broken.mowings'), '{');
    expect((await say(['broken.mowings'], folder)).code).toBe(4);
    const bare = JSON.parse(sampleText) as Record<string, unknown>;
    for (const key of ['beds', 'plantings', 'applications', 'events']) bare[key] = [];
    writeFileSync(join(folder, 'bare.mowings'), JSON.stringify(bare));
    const said = await say(['bare.mowings'], folder);
    expect(said).toMatchObject({ code: 8, answers: '' });
    expect(said.complaints.join()).toMatch(/no bed yet/);
  });
});
