import { failure, type Result } from '../core/result';
import type { Host, HostError, ShellBridge } from './contract';

/** The powers that Electron's preload exposes; a message that gets no answer becomes `unreachable`. */
export function electronHost({ host }: ShellBridge): Host {
  return {
    about: () => answered(host.about()),
    recentGardens: () => answered(host.recentGardens()),
    openGarden: (request) => answered(host.openGarden(request)),
    saveGarden: (request) => answered(host.saveGarden(request)),
    keepDraft: (request) => answered(host.keepDraft(request)),
    restoreDraft: () => answered(host.restoreDraft()),
    discardDraft: () => answered(host.discardDraft()),
    exportFile: (request) => answered(host.exportFile(request)),
    askWeather: (request) => answered(host.askWeather(request)),
    callOffWeather: () => answered(host.callOffWeather()),
    forgetWeather: () => answered(host.forgetWeather()),
    chooseColourScheme: (request) => answered(host.chooseColourScheme(request)),
    describeWindow: (request) => answered(host.describeWindow(request)),
  };
}

const answered = <Value, Failure>(
  answer: Promise<Result<Value, Failure>>,
): Promise<Result<Value, Failure | HostError>> =>
  answer.catch(() => failure({ kind: 'unreachable' }));
