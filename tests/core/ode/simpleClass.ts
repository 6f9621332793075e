import type { Kinetics, Pools } from './decayEquations';

export interface OneClass {
  readonly key: string;
  readonly laid: boolean;
  readonly kind: 'green' | 'mature';
  readonly pace: number;
  readonly p: Kinetics;
  pools: Pools;
  /** was there when a season turned: half a gram of its residue is eaten at once */
  isOld: boolean;
}

/** What is left of several of a placement and a kind, as one: sums, and rates by what there is of each. */
export function oneOf(parts: readonly OneClass[], yieldOf: number, key: string): OneClass {
  const all = (of: (one: OneClass) => number): number =>
    parts.reduce((sum, one) => sum + of(one), 0);
  const mean = (of: (p: Kinetics) => number, weight: (pools: Pools) => number): number =>
    all(({ p, pools }) => of(p) * weight(pools)) / all(({ pools }) => weight(pools));
  const { laid, kind, pace, p } = parts[0]!;
  const [R, B, H] = [
    all((one) => one.pools.R),
    all((one) => one.pools.B),
    all((one) => one.pools.H),
  ];
  const cnB =
    B > 0
      ? 1 /
        mean(
          (one) => 1 / one.cnB,
          (pools) => pools.B,
        )
      : p.cnB;
  const turns = (pools: Pools): number => pools.B + yieldOf * pools.R;
  return {
    key,
    laid,
    kind,
    pace,
    p: {
      ...p,
      k:
        R > 0
          ? mean(
              (one) => one.k,
              (pools) => pools.R,
            )
          : p.k,
      cn:
        R > 0
          ? 1 /
            mean(
              (one) => 1 / one.cn,
              (pools) => pools.R,
            )
          : p.cn,
      cnB,
      h:
        R + B > 0
          ? Math.min(
              mean((one) => one.h, turns),
              9 / cnB,
            )
          : p.h,
    },
    pools: { R, B, H },
    isOld: true,
  };
}
