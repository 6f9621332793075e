import { bedCautions, layerCautions } from '../../../app/core/season/cautions/cautions';
import type {
  CautionFacts,
  LayerFacts,
  Run,
  SourceFacts,
} from '../../../app/core/season/cautions/facts';
import type { BedSeason, LayerInput, PlantingInput } from '../../../app/core/season/input';
import { bedVerdict } from '../../../app/core/season/state';
import type { Caution, CautionKind } from '../../../app/core/season/verdict';
import { limits } from '../../../app/tables/thresholds';
import {
  between,
  dayIn,
  days,
  makeBed,
  makePlanting,
  makePlantingResult,
  makeResult,
  soilRelease,
  stepping,
  today,
} from '../madeBed';

/** Runs made by hand for tests of what a caution says; every number is invented. */

export const clearing = dayIn(8, 23);
export const all = (value: number): Float64Array => new Float64Array(days).fill(value);

export const openFacts: CautionFacts = {
  seasonStartMonth: 1,
  roof: 'open',
  lastSpringFrost: dayIn(4, 15),
  ownWell: false,
  dogs: true,
  layers: {},
  plantings: {},
};

export const cleanLawn: SourceFacts = {
  kind: 'lawn',
  name: 'Back',
  mayCarryWeedkiller: true,
  treatment: {
    answer: 'nothing',
    product: '',
    date: null,
    label: null,
    intervalDays: null,
    beanTestPassed: null,
  },
  mowingDays: [],
  creepingGrass: false,
  seedHeadsSeen: null,
};

export const layerFacts = (
  changes: Partial<LayerFacts> = {},
  source: Partial<SourceFacts> = {},
): LayerFacts => ({
  source: { ...cleanLawn, ...source },
  materialName: 'Grass clippings',
  cutOn: today,
  seedHeaded: false,
  isRawManure: false,
  burnsPlants: false,
  carriesSeed: false,
  isCompost: false,
  hazards: [],
  ...changes,
});

export interface Case {
  readonly plantings?: readonly PlantingInput[];
  readonly need?: number;
  readonly uptake?: number;
  readonly fixed?: number;
  readonly layers?: readonly LayerInput[];
  readonly bed?: Partial<BedSeason>;
  readonly result?: Parameters<typeof makeResult>[0];
}

export function runOf(made: Case): Run {
  const plantings = made.plantings ?? [makePlanting()];
  const input = makeBed({ plantings, layers: made.layers ?? [], ...made.bed });
  const result = makeResult({
    plantings: plantings.map((planting) =>
      makePlantingResult(planting, {
        need: made.need ?? 0.1,
        uptake: made.uptake ?? 0.1,
        fixed: made.fixed ?? 0,
      }),
    ),
    layers: (made.layers ?? []).map((layer) => ({
      id: layer.id,
      left: stepping(0, layer.day - 1, 1),
      depth: all(layer.laidDepth),
    })),
    ...made.result,
  });
  return { input, result, verdict: bedVerdict(input, result, input.today, limits) };
}

/** Cautions of proposed layers; `after` changes what the run with them shows. */
export const ofLayers = (
  layers: readonly LayerInput[],
  before: Case = {},
  after: Case = before,
  facts: Partial<CautionFacts> = {},
): readonly Caution[] =>
  layerCautions(
    runOf(before),
    runOf({ ...after, layers: [...(after.layers ?? before.layers ?? []), ...layers] }),
    layers.map(({ id }) => id),
    { ...openFacts, ...facts },
    limits,
  );

/** The same of a single layer. */
export const ofLayer = (
  layer: LayerInput,
  before: Case = {},
  after: Case = before,
  facts: Partial<CautionFacts> = {},
): readonly Caution[] => ofLayers([layer], before, after, facts);

export const ofBed = (made: Case, facts: Partial<CautionFacts> = {}): readonly Caution[] =>
  bedCautions(runOf(made), { ...openFacts, ...facts }, limits);

/** The one caution of a kind; a failed test where there is none or more than one. */
export function only(cautions: readonly Caution[], kind: CautionKind): Caution {
  const found = cautions.filter((caution) => caution.kind === kind);
  if (found.length !== 1) throw new Error(`${found.length} cautions of ${kind}`);
  return found[0]!;
}

/** Weight and row of the first caution of a kind, or "none". */
export function said(cautions: readonly Caution[], kind: CautionKind): string {
  const found = cautions.find((caution) => caution.kind === kind);
  return found ? `${found.weight}: ${found.row}` : 'none';
}

export const kindsOf = (cautions: readonly Caution[]): readonly CautionKind[] =>
  cautions.map(({ kind }) => kind);

/** A bed whose ratio is the wanted one: 3.2 g in the crop, the rest to come. */
export const withRatio = (ratio: number, made: Case = {}): Case => ({
  ...made,
  result: {
    ...made.result,
    flows: {
      [soilRelease]: between((ratio * 10.1 - 3.2) / (clearing - today), today + 1, clearing),
    },
  },
});
