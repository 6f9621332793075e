import { success } from '../../app/core/result';
import type { Garden } from '../../app/document/schema';
import { serializeGarden } from '../../app/document/serialize';
import type { Host } from '../../app/host/contract';
import type { MowingsStore } from '../../app/store/contract';
import { createMowingsStore } from '../../app/store/store';
import type { Later } from '../../app/store/surroundings';
import { sameThreadEngine as wholeEngine } from '../../app/worker/client';
import type { Planner } from '../../app/worker/planClient';
import { isSliced, type Engine } from '../../app/worker/protocol';

/** A host that remembers what it was asked, and answers well unless told otherwise. */
export function fakeHost(answers: Partial<Host> = {}) {
  const asked: { power: keyof Host; request: any }[] = [];
  const usual: Host = {
    about: async () =>
      success({ native: false, version: '0', folder: 'Documents/Mowings', today: '2021-06-20' }),
    recentGardens: async () => success([]),
    openGarden: async () => success({ id: 'file-1', name: 'Barn', text: '' }),
    saveGarden: async ({ id, name }) => success({ id: id ?? 'file-new', name }),
    keepDraft: async () => success(null),
    restoreDraft: async () => success(null),
    discardDraft: async () => success(null),
    exportFile: async ({ name, ending }) =>
      success({ name: `${name}.${ending}`, folder: 'Documents/Mowings' }),
    askWeather: async () => success({ text: '', isKept: false }),
    callOffWeather: async () => success(null),
    forgetWeather: async () => success(null),
    chooseColourScheme: async () => success(null),
    describeWindow: async () => success(null),
  };
  const host = Object.fromEntries(
    (Object.keys(usual) as (keyof Host)[]).map((power) => [
      power,
      (request: any) => {
        asked.push({ power, request });
        return ((answers[power] ?? usual[power]) as (request: any) => any)(request);
      },
    ]),
  ) as unknown as Host;
  const of = (power: keyof Host): any[] =>
    asked.filter((one) => one.power === power).map(({ request }) => request);
  return { host, asked, of };
}

/** Time that passes when it is told to. */
export function fakeTime() {
  let now = 0;
  let waiting: { at: number; run: () => void }[] = [];
  const later: Later = (milliseconds, run) => {
    const one = { at: now + milliseconds, run };
    waiting.push(one);
    return () => (waiting = waiting.filter((other) => other !== one));
  };
  return {
    later,
    async pass(milliseconds: number): Promise<void> {
      const end = now + milliseconds;
      // what goes on by itself comes before any clock
      await settle();
      for (;;) {
        const next = waiting.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
        if (!next) break;
        now = next.at;
        waiting = waiting.filter((one) => one !== next);
        next.run();
        await settle();
      }
      now = end;
      await settle();
    },
  };
}

/** Lets everything that is ready to go on go on. */
export const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 20; turn++) await Promise.resolve();
};

/** An engine that answers nothing, for tests of everything else. */
export const silentEngine: Engine = {
  ask: async () => ({ state: 'superseded' }),
  stop: () => undefined,
};

export interface TestStore extends ReturnType<typeof fakeHost> {
  readonly store: MowingsStore;
  readonly time: ReturnType<typeof fakeTime>;
}

export function testStore(
  options: {
    readonly answers?: Partial<Host>;
    readonly engine?: Engine;
    readonly planner?: Planner;
    readonly sample?: () => Promise<string>;
  } = {},
): TestStore {
  const fake = fakeHost(options.answers);
  const time = fakeTime();
  const store = createMowingsStore({
    host: fake.host,
    engine: options.engine ?? silentEngine,
    ...(options.planner ? { planner: options.planner } : {}),
    later: time.later,
    computerToday: () => '2021-06-20',
    breathe: () => Promise.resolve(),
    ...(options.sample === undefined ? {} : { sample: options.sample }),
  });
  return { ...fake, store, time };
}

/** A store with a garden open that its file holds. */
export async function storeWith(
  garden: Garden,
  options: Parameters<typeof testStore>[0] = {},
): Promise<TestStore> {
  const opened = testStore({
    ...options,
    answers: {
      openGarden: async () =>
        success({ id: 'file-1', name: 'Barn', text: serializeGarden(garden) }),
      ...options.answers,
    },
  });
  await opened.store.getState().openFile('file-1');
  return opened;
}

/** An engine in this thread that leaves imagined seasons alone, for tests of everything else. */
export function sameThreadEngine(): Engine {
  const inner = wholeEngine();
  return {
    ask: async (question, options) =>
      isSliced(question.kind) ? { state: 'superseded' } : inner.ask(question, options),
    stop: () => inner.stop(),
  };
}
