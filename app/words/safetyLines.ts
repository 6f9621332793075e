import type { Weight } from '../core/season/verdict';

/** What hangs on no number, for plans, prints and the page on safety. */
export const safetyLines: readonly { readonly weight: Weight; readonly says: string }[] = [
  {
    weight: 'stop',
    says: 'Never give clippings to horses, cattle or goats: grass that heats can kill them.',
  },
  {
    weight: 'stop',
    says: 'Never give stock prunings of yew, oleander, rhododendron, laburnum or box.',
  },
  {
    weight: 'stop',
    says: 'Dogs eat slug bait, cocoa hulls, compost gone mouldy and meals of blood, bone or feathers, and fall ill: use none where they run.',
  },
  {
    weight: 'stop',
    says: 'Poison ivy, hogweed, ragwort mown in: neither mulch it nor burn it.',
  },
  {
    weight: 'caution',
    says: 'Keep heaps and dry cover away from buildings, barbecues and exhausts.',
  },
  {
    weight: 'caution',
    says: 'Keep feeding back from a well, a stream or a slope; ask how wide the local strip is.',
  },
  { weight: 'caution', says: 'Dust and mould: damp it and wear a mask.' },
  { weight: 'caution', says: 'A soaked bag weighs about 15 kg (33 lb): lift it in halves.' },
  { weight: 'note', says: 'Neighbours: smell, flies, and where their spray drifts.' },
  { weight: 'note', says: 'Deep winter cover shelters voles: keep it off stems.' },
];

/** Stands at the foot of every page. */
export const shortFootLine =
  'All figures are estimates: labels, laboratories, local rules and people who know come first.';

/** Closes whatever is taken out on paper. */
export const footLines: readonly string[] = [
  'All figures are estimates. A label or a laboratory knows better; so do advisers on the spot and, where somebody is ill, doctor, vet or poisons line.',
  'Ask locally: may the lawn be fed, how far from water, may one burn or water now, where does green waste go?',
];
