import { useState } from 'react';
import { leadingNumber } from '../../amounts/plainNumber';
import { readDayCount } from '../../amounts/readDayCount';
import { MeasureField } from '../../controls/MeasureField';
import { SettledQuantityField } from '../../controls/QuantityField';
import { TextField } from '../../controls/TextField';
import type { ShownUnit } from '../../core/shownUnit';
import type { OwnCrop } from '../../document/schema';
import type { CropRow, Row } from '../../tables/shapes';
import { twoFigures } from '../../words/figures';
import { editFailureSentence } from '../../words/messages';
import { inTableWords } from '../../words/tableWords';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { DeleteOwnRow } from './DeleteOwnRow';
import { GoToUses } from './GoToUses';
import { cropUsesWords } from './usedBy';
import { placesOfCrop } from './usedWhere';

type OwnNumber = Exclude<keyof OwnCrop, 'id' | 'name' | 'basedOn' | 'note'>;

/** The number of an entry in a unit, which may stand after it; NaN where it is in no such unit. */
function numberIn(text: string, symbol: string): number {
  const typed = leadingNumber(text);
  const bare = (unit: string): string =>
    unit
      .toLowerCase()
      .replace(/²/g, '2')
      .replace(/\bper\b/g, '/')
      .replace(/[\s,^]/g, '');
  return typed && (typed.rest === '' || bare(typed.rest) === bare(symbol)) ? typed.value : NaN;
}

/** A whole or broken number within bounds; empty leaves the table's. */
function NumberField(props: {
  readonly label: string;
  /** null: days */
  readonly unit: ShownUnit | null;
  readonly value: number | undefined;
  readonly otherwise: Row;
  readonly low: number;
  readonly high: number;
  readonly onCommit: (value: number | null) => void;
}) {
  const { unit } = props;
  const size = unit?.size ?? 1;
  const { typical, standing } = props.otherwise;
  const low = props.low / size;
  const high = props.high / size;
  return (
    <SettledQuantityField
      label={unit ? `${props.label} (${unit.symbol})` : props.label}
      value={props.value ?? null}
      mayBeEmpty
      echo={
        props.value === undefined ? inTableWords(twoFigures(typical / size), standing) : undefined
      }
      show={(value) => String(Number((value / size).toPrecision(4)))}
      read={(text) => {
        const value = unit ? numberIn(text, unit.symbol) : (readDayCount(text) ?? NaN);
        return value >= low && value <= high
          ? { value: value * size }
          : {
              trouble: {
                sentence: `It is a number from ${twoFigures(low)} to ${twoFigures(high)}.`,
                suggestion: String(Number((typical / size).toPrecision(2))),
              },
            };
      }}
      onCommit={props.onCommit}
    />
  );
}

/** A crop of one's own: a variety that is earlier, bigger or hungrier than the table's row. */
export function OwnCropFields(props: {
  readonly own: OwnCrop;
  readonly row: CropRow;
  readonly onGone: () => void;
}) {
  const { own, row } = props;
  const garden = useGarden();
  const shown = useShown();
  const { nitrogenPerArea, yieldPerArea } = shown.units;
  const [refused, setRefused] = useState<string | null>(null);
  const editCrop = useMowings((state) => state.editCrop);
  const deleteCrop = useMowings((state) => state.deleteCrop);
  const change = (changes: Partial<Record<keyof OwnCrop, unknown>>) => {
    const result = editCrop(own.id, changes as Partial<OwnCrop>);
    setRefused(result.ok ? null : editFailureSentence(result.error));
  };
  const number = (key: OwnNumber) => (value: number | null) =>
    change({ [key]: value ?? undefined });
  return (
    <div className="own-row">
      <p>
        Rests on {row.name.charAt(0).toLowerCase() + row.name.slice(1)}.{' '}
        {cropUsesWords(garden, own.id)} Choose it where something is sown or planted.
      </p>
      <GoToUses places={placesOfCrop(garden, own.id)} entry={['planting', 'plantings']} />
      <div className="fields">
        <TextField label="Name" value={own.name} onCommit={(name) => change({ name })} />
        <NumberField
          label="Nitrogen it takes up"
          unit={nitrogenPerArea}
          value={own.uptakeGramsPerM2}
          otherwise={row.uptake}
          low={0.1}
          high={100}
          onCommit={number('uptakeGramsPerM2')}
        />
        <NumberField
          label="A good pick"
          unit={yieldPerArea}
          value={own.goodYieldKilogramsPerM2}
          otherwise={row.goodYield}
          low={0.01}
          high={100}
          onCommit={number('goodYieldKilogramsPerM2')}
        />
        <NumberField
          label="Days to the first pick"
          unit={null}
          value={own.firstHarvestDays}
          otherwise={row.firstHarvestDays}
          low={1}
          high={2000}
          onCommit={number('firstHarvestDays')}
        />
        <NumberField
          label="Days it stands"
          unit={null}
          value={own.usualDays}
          otherwise={row.usualDays}
          low={1}
          high={2000}
          onCommit={number('usualDays')}
        />
        <MeasureField
          label="Roots reach down"
          measure="depth"
          units={shown.system}
          value={own.rootDepthCentimetres === undefined ? null : own.rootDepthCentimetres * 10}
          mayBeEmpty
          echo={
            own.rootDepthCentimetres === undefined
              ? inTableWords(
                  shown.estimate(row.rootDepthCentimetres.typical * 10, shown.units.depth),
                  row.rootDepthCentimetres.standing,
                )
              : undefined
          }
          onCommit={(millimetres) =>
            number('rootDepthCentimetres')(millimetres === null ? null : millimetres / 10)
          }
        />
        <TextField
          label="Where the numbers are from"
          value={own.note ?? ''}
          mayBeEmpty
          maxLength={2000}
          onCommit={(note) => change({ note: note === '' ? undefined : note })}
        />
      </div>
      {refused && (
        <p role="alert" className="field-trouble">
          {refused}
        </p>
      )}
      <div className="button-row">
        <DeleteOwnRow
          name={own.name}
          onDelete={() => deleteCrop(own.id)}
          onGone={props.onGone}
          onRefused={setRefused}
        />
      </div>
    </div>
  );
}
