import type { Page } from '@playwright/test';
import { focusFindings, type Finding } from './inPage';
import { Person, type Focused } from './keys';

export interface TabWalk {
  readonly stops: readonly Focused[];
  /** what was wrong with the ring, the sight or the order of a stop */
  readonly findings: readonly Finding[];
}

/** A bed's page in a narrow window, with its tables open, has some 200; a trap has no end. */
const most = 250;

/** Presses Tab from the first stop of the page, the way past the head, until the page is left. */
export async function walkByTab(page: Page): Promise<TabWalk> {
  const person = new Person(page);
  for (let press = 0; press < most; press++) {
    if ((await person.focused()).name === 'To the page') break;
    await person.press('Shift+Tab');
  }
  const stops: Focused[] = [];
  const findings: Finding[] = [];
  for (let press = 0; press < most; press++) {
    const [here, found] = await Promise.all([person.focused(), page.evaluate(focusFindings)]);
    findings.push(...found);
    if (here.role === 'none' || here.role === 'RootWebArea') return { stops, findings };
    stops.push(here);
    await person.press('Tab');
  }
  throw new Error(`The page was not left by ${most} presses of Tab`);
}

const months =
  'January|February|March|April|May|June|July|August|September|October|November|December';
const days = new RegExp(
  `(?:(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day )?\\d{1,2} (?:${months})|(?:[Tt]oday|[Yy]esterday)(?=[,:])`,
  'g',
);

/** The stops as lines, without days and amounts; of lines that say the same the first alone. */
export const orderLines = (stops: readonly Focused[]): readonly string[] => [
  ...new Set(
    stops.map(
      ({ role, name }) => `${role} "${name.replaceAll(days, 'DAY').replace(/\d.*/s, '…')}"`,
    ),
  ),
];
