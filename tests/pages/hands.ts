import type { Locator, Page } from '@playwright/test';

/**
 * What a person takes for what was done, reckoned and not clocked, so that it is the same on every
 * machine: 0.28 s a key, 1.1 s to point, 0.2 s to press, 0.4 s from keys to pointer and back, 1.35 s
 * to make up one's mind before each answer (the keystroke-level model of Card, Moran and Newell,
 * 1980, recalled), every word that is read once at 238 a minute (Brysbaert 2019,
 * recalled), and 10 s to think of each size.
 */
export class Hands {
  actions = 0;
  seconds = 0;
  readonly #garden: Page;
  constructor(garden: Page) {
    this.#garden = garden;
  }
  /** every word in view of a part, the whole place unless another is named; what was read before is read again */
  async read(part: Locator = this.#garden.locator('#place')) {
    const words = await part.first().evaluate((root) => {
      const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
      let seen = '';
      while (texts.nextNode())
        if (texts.currentNode.parentElement?.matches(':not(option, optgroup, .only-heard)'))
          if (texts.currentNode.parentElement.checkVisibility())
            seen += ` ${texts.currentNode.textContent}`;
      return seen;
    });
    this.seconds += (words.split(/\s+/).length / 238) * 60;
  }
  async press(name: string) {
    this.#does(0.4 + 1.1 + 0.2 + 0.4);
    await this.#garden.getByRole('button', { name, exact: true }).click();
  }
  /** a press on something that is no button of that very name */
  async pressOn(what: Locator) {
    this.#does(0.4 + 1.1 + 0.2 + 0.4);
    await what.click();
  }
  /** the system's own window in which a file is looked for: three presses, and 10 s of looking */
  async pickFile(opens: Locator, file: string) {
    const chooser = this.#garden.waitForEvent('filechooser');
    await this.pressOn(opens);
    for (let press = 0; press < 3; press++) this.#does(1.1 + 0.2);
    this.seconds += 10;
    await (await chooser).setFiles(file);
  }
  /** points at a field, and types into it */
  async fill(field: Locator, words: string) {
    this.#does(0.4 + 1.1 + 0.2 + 0.4 + 1.35 + words.length * 0.28);
    await field.fill(words);
  }
  /** types an answer where the hand is, or leaves what is there, and goes on */
  async answer(words: string, isSize = false) {
    this.#does(1.35 + (words.length + 1) * 0.28 + (isSize ? 10 : 0));
    await this.#garden.keyboard.type(words);
    await this.#garden.keyboard.press('Enter');
  }
  /** types an answer and stays, because a press follows */
  async say(words: string) {
    this.#does(1.35 + words.length * 0.28);
    await this.#garden.keyboard.type(words);
  }
  #does(seconds: number) {
    this.actions++;
    this.seconds += seconds;
  }
}
