import { success } from '../../core/result';
import { withThermometer, withWeather } from '../../document/weather/withWeather';
import { stepNames } from '../../words/stepNames';
import type { GardenActions } from '../contract';
import { editFor, openGarden, type ActionTools } from './changing';

type WeatherActions = Pick<GardenActions, 'bringWeather' | 'readThermometer'>;

/** Measured weather: a whole record, or a look at one's own thermometer. */
export function weatherActions(tools: ActionTools): WeatherActions {
  return {
    bringWeather: (days) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const merged = withWeather(open.value, days);
      if (!merged.ok) return merged;
      const { garden: after, ...counts } = merged.value;
      if (after.weather === open.value.weather) return success(counts);
      return editFor(
        tools,
        stepNames.bringWeather(counts.added + counts.changed),
        (garden) => {
          garden.weather = after.weather;
        },
        counts,
      );
    },

    readThermometer: (reading) => {
      const open = openGarden(tools);
      if (!open.ok) return open;
      const after = withThermometer(open.value, reading);
      return tools.edit(stepNames.readThermometer(), (garden) => {
        garden.weather = after.weather;
      });
    },
  };
}
