import { ChoiceRow } from '../../../controls/ChoiceRow';
import type { Bed } from '../../../document/schema';
import { useShown } from '../../shown';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { LayerFields } from '../../week/LayerFields';
import type { LayRow, Lying, ReadRow } from '../../week/layRows';
import { weeksLeft, weeksWords, type Alternative } from './alternatives';
import { AmountSlider } from './AmountSlider';
import { amountSlide } from './amountSlide';

/** One alternative: what, how much, when, in what state, alone or with leaves. */
export function AlternativeFields(props: {
  readonly bed: Bed;
  readonly alternative: Alternative;
  readonly read: ReadRow;
  readonly onChange: (changed: Alternative) => void;
}) {
  const { bed, alternative, read, onChange } = props;
  const { row, weeks } = alternative;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const change = (changes: Partial<LayRow>) =>
    onChange({ ...alternative, row: { ...row, ...changes } });
  const lies = (lying: Lying): string =>
    `About ${shown.estimate(lying.millimetres, shown.units.depth)} thick as it is laid, ` +
    `${shown.estimate(lying.nitrogenGramsPerM2, shown.units.nitrogenPerArea)} of nitrogen.`;
  const quantity = read.draft?.parts[0]?.amount.quantity ?? null;
  const slide = amountSlide(quantity, garden.containers, bed, shown.system);
  return (
    <div className="form">
      <LayerFields
        read={read}
        mayChooseWhat
        mayBePart={false}
        asked={false}
        lies={lies}
        onChange={(changes) =>
          change(changes.what === undefined ? changes : { ...changes, condition: null })
        }
        slide={<AmountSlider slide={slide} onText={(amount) => change({ amount })} />}
        onStep={(by) => {
          const at = Math.min(slide.most, Math.max(1, slide.at + by));
          change({ amount: slide.textOf(at) });
        }}
        when={
          <ChoiceRow
            legend="When?"
            choices={weeksLeft(garden, today).map((value) => ({
              value,
              label: weeksWords[value],
            }))}
            value={weeks}
            onChoose={(chosen) => onChange({ ...alternative, weeks: chosen })}
          />
        }
      />
    </div>
  );
}
