import { join } from 'node:path';
import { defineConfig } from '@playwright/test';
import { findBrowser } from '../main/launch/findBrowser.js';
import type { Sides } from '../tests/pages/fixtures';

const top = join(import.meta.dirname, '..');
const installed = findBrowser();
const isRoot = process.getuid?.() === 0;
/** Specs run on both sides, except those that end in .bridge.spec.ts or name Electron itself. */
const electronOnly = /electron\.spec\.ts$/;
const bridgeOnly = /\.bridge\.spec\.ts$/;
/**
 * What only looks at the page itself is looked at once: both shells serve the same build. What a
 * shell does for the page (files, printing, weather, taking away, workers under its policy) and the
 * core journey of a mowing are walked on both, but for those tests of them whose title ends in @once.
 */
const sameOnBothSides =
  /(?:pictures|\.a11y|bedChanges|beds|bringIntoOwn|everyFigure|garden|keyboard|lawn|offers|plan|season|seasonChart|section|tables|water|waterJuly|whatIf)\.spec\.ts$/;

export default defineConfig<Sides>({
  testDir: join(top, 'tests/pages'),
  outputDir: join(top, '.build/test-results'),
  snapshotPathTemplate: join(top, 'tests/pictures/{arg}{ext}'),
  globalSetup: join(top, 'tests/pages/probe/buildProbe.ts'),
  // one browser alone leaves half of the second core idle
  workers: 2,
  // only what hangs comes to these: a slow machine takes longer and says the same
  timeout: 300_000,
  // A busy machine now and then loses a race that no person would; the closing lines name it.
  retries: process.env['CI'] === undefined ? 0 : 1,
  reporter: 'list',
  forbidOnly: process.env['CI'] !== undefined,
  expect: {
    timeout: 60_000,
    toHaveScreenshot: { animations: 'disabled', caret: 'hide', maxDiffPixelRatio: 0.002 },
  },
  use: {
    browserName: 'chromium',
    viewport: { width: 1280, height: 860 },
    contextOptions: { reducedMotion: 'reduce' },
    screenshot: 'only-on-failure',
    launchOptions: {
      ...(installed ? { executablePath: installed } : {}),
      // Chromium refuses its sandbox to root, and containers run tests as root.
      chromiumSandbox: !isRoot,
      args: [
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--font-render-hinting=none',
        '--force-color-profile=srgb',
      ],
    },
  },
  projects: [
    { name: 'service', testIgnore: [electronOnly, bridgeOnly], use: { side: 'service' } },
    {
      name: 'bridge',
      testIgnore: [electronOnly, sameOnBothSides],
      grepInvert: /@once/,
      use: { side: 'bridge' },
    },
    { name: 'electron', testMatch: electronOnly },
  ],
});
