const oldest = [20, 19];

/**
 * A sentence for the person when this Node is too old, otherwise null.
 *
 * @param {string} version  as in process.versions.node
 * @returns {string | null}
 */
export function nodeComplaint(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const [oldestMajor = 0, oldestMinor = 0] = oldest;
  if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return null;
  return `Mowings needs Node ${oldest.join('.')} or newer, and this is Node ${version}. Install a newer Node, then start again.`;
}
