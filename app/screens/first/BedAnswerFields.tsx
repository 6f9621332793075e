import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import type { Trouble } from '../../controls/Field';
import { NameField } from '../../controls/NameField';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { cropRows } from '../../tables/crops';
import { dayFailureSentence } from '../../words/messages';
import { cropGroups } from '../lists';
import type { Shown } from '../shown';
import type { BedAnswer } from './answers';

/** What the fields of one bed show, and where their answers go. */
export interface BedFieldsProps {
  readonly bed: BedAnswer;
  readonly shown: Shown;
  readonly onChange: (changes: Partial<BedAnswer>) => void;
}

/** Its name and size. */
export function BedFields(
  props: BedFieldsProps & {
    readonly example: string;
    readonly nameTrouble: Trouble | null;
    readonly areaTrouble: Trouble | null;
  },
) {
  const { bed, shown, onChange } = props;
  return (
    <>
      <NameField
        label="What do you call it?"
        name={bed.bedName}
        onName={(bedName) => onChange({ bedName })}
        trouble={props.nameTrouble}
      />
      <div className="one-question" data-goes-on>
        <QuantityField
          label={`How big is it? (${shown.units.area.symbol})`}
          hint={`Length times width will do: ${props.example}.`}
          text={bed.bedArea}
          onText={(bedArea) => onChange({ bedArea })}
          trouble={props.areaTrouble}
        />
      </div>
    </>
  );
}

/** What grows in it, how it came there, and since when. */
export function BedCropFields(props: BedFieldsProps & { readonly today: string }) {
  const { bed, shown, today, onChange } = props;
  return (
    <>
      <div className="one-question" data-goes-on>
        <PickOne
          label="Crop"
          value={bed.cropId}
          groups={cropGroups}
          onPick={(cropId) => {
            const row = cropRows.find((each) => each.id === cropId);
            onChange({ cropId, how: row?.clock === 'planting' ? 'planted' : 'sown' });
          }}
        />
      </div>
      <ChoiceRow
        legend="How did it start there?"
        choices={[
          { value: 'sown', label: 'Sown' },
          { value: 'planted', label: 'Planted out' },
        ]}
        value={bed.how}
        onChoose={(how) => onChange({ how })}
      />
      <div className="one-question" data-goes-on>
        <DateField
          year="lately"
          label="When?"
          hint="“3 weeks ago” will do; a day to come is fine too."
          day={bed.started}
          today={today}
          write={shown.dayField}
          sentence={dayFailureSentence}
          onDay={(started) => onChange({ started: started ?? today })}
        />
      </div>
    </>
  );
}
