// @vitest-environment happy-dom
// In the list of beds a weight stands with what it is about: "caution" alone tells nobody what of.
import { expect, test } from 'vitest';
import { parseGarden } from '../../app/document/parse';
import { sampleText } from '../../app/document/sampleGarden';
import { Beds } from '../../app/screens/beds/Beds';
import { cautionSentence } from '../../app/words/cautionSentences';
import { unitsOf } from '../../app/amounts/unitSystem';
import { sameThreadEngine, storeWith } from '../store/surroundings';
import { drawnPage } from './drawnPage';

const parsed = parseGarden(sampleText);
if (!parsed.ok) throw new Error('The sample is no garden');
const sample = parsed.value;
const page = drawnPage();

test('every weight has its sentence beside it', async () => {
  const { store, time } = await storeWith(sample, { engine: sameThreadEngine() });
  store.setState({ about: { native: false, version: '0', folder: '', today: '2013-06-15' } });
  await time.pass(2000);
  await page.draw(store, <Beds />);
  const weights = new Set<string>();
  for (const bed of sample.beds) {
    const strongest = store.getState().bedResults[bed.id]?.cautions[0];
    const entry = page.place.querySelector(`[aria-labelledby="bed-${bed.id}"]`)!;
    const says = entry.querySelector('.bed-entry-weight')?.textContent ?? '';
    if (!strongest) {
      expect(says).toContain('nothing against it');
      continue;
    }
    weights.add(strongest.weight);
    const sentence = cautionSentence(strongest, unitsOf('metric'));
    // areas and grams per area are written with a raised figure on the screen
    const plain = (words: string) => words.replaceAll(/\s+/g, ' ').replaceAll('m2', 'm²');
    expect(plain(says)).toContain(plain(`${strongest.weight} ${sentence}`));
  }
  // some of each, or nothing was shown
  expect([...weights].toSorted()).toEqual(['caution', 'note', 'stop']);
});
