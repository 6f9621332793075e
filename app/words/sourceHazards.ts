import type { SourceHazard } from '../document/schema';

/** What is ticked where something is known to be wrong with a lawn or a store. */
export const sourceHazardWords: Readonly<Record<SourceHazard, string>> = {
  'poisonous plants': 'Poisonous plants are in it: ragwort, hogweed, poison ivy and the like',
  'painted wood': 'There may be painted or treated wood in it',
  roadside: 'It comes from beside a road or a railway',
  'old house': 'It comes from under an old house’s eaves or from an old orchard',
  mouldy: 'It is mouldy or dusty',
  walnut: 'Walnut leaves are in it',
  'diseased tops': 'Diseased tops are in it',
  'bought in': 'It was brought in from elsewhere',
};
