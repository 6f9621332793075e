import { contextBridge, ipcRenderer } from 'electron';
import {
  channels,
  menuCommands,
  pushes,
  type MenuCommand,
  type ShellBridge,
} from '../app/host/contract';

/** Keeps what arrives before the page listens, and hands on plain values only, never the event. */
function inbox<Value>(push: string, isWanted: (value: unknown) => value is Value) {
  const listeners: ((value: Value) => void)[] = [];
  const early: Value[] = [];
  ipcRenderer.on(push, (_event, value: unknown) => {
    if (!isWanted(value)) return;
    if (listeners.length === 0) early.push(value);
    for (const listener of listeners) listener(value);
  });
  return (listener: (value: Value) => void) => {
    listeners.push(listener);
    for (const value of early.splice(0)) listener(value);
  };
}

const isCommand = (value: unknown): value is MenuCommand =>
  menuCommands.some((command) => command === value);
const isText = (value: unknown): value is string => typeof value === 'string';

const bridge: ShellBridge = {
  host: {
    about: () => ipcRenderer.invoke(channels.about, null),
    recentGardens: () => ipcRenderer.invoke(channels.recentGardens, null),
    openGarden: (request) => ipcRenderer.invoke(channels.openGarden, request),
    saveGarden: (request) => ipcRenderer.invoke(channels.saveGarden, request),
    keepDraft: (request) => ipcRenderer.invoke(channels.keepDraft, request),
    restoreDraft: () => ipcRenderer.invoke(channels.restoreDraft, null),
    discardDraft: () => ipcRenderer.invoke(channels.discardDraft, null),
    exportFile: (request) => ipcRenderer.invoke(channels.exportFile, request),
    askWeather: (request) => ipcRenderer.invoke(channels.askWeather, request),
    callOffWeather: () => ipcRenderer.invoke(channels.callOffWeather, null),
    forgetWeather: () => ipcRenderer.invoke(channels.forgetWeather, null),
    chooseColourScheme: (request) => ipcRenderer.invoke(channels.chooseColourScheme, request),
    describeWindow: (request) => ipcRenderer.invoke(channels.describeWindow, request),
  },
  onMenu: inbox(pushes.menu, isCommand),
  onOpenFile: inbox(pushes.openFile, isText),
};

contextBridge.exposeInMainWorld('mowingsShell', bridge);
