import type { CDPSession, Page } from '@playwright/test';

/** What assistive technology is told about the focused thing. */
export interface Focused {
  readonly role: string;
  readonly name: string;
  readonly description: string;
  readonly value: string;
  /** checked, pressed, expanded, invalid, disabled: those that hold */
  readonly states: readonly string[];
}

interface Node {
  readonly role?: { readonly value?: string };
  readonly name?: { readonly value?: string };
  readonly description?: { readonly value?: string };
  readonly value?: { readonly value?: unknown };
  readonly properties?: readonly {
    readonly name: string;
    readonly value: { readonly value?: unknown };
  }[];
}

const nowhere: Focused = { role: 'none', name: '', description: '', value: '', states: [] };
const holding = ['checked', 'pressed', 'expanded', 'invalid', 'disabled', 'selected'];

/** A person who has a keyboard and hears names: no pointer, no looking at the page's innards. */
export class Person {
  private session: CDPSession | null = null;

  constructor(readonly page: Page) {}

  /** The focused thing as the browser describes it to assistive technology. */
  focused(): Promise<Focused> {
    return this.describe('document.activeElement');
  }

  /** The dialog round the focused thing, as it is read out when it comes up. */
  dialog(): Promise<Focused> {
    return this.describe('document.activeElement.closest("dialog")');
  }

  private async describe(expression: string): Promise<Focused> {
    this.session ??= await this.page.context().newCDPSession(this.page);
    const { result } = await this.session.send('Runtime.evaluate', { expression });
    if (!result.objectId) return nowhere;
    const [tree, text] = await Promise.all([
      this.session.send('Accessibility.getPartialAXTree', {
        objectId: result.objectId,
        fetchRelatives: false,
      }),
      // the protocol leaves aria-valuetext out, readers do not
      this.page.evaluate(() => document.activeElement?.getAttribute('aria-valuetext') ?? ''),
    ]);
    const [node] = tree.nodes as Node[];
    if (!node) return nowhere;
    const property = (name: string) =>
      node.properties?.find((each) => each.name === name)?.value.value;
    return {
      role: node.role?.value ?? 'none',
      name: node.name?.value ?? '',
      description: node.description?.value ?? '',
      value: String(text || (node.value?.value ?? '')),
      states: holding.flatMap((name) => {
        const value = property(name);
        if (name === 'expanded' && value !== undefined) return [value ? 'expanded' : 'collapsed'];
        return value === undefined || value === false || value === 'false' ? [] : [name];
      }),
    };
  }

  press(keys: string): Promise<void> {
    return this.page.keyboard.press(keys);
  }

  type(text: string): Promise<void> {
    return this.page.keyboard.type(text);
  }

  /** Presses Tab until the thing of this role and name has the focus. */
  async tabTo(role: string, name: string | RegExp, most = 250): Promise<Focused> {
    const passed: string[] = [];
    for (let press = 0; press < most; press++) {
      const here = await this.focused();
      const isName = typeof name === 'string' ? here.name === name : name.test(here.name);
      if (press > 0 && here.role === role && isName) return here;
      passed.push(`${here.role} "${here.name}"`);
      await this.press('Tab');
    }
    throw new Error(`Tab never came to ${role} "${name}". It passed:\n${passed.join('\n')}`);
  }
}
