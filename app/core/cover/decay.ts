import type { Coefficients } from '../season/coefficients';
import type { MaterialClass } from '../season/input';

/** Carbon of one class of plant material, g C per m2 of bed. */
export interface DecayCarbon {
  readonly residue: number;
  readonly microbes: number;
  readonly humus: number;
}

/** Rates and ratios of one class, all functions of its C:N. */
export interface DecayParameters {
  readonly carbonToNitrogen: number;
  /** residue decay per normalised day */
  readonly decay: number;
  /** microbe turnover per normalised day */
  readonly turnover: number;
  readonly microbeCarbonToNitrogen: number;
  /** share of turned-over microbes that becomes humus */
  readonly humusShare: number;
  readonly humusCarbonToNitrogen: number;
}

/**
 * Parameters of the three-pool decomposition model for a C:N ratio.
 *
 *     k = 0.07 + 1.94/CN
 *     green : CNb = max(7.8, 15.4 - 76/CN) x 1.2,  h = (1 - 0.73 CN/(10.2 + CN)) x 1.2,  lam = 0.0110
 *     mature: CNb = max(7.8, 16.1 - 123/CN),       h =  1 - 0.69 CN/(11.2 + CN),          lam = 0.0076
 *     h <= min(0.95, 9.0/CNb), so that turnover never ties nitrogen up
 *
 * `inert` material (wood and bark lying on top) does not decay at all.
 *
 * @validity C:N 8-40 green, 10-150 mature; outside it the caller says so
 * @source Nicolardot, Recous & Mary 2001; Justes, Mary & Nicolardot 2009; the two factors 1.2 are
 *   the project's own (rows in `app/tables/coefficients.ts`)
 */
export function decayParameters(
  materialClass: Exclude<MaterialClass, 'slow'>,
  carbonToNitrogen: number,
  c: Coefficients,
): DecayParameters {
  const cn = carbonToNitrogen;
  const green = materialClass === 'green';
  const microbes = green
    ? Math.max(c.microbeMinimum, c.greenMicrobeBase - c.greenMicrobeSlope / cn) *
      c.greenMicrobeFactor
    : Math.max(c.microbeMinimum, c.matureMicrobeBase - c.matureMicrobeSlope / cn);
  const humified = green
    ? (1 - (c.greenHumusSlope * cn) / (c.greenHumusHalf + cn)) * c.greenHumusFactor
    : 1 - (c.matureHumusSlope * cn) / (c.matureHumusHalf + cn);
  const moves = materialClass === 'inert' ? 0 : 1;
  return {
    carbonToNitrogen: cn,
    decay: moves * (c.decayBase + c.decayPerCarbonToNitrogen / cn),
    turnover: moves * (green ? c.greenTurnover : c.matureTurnover),
    microbeCarbonToNitrogen: microbes,
    humusShare: Math.min(humified, c.humusShareLimit, c.humusTurnoverLimit / microbes),
    humusCarbonToNitrogen: c.humusCarbonToNitrogen,
  };
}

/**
 * One exact step of the three pools with two clocks.
 *
 *     a = k ta,  l = lam tb
 *     r = R e^-a
 *     b = B e^-l + Y a R e^-l (1 - e^-(a-l))/(a-l)          limit Y a R e^-l at a = l
 *     H += h (B + Y (R - r) - b)
 *
 * @param residueDays ta, normalised days (15 C, field capacity) of the residue
 * @param turnoverDays tb, normalised days of the soil
 * @param assimilation Y, share of decayed carbon built into microbes
 * @returns the carbon at the end of the step; what is missing left as carbon dioxide
 */
export function decayStep(
  carbon: DecayCarbon,
  p: DecayParameters,
  residueDays: number,
  turnoverDays: number,
  assimilation: number,
): DecayCarbon {
  const a = p.decay * residueDays;
  const l = p.turnover * turnoverDays;
  const difference = a - l;
  const spread = Math.abs(difference) < 1e-12 ? 1 : -Math.expm1(-difference) / difference;
  const residue = carbon.residue * Math.exp(-a);
  const microbes =
    carbon.microbes * Math.exp(-l) + assimilation * a * carbon.residue * Math.exp(-l) * spread;
  const eaten = -carbon.residue * Math.expm1(-a);
  return {
    residue,
    microbes,
    humus: carbon.humus + p.humusShare * (carbon.microbes + assimilation * eaten - microbes),
  };
}

/** Nitrogen set free between two states, g/m2; negative when nitrogen was tied up. */
export function nitrogenReleased(
  before: DecayCarbon,
  after: DecayCarbon,
  p: DecayParameters,
): number {
  return (
    (before.residue - after.residue) / p.carbonToNitrogen -
    (after.microbes - before.microbes) / p.microbeCarbonToNitrogen -
    (after.humus - before.humus) / p.humusCarbonToNitrogen
  );
}
