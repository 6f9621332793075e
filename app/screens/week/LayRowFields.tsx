import { ChoiceRow } from '../../controls/ChoiceRow';
import { Field } from '../../controls/Field';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import type { Quantity } from '../../document/schema';
import type { PreviewBed } from '../../store/contract';
import { amountWords } from '../amountWords';
import { conditionChoices, placementChoices } from '../choices';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { BedEffect } from './BedEffect';
import { materialFrom } from '../../document/materialValues';
import { sourceOfRow, type LayRow, type Lying, type ReadRow } from './layRows';
import { brownGroups, whatGroups } from './sources';

export interface LayRowFieldsProps {
  readonly read: ReadRow;
  readonly number: number;
  /** the mowing is fixed, or what is laid can be chosen */
  readonly mayChooseWhat: boolean;
  readonly mayChooseBed: boolean;
  readonly asked: boolean;
  readonly effect: PreviewBed | undefined;
  readonly isWorking: boolean;
  readonly onChange: (changes: Partial<LayRow>) => void;
  readonly onRemove: (() => void) | null;
}

/** One bed's share: where, how much, in what state, with what, and how; its effect stands below. */
export function LayRowFields(props: LayRowFieldsProps) {
  const { read, asked, onChange } = props;
  const { row, bed, troubles } = read;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const bedResults = useMowings((state) => state.bedResults);
  const from = sourceOfRow(row.what);
  const isCutGreen = from !== null && materialFrom(garden, from).row.materialClass === 'green';
  const lies = (lying: Lying): string =>
    `${shown.estimate(lying.freshKilograms, shown.units.mass)}, ` +
    `${shown.estimate(lying.millimetres, shown.units.depth)} thick as it is laid, ` +
    `${shown.estimate(lying.nitrogenGramsPerM2, shown.units.nitrogenPerArea)} of nitrogen`;
  const quantityWords = (quantity: Quantity): string =>
    amountWords({ text: '', quantity, certainty: 'plain' }, garden, context, shown);
  return (
    <fieldset className="lay-row" data-bed={row.bedId || undefined}>
      <legend className="lay-legend">
        {bed ? bed.name : props.mayChooseBed ? `Bed ${props.number}` : 'What goes on'}
      </legend>
      {props.onRemove && (
        <button type="button" className="button-small lay-remove" onClick={props.onRemove}>
          Take this line away
        </button>
      )}
      <div className="fields">
        {props.mayChooseWhat && (
          <PickOne
            label="What"
            value={row.what}
            groups={whatGroups(garden, (date) => shown.dayNear(date, today))}
            onPick={(what) => onChange({ what })}
          />
        )}
        {props.mayChooseBed && (
          <Field label="On which bed?" trouble={asked ? troubles.bed : null}>
            {(links) => (
              <span className="pick">
                <select
                  {...links}
                  value={row.bedId}
                  onChange={(event) => onChange({ bedId: event.target.value })}
                >
                  <option value="">Choose a bed</option>
                  {garden.beds.map((each) => (
                    <option key={each.id} value={each.id}>
                      {each.name}
                      {bedResults[each.id] && ` (${bedResults[each.id]!.verdict.state})`}
                    </option>
                  ))}
                </select>
              </span>
            )}
          </Field>
        )}
        <QuantityField
          label="How much?"
          hint={
            shown.system === 'us'
              ? 'Say 1 bag, 5 buckets, 1/4 in, half, the rest'
              : 'Say 1 bag, 5 buckets, 6 mm, half, the rest'
          }
          text={row.amount}
          onText={(amount) => onChange({ amount })}
          trouble={asked || (row.amount.trim() !== '' && troubles.amount) ? troubles.amount : null}
          echo={
            read.main &&
            `${read.takenFor ? `Taken as ${quantityWords(read.takenFor)}. ` : ''}About ${lies(read.main)}.`
          }
        />
      </div>
      <div className="lay-choices">
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
            echo={read.brown && `About ${lies(read.brown)}.`}
          />
        )}
      </div>
      {read.draft && bed && props.effect ? (
        <BedEffect bed={props.effect} name={bed.name} />
      ) : (
        read.draft && props.isWorking && <p className="small soft">Reckoning the season…</p>
      )}
    </fieldset>
  );
}
