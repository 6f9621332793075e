import { climateOf } from '../../tables/climates';

/**
 * The climate of the list that suits most gardens of a time zone. Only zones small enough for that
 * are here; one that reaches from snow to palms suggests nothing. A first guess, never an answer:
 * it is shown and can be changed before a garden is made of it.
 */
const byZone: Readonly<Record<string, string>> = {
  'America/Phoenix': 'phoenix-arizona',
  'America/Santiago': 'santiago',
  'America/Toronto': 'toronto-ontario',
  'America/Vancouver': 'vancouver-british-columbia',
  'America/Winnipeg': 'winnipeg-manitoba',
  'Asia/Tokyo': 'tokyo',
  'Australia/Melbourne': 'laverton-melbourne-victoria',
  'Europe/Amsterdam': 'de-bilt',
  'Europe/Athens': 'athens',
  'Europe/Belfast': 'armagh',
  'Europe/Berlin': 'stuttgart',
  'Europe/Bratislava': 'zilina',
  'Europe/Brussels': 'de-bilt',
  'Europe/Dublin': 'armagh',
  'Europe/Helsinki': 'helsinki-vantaa',
  'Europe/London': 'heathrow',
  'Europe/Rome': 'rome',
  'Europe/Stockholm': 'stockholm',
  'Pacific/Auckland': 'auckland',
};

/** Its station, or null where the zone says too little. */
export function climateOfZone(timeZone: string): string | null {
  const id = Object.hasOwn(byZone, timeZone) ? byZone[timeZone] : undefined;
  return id !== undefined && climateOf(id) ? id : null;
}
