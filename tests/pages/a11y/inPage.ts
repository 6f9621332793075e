// What is measured inside the page. Each function is handed over whole, so it may use nothing
// around it.

/** One place where something is wrong, as a person would find it. */
export type Finding = string;

/**
 * Everything that can be pressed must be 24 px by 24 px, or leave a 24 px circle round its middle
 * that no other target reaches (WCAG 2.2, 2.5.8). A choice counts with the words that belong to it.
 */
export function smallTargets(): Finding[] {
  const least = 24;
  const asked =
    'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=slider], [tabindex="0"]';
  const dialog = document.querySelector('dialog[open]');
  const seen = new Map<Element, DOMRect>();
  for (const element of (dialog ?? document).querySelectorAll(asked)) {
    const pressed = element.matches('input[type=radio], input[type=checkbox]')
      ? (element.closest('label') ?? element)
      : element;
    const style = getComputedStyle(pressed);
    const box = pressed.getBoundingClientRect();
    const isDrawn = pressed.checkVisibility({ visibilityProperty: true }) && box.width > 0;
    const isOut = box.right < 0 || box.bottom < 0; // the skip button until it is focused
    if (isDrawn && !isOut && style.pointerEvents !== 'none') seen.set(pressed, box);
  }
  const targets = [...seen];
  const isSmall = (box: DOMRect) => box.width < least - 0.5 || box.height < least - 0.5;
  const middle = (box: DOMRect) => [box.left + box.width / 2, box.top + box.height / 2] as const;
  const reaches = (from: DOMRect, to: DOMRect) => {
    const [x, y] = middle(from);
    if (isSmall(to)) {
      const [otherX, otherY] = middle(to);
      return Math.hypot(x - otherX, y - otherY) < least;
    }
    const nearX = Math.max(to.left, Math.min(x, to.right));
    const nearY = Math.max(to.top, Math.min(y, to.bottom));
    return Math.hypot(x - nearX, y - nearY) < least / 2;
  };
  return targets
    .filter(([element, box]) => {
      if (!isSmall(box)) return false;
      return targets.some(
        ([other, at]) =>
          other !== element &&
          !other.contains(element) &&
          !element.contains(other) &&
          reaches(box, at),
      );
    })
    .map(
      ([element, box]) =>
        `target of ${Math.round(box.width)} x ${Math.round(box.height)} px crowded: ${element.tagName.toLowerCase()} "${element.textContent?.trim().slice(0, 40)}"`,
    );
}

/**
 * Text that cannot be read whole: cut off by a box that hides what does not fit, drawn over the edge
 * of its own button or over other text, or past the edge of the window. Boxes that scroll sideways
 * are lawful for tables and drawings only.
 */
