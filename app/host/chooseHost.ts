import type { Host, MenuCommand, ShellBridge } from './contract';
import { electronHost } from './electronHost';
import { loopbackShell } from './loopbackHost';

declare global {
  interface Window {
    /** there only in Electron, from main/preload.ts */
    readonly mowingsShell?: ShellBridge;
  }
}

let chosen: ShellBridge | undefined;

/** Once per page: the loopback address gives its token away only the first time it is read. */
function shell(): ShellBridge {
  const bridge = window.mowingsShell;
  chosen ??= bridge
    ? {
        host: electronHost(bridge),
        onMenu: (listener) => bridge.onMenu(listener),
        onOpenFile: (listener) => bridge.onOpenFile(listener),
      }
    : loopbackShell();
  return chosen;
}

/** The machine's powers: Electron's where its bridge is there, otherwise the loopback service's. */
export const chooseHost = (): Host => shell().host;

/** Calls the listener for every command of the window's menu; never in a browser window, which has none. */
export const onMenu = (listener: (command: MenuCommand) => void): void => shell().onMenu(listener);

/**
 * Calls the listener with the id of a garden that was named at start, double-clicked, or handed over
 * by a second start; `openGarden` opens it.
 */
export const onOpenFile = (listener: (id: string) => void): void => shell().onOpenFile(listener);
