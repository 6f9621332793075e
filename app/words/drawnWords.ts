import type { Coefficients } from '../core/season/coefficients';

/** What can be done in a garden about something that is not known. */
export type Remedy = 'weigh' | 'nitrate test' | 'humus test' | 'analysis' | 'picks' | 'nodules';

interface DrawnWords {
  readonly words: string;
  readonly remedy: Remedy;
}

const byNitrate = (words: string): DrawnWords => ({ words, remedy: 'nitrate test' });

/**
 * What is drawn once for a garden, as a gardener would ask about it. None of it can be measured
 * with a spade; a laboratory's nitrate narrows all of it at once.
 */
export const coefficientWords: Readonly<Partial<Record<keyof Coefficients, DrawnWords>>> = {
  ammoniaFactor: byNitrate('how much of a fresh layer goes to the air'),
  luxuryShare: byNitrate('how much more than it needs the crop takes'),
  greenMicrobeFactor: byNitrate('how soon rotting greens let go of their nitrogen'),
  greenHumusFactor: byNitrate('how much of the greens stays behind as humus'),
  manureAmmoniaShare: byNitrate('how much of manure left on top goes to the air'),
  slowRate: byNitrate('how soon composts and manures let go of their nitrogen'),
  mealRate: byNitrate('how soon meals let go of their nitrogen'),
  woodDecay: byNitrate('how fast wood rots in the ground'),
  decayBase: byNitrate('how fast plant material rots'),
  greenTurnover: byNitrate('how soon what rots greens dies in its turn'),
  coverFreeShareForTieUp: byNitrate('how much browns take from greens beside them'),
  coverDryWetness: byNitrate('how much dew keeps a dry layer rotting'),
  lyingShareOfMicrobesAndHumus: byNitrate('how much of what has rotted still lies on the soil'),
  denitrifiedShare: byNitrate('how much a soaked soil loses to the air'),
  uptakeShare: byNitrate('how fast roots take what they reach'),
  bareCropCoefficient: byNitrate('how much water bare soil gives to the air'),
  hoedRate: byNitrate('how fast what is hoed in rots'),
  surfaceRateGreen: byNitrate('how fast a layer rots on top of the soil'),
  youngHumusRate: byNitrate('how much the layers of earlier years still give'),
  soilCarbonToNitrogen: byNitrate('how rich in nitrogen the soil’s humus is'),
  soilReleaseRate: byNitrate('how fast the soil’s humus gives nitrogen'),
  startingMineralTop: byNitrate('what was ready in the soil at the start'),
  startingMineralPer30: byNitrate('what was ready deeper down at the start'),
};

/** How to narrow it, each in one or two sentences. */
export const remedyWords: Readonly<Record<Remedy, (topSoil: string) => string>> = {
  weigh: () => 'Weigh one full bag: it settles every amount that was counted in bags.',
  'nitrate test': (topSoil) =>
    `Have a laboratory measure nitrate in the top ${topSoil}: 10 to 15 small samples mixed, put on ice or spread to dry before night. ` +
    'Let two or three weeks pass since a layer was laid, and some days since heavy rain. Colour kits only give a hint.',
  'humus test': () => 'Have a laboratory measure organic matter, once in a few years.',
  analysis: () =>
    'A laboratory can measure the nitrogen of a bagful. Saying what kind of lawn it is helps already.',
  nodules: () => 'Dig up a plant at flowering and cut its nodules: pink inside they work.',
  picks: () => 'Write down what is picked, and give the usual pick in the planting.',
};
