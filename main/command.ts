import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { behaviour } from './command/behaviour';
import { exitCodes } from './command/exitCodes';
import { ledger, type Voice } from './command/ledger';
import { weather } from './command/weather';
import { week } from './command/week';

const voiceOfTerminal: Voice = {
  answer: (text) => void process.stdout.write(text),
  complain: (sentence) => console.error(sentence),
};

function aboutProgram(program: string): { name: string; version: string } {
  const { productName, version } = JSON.parse(
    readFileSync(join(program, 'package.json'), 'utf8'),
  ) as { productName: string; version: string };
  return { name: productName, version };
}

/**
 * The command line, run by main/launch/runCommand.js: the same sums as the window, nothing but the
 * answer on stdout, one sentence on stderr for each kind of failure.
 *
 * @param words what was typed, the command first
 * @param folder the caller's folder, against which file names are resolved
 * @returns the exit code, see `exitCodes`
 */
export async function runCommand(
  words: readonly string[],
  folder: string,
  voice: Voice = voiceOfTerminal,
): Promise<number> {
  // built to .build/main/command.js, two folders below the program's own
  const program = dirname(dirname(import.meta.dirname));
  const [command, ...rest] = words;
  try {
    switch (command) {
      case 'ledger':
        return ledger(rest, folder, program, aboutProgram(program), voice);
      case 'week':
        return await week(rest, folder, program, aboutProgram(program), voice);
      case 'behaviour':
        return behaviour(program, voice);
      case 'weather':
        return await weather(rest, folder, voice);
      default:
        voice.complain(
          `"${command ?? ''}" is not a command here. There are: ledger, weather, week.`,
        );
        return exitCodes.usage;
    }
  } catch (error) {
    voice.complain(
      `Something in the program went wrong, not in your garden: ${error instanceof Error ? error.message : String(error)}`,
    );
    return exitCodes.broken;
  }
}
