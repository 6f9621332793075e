// @vitest-environment happy-dom
import { act } from 'react';
import { createRoot } from 'react-dom/client';
import { expect, test } from 'vitest';
import { Figured } from '../../app/controls/Figured';
import type { Why } from '../../app/words/why';

const why: Why = { of: 'Of it', formula: 'so', inputs: [], range: null, sources: ['a row'] };

// React asks for it where what it draws is waited for
Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

test('marks beside a figure are held to it, and the sentence is said whole', () => {
  const says = 'It is 1.3 times (1.1 to 1.4), or “3 bags”, 4.';
  const figures = ['1.3', '1.1 to 1.4', '3 bags', '4'].map((text) => ({ text, why }));
  const holder = document.createElement('div');
  act(() => createRoot(holder).render(<Figured says={says} figures={figures} />));
  expect(holder.querySelector('p')?.textContent).toBe(says);
  const held = [...holder.querySelectorAll('.figure-held')].map((one) => one.textContent);
  expect(held).toEqual(['1.3', '(1.1 to 1.4),', '“3 bags”,', '4.']);
});
