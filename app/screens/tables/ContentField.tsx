import { readContent, type Content } from '../../amounts/readContent';
import { SettledQuantityField } from '../../controls/QuantityField';
import type { Row } from '../../tables/shapes';
import { twoFigures } from '../../words/figures';
import { contentFailureSentence, inTableWords } from '../../words/tableWords';

const labels: Readonly<Record<Content, string>> = {
  nitrogen: 'Nitrogen (% of dry weight)',
  ratio: 'Carbon to nitrogen (to 1)',
  water: 'Water (% of weight)',
  phosphorus: 'Phosphorus (% of dry weight)',
  potassium: 'Potassium (% of dry weight)',
};
const hints: Readonly<Record<Content, string>> = {
  nitrogen: 'Also 24 g/kg, 48 lb/ton, or “0.6 % fresh”.',
  ratio: '20, 20:1.',
  water: 'As it is when dry to the touch; or “40 % dry matter”.',
  phosphorus: 'As the element; or “0.8 % P2O5”, “16 lb/ton phosphate”.',
  potassium: 'As the element; or “1.1 % K2O”, “22 lb/ton potash”.',
};
const names: Readonly<Record<Content, string>> = {
  nitrogen: 'Nitrogen',
  ratio: 'Carbon to nitrogen',
  water: 'Water',
  phosphorus: 'Phosphorus',
  potassium: 'Potassium',
};

/** A laboratory's number; empty leaves the table's. */
export function ContentField(props: {
  readonly content: Content;
  readonly value: number | null;
  readonly waterPercent: number | null;
  /** the table's, which stands while the field is empty */
  readonly row: Row;
  readonly onCommit: (value: number | null) => void;
}) {
  const { content } = props;
  const { typical, standing } = props.row;
  return (
    <SettledQuantityField
      label={labels[content]}
      hint={hints[content]}
      value={props.value}
      mayBeEmpty
      echo={
        props.value === null
          ? inTableWords(`${twoFigures(typical)} ${content === 'ratio' ? 'to 1' : '%'}`, standing)
          : undefined
      }
      show={(value) => String(Number(value.toPrecision(4)))}
      read={(text) => {
        const reading = readContent(text, content, props.waterPercent);
        if (reading.ok) return { value: reading.value.value };
        const sentence = contentFailureSentence(reading.error, names[content]);
        return { trouble: { sentence, suggestion: reading.error.suggestion } };
      }}
      onCommit={props.onCommit}
    />
  );
}
