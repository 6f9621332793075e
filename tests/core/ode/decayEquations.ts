import type { Coefficients } from '../../../app/core/season/coefficients';
import { follow } from './solve';

/**
 * The three pools written anew as differential equations, from the model and not from the program:
 *
 *     dR/dt = -k u R
 *     dB/dt =  Y k u R - lam v B
 *     dH/dt =  h lam v B
 *
 * u, v normalised days per day of the residue and of the soil. Only coefficients, which are data,
 * are shared with the program.
 */
export interface Pools {
  readonly R: number;
  readonly B: number;
  readonly H: number;
}

export interface Kinetics {
  readonly k: number;
  readonly lam: number;
  readonly h: number;
  readonly cn: number;
  readonly cnB: number;
  readonly cnH: number;
}

export function kineticsOf(kind: 'green' | 'mature', cn: number, c: Coefficients): Kinetics {
  const k = c.decayBase + c.decayPerCarbonToNitrogen / cn;
  const green = kind === 'green';
  const cnB = green
    ? c.greenMicrobeFactor *
      Math.max(c.microbeMinimum, c.greenMicrobeBase - c.greenMicrobeSlope / cn)
    : Math.max(c.microbeMinimum, c.matureMicrobeBase - c.matureMicrobeSlope / cn);
  const raw = green
    ? c.greenHumusFactor * (1 - (c.greenHumusSlope * cn) / (c.greenHumusHalf + cn))
    : 1 - (c.matureHumusSlope * cn) / (c.matureHumusHalf + cn);
  return {
    k,
    lam: green ? c.greenTurnover : c.matureTurnover,
    h: Math.min(raw, c.humusShareLimit, c.humusTurnoverLimit / cnB),
    cn,
    cnB,
    cnH: c.humusCarbonToNitrogen,
  };
}

/** The pools after a time at constant clocks. */
export function decayed(
  { R, B, H }: Pools,
  p: Kinetics,
  u: number,
  v: number,
  assimilation: number,
  time: number,
): Pools {
  const [r, b, h] = follow([R, B, H], time, (y) => {
    const eaten = p.k * u * y[0]!;
    const turned = p.lam * v * y[1]!;
    return [-eaten, assimilation * eaten - turned, p.h * turned];
  });
  return { R: r!, B: b!, H: h! };
}

/** Nitrogen held, g per m2 where the pools are g carbon per m2. */
export const heldNitrogen = ({ R, B, H }: Pools, p: Kinetics): number =>
  R / p.cn + B / p.cnB + H / p.cnH;
