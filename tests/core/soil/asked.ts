import type { WaterAsked } from '../../../app/core/soil/water';

/** A day of which nothing is asked but what is named. */
export const asked = (named: Partial<WaterAsked> = {}): WaterAsked => ({
  rain: 0,
  logged: 0,
  evapotranspiration: 0,
  coverCapacity: 0,
  coverFraction: 0,
  ...named,
});
