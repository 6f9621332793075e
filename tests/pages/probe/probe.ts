// A page without screens: it only puts the program's own host modules within a test's reach.
import { chooseHost, onMenu, onOpenFile } from '../../../app/host/chooseHost';
import type { Host, MenuCommand } from '../../../app/host/contract';
import EchoWorker from './echo.worker?worker';

export interface Probe {
  readonly host: Host;
  readonly commands: MenuCommand[];
  readonly files: string[];
  /** what a worker answers, to see that the content policy lets it run */
  echo(text: string): Promise<string>;
}

declare global {
  interface Window {
    probe: Probe;
  }
}

const commands: MenuCommand[] = [];
const files: string[] = [];
onMenu((command) => commands.push(command));
onOpenFile((id) => files.push(id));
window.probe = {
  host: chooseHost(),
  commands,
  files,
  echo: (text) =>
    new Promise((resolve) => {
      const worker = new EchoWorker();
      worker.onmessage = (event: MessageEvent<string>) => resolve(event.data);
      worker.postMessage(text);
    }),
};
