import { useState } from 'react';
import { readMeasure } from '../../../amounts/readMeasure';
import { amountTrouble } from '../../../controls/amountTrouble';
import { useAnnounce } from '../../../controls/Announcer';
import { QuantityField } from '../../../controls/QuantityField';
import { textFromDay } from '../../../core/days';
import { resizeBed } from '../../../document/bedChanges/resizeBed';
import type { Bed } from '../../../document/schema';
import type { BedResults } from '../../../store/contract';
import { bedStepNames } from '../../../words/bedChangeWords';
import { useShown } from '../../shown';
import { useGarden, useMowings } from '../../store';
import { useToday } from '../../useReadingContext';
import { ChangeDialog } from './ChangeDialog';
import { useBedChange, type Refused } from './useBedChange';

/** Another size from a day on; what was done before stays on the size it was done on. */
export function ResizeDialog({
  bed,
  onClose,
}: {
  readonly bed: Bed;
  readonly onClose: () => void;
}) {
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const results = useMowings((state) => state.bedResults[bed.id]);
  const announce = useAnnounce();
  const keepChange = useBedChange();
  const [size, setSize] = useState('');
  const [from, setFrom] = useState(today);
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<Refused | null>(null);
  const reading = readMeasure(size, 'area', {
    units: shown.system,
    containers: [],
    bareNumber: true,
  });
  const keep = () => {
    setAsked(true);
    if (!reading.ok) return;
    const sides = reading.value.sides;
    const why = keepChange(
      bedStepNames.resize(bed.name),
      resizeBed(
        garden,
        bed.id,
        from,
        {
          areaM2: reading.value.value,
          sides: sides ? [Math.max(...sides), Math.min(...sides)] : null,
        },
        today,
      ),
    );
    if (why !== null) return setRefused(why);
    announce(`${bed.name} has its new size. Undo takes it back.`);
    onClose();
  };
  return (
    <ChangeDialog
      title={`Another size for ${bed.name}`}
      dayLabel="From when?"
      day={from}
      today={today}
      onDay={(day) => {
        setFrom(day);
        setRefused(null);
      }}
      refused={refused}
      keep="Change its size"
      onKeep={keep}
      onClose={onClose}
    >
      <p>
        It is {shown.estimate(bed.areaM2, shown.units.area)} now. What you wrote down so far stays
        on that size.
      </p>
      <QuantityField
        label={`New size (${shown.units.area.symbol})`}
        hint={`Length times width will do: ${shown.system === 'us' ? '4 x 16 ft' : '1.2 x 5 m'}.`}
        text={size}
        onText={(text) => {
          setSize(text);
          setRefused(null);
        }}
        echo={
          reading.ok
            ? crossing(bed, reading.value.value, results, (grams) =>
                shown.estimate(grams, shown.units.nitrogen),
              )
            : undefined
        }
        trouble={asked ? amountTrouble(reading) : null}
      />
    </ChangeDialog>
  );
}

/** What a square metre holds stays; what crosses the edge with the ground, in grams. */
function crossing(
  bed: Bed,
  areaM2: number,
  results: BedResults | undefined,
  grams: (grams: number) => string,
): string | undefined {
  const at = results && results.season.today - results.season.firstDay;
  const ready = results && at !== undefined ? (results.season.pools.mineralTop[at] ?? null) : null;
  const per = 'Each square metre keeps what it holds.';
  if (ready === null || Math.abs(areaM2 - bed.areaM2) < 1e-9) return per;
  return areaM2 < bed.areaM2
    ? `${per} About ${grams(ready * (bed.areaM2 - areaM2))} of nitrogen ready in the soil leaves with the ground you give up.`
    : `${per} The ground you add is taken to be like the rest, with about ${grams(ready * (areaM2 - bed.areaM2))} of nitrogen ready in it. If it was a bed, join the two instead.`;
}
