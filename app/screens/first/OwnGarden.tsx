import { useRef, useState, type FormEvent } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { DateField } from '../../controls/DateField';
import { Field } from '../../controls/Field';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { cropRows } from '../../tables/crops';
import { ownGarden } from '../../document/startGarden';
import { dayFailureSentence, editFailureSentence } from '../../words/messages';
import { cropGroups } from '../lists';
import { useShownIn } from '../shown';
import { useMowings } from '../store';
import { ClimateAnswerFields } from './ClimateAnswerFields';
import { answersIn, emptyAnswers, holders, readAnswers, type Answers } from './answers';

/** The guided start: five questions on one page, each with a usual value or an example. */
export function OwnGarden({ onBack }: { readonly onBack: () => void }) {
  const today = useMowings((state) => state.about?.today ?? '');
  const startOwn = useMowings((state) => state.startOwn);
  const goTo = useMowings((state) => state.goTo);
  const announce = useAnnounce();
  const [answers, setAnswers] = useState<Answers>(() => emptyAnswers(today, navigator.language));
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const shown = useShownIn(answers.units);
  const reading = readAnswers(answers);
  const trouble = (key: keyof typeof reading.troubles) =>
    asked ? (reading.troubles[key] ?? null) : null;
  const change = (changes: Partial<Answers>) => setAnswers((now) => ({ ...now, ...changes }));
  const example = answers.units === 'us' ? usExamples : metricExamples;

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAsked(true);
    if (!reading.answers) {
      const count = Object.keys(reading.troubles).length;
      announce(count === 1 ? 'One answer needs a look.' : `${count} answers need a look.`);
      requestAnimationFrame(() =>
        form.current?.querySelector<HTMLElement>('[aria-invalid]')?.focus(),
      );
      return;
    }
    const result = startOwn(ownGarden, reading.answers);
    if (result.ok) goTo('this week');
    else setRefused(editFailureSentence(result.error));
  };

  return (
    <div className="page">
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>Your garden in five answers</h1>
          <p className="soft">A guess will do everywhere. All of it can be changed later.</p>
        </div>
        <button type="button" className="button" onClick={onBack}>
          Back
        </button>
      </div>
      <form ref={form} className="five" onSubmit={submit} noValidate>
        <section className="sheet">
          <div className="fields">
            <Field label="What shall the garden be called?">
              {(links) => (
                <input
                  {...links}
                  type="text"
                  maxLength={80}
                  autoComplete="off"
                  value={answers.gardenName}
                  onChange={(event) => change({ gardenName: event.target.value })}
                />
              )}
            </Field>
            <ChoiceRow
              legend="How do you measure?"
              choices={[
                { value: 'metric', label: 'Metres, kilograms, litres' },
                { value: 'us', label: 'Feet, pounds, gallons' },
              ]}
              value={answers.units}
              onChoose={(units) => setAnswers((now) => answersIn(units, now))}
            />
          </div>
        </section>
        <section className="sheet five-one" aria-labelledby="five-lawn">
          <h2 id="five-lawn">The lawn</h2>
          <QuantityField
            label={`How big is it? (${shown.units.area.symbol})`}
            hint={`The part you mow. As you would say it: ${example.lawn}.`}
            text={answers.lawnArea}
            onText={(lawnArea) => change({ lawnArea })}
            trouble={trouble('lawnArea')}
          />
        </section>
        <section className="sheet five-two" aria-labelledby="five-bag">
          <h2 id="five-bag">What you catch it in</h2>
          <ChoiceRow
            legend="What do you count in?"
            choices={holders.map((holder) => ({ value: holder.name, label: holder.name }))}
            value={answers.holder}
            onChoose={(holder) => change({ holder })}
          />
          <QuantityField
            label={`How much does a full one hold? (${shown.units.volume.symbol})`}
            hint={`Often printed on the mower. ${example.bag}. Weighing one later makes every sum better.`}
            text={answers.bagSize}
            onText={(bagSize) => change({ bagSize })}
            trouble={trouble('bagSize')}
          />
        </section>
        <section className="sheet five-three" aria-labelledby="five-bed">
          <h2 id="five-bed">One bed</h2>
          <div className="fields">
            <Field
              label="What do you call it?"
              trouble={trouble('bedName')}
              onSuggestion={(bedName) => change({ bedName })}
            >
              {(links) => (
                <input
                  {...links}
                  type="text"
                  maxLength={80}
                  autoComplete="off"
                  value={answers.bedName}
                  onChange={(event) => change({ bedName: event.target.value })}
                />
              )}
            </Field>
            <QuantityField
              label={`How big is it? (${shown.units.area.symbol})`}
              hint={`Length times width will do: ${example.bed}.`}
              text={answers.bedArea}
              onText={(bedArea) => change({ bedArea })}
              trouble={trouble('bedArea')}
            />
          </div>
        </section>
        <section className="sheet five-four" aria-labelledby="five-crop">
          <h2 id="five-crop">What grows in it</h2>
          <div className="fields">
            <PickOne
              label="Crop"
              value={answers.cropId}
              groups={cropGroups}
              onPick={(cropId) => {
                const row = cropRows.find((each) => each.id === cropId);
                change({ cropId, how: row?.clock === 'planting' ? 'planted' : 'sown' });
              }}
            />
            <ChoiceRow
              legend="How did it start there?"
              choices={[
                { value: 'sown', label: 'Sown' },
                { value: 'planted', label: 'Planted out' },
              ]}
              value={answers.how}
              onChoose={(how) => change({ how })}
            />
            <DateField
              label="When?"
              hint="A day to come is fine too."
              day={answers.started}
              today={today}
              write={shown.dayField}
              sentence={dayFailureSentence}
              onDay={(started) => change({ started: started ?? today })}
            />
          </div>
        </section>
        <section className="sheet five-five" aria-labelledby="five-climate">
          <h2 id="five-climate">The nearest climate</h2>
          <ClimateAnswerFields
            answers={answers}
            troubles={asked ? reading.troubles : {}}
            onChange={change}
          />
        </section>
        {refused && (
          <p role="alert" className="field-trouble">
            {refused}
          </p>
        )}
        <div className="button-row">
          <button type="submit" className="button-main">
            Start this garden
          </button>
          <p className="small soft">
            Until you log rain or bring a record, past and future days are imagined from the
            climate’s usual months; the answers say so.
          </p>
        </div>
      </form>
    </div>
  );
}

const metricExamples = {
  lawn: '220 m2, or 12 x 18 m',
  bag: 'A usual bag is 40 to 60 L',
  bed: '1.2 x 5 m',
};
const usExamples = {
  lawn: '2400 sq ft, or 40 x 60 ft',
  bag: 'A usual bag is 10 to 16 gal, or 2 bushels',
  bed: '4 x 16 ft',
};
