import { useState } from 'react';
import type { Trouble } from '../../controls/Field';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Field } from '../../controls/Field';
import { climateOf, climates, climateStanding } from '../../tables/climates';
import { monthWord } from '../../words/chartFormat';
import type { AnswerKey, Answers } from './answers';

const byCountry = Object.entries(
  climates.reduce<Record<string, { id: string; name: string }[]>>((groups, climate) => {
    (groups[climate.country] ??= []).push({ id: climate.id, name: climate.name });
    return groups;
  }, {}),
).sort(([one], [other]) => one.localeCompare(other));

/** The climate of the guided start: a station of the list with its standing, or twelve months typed. */
export function ClimateAnswerFields(props: {
  readonly answers: Answers;
  readonly troubles: Partial<Record<AnswerKey, Trouble>>;
  readonly onChange: (changes: Partial<Answers>) => void;
}) {
  const { answers, troubles, onChange } = props;
  const station = climateOf(answers.stationId);
  const [guessed] = useState(answers.stationId);
  return (
    <>
      <ChoiceRow
        legend="Where do the usual months come from?"
        choices={[
          { value: 'station', label: 'A place from the list' },
          { value: 'typed', label: 'I type them' },
        ]}
        value={answers.climate}
        onChoose={(climate) => onChange({ climate })}
      />
      {answers.climate === 'station' ? (
        <div className="one-question" data-goes-on>
          <Field
            label="Place with weather most like yours"
            hint={
              answers.stationId !== '' && answers.stationId === guessed
                ? 'Guessed from this computer’s time zone. Nearness counts less than the same sort of summer and winter.'
                : 'Nearness counts less than the same sort of summer and winter.'
            }
            trouble={troubles.stationId}
            echo={station && climateStanding(station)}
          >
            {(links) => (
              <span className="pick">
                <select
                  {...links}
                  value={answers.stationId}
                  onChange={(event) => onChange({ stationId: event.target.value })}
                >
                  <option value="">Choose a place</option>
                  {byCountry.map(([country, places]) => (
                    <optgroup key={country} label={country}>
                      {places.map((place) => (
                        <option key={place.id} value={place.id}>
                          {place.name}
                        </option>
                      ))}
                    </optgroup>
                  ))}
                </select>
              </span>
            )}
          </Field>
        </div>
      ) : (
        <TypedMonths {...props} />
      )}
    </>
  );
}

const rows = [
  { key: 'lowest', words: 'Usual lowest of a day' },
  { key: 'highest', words: 'Usual highest of a day' },
  { key: 'rain', words: 'Rain of the month' },
] as const;

/** Twelve months of means. A line of twelve numbers pasted into one cell fills the row. */
function TypedMonths({
  answers,
  troubles,
  onChange,
}: {
  readonly answers: Answers;
  readonly troubles: Partial<Record<AnswerKey, Trouble>>;
  readonly onChange: (changes: Partial<Answers>) => void;
}) {
  const isUs = answers.units === 'us';
  const unitOf = (key: (typeof rows)[number]['key']) =>
    key === 'rain' ? (isUs ? 'in' : 'mm') : isUs ? '°F' : '°C';
  const put = (key: (typeof rows)[number]['key'], at: number, text: string) => {
    const numbers = text.trim().split(/[\s;]+/);
    const next = [...answers[key]];
    if (numbers.length > 1)
      numbers.forEach((number, index) => {
        if (at + index < 12) next[at + index] = number;
      });
    else next[at] = text;
    onChange({ [key]: next });
  };
  return (
    <>
      <div className="fields">
        <Field label="Name of the place">
          {(links) => (
            <input
              {...links}
              type="text"
              maxLength={120}
              value={answers.place}
              onChange={(event) => onChange({ place: event.target.value })}
            />
          )}
        </Field>
        <Field
          label="Latitude (degrees)"
          trouble={troubles.latitude}
          onSuggestion={(latitude) => onChange({ latitude })}
        >
          {(links) => (
            <input
              {...links}
              type="text"
              maxLength={12}
              value={answers.latitude}
              onChange={(event) => onChange({ latitude: event.target.value })}
            />
          )}
        </Field>
        <ChoiceRow
          legend="Side of the equator"
          choices={[
            { value: 'north', label: 'North' },
            { value: 'south', label: 'South' },
          ]}
          value={answers.side}
          onChoose={(side) => onChange({ side })}
        />
      </div>
      {troubles.months && (
        <p id="months-trouble" role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {troubles.months.sentence}
        </p>
      )}
      <div className="table-scroll">
        <table className="months">
          <caption className="small soft">
            Twelve numbers copied from elsewhere can be pasted into the January cell of a column.
            Wet days are reckoned from the rain.
          </caption>
          <thead>
            <tr>
              <th scope="col">Month</th>
              {rows.map((row) => (
                <th key={row.key} scope="col">
                  {row.words} ({unitOf(row.key)})
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: 12 }, (_, month) => (
              <tr key={month}>
                <th scope="row">{monthWord(month + 1)}</th>
                {rows.map((row) => (
                  <td key={row.key}>
                    <input
                      type="text"
                      maxLength={200}
                      aria-label={`${monthWord(month + 1)}: ${row.words} (${unitOf(row.key)})`}
                      aria-invalid={
                        troubles.months && answers[row.key][month] === '' ? true : undefined
                      }
                      aria-describedby={troubles.months ? 'months-trouble' : undefined}
                      value={answers[row.key][month]}
                      onChange={(event) => put(row.key, month, event.target.value)}
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}
