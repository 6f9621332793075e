import type { ReactNode } from 'react';
import { Scroller } from '../../charts/Scroller';
import type { Band } from '../../core/season/draws/bands';
import { seasonStart, textFromDay } from '../../core/days';
import type { Bed } from '../../document/schema';
import { amount, amountWithUnit } from '../../words/chartFormat';
import { cautionSentence } from '../../words/cautionSentences';
import { likelyPercent } from '../../words/imaginedWords';
import { cameInWords, wentOutWords } from '../../words/ledgerWords';
import { carriedNames, carriedWords, seasonWord } from '../../words/seasonAccountWords';
import { finishedCrop } from '../finishedCrop';
import { plantedWords } from '../plantedWords';
import { coverSays } from '../coverSays';
import { useShown } from '../shown';
import { CoverWord, NitrogenWord, WeightWord } from '../StateWords';
import { useGarden, useMowings } from '../store';
import { useReadingContext, useToday } from '../useReadingContext';
import { sheetAccounts, type SheetAccount } from './sheetAccount';
import { sheetLog, type SheetLog } from './sheetLog';

/** Under this a line says nothing [g N/m2]. */
const leastShown = 0.05;
const noteLines = 12;
/** So many stops leave the sheet on its one page (ours). */
const mostStops = 2;

/** One bed on one sheet of paper: its season's account, its drawing, its log, and room to write. */
export function BedSheet(props: {
  readonly bed: Bed;
  /** the year a season began in; the latest where the bed has no such season */
  readonly season: number | null;
  /** the bed's section */
  readonly children: ReactNode;
}) {
  const { bed, season } = props;
  const garden = useGarden();
  const shown = useShown();
  const today = useToday();
  const context = useReadingContext();
  const results = useMowings((state) => state.bedResults[bed.id]);
  const draws = useMowings((state) => state.draws[bed.id]);
  if (!results) return <p className="soft">Reckoning {bed.name}…</p>;
  const accounts = sheetAccounts(garden, results, draws);
  const account = accounts.find(({ year }) => year === season) ?? accounts[0];
  if (!account) return null;
  const { seasonStartMonth } = garden.garden;
  // paper in the shed warns as the window does
  const stops = results.cautions
    .filter(({ weight }) => weight === 'stop')
    .slice(0, mostStops)
    .map((caution) => cautionSentence(caution, shown.units));
  const log = sheetLog(
    garden,
    bed,
    textFromDay(account.firstDay),
    textFromDay(account.lastDay),
    shown,
    context,
  );
  return (
    <article className="bed-sheet" aria-labelledby={`sheet-${bed.id}`}>
      <header className="bed-sheet-head">
        <h2 id={`sheet-${bed.id}`}>{bed.name}</h2>
        <p>
          {garden.garden.name}, season {seasonWord(account.year, seasonStartMonth)}.{' '}
          {shown.estimate(bed.areaM2, shown.units.area)}.{' '}
          {account.firstDay > seasonStart(account.firstDay, seasonStartMonth) &&
            `Counted from ${shown.dayWord(account.firstDay)}. `}
          Printed {shown.day(today)}.
        </p>
      </header>
      <div className="bed-sheet-top">
        {props.children}
        <dl>
          <div>
            <dt>Today in the ground</dt>
            <dd>{plantedWords(garden, bed.id, today, shown)}.</dd>
          </div>
          <div>
            <dt>Nitrogen</dt>
            <dd>
              <NitrogenWord
                state={results.verdict.state}
                finished={finishedCrop(results) !== null}
              />
              {account.ranges && results.verdict.ratio !== null && (
                <>
                  {' '}
                  Over the season its crops get {likelyPercent(account.ranges.needMet)} of what they
                  can use.
                </>
              )}
            </dd>
          </div>
          <div>
            <dt>Cover</dt>
            <dd>
              <CoverWord state={results.verdict.coverState} /> {coverSays(results, shown)}
            </dd>
          </div>
          {stops.length > 0 && (
            <div>
              <dt>Stop</dt>
              {stops.map((says) => (
                <dd key={says}>
                  <WeightWord weight="stop" /> {says}
                </dd>
              ))}
            </div>
          )}
        </dl>
      </div>
      <SheetTable account={account} areaM2={bed.areaM2} />
      <div className="bed-sheet-log">
        <LogPart title="Laid" log={log.layers} none="Nothing was laid." />
        <div>
          <LogPart
            title="Sown and planted"
            log={log.plantings}
            none={`Nothing from ${shown.dayWord(account.firstDay)} to ${shown.dayWord(account.lastDay)}.`}
          />
          <LogPart title="Picked, tested, seen" log={log.found} none="Nothing was written down." />
        </div>
      </div>
      <section className="bed-sheet-notes" aria-label={`Notes on ${bed.name}`}>
        <h3>Notes</h3>
        <div aria-hidden="true">
          {Array.from({ length: noteLines }, (_, at) => (
            <span key={at} />
          ))}
        </div>
      </section>
    </article>
  );
}

