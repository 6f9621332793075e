import { asPrinted } from './asPrinted';
import { papers, type Paper } from './papers';

/** What would not be whole on paper, and on which. */
export interface CutOff {
  readonly what: string;
  readonly papers: readonly string[];
}

function mediaRules(rules: CSSRuleList): readonly CSSMediaRule[] {
  return [...rules].flatMap((rule) => {
    if (rule instanceof CSSMediaRule) return [rule, ...mediaRules(rule.cssRules)];
    return rule instanceof CSSGroupingRule ? mediaRules(rule.cssRules) : [];
  });
}

/** Rounding of a layout [px]. */
const tolerance = 1.5;

const clips = ({ overflowX }: CSSStyleDeclaration): boolean => overflowX !== 'visible';

function isCut(element: Element, paper: Paper): boolean {
  const box = element.getBoundingClientRect();
  if (box.width === 0 || box.height === 0) return false;
  if (box.right > paper.width + tolerance || box.left < -tolerance) return true;
  if (element.matches('svg, img, tr') && box.height > paper.height + tolerance) return true;
  if (element.matches('.bed-sheet')) return element.scrollHeight > element.clientHeight + tolerance;
  return (
    element instanceof HTMLElement &&
    element.scrollWidth > element.clientWidth + tolerance &&
    element.clientWidth > 1 &&
    clips(getComputedStyle(element))
  );
}

/** What an element belongs to, as the page calls it. */
function nameOf(element: Element): string {
  const part = element.closest('section, article, figure, [aria-label]');
  const by = part?.getAttribute('aria-labelledby');
  const label = by ? document.getElementById(by)?.textContent : part?.getAttribute('aria-label');
  return (label ?? document.querySelector('main h1')?.textContent ?? 'the page').trim();
}

const drawn = 'main :is(p, li, dd, dt, h1, h2, h3, table, svg, figure, article, div, section)';

/**
 * Lays the page out as it would be printed on each paper, looks what sticks out, and puts everything
 * back before anything is drawn. Measured, because nobody can know from the page's words how wide
 * they come out.
 */
export function cutOff(): readonly CutOff[] {
  const rules = [...document.styleSheets].flatMap((sheet) => mediaRules(sheet.cssRules));
  const before = rules.map(({ media }) => media.mediaText);
  const { style } = document.documentElement;
  const kept = style.cssText;
  const found = new Map<string, Set<string>>();
  try {
    for (const paper of papers) {
      rules.forEach(({ media }, at) => {
        media.mediaText = asPrinted(before[at]!, paper.width);
      });
      style.inlineSize = `${String(paper.width)}px`;
      for (const element of document.querySelectorAll(drawn)) {
        // the parts of a drawing lie within it
        if (element.closest('dialog') || element.parentElement?.closest('svg')) continue;
        if (!isCut(element, paper)) continue;
        const what = nameOf(element);
        found.set(what, (found.get(what) ?? new Set()).add(paper.name));
      }
    }
  } finally {
    rules.forEach(({ media }, at) => {
      media.mediaText = before[at]!;
    });
    style.cssText = kept;
  }
  return [...found].map(([what, on]) => ({ what, papers: [...on] }));
}
