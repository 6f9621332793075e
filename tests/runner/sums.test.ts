import { describe, expect, test } from 'vitest';
import { judgeRunner, readPlaywright, readVitest, summary, withLeftovers } from './sums.js';

const good = { passed: 3, failed: [], notRun: [] };

test('Vitest: passed, failed, skipped, and a file that does not load', () => {
  const file = (name: string, status: string, ...statuses: string[]) => ({
    name: `/top/tests/${name}`,
    status,
    assertionResults: statuses.map((one, n) => ({ fullName: `test ${n}`, status: one })),
  });
  const report = {
    testResults: [
      file('a.test.ts', 'passed', 'passed', 'passed', 'skipped', 'todo'),
      file('b.test.ts', 'failed', 'passed', 'failed'),
      file('c.test.ts', 'failed'),
      file('d.test.ts', 'failed', 'passed'),
    ],
  };
  expect(readVitest(report, '/top')).toEqual({
    passed: 4,
    failed: [
      'tests/b.test.ts > test 1',
      'tests/c.test.ts (the file failed as a whole)',
      'tests/d.test.ts (the file failed as a whole)',
    ],
    notRun: ['tests/a.test.ts > test 2 (skipped)', 'tests/a.test.ts > test 3 (todo)'],
  });
});

test('Playwright: nested groups, projects, reasons for skipping, trouble outside tests', () => {
  const spec = (title: string, status: string, annotations: object[] = []) => ({
    title,
    tests: [{ projectName: 'service', status, annotations: annotations as never[] }],
  });
  const report = {
    errors: [{ message: 'the set-up broke\n at line 1' }],
    suites: [
      {
        title: 'a.spec.ts',
        specs: [spec('first', 'expected'), spec('second', 'unexpected'), spec('third', 'flaky')],
        suites: [
          {
            title: 'group',
            specs: [spec('fourth', 'skipped', [{ type: 'skip', description: 'no binary' }])],
          },
        ],
      },
    ],
  };
  expect(readPlaywright(report)).toEqual({
    passed: 2,
    failed: ['outside any test: the set-up broke', 'a.spec.ts > second [service]'],
    secondTry: ['a.spec.ts > third [service]'],
    notRun: ['a.spec.ts > group > fourth [service] (no binary)'],
  });
});

describe('a runner', () => {
  test('that left a folder behind has failed, whatever else it did', () => {
    expect(withLeftovers(good, [])).toEqual(good);
    expect(withLeftovers(good, ['mowings-week-x']).failed).toEqual([
      'mowings-week-x was left in the temporary folder',
    ]);
  });

  test('that ended well and passed something is taken as it is', () => {
    expect(judgeRunner(good, '')).toEqual(good);
  });
  test('that left no report did not start', () => {
    expect(judgeRunner(null, 'ended with 1').failed).toEqual(['it did not start (ended with 1)']);
    expect(judgeRunner(null, '').failed).toHaveLength(1);
  });
  test('that ended badly without naming a failure has failed', () => {
    expect(judgeRunner(good, 'ended with 1').failed).toHaveLength(1);
  });
  test('in which nothing passed has failed', () => {
    expect(judgeRunner({ ...good, passed: 0, notRun: ['all'] }, '').failed).toEqual([
      'nothing passed',
    ]);
  });
});

describe('the sum', () => {
  test('stands alone on the last line, below what did not run and what failed', () => {
    const { lines, isGood } = summary([
      ['lint', { passed: 1, failed: [], notRun: [] }],
      ['unit', { passed: 5, failed: ['a > b'], notRun: [] }],
      ['pages', { passed: 2, failed: [], notRun: ['c (no binary)'] }],
    ]);
    expect(lines.at(-1)).toBe('8 passed, 1 failed');
    expect(lines.slice(0, -1).join('\n')).toMatch(/pages: c \(no binary\)[^]*unit: a > b/);
    expect(isGood).toBe(false);
  });
  test('names what passed only on a second try', () => {
    const { lines, isGood } = summary([
      ['pages', { passed: 2, failed: [], notRun: [], secondTry: ['a > b'] }],
    ]);
    expect(lines.join('\n')).toMatch(/second try[^]*pages: a > b[^]*2 passed, 0 failed$/);
    expect(isGood).toBe(true);
  });
  test('is good only when something passed and nothing failed', () => {
    expect(summary([['unit', good]])).toMatchObject({
      isGood: true,
      lines: ['', '3 passed, 0 failed'],
    });
    expect(summary([['unit', { ...good, passed: 0 }]]).isGood).toBe(false);
    expect(summary([]).isGood).toBe(false);
  });
});
