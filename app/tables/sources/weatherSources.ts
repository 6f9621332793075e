import { source } from './shape';

/** Weather records and normals. */
export const weatherSources = {
  NoaaDaily: source(
    'National Oceanic and Atmospheric Administration (US)',
    null,
    'Daily weather of New York and Seattle, 2012-2015',
    'as collected in the open data package vega-datasets (weather.csv)',
  ),
  NoaaNormals: source(
    'National Oceanic and Atmospheric Administration (US)',
    null,
    'Daily climate normals 1991-2020 of New York, Central Park, with standard deviations',
    'station file USW00094728 in a public copy; monthly means taken from the daily figures',
  ),
  WmoNormals: source(
    'national weather service, as published by the WMO',
    null,
    'World Weather Information Service: climatological information by city',
    'worldweather.wmo.int; read in a second-hand copy',
  ),
  MetOffice: source(
    'Met Office (UK)',
    null,
    'Historic station data, means of 1991-2020 worked out here from the monthly values',
    'Contains public sector information licensed under the Open Government Licence v3.0',
  ),
} as const;
