import { expect, test } from 'vitest';
import { channels, type Host, type ShellBridge } from '../../app/host/contract';
import { electronHost } from '../../app/host/electronHost';

const powers = Object.keys(channels) as (keyof Host)[];
const bridgeOf = (answer: (power: string, request: unknown) => Promise<unknown>): ShellBridge => ({
  host: Object.fromEntries(
    powers.map((power) => [power, (request: unknown) => answer(power, request)]),
  ) as unknown as Host,
  onMenu: () => undefined,
  onOpenFile: () => undefined,
});

test('every power goes through as it is', async () => {
  const host = electronHost(bridgeOf(async (power, request) => ({ power, request })));
  const request = { id: null } as never;
  for (const power of powers) {
    const answer = await host[power](request);
    expect(answer).toEqual({ power, request: host[power].length === 0 ? undefined : request });
  }
});

test('a message that gets no answer is an answer of its own, never a throw', async () => {
  const host = electronHost(bridgeOf(() => Promise.reject(new Error('no handler'))));
  for (const power of powers)
    expect(await host[power]({} as never)).toEqual({ ok: false, error: { kind: 'unreachable' } });
});
