import { useRef, useState } from 'react';
import { readAmount } from '../../amounts/readAmount';
import { amountTrouble } from '../../controls/amountTrouble';
import { useAnnounce } from '../../controls/Announcer';
import { ChoiceRow } from '../../controls/ChoiceRow';
import { Dialog } from '../../controls/Dialog';
import { Field } from '../../controls/Field';
import { PickOne } from '../../controls/PickOne';
import { QuantityField } from '../../controls/QuantityField';
import { materialById } from '../../document/materialValues';
import {
  offerOrigins,
  stockOfOffer,
  type Offer,
  type OfferAnswer,
  type OfferOrigin,
} from '../../document/offers';
import type { Treatment } from '../../document/schema';
import { editFailureSentence } from '../../words/messages';
import {
  offerAgeLines,
  offerAges,
  offerAgeWords,
  offerBeddings,
  offerBeddingWords,
  offerNote,
  offerOriginWords,
  offerQuestions,
  type OfferAge,
  type OfferBedding,
} from '../../words/offerWords';
import { materialGroups } from '../lists';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { nameFor } from '../nameFor';
import { OfferFinding } from './OfferFinding';

type Sprayed = 'nothing' | 'forbids' | 'something' | 'unknown';

const treatmentOf = (sprayed: Sprayed, product: string): Treatment => {
  const named = product.trim() === '' ? {} : { product: product.trim() };
  if (sprayed === 'forbids') return { answer: 'treated', label: 'forbids', ...named };
  if (sprayed === 'something') return { answer: 'treated', label: 'silent', ...named };
  return { answer: sprayed };
};

