import { chmod, link, mkdir, readFile, readdir, stat, symlink, writeFile } from 'node:fs/promises';
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { realFileSystem, type FileSystem } from '../../main/fileSystem';
import { readWhole, writeWhole } from '../../main/files';
import { newFolder } from './folders';

let folder = '';
let path = '';
beforeEach(async () => {
  folder = newFolder();
  path = join(folder, 'plot.mowings');
  await writeFile(path, 'old');
});

const trouble = (code: string) => Object.assign(new Error(code), { code });

interface Faults {
  platform?: NodeJS.Platform;
  /** codes that a call fails with, one per time it is made; undefined lets that one pass */
  fail?: Partial<Record<string, (string | undefined)[]>>;
  /** bytes taken per write */
  bite?: number;
}

/** The real file system with its calls written down, and made to fail where a test says so. */
function watched({ platform = 'linux', fail = {}, bite = Infinity }: Faults = {}) {
  const calls: string[] = [];
  const step = (name: string) => {
    calls.push(name);
    const code = fail[name]?.shift();
    if (code) throw trouble(code);
  };
  const fileSystem: FileSystem = {
    ...realFileSystem,
    platform,
    async create(place, mode) {
      step('create');
      const file = await realFileSystem.create(place, mode);
      return {
        async write(bytes, offset, length) {
          step('write');
          return file.write(bytes, offset, Math.min(length, bite));
        },
        async chmod(bits) {
          step('chmod');
          await file.chmod(bits);
        },
        async sync() {
          step('sync');
          await file.sync();
        },
        async close() {
          calls.push('close');
          await file.close();
          const code = fail['close']?.shift();
          if (code) throw trouble(code);
        },
      };
    },
    async openFolder(place) {
      step('open folder');
      const handle = await realFileSystem.openFolder(place);
      return {
        async sync() {
          step('sync folder');
          await handle.sync();
        },
        async close() {
          calls.push('close folder');
          await handle.close();
        },
      };
    },
    async rename(from, to) {
      step('rename');
      await realFileSystem.rename(from, to);
    },
    async remove(place) {
      calls.push('remove');
      await realFileSystem.remove(place);
    },
    async wait(milliseconds) {
      calls.push(`wait ${milliseconds}`);
    },
  };
  const write = (text = 'new') => writeWhole(path, text, 'plot', { fileSystem });
  return { calls, write };
}

const content = () => readFile(path, 'utf8');
const untouched = async () => {
  expect(await content()).toBe('old');
  expect(await readdir(folder)).toEqual(['plot.mowings']);
};

describe('the order of the calls', () => {
  test('beside, all bytes, flush, close, rename, flush of the folder', async () => {
    const { calls, write } = watched();
    expect(await write()).toEqual({ ok: true, value: null });
    expect(calls).toEqual([
      'create',
      'chmod',
      'write',
      'sync',
      'close',
      'rename',
      'open folder',
      'sync folder',
      'close folder',
    ]);
    expect(await content()).toBe('new');
    expect(await readdir(folder)).toEqual(['plot.mowings']);
  });

  test('short writes are continued to the last byte', async () => {
    const { calls, write } = watched({ bite: 2 });
    expect(await write('höher')).toMatchObject({ ok: true });
    expect(calls.filter((call) => call === 'write')).toHaveLength(3);
    expect(await content()).toBe('höher');
  });

  test('a write that takes nothing and says nothing is a failure, not an endless loop', async () => {
    const { write } = watched({ bite: 0 });
    expect(await write()).toMatchObject({ ok: false, error: { kind: 'failed' } });
    await untouched();
  });
});

