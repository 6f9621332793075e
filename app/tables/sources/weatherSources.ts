import { source } from './shape';

/** Weather records and normals. */
export const weatherSources = {
  NoaaDaily: source(
    'National Oceanic and Atmospheric Administration (US)',
    null,
    'Daily weather of New York and Seattle, 2012-2015',
    'as collected in the open data package vega-datasets (weather.csv)',
  ),
} as const;
