import type { Page } from '@playwright/test';
import { expect } from '../fixtures';

interface Listening {
  mowingsHeard?: string[];
}

/**
 * Logs what the page's live regions say. As screen readers do, it takes no notice of a polite
 * region that comes into the page with its words already in it, nor of one behind an open question;
 * an alert is heard as soon as it comes. A page that loads anew has to be listened to anew.
 */
export async function listen(page: Page): Promise<void> {
  const start = () => {
    const log: string[] = [];
    (window as Listening).mowingsHeard = log;
    const regions =
      '[aria-live=polite], [aria-live=assertive], [role=status], [role=alert], [role=log]';
    const known = new WeakSet<Element>();
    const words = (node: Node) =>
      (node instanceof HTMLElement ? node.innerText : (node.textContent ?? ''))
        .replace(/\s+/g, ' ')
        .trim();
    // what lies outside an open question is shut off, for ears as well
    const isHidden = (element: Element) => {
      const modal = [...document.querySelectorAll('dialog:modal')].at(-1);
      return element.closest('[aria-busy=true]') !== null || !(modal?.contains(element) ?? true);
    };
    const say = (text: string) => {
      if (text !== '' && log.at(-1) !== text) log.push(text);
    };
    const take = (element: Element) => {
      for (const region of [element, ...element.querySelectorAll(regions)])
        if (region.matches(regions)) known.add(region);
    };
    new MutationObserver((changes) => {
      const fresh = new Set<Element>();
      const spoken = new Map<Element, Set<Node>>();
      for (const change of changes) {
        for (const node of change.addedNodes) {
          if (!(node instanceof Element)) continue;
          for (const inside of [node, ...node.querySelectorAll(regions)])
            if (inside.matches(regions) && !known.has(inside)) fresh.add(inside);
        }
        const at = change.target instanceof Element ? change.target : change.target.parentElement;
        const region = at?.closest(regions);
        if (!region || isHidden(region)) continue;
        const nodes = spoken.get(region) ?? new Set<Node>();
        if (change.type === 'characterData') nodes.add(change.target);
        for (const node of change.addedNodes) nodes.add(node);
        spoken.set(region, nodes);
      }
      for (const region of fresh) {
        known.add(region);
        if (region.matches('[role=alert], [aria-live=assertive]') && !isHidden(region))
          say(words(region));
      }
      for (const [region, nodes] of spoken) {
        if (fresh.has(region) || !region.isConnected) continue;
        if (region.matches('[role=status], [role=alert], [aria-atomic=true]')) say(words(region));
        else
          for (const node of nodes)
            if (node.isConnected && !fresh.has(node as Element)) say(words(node));
      }
    }).observe(document.documentElement, {
      childList: true,
      characterData: true,
      subtree: true,
    });
    take(document.documentElement);
  };
  await page.evaluate(start);
}

/** Everything heard since `listen`, oldest first. */
export const heard = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as Listening).mowingsHeard ?? []);

/** Waits until something is heard that fits, from the given place in the log on; answers what it was. */
export async function hear(page: Page, wanted: string | RegExp, from = 0): Promise<string> {
  const fits = (words: string) =>
    typeof wanted === 'string' ? words.includes(wanted) : wanted.test(words);
  let found: string | undefined;
  await expect
    .poll(
      async () => {
        const log = (await heard(page)).slice(from);
        found = log.find(fits);
        return found === undefined ? log : 'heard';
      },
      { message: `waiting to hear ${wanted}` },
    )
    .toBe('heard');
  return found ?? '';
}
