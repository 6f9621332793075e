import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { channels } from '../../app/host/contract';
import { dataFolder, startService, type Service } from '../../main/loopback';
import { textLimitBytes } from '../../main/requests';
import { newFolder } from './folders';

let folder = '';
let service: Service;
async function started(file: string | null = null) {
  folder = newFolder();
  await mkdir(join(folder, 'app'));
  await writeFile(join(folder, 'app/index.html'), '<p>page</p>');
  service = await startService({
    pageFolder: join(folder, 'app'),
    dataFolder: join(folder, 'state'),
    gardensFolder: join(folder, 'gardens'),
    version: '0',
    file,
  });
}
beforeEach(() => started());
afterEach(() => service.stop());

const good = () => ({
  origin: service.origin,
  'content-type': 'application/json',
  'x-mowings-token': service.token,
});
const ask = (power: string, body: unknown, headers: Record<string, string> = good()) =>
  fetch(`${service.origin}/host/${power}`, { method: 'POST', headers, body: JSON.stringify(body) });

test('listens on this machine only, at a port of the system’s choice', async () => {
  expect(service.origin).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
  const first = service.origin;
  await service.stop();
  await started();
  expect(service.address).toBe(`${service.origin}/#token=${service.token}`);
  expect(service.token).toMatch(/^[\w-]{43}$/);
  expect(first).toBeTruthy();
});

test('answers the page to anyone here, without a token', async () => {
  const answer = await fetch(`${service.origin}/`);
  expect(answer.status).toBe(200);
  expect(await answer.text()).toBe('<p>page</p>');
  expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'");
  expect((await fetch(`${service.origin}/`, { method: 'HEAD' })).status).toBe(200);
  expect((await fetch(`${service.origin}/`, { method: 'PUT' })).status).toBe(405);
});

test('answers every power of the contract to its own page', async () => {
  for (const power of Object.keys(channels)) {
    const answer = await ask(power, null);
    expect(answer.status, power).toBe(200);
    expect(await answer.json(), power).toHaveProperty('ok');
  }
  expect(await (await ask('toString', null)).json()).toMatchObject({ error: { kind: 'refused' } });
});

describe('refuses', () => {
  const faults: Record<string, () => Record<string, string | undefined>> = {
    'no token': () => ({ 'x-mowings-token': undefined }),
    'another token': () => ({ 'x-mowings-token': 'x'.repeat(43) }),
    'a part of the token': () => ({ 'x-mowings-token': service.token.slice(1) }),
    'no origin': () => ({ origin: undefined }),
    'a foreign origin': () => ({ origin: 'https://example.org' }),
    'another port': () => ({ origin: 'http://127.0.0.1:1' }),
    'the empty origin': () => ({ origin: 'null' }),
    'a request from another site': () => ({ 'sec-fetch-site': 'cross-site' }),
    'a request from another port of this machine': () => ({ 'sec-fetch-site': 'same-site' }),
    'a form': () => ({ 'content-type': 'application/x-www-form-urlencoded' }),
    'plain text': () => ({ 'content-type': 'text/plain' }),
  };
  test.each(Object.keys(faults))('%s', async (name) => {
    const headers = Object.fromEntries(
      Object.entries({ ...good(), ...faults[name]!() }).filter(
        (pair): pair is [string, string] => pair[1] !== undefined,
      ),
    );
    const answer = await ask('recentGardens', null, headers);
    expect(answer.status).toBe(403);
    expect(await answer.json()).toMatchObject({ ok: false, error: { kind: 'refused' } });
  });

  test('asking with GET', async () => {
    const answer = await fetch(`${service.origin}/host/recentGardens`, { headers: good() });
    expect(answer.status).toBe(403);
  });

  test.each(['example.org', 'localhost', '127.0.0.1', '127.0.0.1:1'])(
    'a foreign name that leads here: %s',
    async (host) => {
      const statusOf = (path: string) =>
        new Promise<number | undefined>((resolve) => {
          request(`${service.origin}${path}`, { headers: { ...good(), host } }, (answer) =>
            resolve(answer.resume().statusCode),
          ).end();
        });
      expect(await statusOf('/')).toBe(421);
      expect(await statusOf('/host/recentGardens')).toBe(421);
    },
  );

  test('what is not JSON, and a wrong shape', async () => {
    const answer = await fetch(`${service.origin}/host/about`, {
      method: 'POST',
      headers: good(),
      body: '{',
    });
    expect(answer.status).toBe(400);
    expect(await (await ask('openGarden', { path: '/etc/passwd' })).json()).toMatchObject({
      error: { kind: 'refused' },
    });
  });

  test('a body that is too large, with an answer', async () => {
    const answer = await ask('keepDraft', 'x'.repeat(3 * textLimitBytes));
    expect(answer.status).toBe(413);
    expect(await answer.json()).toMatchObject({ error: { kind: 'too-large' } });
  });

  test('a body without end', async () => {
    const end = await new Promise<string>((resolve) => {
      const asking = request(
        `${service.origin}/host/about`,
        { method: 'POST', headers: good() },
        (answer) => resolve(`status ${answer.resume().statusCode}`),
      );
      asking.once('error', () => resolve('broken off'));
      const part = Buffer.alloc(4_000_000, 'x');
      const more = () => {
        while (!asking.destroyed && asking.write(part));
      };
      asking.on('drain', more);
      more();
    });
    expect(end).toBe('broken off');
  });
});

test('saves a real file', async () => {
  const answer = await ask('saveGarden', { id: null, name: 'Plot', text: '{}', replace: false });
  expect(await answer.json()).toMatchObject({ ok: true, value: { name: 'Plot' } });
  expect(await readFile(join(folder, 'gardens/Plot.mowings'), 'utf8')).toBe('{}');
});

test('a garden named at start is offered by id', async () => {
  await service.stop();
  const elsewhere = join(newFolder(), 'given.mowings');
  await writeFile(elsewhere, 'text');
  await started(elsewhere);
  expect(service.address).not.toContain('given');
  const id = /&open=([\w-]+)$/.exec(service.address)![1];
  expect(await (await ask('openGarden', { id })).json()).toMatchObject({
    value: { name: 'given', text: 'text' },
  });
});

test('stops only after what is being saved is saved', async () => {
  const text = 'x'.repeat(5_000_000);
  const saving = ask('saveGarden', { id: null, name: 'Plot', text, replace: false });
  // The keeping folder is made when the request has arrived and is about to be answered.
  await expect.poll(() => existsSync(join(folder, 'state')), { interval: 1 }).toBe(true);
  await service.stop();
  expect(await (await saving).json()).toMatchObject({ ok: true });
  expect(await readFile(join(folder, 'gardens/Plot.mowings'), 'utf8')).toBe(text);
  await expect(fetch(service.origin)).rejects.toThrow();
});

test('the keeping folder is where Electron has it', () => {
  const folderOf = (platform: NodeJS.Platform, env: Record<string, string>) =>
    dataFolder('Mowings', env, platform, '/home/me').replaceAll('\\', '/');
  expect(folderOf('linux', {})).toBe('/home/me/.config/Mowings/state');
  expect(folderOf('linux', { XDG_CONFIG_HOME: '' })).toBe('/home/me/.config/Mowings/state');
  expect(folderOf('linux', { XDG_CONFIG_HOME: '/conf' })).toBe('/conf/Mowings/state');
  expect(folderOf('darwin', {})).toBe('/home/me/Library/Application Support/Mowings/state');
  expect(folderOf('win32', { APPDATA: '/roaming' })).toBe('/roaming/Mowings/state');
});
