import { redoLabel, undoLabel } from '../../store/selectors';
import { useMowings } from '../store';
import { useCommands, type CommandName } from './commands';

/** A command as menus and lists name it. */
export interface CommandLine {
  readonly name: CommandName;
  readonly words: string;
  /** "Ctrl S"; '' where it has none. On a Mac the same with Command in place of Ctrl */
  readonly keys: string;
  /** other words it may be looked for by */
  readonly also: readonly string[];
  /** why it cannot be had now; null when it can */
  readonly notNow: string | null;
  readonly run: () => void;
}

const noGarden = 'no garden is open';

/** Every command there is, in the order of the menu, with the name it has at this moment. */
export function useCommandLines(): readonly CommandLine[] {
  const commands = useCommands();
  const hasGarden = useMowings((state) => state.garden !== null);
  const undoes = useMowings(undoLabel);
  const redoes = useMowings(redoLabel);
  const ofGarden = hasGarden ? null : noGarden;
  const line = (
    name: CommandName,
    words: string,
    keys: string,
    run: () => void,
    also: readonly string[],
    notNow: string | null = null,
  ): CommandLine => ({ name, words, keys, run, also, notNow });
  return [
    line('new', 'New garden…', 'Ctrl N', commands.newGarden, ['start', 'begin', 'close']),
    line('open', 'Open…', 'Ctrl O', commands.open, ['garden file', 'load', 'recent']),
    line('save', 'Save', 'Ctrl S', commands.save, ['keep', 'file'], ofGarden),
    line('save-as', 'Save as…', 'Ctrl Shift S', commands.saveAs, ['copy', 'file name'], ofGarden),
    line('print', 'Print…', 'Ctrl P', commands.print, ['paper']),
    line(
      'undo',
      undoes === null ? 'Undo' : `Undo: ${undoes}`,
      'Ctrl Z',
      commands.undo,
      ['take back'],
      undoes === null ? 'nothing to take back' : null,
    ),
    line(
      'redo',
      redoes === null ? 'Redo' : `Redo: ${redoes}`,
      'Ctrl Y',
      commands.redo,
      ['again'],
      redoes === null ? 'nothing was taken back' : null,
    ),
    line('find', 'Find…', 'F9', commands.find, ['search', 'look for', 'command']),
    line('colour-scheme', 'Light or dark…', '', commands.colourScheme, [
      'theme',
      'night',
      'colours',
      'day',
    ]),
    line('tour', 'Short tour', '', commands.tour, ['help', 'guide', 'show round'], ofGarden),
    line('guide', 'How to read this', '', commands.guide, ['help', 'keys', 'legend', 'marks']),
    line('about', 'About Mowings', '', commands.about, ['version', 'licence', 'help']),
  ];
}
