import { format } from 'prettier';
import {
  compareAll,
  compareSigns,
  scoreOf,
  type Compared,
  type ComparedSign,
  type Score,
} from './compare';
import { draws, drawnCoefficients } from './drawn';
import groupNotes from './groupNotes.json' with { type: 'json' };
import notCompared from './notCompared.json' with { type: 'json' };
import reasons from './why.json' with { type: 'json' };

export interface Report {
  readonly markdown: string;
  /** measured numbers outside our range for which nobody wrote why */
  readonly withoutReason: readonly string[];
  /** one line for the terminal */
  readonly summary: string;
}

const why: Readonly<Record<string, string>> = reasons;
const notes: Readonly<Record<string, string>> = groupNotes;
const bases: Readonly<Record<string, string>> = {
  none: '',
  kin: 'of the kind our factors were set against',
  row: 'our row comes from it',
};

/** Two figures at least, no more than one place after the point. */
const figure = (value: number): string => {
  const text = Math.abs(value) < 9.95 ? value.toFixed(1) : value.toFixed(0);
  return text === '-0.0' ? '0.0' : text;
};
const measuredText = ({ fact }: Compared): string => {
  if (fact.atMost) return `at most ${fact.high}`;
  return fact.low === fact.high ? `${fact.low}` : `${fact.low} to ${fact.high}`;
};
const oursText = (one: Compared): string =>
  `${figure(one.typical)} (${figure(one.low)} to ${figure(one.high)})`;
const sourceText = (fact: { source: string; place: string; standing: string }): string =>
  `${fact.source}; ${fact.place} (${fact.standing})`;

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...rows].map((row) => `| ${row.join(' | ')} |`).join('\n');

const shareInside = ({ inside, cases }: Score): string =>
  `${inside} of ${cases} (${((100 * inside) / cases).toFixed(0)} %)`;

function failures(all: readonly Compared[]): string {
  const outside = all.filter((one) => !one.isInside);
  return outside
    .map((one) => {
      const { fact } = one;
      const edge = one.touches ? ' The ranges overlap.' : '';
      const reason = why[fact.id] ?? 'Why is not known.';
      return `- **${fact.id}**, ${fact.what}: measured ${measuredText(one)}, ours ${oursText(one)} ${fact.unit}. ${reason}${edge}`;
    })
    .join('\n');
}

function summaryTable(all: readonly Compared[], groups: readonly string[]): string {
  const row = (name: string, cases: readonly Compared[], isOneUnit: boolean): string[] => {
    const score = scoreOf(cases);
    const sums = isOneUnit
      ? [figure(score.bias), figure(score.rootMeanSquare), figure(score.meanWidth)]
      : ['', '', ''];
    return [name, isOneUnit ? cases[0]!.fact.unit : '', ...sums, shareInside(score)];
  };
  const perCent = all.filter(({ fact }) => fact.unit === '% of N');
  return table(
    ['what', 'unit', 'bias', 'RMSE', 'mean width of the ranges', 'inside the 80 % range'],
    [
      ...groups.map((group) =>
        row(
          group,
          all.filter(({ fact }) => fact.group === group),
          true,
        ),
      ),
      row('**all shares of nitrogen**', perCent, true),
      row(
        '**all that our numbers do not rest on**',
        all.filter(({ fact }) => fact.setBy === 'none'),
        false,
      ),
      row('**all**', all, false),
    ],
  );
}

const groupTable = (cases: readonly Compared[]): string =>
  table(
    ['', 'what', 'measured', 'ours (8 in 10)', '', 'source', 'basis'],
    cases.map((one) => [
      one.fact.id,
      one.fact.what,
      measuredText(one),
      oursText(one),
      one.isInside ? 'inside' : one.touches ? 'outside, overlaps' : '**outside**',
      sourceText(one.fact),
      bases[one.fact.setBy] ?? '',
    ]),
  );

const signTable = (signs: readonly ComparedSign[]): string =>
  table(
    ['', 'finding', 'likely run', `draws that agree, of ${draws}`, 'source'],
    signs.map(({ fact, agreesTypically, agreeing }) => [
      fact.id,
      fact.what,
      agreesTypically ? 'agrees' : '**does not**',
      `${agreeing}`,
      sourceText(fact),
    ]),
  );

/** The whole comparison as it is written beside this file; the same program gives the same text. */
export async function report(): Promise<Report> {
  const all = compareAll();
  const signs = compareSigns();
  const groups = [...new Set(all.map(({ fact }) => fact.group))];
  const whole = scoreOf(all);
  const wrongSigns = signs.filter((one) => !one.agreesTypically);
  const text = `# Against what others measured

Written by \`npm run validate\`; do not edit. A measurement says whether the equations are the right ones; whether they are solved rightly is checked in \`tests/published\` and \`tests/core/ode\`.

Ours is the likely value with the range that 8 in 10 of ${draws} draws fill (seeded; the program's own way of drawing). Drawn: ${drawnCoefficients.join(', ')}; nitrogen, water, readiness and acting C:N of the material; the crop's uptake; organic matter; the weather. Not drawn: how far a stand-in place is from the true one, and how wrong a measurement may be. Bias is ours less measured; a printed range counts by its middle.

Of ${whole.cases} measured numbers ${whole.inside} lie inside our ranges, which should hold eight in ten. ${signs.length - wrongSigns.length} of ${signs.length} directions agree at likely values.

## Outside our range, and why

${failures(all)}
${wrongSigns.map(({ fact }) => `- **${fact.id}**, ${fact.what}: ours goes the other way at likely values.`).join('\n')}

## In short

${summaryTable(all, groups)}

${groups
  .map(
    (group) => `## ${group.slice(0, 1).toUpperCase()}${group.slice(1)}

${notes[group] ?? ''}

${groupTable(all.filter(({ fact }) => fact.group === group))}`,
  )
  .join('\n\n')}

## Directions only

${signTable(signs)}

## Read, but not compared

${table(
  ['', 'what', 'source', 'because'],
  notCompared.map((one) => [one.id, one.what, one.source, one.because]),
)}
`;
  return {
    markdown: await format(text, { parser: 'markdown', printWidth: 100 }),
    withoutReason: all
      .filter((one) => !one.isInside && why[one.fact.id] === undefined)
      .map(({ fact }) => fact.id),
    summary: `${whole.inside} of ${whole.cases} measured numbers lie inside the 80 % range; ${signs.length - wrongSigns.length} of ${signs.length} directions agree.`,
  };
}
