import { Scroller } from '../../charts/Scroller';
import { Disclosure } from '../../controls/Disclosure';
import type { BlendWish } from '../../core/cover/blend';
import type { Mixture, MixturePart } from '../../document/mixture';
import { countOf, twoFigures } from '../../words/figures';
import { rangeOdds } from '../../words/ranges';
import { unmetSentence } from '../../words/tableWords';
import { useShown } from '../shown';
import { useGarden } from '../store';

/** What to weigh out, what comes of it, and what of the wish cannot be met. */
export function MixtureAnswer(props: {
  readonly mixture: Mixture;
  readonly parts: readonly MixturePart[];
  readonly wish: BlendWish;
  readonly names: readonly string[];
}) {
  const { blend, parts, ratioRange } = props.mixture;
  const shown = useShown();
  const { units } = shown;
  const [container] = useGarden().containers;
  const weight = (kilograms: number) => shown.estimate(kilograms, units.mass);
  const total = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((sum, part) => sum + of(part), 0);
  return (
    <div className="mix-answer">
      <ul className="mix-list">
        {parts.map(
          (part, index) =>
            props.parts[index]?.amount === null && (
              // oxlint-disable-next-line react/no-array-index-key -- parts have no name of their own and keep their order
              <li key={index}>
                <span className="strong">
                  {part.name}: {weight(part.freshKilograms)}
                </span>
                , about {shown.estimate(part.litres, units.volume)}
                {container &&
                  part.litres > 0 &&
                  ` (${countOf(part.litres / container.litres, container.name, container.plural)})`}
              </li>
            ),
        )}
        {props.wish.moisture !== null && blend.waterKilograms > 0 && (
          <li>
            <span className="strong">
              Water: {shown.estimate(blend.waterKilograms, units.volume)}
            </span>
            , sprinkled in as it is stacked
          </li>
        )}
      </ul>
      <p>
        It comes to <span className="strong">{twoFigures(blend.ratio)} to 1</span>, likely{' '}
        {twoFigures(ratioRange.low)} to {twoFigures(ratioRange.high)} ({rangeOdds}), and{' '}
        <span className="strong">{twoFigures(blend.moisture * 100)} % water</span>.
      </p>
      {blend.unmet.map((unmet) => (
        <p key={unmet.kind} className="field-trouble">
          <span aria-hidden="true" className="field-trouble-mark" />
          {unmetSentence(unmet, props.names, (kilograms) =>
            shown.estimate(kilograms, units.volume),
          )}
        </p>
      ))}
      <Disclosure summary="The sum" quiet>
        <p className="small">
          Carbon and nitrogen are added up first and divided last. The parts’ own ratios are never
          averaged: a wet part counts by what it holds, not by its weight.
        </p>
        <Scroller className="table-scroll" label="What each part brings">
          <table>
            <thead>
              <tr>
                <th scope="col">Part</th>
                <th scope="col" className="number">
                  Weight
                </th>
                <th scope="col" className="number">
                  Dry
                </th>
                <th scope="col" className="number">
                  Carbon
                </th>
                <th scope="col" className="number">
                  Nitrogen
                </th>
                <th scope="col" className="number">
                  To 1
                </th>
              </tr>
            </thead>
            <tbody>
              {[
                ...parts,
                {
                  name: 'Together',
                  freshKilograms: total((part) => part.freshKilograms) + blend.waterKilograms,
                  dryKilograms: total((part) => part.dryKilograms),
                  carbonKilograms: total((part) => part.carbonKilograms),
                  nitrogenKilograms: total((part) => part.nitrogenKilograms),
                },
              ].map((part, index) => (
                // oxlint-disable-next-line react/no-array-index-key -- parts have no name of their own and keep their order
                <tr key={index}>
                  <th scope="row">{part.name}</th>
                  <td className="number">{weight(part.freshKilograms)}</td>
                  <td className="number">{weight(part.dryKilograms)}</td>
                  <td className="number">{weight(part.carbonKilograms)}</td>
                  <td className="number">
                    {shown.estimate(part.nitrogenKilograms * 1000, units.nitrogen)}
                  </td>
                  <td className="number">
                    {part.nitrogenKilograms > 0
                      ? twoFigures(part.carbonKilograms / part.nitrogenKilograms)
                      : '–'}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </Scroller>
      </Disclosure>
    </div>
  );
}
