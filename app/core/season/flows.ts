/** The pools of model section "Basis", in g N per m2 of bed. */
export const pools = [
  'coverResidue',
  'coverMicrobes',
  'coverHumus',
  'coverFree',
  'dugResidue',
  'dugMicrobes',
  'dugHumus',
  'slow',
  'soilOrganic',
  'youngHumus',
  'mineralTop',
  'mineralLower',
  'crop',
] as const;
export type Pool = (typeof pools)[number];

/**
 * Where nitrogen comes from and goes to outside the bed. Sources only give, sinks only take. The
 * soil under the lower layer is both, by two names: `deeperSoil` is what a season with deeper roots
 * can reach anew, `belowRoots` what a season with shallower ones cannot.
 */
export const sources = ['applied', 'rain', 'air', 'deeperSoil'] as const;
export const sinks = [
  'ammonia',
  'leached',
  'denitrified',
  'harvested',
  'removed',
  'belowRoots',
] as const;
export type Source = (typeof sources)[number];
export type Sink = (typeof sinks)[number];
export type Place = Pool | Source | Sink;

export interface FlowKind {
  readonly from: Place;
  readonly to: Place;
  readonly why: string;
}

/**
 * Every way nitrogen can move in a day. Nothing else changes a pool, so
 * charts, explanations and the balance read one list. Order is part of the contract: flows are
 * stored by index.
 */
export const flowKinds = [
  { from: 'applied', to: 'coverResidue', why: 'laid on' },
  { from: 'applied', to: 'coverFree', why: 'ready at laying' },
  { from: 'applied', to: 'dugResidue', why: 'dug in' },
  { from: 'applied', to: 'mineralTop', why: 'ready when dug in' },
  { from: 'applied', to: 'slow', why: 'slow material' },
  { from: 'applied', to: 'soilOrganic', why: 'slow material dug in' },
  { from: 'rain', to: 'mineralTop', why: 'rain' },
  { from: 'air', to: 'crop', why: 'fixed' },
  { from: 'coverResidue', to: 'coverMicrobes', why: 'eaten' },
  { from: 'coverMicrobes', to: 'coverHumus', why: 'humified' },
  { from: 'coverMicrobes', to: 'coverFree', why: 'released' },
  { from: 'coverFree', to: 'coverMicrobes', why: 'held back' },
  { from: 'mineralTop', to: 'coverMicrobes', why: 'held back from the soil' },
  { from: 'coverFree', to: 'ammonia', why: 'to the air' },
  { from: 'coverFree', to: 'mineralTop', why: 'washed in' },
  { from: 'dugResidue', to: 'dugMicrobes', why: 'eaten' },
  { from: 'dugMicrobes', to: 'dugHumus', why: 'humified' },
  { from: 'dugMicrobes', to: 'mineralTop', why: 'released' },
  { from: 'mineralTop', to: 'dugMicrobes', why: 'held back' },
  { from: 'coverResidue', to: 'dugResidue', why: 'cover dug in' },
  { from: 'coverMicrobes', to: 'dugMicrobes', why: 'cover dug in' },
  { from: 'coverHumus', to: 'dugHumus', why: 'cover dug in' },
  { from: 'coverFree', to: 'mineralTop', why: 'cover dug in' },
  { from: 'coverResidue', to: 'removed', why: 'raked off' },
  { from: 'coverMicrobes', to: 'removed', why: 'raked off' },
  { from: 'coverHumus', to: 'removed', why: 'raked off' },
  { from: 'coverFree', to: 'removed', why: 'raked off' },
  { from: 'slow', to: 'removed', why: 'raked off' },
  { from: 'slow', to: 'coverFree', why: 'released from compost' },
  { from: 'slow', to: 'mineralTop', why: 'released from compost' },
  { from: 'slow', to: 'soilOrganic', why: 'compost becomes soil' },
  { from: 'coverHumus', to: 'youngHumus', why: 'season end' },
  { from: 'dugHumus', to: 'youngHumus', why: 'season end' },
  { from: 'soilOrganic', to: 'mineralTop', why: 'released by the soil' },
  { from: 'youngHumus', to: 'mineralTop', why: 'released by last year’s humus' },
  { from: 'mineralTop', to: 'mineralLower', why: 'washed down' },
  { from: 'mineralLower', to: 'leached', why: 'washed out' },
  { from: 'mineralTop', to: 'denitrified', why: 'wet soil' },
  { from: 'mineralTop', to: 'crop', why: 'taken up' },
  { from: 'mineralLower', to: 'crop', why: 'taken up' },
  { from: 'mineralTop', to: 'crop', why: 'luxury' },
  { from: 'mineralLower', to: 'crop', why: 'luxury' },
  { from: 'crop', to: 'harvested', why: 'picked' },
  { from: 'crop', to: 'removed', why: 'cleared away' },
  { from: 'crop', to: 'coverResidue', why: 'tops left' },
  { from: 'crop', to: 'dugResidue', why: 'tops dug in' },
  { from: 'crop', to: 'dugResidue', why: 'roots left' },
  { from: 'deeperSoil', to: 'mineralLower', why: 'roots reach deeper' },
  { from: 'mineralLower', to: 'belowRoots', why: 'roots reach less deep' },
] as const satisfies readonly FlowKind[];

export type FlowIndex = number;

/** Index of a flow kind; throws for a flow that is not in the list, so a typing slip shows at module load. */
export function flowIndex(from: Place, to: Place, why: string): FlowIndex {
  const index = flowKinds.findIndex(
    (kind) => kind.from === from && kind.to === to && kind.why === why,
  );
  if (index < 0) throw new Error(`No such flow: ${from} -> ${to} (${why})`);
  return index;
}
