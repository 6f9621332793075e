import { execFile } from 'node:child_process';
import { cp, mkdir, readFile, readdir, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import manifest from '../../package.json';
import { newFolder } from '../main/folders';

const top = join(import.meta.dirname, '../..');
const require = createRequire(import.meta.url);
// These two are inner parts of the packager; its version is pinned.
const inner = createRequire(require.resolve('electron-builder'));
const { getConfig, validateConfiguration } = inner('app-builder-lib/out/util/config/config.js') as {
  getConfig(folder: string, path: string, extra: null): Promise<Record<string, unknown>>;
  validateConfiguration(config: object, logger: object): Promise<void>;
};
const { DebugLogger } = inner('builder-util') as { DebugLogger: new (isOn: boolean) => object };

describe('the packager', () => {
  const settings = () => getConfig(top, 'electron-builder.yml', null);

  test('accepts the settings, and would not accept just any', async () => {
    const config = await settings();
    await expect(validateConfiguration(config, new DebugLogger(false))).resolves.toBeUndefined();
    await expect(
      validateConfiguration({ ...config, nonsense: 1 }, new DebugLogger(false)),
    ).rejects.toThrow(/nonsense/);
  });

  test('closes the ways around the program (the fuses)', async () => {
    expect((await settings())['electronFuses']).toEqual({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableCookieEncryption: true,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      grantFileProtocolExtraPrivileges: false,
    });
  });

  test('registers the ending of garden files', async () => {
    expect((await settings())['fileAssociations']).toMatchObject([{ ext: 'mowings' }]);
  });
});

test('every dependency has an exact version, and the main file is what the build makes', () => {
  for (const [name, version] of Object.entries(manifest.devDependencies))
    expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
  expect(manifest).not.toHaveProperty('dependencies');
  expect(manifest.main).toBe('.build/main/entry.js');
});

test('the icon is a square of 512', async () => {
  const png = await readFile(join(top, 'assets/icon.png'));
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([512, 512]);
});

/** Names of the files in an asar archive: a length, then JSON. */
function namesIn(archive: Buffer): string[] {
  const header = JSON.parse(
    archive.subarray(16, 16 + archive.readUInt32LE(12)).toString('utf8'),
  ) as Folder;
  const list = ({ files }: Folder, above: string): string[] =>
    Object.entries(files).flatMap(([name, entry]) =>
      entry.files ? list({ files: entry.files }, `${above}${name}/`) : `${above}${name}`,
    );
  return list(header, '');
}
interface Folder {
  files: Record<string, { files?: Folder['files'] }>;
}

// Packs with the real settings around a stand-in for Electron's binary, which carries the mark by
// which the packager finds the fuses; nothing is downloaded, and nothing here can be started.
test.runIf(process.platform === 'linux')(
  'packs the built program and nothing else, and sets the fuses in the binary',
  async () => {
    const project = newFolder();
    for (const place of ['package.json', 'electron-builder.yml', 'assets/icon.png'])
      await cp(join(top, place), join(project, place));
    const built = ['app/index.html', 'main/entry.js', 'main/preload.cjs', 'main/.sources'];
    for (const place of [...built.map((name) => `.build/${name}`), 'main/entry.ts', 'tests/a.ts']) {
      await mkdir(join(project, place, '..'), { recursive: true });
      await writeFile(join(project, place), 'x');
    }
    const dist = join(project, 'stand-in');
    await mkdir(join(dist, 'resources'), { recursive: true });
    await mkdir(join(dist, 'locales'));
    const mark = Buffer.from('dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX');
    const before = Buffer.concat([mark, Buffer.from([1, 9]), Buffer.from('101100110')]);
    await writeFile(join(dist, 'electron'), before, { mode: 0o755 });
    for (const name of ['LICENSE', 'LICENSES.chromium.html', 'version'])
      await writeFile(join(dist, name), '');

    await promisify(execFile)(
      process.execPath,
      [
        require.resolve('electron-builder/cli.js'),
        ...['--linux', '--dir', '--projectDir', project, '--config', 'electron-builder.yml'],
        `-c.electronDist=${dist}`,
        `-c.electronVersion=${manifest.devDependencies.electron}`,
      ],
      { cwd: project },
    );
    const unpacked = join(project, 'release/linux-unpacked');
    expect(await readdir(join(unpacked, 'resources'))).toContain('app.asar');
    const names = namesIn(await readFile(join(unpacked, 'resources/app.asar')));
    expect(names.toSorted()).toEqual([
      '.build/app/index.html',
      '.build/main/entry.js',
      '.build/main/preload.cjs',
      'package.json',
    ]);
    // In the order of the mark: run as node, cookies, NODE_OPTIONS, inspector, integrity, only asar,
    // (browser snapshot, which is left as it was,) file privileges. Each stood the other way before.
    const binary = await readFile(join(unpacked, 'mowings'));
    const at = binary.indexOf(mark) + mark.length + 2;
    expect(binary.subarray(at, at + 8).toString()).toBe('01001110');
  },
  90_000,
);
