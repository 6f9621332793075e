import { useShown } from '../shown';

/** Heads of the columns for the coldest, the warmest and the rain, in the units that are read. */
export function WeatherHeads() {
  const { temperature, rain } = useShown().units;
  return (
    <>
      <th scope="col" className="number">
        Lowest ({temperature.symbol})
      </th>
      <th scope="col" className="number">
        Highest ({temperature.symbol})
      </th>
      <th scope="col" className="number">
        Rain ({rain.symbol})
      </th>
    </>
  );
}
