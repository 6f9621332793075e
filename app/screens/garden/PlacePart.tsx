import { useState } from 'react';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Disclosure } from '../../controls/Disclosure';
import { PickOne } from '../../controls/PickOne';
import { SettledQuantityField } from '../../controls/QuantityField';
import { TextField } from '../../controls/TextField';
import { Tick } from '../../controls/Tick';
import { climateOf, climates, climateStanding } from '../../tables/climates';
import { monthWord } from '../../words/chartFormat';
import { twoFigures } from '../../words/figures';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { normalsOfClimate } from './normalsOfClimate';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';

const months = Array.from({ length: 12 }, (_, index) => String(index + 1));

/** Name, place, climate, day, units, and what stands near by. */
export function PlacePart() {
  const garden = useGarden();
  const { name, place, latitudeDegrees, today, seasonStartMonth, dogs, ownWell } = garden.garden;
  const shown = useShown();
  const computerToday = useMowings((state) => state.about?.today ?? '');
  const editGarden = useMowings((state) => state.editGarden);
  const setUnits = useMowings((state) => state.setUnits);
  const side = latitudeDegrees < 0 ? 'south' : 'north';
  return (
    <div className="sheet">
      <div className="fields">
        <TextField
          label="Name of the garden"
          value={name}
          onCommit={(next) => editGarden({ name: next })}
        />
        <TextField
          label="Place"
          value={place}
          mayBeEmpty
          maxLength={120}
          onCommit={(next) => editGarden({ place: next })}
        />
        <SettledQuantityField
          label="Latitude (degrees)"
          hint="As maps show it; it gives the length of the days."
          value={Math.abs(latitudeDegrees)}
          show={(value) => String(value)}
          read={(text) => {
            const value = Number(text.replace('°', '').replace(',', '.').trim());
            return text.trim() !== '' && value >= 0 && value <= 66
              ? { value }
              : {
                  trouble: {
                    sentence: 'The latitude is a number of degrees from 0 to 66.',
                    suggestion: String(Math.abs(latitudeDegrees)),
                  },
                };
          }}
          onCommit={(value) =>
            editGarden({ latitudeDegrees: (side === 'south' ? -1 : 1) * (value ?? 0) })
          }
        />
        <ChoiceRow
          legend="Side of the equator"
          choices={[
            { value: 'north', label: 'North' },
            { value: 'south', label: 'South' },
          ]}
          value={side}
          onChoose={(next) =>
            editGarden({
              latitudeDegrees: (next === 'south' ? -1 : 1) * Math.abs(latitudeDegrees),
            })
          }
        />
      </div>
      <div className="fields">
        <ChoiceRow
          legend="Units on the screen"
          choices={[
            { value: 'metric', label: 'metres, kilograms, litres' },
            { value: 'us', label: 'feet, pounds, gallons' },
          ]}
          value={shown.system}
          onChoose={setUnits}
        />
        <PickOne
          label="The season begins in"
          value={String(seasonStartMonth)}
          groups={[
            {
              label: null,
              options: months.map((value) => ({ value, label: monthWord(Number(value)) })),
            },
          ]}
          onPick={(month) => editGarden({ seasonStartMonth: Number(month) })}
        />
        <DateField
          label="Today"
          hint="Empty: the computer’s own day. Set it to look at another day."
          day={today}
          today={computerToday}
          mayBeEmpty
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => editGarden({ today: day })}
        />
      </div>
      <div>
        <Tick
          label="Dogs run here"
          checked={dogs}
          onChange={(checked) => editGarden({ dogs: checked })}
        />
        <Tick
          label="We drink from our own well"
          checked={ownWell}
          onChange={(checked) => editGarden({ ownWell: checked })}
        />
      </div>
      <ClimatePart />
    </div>
  );
}

function ClimatePart() {
  const garden = useGarden();
  const { units } = useShown();
  const editNormals = useMowings((state) => state.editNormals);
  const [refused, setRefused] = useState<string | null>(null);
  const [chosen, setChosen] = useState('');
  const { normals, days } = garden.weather;
  const station = climateOf(chosen);
  const temperature = (celsius: number) =>
    Math.round(celsius / units.temperature.size + units.temperature.zero);
  return (
    <div className="form">
      <h3>Weather</h3>
      <p>
        Usual months: {normals.place} ({normals.standing.replace(/\.$/, '')}).{' '}
        {days.length > 0
          ? `A daily record of ${days.length} days goes with this garden.`
          : 'There is no daily record: days gone by are imagined from the months unless rain is logged.'}
      </p>
      <Disclosure summary="The months in use" quiet>
        <div className="table-scroll">
          <table>
            <thead>
              <tr>
                <th scope="col">Month</th>
                <th scope="col" className="number">
                  Lowest ({units.temperature.symbol})
                </th>
                <th scope="col" className="number">
                  Highest ({units.temperature.symbol})
                </th>
                <th scope="col" className="number">
                  Rain ({units.rain.symbol})
                </th>
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
        </div>
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
    </div>
  );
}
