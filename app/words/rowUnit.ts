/** A row's unit as it is shown: rates count days of the same warmth and wetness. */
export const rowUnit = (unit: string): string =>
  unit
    .replace(/^deg C$/, '°C')
    .replaceAll('m2', 'm²')
    .replaceAll('m3', 'm³')
    .replace('g C per g N', 'of carbon to 1 of nitrogen')
    .replace('normalised day', 'day at 15 °C in moist soil');