/** Somebody has hay, straw, manure, leaves, chips or compost to give away. */
export function OfferDialog({ onClose }: { readonly onClose: () => void }) {
  const garden = useGarden();
  const context = useReadingContext();
  const today = useToday();
  const weighOffer = useMowings((state) => state.weighOffer);
  const addStock = useMowings((state) => state.addStock);
  const announce = useAnnounce();
  const [materialId, setMaterialId] = useState('hay-grass');
  const [text, setText] = useState('');
  const [origin, setOrigin] = useState<OfferOrigin>('neighbour');
  const [age, setAge] = useState<OfferAge>('not known');
  const [bedding, setBedding] = useState<OfferBedding>('not known');
  const [sprayed, setSprayed] = useState<Sprayed | null>(null);
  const [product, setProduct] = useState('');
  const [asked, setAsked] = useState(false);
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [answer, setAnswer] = useState<OfferAnswer | null>(null);

  const { name, row } = materialById(garden, materialId);
  const reading = readAmount(text, 'stock', context);
  const isManure = row.id.startsWith('manure-');
  const mayCarry = row.mayCarryWeedkiller && origin !== 'own ground';
  /** another question from here on: the old answer does not stand beside it */
  const asking = useRef(0);
  const changed = (): void => {
    asking.current += 1;
    setBusy(false);
    setAnswer(null);
    setTrouble(null);
  };
  const offer = (): Offer | null =>
    reading.ok && (sprayed !== null || !mayCarry)
      ? {
          materialId,
          amount: reading.value.amount,
          origin,
          treatment: treatmentOf(mayCarry ? (sprayed ?? 'unknown') : 'nothing', product),
          note: offerNote(origin, age, isManure ? bedding : null),
        }
      : null;
  const weigh = async () => {
    setAsked(true);
    const weighed = offer();
    if (!weighed || busy) return;
    setBusy(true);
    const mine = asking.current;
    const result = await weighOffer(weighed);
    if (mine !== asking.current) return;
    setBusy(false);
    if (result.ok) setAnswer(result.value);
    else setTrouble('The sums did not come out. What is known of the stuff still counts.');
  };
  const take = () => {
    const taken = offer();
    if (!taken) return;
    const stock = stockOfOffer(
      taken,
      nameFor(
        garden.stock.map((one) => one.name),
        name,
      ),
      today,
    );
    const result = addStock(stock);
    if (!result.ok) return setTrouble(editFailureSentence(result.error));
    announce(`${stock.name} is kept among the stores. Undo takes it back.`);
    onClose();
  };

  return (
    <Dialog title="Somebody offers something" wide onClose={onClose}>
      <form
        className="form"
        noValidate
        onSubmit={(submit) => {
          submit.preventDefault();
          void weigh();
        }}
      >
        <div className="fields">
          <PickOne
            label="What is it?"
            value={materialId}
            groups={materialGroups(garden)}
            onPick={(id) => {
              changed();
              setMaterialId(id);
            }}
          />
          <QuantityField
            label="How much?"
            hint="10 bags, 1 m3, 40 kg; a guess will do: “about 5 bags”."
            text={text}
            onText={(next) => {
              changed();
              setText(next);
            }}
            trouble={asked || text.trim() !== '' ? amountTrouble(reading) : null}
          />
        </div>
        <ChoiceRow
          legend="Whose is it?"
          choices={offerOrigins.map((value) => ({ value, label: offerOriginWords[value] }))}
          value={origin}
          onChoose={(next) => {
            changed();
            setOrigin(next);
          }}
        />
        <ChoiceRow
          legend="How old is it?"
          choices={offerAges.map((value) => ({ value, label: offerAgeWords[value] }))}
          value={age}
          onChoose={setAge}
        />
        {isManure && (
          <ChoiceRow
            legend="What did the animals lie on?"
            choices={offerBeddings.map((value) => ({ value, label: offerBeddingWords[value] }))}
            value={bedding}
            onChoose={setBedding}
          />
        )}
        {offerAgeLines(age, isManure ? bedding : null, mayCarry).map((line) => (
          <p key={line} className="small">
            {line}
          </p>
        ))}
        {mayCarry && (
          <ChoiceRow
            legend="What do they say was sprayed where it grew?"
            stacked
            choices={[
              { value: 'nothing', label: 'Nothing', hint: 'and they would know' },
              { value: 'something', label: 'Something', hint: 'with no word about mulch' },
              { value: 'forbids', label: 'Something whose label forbids mulch or compost' },
              { value: 'unknown', label: 'Nobody knows' },
            ]}
            value={sprayed}
            onChoose={(next) => {
              changed();
              setSprayed(next);
            }}
          />
        )}
        {mayCarry && (sprayed === 'something' || sprayed === 'forbids') && (
          <Field label="Its name, if they have it">
            {(links) => (
              <input
                {...links}
                type="text"
                maxLength={200}
                value={product}
                onChange={(event) => setProduct(event.target.value)}
              />
            )}
          </Field>
        )}
        {asked && mayCarry && sprayed === null && (
          <p role="alert" className="field-trouble">
            <span aria-hidden="true" className="field-trouble-mark" />
            Choose what they say was sprayed; “nobody knows” is an answer too.
          </p>
        )}
        <section aria-label="Ask before you fetch it">
          <p className="small">Ask before you fetch it:</p>
          <ul className="small">
            {offerQuestions(origin, { isManure, mayCarryWeedkiller: row.mayCarryWeedkiller }).map(
              (question) => (
                <li key={question}>{question}</li>
              ),
            )}
            <li>How heavy is one load, and how do you get it home dry?</li>
          </ul>
        </section>
        {trouble && (
          <p role="alert" className="field-trouble">
            <span aria-hidden="true" className="field-trouble-mark" />
            {trouble}
          </p>
        )}
        {answer && <OfferFinding answer={answer} name={name} beds={garden.beds} />}
        <div className="button-row">
          {!answer && (
            <button type="submit" className="button-main" aria-disabled={busy}>
              {busy ? 'Weighing it up…' : 'Weigh it up'}
            </button>
          )}
          {answer && answer.verdict !== 'no' && (
            <button type="button" className="button-main" onClick={take}>
              {answer.verdict === 'take' ? 'Take it into the stores' : 'Keep it apart until tested'}
            </button>
          )}
          <button type="button" className="button" onClick={onClose}>
            {answer?.verdict === 'no' ? 'Leave it' : 'Not now'}
          </button>
        </div>
      </form>
    </Dialog>
  );
}
