import { source } from './shape';

/** Contents and densities of materials. */
export const materialSources = {
  CornellSheet2: source(
    'Cornell University',
    null,
    'Composting fact sheet 2: C:N of materials',
    'compost.css.cornell.edu; read',
  ),
  MinnesotaBulletin1989: source(
    'Minnesota extension bulletin',
    1989,
    'Yard waste, table 2',
    'reprinted in a town agenda; read',
  ),
  Akron: source('USDA-ARS and NRCS Akron', null, 'Carbon to nitrogen ratio fact sheet', 'read'),
  Nrcs2011: source(
    'USDA-NRCS',
    2011,
    'Carbon to nitrogen ratios in cropping systems, table 1',
    'read in a transcription',
  ),
  Jenkins: source(
    'Jenkins J',
    null,
    'C/N ratios, table 3.2, compiled from Gotaas 1956, Rynk 1992 and others',
    'read',
  ),
  CanadianTable3: source(
    'Canadian agricultural fact sheet',
    null,
    'Characteristics of common composting materials, table 3',
    'unsigned copy read; agrees with NRAES-54',
  ),
  Fageria: source('Fageria NK', null, 'C/N ratio of straw and residues, table 8.5', 'read'),
  HeckmanKluchinski1996: source(
    'Heckman JR, Kluchinski D',
    1996,
    'Chemical composition of municipal leaf waste, 100 samples',
    'Journal of Environmental Quality 25:355-362; abstract read',
  ),
  RutgersLeaves: source(
    'Rutgers University, as noted by a soil laboratory',
    null,
    'Plant nutrients in municipal leaves',
    'read',
  ),
  OregonDeq2005: source(
    'Oregon Department of Environmental Quality',
    2005,
    'Density factors of a waste survey',
    'read second-hand',
  ),
  MassachusettsFactors: source(
    'Commonwealth of Massachusetts',
    null,
    'Municipal recycling conversion factors',
    'read second-hand',
  ),
  Epa1993: source('US EPA', 1993, 'Business guide for reducing solid waste, appendix D', 'read'),
  HandoutCarbonNitrogen: source(
    'Unsigned handout',
    null,
    'How to calculate the C:N ratio of your compost mix',
    'read',
  ),
  Cooperband2002: source('Cooperband L', 2002, 'Art and Science of Composting, table 2', 'read'),
  Solomon: source('Solomon S', null, "Organic Gardener's Composting", 'Project Gutenberg; read'),
  AgnewLeonard2003: source(
    'Agnew JM, Leonard JJ',
    2003,
    'The physical properties of compost',
    'Compost Science and Utilization 11:238-264; as quoted by others',
  ),
  Sundermeier2016: source(
    'Sundermeier A, Ohio State University',
    2016,
    'Compost analyses, ANR-34 table 1',
    'read',
  ),
  CoffeeRetail: source('A coffee retailer', null, 'Nitrogen of spent grounds', 'weak source; read'),
  NettleProtein2015: source(
    'Two papers on nettle protein',
    2015,
    'Crude protein of Urtica / 6.25',
    'Livestock Research for Rural Development 27(8); Food Science and Nutrition 4:119',
  ),
  KansasUpdate2840: source(
    'Kansas State University Agronomy',
    null,
    'Typical C:N of residues, e-update 2840 table 1',
    'read',
  ),
  RanellsWagger1992: source(
    'Ranells NN, Wagger MG',
    1992,
    'Nitrogen release from crimson clover in relation to stage and composition',
    'Agronomy Journal 84:424-430; abstract read',
  ),
  HartzManures2000: source(
    'Hartz TK, Mitchell JP, Giannini C',
    2000,
    'Nitrogen and carbon mineralization dynamics of manures and composts',
    'HortScience 35:209-212; abstract read',
  ),
} as const;
