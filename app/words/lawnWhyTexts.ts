import { lawnReadyWhyTexts } from './lawnReadyWhyTexts';

/** What stands behind the figures of the Lawn place, in words. */
export const lawnWhyTexts = {
  ...lawnReadyWhyTexts,
  bestWeek: 'What it grows in its best week.',
  weekFormula:
    'A year’s growth of its kind, spread over the weeks by warmth and water × what its own mowings showed.',
  week: 'What it grows in a week.',
  likelyWeek: 'Where a week’s growth lies 8 times in 10.',
  likelyFormula:
    'What is expected, made wider by what its mowings leave open and, for weeks to come, by other weather: 1 of 10 below, 1 of 10 above.',
  usualWeekAlone: 'What its kind grows in a week.',
  usualFormula: 'A year’s growth of its kind, spread over the weeks by warmth and water.',
  mown: 'What was mown, a week.',
  mownFormula: 'What a mowing brought ÷ the weeks it had grown since the one before.',
  usualWeek: 'As its kind usually grows in that week',
  rest: 'What is still to grow this season.',
  restFormula:
    'All weeks that begin after today, each by the warmth and water of imagined seasons × what its own mowings showed.',
  ratio: 'How it compares with its kind.',
  ratioFormula: 'What was mown ÷ what was expected of its kind, mowing by mowing, newer ones more.',
  taken: 'Nitrogen carried off.',
  takenFormula: 'Dry weight of what was collected × its nitrogen, over the area of the lawn.',
  mineralFormula: 'Dry weight of what was collected × its share, over the area of the lawn.',
  phosphorus: 'Phosphorus in dry clippings',
  potassium: 'Potassium in dry clippings',
  lost: 'Growth lost over the years.',
  lostFormula: 'What leaving clippings is known to add, taken away by the share that is collected.',
  raised: 'Growth that leaving them adds',
  collected: 'Carried off of what grew',
  collectedFormula: 'Mowings collected ÷ what grew by the sums.',
  books: 'From the mowings you wrote down.',
  saved: 'Of a lawn’s feed, saved by clippings left lying',
  savedFormula: 'As advised for lawns whose clippings stay.',
} as const;
