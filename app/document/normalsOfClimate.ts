import { climateStanding, type Climate } from '../tables/climates';
import type { Garden } from './schema';

/** A station's months as a garden keeps them. */
export const normalsOfClimate = (climate: Climate): Garden['weather']['normals'] => ({
  place: `${climate.name}, ${climate.country}`,
  standing: climateStanding(climate).slice(0, 200),
  minimumCelsius: [...climate.minimumCelsius],
  maximumCelsius: [...climate.maximumCelsius],
  rainMillimetres: [...climate.rainMillimetres],
  wetDays: [...climate.wetDays],
  lastSpringFrost: climate.lastSpringFrost,
  firstAutumnFrost: climate.firstAutumnFrost,
});
