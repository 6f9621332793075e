// What only Electron's side has: the menu of the window, and frames that might ask.
import { expect, test } from './fixtures';
import { probeFolder } from './probe/buildProbe';

test.use({ pageFolder: probeFolder });

test('a command of the menu reaches the page', async ({ garden, program }) => {
  program.chooseInMenu('undo');
  await expect.poll(() => garden.evaluate(() => window.probe.commands)).toEqual(['undo']);
});

test('a frame inside the page is not answered', async ({ garden }) => {
  const answer = await garden.evaluate(async () => {
    const frame = document.createElement('iframe');
    document.body.append(frame);
    const inner = frame.contentWindow as unknown as {
      mowingsInvoke(channel: string, request: null): Promise<unknown>;
    };
    return inner.mowingsInvoke('garden:about', null);
  });
  expect(answer).toMatchObject({ ok: false, error: { kind: 'refused' } });
});
