import type { Browser, Page } from 'playwright';
import { openGarden, place, type PlaceName } from './openGarden';
import { watchKey } from './repaint';
import { threadTime } from './threadTime';

export interface PlaceTimes {
  readonly what: string;
  /** [ms] */
  readonly milliseconds: readonly number[];
  /** what the page's thread worked meanwhile, processor time [ms]: it hardly hangs on other load */
  readonly worked: readonly number[];
  readonly limit: number;
}

interface Waiting {
  mowingsBench: { from: number; until: number };
}

const placesOpened: readonly PlaceName[] = ['Season', 'Lawn', 'Tables', 'Garden', 'Beds'];
/** so long a place may take to be there, as the first page's first answer [ms] */
const openLimit = 1000;
/** a person looks before the next step [ms] */
const lookMilliseconds = 700;

const seen = async (page: Page): Promise<number> => {
  const done = await page.waitForFunction(
    () => {
      const { from, until } = (window as never as Waiting).mowingsBench;
      return until > 0 ? until - from : null;
    },
    undefined,
    { timeout: 180_000, polling: 50 },
  );
  return (await done.jsonValue()) as number;
};

const apart = (
  times: readonly (readonly [number, number])[],
): Pick<PlaceTimes, 'milliseconds' | 'worked'> => ({
  milliseconds: times.map(([milliseconds]) => milliseconds),
  worked: times.map(([, worked]) => worked),
});

/** In the page: from the next press to the paint after the place stands there with its content. */
function watchPlace(name: string): void {
  const bench = { from: 0, until: 0 };
  (window as never as Waiting).mowingsBench = bench;
  addEventListener(
    'click',
    ({ timeStamp }) => {
      bench.from = timeStamp;
    },
    { capture: true, once: true },
  );
  const observer = new MutationObserver(() => {
    const heading = document.querySelector('main h1');
    if (heading?.textContent !== name || bench.from === 0) return;
    // more than a heading and what stands under it: the place itself
    if ((heading.closest('.page')?.textContent?.length ?? 0) < 400) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const after = new MessageChannel();
      after.port1.onmessage = () => {
        bench.until = performance.now();
      };
      after.port2.postMessage(null);
    });
  });
  observer.observe(document.body, { childList: true, subtree: true });
}

/** What is done, by the clock and by the page's own thread. */
async function timed(
  page: Page,
  clock: () => Promise<number>,
  act: () => Promise<void>,
): Promise<readonly [number, number]> {
  const before = await clock();
  await act();
  const milliseconds = await seen(page);
  return [milliseconds, (await clock()) - before];
}

async function opened(
  page: Page,
  clock: () => Promise<number>,
  name: PlaceName,
): Promise<readonly [number, number]> {
  await page.waitForTimeout(lookMilliseconds);
  await page.evaluate(watchPlace, name);
  return timed(page, clock, () => place(page, name));
}

/** The other places opened, and a planting moved by key and kept in Season. */
export async function placeTimes(
  browser: Browser,
  address: string,
  rounds: number,
  repaintLimit: number,
): Promise<readonly PlaceTimes[]> {
  const page = await openGarden(browser, address);
  const clock = await threadTime(page);
  const times: PlaceTimes[] = [];
  for (const name of placesOpened) {
    const first = await opened(page, clock, name);
    await place(page, 'This week');
    times.push({
      what: `${name} opened`,
      ...apart([first, await opened(page, clock, name)]),
      limit: openLimit,
    });
    await place(page, 'This week');
  }
  await place(page, 'Season');
  const planting = page.locator('.strip-planting').first();
  await planting.waitFor({ timeout: 180_000 });
  await page.locator('.strip-soil').first().waitFor({ timeout: 180_000 });
  const id = (await planting.getAttribute('data-planting')) ?? '';
  const own = `[data-planting="${id}"]`;
  const soil = `.strip-row:has(${own}) .strip-soil`;
  const steps: (readonly [number, number])[] = [];
  const kept: (readonly [number, number])[] = [];
  for (let round = 0; round < rounds; round++) {
    await page.locator(own).focus();
    await page.waitForTimeout(lookMilliseconds);
    await page.evaluate(watchKey, own);
    const key = round % 2 === 0 ? 'PageUp' : 'PageDown';
    steps.push(await timed(page, clock, () => page.keyboard.press(key)));
    await page.waitForTimeout(lookMilliseconds);
    await page.evaluate(watchKey, soil);
    kept.push(await timed(page, clock, () => page.keyboard.press('Enter')));
  }
  await page.context().close();
  return [
    ...times,
    {
      what: 'a planting moved by key, to where it is drawn',
      ...apart(steps),
      limit: repaintLimit,
    },
    { what: 'kept, to its bed’s soil', ...apart(kept), limit: repaintLimit },
  ];
}
