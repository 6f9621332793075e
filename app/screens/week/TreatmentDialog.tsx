import { useId, useState } from 'react';
import { readDayCount } from '../../amounts/readDayCount';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Dialog } from '../../controls/Dialog';
import { DialogEnd } from '../../controls/DialogEnd';
import { Field } from '../../controls/Field';
import { textFromDay } from '../../core/days';
import type { Treatment } from '../../document/schema';
import type { OpenDialog } from '../../store/contract';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { useToday } from '../useReadingContext';

/** What a label may ask to wait [days]; a guard against slips of the finger. */
const longestWait = 5 * 366;

/** As opened from the Garden page, where the question stays open to be answered again. */
export function TreatmentDialog({
  dialog,
}: {
  readonly dialog: Extract<OpenDialog, { kind: 'treatment' }>;
}) {
  const showDialog = useMowings((state) => state.showDialog);
  const of =
    dialog.lawnId !== undefined ? { lawnId: dialog.lawnId } : { stockId: dialog.stockId ?? '' };
  const close = () => showDialog(null);
  return (
    <TreatmentQuestion
      of={of}
      isAnother={dialog.isAnother === true}
      onClose={close}
      onAnswered={close}
    />
  );
}

/** Sprays and feeds of a lawn or of what was brought in; nothing is taken from it before this is answered. */
export function TreatmentQuestion(props: {
  readonly of: { readonly lawnId: string } | { readonly stockId: string };
  /** something more that was put on a lawn; what is known stays */
  readonly isAnother?: boolean;
  readonly onClose: () => void;
  readonly onAnswered: () => void;
}) {
  const garden = useGarden();
  const shown = useShown();
  const today = textFromDay(useToday());
  const answerTreatment = useMowings((state) => state.answerTreatment);
  const { of, isAnother = false } = props;
  const source =
    'lawnId' in of
      ? garden.lawns.find(({ id }) => id === of.lawnId)
      : garden.stock.find(({ id }) => id === of.stockId);
  const known: Treatment | undefined = isAnother ? { answer: 'treated' } : source?.treatment;
  const [answer, setAnswer] = useState(
    known?.answer === 'not asked' ? null : (known?.answer ?? null),
  );
  const [product, setProduct] = useState(known?.product ?? '');
  const [date, setDate] = useState<string | null>(known?.date ?? null);
  const [label, setLabel] = useState(known?.label ?? null);
  const [days, setDays] = useState(known?.intervalDays?.toString() ?? '');
  const [words, setWords] = useState(known?.labelWords ?? '');
  const [tested, setTested] = useState<string | null>(known?.beanTestPassed ?? null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const introId = useId();
  if (!source) return null;

  const keep = () => {
    if (answer === null)
      return setTrouble('Choose one of the three; not knowing is an answer too.');
    if (answer === 'treated' && label === null)
      return setTrouble('Say what the label has to say about clippings.');
    const interval = readDayCount(days);
    const isWaited = answer === 'treated' && label === 'interval';
    if (isWaited && (interval === null || interval > longestWait))
      return setTrouble(
        'Give the days from the label, such as 28, or 4 weeks; five years at most.',
      );
    const treatment: Treatment = {
      answer,
      ...(answer === 'treated' && product.trim() ? { product: product.trim() } : {}),
      ...(answer === 'treated' && date ? { date } : {}),
      ...(answer === 'treated' && label ? { label } : {}),
      ...(isWaited && interval !== null ? { intervalDays: interval } : {}),
      ...(answer === 'treated' && words.trim() ? { labelWords: words.trim() } : {}),
      ...(answer !== 'nothing' && tested ? { beanTestPassed: tested } : {}),
    };
    const result = answerTreatment(of, treatment, isAnother);
    if (result.ok) props.onAnswered();
    else setTrouble(editFailureSentence(result.error));
  };

  const line = (asked: string, value: string, put: (text: string) => void, length: number) => (
    <Field label={asked}>
      {(links) => (
        <input
          {...links}
          type="text"
          maxLength={length}
          value={value}
          onChange={(event) => put(event.target.value)}
        />
      )}
    </Field>
  );

  return (
    <Dialog
      title={
        isAnother
          ? `What else was put on “${source.name}”?`
          : `Was weedkiller or feed put on “${source.name}”?`
      }
      describedBy={introId}
      onClose={props.onClose}
    >
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          keep();
        }}
      >
        <p id={introId}>
          Count all that kills weeds, moss, grubs or fungus, granules that feed and weed in one, and
          feed made of sludge. Some weedkillers pass through grass, hay and compost, and cripple
          beans and tomatoes.
        </p>
        {!isAnother && (
          <ChoiceRow
            legend="This season or last"
            stacked
            choices={[
              { value: 'nothing', label: 'Nothing', hint: 'as far as you know for certain' },
              { value: 'treated', label: 'Something was put on it' },
              { value: 'unknown', label: 'I don’t know', hint: 'then not on beds you eat from' },
            ]}
            value={answer}
            onChoose={(next) => {
              setAnswer(next);
              setTrouble(null);
            }}
          />
        )}
        {answer === 'treated' && (
          <>
            {line(
              'What was it? (the name on the packet, or what it is for)',
              product,
              setProduct,
              200,
            )}
            <DateField
              label="When?"
              day={date}
              today={today}
              latest={today}
              mayBeEmpty
              write={shown.dayField}
              sentence={dayFailureSentence}
              onDay={setDate}
            />
            <ChoiceRow
              legend="What does the label say about clippings?"
              stacked
              choices={[
                { value: 'forbids', label: 'Never use them as mulch or compost' },
                { value: 'interval', label: 'Wait a number of days' },
                { value: 'silent', label: 'Nothing, or there is no label any more' },
              ]}
              value={label}
              onChoose={(next) => {
                setLabel(next);
                setTrouble(null);
              }}
            />
            {label === 'interval' && line('How many days?', days, setDays, 6)}
            {line('Its words, if you have them', words, setWords, 500)}
          </>
        )}
        {(answer === 'unknown' || (answer === 'treated' && label === 'silent')) && (
          <DateField
            label="Day a bean-pot test passed, if you made one"
            hint="Three pots half of this, half clean mix, and three of clean mix; three beans in each; three to four weeks. Cupped leaves fail. Straight ones lower the odds of harm and prove nothing."
            day={tested}
            today={today}
            latest={today}
            mayBeEmpty
            write={shown.dayField}
            sentence={dayFailureSentence}
            onDay={setTested}
          />
        )}
        <DialogEnd refused={trouble} keep="Keep this answer" onCancel={props.onClose} />
      </form>
    </Dialog>
  );
}
