// Static web server for one built folder, on this machine only. It answers like a plain static host: the file at the address, index.html
// for a folder, a redirect that adds a folder's last slash, and the site's own 404.html with status 404. Nothing is served outside the
// base path.
import { createReadStream, readFileSync, realpathSync, statSync, type Stats } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { contentTypeOf, isWorthCompressing } from './content-types.ts';

export interface ServeOptions {
  folder: string;
  /** Begins and ends with a slash. */
  base?: string;
  /** The first port to try. 0 lets the system choose. */
  port?: number;
  /** Compresses as hosts do, so that measured bytes are those that a reader downloads. */
  gzip?: boolean;
  /** More headers for an address below the base, such as the recommended content policy. */
  headers?: (path: string) => Readonly<Record<string, string>>;
}

export interface Served {
  /** The address of the first page, with its last slash. */
  address: string;
  close: () => Promise<void>;
}

export async function serve(options: ServeOptions): Promise<Served> {
  const base = options.base ?? '/';
  const folder = realpathSync(options.folder);
  const server = createServer((request, response) => answer(request, response, { ...options, base, folder }));
  await listen(server, options.port ?? 4321);
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}${base}`, close: () => close(server) };
}

type Site = ServeOptions & { base: string };

function answer(request: IncomingMessage, response: ServerResponse, site: Site): void {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { allow: 'GET, HEAD' }).end();
    return;
  }
  const [address = '/', ...query] = (request.url ?? '/').split('?');
  const inside = pathBelow(site.base, address);
  const path = `${address}/` === site.base ? 'add a slash' : inside === undefined ? undefined : fileFor(site.folder, inside);
  if (path === 'add a slash') {
    // Only one leading slash: two would redirect the reader to another host.
    const location = `/${address.replace(/^\/+/, '')}/${query.length > 0 ? `?${query.join('?')}` : ''}`;
    response.writeHead(301, { location }).end();
    return;
  }
  const missing = join(site.folder, '404.html');
  if (path) send(request, response, { status: 200, path, headers: site.headers?.(inside!), gzip: site.gzip });
  else if (isFile(missing)) send(request, response, { status: 404, path: missing, headers: site.headers?.('404.html'), gzip: site.gzip });
  else response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('There is no such page.\n');
}

/** The decoded path below the base, or undefined where it is outside or invalid. */
function pathBelow(base: string, address: string): string | undefined {
  if (!address.startsWith(base)) return undefined;
  try {
    const path = decodeURIComponent(address.slice(base.length));
    return /[\\\0]|(?:^|\/)\.\.?(?:\/|$)/.test(path) ? undefined : path;
  } catch {
    return undefined;
  }
}

function fileFor(folder: string, path: string): string | undefined {
  const found = join(folder, path);
  const kind = kindOf(found);
  if (kind?.isDirectory() && path !== '' && !path.endsWith('/')) return 'add a slash';
  const file = kind?.isDirectory() ? join(found, 'index.html') : found;
  if (!isFile(file) || (path.endsWith('/') && !kind?.isDirectory())) return undefined;
  // A link inside the folder may lead outside it.
  return realpathSync(file).startsWith(folder + sep) ? file : undefined;
}

function isFile(path: string): boolean {
  return kindOf(path)?.isFile() ?? false;
}

// A name that is too long for the disk, or a folder without permission, counts as missing.
function kindOf(path: string): Stats | undefined {
  try {
    return statSync(path, { throwIfNoEntry: false });
  } catch {
    return undefined;
  }
}

interface Sending {
  status: number;
  path: string;
  headers: Readonly<Record<string, string>> | undefined;
  gzip: boolean | undefined;
}

function send(request: IncomingMessage, response: ServerResponse, { status, path, headers, gzip }: Sending): void {
  const type = contentTypeOf(path);
  const all: Record<string, string | number> = {
    'content-type': type,
    'cache-control': 'no-cache',
    'x-content-type-options': 'nosniff',
    ...headers,
  };
  const may = gzip && isWorthCompressing(type);
  if (may) all.vary = 'accept-encoding';
  const body = may && /\bgzip\b/.test(String(request.headers['accept-encoding'])) ? gzipSync(readFileSync(path)) : undefined;
  if (body) all['content-encoding'] = 'gzip';
  all['content-length'] = body ? body.length : statSync(path).size;
  response.writeHead(status, all);
  if (request.method === 'HEAD') response.end();
  else if (body) response.end(body);
  else
    createReadStream(path)
      .on('error', () => response.destroy())
      .pipe(response);
}

async function listen(server: Server, first: number): Promise<void> {
  const ports = first === 0 ? [0] : [...Array.from({ length: 50 }, (_, step) => first + step), 0];
  for (const port of ports) if (await listensAt(server, port)) return;
  throw new Error('no port is free');
}

function listensAt(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const refused = (error: NodeJS.ErrnoException) =>
      error.code === 'EADDRINUSE' || error.code === 'EACCES' ? resolve(false) : reject(error);
    server.once('error', refused).listen(port, '127.0.0.1', () => resolve(Boolean(server.off('error', refused))));
  });
}

function close(server: Server): Promise<void> {
  const closed = new Promise<void>((resolve) => server.close(() => resolve()));
  server.closeAllConnections();
  return closed;
}
