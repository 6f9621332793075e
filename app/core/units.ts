/**
 * Inside, a quantity has just one unit; all others end at a door (`app/amounts`, `app/words`, the document).
 *
 * | quantity | inside unit | names end in |
 * |---|---|---|
 * | nitrogen, carbon on a bed | g per m2 of bed | `GramsPerM2` |
 * | mass | kg | `Kilograms` |
 * | water, rain, depth of material | mm (1 mm on 1 m2 is 1 L) | `Millimetres` |
 * | area | m2 | `M2` |
 * | temperature | deg C | `Celsius` |
 * | content of a material | fraction of dry matter 0-1 | `Fraction` |
 * | time | whole civil days | `Day`, `Days` |
 */
declare const unit: unique symbol;
/** A plain number to the machine; the compiler keeps it from a door that asks another unit. */
export type Quantity<Unit extends string> = number & { readonly [unit]?: Unit };

export type GramsPerM2 = Quantity<'g m-2'>;
export type KilogramsPerM2 = Quantity<'kg m-2'>;
export type Kilograms = Quantity<'kg'>;
export type Litres = Quantity<'L'>;
export type Millimetres = Quantity<'mm'>;
export type SquareMetres = Quantity<'m2'>;
export type Celsius = Quantity<'deg C'>;
export type Fraction = Quantity<'0-1'>;

/** g/m2 of nitrogen in a layer from a lab's mg/kg: mg/kg x bulk density [kg/L] x depth [cm] / 100. */
export const gramsPerM2FromMgPerKg = (
  mgPerKg: number,
  bulkDensityKgPerL: number,
  depthCentimetres: number,
): GramsPerM2 => (mgPerKg * bulkDensityKgPerL * depthCentimetres) / 100;

/** The lab's mg/kg from g/m2 in a layer; the inverse of `gramsPerM2FromMgPerKg`. */
export const mgPerKgFromGramsPerM2 = (
  gramsPerM2: number,
  bulkDensityKgPerL: number,
  depthCentimetres: number,
): number => (gramsPerM2 * 100) / (bulkDensityKgPerL * depthCentimetres);

/** Share of the element in the oxide that tables and laboratories print, by weight (atomic weights; definition). */
export const elementOfOxide = { phosphorus: 0.4364, potassium: 0.8301 } as const;
