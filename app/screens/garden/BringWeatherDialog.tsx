import { useMemo, useRef, useState } from 'react';
import { useAnnounce, useHeardAtRest } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Dialog } from '../../controls/Dialog';
import { Disclosure } from '../../controls/Disclosure';
import { PickOne } from '../../controls/PickOne';
import { textOfBytes } from '../../document/weather/textOfBytes';
import { weatherCharacterLimit } from '../../document/weather/textLines';
import { columnsSeen } from '../../document/weather/tableLayout';
import { withWeather } from '../../document/weather/withWeather';
import type { Unclear, WeatherOptions } from '../../document/weather/weatherTypes';
import { editFailureSentence } from '../../words/messages';
import {
  notFound,
  unclearSentence,
  weatherFailureSentence,
  weatherMergedSentence,
  weatherMergeFailureSentence,
  weatherPreviewLines,
} from '../../words/weatherMessages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { ColumnPicks } from './ColumnPicks';
import { FewDays } from './FewDays';
import { LeftOut, leftOutInPreview } from './LeftOut';
import { useWeatherReading } from './useWeatherReading';

interface Brought {
  readonly name: string;
  readonly text: string;
}

/**
 * A file of measured days: what was understood of it is shown first, what only the person can know
 * is asked, and then all of it goes into the garden in one step.
 */
export function BringWeatherDialog({ onClose }: { readonly onClose: () => void }) {
  const garden = useGarden();
  const bringWeather = useMowings((state) => state.bringWeather);
  const announce = useAnnounce();
  const shown = useShown();
  const input = useRef<HTMLInputElement>(null);
  const asked = useRef<HTMLDivElement>(null);
  const [brought, setBrought] = useState<Brought | null>(null);
  const [said, setSaid] = useState<WeatherOptions>({});
  const [trouble, setTrouble] = useState<string | null>(null);
  const read = useWeatherReading(brought?.text ?? null, said, garden);
  const reading = read?.reading;
  const stations = read?.stations ?? [];
  const columns = useMemo(() => (brought ? columnsSeen(brought.text) : []), [brought]);
  const isTable = !reading?.ok || reading.value.preview.form === 'columns';
  const lacking = reading?.ok ? notFound(reading.value.preview) : [];
  const wouldBe = useMemo(
    () => (reading?.ok ? withWeather(garden, reading.value.days) : null),
    [garden, reading],
  );
  const questions = read?.first.ok ? read.first.value.preview.unclear : [];
  const open = reading?.ok ? reading.value.preview.unclear : [];
  const lines = reading?.ok
    ? weatherPreviewLines(reading.value.preview, shown.dayField, leftOutInPreview)
    : [];
  // what would come of it is heard first, then how many days, gaps and refusals: columns and lines
  // one by one can be read at leisure
  useHeardAtRest(
    [
      ...(wouldBe?.ok ? [weatherMergedSentence(wouldBe.value, garden.garden.name, false)] : []),
      ...lines.filter((line) => !line.startsWith(' ')).map((line) => line.replace(/:$/, '.')),
    ].join(' '),
    'weather file',
  );

  const take = (file: File) => {
    setTrouble(null);
    setSaid({});
    setBrought(null);
    // a character takes four bytes at most
    if (file.size > 4 * weatherCharacterLimit)
      return setTrouble(
        weatherFailureSentence(
          { kind: 'too large', limit: weatherCharacterLimit, unit: 'characters' },
          'window',
        ),
      );
    file.arrayBuffer().then(
      (bytes) => setBrought({ name: file.name, text: textOfBytes(new Uint8Array(bytes)) }),
      () =>
        setTrouble(
          `“${file.name}” could not be read. Check that it is still there and may be opened, or copy it elsewhere first.`,
        ),
    );
  };

  const keep = () => {
    if (!reading?.ok) return;
    if (open.length > 0) {
      asked.current?.querySelector<HTMLElement>('input, select')?.focus();
      return setTrouble('Answer what is asked above first.');
    }
    if (lacking.length === 3)
      return setTrouble('Neither temperatures nor rain were found. Pick their columns above.');
    const result = bringWeather(reading.value.days);
    if (result.ok) {
      announce(weatherMergedSentence(result.value, garden.garden.name, true));
      onClose();
    } else
      setTrouble(
        result.error.kind === 'too many days'
          ? weatherMergeFailureSentence(result.error)
          : editFailureSentence(result.error),
      );
  };

  return (
    <Dialog title="Bring measured weather" wide onClose={onClose}>
      <p>
        A table with one line a day (date, lowest, highest, rain), as a weather station or a
        spreadsheet saves it, or a station file of the public daily network. Nothing is kept before
        you have seen what was understood.
      </p>
      <div className="button-row">
        <button type="button" className="button" onClick={() => input.current?.click()}>
          Choose a weather file…
        </button>
        {brought && <span>{brought.name}</span>}
      </div>
      <input
        ref={input}
        type="file"
        hidden
        aria-label="A weather file"
        accept=".csv,.tsv,.txt,.dly,text/csv,text/plain"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (!file) return;
          take(file);
        }}
      />
      {reading && !reading.ok && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {weatherFailureSentence(reading.error, 'window')}
        </p>
      )}
      {(stations.length > 0 || questions.length > 0) && (
        <div ref={asked} className="form">
          {stations.length > 0 && (
            <PickOne
              label="Which station"
              value={said.station ?? ''}
              groups={[
                {
                  label: null,
                  options: [
                    { value: '', label: 'Choose a station' },
                    ...stations.map((name) => ({ value: name, label: name })),
                  ],
                },
              ]}
              onPick={(picked) => {
                const { station: _before, ...rest } = said;
                setSaid(picked === '' ? rest : { ...rest, station: picked });
              }}
            />
          )}
          {questions.map((unclear) => (
            <Question key={unclear.kind} unclear={unclear} said={said} onSay={setSaid} />
          ))}
        </div>
      )}
      {brought && isTable && stations.length === 0 && columns.length > 1 && (
        <Disclosure summary="Which column is which" quiet open={!reading?.ok || lacking.length > 0}>
          <ColumnPicks
            columns={columns}
            understood={reading?.ok ? reading.value.preview.understood : []}
            said={said.columns ?? {}}
            onSay={(picked) => setSaid({ ...said, columns: picked })}
          />
        </Disclosure>
      )}
      {reading?.ok && (
        <div className="preview">
          {lines.map((line, index) => (
            <p key={`${index} ${line}`} className={line.startsWith('  ') ? 'preview-inner' : ''}>
              {line.trim()}
            </p>
          ))}
        </div>
      )}
      {reading?.ok && <LeftOut preview={reading.value.preview} />}
      {reading?.ok && <FewDays days={reading.value.days} />}
      {wouldBe?.ok && <p>{weatherMergedSentence(wouldBe.value, garden.garden.name, false)}</p>}
      {trouble && (
        <p role="alert" className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {trouble}
        </p>
      )}
      <div className="button-row">
        {reading?.ok && (
          <button type="button" className="button-main" onClick={keep}>
            Bring these days in
          </button>
        )}
        <button type="button" className="button" onClick={onClose}>
          Cancel
        </button>
      </div>
    </Dialog>
  );
}

