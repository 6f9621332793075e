import { useState } from 'react';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { PickOne } from '../../controls/PickOne';
import { SettledQuantityField } from '../../controls/QuantityField';
import { TextField } from '../../controls/TextField';
import { Tick } from '../../controls/Tick';
import { dayOf, textFromDay } from '../../core/days';
import { monthWord } from '../../words/chartFormat';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { WeatherPart } from './WeatherPart';

/** No garden is looked at before or long after these: a slip of the pen, not a wish. */
const firstToday = '1900-01-01';
const daysAhead = 366;

const months = Array.from({ length: 12 }, (_, index) => String(index + 1));

/** Name, place, climate, day, units, and what stands near by. */
export function PlacePart() {
  const garden = useGarden();
  const { name, place, latitudeDegrees, today, seasonStartMonth, dogs, ownWell } = garden.garden;
  const shown = useShown();
  const computerToday = useMowings((state) => state.about?.today ?? '');
  const editGarden = useMowings((state) => state.editGarden);
  const setUnits = useMowings((state) => state.setUnits);
  const [refused, setRefused] = useState<string | null>(null);
  const side = latitudeDegrees < 0 ? 'south' : 'north';
  const latest = computerToday === '' ? undefined : textFromDay(dayOf(computerToday) + daysAhead);
  return (
    <div className="sheet">
      <p className="only-printed">
        {place === '' ? '' : `${place}, `}
        {Math.abs(latitudeDegrees)}° {side}; the season begins in {monthWord(seasonStartMonth)}
        {dogs && '; dogs run here'}
        {ownWell && '; drinking water from an own well'}.
      </p>
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
      </div>
      <div className="fields">
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
          earliest={firstToday}
          latest={latest}
          mayBeEmpty
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => {
            const result = editGarden({ today: day });
            setRefused(result.ok ? null : editFailureSentence(result.error));
          }}
        />
      </div>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
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
      <WeatherPart />
    </div>
  );
}
