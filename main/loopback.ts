import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { failure, type Result } from '../app/core/result';
import type { HostError } from '../app/host/contract';
import { createHandlers } from './handlers';
import { readColourScheme } from './colourScheme';
import { createPage } from './page';
import { textLimitBytes } from './requests';
import { stateFolder } from './stateFolder';
import type { AskWeather } from './weather/weatherService';

/** JSON writes a line end or a quotation mark as two signs, rarer ones as six. */
const bodyLimitBytes = 3 * textLimitBytes;
const endlessBytes = 4 * bodyLimitBytes;
const powerPath = '/host/';
/** How long the end waits for requests that are being answered. */
const patienceMilliseconds = 3000;

export interface ServiceOptions {
  readonly pageFolder: string;
  readonly dataFolder: string;
  readonly gardensFolder: string;
  readonly version: string;
  /** a garden to open at once, as a whole path */
  readonly file: string | null;
  /** who brings the weather of a place, where a test says another than the service itself */
  readonly askWeather?: AskWeather;
}

export interface Service {
  /** what to open; holds the token in its fragment, which browsers never send */
  readonly address: string;
  readonly origin: string;
  readonly token: string;
  /** ends after what is being saved is saved */
  stop(): Promise<void>;
}

/** The program's own folder, where Electron would have it too; a name set to nothing is not set. */
export function dataFolder(
  program: string,
  env: Record<string, string | undefined> = process.env,
  platform: NodeJS.Platform = process.platform,
  home = homedir(),
): string {
  const parent =
    platform === 'win32'
      ? env['APPDATA'] || join(home, 'AppData/Roaming')
      : platform === 'darwin'
        ? join(home, 'Library/Application Support')
        : env['XDG_CONFIG_HOME'] || join(home, '.config');
  return stateFolder(join(parent, program));
}

/**
 * The same page and the same powers as in Electron, for a browser window: answers this machine only,
 * its own page only, and only with the token that the window was opened with.
 */
export async function startService(options: ServiceOptions): Promise<Service> {
  const token = randomBytes(32).toString('base64url');
  const page = createPage(options.pageFolder, () => readColourScheme(options.dataFolder));
  const handlers = createHandlers({
    version: options.version,
    gardensFolder: options.gardensFolder,
    dataFolder: options.dataFolder,
    dialogs: null,
    ...(options.askWeather ? { askWeather: options.askWeather } : {}),
    // The page itself is the window: app/host/loopbackHost.ts sets its title and guards its closing.
    describe: () => undefined,
    wear: () => undefined,
    used: () => undefined,
  });
  let origin = '';
  let isStopping = false;

  async function respond(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const reply = (status: number, result: Result<unknown, HostError>) =>
      response
        .writeHead(status, {
          'content-type': 'application/json',
          'cache-control': 'no-store',
          ...(isStopping ? { connection: 'close' } : {}),
        })
        .end(JSON.stringify(result));
    // A foreign name that leads to this machine (DNS rebinding) is told nothing.
    if (`http://${request.headers.host}` !== origin) return void response.writeHead(421).end();
    const pathname = pathOf(request, origin);
    if (pathname === null) return void response.writeHead(400).end();
    if (pathname.startsWith(powerPath)) {
      if (!mayAsk(request, origin, token))
        return void reply(403, refused('Only the window that the program opened may ask.'));
      const body = await bodyOf(request);
      if (body === 'too-large')
        return void reply(
          413,
          failure({ kind: 'too-large', name: '', limitBytes: textLimitBytes }),
        );
      if (body === 'not-json') return void reply(400, refused('The request is not JSON.'));
      return void reply(200, await handlers.answer(pathname.slice(powerPath.length), body.value));
    }
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return void response.writeHead(405, { allow: 'GET, HEAD' }).end();
    const answer = await page(pathname);
    response.writeHead(answer.status, Object.fromEntries(answer.headers));
    response.end(Buffer.from(await answer.arrayBuffer()));
  }

  const server = createServer((request, response) => {
    // The only failures left are connections that broke off; nobody is there to be told.
    respond(request, response).catch(() => response.destroy());
  });

  origin = `http://127.0.0.1:${await listen(server)}`;
  const open = options.file === null ? '' : `&open=${await handlers.adopt(options.file)}`;
  return {
    origin,
    token,
    address: `${origin}/#token=${token}${open}`,
    async stop() {
      isStopping = true;
      void handlers.answer('callOffWeather', null);
      const closed = new Promise((resolve) => void server.close(resolve));
      const waited = new Promise((resolve) => void setTimeout(resolve, patienceMilliseconds));
      await Promise.race([closed, waited]);
      server.closeAllConnections();
      await handlers.settled();
    },
  };
}

const refused = (reason: string) => failure<HostError>({ kind: 'refused', reason });

function listen(server: Server): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const at = server.address();
      if (at && typeof at === 'object') resolve(at.port);
    });
  });
}

function pathOf(request: IncomingMessage, origin: string): string | null {
  try {
    const address = new URL(request.url ?? '/', origin);
    return address.origin === origin ? address.pathname : null;
  } catch {
    return null;
  }
}

function mayAsk(request: IncomingMessage, origin: string, token: string): boolean {
  const given = Buffer.from(String(request.headers['x-mowings-token'] ?? ''));
  const wanted = Buffer.from(token);
  return (
    request.method === 'POST' &&
    request.headers.origin === origin &&
    (request.headers['sec-fetch-site'] ?? 'same-origin') === 'same-origin' &&
    request.headers['content-type'] === 'application/json' &&
    given.length === wanted.length &&
    timingSafeEqual(given, wanted)
  );
}

async function bodyOf(
  request: IncomingMessage,
): Promise<{ value: unknown } | 'too-large' | 'not-json'> {
  const parts: Buffer[] = [];
  let bytes = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    bytes += part.length;
    // An answer reaches the page only after it has sent everything, so what is too much is read and
    // dropped; what has no end breaks the connection.
    if (bytes > endlessBytes) throw new Error('a body without end');
    if (bytes > bodyLimitBytes) parts.length = 0;
    else parts.push(part);
  }
  if (bytes > bodyLimitBytes) return 'too-large';
  try {
    return { value: JSON.parse(Buffer.concat(parts).toString('utf8')) as unknown };
  } catch {
    return 'not-json';
  }
}
