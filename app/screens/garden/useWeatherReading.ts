import { useMemo } from 'react';
import type { Result } from '../../core/result';
import type { Garden } from '../../document/schema';
import { normalsOf } from '../../document/seasonInput';
import { readWeather } from '../../document/weather/readWeather';
import type {
  WeatherFailure,
  WeatherOptions,
  WeatherReading,
} from '../../document/weather/weatherTypes';

type Read = Result<WeatherReading, WeatherFailure>;

export interface BroughtReading {
  /** with all that was said */
  readonly reading: Read;
  /** with nothing said but the station: what is asked by it stays asked, so that the answer can be seen and changed */
  readonly first: Read;
  /** to pick from, where the file holds several */
  readonly stations: readonly string[];
}

/** What a text of measured days comes to; read no oftener than what was said makes it another. */
export function useWeatherReading(
  text: string | null,
  said: WeatherOptions,
  garden: Garden,
): BroughtReading | null {
  const { station } = said;
  const bare = useMemo(
    () => (text === null ? null : readWeather(text, { normals: normalsOf(garden) })),
    [text, garden],
  );
  const first = useMemo(
    () =>
      text === null || station === undefined
        ? bare
        : readWeather(text, { station, normals: normalsOf(garden) }),
    [text, garden, station, bare],
  );
  const reading = useMemo(
    () =>
      text !== null && Object.keys(said).some((key) => key !== 'station')
        ? readWeather(text, { ...said, normals: normalsOf(garden) })
        : first,
    [text, said, garden, first],
  );
  if (!bare || !first || !reading) return null;
  const isOneOfMany = !bare.ok && bare.error.kind === 'several stations';
  return { reading, first, stations: isOneOfMany ? bare.error.stations : [] };
}
