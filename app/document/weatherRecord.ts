import type { DayNumber } from '../core/days';
import type { RecordedDay } from '../core/season/ahead';
import type { MonthlyNormals } from '../core/season/input';
import { laidOutOnce } from './laidOut';
import type { Garden } from './schema';
import { layeredWeather } from './weatherLayers';

/** Monthly normals as the engine takes them. */
export const normalsOf = (garden: Garden): MonthlyNormals => {
  const { minimumCelsius, maximumCelsius, rainMillimetres, wetDays } = garden.weather.normals;
  return { minimumCelsius, maximumCelsius, rainMillimetres, wetDays };
};

/** Records are long: those of today, of a week ago and of the whole are kept. */
const records = laidOutOnce<readonly RecordedDay[]>(4);

/**
 * Known days up to a day, each value from the best that is there (`layeredWeather`). Nobody can change
 * them, so that what is read off them can be kept with them.
 */
export const recordOf = (garden: Garden, upTo: DayNumber): readonly RecordedDay[] =>
  records(garden, String(upTo), () =>
    Object.freeze(
      Array.from(layeredWeather(garden, upTo), ([day, { lowest, highest, rain }]) =>
        Object.freeze({
          day,
          minimumCelsius: lowest?.value ?? null,
          maximumCelsius: highest?.value ?? null,
          rainMillimetres: rain?.value ?? null,
        }),
      ),
    ),
  );