export function unreadableText(): Finding[] {
  const findings: Finding[] = [];
  const dialog = document.querySelector('dialog[open]');
  const top = dialog ?? document.body;
  const frame = document.scrollingElement!;
  if (!dialog && frame.scrollWidth > frame.clientWidth)
    findings.push(`the page scrolls sideways: ${frame.scrollWidth} in ${frame.clientWidth} px`);
  if (dialog && dialog.scrollWidth > dialog.clientWidth)
    findings.push(`the dialog scrolls sideways: ${dialog.scrollWidth} in ${dialog.clientWidth} px`);
  const words = (text: string | null | undefined) => (text ?? '').trim().slice(0, 50);
  const mayScroll = '.table-scroll, .chart-scroll, .chart-table, .chart-reader';
  // a drawing right under its section's heading repeats it for the ear alone (charts/frame.css)
  const heard =
    '.only-heard, [aria-hidden=true], svg, .skip, option, noscript, script, style, ' +
    '.section-head + .chart > figcaption > h3, .section-head + .take-away > .chart > figcaption > h3';

  interface Piece {
    text: string;
    parent: Element;
    box: DOMRect;
    /** in a box that may scroll sideways */
    mayScroll: boolean;
    /** an open menu, a notice and a head that stays while its rows scroll lie over the page on purpose */
    isOver: boolean;
  }
  const pieces: Piece[] = [];
  const walker = document.createTreeWalker(top, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    const text = words(node.textContent);
    if (!parent || text === '' || parent.closest(heard)) continue;
    if (!parent.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    // one line that ends in an ellipsis is lawful where a title says the whole of it
    const isCutLawfully =
      getComputedStyle(parent).textOverflow === 'ellipsis' &&
      (parent.closest('[title]')?.getAttribute('title') ?? '').includes(text);
    if (isCutLawfully) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects())
      if (box.width > 0 && box.height > 0)
        pieces.push({
          text,
          parent,
          box,
          mayScroll: parent.closest(mayScroll) !== null,
          isOver: parent.closest('.menu-list, .undo-notice, .row-list > thead') !== null,
        });
  }

  const slack = 1.5;
  /** What holds text in: boxes that hide or scroll, and things that should be as large as their words. */
  const holders = new Map<Element, { box: DOMRect; x: string; y: string; isFrame: boolean }[]>();
  const holdersOf = (element: Element | null): NonNullable<ReturnType<typeof holders.get>> => {
    if (!element || element === document.documentElement || element.matches(mayScroll)) return [];
    const known = holders.get(element);
    if (known) return known;
    const { overflowX: x, overflowY: y } = getComputedStyle(element);
    const isFrame = element.matches('button, .choice, .share, .head-tag, .place');
    const isHolder = isFrame || x !== 'visible' || y !== 'visible';
    const own = isHolder ? [{ box: element.getBoundingClientRect(), x, y, isFrame }] : [];
    const all = [...own, ...holdersOf(element.parentElement)];
    holders.set(element, all);
    return all;
  };
  const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
  const dialogBox = dialog?.getBoundingClientRect();
  for (const { text, parent, box, ...piece } of pieces) {
    if (!piece.mayScroll && (box.right > frame.clientWidth + slack || box.left < -slack))
      findings.push(`past the edge of the window: "${text}"`);
    for (const { box: at, x, y, isFrame } of holdersOf(parent)) {
      const isOver = box.right > at.right + slack || box.left < at.left - slack;
      const isUnder = box.bottom > at.bottom + slack || box.top < at.top - slack;
      if (hides(x) && isOver) findings.push(`cut off: "${text}"`);
      else if (hides(y) && isUnder) findings.push(`cut off below: "${text}"`);
      else if (['auto', 'scroll'].includes(x) && isOver && at.left !== dialogBox?.left)
        findings.push(`in a box that scrolls sideways: "${text}"`);
      if (isFrame && (isOver || isUnder)) findings.push(`runs out of what holds it: "${text}"`);
    }
  }
  // Two pieces of one line lie side by side; only pieces that share a real area cover each other.
  const shares = ({ box: one }: Piece, { box: other }: Piece) =>
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > 3 &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) >
      0.45 * Math.min(one.height, other.height);
  const flat = pieces
    .filter((piece) => !piece.mayScroll)
    .sort((one, other) => one.box.top - other.box.top);
  flat.forEach((one, index) => {
    for (let next = index + 1; next < flat.length; next++) {
      const other = flat[next]!;
      if (other.box.top >= one.box.bottom) break;
      if (one.parent !== other.parent && one.isOver === other.isOver && shares(one, other))
        findings.push(`"${one.text}" and "${other.text}" cover each other`);
    }
  });
  return [...new Set(findings)];
}

/** Things that reach past the right edge of the window and are in no box that scrolls. */
export function pastTheEdge(): Finding[] {
  return [...document.querySelectorAll<HTMLElement>('main *')]
    .filter((one) => one.checkVisibility() && !one.closest('.only-heard, dialog'))
    .filter((one) => !one.closest('.table-scroll, .chart-scroll, .chart-table, .chart-reader, svg'))
    .filter((one) => one.getBoundingClientRect().right > innerWidth + 1)
    .map((one) => `${one.tagName.toLowerCase()}.${one.className}`);
}

