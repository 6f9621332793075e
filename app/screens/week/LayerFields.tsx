import type { ReactNode } from 'react';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { materialFrom } from '../../document/materialValues';
import { amountHint } from '../../words/weekWords';
import { conditionChoices, placementChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';
import { sourceOfRow, type LayRow, type Lying, type ReadRow } from './layRows';
import { brownGroups, whatGroups } from './sources';

export interface LayerFieldsProps {
  readonly read: ReadRow;
  /** the mowing is fixed, or what is laid can be chosen */
  readonly mayChooseWhat: boolean;
  /** parts of a mowing may be said: "half", "the rest" */
  readonly mayBePart: boolean;
  /** empty fields are told of as well */
  readonly asked: boolean;
  /** said before what the amount comes to */
  readonly takenFor?: string;
  readonly lies: (lying: Lying) => string;
  readonly onChange: (changes: Partial<LayRow>) => void;
  /** between what and how much */
  readonly where?: ReactNode;
  /** beside how much */
  readonly slide?: ReactNode;
  /** a step more or less of it, by the arrow keys */
  readonly onStep?: (by: 1 | -1) => void;
  /** before the state */
  readonly when?: ReactNode;
}

/** A layer as it is typed: what, how much, in what state, how, and together with what. */
export function LayerFields(props: LayerFieldsProps) {
  const { read, asked, lies, onChange } = props;
  const { row, troubles } = read;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const from = sourceOfRow(row.what);
  const isCutGreen = from !== null && materialFrom(garden, from).row.materialClass === 'green';
  return (
    <>
      <div className="fields">
        {props.mayChooseWhat && (
          <PickOne
            label="What"
            value={row.what}
            groups={whatGroups(garden, today, (date) => shown.dayNear(date, today))}
            onPick={(what) => onChange({ what })}
          />
        )}
        {props.where}
        <QuantityField
          label="How much?"
          hint={amountHint(shown.system, props.mayBePart)}
          text={row.amount}
          onText={(amount) => onChange({ amount })}
          trouble={asked || row.amount.trim() !== '' ? troubles.amount : null}
          echo={read.main && `${props.takenFor ?? ''}${lies(read.main)}`}
          onStep={props.onStep}
        />
        {props.slide}
      </div>
      <div className="lay-choices">
        {props.when}
        {isCutGreen && (
          <ChoiceRow
            legend="In what state?"
            choices={conditionChoices}
            value={read.condition}
            onChoose={(condition) => onChange({ condition })}
          />
        )}
        <ChoiceRow
          legend="How?"
          choices={placementChoices}
          value={row.placement}
          onChoose={(placement) => onChange({ placement })}
        />
      </div>
      <div className="fields">
        <PickOne
          label="Together with"
          value={row.brown}
          groups={brownGroups(garden, row.what)}
          onPick={(brown) => onChange({ brown })}
        />
        {row.brown !== '' && (
          <QuantityField
            label="How much of that?"
            text={row.brownAmount}
            onText={(brownAmount) => onChange({ brownAmount })}
            trouble={asked || row.brownAmount.trim() !== '' ? troubles.brown : null}
            echo={read.brown && lies(read.brown)}
          />
        )}
      </div>
    </>
  );
}
