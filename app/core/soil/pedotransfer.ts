/** Sand and clay as shares of the mineral soil 0-1, organic matter in per cent of dry soil. */
export interface SoilMakeUp {
  readonly sand: number;
  readonly clay: number;
  readonly organicMatterPercent: number;
}

export interface SoilWater {
  /** m3 water per m3 soil at 1500 kPa */
  readonly wiltingPoint: number;
  /** m3 water per m3 soil at 33 kPa */
  readonly fieldCapacity: number;
  /** m3 water per m3 soil with all pores full */
  readonly saturation: number;
  readonly bulkDensityKgPerL: number;
}

/** The equations were fitted to soils of up to 8 % organic matter; beyond it they are held there. */
export const organicMatterLimit = 8;

/**
 * Soil water and density from texture and organic matter.
 *
 *     w  = -0.024 S + 0.487 C + 0.006 M + 0.005 S M - 0.013 C M + 0.068 S C + 0.031
 *     WP = w + (0.14 w - 0.02)
 *     f  = -0.251 S + 0.195 C + 0.011 M + 0.006 S M - 0.027 C M + 0.452 S C + 0.299
 *     FC = f + (1.283 f^2 - 0.374 f - 0.015)
 *     s  = 0.278 S + 0.034 C + 0.022 M - 0.018 S M - 0.027 C M - 0.584 S C + 0.078
 *     saturation = FC + s + (0.636 s - 0.107) - 0.097 S + 0.043
 *     density = 2.65 (1 - saturation)
 *
 * S, C = sand, clay [0-1], M = organic matter [% by mass].
 *
 * @validity mineral soils, organic matter 0-8 %
 * @source Saxton and Rawls 2006, equations 1-6, read in public copies that agree
 * @example saxtonRawls({ sand: 0.2, clay: 0.2, organicMatterPercent: 2.5 }) // FC 0.321, density 1.37
 */
export function saxtonRawls({ sand, clay, organicMatterPercent }: SoilMakeUp): SoilWater {
  const matter = Math.min(organicMatterPercent, organicMatterLimit);
  const w =
    -0.024 * sand +
    0.487 * clay +
    0.006 * matter +
    0.005 * sand * matter -
    0.013 * clay * matter +
    0.068 * sand * clay +
    0.031;
  const f =
    -0.251 * sand +
    0.195 * clay +
    0.011 * matter +
    0.006 * sand * matter -
    0.027 * clay * matter +
    0.452 * sand * clay +
    0.299;
  const s =
    0.278 * sand +
    0.034 * clay +
    0.022 * matter -
    0.018 * sand * matter -
    0.027 * clay * matter -
    0.584 * sand * clay +
    0.078;
  const fieldCapacity = f + (1.283 * f * f - 0.374 * f - 0.015);
  const saturation = fieldCapacity + s + (0.636 * s - 0.107) - 0.097 * sand + 0.043;
  return {
    wiltingPoint: w + (0.14 * w - 0.02),
    fieldCapacity,
    saturation,
    bulkDensityKgPerL: 2.65 * (1 - saturation),
  };
}
