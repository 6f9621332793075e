import type { Choice } from '../controls/ChoiceRow';
import type { Application, LawnKind, Planting, Wetness } from '../document/schema';

export const wetnessChoices: readonly Choice<Wetness>[] = [
  { value: 'soaked', label: 'soaked', hint: 'drips' },
  { value: 'damp', label: 'damp', hint: 'dew on it' },
  { value: 'dry', label: 'dry', hint: 'dry to the touch' },
];

export const conditionChoices: readonly Choice<Application['condition']>[] = [
  { value: 'just cut', label: 'just cut' },
  { value: 'limp', label: 'limp', hint: 'a day old' },
  { value: 'crisp', label: 'crisp', hint: 'it rustles' },
];

export const placementChoices: readonly Choice<Application['placement']>[] = [
  { value: 'laid', label: 'laid on' },
  { value: 'hoed', label: 'hoed in', hint: 'two fingers deep' },
  { value: 'dug', label: 'dug in' },
];

export const placementWords: Readonly<Record<Application['placement'], string>> = {
  laid: 'laid on',
  hoed: 'hoed in',
  dug: 'dug in',
};

export const lawnKindChoices: readonly Choice<LawnKind>[] = [
  { value: 'ordinary', label: 'ordinary' },
  { value: 'fed', label: 'fed' },
  { value: 'clover-rich', label: 'full of clover' },
  { value: 'lean', label: 'lean or dried out' },
  { value: 'first rough cut', label: 'first rough cut' },
  { value: 'seed-headed', label: 'seed heads' },
];

/** Days from one mowing to the next; said of a lawn as a habit. */
export const mowingHabitChoices: readonly Choice<'' | '4' | '7' | '10' | '14' | '21'>[] = [
  { value: '', label: 'it varies', hint: 'then once a week is taken, as most people mow' },
  { value: '4', label: 'twice a week' },
  { value: '7', label: 'every week' },
  { value: '10', label: 'every ten days' },
  { value: '14', label: 'every two weeks' },
  { value: '21', label: 'every three weeks or so' },
];

export const topsChoices: readonly Choice<Planting['tops']>[] = [
  { value: 'left', label: 'left on the bed' },
  { value: 'dug in', label: 'dug in' },
  { value: 'taken away', label: 'taken away' },
  { value: 'pulled with roots', label: 'pulled with the roots' },
];

export const noduleChoices: readonly Choice<Planting['nodules']>[] = [
  { value: 'not looked', label: 'not looked' },
  { value: 'pink', label: 'pink inside' },
  { value: 'white', label: 'white inside' },
  { value: 'none', label: 'none' },
];