/** The spacing a reader may ask for (WCAG 2.2, 1.4.12). A built sheet: the content policy stays on. */
export function spreadText(on: boolean): void {
  const spread = window as { mowingsSpread?: CSSStyleSheet };
  spread.mowingsSpread ??= new CSSStyleSheet();
  spread.mowingsSpread.replaceSync(
    `*:not(svg, svg *) {
      line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important;
    }
    p { margin-block-end: 2em !important; }`,
  );
  document.adoptedStyleSheets = on ? [spread.mowingsSpread] : [];
}

/**
 * The focused thing: whether it looks other than when it is not focused, with a ring of 2 px or
 * more, whether any of it is in sight, and whether it lies where reading goes on. Looks at one thing
 * per press of a key, and back at the one before.
 */
export function focusFindings(): Finding[] {
  interface Before {
    drawn: Element;
    look: string;
    name: string;
    top: number;
    left: number;
  }
  const memory = window as { mowingsBefore?: Before | undefined };
  /** A part of a drawing has no outline of its own: a frame in it is drawn round it. */
  const frames = (drawn: Element) =>
    drawn instanceof SVGElement ? [...drawn.children].filter((one) => one.matches('rect')) : [];
  const lookOf = (drawn: Element) =>
    [drawn, ...drawn.querySelectorAll('input'), ...frames(drawn)]
      .map((each) => {
        const { outline, outlineOffset, boxShadow, borderColor, backgroundColor, stroke } =
          getComputedStyle(each);
        const isDrawn = !outline.includes('none');
        return [
          isDrawn && outline,
          isDrawn && outlineOffset,
          boxShadow,
          borderColor,
          backgroundColor,
          stroke,
        ];
      })
      .join();
  const findings: Finding[] = [];
  const { mowingsBefore: before } = memory;
  if (before?.drawn.isConnected && before.look === lookOf(before.drawn))
    findings.push(`looks the same with and without focus: ${before.name}`);
  memory.mowingsBefore = undefined;

  const element = document.activeElement;
  if (!element || element === document.body) return findings;
  const drawn = element.matches('input[type=radio], input[type=checkbox]')
    ? (element.closest('label') ?? element)
    : element;
  const name = `${element.tagName.toLowerCase()} "${(element.getAttribute('aria-label') ?? drawn.textContent ?? '').trim().slice(0, 40)}"`;
  const ringed = [element, drawn].some((each) => {
    const style = getComputedStyle(each);
    // "auto" is the browser's own ring, whatever width it names
    return (
      style.outlineStyle === 'auto' ||
      (style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2)
    );
  });
  const framed = frames(drawn).some((each) => {
    const style = getComputedStyle(each);
    return style.stroke !== 'none' && Number.parseFloat(style.strokeWidth) >= 2;
  });
  if (!ringed && !framed) findings.push(`no focus ring: ${name}`);
  const box = drawn.getBoundingClientRect();
  const left = Math.max(0, box.left);
  const right = Math.min(innerWidth, box.right);
  const upper = Math.max(0, box.top);
  const lower = Math.min(innerHeight, box.bottom);
  if (right - left < 1 || lower - upper < 1) findings.push(`focused out of sight: ${name}`);
  else {
    const parts = [0.08, 0.5, 0.92];
    const isSeen = parts.some((x) =>
      parts.some((y) => {
        const there = document.elementFromPoint(
          left + (right - left) * x,
          upper + (lower - upper) * y,
        );
        return there !== null && (drawn.contains(there) || there.contains(drawn));
      }),
    );
    if (!isSeen) findings.push(`covered while focused: ${name}`);
  }
  const top = box.top + scrollY;
  // a step up is a step into the next column, never back over what was passed
  if (before && top + box.height < before.top - 4 && box.left <= before.left + 4)
    findings.push(`goes back up: from ${before.name} to ${name}`);
  memory.mowingsBefore = { drawn, look: lookOf(drawn), name, top, left: box.left };
  return findings;
}

/** What is moving at this moment. */
export const running = (): Finding[] =>
  document
    .getAnimations()
    .filter((animation) => animation.playState === 'running')
    .map((animation) => {
      const target = (animation.effect as KeyframeEffect | null)?.target;
      return `${target?.tagName.toLowerCase()} "${target?.textContent?.slice(0, 30)}"`;
    });
