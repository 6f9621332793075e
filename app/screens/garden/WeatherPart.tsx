import { useState } from 'react';
import { Scroller } from '../../charts/Scroller';
import { Disclosure } from '../../controls/Disclosure';
import { PickOne } from '../../controls/PickOne';
import { dayOf } from '../../core/days';
import { normalsOfClimate } from '../../document/normalsOfClimate';
import { climateOf, climates, climateStanding } from '../../tables/climates';
import { monthWord } from '../../words/chartFormat';
import { twoFigures } from '../../words/figures';
import { editFailureSentence } from '../../words/messages';
import { PasteDialog } from '../PasteDialog';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { BringWeatherDialog } from './BringWeatherDialog';
import { DownloadPart } from './DownloadPart';
import { weatherHeading } from './wantedPart';
import { ThermometerDialog } from './ThermometerDialog';
import { WeatherFromTable } from './WeatherFromTable';
import { WeatherHeads } from './WeatherHeads';

const months = Array.from({ length: 12 }, (_, index) => String(index + 1));

/** The usual months, the days that were measured, and ways to better both. */
export function WeatherPart() {
  const garden = useGarden();
  const { units, dayField } = useShown();
  const editNormals = useMowings((state) => state.editNormals);
  const [refused, setRefused] = useState<string | null>(null);
  const [chosen, setChosen] = useState('');
  const [open, setOpen] = useState<'bring' | 'thermometer' | 'rain' | null>(null);
  const { normals, days, download } = garden.weather;
  const [first, last] = [days[0], days.at(-1)];
  const station = climateOf(chosen);
  const temperature = (celsius: number) =>
    Math.round(celsius / units.temperature.size + units.temperature.zero);
  return (
    <div className="form">
      <h3 id={weatherHeading} tabIndex={-1}>
        Weather
      </h3>
      <p>
        {first && last
          ? `Your record has ${days.length} days, from ${dayField(dayOf(first[0]))} to ${dayField(dayOf(last[0]))}. What it leaves out, and days after it, are imagined from the usual months.`
          : download && download.days.length > 0
            ? 'There is no daily record of a gauge’s own.'
            : 'There is no daily record: days gone by are imagined from the usual months unless rain is logged.'}
      </p>
      <p className="small soft">
        Usual months: {normals.place} ({normals.standing.replace(/\.$/, '')}).
      </p>
      <div className="button-row">
        <button
          data-doing="bring-weather"
          type="button"
          className="button"
          onClick={() => setOpen('bring')}
        >
          Bring measured weather…
        </button>
        <button
          data-doing="thermometer"
          type="button"
          className="button"
          onClick={() => setOpen('thermometer')}
        >
          Look at the thermometer…
        </button>
        <button
          data-doing="paste-rain"
          type="button"
          className="button"
          onClick={() => setOpen('rain')}
        >
          Rain from a spreadsheet…
        </button>
      </div>
      <DownloadPart />
      <Disclosure summary="Where this season’s weather is from" quiet>
        <WeatherFromTable />
      </Disclosure>
      <Disclosure summary="The months in use" quiet>
        <Scroller className="table-scroll" label="The months in use">
          <table>
            <thead>
              <tr>
                <th scope="col">Month</th>
                <WeatherHeads />
                <th scope="col" className="number">
                  Wet days
                </th>
              </tr>
            </thead>
            <tbody>
              {months.map((month, index) => (
                <tr key={month}>
                  <th scope="row">{monthWord(Number(month))}</th>
                  <td className="number">{temperature(normals.minimumCelsius[index] ?? 0)}</td>
                  <td className="number">{temperature(normals.maximumCelsius[index] ?? 0)}</td>
                  <td className="number">
                    {twoFigures((normals.rainMillimetres[index] ?? 0) / units.rain.size)}
                  </td>
                  <td className="number">{Math.round(normals.wetDays[index] ?? 0)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </Disclosure>
      <Disclosure summary="Take the months of another place" quiet>
        <PickOne
          label="Place with weather most like yours"
          value={chosen}
          groups={[
            { label: null, options: [{ value: '', label: 'Choose a place' }] },
            {
              label: 'All places',
              options: [...climates]
                .sort((one, other) => one.name.localeCompare(other.name))
                .map(({ id, name, country }) => ({ value: id, label: `${name}, ${country}` })),
            },
          ]}
          echo={station && climateStanding(station)}
          onPick={setChosen}
        />
        <div>
          <button
            type="button"
            className="button"
            disabled={!station}
            onClick={() => {
              if (!station) return;
              const result = editNormals(normalsOfClimate(station));
              setRefused(result.ok ? null : editFailureSentence(result.error));
              if (result.ok) setChosen('');
            }}
          >
            Take these months
          </button>
        </div>
        {refused && (
          <p role="alert" className="field-trouble">
            {refused}
          </p>
        )}
      </Disclosure>
      {open === 'bring' && <BringWeatherDialog onClose={() => setOpen(null)} />}
      {open === 'rain' && <PasteDialog kind="rain" onClose={() => setOpen(null)} />}
      {open === 'thermometer' && <ThermometerDialog onClose={() => setOpen(null)} />}
    </div>
  );
}
