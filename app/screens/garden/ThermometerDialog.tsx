import { useState } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { DialogEnd } from '../../controls/DialogEnd';
import { MeasureField } from '../../controls/MeasureField';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';

/** The lowest and highest of a day on one's own thermometer; they outrank the record of that day. */
export function ThermometerDialog({ onClose }: { readonly onClose: () => void }) {
  const garden = useGarden();
  const shown = useShown();
  const today = shown.iso(useToday());
  const readThermometer = useMowings((state) => state.readThermometer);
  const announce = useAnnounce();
  const [date, setDate] = useState(today);
  const known = garden.weather.thermometer?.find(([day]) => day === date);
  const [lowest, setLowest] = useState<number | null>(known?.[1] ?? null);
  const [highest, setHighest] = useState<number | null>(known?.[2] ?? null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const keep = () => {
    if (lowest === null && highest === null && !known)
      return setTrouble('Give at least one of the two temperatures.');
    if (lowest !== null && highest !== null && lowest > highest)
      return setTrouble('The lowest is above the highest. Are they the wrong way round?');
    const result = readThermometer({ date, lowestCelsius: lowest, highestCelsius: highest });
    if (!result.ok) return setTrouble(editFailureSentence(result.error));
    announce('Kept. The season is reckoned again.');
    onClose();
  };
  return (
    <Dialog title="A look at the thermometer" onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <p className="small soft">It counts for that day in place of the record.</p>
        <DateField
          label="When?"
          day={date}
          today={today}
          latest={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(day) => setDate(day ?? today)}
        />
        <div className="fields">
          <MeasureField
            label={`Lowest (${shown.units.temperature.symbol})`}
            measure="temperature"
            units={shown.system}
            value={lowest}
            mayBeEmpty
            onCommit={setLowest}
          />
          <MeasureField
            label={`Highest (${shown.units.temperature.symbol})`}
            measure="temperature"
            units={shown.system}
            value={highest}
            mayBeEmpty
            onCommit={setHighest}
          />
        </div>
        <DialogEnd refused={trouble} keep="Keep it" onCancel={onClose} />
      </form>
    </Dialog>
  );
}