function LogPart(props: { readonly title: string; readonly log: SheetLog; readonly none: string }) {
  const shown = useShown();
  const { lines, more } = props.log;
  return (
    <div>
      <h3>{props.title}</h3>
      {lines.length === 0 && <p>{props.none}</p>}
      {more > 0 && (
        <p className="soft">
          {more} earlier {more === 1 ? 'line is' : 'lines are'} in the program.
        </p>
      )}
      <ul className="plain-list">
        {lines.map(({ id, date, words }) => (
          <li key={id}>
            <strong className="nowrap">{shown.dayShort(date)}</strong> {words}
          </li>
        ))}
      </ul>
    </div>
  );
}

interface Row {
  readonly key: string;
  readonly words: string;
  readonly soFar: number | null;
  readonly whole: number | null;
  readonly range: Band | null;
}

function SheetTable({
  account,
  areaM2,
}: {
  readonly account: SheetAccount;
  readonly areaM2: number;
}) {
  const { chart: units } = useShown();
  const { soFar, whole, carried, ranges } = account;
  const figure = (gM2: number | null): string => (gM2 === null ? '' : amount(gM2, units.nitrogen));
  const range = (band: Band | null): string =>
    band === null ? '' : `${figure(band.low)} to ${figure(band.high)}`;
  const lines = <Key extends string>(
    words: Readonly<Record<Key, string>>,
    of: (
      ledger: NonNullable<typeof whole>,
    ) => readonly { readonly key: Key; readonly gM2: number }[],
    bands: Partial<Record<Key, Band>>,
  ): readonly Row[] =>
    of(whole ?? soFar)
      .map(({ key, gM2 }) => ({
        key,
        words: words[key],
        soFar: of(soFar).find((one) => one.key === key)?.gM2 ?? 0,
        whole: whole ? gM2 : null,
        range: bands[key] ?? null,
      }))
      .filter((row) => Math.max(row.soFar, row.whole ?? 0) >= leastShown);
  const taken = (ledger: typeof soFar): number =>
    ledger.moved.find(({ key }) => key === 'taken up by the crop')?.gM2 ?? 0;
  const groups: readonly (readonly [string, readonly Row[]])[] = [
    [
      `It received ${amountWithUnit((whole ?? soFar).totals.cameIn * areaM2, units.nitrogenOnBed)} on the whole bed`,
      lines(
        cameInWords,
        ({ cameIn }) => cameIn,
        ranges ? { 'fixed from the air': ranges.fixed } : {},
      ),
    ],
    [
      'Its plants used',
      [
        {
          key: 'used',
          words: 'taken up from the soil',
          soFar: taken(soFar),
          whole: whole && taken(whole),
          range: null,
        },
      ],
    ],
    [
      'It gave and lost',
      lines(wentOutWords, ({ wentOut }) => wentOut, ranges ? { 'washed out': ranges.leached } : {}),
    ],
    [
      'It carries over',
      carriedNames
        .map((key): Row => ({
          key,
          words: carriedWords[key],
          soFar: null,
          whole: carried[key],
          range: null,
        }))
        .concat(
          ranges
            ? [
                {
                  key: 'top',
                  words: `of what is ready, in the top ${units.topSoil}`,
                  soFar: null,
                  whole: ranges.readyAtEnd.middle,
                  range: ranges.readyAtEnd,
                },
              ]
            : [],
        )
        .filter((row) => (row.whole ?? 0) >= leastShown),
    ],
  ];
  return (
    <Scroller label="Account of the season" className="table-scroll">
      <table className="ledger-table bed-sheet-table">
        <caption>Nitrogen, {units.nitrogen.long}</caption>
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col">{whole ? 'so far' : 'that season'}</th>
            <th scope="col">{whole ? 'as it should end' : 'at its end'}</th>
            <th scope="col">in 8 imagined seasons of 10</th>
          </tr>
        </thead>
        {groups.map(([heading, rows]) => (
          <tbody key={heading}>
            <tr className="ledger-heading">
              <th scope="rowgroup" colSpan={4}>
                {heading}
              </th>
            </tr>
            {rows.map((row) => (
              <tr key={row.key}>
                <th scope="row">{row.words}</th>
                <td>{figure(row.soFar)}</td>
                <td>{figure(row.whole)}</td>
                <td>{range(row.range)}</td>
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </Scroller>
  );
}
