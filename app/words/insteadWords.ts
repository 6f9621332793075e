import type { InsteadKey } from '../core/season/limits';
import type { Caution } from '../core/season/verdict';
import type { UnitSet } from '../amounts/unitSystem';
import { estimateWithUnit, rulerFraction } from './figures';

const sentences: Readonly<Record<InsteadKey, string>> = {
  'stop greens':
    'No more greens here this season; straw, leaves or crisp clippings if it lies bare.',
  'rake and carry':
    'Rake off what was laid last and give it to a bed that wants it. After that lay only straw, leaves or other browns; in a gap, plant something that feeds heavily.',
  'split the layer': 'Spread it thinner over more ground, or let it wilt first.',
  'loosen or thin': 'Loosen it, or carry some to a bed that lies bare.',
  'let it dry': 'Wait till the last layer is dry and half gone, or lay browns between.',
  'other bed': 'Lay it on a hungrier bed, leave it on the lawn, or heap it with browns.',
  wait: 'Wait; meanwhile it can lie on another bed or dry for later.',
  'straw on legumes':
    'Cover them with straw, leaves or crisp clippings; keep the greens for a hungry bed.',
  feed: 'Lay or hoe in a thin layer of greens, and look again in a week.',
  'water first': 'Water first, then cover.',
  'wait for the soil': 'Leave the ground open to the sun till it is warm, then cover.',
  'sow or cover':
    'Sow something that takes it up, such as a cover crop; browns keep rain from driving it down.',
  'browns only':
    'Lay only straw, leaves or other browns now; in a gap, plant something that feeds heavily.',
  'keep off stems': 'Leave a hand’s breadth bare round each stem, and the row open over seed.',
  'pull back':
    'Pull the cover back from the plants till it dries; look under a board in the evening.',
  'let air in':
    'Fork it loose, or rake the last layer off; lay the next one thinner, with browns between.',
  'air the glass': 'Open the glass, or use crisp clippings.',
  'uncover at night': 'Rake the cover aside for clear nights, or cover the plants themselves.',
  'crisp or hot heap': 'Dry it crisp first, or put it in the middle of a hot heap.',
  'leave on the lawn':
    'Leave it lying on the lawn. A heap or the council’s green waste would pass it on to somebody’s beans.',
  'answer the question': 'Look at the label or ask who treated it, and write down what they say.',
  'pot test':
    'Sow beans in three pots with half of it and three without; cupped leaves after 3-4 weeks say no.',
  'wait for the date': 'Wait for the date, or use it where nothing is eaten.',
  'compost it': 'Put it on the heap.',
  'compost manure':
    'Heap it first, or dig it into an empty bed in autumn; rake off what lies round plants, then water well.',
  'thicker or straw': 'Lay it as thick as that, or use straw, which brings fewer seeds.',
  'pull seedlings': 'Pull what sprouts while it is small.',
  'test first': 'Have the soil tested first.',
  'clear or date': 'Clear it, or set its dates and share right.',
  'weigh or test': 'A laboratory’s figures for it would help.',
  'pick late': 'No more greens before picking; pick leaves late in the day.',
  'leave out': 'Keep it off the beds.',
  nothing: '',
};

/** Whether what is advised is to rake the last layer off and carry it to another bed. */
export const isRakeAdvice = (instead: string): boolean => instead === sentences['rake and carry'];

/** What to do instead, in one line; '' where there is nothing to say. */
export function insteadWords(
  caution: Pick<Caution, 'kind' | 'weight' | 'layerId' | 'row' | 'detail'>,
  instead: InsteadKey,
  units: UnitSet,
): string {
  if (caution.detail['welcome'] === 1) return '';
  const litres = Number(caution.detail['mendLitres'] ?? 0);
  if (caution.kind === 'short' && litres > 0)
    return `Hoe in about ${mendingAmount(caution, litres, units)} of ${String(caution.detail['mendWith'])}, thin; laid on it works more slowly. Look again in a week.`;
  // what has lain for a while is spread thinner and wilted first no more
  if (caution.kind === 'layer depth' && caution.detail['isOld'] === 1)
    return sentences['let air in'];
  if (caution.kind === 'over-feeding' && caution.layerId !== null) return sentences['other bed'];
  if (instead === 'leave on the lawn' && caution.detail['lies'] === 1) return takeBack;
  // what may carry weedkiller is passed on to no other bed and to no heap untried
  if (caution.row === 'unknown source sensitive') return tryFirst;
  // The same lines hold for a layer in the hand and for a bed that has had it.
  if (caution.layerId === null && (caution.kind === 'room' || caution.kind === 'season total'))
    return sentences[
      caution.weight === 'note' || caution.kind === 'season total'
        ? 'stop greens'
        : Number(caution.detail['lyingMm'] ?? 0) < worthRakingMillimetres
          ? 'browns only'
          : 'rake and carry'
    ];
  return sentences[instead];
}

const takeBack =
  'Rake off what still lies there and take it back to its lawn: to no other bed, no heap and no green waste.';

/** What to do about a heap into which clippings of a treated lawn went. */
export const heapHeldBack =
  'It is on the heap: keep that heap off the beds until beans have grown straight in it.';

const tryFirst =
  'Keep it off this bed for the season, and off every other until beans have grown straight in it.';

/** Under this there is nothing left to rake off (ours). */
const worthRakingMillimetres = 4;

/** In what the gardener carries it in where that is known, else by volume. */
function mendingAmount(
  { detail }: Pick<Caution, 'detail'>,
  litres: number,
  units: UnitSet,
): string {
  const count = Number(detail['mendCount'] ?? 0);
  if (count <= 0) return estimateWithUnit(litres, units.volume);
  return `${rulerFraction(count)} ${String(detail[count <= 1 ? 'mendOne' : 'mendMany'])}`;
}
