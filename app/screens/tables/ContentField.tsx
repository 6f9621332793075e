import { readContent, type Content } from '../../amounts/readContent';
import { SettledQuantityField } from '../../controls/QuantityField';
import { contentFailureSentence } from '../../words/tableWords';

const labels: Readonly<Record<Content, string>> = {
  nitrogen: 'Nitrogen (% of dry weight)',
  ratio: 'Carbon to nitrogen (to 1)',
  water: 'Water (% of weight)',
};
const hints: Readonly<Record<Content, string>> = {
  nitrogen: 'Also 24 g/kg, 48 lb/ton, or “0.6 % fresh”.',
  ratio: '20, 20:1.',
  water: 'As it is when dry to the touch; or “40 % dry matter”.',
};
const names: Readonly<Record<Content, string>> = {
  nitrogen: 'Nitrogen',
  ratio: 'Carbon to nitrogen',
  water: 'Water',
};

/** A laboratory's number; empty leaves the table's. */
export function ContentField(props: {
  readonly content: Content;
  readonly value: number | null;
  readonly waterPercent: number | null;
  /** what stands there while the field is empty */
  readonly otherwise: string;
  readonly onCommit: (value: number | null) => void;
}) {
  const { content } = props;
  return (
    <SettledQuantityField
      label={labels[content]}
      hint={hints[content]}
      value={props.value}
      mayBeEmpty
      echo={props.value === null ? `The table’s: ${props.otherwise}` : undefined}
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
