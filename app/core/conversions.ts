/**
 * Exact definitions of the units that people type and read, each in our inside unit (`units.ts`).
 * The inch, pound and what follows from them: international yard and pound agreement of 1959
 * (1 in = 25.4 mm, 1 lb = 0.453 592 37 kg). US gallon 231 in3, US bushel 2150.42 in3, imperial
 * gallon 4.546 09 L. All are definitions: no measured constant enters.
 */
export const millimetresPerInch = 25.4;
export const millimetresPerFoot = 12 * millimetresPerInch;
export const millimetresPerYard = 36 * millimetresPerInch;

export const kilogramsPerPound = 0.453_592_37;
export const kilogramsPerOunce = kilogramsPerPound / 16;
export const kilogramsPerStone = 14 * kilogramsPerPound;
export const kilogramsPerShortTon = 2000 * kilogramsPerPound;

const litresPerCubicInch = 0.016_387_064;
export const litresPerCubicFoot = 1728 * litresPerCubicInch;
export const litresPerCubicYard = 27 * litresPerCubicFoot;
export const litresPerGallon = 231 * litresPerCubicInch;
export const litresPerQuart = litresPerGallon / 4;
export const litresPerPint = litresPerGallon / 8;
export const litresPerBushel = 2150.42 * litresPerCubicInch;
export const litresPerPeck = litresPerBushel / 4;
export const litresPerImperialGallon = 4.546_09;

export const squareMetresPerSquareInch = 0.000_645_16;
export const squareMetresPerSquareFoot = 144 * squareMetresPerSquareInch;
export const squareMetresPerSquareYard = 9 * squareMetresPerSquareFoot;
export const squareMetresPerAcre = 4840 * squareMetresPerSquareYard;

/** 1 lb spread on 100 square feet, in g/m2 */
export const gramsPerM2PerPoundPer100SquareFeet =
  (kilogramsPerPound * 1000) / (100 * squareMetresPerSquareFoot);
/** 1 lb per cubic yard, in kg/m3 */
export const kilogramsPerM3PerPoundPerCubicYard =
  kilogramsPerPound / (litresPerCubicYard / 1000);
/** 1 lb on an acre for each inch of height, in g/m2 for each cm */
export const gramsPerM2PerCentimetrePerPoundPerAcreInch =
  (kilogramsPerPound * 1000) / squareMetresPerAcre / 2.54;

export const celsiusFromFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
export const fahrenheitFromCelsius = (celsius: number): number => (celsius * 9) / 5 + 32;