describe('failures leave the old file, and nothing beside it', () => {
  const kinds = {
    ENOSPC: 'disk-full',
    EDQUOT: 'disk-full',
    EROFS: 'read-only',
    EACCES: 'no-permission',
    EPERM: 'no-permission',
    ENOENT: 'not-found',
    EIO: 'failed',
  };
  for (const call of ['create', 'chmod', 'write', 'close', 'rename'])
    test.each(Object.entries(kinds))(`${call}: %s is %s`, async (code, kind) => {
      const { write } = watched({ fail: { [call]: [code] } });
      expect(await write()).toMatchObject({ ok: false, error: { kind } });
      await untouched();
    });

  test('a failed flush is answered with a new file, never with a second flush of the same one', async () => {
    const { calls, write } = watched({ fail: { sync: ['EIO'] } });
    expect(await write()).toEqual({ ok: true, value: null });
    expect(calls).toEqual([
      ...['create', 'chmod', 'write', 'sync', 'close', 'remove'],
      ...['create', 'chmod', 'write', 'sync', 'close', 'rename'],
      ...['open folder', 'sync folder', 'close folder'],
    ]);
    expect(await content()).toBe('new');
  });

  test('a flush that fails twice is a failed save', async () => {
    const { calls, write } = watched({ fail: { sync: ['EIO', 'EIO'] } });
    expect(await write()).toEqual({
      ok: false,
      error: { kind: 'failed', reason: expect.stringContaining('EIO') },
    });
    expect(calls.filter((call) => call === 'create')).toHaveLength(2);
    await untouched();
  });

  test('a full disk found at the flush is not tried again', async () => {
    const { calls, write } = watched({ fail: { sync: ['ENOSPC'] } });
    expect(await write()).toMatchObject({ error: { kind: 'disk-full', name: 'plot' } });
    expect(calls.filter((call) => call === 'create')).toHaveLength(1);
    await untouched();
  });

  test('a folder that is not there', async () => {
    path = join(folder, 'gone/plot.mowings');
    const { write } = watched();
    expect(await write()).toEqual({ ok: false, error: { kind: 'not-found', name: 'plot' } });
  });

  test('a file marked as read-only is not replaced', async () => {
    await chmod(path, 0o444);
    const { write } = watched();
    expect(await write()).toEqual({ ok: false, error: { kind: 'read-only', name: 'plot' } });
    await untouched();
  });

  test('the place is a folder', async () => {
    path = join(folder, 'folder.mowings');
    await mkdir(path);
    const { write } = watched();
    expect(await write()).toMatchObject({ ok: false });
    expect((await readdir(folder)).toSorted()).toEqual(['folder.mowings', 'plot.mowings']);
  });
});

describe('the flush of the folder', () => {
  test.each([
    ['win32', 'EPERM', true],
    ['win32', 'EINVAL', true],
    ['win32', 'ENOTSUP', true],
    ['win32', 'EIO', false],
    ['linux', 'EINVAL', true],
    ['linux', 'ENOTSUP', true],
    ['linux', 'EPERM', false],
    ['linux', 'EIO', false],
    ['darwin', 'EIO', false],
  ] as const)('%s: %s tolerated: %s', async (platform, code, isTolerated) => {
    const { write } = watched({ platform, fail: { 'sync folder': [code] } });
    expect((await write()).ok).toBe(isTolerated);
  });
});

describe('another program holds the target (Windows)', () => {
  test.each(['EPERM', 'EACCES', 'EBUSY'])(
    '%s: waits, ever longer, and then saves',
    async (code) => {
      const { calls, write } = watched({ platform: 'win32', fail: { rename: [code, code, code] } });
      expect(await write()).toEqual({ ok: true, value: null });
      expect(calls.filter((call) => call.startsWith('wait'))).toEqual([
        'wait 25',
        'wait 50',
        'wait 100',
      ]);
      expect(await content()).toBe('new');
    },
  );

  test('for ever: gives up after seconds and names what it kept', async () => {
    const { calls, write } = watched({
      platform: 'win32',
      fail: { rename: Array.from({ length: 50 }, () => 'EBUSY') },
    });
    const answer = await write();
    const waited = calls
      .filter((call) => call.startsWith('wait'))
      .reduce((sum, call) => sum + Number(call.slice(5)), 0);
    expect(waited).toBeGreaterThan(3000);
    expect(waited).toBeLessThan(10_000);
    const kept = (await readdir(folder)).find((name) => name !== 'plot.mowings')!;
    expect(answer).toMatchObject({
      error: { kind: 'failed', reason: expect.stringContaining(kept) },
    });
    expect(await readFile(join(folder, kept), 'utf8')).toBe('new');
    expect(await content()).toBe('old');
  });

  test('elsewhere a refused rename fails at once', async () => {
    const { calls, write } = watched({ platform: 'darwin', fail: { rename: ['EPERM'] } });
    expect(await write()).toMatchObject({ error: { kind: 'no-permission' } });
    expect(calls.filter((call) => call.startsWith('wait'))).toEqual([]);
  });
});

