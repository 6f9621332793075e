import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentPolicy, createPage, planWorkerPolicy } from '../../main/page';

let folder: string;
let page: ReturnType<typeof createPage>;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'mowings-policy-'));
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), '<p>page</p>');
  for (const name of [
    'plan.worker-Ab3_x-9.js',
    'season.worker-Ab3.js',
    'plan.worker.js',
    'highs-Ab3.wasm',
  ])
    writeFileSync(join(folder, 'assets', name), 'x');
  page = createPage(folder);
});

afterAll(() => rmSync(folder, { recursive: true }));

const policyOf = async (path: string): Promise<string | null> =>
  (await page(path)).headers.get('content-security-policy');

test('the file of the plan’s worker, and it alone, may start the solver’s compiled code', async () => {
  expect(await policyOf('/assets/plan.worker-Ab3_x-9.js')).toBe(planWorkerPolicy);
  for (const path of [
    '/',
    '/assets/season.worker-Ab3.js',
    '/assets/plan.worker.js',
    '/assets/highs-Ab3.wasm',
    '/assets/plan.worker-none.js',
    '/other/../assets/plan.worker-Ab3_x-9.js',
  ])
    expect(await policyOf(path)).toBe(contentPolicy);
});

test('the worker’s policy differs by that one word', () => {
  expect(planWorkerPolicy.replace(" 'wasm-unsafe-eval'", '')).toBe(contentPolicy);
  expect(planWorkerPolicy).not.toContain("'unsafe-eval'");
  expect(planWorkerPolicy.split("'wasm-unsafe-eval'")).toHaveLength(2);
});

test('compiled code is served as what it is', async () => {
  expect((await page('/assets/highs-Ab3.wasm')).headers.get('content-type')).toBe(
    'application/wasm',
  );
});
