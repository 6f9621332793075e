import type { OfferOrigin, OfferVerdict } from '../document/offers';

/** What to do with something that is offered; nothing is ever called safe. */
export const offerVerdictWords: Readonly<
  Record<OfferVerdict, { readonly title: string; readonly says: string }>
> = {
  take: {
    title: 'Take it',
    says: 'Nothing was found that holds it back. What nobody knows of, the sums cannot know either.',
  },
  'test first': {
    title: 'Try it on beans first',
    says: 'Nobody knows for certain what was sprayed where it grew. Ask for a few bags from several places in it, and do not lay it before the beans have shown.',
  },
  no: {
    title: 'Leave it',
    says: 'What speaks against it stands below.',
  },
};

export const offerOriginWords: Readonly<Record<OfferOrigin, string>> = {
  'own ground': 'from my own ground',
  neighbour: 'from a neighbour',
  'farm or stable': 'from a farm or stable',
  'town or shop': 'from the town or a shop',
};

export const offerAges = ['this year', 'last year', 'older', 'not known'] as const;
export type OfferAge = (typeof offerAges)[number];

export const offerAgeWords: Readonly<Record<OfferAge, string>> = {
  'this year': 'this year’s',
  'last year': 'last year’s',
  older: 'older',
  'not known': 'nobody knows',
};

export const offerBeddings = ['straw', 'shavings', 'none', 'not known'] as const;
export type OfferBedding = (typeof offerBeddings)[number];

export const offerBeddingWords: Readonly<Record<OfferBedding, string>> = {
  straw: 'straw',
  shavings: 'wood shavings',
  none: 'none',
  'not known': 'nobody knows',
};

/** What an offer's age and bedding mean, where they mean something. */
export function offerAgeLines(
  age: OfferAge,
  bedding: OfferBedding | null,
  mayCarryWeedkiller: boolean,
): readonly string[] {
  const lines: string[] = [];
  if (mayCarryWeedkiller && age !== 'this year')
    lines.push('Lying for a year or two does not clear it of weedkillers that last.');
  if (bedding !== null && age !== 'this year')
    lines.push('Manure counts as raw however old it is, unless it was hot and turned all through.');
  if (bedding === 'shavings')
    lines.push(
      'Shavings hold nitrogen back when dug in: stack it a year, or lay it on top round shrubs.',
    );
  return lines;
}

/** What is kept of an offer with the store it becomes. */
export const offerNote = (
  origin: OfferOrigin,
  age: OfferAge,
  bedding: OfferBedding | null,
): string =>
  `It came ${offerOriginWords[origin].replace('my own', 'one’s own')}; age: ${offerAgeWords[age]}${bedding === null ? '' : `; bedding: ${offerBeddingWords[bedding]}`}.`;

/** What to ask whoever offers it, by where it comes from and what it is. */
export function offerQuestions(
  origin: OfferOrigin,
  about: { readonly isManure: boolean; readonly mayCarryWeedkiller: boolean },
): readonly string[] {
  const questions: string[] = [];
  if (about.mayCarryWeedkiller && origin !== 'own ground')
    questions.push(
      about.isManure
        ? 'What was sprayed on the hay and straw that the animals ate and lay on, this year and last?'
        : 'What was sprayed where it grew, this year and last? Is there a label, or a name?',
    );
  if (about.isManure)
    questions.push(
      'How long has it lain, and was it turned and hot? Only a heap that was hot and turned stops counting as raw.',
      'Straw or wood shavings under the animals? Shavings dug in hold nitrogen back for a season.',
    );
  if (origin === 'town or shop')
    questions.push('Is there a lab’s sheet with salts, nitrogen and foreign matter?');
  if (origin !== 'own ground')
    questions.push('Does it hold earth? Earth brings weeds, slugs and, in places, jumping worms.');
  return questions;
}

/** The bean-pot test, in the order it is done. */
export const beanTestSteps: readonly string[] = [
  'Take handfuls from several places and mix them.',
  'Fill three pots half with it and half with clean potting mix, and three with clean mix alone.',
  'Sow three beans in each, keep the two kinds apart, and water neither from the other’s saucer.',
  'Look after three to four weeks. New leaves that cup, twist or stay narrow in the mixed pots only: it fails.',
  'Straight leaves lower the odds of trouble. They prove nothing for the part you did not take.',
];
