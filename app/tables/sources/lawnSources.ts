import { source } from './shape';

/** Clippings, mulch practice, weedkillers, manure, safety. */
export const lawnSources = {
  Friell: source(
    'Friell J, University of Minnesota turf group',
    null,
    'Benefits of recycling lawn clippings',
    'turf.umn.edu; read',
  ),
  RhodeIsland1991: source(
    'University of Rhode Island turf programme',
    1991,
    'Clipping yield and nitrogen of cool-season turf cultivars, 1990-91',
    'digitalcommons.uri.edu/pls_facpubs/187; abstract read',
  ),
  GelernterStowell2005: source(
    'Gelernter W, Stowell L',
    2005,
    'Improved overseeding programs 1. The role of weather',
    'Golf Course Management; quoted in turf notes, which were read for the best temperatures only',
  ),
  Springer2008: source(
    'Springer TL',
    2008,
    'Fertilised bermudagrass clippings, Woodward, Oklahoma',
    'USDA-ARS abstract 214703; read',
  ),
  Kopp2002: source(
    'Kopp KL, Guillard K',
    2002,
    'Clipping management and nitrogen fertilization of turfgrass',
    'Crop Science 42:1225-1231; abstract read',
  ),
  KoppGuillard2004: source(
    'Kopp KL, Guillard K',
    2004,
    'Decomposition rates and nitrogen release of turf grass clippings',
    '4th International Crop Science Congress, poster 860; abstract read',
  ),
  MissouriG6958: source(
    'University of Missouri Extension',
    null,
    'Home lawn clippings: guides G6958 and G6959',
    'extension.missouri.edu; read',
  ),
  Woods: source(
    'Woods MS',
    null,
    'Converting clipping volume to dry weight',
    'asianturfgrass.com; read',
  ),
  MaineGrazing: source(
    'University of Maine',
    null,
    'Pasture course, appendix D: dry matter per inch of sward',
    'read',
  ),
  Rynk1992: source(
    'Rynk R (editor)',
    1992,
    'On-Farm Composting Handbook, NRAES-54, table A.1',
    'averages read in a transcription; ranges recalled',
  ),
  Bary2005: source(
    'Bary AI, Cogger CG, Sullivan DM, Myhre EA',
    2005,
    'Characterization of fresh yard trimmings for agricultural application',
    'Bioresource Technology 96:1499-1504; abstract read',
  ),
  Upham: source(
    'Upham W, Kansas State University',
    null,
    'Mulching garden crops',
    'newspaper column, read',
  ),
  ColusaGarden2021: source(
    'Colusa County master gardeners',
    2021,
    'Mulching the garden',
    'newspaper column, second-hand copy read',
  ),
  NebraskaColumn: source(
    'Nebraska Extension columnist',
    null,
    'Grass clippings as mulch',
    'Columbus Telegram; second-hand copy read',
  ),
  MsuMulch: source(
    'Michigan State University Extension',
    null,
    'Mulch for the vegetable garden',
    'canr.msu.edu; the waiting time after weedkiller was read',
  ),
  NcStateCarryover: source(
    'North Carolina State Extension',
    null,
    'Herbicide carryover in hay, manure, compost and grass clippings',
    'read',
  ),
  WsuBioassay2011: source(
    'Washington State University Extension, Whatcom County',
    2011,
    'Bean and pea pot test for weedkiller in compost',
    'read',
  ),
  NpicClopyralid: source(
    'National Pesticide Information Center',
    null,
    'Clopyralid fact sheets',
    'read',
  ),
  UsOrganicRule: source(
    'United States Code of Federal Regulations',
    null,
    '7 CFR 205.203(c)(1): raw manure, 120 and 90 days before harvest',
    'read in agency and university pages',
  ),
  NewJerseyManual: source(
    'New Jersey DEP and Rutgers University',
    null,
    'Compost manual, part VI.A: grass clippings',
    'read',
  ),
  PurdueFrost: source(
    'Purdue and Illinois Extension',
    null,
    'Frost resistance of vegetables and annual flowers (HO-203, VC-14)',
    'second-hand copy read',
  ),
  TexasNewsletter2006: source(
    'Texas A&M University',
    2006,
    'Soil nitrate that suffices for vegetables',
    'newsletter, read; address not kept',
  ),
} as const;
