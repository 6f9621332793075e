// More of what is measured inside the page (see inPage.ts): each function is handed over whole.
import type { Finding } from './inPage';

/**
 * What the program writes into a field that is too narrow for it: a day, an amount; on a wide window
 * a choice as well. A person's own words may run on.
 */
export function cutEntries(): Finding[] {
  const pen = document.createElement('canvas').getContext('2d')!;
  const findings: Finding[] = [];
  const top = document.querySelector('dialog[open]') ?? document;
  for (const field of top.querySelectorAll<HTMLInputElement | HTMLSelectElement>(
    innerWidth > 1000
      ? '.field-date input, .field-quantity input, select'
      : '.field-date input, .field-quantity input',
  )) {
    if (!field.checkVisibility({ visibilityProperty: true })) continue;
    const text =
      field instanceof HTMLSelectElement
        ? (field.selectedOptions[0]?.textContent ?? '').trim()
        : field.value;
    const style = getComputedStyle(field);
    pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
    const room =
      field.clientWidth -
      Number.parseFloat(style.paddingLeft) -
      Number.parseFloat(style.paddingRight);
    const wide = pen.measureText(text).width;
    if (wide > room + 1)
      findings.push(`"${text}" needs ${Math.ceil(wide)} px, its field has ${Math.floor(room)}`);
  }
  return findings;
}

/** A word whose letters go on in the next line without a hyphen. Paths and addresses may. */
export function brokenWords(): Finding[] {
  const findings = new Set<Finding>();
  const top = document.querySelector('dialog[open]') ?? document.body;
  const walker = document.createTreeWalker(top, NodeFilter.SHOW_TEXT);
  const range = document.createRange();
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const parent = node.parentElement;
    if (!parent || parent.closest('.only-heard, [aria-hidden=true], svg, option, script, style'))
      continue;
    if (!parent.checkVisibility({ visibilityProperty: true })) continue;
    for (const { 0: word, index } of (node.textContent ?? '').matchAll(/[\p{L}\p{N}]{3,}/gu)) {
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const lines = new Set([...range.getClientRects()].map(({ top: y }) => Math.round(y)));
      const around = (node.textContent ?? '').slice(0, index).split(/\s/).at(-1) ?? '';
      if (lines.size > 1 && !/[/\\@]/.test(around)) findings.add(`broken: "${word}"`);
    }
  }
  return [...findings];
}

/**
 * Shapes cut out of a coloured ground, whose colour a contrast theme takes away: marks of a wrong
 * entry, arrows of what unfolds. Asked while such a theme is on.
 */
export function lostShapes(): Finding[] {
  const findings = new Set<Finding>();
  const clear = new Set(['transparent', 'rgba(0, 0, 0, 0)']);
  const canvas = document.createElement('div');
  canvas.style.setProperty('background-color', 'Canvas');
  document.body.append(canvas);
  const paper = getComputedStyle(canvas).backgroundColor;
  canvas.remove();
  for (const element of (document.querySelector('dialog[open]') ?? document).querySelectorAll(
    '*',
  )) {
    if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
    for (const part of [null, '::before', '::after']) {
      const style = getComputedStyle(element, part);
      if (part !== null && style.content === 'none') continue;
      const isCut = /polygon|path\(/.test(style.clipPath) || style.maskImage !== 'none';
      // the labels of buttons get a border instead; the turf of the head is scenery
      if (!isCut || element.matches('.button, .button-main, .button-stop, .head-soil')) continue;
      const isInked =
        style.forcedColorAdjust === 'none' &&
        !clear.has(style.backgroundColor) &&
        style.backgroundColor !== paper;
      if (!isInked)
        findings.add(
          `lost: ${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''}${part ?? ''}`,
        );
    }
  }
  return [...findings];
}
