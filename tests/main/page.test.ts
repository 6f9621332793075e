import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { contentPolicy, createPage } from '../../main/page';
import { newFolder } from './folders';

let page: (path: string) => Promise<Response>;
beforeEach(async () => {
  const folder = newFolder();
  await mkdir(join(folder, 'app/assets'), { recursive: true });
  await mkdir(join(folder, 'app-secret'));
  await writeFile(join(folder, 'app/index.html'), '<p>page</p>');
  await writeFile(join(folder, 'app/assets/a b.js'), 'code');
  await writeFile(join(folder, 'secret.txt'), 'secret');
  await writeFile(join(folder, 'app-secret/secret.txt'), 'secret');
  page = createPage(join(folder, 'app'));
});

test.each([
  ['/', 'text/html; charset=utf-8', '<p>page</p>'],
  ['/index.html', 'text/html; charset=utf-8', '<p>page</p>'],
  ['/assets/a%20b.js', 'text/javascript; charset=utf-8', 'code'],
  ['/assets/../index.html', 'text/html; charset=utf-8', '<p>page</p>'],
])('%s is served', async (path, type, body) => {
  const answer = await page(path);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toBe(type);
  expect(await answer.text()).toBe(body);
});

test.each([
  '/../secret.txt',
  '/..%2fsecret.txt',
  '/%2e%2e/secret.txt',
  '/assets/../../secret.txt',
  '/..%5csecret.txt',
  '/..\\secret.txt',
  '/../app-secret/secret.txt',
  '//etc/passwd',
  '/%2fetc%2fpasswd',
  '/C:/Windows/win.ini',
  '/C%3a/Windows/win.ini',
  '//server/share/file',
  '/\\\\server\\share\\file',
  '/index.html%00.js',
  '/%',
  '/%c0%ae%c0%ae/secret.txt',
  '/assets',
  '/assets/',
  '',
  '/none.js',
])('%s is not found', async (path) => {
  const answer = await page(path);
  expect(answer.status).toBe(404);
  expect(await answer.text()).not.toContain('secret');
});

test('the policy allows own files and nothing else, on every answer', async () => {
  const parts = new Map(
    contentPolicy.split('; ').map((part) => [part.split(' ')[0], part.split(' ').slice(1)]),
  );
  expect(parts.get('default-src')).toEqual(["'none'"]);
  expect(parts.get('script-src')).toEqual(["'self'"]);
  expect(parts.get('style-src')).toEqual(["'self'"]);
  expect(parts.get('connect-src')).toEqual(["'self'"]);
  for (const name of ['base-uri', 'form-action', 'frame-ancestors'])
    expect(parts.get(name)).toEqual(["'none'"]);
  expect(contentPolicy).not.toMatch(/unsafe|https?:|\*/);
  for (const path of ['/', '/assets/a%20b.js', '/none.js']) {
    const { headers } = await page(path);
    expect(headers.get('content-security-policy')).toBe(contentPolicy);
    expect(headers.get('x-content-type-options')).toBe('nosniff');
  }
});

test('the page has the chosen colour scheme in its first tag, and nothing else has', async () => {
  const folder = join(newFolder(), 'app');
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'index.html'), '<!doctype html><html lang="en"><p>page</p></html>');
  await writeFile(join(folder, 'a.js'), '<html lang="en">');
  let scheme: 'system' | 'light' | 'dark' = 'dark';
  const served = createPage(folder, async () => scheme);
  const text = async (path: string) => (await served(path)).text();
  expect(await text('/')).toBe(
    '<!doctype html><html data-theme="dark" lang="en"><p>page</p></html>',
  );
  expect(await text('/a.js')).toBe('<html lang="en">');
  scheme = 'system';
  expect(await text('/')).toBe('<!doctype html><html lang="en"><p>page</p></html>');
});
