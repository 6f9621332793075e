import { useEffect, useRef, useState, type FormEvent, type KeyboardEvent } from 'react';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Icon } from '../../controls/marks/Icon';
import { NameField } from '../../controls/NameField';
import { QuantityField } from '../../controls/QuantityField';
import { ownGarden } from '../../document/startGarden';
import { editFailureSentence } from '../../words/messages';
import { useShownIn } from '../shown';
import { useMowings } from '../store';
import { BedCropFields, BedFields } from './BedAnswerFields';
import { ClimateAnswerFields } from './ClimateAnswerFields';
import {
  answersIn,
  emptyAnswers,
  holders,
  keyOf,
  oneBedMore,
  readAnswers,
  type AnswerKey,
  type Answers,
  type FurtherBed,
} from './answers';
import { enter, firstQuestion, questionAfter, questionOfBed } from './goOn';

/**
 * The guided start: five questions on one page, each with a usual value or an example. Enter goes
 * from question to question, and after the last it starts the garden.
 */
export function OwnGarden({ onBack }: { readonly onBack: () => void }) {
  const today = useMowings((state) => state.about?.today ?? '');
  const startOwn = useMowings((state) => state.startOwn);
  const goTo = useMowings((state) => state.goTo);
  const announce = useAnnounce();
  const [answers, setAnswers] = useState<Answers>(() =>
    emptyAnswers(today, navigator.language, new Intl.DateTimeFormat().resolvedOptions().timeZone),
  );
  const [asked, setAsked] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const form = useRef<HTMLFormElement>(null);
  const shown = useShownIn(answers.units);
  const reading = readAnswers(answers);
  const trouble = (key: AnswerKey) => (asked ? (reading.troubles[key] ?? null) : null);
  const change = (changes: Partial<Answers>) => setAnswers((now) => ({ ...now, ...changes }));
  const example = answers.units === 'us' ? usExamples : metricExamples;
  useEffect(() => {
    if (form.current) enter(firstQuestion(form.current));
  }, []);

  const submit = (event?: FormEvent) => {
    event?.preventDefault();
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
  const goOn = (event: KeyboardEvent) => {
    const from = event.target;
    if (event.key !== 'Enter' || !(from instanceof Element) || !form.current) return;
    if (!from.matches('input, select')) return;
    event.preventDefault();
    const next = questionAfter(form.current, from);
    if (next) enter(next);
    else submit();
  };
  const changeFurther = (key: number, changes: Partial<FurtherBed>) =>
    setAnswers((now) => ({
      ...now,
      further: now.further.map((bed) => (bed.key === key ? { ...bed, ...changes } : bed)),
    }));
  const addBed = () => {
    const more = oneBedMore(answers);
    const key = more.further.at(-1)?.key ?? 0;
    setAnswers(more);
    requestAnimationFrame(() => form.current && enter(questionOfBed(form.current, key)));
  };

  return (
    <div className="page">
      <div className="page-head">
        <div>
          <h1 tabIndex={-1}>Your garden in five answers</h1>
          <p className="soft">
            A guess will do everywhere. Enter goes on to the next. All of it can be changed later.
          </p>
        </div>
        <button type="button" className="button-small" onClick={onBack}>
          <Icon name="left" /> Back
        </button>
      </div>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- only hears Enter from its fields */}
      <form ref={form} className="five" onSubmit={submit} onKeyDown={goOn} noValidate>
        <section className="sheet five-one" aria-labelledby="five-lawn">
          <h2 id="five-lawn">The lawn</h2>
          <ChoiceRow
            legend="How do you measure?"
            choices={[
              { value: 'metric', label: 'Metres, kilograms, litres' },
              { value: 'us', label: 'Feet, pounds, gallons' },
            ]}
            value={answers.units}
            onChoose={(units) => setAnswers((now) => answersIn(units, now))}
          />
          <div className="one-question" data-goes-on>
            <QuantityField
              label={`How big is it? (${shown.units.area.symbol})`}
              hint={`The part you mow. As you would say it: ${example.lawn}.`}
              text={answers.lawnArea}
              onText={(lawnArea) => change({ lawnArea })}
              trouble={trouble('lawnArea')}
            />
          </div>
        </section>
        <section className="sheet five-two" aria-labelledby="five-bag">
          <h2 id="five-bag">What you catch it in</h2>
          <ChoiceRow
            legend="What do you count in?"
            choices={holders.map((holder) => ({ value: holder.name, label: holder.name }))}
            value={answers.holder}
            onChoose={(holder) => change({ holder })}
          />
          <div className="one-question" data-goes-on>
            <QuantityField
              label={`How much does a full one hold? (${shown.units.volume.symbol})`}
              hint={`Often printed on the mower. ${example.bag}.`}
              text={answers.bagSize}
              onText={(bagSize) => change({ bagSize })}
              trouble={trouble('bagSize')}
            />
          </div>
        </section>
        <section className="sheet five-three" aria-labelledby="five-bed">
          <h2 id="five-bed">One bed</h2>
          <div className="fields">
            <BedFields
              bed={answers}
              shown={shown}
              example={example.bed}
              nameTrouble={trouble('bedName')}
              areaTrouble={trouble('bedArea')}
              onChange={change}
            />
          </div>
        </section>
        <section className="sheet five-four" aria-labelledby="five-crop">
          <h2 id="five-crop">What grows in it</h2>
          <div className="fields">
            <BedCropFields bed={answers} shown={shown} today={today} onChange={change} />
          </div>
        </section>
        {answers.further.map((bed, at) => (
          <section
            key={bed.key}
            className="sheet five-more"
            aria-labelledby={`five-bed-${bed.key}`}
            data-bed={bed.key}
          >
            <div className="section-head">
              <h2 id={`five-bed-${bed.key}`}>
                <span className="only-heard">Bed {at + 2}: </span>Another bed
              </h2>
              <button
                type="button"
                className="button-small"
                aria-label={`Leave out ${bed.bedName.trim() || 'this bed'}`}
                onClick={() =>
                  setAnswers((now) => ({
                    ...now,
                    further: now.further.filter(({ key }) => key !== bed.key),
                  }))
                }
              >
                Leave it out
              </button>
            </div>
            <div className="fields">
              <BedFields
                bed={bed}
                shown={shown}
                example={example.bed}
                nameTrouble={trouble(keyOf('bedName', bed))}
                areaTrouble={trouble(keyOf('bedArea', bed))}
                onChange={(changes) => changeFurther(bed.key, changes)}
              />
            </div>
            <div className="fields">
              <BedCropFields
                bed={bed}
                shown={shown}
                today={today}
                onChange={(changes) => changeFurther(bed.key, changes)}
              />
            </div>
          </section>
        ))}
        <div className="five-add">
          <button type="button" className="button" onClick={addBed}>
            Another bed
          </button>
          <p className="small soft">One is enough to begin with; more can be added any day.</p>
        </div>
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
        <div className="five-start">
          <NameField
            label="What shall the garden be called?"
            name={answers.gardenName}
            onName={(gardenName) => change({ gardenName })}
          />
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
