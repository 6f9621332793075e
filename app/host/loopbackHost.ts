import { failure, type Result } from '../core/result';
import type { Host, HostError, ShellBridge } from './contract';

const tokenKey = 'mowings-token';

/** What the launcher put behind the # of the address: browsers never send that part to anyone. */
interface Invitation {
  readonly token: string;
  /** the garden named at start */
  readonly open: string | null;
}

/**
 * The shell of a browser window, over the loopback service that opened it. The window's title and the
 * question before closing are the page's own here, and so is the menu: `onMenu` never calls.
 */
export function loopbackShell(): ShellBridge {
  const { token, open } = readInvitation();
  let waiting = open;

  async function ask<Value, Failure>(
    power: string,
    request: unknown,
  ): Promise<Result<Value, Failure | HostError>> {
    try {
      const answer = await fetch(`/host/${power}`, {
        method: 'POST',
        headers: { 'content-type': 'application/json', 'x-mowings-token': token },
        body: JSON.stringify(request),
      });
      return (await answer.json()) as Result<Value, Failure>;
    } catch {
      return failure({ kind: 'unreachable' });
    }
  }

  const host: Host = {
    about: () => ask('about', null),
    recentGardens: () => ask('recentGardens', null),
    openGarden: (request) => ask('openGarden', request),
    saveGarden: (request) => ask('saveGarden', request),
    keepDraft: (request) => ask('keepDraft', request),
    restoreDraft: () => ask('restoreDraft', null),
    discardDraft: () => ask('discardDraft', null),
    exportFile: (request) => ask('exportFile', request),
    askWeather: (request) => ask('askWeather', request),
    callOffWeather: () => ask('callOffWeather', null),
    forgetWeather: () => ask('forgetWeather', null),
    chooseColourScheme: (request) => ask('chooseColourScheme', request),
    describeWindow(request) {
      const { name, unsaved } = request;
      document.title = name === '' ? 'Mowings' : `${name}${unsaved ? ' (edited)' : ''} - Mowings`;
      window.onbeforeunload = request.unsaved ? (event) => event.preventDefault() : null;
      return ask('describeWindow', request);
    },
  };
  return {
    host,
    onMenu: () => undefined,
    onOpenFile(listener) {
      const id = waiting;
      waiting = null;
      if (id !== null) listener(id);
    },
  };
}

/** Takes the token out of the address bar and history; a reload finds it in the tab's own storage. */
function readInvitation(): Invitation {
  const given = new URLSearchParams(location.hash.slice(1));
  const token = given.get('token');
  if (token) {
    sessionStorage.setItem(tokenKey, token);
    history.replaceState(null, '', location.pathname);
  }
  return {
    token: token ?? sessionStorage.getItem(tokenKey) ?? '',
    open: token ? given.get('open') : null,
  };
}
