import { halfUnitsOff } from '../readCases';
import {
  allowedHalfUnits,
  type Comparison,
  type ComparisonGroup,
  type Equation,
} from './comparison';
import { type KnownDifference, knownOf } from './known';
import { measuredSets, unusedExamples } from './measurements';
import type { StandingShare } from './standings';

/** Printed numbers that ours must meet; fewer is a failure. */
export const leastPrinted = 150;

export type Verdict = 'to its digits' | 'within one unit' | 'known' | 'differs';

export function verdictOf(comparison: Comparison, known: readonly KnownDifference[]): Verdict {
  const off = halfUnitsOff(comparison.ours, comparison.printed);
  if (off <= 1) return 'to its digits';
  if (off <= allowedHalfUnits(comparison)) return 'within one unit';
  return knownOf(known, comparison) ? 'known' : 'differs';
}

export interface Findings {
  readonly groups: readonly ComparisonGroup[];
  readonly known: readonly KnownDifference[];
  readonly shares: readonly StandingShare[];
  /** equations of a group that the program does not call */
  readonly unused: (equations: readonly Equation[]) => readonly Equation[];
}

export interface Report {
  readonly markdown: string;
  readonly complaints: readonly string[];
  readonly summary: readonly string[];
}

const decimalsOf = (printed: string): number => printed.split('.')[1]?.length ?? 0;

/** Two digits beyond the print: enough to see how near it is, few enough to be alike on any machine. */
function shown(value: number, printed: string): string {
  const text = value.toFixed(Math.min(12, decimalsOf(printed) + 2));
  return Number(text) === 0 ? text.replace('-', '') : text;
}

const isPrinted = ({ standing }: Comparison): boolean => standing === 'printed';
const meets = (verdict: Verdict): boolean =>
  verdict === 'to its digits' || verdict === 'within one unit';

const tableOf = (
  comparisons: readonly Comparison[],
  known: readonly KnownDifference[],
): readonly string[] => [
  '| source | place | quantity | printed | ours | difference | verdict |',
  '| --- | --- | --- | ---: | ---: | ---: | --- |',
  ...comparisons.map((one) => {
    const difference = one.ours - Number(one.printed);
    const cells = [
      one.source,
      one.place,
      isPrinted(one) ? one.quantity : `${one.quantity} _(${one.standing})_`,
      one.printed,
      shown(one.ours, one.printed),
      shown(difference, one.printed),
      verdictOf(one, known),
    ];
    return `| ${cells.join(' | ')} |`;
  }),
];

const percent = (part: number, whole: number): string =>
  whole === 0 ? '-' : `${((100 * part) / whole).toFixed(0)} %`;

