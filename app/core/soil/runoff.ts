/**
 * Rain that runs off instead of soaking in, mm a day.
 *
 *     Q = (P - 0.2 S)^2 / (P + 0.8 S)     S = 25400/CN - 254
 *
 * Nothing runs off until a fifth of S has fallen.
 *
 * @param curveNumber CN, 0-100: 100 is a roof
 * @validity a day's rain on fields; one garden bed among others may take its neighbour's water too
 * @source USDA Soil Conservation Service 1986, TR-55, eq. 2-3 and 2-4
 */
export function runoffMillimetres(rainMillimetres: number, curveNumber: number): number {
  if (curveNumber <= 0) return 0;
  const held = 25_400 / Math.min(100, curveNumber) - 254;
  const beyond = rainMillimetres - 0.2 * held;
  return beyond > 0 ? beyond ** 2 / (rainMillimetres + 0.8 * held) : 0;
}

/**
 * A curve number of the tables, which stand for a fall of some 5 in 100, brought to another fall.
 *
 *     CN3 = CN exp(0.00673 (100 - CN))
 *     CNs = (CN3 - CN)/3 (1 - 2 exp(-13.86 s)) + CN
 *
 * @param fall s, metres of fall on a metre of ground
 * @source Williams (recalled, quoted second-hand; standing reported)
 */
export function curveNumberOnSlope(curveNumber: number, fall: number): number {
  const wet = curveNumber * Math.exp(0.00673 * (100 - curveNumber));
  return ((wet - curveNumber) / 3) * (1 - 2 * Math.exp(-13.86 * fall)) + curveNumber;
}
