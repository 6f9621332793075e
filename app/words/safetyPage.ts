import type { Limits, RowId } from '../core/season/limits';
import type { Weight } from '../core/season/verdict';

/** One line of the page on safety: what, and what instead. */
export interface SafetyLine {
  readonly weight: Weight;
  readonly says: string;
  /** rows of the threshold table that it rests on; without any it is what growers do */
  readonly rows?: readonly RowId[];
}

export interface SafetyGroup {
  readonly title: string;
  readonly lines: readonly SafetyLine[];
}

/**
 * Everything that may hurt somebody, by what it comes from. Nothing is ever called safe.
 * @param limits  days and depths are those of the rules that the cautions go by
 * @param compost the depth of compost a year past which phosphorus is worth a test, in the person's units
 */
export function safetyGroups({ numbers }: Limits, compost: string): readonly SafetyGroup[] {
  return [
    {
      title: 'Animals',
      lines: [
        {
          weight: 'stop',
          says: 'No clippings to horses, cattle or goats, not even fresh ones: grass that lay in a heap heats, and that can kill. Lay it or leave it on the lawn.',
        },
        {
          weight: 'stop',
          says: 'No prunings of yew, oleander, rhododendron, laburnum or box where stock can reach them, on beds by a fence either.',
        },
        {
          weight: 'stop',
          says: 'Where dogs run: no cocoa hulls, no mouldy compost, no blood, bone or feather meal, no slug bait. Straw, leaves or clippings cover as well.',
          rows: ['dog poison'],
        },
        {
          weight: 'stop',
          says: 'Grass fouled by dogs, cats or geese stays off beds whose food is eaten raw. Leave that strip lying.',
          rows: ['fouled grass'],
        },
      ],
    },
    {
      title: 'Plants that harm',
      lines: [
        {
          weight: 'stop',
          says: 'Poison ivy, hogweed, ragwort and their like, mown in: do not mulch with it, do not burn it, keep skin and smoke away. Ask locally where it goes.',
          rows: ['poisonous plants'],
        },
        {
          weight: 'note',
          says: 'Walnut leaves hold tomatoes back: give them to other beds.',
          rows: ['walnut'],
        },
        {
          weight: 'note',
          says: 'Diseased tops do not go on a cold heap.',
          rows: ['diseased tops'],
        },
      ],
    },
    {
      title: 'Weedkiller, feed and other treatments',
      lines: [
        {
          weight: 'stop',
          says: 'The label decides. Where it forbids using clippings, they stay on the lawn: not on beds, not on the heap, not in the town’s bin.',
          rows: ['label forbids'],
        },
        {
          weight: 'stop',
          says: 'Where it names a waiting time, that time.',
          rows: ['label interval'],
        },
        {
          weight: 'stop',
          says: `Where it is silent: ${numbers['silent mowings']} mowings written down and ${numbers['silent days'] / 7} weeks, and for this season none on beans, peas, tomatoes, potatoes, lettuce, carrots, sunflowers or dahlias before a bean-pot test has passed.`,
          rows: ['silent mowings', 'silent days'],
        },
        {
          weight: 'stop',
          says: 'Where nobody knows what was put on it, none on beds you eat from. Hay, straw, manure and compost from elsewhere are tried on beans first.',
          rows: ['unknown source'],
        },
        {
          weight: 'note',
          says: 'The bean-pot test: three pots half of the stuff and half of a clean mix, three of clean mix alone, three beans in each, three to four weeks. Cupped or twisted leaves fail it. Take from several places; passing makes harm less likely and proves nothing.',
        },
      ],
    },
    {
      title: 'Raw manure',
      lines: [
        {
          weight: 'stop',
          says: `At least ${numbers['manure splashed']} days before picking what touches the soil or is splashed from it, ${numbers['manure off the ground']} days for what hangs clear.`,
          rows: ['manure splashed', 'manure off the ground'],
        },
      ],
    },
    {
      title: 'Fire and heat',
      lines: [
        {
          weight: 'caution',
          says: 'Heaps and dry cover away from buildings, barbecues and exhausts. A big fresh heap heats by itself: turn it or spread it.',
        },
        {
          weight: 'caution',
          says: 'Ask locally whether anything may be burnt now, before it is.',
        },
      ],
    },
    {
      title: 'Lungs, back and hands',
      lines: [
        {
          weight: 'caution',
          says: 'Mouldy or dusty stuff: damp it, wear a mask, or leave it.',
          rows: ['mouldy'],
        },
        {
          weight: 'caution',
          says: 'A bag of soaked grass weighs about 15 kg (33 lb): half fill it.',
        },
      ],
    },
    {
      title: 'Soil and water',
      lines: [
        {
          weight: 'caution',
          says: 'Grass from a roadside or a railway, and chips of painted or treated wood, stay off food beds.',
          rows: ['roadside', 'painted wood'],
        },
        {
          weight: 'caution',
          says: 'Under an old house’s eaves or in an old orchard, have the soil tested for lead and arsenic before food grows there.',
          rows: ['old house'],
        },
        {
          weight: 'caution',
          says: 'A well of one’s own, a stream, a slope: keep feeding back by the strip that the local rule names. Water over 10 mg/L of nitrate-nitrogen is not for infants: have the well tested.',
          rows: ['own well'],
        },
        {
          weight: 'note',
          says: `More than ${compost} of compost in a year: have phosphorus tested first.`,
          rows: ['compost depth'],
        },
      ],
    },
    {
      title: 'The rest',
      lines: [
        {
          weight: 'note',
          says: 'Leaf salads hold nitrate: pick late in the day, and lay no more greens in the last four weeks.',
        },
        {
          weight: 'note',
          says: 'What is bought in may bring jumping worms: look before it is spread.',
          rows: ['bought in'],
        },
        { weight: 'note', says: 'Deep winter cover shelters voles: keep it off stems.' },
        { weight: 'note', says: 'Neighbours: smell, flies, and where their spray drifts.' },
      ],
    },
  ];
}

/** What was said of this very garden and bears on the lines above. */
export const ownSafetyWords = {
  dogs: 'Dogs run here: what poisons them is stopped before it is laid.',
  ownWell: 'You drink from your own well: what washes out is weighed with that in mind.',
  fouled: (lawn: string) => `${lawn} is fouled by pets: its grass is stopped on beds eaten raw.`,
  answer: 'Answer now',
  change: 'Change the answer',
  nothing:
    'Nothing of the kind was said of this garden so far. That is not the same as nothing being there.',
} as const;
