/**
 * Exact definitions of the units that people type and read, each in our inside unit (`units.ts`).
 * The inch, pound and what follows from them: international yard and pound agreement of 1959
 * (1 in = 25.4 mm, 1 lb = 0.453 592 37 kg). US gallon 231 in3, US bushel 2150.42 in3, imperial
 * gallon 4.546 09 L. All are definitions: no measured constant enters.
 */
export const millimetresPerInch = 25.4;
export const millimetresPerFoot = 304.8;
export const millimetresPerYard = 914.4;

export const kilogramsPerPound = 0.453_592_37;
export const kilogramsPerOunce = 0.028_349_523_125;
export const kilogramsPerStone = 6.350_293_18;
export const kilogramsPerShortTon = 907.184_74;

export const litresPerCubicFoot = 28.316_846_592;
export const litresPerCubicYard = 764.554_857_984;
export const litresPerGallon = 3.785_411_784;
export const litresPerQuart = 0.946_352_946;
export const litresPerPint = 0.473_176_473;
export const litresPerBushel = 35.239_070_166_88;
export const litresPerPeck = 8.809_767_541_72;
export const litresPerImperialGallon = 4.546_09;

export const squareMetresPerSquareInch = 0.000_645_16;
export const squareMetresPerSquareFoot = 0.092_903_04;
export const squareMetresPerSquareYard = 0.836_127_36;
export const squareMetresPerAcre = 4046.856_422_4;

/** 1 lb spread on 1000 square feet, in g/m2 */
export const gramsPerM2PerPoundPer1000SquareFeet = kilogramsPerPound / squareMetresPerSquareFoot;
/** 1 lb per cubic yard, in kg/m3 */
export const kilogramsPerM3PerPoundPerCubicYard = kilogramsPerPound / (litresPerCubicYard / 1000);
/** 1 lb on an acre for each inch of height, in g/m2 for each cm */
export const gramsPerM2PerCentimetrePerPoundPerAcreInch =
  (kilogramsPerPound * 1000) / squareMetresPerAcre / 2.54;

export const celsiusFromFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
export const fahrenheitFromCelsius = (celsius: number): number => (celsius * 9) / 5 + 32;
