/** Sets of measurements to hold the model against; comparing them is the work of `tests/validation`. */
export interface MeasuredSet {
  readonly what: string;
  readonly lines: number;
  readonly from: string;
}

export const measuredSets: readonly MeasuredSet[] = [
  {
    what: 'nitrogen that residues, composts and green manures set free or tie up',
    lines: 32,
    from: 'incubations and fields, 1960-2023, mostly abstracts',
  },
  {
    what: 'share of an amendment’s nitrogen that becomes available',
    lines: 46,
    from: 'incubations, pots, fields and extension rules; three lines recalled',
  },
  {
    what: 'ammonia lost from grass and other mulches',
    lines: 8,
    from: 'Larsson 1998, Whitehead 1988, Weber 2018; abstracts',
  },
  {
    what: 'mass and nitrogen lost from clippings on the surface',
    lines: 5,
    from: 'Kopp and Guillard 2004, Hamido 2016, Kauer, Ranells and Wagger 1992; abstracts',
  },
  {
    what: 'recovery of mulch and green-manure nitrogen by crops',
    lines: 19,
    from: 'field and pot trials, mostly abstracts',
  },
  {
    what: 'seedlings up by soil temperature, 24 vegetables at nine temperatures',
    lines: 212,
    from: 'Harrington and Minges 1954, in copies',
  },
];

/** Equations whose printed examples are left aside, because the program has no such equation. */
export const unusedExamples: readonly (readonly [where: string, what: string])[] = [
  ['FAO-56 Example 4', 'vapour pressure from a wet-bulb thermometer'],
  ['FAO-56 Example 7', 'degrees into radians, inside a function'],
  ['FAO-56 Example 13', 'soil heat between months'],
  ['FAO-56 Example 19', 'evapotranspiration by the hour'],
  ['FAO-56 Example 32', 'two coefficients under sprinklers'],
  [
    'FAO-56 Example 38',
    'drains before evapotranspiration, against equation 88, which the program follows',
  ],
  ['FAO-56 Example 44', 'stress from yields'],
  ['FAO-56 Example 45', 'plastic mulch'],
  ['Stanford and Smith 1972; five Queensland soils', 'one-pool mineralisation by temperature'],
  [
    'Voisin and others 2002, whole season; Turpin and others 2002',
    'fixation by mineral nitrogen at sowing',
  ],
  ['Relente and Asio 2020', 'yield of sweet potato by nitrogen'],
  ['Rutgers table for sweet corn', 'feed by soil test'],
  [
    'Sullivan and Andrews 2012',
    'available nitrogen as a straight line of nitrogen: compared as a measurement',
  ],
  ['Frederick 1956; Parton and others 1996', 'nitrification'],
  ['curve number method', 'run-off'],
  ['trial statistics', 'kept with the trials, not here'],
];
