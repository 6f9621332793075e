/**
 * What of an element's look is written into the file, besides where it stands. A drawing taken away
 * has no style sheet: each of these is resolved, colours by theme included, and written as a
 * presentation attribute, which no content policy refuses.
 */
const kept = [
  'fill',
  'fill-opacity',
  'fill-rule',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-dashoffset',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'opacity',
  'font-family',
  'font-size',
  'font-style',
  'font-weight',
  'font-variant-numeric',
  'letter-spacing',
  'text-anchor',
  'dominant-baseline',
  'visibility',
  'stop-color',
  'stop-opacity',
  'clip-path',
  'mask',
] as const;

/** What an element has without being told; not written. */
const plain: Readonly<Partial<Record<(typeof kept)[number], string>>> = {
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  'stroke-opacity': '1',
  'stroke-dasharray': 'none',
  'stroke-dashoffset': '0px',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'paint-order': 'normal',
  opacity: '1',
  'font-style': 'normal',
  'font-variant-numeric': 'normal',
  'letter-spacing': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto',
  visibility: 'visible',
  'stop-opacity': '1',
  'clip-path': 'none',
  mask: 'none',
};
/** Handed down from parent to child: written only where it is another than the parent's. */
const inherited = new Set<string>(
  kept.filter(
    (name) => !['opacity', 'clip-path', 'mask'].includes(name) && !name.startsWith('stop-'),
  ),
);

const namespace = 'http://www.w3.org/2000/svg';

/** A colour as the page shows it now; `light-dark()` and the like are resolved by then. */
const valueOf = (style: CSSStyleDeclaration, name: string): string =>
  // a paint server that lies in the same file is named by its id alone
  style.getPropertyValue(name).replace(/url\(["']?[^"')]*#([^"')]+)["']?\)/g, 'url(#$1)');

function settle(from: Element, to: Element, parent: CSSStyleDeclaration | null): void {
  const style = getComputedStyle(from);
  to.removeAttribute('class');
  to.removeAttribute('style');
  for (const name of kept) {
    const value = valueOf(style, name);
    const isSame =
      parent !== null && inherited.has(name)
        ? valueOf(parent, name) === value
        : plain[name] === value;
    if (isSame || value === '') to.removeAttribute(name);
    else to.setAttribute(name, value);
  }
  const children = [...from.children];
  const copies = [...to.children];
  children.forEach((child, index) => {
    const copy = copies[index];
    if (copy) settle(child, copy, style);
  });
}

/** The nearest ground behind an element that can be seen. */
function groundOf(element: Element): string {
  for (let one: Element | null = element; one; one = one.parentElement) {
    const { backgroundColor } = getComputedStyle(one);
    if (backgroundColor !== 'transparent' && !/, 0\)$|\/ 0\)$/.test(backgroundColor))
      return backgroundColor;
  }
  return 'white';
}

export interface SvgFile {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/** between drawings that go into one file, and above them for their name [px] */
const gap = 28;
const headRoom = 40;

/** Paint servers that the drawings name and do not hold: they lie elsewhere in the page. */
function servers(from: readonly Element[]): readonly Element[] {
  const found = new Map<string, Element>();
  const look = (element: Element) => {
    for (const one of [element, ...element.querySelectorAll('*')])
      for (const name of ['fill', 'stroke', 'clip-path', 'mask'])
        for (const [, id] of valueOf(getComputedStyle(one), name).matchAll(/url\(#([^)]+)\)/g)) {
          const server = id === undefined ? null : document.getElementById(id);
          if (!server || found.has(server.id) || from.some((each) => each.contains(server)))
            continue;
          found.set(server.id, server);
          look(server);
        }
  };
  for (const one of from) look(one);
  return [...found.values()];
}

function settled(from: Element): Element {
  const copy = from.cloneNode(true) as Element;
  settle(from, copy, null);
  return copy;
}

/**
 * Drawings of the page as a file of their own, side by side or one below the other: every colour, line and letter resolved
 * to what is seen now, on its ground, with a title for whoever cannot see it.
 *
 * @param drawings at least one; all of one height where they go side by side. Below each other each
 *   stands under its `data-name`, where it has one
 * @param fontFaces rules that bring the letters along, see `fontFaces`; '' leaves them to the reader's computer
 */
export function svgFileOf(
  drawings: readonly SVGSVGElement[],
  title: string,
  fontFaces = '',
  arranged: 'beside' | 'below' = 'beside',
): SvgFile {
  const make = (name: string, text: string | null = null) => {
    const element = document.createElementNS(namespace, name);
    element.textContent = text;
    return element;
  };
  const sizes = drawings.map((drawing) => drawing.viewBox.baseVal);
  const isBelow = arranged === 'below';
  const most = (side: 'width' | 'height') =>
    sizes.reduce((largest, size) => Math.max(largest, size[side]), 0);
  const sum = (side: 'width' | 'height') =>
    sizes.reduce((all, size) => all + size[side], gap * (drawings.length - 1));
  const width = isBelow ? most('width') : sum('width');
  const height = headRoom + (isBelow ? sum('height') : most('height'));
  const whole = make('svg');
  whole.setAttribute('viewBox', `0 0 ${width} ${height}`);
  whole.setAttribute('width', String(width));
  whole.setAttribute('height', String(height));
  whole.setAttribute('role', 'img');
  whole.append(make('title', title));
  if (fontFaces !== '') whole.append(make('style', fontFaces));
  const ground = make('rect');
  ground.setAttribute('width', String(width));
  ground.setAttribute('height', String(height));
  ground.setAttribute('fill', drawings[0] ? groundOf(drawings[0]) : 'white');
  whole.append(ground);
  const head = make('text', title);
  const look = getComputedStyle(drawings[0] ?? document.documentElement);
  const said = {
    x: '6',
    y: '26',
    fill: look.fill,
    'font-family': look.fontFamily,
    'font-size': '18px',
    'font-weight': '680',
  };
  for (const [name, value] of Object.entries(said)) head.setAttribute(name, value);
  whole.append(head);
  const elsewhere = make('defs');
  elsewhere.append(...servers(drawings).map(settled));
  if (elsewhere.childElementCount > 0) whole.append(elsewhere);
  let x = 0;
  let y = headRoom;
  for (const [index, drawing] of drawings.entries()) {
    const copy = settled(drawing);
    for (const name of ['aria-hidden', 'focusable', 'role']) copy.removeAttribute(name);
    const size = sizes[index];
    copy.setAttribute('x', String(x));
    copy.setAttribute('y', String(y));
    copy.setAttribute('width', String(size?.width ?? 0));
    copy.setAttribute('height', String(size?.height ?? 0));
    whole.append(copy);
    const ownName = drawing.dataset['name'];
    copy.removeAttribute('data-name');
    if (isBelow && ownName !== undefined) {
      const label = make('text', ownName);
      const place = { ...said, y: String(y - 8), 'font-size': '15px' };
      for (const [name, value] of Object.entries(place)) label.setAttribute(name, value);
      whole.append(label);
    }
    if (isBelow) y += (size?.height ?? 0) + gap;
    else x += (size?.width ?? 0) + gap;
  }
  return {
    text: `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(whole)}\n`,
    width,
    height,
  };
}
