import type { Browser, Page } from 'playwright';
import { openBedPage, openGarden, place } from './openGarden';
import { threadTime } from './threadTime';

export interface Repaints {
  readonly place: string;
  /** of each edit */
  readonly milliseconds: readonly number[];
  /** what the page's thread worked for it, processor time [ms] */
  readonly worked: readonly number[];
}

interface Waiting {
  mowingsBench: { from: number; until: number };
}

/** Between two edits: a person looks before the next. */
const lookMilliseconds = 700;
const bed = 'Bed 3';

/** In the page: from the next key to the paint after what it finds has changed. */
export function watchKey(selector: string): void {
  const bench = { from: 0, until: 0 };
  (window as never as Waiting).mowingsBench = bench;
  const text = (): string =>
    [...document.querySelectorAll(selector)].map((element) => element.outerHTML).join();
  const before = text();
  addEventListener(
    'keydown',
    // the last key of the press: the one that does it
    ({ timeStamp }) => {
      bench.from = timeStamp;
    },
    { capture: true },
  );
  const observer = new MutationObserver(() => {
    if (text() === before) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const after = new MessageChannel();
      after.port1.onmessage = () => {
        bench.until = performance.now();
      };
      after.port2.postMessage(null);
    });
  });
  observer.observe(document.body, {
    childList: true,
    subtree: true,
    characterData: true,
    attributes: true,
  });
}

async function timesOf(
  page: Page,
  selector: string,
  rounds: number,
): Promise<Pick<Repaints, 'milliseconds' | 'worked'>> {
  const times: number[] = [];
  const worked: number[] = [];
  const clock = await threadTime(page);
  for (let round = 0; round < rounds; round++) {
    await page.waitForTimeout(lookMilliseconds);
    await page.evaluate(watchKey, selector);
    const before = await clock();
    await page.keyboard.press(round % 2 === 0 ? 'Control+z' : 'Control+y');
    const done = await page.waitForFunction(
      () => {
        const { from, until } = (window as never as Waiting).mowingsBench;
        return until > 0 ? until - from : null;
      },
      undefined,
      { timeout: 180_000, polling: 50 },
    );
    worked.push((await clock()) - before);
    times.push((await done.jsonValue()) as number);
  }
  return { milliseconds: times, worked };
}

/** A layer is laid on one bed, then taken back and done again where beds are shown. */
export async function repaints(
  browser: Browser,
  address: string,
  rounds: number,
): Promise<readonly Repaints[]> {
  const page = await openGarden(browser, address);
  await openBedPage(page, bed);
  const state = '.bed-state > :nth-child(2)';
  const bare = await page.locator(state).innerHTML();
  await page.getByRole('button', { name: 'Lay something…' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('What', { exact: true }).selectOption('elsewhere:straw-wheat');
  await dialog.getByLabel('How much?').fill('30 L');
  await dialog.getByRole('button', { name: 'Lay it' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.waitForFunction(
    ([selector, before]) => document.querySelector(selector)?.innerHTML !== before,
    [state, bare] as const,
  );

  const own = await timesOf(page, state, rounds);
  await place(page, 'Beds');
  const entry = `article:has(h2 button:text-is("${bed}"))`;
  const id = await page.locator(entry).getAttribute('aria-labelledby');
  const all = await timesOf(page, `[aria-labelledby="${id}"]`, rounds);
  await page.context().close();
  return [
    { place: 'all beds in sight', ...all },
    { place: 'one bed’s page', ...own },
  ];
}