/** One thing that the file does not say. */
function Question(props: {
  readonly unclear: Unclear;
  readonly said: WeatherOptions;
  readonly onSay: (said: WeatherOptions) => void;
}) {
  const { unclear, said, onSay } = props;
  const legend = unclearSentence(unclear);
  switch (unclear.kind) {
    case 'date order':
      return (
        <ChoiceRow
          legend={legend}
          choices={[
            { value: 'dmy', label: 'day first' },
            { value: 'mdy', label: 'month first' },
            { value: 'ymd', label: 'year first' },
          ]}
          value={said.dates ?? null}
          onChoose={(dates) => onSay({ ...said, dates })}
        />
      );
    case 'temperature unit':
      return (
        <ChoiceRow
          legend={legend}
          choices={[
            { value: 'C', label: '°C' },
            { value: 'F', label: '°F' },
            { value: 'tenths of C', label: 'tenths of °C' },
          ]}
          value={said.temperature ?? null}
          onChoose={(temperature) => onSay({ ...said, temperature })}
        />
      );
    case 'rain unit':
      return (
        <ChoiceRow
          legend={legend}
          choices={[
            { value: 'mm', label: 'mm' },
            { value: 'in', label: 'inches' },
            { value: 'tenths of mm', label: 'tenths of mm' },
          ]}
          value={said.rain ?? null}
          onChoose={(rain) => onSay({ ...said, rain })}
        />
      );
  }
}
