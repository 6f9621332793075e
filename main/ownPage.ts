/** The program's own scheme and the one host in it. */
export const scheme = 'mowings';
export const pageAddress = `${scheme}://garden/`;

/**
 * Whether an address is the program's own page. Taken apart, never searched: an address may hold
 * another one in its query or in front of an @.
 */
export function isOwnPage(address: string): boolean {
  try {
    const { protocol, host, username, password } = new URL(address);
    const own = new URL(pageAddress);
    return protocol === own.protocol && host === own.host && username === '' && password === '';
  } catch {
    return false;
  }
}
