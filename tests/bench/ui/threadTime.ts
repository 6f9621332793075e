import type { Page } from 'playwright';

/**
 * A clock of what the page's own thread worked, which hardly hangs on what else the machine does.
 *
 * @returns asks for the milliseconds worked so far
 */
export async function threadTime(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? NaN);
  };
}
