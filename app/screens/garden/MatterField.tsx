import { SettledQuantityField } from '../../controls/QuantityField';

/** Organic matter of a bed in per cent; empty when nobody measured it. */
export function MatterField(props: {
  readonly value: number | null;
  readonly onCommit: (value: number | null) => void;
}) {
  return (
    <SettledQuantityField
      label="Organic matter (%)"
      hint="From a soil test. Leave it empty if not known."
      value={props.value}
      mayBeEmpty
      show={(value) => String(value)}
      read={(text) => {
        const value = Number(text.replace('%', '').replace(',', '.').trim());
        return value >= 0.1 && value <= 60
          ? { value }
          : {
              trouble: {
                sentence: 'Organic matter is a number from 0.1 to 60 per cent.',
                suggestion: '3',
              },
            };
      }}
      onCommit={props.onCommit}
    />
  );
}
