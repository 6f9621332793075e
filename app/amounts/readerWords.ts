const particles = {
  comma: [',', ';', ':', 'with'],
  article: ['a', 'an'],
  and: ['and', 'plus'],
  of: ['of'],
  at: ['at', '@'],
  or: ['or', 'to'],
  between: ['between'],
  off: ['off'],
  each: ['each', 'apiece'],
  whole: ['whole', 'all', 'entire'],
  on: ['on', 'onto', 'under', 'for', 'round', 'among'],
  vague: ['few', 'several', 'some', 'many', 'lots', 'lot', 'bit', 'little', 'handful', 'plenty'],
  filler: [
    'the|my|our|its|it|i|we|got|had|have|took|taken|take|laid|lay|collected|picked|mowed|mown|mow',
    'full|fully|from|cut|deep|thick|high|tall|depth|layer|layers|worth|more|only|just|was|is',
    'grass|clippings|clipping|mowings|cuttings|leaves|straw|stuff|greens|browns|water|rain',
    'total|altogether|again|side|square|so|over|removed|shorter|bed|beds|row|rows',
  ].flatMap((list) => list.split('|')),
} as const;
export type Particle = keyof typeof particles;
/** Words that stand for no number and no thing, by what they do. */
export const particleOf = new Map<string, Particle>();
for (const [kind, words] of Object.entries(particles))
  for (const word of words) particleOf.set(word, kind as Particle);

const small = [
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen',
  'sixteen seventeen eighteen nineteen',
]
  .join(' ')
  .split(' ');
const tens = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
export const numberWords = new Map<string, { value: number; tens: boolean }>([
  ...small.map((word, value) => [word, { value, tens: false }] as const),
  ...tens.map((word, index) => [word, { value: 20 + 10 * index, tens: true }] as const),
  ...['none', 'nothing', 'no', 'nil'].map((word) => [word, { value: 0, tens: false }] as const),
]);
export const multiples = new Map([
  ['couple', 2],
  ['pair', 2],
  ['dozen', 12],
  ['hundred', 100],
  ['thousand', 1000],
]);
/** Into how many parts. */
export const fractions = new Map<string, number>(
  [
    ['half', 2],
    ['halves', 2],
    ['third', 3],
    ['quarter', 4],
    ['fourth', 4],
    ['fifth', 5],
    ['sixth', 6],
    ['eighth', 8],
    ['tenth', 10],
  ].flatMap(([word, parts]) => [
    [word as string, parts as number],
    [`${word as string}s`, parts as number],
  ]),
);
export const operators: Readonly<Record<string, string>> = {
  x: '*',
  by: '*',
  times: '*',
  minus: '-',
  less: '-',
};

/** Every word that has a meaning here. */
export const readerWords: ReadonlySet<string> = new Set([
  ...particleOf.keys(),
  ...numberWords.keys(),
  ...multiples.keys(),
  ...fractions.keys(),
  ...Object.keys(operators),
]);

/** Those long enough to find what a misspelt one was meant to be. */
export const knownWords: readonly string[] = [...readerWords].filter((word) => word.length > 3);
