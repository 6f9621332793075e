import { useEffect, useRef } from 'react';
import { Disclosure } from '../../controls/Disclosure';
import { yearOf } from '../../core/days';
import type { OfferAnswer, OfferBedTime } from '../../document/offers';
import type { Bed } from '../../document/schema';
import { beanTestSteps, offerVerdictWords } from '../../words/offerWords';
import { withRange } from '../../words/ranges';
import { CautionList } from '../CautionList';
import { useShown, type Shown } from '../shown';

const whenWords = (time: OfferBedTime, shown: Shown): string => {
  switch (time.may) {
    case 'now':
      return 'may have it now';
    case 'from':
      return `from ${shown.dayWord(time.day)} ${yearOf(time.day)}`;
    case 'after the test':
      return 'once beans have grown straight in it';
    case 'not this season':
      return 'not this season';
  }
};

/** What an offer comes to: the verdict, what it brings, and which bed may have it when. */
export function OfferFinding(props: {
  readonly answer: OfferAnswer;
  readonly name: string;
  readonly beds: readonly Bed[];
}) {
  const shown = useShown();
  const heading = useRef<HTMLHeadingElement>(null);
  // read from its beginning as soon as it is there
  useEffect(() => heading.current?.focus(), []);
  const { verdict, contents, beds } = props.answer;
  const words = offerVerdictWords[verdict];
  const rows: readonly (readonly [string, string])[] = [
    ['Dry weight', withRange(contents.dryKilograms, shown.units.mass)],
    ['Nitrogen in all', withRange(contents.nitrogen, shown.units.nitrogen)],
    ...(contents.readyNitrogen
      ? [['of it ready at once', withRange(contents.readyNitrogen, shown.units.nitrogen)] as const]
      : []),
    ['Phosphorus', withRange(contents.phosphorus, shown.units.nitrogen)],
    ['Potassium', withRange(contents.potassium, shown.units.nitrogen)],
    ['Salts', withRange(contents.salts, shown.units.nitrogen)],
  ];
  const together = new Map<string, string[]>();
  for (const { bedId, time } of beds) {
    const when = whenWords(time, shown);
    const name = props.beds.find(({ id }) => id === bedId)?.name ?? '';
    together.set(when, [...(together.get(when) ?? []), name]);
  }
  const all = [
    ...new Map(beds.flatMap(({ cautions }) => cautions).map((c) => [c.row, c])).values(),
  ];
  return (
    <section aria-label="What it comes to" className="offer-finding">
      <h3 ref={heading} tabIndex={-1}>
        {words.title}
      </h3>
      <p>{words.says}</p>
      <table>
        <caption className="only-heard">What {props.name} brings, likely range</caption>
        <tbody>
          {rows.map(([what, amount]) => (
            <tr key={what}>
              <th scope="row">{what}</th>
              <td>{amount}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">
        Phosphorus, potassium and salts are recalled, not read in a table: rough. Only a lab’s sheet
        of this very lot would be better.
      </p>
      <h4>Which bed, and when</h4>
      <ul className="plain-list">
        {[...together].map(([when, names]) => (
          <li key={when}>
            <strong>{names.join('; ')}</strong>: {when}.
          </li>
        ))}
      </ul>
      {all.length > 0 && <CautionList cautions={all} />}
      {verdict === 'test first' && (
        <Disclosure summary="How the beans are used">
          <ol>
            {beanTestSteps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <p>
            Write the day it passed beside the store, in the Garden place: from then on it is
            reckoned as tried.
          </p>
        </Disclosure>
      )}
    </section>
  );
}