describe('what the file was stays', () => {
  test('its permissions, whatever the mask', async () => {
    await chmod(path, 0o660);
    await watched().write();
    expect((await stat(path)).mode & 0o777).toBe(0o660);
  });

  test('a link still leads to it', async () => {
    const real = join(folder, 'real.mowings');
    await writeFile(real, 'old');
    path = join(folder, 'link.mowings');
    await symlink(real, path);
    await watched().write();
    expect(await readFile(real, 'utf8')).toBe('new');
    expect(await content()).toBe('new');
  });

  test('a second hard link keeps the old content: the known price of replacing', async () => {
    const other = join(folder, 'other.mowings');
    await link(path, other);
    await watched().write();
    expect(await readFile(other, 'utf8')).toBe('old');
  });
});

describe('a process killed while saving', () => {
  test('leaves the old file or the new one, whole', async () => {
    const texts = ['a', 'b'].map((letter) => letter.repeat(300_000));
    await writeFile(path, 'old');
    const built = join(folder, 'files.js');
    const { build } = await import('vite');
    await build({
      configFile: false,
      logLevel: 'error',
      build: {
        ssr: join(import.meta.dirname, '../../main/files.ts'),
        outDir: folder,
        emptyOutDir: false,
      },
    });
    const script = `import(process.argv[1]).then(async ({ writeWhole }) => {
      for (let n = 1; ; n++) {
        await writeWhole(process.argv[2], 'ab'[n % 2].repeat(300000), 'plot');
        if (n === 1) console.log('begun');
      }
    });`;
    for (let round = 0; round < 12; round++) {
      const child = spawn(process.execPath, ['-e', script, `file://${built}`, path]);
      await new Promise((resolve) => void child.stdout.once('data', resolve));
      await new Promise((resolve) => void setTimeout(resolve, round * 1.7));
      child.kill('SIGKILL');
      await new Promise((resolve) => void child.once('exit', resolve));
      // it had replaced the file once when it began to be waited for; wherever the kill fell since
      expect(texts).toContain(await content());
    }
  });
});

describe('reading', () => {
  test('gives the text as it is, with a byte order mark and its line ends', async () => {
    await writeFile(path, '\uFEFF{\r\n}');
    expect(await readWhole(path, 'plot', 100)).toMatchObject({
      ok: true,
      value: { text: '\uFEFF{\r\n}' },
    });
  });

  test.each([
    [
      'too large',
      async () => writeFile(path, 'x'.repeat(101)),
      { kind: 'too-large', limitBytes: 100 },
    ],
    ['not UTF-8', async () => writeFile(path, Buffer.from([0x7b, 0xff, 0x7d])), { kind: 'failed' }],
  ])('%s', async (_name, prepare, error) => {
    await prepare();
    expect(await readWhole(path, 'plot', 100)).toMatchObject({ ok: false, error });
  });

  test('missing, and a folder', async () => {
    expect(await readWhole(join(folder, 'none'), 'none', 100)).toEqual({
      ok: false,
      error: { kind: 'not-found', name: 'none' },
    });
    expect(await readWhole(folder, 'folder', 100)).toMatchObject({ error: { kind: 'failed' } });
  });
});
