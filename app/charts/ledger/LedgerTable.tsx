import { LedgerRow } from '../ChartSays';
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
  const row = (line: string, words: string, gM2: number, className?: string) => (
    <LedgerRow
      key={line}
      ledger={ledger}
      line={line}
      words={words}
      figures={[
        accountAmount(gM2, units.nitrogen),
        accountAmount(gM2 * areaM2, units.nitrogenOnBed),
      ]}
      {...(className === undefined ? {} : { className })}
    />
  );
  const section = (heading: string, lines: readonly Line[], sum: number) => (
    <tbody>
      <tr className="ledger-heading">
        <th scope="rowgroup" colSpan={3}>
          {heading}
        </th>
      </tr>
      {lines.length === 0 && row(`nothing ${heading}`, 'nothing', 0)}
      {lines.map((line) => row(line.key, line.words, line.gM2))}
      {row(heading, 'together', sum, 'ledger-sum')}
    </tbody>
  );
  const side = (words: string, gM2: number) => (
    <tbody>{row(words, words, gM2, 'ledger-side')}</tbody>
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
          {worded(ledger.moved, movedWords).map((line) => row(line.key, line.words, line.gM2))}
        </tbody>
      </table>
    </div>
  );
}
