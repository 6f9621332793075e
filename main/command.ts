/**
 * The command line: `ledger` and `behaviour`, run by main/launch/runCommand.js.
 *
 * @param words   what was typed, the command first
 * @param folder  the caller's folder, against which file names are resolved
 * @returns the exit code
 */
export async function runCommand(words: readonly string[], _folder: string): Promise<number> {
  console.error(`"${words[0] ?? ''}" is not built yet.`);
  return 1;
}
