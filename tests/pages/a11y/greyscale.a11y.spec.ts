// Pictures without colour, and as people see them who see fewer colours: every state, every weight
// and every source of nitrogen is still told from every other.
import type { Page } from '@playwright/test';
import { supplySources } from '../../../app/core/season/ledger';
import { coverStates, nitrogenStates } from '../../../app/core/season/verdict';
import { expect, test } from '../fixtures';
import { openReckoned, openSampleAt } from '../journeys';

/** Without any colour by day and by night; with fewer colours by day. */
const sights = {
  light: ['achromatopsia', 'protanopia', 'deuteranopia', 'tritanopia'],
  dark: ['achromatopsia'],
} as const;
type Picture = readonly number[];

/** Lightness, pixel by pixel, of pictures that the browser took: 0 black, 255 white. */
async function lightness(garden: Page, shots: readonly Buffer[]): Promise<readonly Picture[]> {
  // a page of its own: the program's lets no picture in but its own
  const bench = await garden.context().newPage();
  const pictures = await bench.evaluate(
    async (addresses) =>
      Promise.all(
        addresses.map(async (address) => {
          const picture = new Image();
          picture.src = address;
          await picture.decode();
          const canvas = new OffscreenCanvas(picture.width, picture.height).getContext('2d')!;
          canvas.drawImage(picture, 0, 0);
          const { data } = canvas.getImageData(0, 0, picture.width, picture.height);
          return Array.from({ length: data.length / 4 }, (_, at) =>
            Math.round(
              0.2126 * data[4 * at]! + 0.7152 * data[4 * at + 1]! + 0.0722 * data[4 * at + 2]!,
            ),
          );
        }),
      ),
    shots.map((shot) => `data:image/png;base64,${shot.toString('base64')}`),
  );
  await bench.close();
  return pictures;
}

async function seenWith(garden: Page, sight: (typeof sights)['light'][number]): Promise<void> {
  const session = await garden.context().newCDPSession(garden);
  await session.send('Emulation.setEmulatedVisionDeficiency', { type: sight });
}

/** Of the pixels that either mark inks, the share that both ink. */
function sharedInk(one: Picture, other: Picture): number {
  const inked = (picture: Picture) => {
    const paper = picture[0]!;
    return picture.map((value) => Math.abs(value - paper) > 50);
  };
  const [a, b] = [inked(one), inked(other)];
  const either = a.filter((ink, at) => ink || b[at]).length;
  return a.filter((ink, at) => ink && b[at]).length / either;
}

for (const colorScheme of ['light', 'dark'] as const)
  test(`states and weights, ${colorScheme}`, async ({ garden }) => {
    await openReckoned(garden);
    await garden.emulateMedia({ colorScheme });
    await garden.getByRole('button', { name: 'Garden file' }).click();
    await garden.getByRole('button', { name: 'How to read this' }).click();
    const guide = garden.getByRole('dialog', { name: 'How to read this' });
    const marks = guide.locator('dt .mark');
    const words = [...nitrogenStates, ...coverStates, 'note', 'caution', 'stop'];
    await expect(marks).toHaveCount(words.length);
    await expect(guide.locator('dt').filter({ has: garden.locator('.mark') })).toHaveText(words);
    for (const sight of sights[colorScheme]) {
      await seenWith(garden, sight);
      const shots: Buffer[] = [];
      for (const mark of await marks.all()) shots.push(await mark.screenshot());
      const pictures = await lightness(garden, shots);
      for (const [at, one] of pictures.entries())
        for (const [next, other] of pictures.entries())
          if (next > at)
            expect
              .soft(sharedInk(one, other), `${sight}: ${words[at]}, ${words[next]}`)
              .toBeLessThan(0.7);
    }
  });

/** How unlike two weaves are, however one lies on the other: mean difference of lightness. */
function unlike(one: Picture, other: Picture, size: number): number {
  let least = Infinity;
  for (let down = 0; down < 10; down++)
    for (let across = 0; across < 10; across++) {
      let sum = 0;
      for (let y = 0; y < size - 10; y++)
        for (let x = 0; x < size - 10; x++)
          sum += Math.abs(one[y * size + x]! - other[(y + down) * size + x + across]!);
      least = Math.min(least, sum / (size - 10) ** 2);
    }
  return least;
}

for (const colorScheme of ['light', 'dark'] as const)
  test(`sources of nitrogen in the season’s bands, ${colorScheme}`, async ({ garden }) => {
    await openSampleAt(garden, 'Beds');
    await garden.emulateMedia({ colorScheme });
    await garden.getByRole('button', { name: 'Gate bed', exact: true }).click();
    await expect(garden.getByRole('slider', { name: /^Day in the season/ })).toBeVisible();
    const size = 40;
    // a swatch of each weave, as large as a band
    const names = await garden.evaluate((side) => {
      const drawing = document.querySelector('.season-chart svg.chart-drawing')!;
      const weaves = [...drawing.querySelectorAll('pattern')].filter((one) =>
        /source-/.test(one.getAttribute('class') ?? ''),
      );
      const dialog = document.createElement('dialog');
      document.body.append(dialog);
      for (const weave of weaves) {
        const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
        svg.setAttribute('class', 'swatch');
        svg.setAttribute('width', `${side}`);
        svg.setAttribute('height', `${side}`);
        const rect = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
        for (const edge of ['width', 'height']) rect.setAttribute(edge, `${side}`);
        rect.setAttribute('fill', `url(#${weave.id})`);
        svg.append(rect);
        dialog.append(svg);
      }
      dialog.showModal();
      return weaves.map(({ id }) => id.replace(/^.*?-/, ''));
    }, size);
    expect(names.length).toBeGreaterThanOrEqual(supplySources.length);
    for (const sight of sights[colorScheme]) {
      await seenWith(garden, sight);
      const shots: Buffer[] = [];
      for (const swatch of await garden.locator('.swatch').all())
        shots.push(await swatch.screenshot());
      const pictures = await lightness(garden, shots);
      for (const [at, one] of pictures.entries())
        for (const [next, other] of pictures.entries())
          if (next > at)
            expect
              .soft(unlike(one, other, size), `${sight}: ${names[at]}, ${names[next]}`)
              .toBeGreaterThan(9);
    }
  });
