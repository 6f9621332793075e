/**
 * @typedef {object} Probes  what the choice may ask; each is asked only when the answer matters
 * @property {import('./arguments.js').Wish} wish
 * @property {boolean} hasScreen
 * @property {boolean} hasElectronPackage
 * @property {() => string | null} binary
 * @property {() => Promise<boolean>} siteAnswers
 * @property {() => Promise<string | null>} fetchBinary  why it failed, or null
 * @property {() => string | null} browser
 *
 * @typedef {{ kind: 'electron', program: string, why: string }
 *   | { kind: 'browser', program: string, why: string }
 *   | { kind: 'address', why: string }} Choice
 */

/**
 * Electron where its binary is or can be had, otherwise a browser window, otherwise the address.
 * `why` is the sentence to print.
 *
 * @param {Probes} probes
 * @returns {Promise<Choice>}
 */
export async function chooseWindow(probes) {
  if (probes.wish === 'none') return { kind: 'address', why: 'No window opened, as asked.' };
  if (!probes.hasScreen)
    return { kind: 'address', why: 'No window opened: there is no screen here to show it on.' };
  if (probes.wish === 'browser') return withoutElectron(probes, 'a browser window was asked for');
  const { binary, reason } = await findElectron(probes);
  if (binary === null) return withoutElectron(probes, reason);
  return { kind: 'electron', program: binary, why: `Opening Mowings in Electron: ${reason}.` };
}

/**
 * The choice when Electron is out of the question, also after it failed to start.
 *
 * @param {Probes} probes
 * @param {string} reason
 * @returns {Choice}
 */
export function withoutElectron(probes, reason) {
  const browser = probes.browser();
  if (browser)
    return {
      kind: 'browser',
      program: browser,
      why: `Opening Mowings in a window of ${browser}: ${reason}.`,
    };
  return {
    kind: 'address',
    why: `No window opened: ${reason}, and no browser of the Chromium family was found. Open the address below in the browser you have.`,
  };
}

/**
 * @param {Probes} probes
 * @returns {Promise<{ binary: string | null, reason: string }>}
 */
async function findElectron(probes) {
  if (!probes.hasElectronPackage)
    return { binary: null, reason: "Electron's package is not installed" };
  const present = probes.binary();
  if (present) return { binary: present, reason: 'its binary is on this machine' };
  if (!(await probes.siteAnswers()))
    return {
      binary: null,
      reason: "Electron's program is missing here, and the site that has it does not answer",
    };
  const trouble = await probes.fetchBinary();
  if (trouble)
    return {
      binary: null,
      reason: `Electron's program is missing here and could not be fetched (${trouble})`,
    };
  const fetched = probes.binary();
  return fetched
    ? { binary: fetched, reason: 'its binary has just been fetched' }
    : { binary: null, reason: "Electron's binary was fetched but cannot be found" };
}
