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
  /** g N per g C of each pool: the ratios turned round, for the day would divide by them again and again */
  readonly inResidue: number;
  readonly inMicrobes: number;
  readonly inHumus: number;
}

/** Parameters, all made in one place: objects from several are of several builds, and slow to read. */
export const parametersOf = (
  carbonToNitrogen: number,
  decay: number,
  turnover: number,
  microbeCarbonToNitrogen: number,
  humusShare: number,
  humusCarbonToNitrogen: number,
): DecayParameters => ({
  carbonToNitrogen,
  decay,
  turnover,
  microbeCarbonToNitrogen,
  humusShare,
  humusCarbonToNitrogen,
  inResidue: 1 / carbonToNitrogen,
  inMicrobes: 1 / microbeCarbonToNitrogen,
  inHumus: 1 / humusCarbonToNitrogen,
});

/**
 * Parameters of the three-pool decomposition model for a C:N ratio.
 *
 *     k = 0.07 + 1.94/CN
 *     green : CNb = max(7.8, 15.4 - 76/CN) x 1.2,  h = (1 - 0.73 CN/(10.2 + CN)) x 1.2,  lam = 0.0110
 *     mature: CNb = max(7.8, 16.1 - 123/CN),       h =  1 - 0.69 CN/(11.2 + CN),          lam = 0.0076
 *     h <= min(0.95, 9.0/CNb), so that turnover never ties nitrogen up
 *
 * `inert` material (chips and bark lying on top) does not decay at all. `wood` (sawdust, chips in the
 * ground) is eaten at a rate of its own and by the microbes of mature material: lignin holds it up, which
 * no C:N knows of.
 *
 * @validity C:N 8-40 green, 10-150 mature; outside it the caller says so
 * @source wood: Allison & Murphy 1962 (row `woodDecay`); the rest Nicolardot, Recous & Mary 2001; Justes, Mary & Nicolardot 2009; the two factors 1.2 are
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
  return parametersOf(
    cn,
    materialClass === 'wood'
      ? c.woodDecay
      : moves * (c.decayBase + c.decayPerCarbonToNitrogen / cn),
    moves * (green ? c.greenTurnover : c.matureTurnover),
    microbes,
    Math.min(humified, c.humusShareLimit, c.humusTurnoverLimit / microbes),
    c.humusCarbonToNitrogen,
  );
}

/**
 * A class's step of one day, kept by the class and written anew every day: a day makes no new
 * objects, and hands no loose numbers from function to function, which would make some.
 */
export interface DecayDay {
  /** ta and tb, normalised days (15 C, field capacity) of the residue and of the soil */
  residueDays: number;
  turnoverDays: number;
  /** e^-l of the microbes and 1 - e^-l, l = lam tb: the same for all classes of a kind */
  turned: number;
  lost: number;
  /** a = k ta of the residue, and 1 - e^-a (`setClocks`) */
  decayed: number;
  gone: number;
  /** (1 - e^-(a-l))/(a-l) */
  spread: number;
  /** the carbon at the end of the step; what is missing left as carbon dioxide (`stepAtYield`) */
  readonly after: { residue: number; microbes: number; humus: number };
  /** g N/m2 that went from residue to microbes and from microbes to humus */
  eaten: number;
  humified: number;
  /** g N/m2 set free; negative: tied up */
  released: number;
  /** the same at yield 0, and what each unit of yield adds (`setReleaseLine`) */
  atNoYield: number;
  perYield: number;
}

/** Not a number until the first step: a 0 would make the fields whole numbers first, and slow. */
export const newDecayDay = (): DecayDay => ({
  residueDays: Number.NaN,
  turnoverDays: Number.NaN,
  turned: Number.NaN,
  lost: Number.NaN,
  decayed: Number.NaN,
  gone: Number.NaN,
  spread: Number.NaN,
  after: { residue: Number.NaN, microbes: Number.NaN, humus: Number.NaN },
  eaten: Number.NaN,
  humified: Number.NaN,
  released: Number.NaN,
  atNoYield: Number.NaN,
  perYield: Number.NaN,
});

