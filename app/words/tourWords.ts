/** Places the tour leads to, as the window names them. */
type TourPlace = 'this week' | 'beds' | 'garden';

/** One stop of the tour: where it is, what one looks at there, and what it is for. */
export interface TourStop {
  readonly place: TourPlace;
  /** the part of the page that is meant; '' for the page as a whole */
  readonly at: string;
  readonly title: string;
  readonly says: readonly string[];
}

/** The short tour, in the order a mowing day goes. */
export const tourStops: readonly TourStop[] = [
  {
    place: 'this week',
    at: '[aria-labelledby="plan"]',
    title: 'Before you mow',
    says: [
      '“Work out a plan” says how many bags to collect, which bed gets how many buckets, and why.',
      'You need not follow it. It takes whatever you did instead.',
    ],
  },
  {
    place: 'this week',
    at: '[aria-labelledby="notices"]',
    title: 'How the beds stand',
    says: [
      'Each bed says in a word and a shape whether it is short, about right or over-fed.',
      'What speaks against laying more stands under it, with the reason.',
    ],
  },
  {
    place: 'this week',
    at: '[aria-labelledby="log"]',
    title: 'After you mow',
    says: [
      'Write down what came off as you would say it: 2 bags, 45 L, or 6 kg, soaked.',
      'Then choose the beds; what a layer would do to each is shown before you lay it.',
    ],
  },
  {
    place: 'beds',
    at: '',
    title: 'The beds, cut open',
    says: [
      'Here you see what lies on each bed, what its soil holds, and what grows.',
      'Open one for its whole season, where its nitrogen came from, and where it goes.',
    ],
  },
  {
    place: 'garden',
    at: '[aria-labelledby="garden-containers"]',
    title: 'What the garden is made of',
    says: [
      'Bags, beds, soil, weather and the heap are kept here, and can be changed any day.',
      'Weigh one full bag when you can: every sum gets better for it.',
    ],
  },
  {
    place: 'this week',
    at: '',
    title: 'And wherever you are',
    says: [
      'Undo takes back anything. What you type is kept as you go, even if the power fails.',
      'Find, or the key F9, leads to everything by its first letters. This tour is in the menu.',
    ],
  },
];
