import { Disclosure } from '../../../controls/Disclosure';
import { Icon } from '../../../controls/marks/Icon';
import type { PlanAnswer } from '../../../core/plan/answer';
import { planAmountWords, planSourceWords, restWords } from '../../../words/planWords';
import { usePlanNames } from './usePlanNames';

const large = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
const small = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1);

/** Every kilogram of what is cut: what is laid, what is left, and where that goes, best first. */
export function PlanRest({ answer }: { readonly answer: PlanAnswer }) {
  const names = usePlanNames();
  const cut = answer.sources.filter(
    ({ ref, role, was }) => role === 'greens' && ref.source !== 'coming' && was.litres > 0,
  );
  if (cut.length === 0) return null;
  return (
    <div className="plan-rest">
      <h3>
        <Icon name="bag" /> What is cut, and where all of it goes
      </h3>
      {cut.map(({ sourceId, ref, was, laid, rest, choices }) => {
        const [best, ...others] = [
          ...choices.filter(({ not }) => not === null),
          ...choices.filter(({ not }) => not !== null),
        ];
        return (
          <div key={sourceId}>
            <p>
              {large(planSourceWords(ref, names))}: {planAmountWords(was, names)} in hand. On beds{' '}
              {planAmountWords(laid, names)}, left over {planAmountWords(rest, names)}.
            </p>
            {rest.litres > 0 && best && (
              <>
                <p>{`For the rest: ${small(restWords(best, names))}`}</p>
                {others.length > 0 && (
                  <Disclosure summary="Other homes for it" quiet>
                    <ul>
                      {others.map((choice) => (
                        <li key={choice.place.to}>{restWords(choice, names)}</li>
                      ))}
                    </ul>
                  </Disclosure>
                )}
              </>
            )}
          </div>
        );
      })}
    </div>
  );
}
