import type { ReactNode } from 'react';
import type { KnownContainer, MeasureField as Measured, UnitSystem } from '../amounts/amount';
import { measureText } from '../amounts/measureText';
import { readMeasure } from '../amounts/readMeasure';
import { amountFailureSentence } from '../words/messages';
import { SettledQuantityField } from './QuantityField';

export interface MeasureFieldProps {
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly measure: Exclude<Measured, 'water'>;
  readonly units: UnitSystem;
  readonly containers?: readonly KnownContainer[];
  /** in the inside unit: mm for rain and depth, m, m2, L, kg, deg C */
  readonly value: number | null;
  readonly onCommit: (value: number | null, sides: readonly [number, number] | null) => void;
  readonly mayBeEmpty?: boolean;
  readonly echo?: ReactNode;
}

/** One measure of the garden, in whatever units the person speaks; a bare number is in theirs. */
export function MeasureField(props: MeasureFieldProps) {
  const { measure, units } = props;
  return (
    <SettledQuantityField<readonly [number, number] | null>
      label={props.label}
      hint={props.hint}
      echo={props.echo}
      value={props.value}
      mayBeEmpty={props.mayBeEmpty ?? false}
      show={(value) => measureText(value, measure, units)}
      read={(text) => {
        const containers = props.containers ?? [];
        const reading = readMeasure(text, measure, { units, containers, bareNumber: true });
        if (reading.ok) return { value: reading.value.value, more: reading.value.sides };
        const { suggestion } = reading.error;
        return { trouble: { sentence: amountFailureSentence(reading.error), suggestion } };
      }}
      onCommit={(value, sides) => props.onCommit(value, sides ?? null)}
    />
  );
}
