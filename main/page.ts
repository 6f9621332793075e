import { readFile } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';
import type { ColourScheme } from '../app/host/contract';
import { withColourScheme } from './colourScheme';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
};

/** Nothing but our own files, and no code except from them. */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** The plan's worker, as the build names it. */
const planWorker = /^\/assets\/plan\.worker-[\w-]+\.js$/;

/**
 * The solver is compiled code, and a worker goes by the policy of its own file: this one file may
 * start it, the page and every other file may not.
 */
export const planWorkerPolicy = contentPolicy.replace(
  "script-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
);

const headers = {
  'content-security-policy': contentPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
};

const notFound = () => new Response('Not found', { status: 404, headers });

/**
 * Serves the built page from one folder and nothing outside it; the same function answers Electron's
 * own scheme and the loopback service, so both have one content policy.
 *
 * @param scheme  light or dark as it is kept at the time of asking
 * @returns answers the path part of an address: 200, or 404 for all that is not a file in there
 */
export function createPage(
  folder: string,
  scheme: () => Promise<ColourScheme> = async () => 'system',
): (path: string) => Promise<Response> {
  const root = normalize(folder);
  return async (path) => {
    const wanted = placeOf(root, path);
    if (!wanted) return notFound();
    try {
      const read = await readFile(wanted);
      const ending = extname(wanted);
      const body =
        ending === '.html'
          ? withColourScheme(read.toString('utf8'), await scheme())
          : new Uint8Array(read);
      const type = types[ending] ?? 'application/octet-stream';
      const own = planWorker.test(path)
        ? { ...headers, 'content-security-policy': planWorkerPolicy }
        : headers;
      return new Response(body, { headers: { ...own, 'content-type': type } });
    } catch {
      return notFound();
    }
  };
}

function placeOf(root: string, path: string): string | null {
  try {
    const plain = decodeURIComponent(path);
    if (plain.includes('\0') || plain.includes('\\') || plain.includes(':')) return null;
    const wanted = normalize(join(root, plain === '/' ? '/index.html' : plain));
    return wanted.startsWith(root + sep) ? wanted : null;
  } catch {
    return null;
  }
}
