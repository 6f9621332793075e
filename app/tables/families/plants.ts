import type { SourceKey } from '../sources';
import type { FamilyId } from './families';

type PlantsBySource = Readonly<Partial<Record<SourceKey, readonly string[]>>>;

/**
 * Which family a vegetable, herb, flower or cover crop belongs to, by where that was read;
 * `Recalled` is botanical knowledge that no list was found for.
 */
export const familyPlants: Readonly<Record<FamilyId, PlantsBySource>> = {
  Brassicaceae: {
    IllinoisRotation2004: [
      'cabbage',
      'broccoli',
      'cauliflower',
      'Brussels sprouts',
      'kale',
      'collards',
      'kohlrabi',
      'mustard greens',
      'mizuna',
      'turnip',
      'swede',
      'radish',
    ],
    CornellRotation2021: ['Chinese cabbage', 'pak choi', 'horseradish', 'forage radish'],
    Recalled: ['rocket', 'stock', 'sweet alyssum', 'wallflower', 'white mustard'],
  },
  Solanaceae: {
    IllinoisRotation2004: ['tomato', 'pepper', 'eggplant', 'potato', 'tomatillo'],
    CornellRotation2021: ['ground cherry'],
    Recalled: ['petunia', 'flowering tobacco'],
  },
  Cucurbitaceae: {
    IllinoisRotation2004: ['cucumber', 'melon', 'watermelon', 'winter squash', 'pumpkin'],
    CornellRotation2021: ['zucchini', 'summer squash'],
  },
  Fabaceae: {
    IllinoisRotation2004: ['French bean', 'lima bean', 'pea', 'soybean'],
    RhsRotation: ['runner bean'],
    SacramentoRotation: ['broad bean'],
    Recalled: [
      'cowpea',
      'peanut',
      'sweet pea',
      'lupin',
      'field bean',
      'bitter lupin',
      'fenugreek',
      'sunn hemp',
    ],
    CornellRotation2021: [
      'crimson clover',
      'red clover',
      'white clover',
      'hairy vetch',
      'winter vetch',
      'field pea',
    ],
  },
  Apiaceae: {
    IllinoisRotation2004: ['carrot', 'parsnip', 'celery', 'parsley'],
    CornellRotation2021: ['celeriac', 'fennel', 'dill'],
    Recalled: ['coriander'],
  },
  Amaryllidaceae: {
    CornellRotation2021: ['onion', 'shallot', 'leek', 'garlic', 'chives'],
    Recalled: ['daffodil'],
  },
  Amaranthaceae: { CornellRotation2021: ['beetroot', 'chard', 'spinach', 'amaranth', 'quinoa'] },
  Asteraceae: {
    CornellRotation2021: ['lettuce', 'endive', 'chicory', 'Jerusalem artichoke', 'sunflower'],
    IllinoisRotation2004: ['salsify'],
    SacramentoRotation: ['globe artichoke'],
    Recalled: [
      'French marigold',
      'pot marigold',
      'zinnia',
      'cosmos',
      'dahlia',
      'China aster',
      'cornflower',
      'rudbeckia',
    ],
  },
  Poaceae: {
    CornellRotation2021: ['sweet corn', 'cereal rye', 'oats', 'barley', 'winter wheat'],
    Recalled: ['annual ryegrass', 'sorghum-sudangrass', 'Japanese millet'],
  },
  Convolvulaceae: { CornellRotation2021: ['sweet potato'] },
  Malvaceae: { CornellRotation2021: ['okra'] },
  Polygonaceae: { CornellRotation2021: ['rhubarb', 'sorrel', 'buckwheat'] },
  Asparagaceae: { CornellRotation2021: ['asparagus'] },
  Rosaceae: { CornellRotation2021: ['strawberry'] },
  Lamiaceae: { CornellRotation2021: ['basil', 'mint', 'sage'], Recalled: ['annual salvia'] },
  Boraginaceae: { Recalled: ['borage', 'phacelia'] },
  Linaceae: { Recalled: ['flax'] },
  Caprifoliaceae: { Recalled: ['corn salad'] },
  Montiaceae: { Recalled: ['winter purslane'] },
  Aizoaceae: { Recalled: ['New Zealand spinach'] },
  Plantaginaceae: { Recalled: ['snapdragon'] },
  Tropaeolaceae: { Recalled: ['nasturtium'] },
  Violaceae: { Recalled: ['pansy'] },
  Papaveraceae: { Recalled: ['poppy'] },
  Iridaceae: { Recalled: ['gladiolus'] },
  Liliaceae: { Recalled: ['tulip'] },
  Begoniaceae: { Recalled: ['begonia'] },
  Balsaminaceae: { Recalled: ['impatiens'] },
  Verbenaceae: { Recalled: ['verbena'] },
  Caryophyllaceae: { Recalled: ['sweet william'] },
  Ranunculaceae: { Recalled: ['larkspur', 'love-in-a-mist'] },
};
