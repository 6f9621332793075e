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
  const readOn = (wanted: string) =>
    garden.weather.thermometer?.find(([day]) => day === wanted) ?? null;
  const known = readOn(date);
  const [lowest, setLowest] = useState<number | null>(known?.[1] ?? null);
  const [highest, setHighest] = useState<number | null>(known?.[2] ?? null);
  // what is known of another day is shown there, and never wiped out unseen; what was typed stays
  const goTo = (wanted: string) => {
    const isUntouched = lowest === (known?.[1] ?? null) && highest === (known?.[2] ?? null);
    const [, low, high] = readOn(wanted) ?? [wanted, null, null];
    setDate(wanted);
    setLowest(isUntouched ? low : (lowest ?? low));
    setHighest(isUntouched ? high : (highest ?? high));
  };
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
          onDay={(day) => goTo(day ?? today)}
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