/**
 * What the clocks of a day make of a class, whatever the yield of its microbes.
 *
 * Where a and l lie apart, (1 - e^-(a-l))/(a-l) is (e^-l - e^-a)/(e^-l (a-l)), which are at hand;
 * where they lie close, that would lose digits.
 */
export function setClocks(day: DecayDay, p: DecayParameters): void {
  const a = p.decay * day.residueDays;
  const difference = a - p.turnover * day.turnoverDays;
  const apart = Math.abs(difference);
  day.decayed = a;
  day.gone = -Math.expm1(-a);
  day.spread =
    apart > 0.1 * a
      ? (day.gone - day.lost) / (day.turned * difference)
      : apart < 1e-12
        ? 1
        : -Math.expm1(-difference) / difference;
}

/** The same for a class with a mere crumb of residue, which is eaten whole if it is eaten at all. */
export function setCrumb(day: DecayDay, p: DecayParameters): void {
  day.decayed = 0;
  day.gone = day.residueDays > 0 && p.decay > 0 ? 1 : 0;
  day.spread = 1;
}

/**
 * One exact step of the three pools with two clocks, and the nitrogen that goes with it.
 *
 *     a = k ta,  l = lam tb
 *     r = R e^-a
 *     b = B e^-l + Y a R e^-l (1 - e^-(a-l))/(a-l)          limit Y a R e^-l at a = l
 *     H += h (B + Y (R - r) - b)
 *
 * @param assimilation Y, share of decayed carbon built into microbes
 */
export function stepAtYield(
  day: DecayDay,
  carbon: DecayCarbon,
  p: DecayParameters,
  assimilation: number,
): void {
  const { after } = day;
  const eaten = carbon.residue * day.gone;
  const microbes =
    carbon.microbes * day.turned +
    assimilation * day.decayed * carbon.residue * day.turned * day.spread;
  const residue = carbon.residue - eaten;
  const humus = carbon.humus + p.humusShare * (carbon.microbes + assimilation * eaten - microbes);
  after.residue = residue;
  after.microbes = microbes;
  after.humus = humus;
  // by what is kept: what a pool rounds away is in no flow
  day.eaten = (carbon.residue - residue) * p.inResidue;
  day.humified = (humus - carbon.humus) * p.inHumus;
  day.released = day.eaten - (microbes - carbon.microbes) * p.inMicrobes - day.humified;
}

/**
 * What `stepAtYield` would release, as the straight line over the yield that it is:
 *
 *     n0 = R (1 - e^-a)/CN + B (1 - e^-l) (1/CNb - h/CNh)
 *     n  = n0 - Y (G/CNb + h (R (1 - e^-a) - G)/CNh),  G = a R e^-l (1 - e^-(a-l))/(a-l)
 */
export function setReleaseLine(day: DecayDay, carbon: DecayCarbon, p: DecayParameters): void {
  const eaten = carbon.residue * day.gone;
  const grown = day.decayed * carbon.residue * day.turned * day.spread;
  const inHumified = p.humusShare * p.inHumus;
  day.atNoYield = eaten * p.inResidue + carbon.microbes * day.lost * (p.inMicrobes - inHumified);
  day.perYield = -(grown * p.inMicrobes + (eaten - grown) * inHumified);
}

/** `stepAtYield` without residue: what is left of the microbes turns over, at whatever yield. */
export function stepSpent(day: DecayDay, carbon: DecayCarbon, p: DecayParameters): void {
  const { after } = day;
  const microbes = carbon.microbes * day.turned;
  const humus = carbon.humus + p.humusShare * (carbon.microbes - microbes);
  after.residue = 0;
  after.microbes = microbes;
  after.humus = humus;
  day.eaten = 0;
  day.humified = (humus - carbon.humus) * p.inHumus;
  day.released = (carbon.microbes - microbes) * p.inMicrobes - day.humified;
}
