/**
 * What one runner's tests came to. Names are whole: file, groups and title.
 *
 * @typedef {object} Outcome
 * @property {number} passed
 * @property {string[]} failed
 * @property {string[]} notRun
 * @property {string[]} [secondTry]  passed, but failed the first time; named so that it is mended
 */

/**
 * @typedef {object} VitestReport
 * @property {{ name: string, status: string, message?: string,
 *   assertionResults: { fullName: string, status: string }[] }[]} testResults
 *
 * @param {VitestReport} report  of Vitest's json reporter
 * @param {string} top           folder to cut off the files' paths
 * @returns {Outcome}
 */
export function readVitest(report, top) {
  /** @type {Outcome} */
  const outcome = { passed: 0, failed: [], notRun: [] };
  for (const { name, status, assertionResults } of report.testResults) {
    const file = name.replace(top, '').replace(/^[\\/]/, '');
    // A file that could not be loaded has no tests to fail.
    if (status === 'failed' && !assertionResults.some((test) => test.status === 'failed'))
      outcome.failed.push(`${file} (the file failed as a whole)`);
    for (const test of assertionResults) {
      const whole = `${file} > ${test.fullName}`;
      if (test.status === 'passed') outcome.passed++;
      else if (test.status === 'failed') outcome.failed.push(whole);
      else outcome.notRun.push(`${whole} (${test.status})`);
    }
  }
  return outcome;
}

/**
 * @typedef {object} PlaywrightSuite
 * @property {string} title
 * @property {PlaywrightSuite[]} [suites]
 * @property {{ title: string, tests: { projectName: string, status: string,
 *   annotations?: { type: string, description?: string }[] }[] }[]} [specs]
 *
 * @typedef {object} PlaywrightReport
 * @property {PlaywrightSuite[]} suites
 * @property {{ message?: string }[]} [errors]
 *
 * @param {PlaywrightReport} report  of Playwright's json reporter
 * @returns {Outcome}
 */
export function readPlaywright(report) {
  /** @type {Outcome} */
  const outcome = { passed: 0, failed: [], notRun: [], secondTry: [] };
  for (const { message } of report.errors ?? [])
    outcome.failed.push(`outside any test: ${message?.split('\n')[0] ?? 'no message'}`);
  /**
   * @param {PlaywrightSuite} suite
   * @param {string[]} above
   */
  const read = (suite, above) => {
    const titles = [...above, suite.title].filter(Boolean);
    for (const inner of suite.suites ?? []) read(inner, titles);
    for (const spec of suite.specs ?? [])
      for (const test of spec.tests) {
        const whole = `${[...titles, spec.title].join(' > ')} [${test.projectName}]`;
        const why = test.annotations?.find(({ type }) => type === 'skip')?.description;
        if (test.status === 'expected') outcome.passed++;
        else if (test.status === 'skipped') outcome.notRun.push(why ? `${whole} (${why})` : whole);
        else if (test.status === 'flaky') {
          outcome.passed++;
          outcome.secondTry?.push(whole);
        } else outcome.failed.push(whole);
      }
  };
  for (const suite of report.suites) read(suite, []);
  return outcome;
}

/**
 * A runner's outcome with what its end says: it must have passed something, and it may not end badly
 * without naming a failure.
 *
 * @param {Outcome | null} outcome  null when there is no report that can be read
 * @param {string} ended            how it ended, or '' for well
 * @returns {Outcome}
 */
export function judgeRunner(outcome, ended) {
  if (!outcome)
    return { passed: 0, failed: [`it did not start (${ended || 'no report'})`], notRun: [] };
  if (outcome.failed.length > 0) return outcome;
  if (ended) return { ...outcome, failed: [`it ${ended}, though no test failed`] };
  return outcome.passed > 0 ? outcome : { ...outcome, failed: ['nothing passed'] };
}

/**
 * A runner's outcome with what it left lying in the temporary folder: each is a failure of its own.
 *
 * @param {Outcome} outcome
 * @param {readonly string[]} leftovers  names
 * @returns {Outcome}
 */
export const withLeftovers = (outcome, leftovers) => ({
  ...outcome,
  failed: [
    ...outcome.failed,
    ...leftovers.map((name) => `${name} was left in the temporary folder`),
  ],
});

/**
 * The closing lines: what did not run, what failed, and the sum alone on the last line.
 *
 * @param {[string, Outcome][]} outcomes  by runner
 * @returns {{ lines: string[], isGood: boolean }}
 */
export function summary(outcomes) {
  /** @type {(key: 'failed' | 'notRun' | 'secondTry') => string[]} */
  const named = (key) =>
    outcomes.flatMap(([runner, outcome]) =>
      (outcome[key] ?? []).map((name) => `  ${runner}: ${name}`),
    );
  const passed = outcomes.reduce((sum, [, outcome]) => sum + outcome.passed, 0);
  const failed = named('failed');
  const notRun = named('notRun');
  const secondTry = named('secondTry');
  return {
    lines: [
      ...(notRun.length > 0 ? ['', 'Did not run, and counted in neither:', ...notRun] : []),
      ...(secondTry.length > 0
        ? ['', 'Passed only on a second try, so there is a race to be found:', ...secondTry]
        : []),
      ...(failed.length > 0 ? ['', 'Failed:', ...failed] : []),
      '',
      `${passed} passed, ${failed.length} failed`,
    ],
    isGood: failed.length === 0 && passed > 0,
  };
}
