/*
 * Recording proxy between a browser and the network: pages, their parts, and the worker's requests. It answers for one host and refuses
 * every other.
 */
import { createServer, request as ask, type IncomingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Asked {
  /** Host and port. */
  host: string;
  path: string;
  sent: IncomingHttpHeaders;
  answered: IncomingHttpHeaders;
  status: number;
}

export interface Recorder {
  /** The browser's proxy setting. */
  proxy: { server: string; bypass: string };
  asked: Asked[];
  close: () => Promise<void>;
}

/** `origin`: the host that it answers for, such as http://127.0.0.1:4321. */
export async function openRecorder(origin: string): Promise<Recorder> {
  const ours = new URL(origin).host;
  const asked: Asked[] = [];
  const server = createServer((request, response) => {
    const { host, pathname, search } = new URL(request.url ?? '/', `http://${request.headers.host ?? 'nowhere'}`);
    const note = (status: number, answered: IncomingHttpHeaders): unknown =>
      asked.push({ host, path: pathname + search, sent: request.headers, answered, status });
    if (host !== ours) {
      note(0, {});
      return void response.writeHead(403).end();
    }
    request.pipe(
      ask(`http://${ours}${pathname}${search}`, { method: request.method, headers: request.headers }, (answer) => {
        note(answer.statusCode ?? 0, answer.headers);
        response.writeHead(answer.statusCode ?? 502, answer.headers);
        answer.pipe(response);
      }).on('error', () => request.socket.destroy()),
    );
  });
  // An https request uses a tunnel.
  server.on('connect', (request, socket) => {
    asked.push({ host: request.url ?? '', path: '', sent: request.headers, answered: {}, status: 0 });
    socket.on('error', () => undefined).end('HTTP/1.1 403 Forbidden\r\n\r\n');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    // Browsers bypass a proxy for local addresses, unless told otherwise.
    proxy: { server: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, bypass: '<-loopback>' },
    asked,
    close: () => {
      server.closeAllConnections();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}
