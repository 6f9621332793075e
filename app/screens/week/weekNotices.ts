import type { Caution, NitrogenState, Weight } from '../../core/season/verdict';
import type { Bed, Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';

export interface WeekNotice {
  readonly bed: Bed;
  readonly results: BedResults;
  readonly weight: Weight;
  /** the weightiest, shown with the bed; a second one only where both are stops */
  readonly cautions: readonly Caution[];
  /** how many more stand on the bed's own page */
  readonly more: number;
}

const weightRank: Readonly<Record<Weight, number>> = { stop: 3, caution: 2, note: 1 };

/** How much a state asks for: something to mend, something to feed, something to wait for. */
const stateRank: Readonly<Record<NitrogenState, number>> = {
  'over-fed': 4,
  short: 3,
  'enough to the end': 1,
  'enough for now': 1,
  'nothing planted': 0,
  'about right': 0,
};

/** Stops of one bed that stand on the page; of anything weaker the strongest alone. */
const stopsShown = 2;

const shownOf = (cautions: readonly Caution[]): readonly Caution[] =>
  cautions.slice(
    0,
    Math.min(stopsShown, Math.max(1, cautions.filter(({ weight }) => weight === 'stop').length)),
  );

/**
 * The beds that have something to say today, weightiest first: by the strongest caution of the
 * bed, then by its state, then by what it costs to leave it, then by the walk from the gate.
 * Nothing is decided here that the verdict and the cautions did not say.
 */
export function weekNotices(
  garden: Garden,
  bedResults: Readonly<Record<string, BedResults>>,
): { readonly notices: readonly WeekNotice[]; readonly quiet: readonly Bed[] } {
  const known = garden.beds.flatMap((bed) => {
    const results = bedResults[bed.id];
    return results ? [{ bed, results }] : [];
  });
  const said = known.map(({ bed, results }) => {
    const strongest = results.cautions[0]?.weight ?? null;
    const asks = stateRank[results.verdict.state];
    return { bed, results, strongest, asks };
  });
  const isQuiet = (one: (typeof said)[number]): boolean =>
    one.asks < 3 && (one.strongest === null || one.strongest === 'note');
  const rank = (one: (typeof said)[number]): readonly number[] => [
    one.strongest === null ? 0 : weightRank[one.strongest],
    one.asks,
    Math.abs(Math.log(Math.max(0.05, one.results.verdict.ratio ?? 1))),
    -(one.bed.steps ?? 0),
  ];
  const notices = said
    .filter((one) => !isQuiet(one))
    .sort((a, b) => {
      const [ranksA, ranksB] = [rank(a), rank(b)];
      const at = ranksA.findIndex((value, index) => value !== ranksB[index]);
      return at < 0 ? 0 : (ranksB[at] ?? 0) - (ranksA[at] ?? 0);
    })
    .map(({ bed, results, strongest }) => ({
      bed,
      results,
      weight: strongest ?? ('note' as const),
      cautions: shownOf(results.cautions),
      more: results.cautions.length - shownOf(results.cautions).length,
    }));
  return { notices, quiet: said.filter(isQuiet).map(({ bed }) => bed) };
}
