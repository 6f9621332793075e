import type { Browser, Page } from 'playwright';
import { openBedPage, openGarden, place } from './openGarden';
import { threadTime } from './threadTime';

export interface TypingTasks {
  readonly field: string;
  /** how long each task over 50 ms kept the page [ms] */
  readonly tasks: readonly number[];
  /** what the page's thread worked for each letter, what follows the last included [ms] */
  readonly workedALetter: number;
}

interface Noted {
  mowingsTasks: number[];
}

/** In the page: every task over 50 ms from now on. */
function note(): void {
  const tasks: number[] = [];
  (window as never as Noted).mowingsTasks = tasks;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) tasks.push(duration);
  }).observe({ type: 'longtask' });
}

/** A letter every so often, and time for what follows the last. */
const betweenLetters = 80;
const restMilliseconds = 3000;

async function whileTyping(
  page: Page,
  field: string | RegExp,
  words: string,
): Promise<Omit<TypingTasks, 'field'>> {
  const line = page.getByLabel(field).filter({ visible: true }).first();
  await line.scrollIntoViewIfNeeded();
  await line.click();
  await page.keyboard.press('Control+a');
  await page.waitForTimeout(restMilliseconds);
  const clock = await threadTime(page);
  await page.evaluate(note);
  const before = await clock();
  await page.keyboard.type(words, { delay: betweenLetters });
  await page.keyboard.press('Tab');
  await page.waitForTimeout(restMilliseconds);
  const workedALetter = ((await clock()) - before) / words.length;
  const tasks = await page.evaluate(() => (window as never as Noted).mowingsTasks);
  return { tasks, workedALetter };
}

/** What typing costs where it is reckoned with at once. */
export async function tasksWhileTyping(
  browser: Browser,
  address: string,
): Promise<readonly TypingTasks[]> {
  const page = await openGarden(browser, address);
  const mowing = await whileTyping(page, 'What came off?', '2 1/2 bags, damp');
  await openBedPage(page, 'Bed 3');
  await page.getByRole('button', { name: 'Lay something…' }).click();
  await page.getByLabel('What', { exact: true }).selectOption('elsewhere:straw-wheat');
  const laid = await whileTyping(page, 'How much?', '30 L');
  await page.keyboard.press('Escape');
  await place(page, 'Garden');
  await page.locator('[aria-labelledby="garden-beds"] summary').first().click();
  const area = await whileTyping(page, /^How big/, '5.5 m2');
  await page.context().close();
  return [
    { field: 'a mowing', ...mowing },
    { field: 'a layer, with what it would do', ...laid },
    { field: 'the size of a bed', ...area },
  ];
}
