import { ChoiceRow } from '../../../controls/ChoiceRow';
import { PickOne } from '../../../controls/PickOne';
import { QuantityField } from '../../../controls/QuantityField';
import { materialFrom } from '../../../document/materialValues';
import type { Bed } from '../../../document/schema';
import { conditionChoices, placementChoices } from '../../choices';
import { useShown } from '../../shown';
import { useGarden } from '../../store';
import { useToday } from '../../useReadingContext';
import { sourceOfRow, type LayRow, type Lying, type ReadRow } from '../../week/layRows';
import { brownGroups, whatGroups } from '../../week/sources';
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
  const { troubles } = read;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const change = (changes: Partial<LayRow>) =>
    onChange({ ...alternative, row: { ...row, ...changes } });
  const from = sourceOfRow(row.what);
  const isCutGreen = from !== null && materialFrom(garden, from).row.materialClass === 'green';
  const lies = (lying: Lying): string =>
    `About ${shown.estimate(lying.millimetres, shown.units.depth)} thick as it is laid, ` +
    `${shown.estimate(lying.nitrogenGramsPerM2, shown.units.nitrogenPerArea)} of nitrogen.`;
  const quantity = read.draft?.parts[0]?.amount.quantity ?? null;
  return (
    <div className="form">
      <div className="fields">
        <PickOne
          label="What"
          value={row.what}
          groups={whatGroups(garden, (date) => shown.dayNear(date, today))}
          onPick={(what) => change({ what, condition: null })}
        />
        <QuantityField
          label="How much?"
          hint={
            shown.system === 'us' ? 'Say 1 bag, 5 buckets, 1/4 in' : 'Say 1 bag, 5 buckets, 6 mm'
          }
          text={row.amount}
          onText={(amount) => change({ amount })}
          trouble={row.amount.trim() === '' ? null : troubles.amount}
          echo={read.main && lies(read.main)}
        />
        <AmountSlider
          slide={amountSlide(quantity, garden.containers, bed, shown.system)}
          onText={(amount) => change({ amount })}
        />
      </div>
      <div className="lay-choices">
        <ChoiceRow
          legend="When?"
          choices={weeksLeft(garden, today).map((value) => ({ value, label: weeksWords[value] }))}
          value={weeks}
          onChoose={(chosen) => onChange({ ...alternative, weeks: chosen })}
        />
        {isCutGreen && (
          <ChoiceRow
            legend="In what state?"
            choices={conditionChoices}
            value={read.condition}
            onChoose={(condition) => change({ condition })}
          />
        )}
        <ChoiceRow
          legend="How?"
          choices={placementChoices}
          value={row.placement}
          onChoose={(placement) => change({ placement })}
        />
      </div>
      <div className="fields">
        <PickOne
          label="Together with"
          value={row.brown}
          groups={brownGroups(garden, row.what)}
          onPick={(brown) => change({ brown })}
        />
        {row.brown !== '' && (
          <QuantityField
            label="How much of that?"
            text={row.brownAmount}
            onText={(brownAmount) => change({ brownAmount })}
            trouble={row.brownAmount.trim() === '' ? null : troubles.brown}
            echo={read.brown && lies(read.brown)}
          />
        )}
      </div>
    </div>
  );
}
