import type { Browser } from 'playwright';

export interface FirstPaint {
  readonly what: string;
  readonly milliseconds: readonly number[];
}

interface Watched {
  readonly paints: Record<string, number>;
}

/** What counts as useful: the page's own heading, and the first bed's answer. */
const wanted = { heading: 'main h1', answer: '.notice, .quiet' } as const;

/** In the page, before anything of it runs: notes when what is wanted has first been painted. */
function watch(selectors: Readonly<Record<string, string>>): void {
  const paints: Record<string, number> = {};
  (window as never as { mowingsBench: unknown }).mowingsBench = { paints };
  const look = (): void => {
    for (const [name, selector] of Object.entries(selectors)) {
      if (name in paints || !document.querySelector(selector)) continue;
      paints[name] = 0;
      // the frame that is being made, and the moment after it
      requestAnimationFrame(() => {
        const after = new MessageChannel();
        after.port1.onmessage = () => {
          paints[name] = performance.now();
        };
        after.port2.postMessage(null);
      });
    }
  };
  new MutationObserver(look).observe(document, { childList: true, subtree: true });
}

/** Opens the page anew, each time in a browser that has nothing of it kept. */
export async function firstPaints(
  browser: Browser,
  address: string,
  rounds: number,
): Promise<readonly FirstPaint[]> {
  const times = { heading: [] as number[], answer: [] as number[] };
  for (let round = 0; round < rounds; round++) {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.addInitScript(watch, wanted);
    await page.goto(address);
    const paints = await page.waitForFunction(
      () => {
        const { paints: seen } = (window as never as { mowingsBench: Watched }).mowingsBench;
        return seen['heading'] && seen['answer'] ? seen : null;
      },
      undefined,
      { timeout: 180_000 },
    );
    const seen = (await paints.jsonValue()) as Record<keyof typeof times, number>;
    times.heading.push(seen.heading);
    times.answer.push(seen.answer);
    await context.close();
  }
  return [
    { what: 'the page with its heading and fields', milliseconds: times.heading },
    { what: 'the first answer about beds', milliseconds: times.answer },
  ];
}
