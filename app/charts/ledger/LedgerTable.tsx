import type { BedLedger } from '../../core/season/ledger';
import { accountAmount, dayWord } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import {
  balanceWords,
  cameInWords,
  holdingWords,
  movedWords,
  wentOutWords,
} from '../../words/ledgerWords';

interface Line {
  readonly key: string;
  readonly words: string;
  readonly gM2: number;
}

const leastShown = 0.005;

/** A bed's account as a table that adds up before one's eyes: both sides, their sums, and what is left over. */
export function LedgerTable(props: {
  readonly ledger: BedLedger;
  readonly areaM2: number;
  readonly units: ChartUnits;
}) {
  const { ledger, areaM2, units } = props;
  const worded = <Key extends string>(
    lines: readonly { readonly key: Key; readonly gM2: number }[],
    words: Readonly<Record<Key, string>>,
  ): readonly Line[] =>
    lines
      .filter((line) => Math.abs(line.gM2) >= leastShown)
      .map((line) => ({ key: line.key, words: words[line.key], gM2: line.gM2 }));
  const { totals } = ledger;
  const numbers = (gM2: number) => (
    <>
      <td>{accountAmount(gM2, units.nitrogen)}</td>
      <td>{accountAmount(gM2 * areaM2, units.nitrogenOnBed)}</td>
    </>
  );
  const section = (heading: string, lines: readonly Line[], sum: number) => (
    <tbody>
      <tr className="ledger-heading">
        <th scope="rowgroup" colSpan={3}>
          {heading}
        </th>
      </tr>
      {lines.length === 0 && (
        <tr>
          <th scope="row">nothing</th>
          {numbers(0)}
        </tr>
      )}
      {lines.map((line) => (
        <tr key={line.key}>
          <th scope="row">{line.words}</th>
          {numbers(line.gM2)}
        </tr>
      ))}
      <tr className="ledger-sum">
        <th scope="row">together</th>
        {numbers(sum)}
      </tr>
    </tbody>
  );
  const side = (words: string, gM2: number) => (
    <tbody>
      <tr className="ledger-side">
        <th scope="row">{words}</th>
        {numbers(gM2)}
      </tr>
    </tbody>
  );
  return (
    <div className="ledger-tables">
      <div className="ledger-account">
        <table className="ledger-table">
          <caption>
            Nitrogen from the morning of {dayWord(ledger.fromDay, units)} to the evening of{' '}
            {dayWord(ledger.toDay, units)}. Lines are rounded, sums are made before rounding; lines
            of nothing are left out.
          </caption>
          <thead>
            <tr>
              <th scope="col">nitrogen</th>
              <th scope="col">{units.nitrogen.short}</th>
              <th scope="col">{units.nitrogenOnBed.short} on the bed</th>
            </tr>
          </thead>
          {section('On hand at the start', worded(ledger.opening, holdingWords), totals.opening)}
          {section('Came in', worded(ledger.cameIn, cameInWords), totals.cameIn)}
          {side('On hand at the start and came in', totals.opening + totals.cameIn)}
          {section('Went out', worded(ledger.wentOut, wentOutWords), totals.wentOut)}
          {section('On hand at the end', worded(ledger.onHand, holdingWords), totals.onHand)}
          {side('Went out and on hand at the end', totals.wentOut + totals.onHand)}
        </table>
        <p className="ledger-check">{balanceWords(ledger.difference)}</p>
      </div>
      <table className="ledger-table">
        <caption>Moved within the bed in that time; counted in no sum above.</caption>
        <thead>
          <tr>
            <th scope="col">nitrogen</th>
            <th scope="col">{units.nitrogen.short}</th>
            <th scope="col">{units.nitrogenOnBed.short} on the bed</th>
          </tr>
        </thead>
        <tbody>
          {worded(ledger.moved, movedWords).map((line) => (
            <tr key={line.key}>
              <th scope="row">{line.words}</th>
              {numbers(line.gM2)}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
