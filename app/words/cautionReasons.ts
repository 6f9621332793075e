import type { Caution, CautionKind } from '../core/season/verdict';

/** Why a rule is there at all, for whoever opens "Why this line". */
const reasons: Readonly<Record<CautionKind, string>> = {
  'layer depth':
    'Fresh grass laid thick keeps the air out: it heats, sticks together and rots sour. Thin layers dry and crumble.',
  'all cover': 'Everything lying on the bed is counted, old layers too.',
  'too soon': 'A new layer over a wet one shuts it off from the air.',
  room: 'What the crop has taken up, what lies ready, what the cover and the soil will still give to the end: all of it together, against all the crop can use.',
  'over-feeding':
    'Nobody knows the weather to come, or quite what a bag holds and a crop takes. So the season is imagined many times, each a little otherwise, and those that go wrong are counted.',
  'season total': 'So much in one season is beyond what any crop of a garden takes up.',
  enough: 'The crop’s need is met as it is. More only goes where it does harm.',
  legume: 'Beans and peas take what is ready in the soil first, and make the less for themselves.',
  short:
    'From that day on the crop wants more in a day than the soil and the cover can hand it, as the sums go on with the usual weather.',
  'tied up':
    'What rots with little nitrogen of its own takes some out of the soil, and gives it back when it is used up.',
  'washing out':
    'Nitrate goes where the water goes. With no roots to take it, rain carries it down.',
  seedlings: 'Small plants cannot push through a cover, and damp stems rot.',
  'cold soil': 'A cover keeps the sun off the ground.',
  'seed fly': 'The fly lays where fresh stuff rots in cold wet ground; its maggots eat the seed.',
  slugs: 'Under a damp cover slugs stay the whole day.',
  'sour mat':
    'Packed wet greens shut the air out; what rots without it smells and is no food for roots.',
  'dry soil': 'A dry cover soaks up light rain before it reaches the roots.',
  'ammonia under glass':
    'Out of doors the wind carries it off; under glass it stays at the leaves.',
  'frost kill':
    'Growers’ records say what cold such a plant has not outlived; under a fleece or by a wall it may.',
  frost: 'A cover keeps the warmth of the ground in, and the air above it colder.',
  runners: 'Every joint of a creeping grass can grow into a plant.',
  'seed heads': 'What has set seed sows itself on the bed.',
  'compost phosphorus':
    'Compost brings more phosphorus than crops take with them; it stays for years and nobody sees it.',
  'treated lawn':
    'Some weedkillers pass through grass, hay and compost unharmed, and cripple beans and tomatoes.',
  'treated source':
    'Some weedkillers pass through grass, hay and compost unharmed, and cripple beans and tomatoes.',
  'raw manure': 'Raw manure can carry germs that make people ill; time and sun kill them.',
  fouled: 'Droppings can carry worms and germs onto what is eaten raw.',
  'salad nitrate': 'Leaves store the nitrate they cannot use.',
  'share over one': 'Shares of a bed that add up to more than it make its crops look hungrier.',
  overdue: 'By its dates or its usual length the crop should have ended.',
  'outside validity': 'Outside the stuff that was tried the sums of rotting are a guess.',
  safety: '',
};

/** The reason behind a caution in a sentence or two; '' where its line says it all. */
export const cautionReason = ({ kind }: Pick<Caution, 'kind'>): string => reasons[kind];
