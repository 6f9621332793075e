import { source } from './shape';

/** What legumes fix, what nitrate does to them, and how much nitrate is enough. */
export const nitrateSources = {
  Peoples2021: source(
    'Peoples MB, Giller KE, Jensen ES, Herridge DF',
    2021,
    'Reliance on nitrogen fixation of grain legumes',
    'Plant and Soil 461; abstract read (5374 estimates)',
  ),
  Peoples1995: source(
    'Peoples MB and others',
    1995,
    'Ranges of the share of nitrogen from the air',
    'as tabulated by others; read',
  ),
  GrahamRosas1977: source(
    'Graham PH, Rosas JC, and others',
    1977,
    'Climbing beans fix more than bush beans',
    'cited by others; read',
  ),
  Voisin2002: source(
    'Voisin AS, Salon C, Munier-Jolain NG, Ney B',
    2002,
    'Effects of soil nitrate, growth potential and phenology on fixation of pea',
    'Plant and Soil 243:31-42; abstract read',
  ),
  Jensen1986: source(
    'Jensen ES',
    1986,
    'Symbiotic nitrogen fixation and nitrate uptake by the pea crop',
    'Riso-M-2591; abstract read',
  ),
  Turpin2002: source(
    'Turpin JE, Herridge DF, Robertson MJ',
    2002,
    'Fixation and soil nitrate in chickpea and faba bean',
    'Australian Journal of Agricultural Research 53:599-608; abstract read',
  ),
  NebraskaLegumes: source(
    'University of Nebraska and North Platte NRD',
    null,
    'Nitrogen credits of legume crops; when fixation begins',
    'read',
  ),
  Jennings: source(
    'Jennings J, University of Arkansas',
    null,
    'Value of nitrogen fixation from clovers, FSA2160',
    'read',
  ),
  Heckman2002: source(
    'Heckman JR and others',
    2002,
    'Pre-sidedress soil nitrate test for fall cabbage, 40 fields',
    'HortTechnology; abstract read',
  ),
  Ashley1996: source(
    'Ashley RA',
    1996,
    'Pre-sidedress soil nitrate test for sweet corn, 83 sites',
    'SARE project ANE94-019; read',
  ),
  HeckmanCorn: source(
    'Heckman JR and others',
    null,
    'Pre-sidedress soil nitrate test for sweet corn, 40 New Jersey sites',
    'abstract read',
  ),
  Johnson: source(
    'Johnson G, University of Delaware',
    null,
    'Excess nitrogen and vegetables and fruits',
    'sites.udel.edu; read',
  ),
  Relente2020: source(
    'Relente FAC, Asio LG',
    2020,
    'Nitrogen on sweet potato',
    'Annals of Tropical Research 42(1):45-55; abstract read',
  ),
  Ronga2020: source(
    'Ronga D, Pentangelo A, Parisi M',
    2020,
    'Nitrogen on San Marzano tomato in fertile soil',
    'Plants 9:575; abstract read',
  ),
  SalvagiottiDobermann2006: source(
    'Salvagiotti F, Dobermann A',
    2006,
    'Soybean nitrogen: a review of 1966-2004',
    'conference abstract read',
  ),
  Grdc2018: source(
    'Grains Research and Development Corporation',
    2018,
    'Rules of thumb for soil nitrogen after pulses',
    'grdc.com.au; read',
  ),
  PortugalRoots2015: source(
    'Study of legume roots in Portugal',
    2015,
    'Underestimated role of legume roots for soil nitrogen',
    'Agronomy for Sustainable Development; abstract and introduction read',
  ),
  McNeillUnkovich2024: source(
    'McNeill AM, Unkovich MJ',
    2024,
    'Below-ground nitrogen by marked feeding',
    'Plant and Soil; abstract read',
  ),
  VermontNitrogen: source(
    'Grubinger V, University of Vermont Extension',
    null,
    'Nitrogen management on vegetable farms',
    'uvm.edu; read',
  ),
  SouthDakotaCredits2013: source(
    'Beck R, South Dakota State University Extension',
    2013,
    'Nitrogen credits from legume crops',
    'newspaper reprint read',
  ),
  Beckie1997: source(
    'Beckie HJ and others',
    1997,
    'Nitrogen contribution of field pea',
    'Canadian Journal of Plant Science 77; abstracts read',
  ),
  Akologo2023: source(
    'Akologo L, Dapaah H, Yirzagla J',
    2023,
    'Nitrogen credits from cowpea to carrot',
    'American Journal of Plant Sciences 14:482; abstract read',
  ),
  NrcsS27: source(
    'USDA-NRCS',
    null,
    'Legume cover crops as a nitrogen source, enhancement S27',
    'read',
  ),
  Andersen2020: source(
    'Andersen BJ and others',
    2020,
    'Faba bean and pea as late cover crops in North Dakota',
    'Agronomy; abstract read',
  ),
} as const;
