import { Disclosure } from '../../controls/Disclosure';
import type { BedDraws, BedResults } from '../../store/contract';
import { percent } from '../../words/chartFormat';
import { estimateWithUnit, twoFigures } from '../../words/figures';
import { isSeldom, likelyTimes, seldomReason } from '../../words/imaginedWords';
import { rangeOdds } from '../../words/ranges';
import { needMet } from '../needMet';
import { useShown } from '../shown';

/** The sum behind a nitrogen state, line by line, per m² of bed. */
export function StateWhy(props: {
  readonly results: BedResults;
  readonly draws: BedDraws | undefined;
}) {
  const { results, draws } = props;
  const { units, dayWord, chart } = useShown();
  const { verdict } = results;
  if (verdict.ratio === null) return null;
  const nitrogen = (gramsPerM2: number) => estimateWithUnit(gramsPerM2, units.nitrogenPerArea);
  const met = needMet(results);
  const lines: readonly (readonly [string, string])[] = [
    ['Taken up so far, the picked part included', nitrogen(verdict.inCrop)],
    ['Ready where roots reach or will reach', nitrogen(verdict.inReach)],
    ['Expected to come free to the end', nitrogen(verdict.expectedRelease)],
    ['Expected to be held back by browns', `− ${nitrogen(verdict.expectedTieUp)}`],
    ['All it can use from first day to last', nitrogen(verdict.need)],
    ['Ratio of the first four to that', twoFigures(verdict.ratio)],
    ...(draws?.answer.ratio
      ? [[`The same, ${rangeOdds}`, likelyTimes(draws.answer.ratio)] as const]
      : []),
  ];
  return (
    <Disclosure summary="Why" quiet>
      <table>
        <caption className="only-heard">The sum behind the state</caption>
        <tbody>
          {lines.map(([words, value]) => (
            <tr key={words}>
              <th scope="row">{words}</th>
              <td className="number">{value}</td>
            </tr>
          ))}
          {verdict.overFedLine !== null && (
            <tr>
              <th scope="row">Over-fed past</th>
              <td className="number">{twoFigures(verdict.overFedLine)}</td>
            </tr>
          )}
          <tr>
            <th scope="row">Nitrate in the top {chart.topSoil}</th>
            <td className="number">{twoFigures(verdict.nitrateMgPerKg)} mg/kg</td>
          </tr>
          {verdict.turnsOn !== null && (
            <tr>
              <th scope="row">Turns on</th>
              <td className="number">{dayWord(verdict.turnsOn)}</td>
            </tr>
          )}
          {met !== null && (
            <tr>
              <th scope="row">Share of what it could use that it gets</th>
              <td className="number">{percent(met)}</td>
            </tr>
          )}
        </tbody>
      </table>
      {draws && isSeldom(draws.answer.states, verdict.state) && <p>{seldomReason}</p>}
      <p>
        Legumes count only the part they ask of the soil. All of it is the likely course of a model
        with an imagined rest of the season; its numbers and where they were read are listed with
        the program’s tables.
      </p>
    </Disclosure>
  );
}
