// Both shells, seen from inside a page: the real host modules over the real wire, without screens.
import { readFile, readdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from './fixtures';
import { probeFolder } from './probe/buildProbe';

test.use({ pageFolder: probeFolder });

const today = () => {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

test('the host says what it is', async ({ garden, side, program }) => {
  const about = await garden.evaluate(() => window.probe.host.about());
  expect(about).toEqual({
    ok: true,
    value: {
      native: side === 'bridge',
      version: '0.0.0-test',
      folder: program.gardensFolder,
      today: today(),
    },
  });
});

test('saves a real file, lists it, opens it again', async ({ garden, program, side }) => {
  if (side === 'bridge')
    program.dialogAnswers.save.push(join(program.gardensFolder, 'Back plot.mowings'));
  const saved = await garden.evaluate(() =>
    window.probe.host.saveGarden({ id: null, name: 'Back plot', text: '{"ä": 1}', replace: false }),
  );
  expect(saved).toMatchObject({ ok: true, value: { name: 'Back plot' } });
  expect(await readdir(program.gardensFolder)).toEqual(['Back plot.mowings']);
  expect(await readFile(join(program.gardensFolder, 'Back plot.mowings'), 'utf8')).toBe('{"ä": 1}');

  await program.restart();
  const opened = await garden.evaluate(async () => {
    const recent = await window.probe.host.recentGardens();
    if (!recent.ok) return recent;
    return window.probe.host.openGarden({ id: recent.value[0]!.id });
  });
  expect(opened).toMatchObject({ ok: true, value: { name: 'Back plot', text: '{"ä": 1}' } });
});

test('a draft outlives a reload', async ({ garden, program }) => {
  await garden.evaluate(() =>
    window.probe.host.keepDraft({ id: null, name: 'Half', text: 'half a thought' }),
  );
  await garden.reload();
  const restored = await garden.evaluate(() => window.probe.host.restoreDraft());
  expect(restored).toMatchObject({ ok: true, value: { name: 'Half', text: 'half a thought' } });
  await garden.evaluate(() => window.probe.host.discardDraft());
  expect((await readdir(program.dataFolder)).filter((name) => name.startsWith('draft'))).toEqual(
    [],
  );
});

test('a draft outlives the program', async ({ garden, program }) => {
  await garden.evaluate(() =>
    window.probe.host.keepDraft({ id: null, name: 'Half', text: 'half a thought' }),
  );
  await program.restart();
  const restored = await garden.evaluate(() => window.probe.host.restoreDraft());
  expect(restored).toMatchObject({ ok: true, value: { text: 'half a thought' } });
});

test('the title shows the name and the mark of unsaved changes', async ({ garden, program }) => {
  await garden.evaluate(() => window.probe.host.describeWindow({ name: 'Plot', unsaved: true }));
  expect(await program.title()).toBe('Plot (edited) - Mowings');
  await garden.evaluate(() => window.probe.host.describeWindow({ name: 'Plot', unsaved: false }));
  expect(await program.title()).toBe('Plot - Mowings');
});

test('a file named at start reaches the page as an id', async ({ garden, program, folder }) => {
  const file = join(folder, 'given.mowings');
  await writeFile(file, 'given text');
  await program.restart(file);
  await expect.poll(() => garden.evaluate(() => window.probe.files.length)).toBe(1);
  const opened = await garden.evaluate(() =>
    window.probe.host.openGarden({ id: window.probe.files[0]! }),
  );
  expect(opened).toMatchObject({ ok: true, value: { name: 'given', text: 'given text' } });
});

test('a worker runs', async ({ garden }) => {
  expect(await garden.evaluate(() => window.probe.echo('hello'))).toBe('hello!');
});

test('the address holds no token, and a reload keeps the connection', async ({ garden }) => {
  expect(garden.url()).not.toContain('token');
  await garden.reload();
  expect(await garden.evaluate(() => window.probe.host.about())).toMatchObject({ ok: true });
});

test('nothing of the machine is within the page’s reach', async ({ garden, side }) => {
  const reach = await garden.evaluate(() => ({
    require: typeof (globalThis as { require?: unknown }).require,
    process: typeof (globalThis as { process?: unknown }).process,
    bridge: window.mowingsShell ? Object.keys(window.mowingsShell).toSorted() : [],
  }));
  expect(reach).toEqual({
    require: 'undefined',
    process: 'undefined',
    bridge: side === 'bridge' ? ['host', 'onMenu', 'onOpenFile'] : [],
  });
});

test.describe('the content policy', () => {
  test('blocks a script that text smuggled in', async ({ garden, trouble }) => {
    const ran = await garden.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.ran = true';
      document.body.append(script);
      return 'ran' in window;
    });
    expect(ran).toBe(false);
    await expect
      .poll(() => trouble.splice(0))
      .toEqual([expect.stringContaining('Content Security Policy')]);
  });

  test('blocks eval', async ({ garden, trouble }) => {
    // Playwright's own evaluate is not bound by the policy; code in a timer of the page is.
    const blocked = await garden.evaluate(
      () =>
        new Promise<boolean>((resolve) => {
          document.addEventListener('securitypolicyviolation', () => resolve(true));
          setTimeout('window.ran = true', 0);
          setTimeout(() => resolve(!('ran' in window)), 1000);
        }),
    );
    expect(blocked).toBe(true);
    expect(await garden.evaluate(() => 'ran' in window)).toBe(false);
    trouble.length = 0;
  });

  test('lets nothing out', async ({ garden, trouble }) => {
    const reached = await garden.evaluate(() =>
      fetch('https://example.org/').then(
        () => true,
        () => false,
      ),
    );
    expect(reached).toBe(false);
    await expect
      .poll(() => trouble.some((line) => line.includes('Content Security Policy')))
      .toBe(true);
    trouble.length = 0;
  });
});
