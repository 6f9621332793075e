import { Field } from '../../controls/Field';
import type { Quantity } from '../../document/schema';
import type { PreviewBed } from '../../store/contract';
import { amountWords } from '../amountWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useReadingContext } from '../useReadingContext';
import { BedEffect } from './BedEffect';
import { LayerFields } from './LayerFields';
import type { LayRow, Lying, ReadRow } from './layRows';

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
  const context = useReadingContext();
  const bedResults = useMowings((state) => state.bedResults);
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
          Drop this line
        </button>
      )}
      <LayerFields
        read={read}
        mayChooseWhat={props.mayChooseWhat}
        mayBePart
        asked={asked}
        takenFor={read.takenFor ? `Taken as ${quantityWords(read.takenFor)}. ` : ''}
        lies={(lying) => `About ${lies(lying)}.`}
        onChange={onChange}
        where={
          props.mayChooseBed && (
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
          )
        }
      />
      {read.draft && bed && props.effect ? (
        <BedEffect bed={props.effect} name={bed.name} />
      ) : (
        read.draft && props.isWorking && <p className="small soft">Reckoning the season…</p>
      )}
    </fieldset>
  );
}
