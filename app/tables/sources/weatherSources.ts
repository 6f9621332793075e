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
} as const;
