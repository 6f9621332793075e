import { millimetresPerMegajoule, sunOfDay } from '../../../app/core/soil/evapotranspiration';
import {
  airPressure,
  daylightHours,
  meanSaturationPressure,
  type MeasuredDay,
  penmanMonteith,
  psychrometricConstant,
  radiationOfDay,
  saturationPressure,
  saturationSlope,
  vapourPressure,
  windAtTwoMetres,
} from '../../../app/core/soil/penmanMonteith';
import { likelyGaps } from '../../../app/tables/weatherGaps';

const gaps = likelyGaps('inland');

/** A day of which an example gives only a part; what it does not use is left at nothing. */
const day = (given: Partial<MeasuredDay>): MeasuredDay => ({
  minimumCelsius: 15,
  maximumCelsius: 25,
  latitudeDegrees: 0,
  dayOfYear: 1,
  elevationMetres: 0,
  humidity: null,
  wind: null,
  sun: null,
  ...given,
});

const bangkok = day({
  minimumCelsius: 25.6,
  maximumCelsius: 34.8,
  latitudeDegrees: 13 + 44 / 60,
  dayOfYear: 105,
  elevationMetres: 2,
  humidity: { kind: 'vapour pressure', kilopascals: 2.85 },
  wind: { metresPerSecond: 2, heightMetres: 2 },
  sun: { kind: 'hours', hours: 8.5 },
});
/** Means of a month: the ground takes up 0.14 MJ/m2 a day, printed. */
const bangkokSoilHeat = 0.14;
const uccle = day({
  minimumCelsius: 12.3,
  maximumCelsius: 21.5,
  latitudeDegrees: 50 + 48 / 60,
  dayOfYear: 187,
  elevationMetres: 100,
  humidity: { kind: 'relative', lowestPercent: 63, highestPercent: 84 },
  wind: { metresPerSecond: 10 / 3.6, heightMetres: 10 },
  sun: { kind: 'hours', hours: 9.25 },
});
const lyon = day({
  minimumCelsius: 14.8,
  maximumCelsius: 26.6,
  latitudeDegrees: 45 + 43 / 60,
  dayOfYear: 196,
  elevationMetres: 200,
});
const rio = day({
  minimumCelsius: 19.1,
  maximumCelsius: 25.1,
  latitudeDegrees: -22.9,
  dayOfYear: 135,
  sun: { kind: 'hours', hours: 220 / 31 },
});

const middle = ({ minimumCelsius, maximumCelsius }: MeasuredDay): number =>
  (minimumCelsius + maximumCelsius) / 2;

const pressures = (of: MeasuredDay, unit: '' | ' kPa'): Record<string, () => number> => ({
  [unit === '' ? 'slope' : 'slope kPa/C']: () => saturationSlope(middle(of)),
  'P kPa': () => airPressure(of.elevationMetres),
  [unit === '' ? 'gamma' : 'gamma kPa/C']: () =>
    psychrometricConstant(airPressure(of.elevationMetres)),
  [`e0(Tmax)${unit}`]: () => saturationPressure(of.maximumCelsius),
  [`e0(Tmin)${unit}`]: () => saturationPressure(of.minimumCelsius),
  [`es${unit}`]: () => meanSaturationPressure(of.minimumCelsius, of.maximumCelsius),
  ea: () => vapourPressure(of),
  'es-ea': () => meanSaturationPressure(of.minimumCelsius, of.maximumCelsius) - vapourPressure(of),
});

const energy = (of: MeasuredDay): Record<string, () => number> => ({
  'N h': () => daylightHours(of.latitudeDegrees, of.dayOfYear),
  Rs: () => radiationOfDay(of, gaps).solar,
  Rso: () => radiationOfDay(of, gaps).clearSky,
  Rns: () => radiationOfDay(of, gaps).shortwave,
  Rnl: () => radiationOfDay(of, gaps).longwave,
  Rn: () => radiationOfDay(of, gaps).net,
});

/** Example 11 gives the radiation that Example 10 rounded, and a clear sky of 18.8. */
const rioSky = day({
  ...rio,
  humidity: { kind: 'vapour pressure', kilopascals: 2.1 },
  sun: { kind: 'radiation', megajoules: 14.5 },
});

const examples: Readonly<Record<string, Readonly<Record<string, () => number>>>> = {
  '2': {
    'P kPa': () => airPressure(1800),
    'gamma kPa/C': () => psychrometricConstant(airPressure(1800)),
  },
  '3': { 'es kPa': () => meanSaturationPressure(15, 24.5) },
  '5': {
    'ea kPa': () =>
      vapourPressure(
        day({
          minimumCelsius: 18,
          humidity: { kind: 'relative', lowestPercent: 54, highestPercent: 82 },
        }),
      ),
  },
  '8': {
    dr: () => sunOfDay(-20, 246).distance,
    'declination rad': () => sunOfDay(-20, 246).declination,
    'sunset hour angle rad': () => sunOfDay(-20, 246).sunset,
  },
  '10': {
    'N h': () => daylightHours(rio.latitudeDegrees, rio.dayOfYear),
    'Rs MJ/m2/d': () => radiationOfDay(rio, gaps).solar,
    'Rs mm/d': () => radiationOfDay(rio, gaps).solar * millimetresPerMegajoule,
  },
  '11': { 'Rnl MJ/m2/d': () => radiationOfDay(rioSky, gaps).longwave },
  '12': { 'Rns MJ/m2/d': () => radiationOfDay(rioSky, gaps).shortwave },
  '14': { 'u2 m/s': () => windAtTwoMetres({ metresPerSecond: 3.2, heightMetres: 10 }) },
  '17': {
    ...pressures(bangkok, ' kPa'),
    ...energy(bangkok),
    'ETo mm/d': () => penmanMonteith(bangkok, gaps, bangkokSoilHeat),
  },
  '18': {
    ...pressures(uccle, ''),
    ...energy(uccle),
    'u2 m/s': () => windAtTwoMetres({ metresPerSecond: 10 / 3.6, heightMetres: 10 }),
    'ETo mm/d': () => penmanMonteith(uccle, gaps),
  },
  '20': {
    ...pressures(lyon, ''),
    ...energy(lyon),
    'ETo mm/d': () => penmanMonteith(lyon, gaps),
    'ETo with u2 = 1': () => penmanMonteith(lyon, { ...gaps, wind: 1 }),
    'ETo with u2 = 3': () => penmanMonteith(lyon, { ...gaps, wind: 3 }),
  },
};

/** What the program answers to a quantity of an example; throws where it has no such quantity. */
export function oursOf(example: string, quantity: string): number {
  const found = examples[example]?.[quantity];
  if (!found) throw new Error(`Example ${example} has no ${quantity}`);
  return found();
}