/** The whole of `RESULTS.md`, what is wrong, and the lines for the terminal. */
export function report({ groups, known, shares, unused }: Findings): Report {
  const idle = groups.filter(({ equations }) => unused(equations).length > 0);
  const active = groups.filter((group) => !idle.includes(group));
  const printedGroups = active
    .map((group) => ({ ...group, comparisons: group.comparisons.filter(isPrinted) }))
    .filter(({ comparisons }) => comparisons.length > 0);
  const others = active.flatMap(({ comparisons }) => comparisons.filter((one) => !isPrinted(one)));
  const meeting = (comparisons: readonly Comparison[]): number =>
    comparisons.filter((one) => meets(verdictOf(one, known))).length;
  const sums = printedGroups.filter(({ passesThrough }) => !passesThrough);
  const through = printedGroups.filter(({ passesThrough }) => passesThrough);
  const all = (list: readonly ComparisonGroup[]): readonly Comparison[] =>
    list.flatMap(({ comparisons }) => comparisons);
  const met = meeting(all(printedGroups));

  const everything = groups.flatMap(({ comparisons }) => comparisons);
  const differing = everything.filter((one) => verdictOf(one, known) === 'differs');
  const idleKnown = known.filter(
    (line) =>
      !everything.some((one) => verdictOf(one, known) === 'known' && knownOf(known, one) === line),
  );
  const complaints = [
    ...(met < leastPrinted
      ? [`Only ${met} printed numbers are met, ${leastPrinted} are wanted.`]
      : []),
    ...differing.map(
      (one) =>
        `${one.source}, ${one.place}, ${one.quantity}: printed ${one.printed}, ours ${shown(one.ours, one.printed)}, and known.md gives no reason.`,
    ),
    ...idleKnown.map(
      (line) => `known.md speaks of ${line.source}, ${line.quantity}, which no longer differs.`,
    ),
  ];

  const coefficients = shares.reduce((sum, share) => sum + share.coefficients, 0);
  const rows = shares.reduce((sum, share) => sum + share.rows, 0);
  const standingLines = shares
    .filter((share) => share.coefficients > 0)
    .map(
      (share) =>
        `| ${share.standing} | ${share.coefficients} | ${percent(share.coefficients, coefficients)} |`,
    );
  const idleCount = all(idle).length;
  const markdown = [
    '# The program’s sums against other people’s',
    '',
    'Written by `npm run verify`; `npm test` writes it anew and fails on any difference. Verdicts: _to its digits_, within half a',
    'unit of the last digit printed; _within one unit_, where the print is known to be rounded so; _known_, a difference that',
    '[known.md](known.md) explains; _differs_, none of these, and the program fails.',
    '',
    `Met: **${met} numbers printed in a publication** and read there, ${meeting(all(sums))} of them worked out by the program and`,
    `${meeting(all(through))} lengths of stages that pass through its tables and crop coefficient; known to differ: ${all(printedGroups).length - met}. Recalled,`,
    `second-hand or worked out apart: ${meeting(others)} of ${others.length}.${idleCount > 0 ? ` Not counted, as the program does not call the equation yet: ${idleCount}.` : ''}`,
    '',
    '## Printed in a publication',
    '',
    ...printedGroups.flatMap(({ title, comparisons, equations }) => [
      `### ${title}: ${meeting(comparisons)} of ${comparisons.length}`,
      '',
      `By ${equations.map(({ name, file }) => `\`${name}\` (${file})`).join(', ')}.`,
      '',
      ...tableOf(comparisons, known),
      '',
    ]),
    '## Recalled, second-hand or worked out apart',
    '',
    'Agreement here shows that the program solves the equations, not that the equations are right.',
    '',
    ...tableOf(others, known),
    '',
    '## Measurements',
    '',
    'Collected readings of nature, which the model is held against in `tests/validation`; here only what there is.',
    '',
    '| what was measured | readings | from |',
    '| --- | ---: | --- |',
    ...measuredSets.map(({ what, lines, from }) => `| ${what} | ${lines} | ${from} |`),
    '',
    '## Not used',
    '',
    ...(idle.length > 0
      ? [
          'Built and met, but called by no other file of the program yet, so not counted above:',
          '',
          ...idle.flatMap(({ title, comparisons, equations }) => [
            `### ${title}: ${meeting(comparisons)} of ${comparisons.length}`,
            '',
            `Waiting for ${unused(equations)
              .map(({ name, file }) => `\`${name}\` (${file})`)
              .join(', ')}.`,
            '',
            ...tableOf(comparisons, known),
            '',
          ]),
        ]
      : []),
    'Printed examples of equations the program does not have:',
    '',
    ...unusedExamples.map(([where, what]) => `- ${where}: ${what}`),
    '',
    '## How the coefficients of the engine stand',
    '',
    `| standing | of ${coefficients} | share |`,
    '| --- | ---: | ---: |',
    ...standingLines,
    '',
  ].join('\n');

  const summary = [
    `Printed in a publication: ${met} met (${leastPrinted} wanted), ${all(printedGroups).length - met} known to differ.`,
    `  worked out by the program ${meeting(all(sums))}, lengths of stages ${meeting(all(through))}`,
    `Recalled, second-hand or worked out apart: ${meeting(others)} of ${others.length}.`,
    `Built but not called by the program yet: ${idleCount}.`,
    'Standing of the coefficients / of all numbers in the tables:',
    ...shares.map(
      (share) =>
        `  ${share.standing.padEnd(16)} ${percent(share.coefficients, coefficients).padStart(5)} (${share.coefficients})  ${percent(share.rows, rows).padStart(5)} (${share.rows})`,
    ),
  ];
  return { markdown, complaints, summary };
}
