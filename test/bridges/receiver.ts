/** A web server that answers as it is told to, and remembers what it was sent. */
import { createServer, type IncomingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface Received {
  method: string;
  path: string;
  headers: IncomingHttpHeaders;
  body: Record<string, unknown>;
}

export type Answer =
  | { status: number; body?: unknown; afterMilliseconds?: number }
  | 'hang'
  | 'cut';

export async function receiver(answer: (request: Received, n: number) => Answer) {
  const received: Received[] = [];
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk) => chunks.push(chunk));
    request.on('end', () => {
      const text = Buffer.concat(chunks).toString();
      const { method = '', url: path = '', headers } = request;
      const one = { method, path, headers, body: text === '' ? {} : JSON.parse(text) };
      received.push(one);
      const how = answer(one, received.length);
      if (how === 'hang') return;
      if (how === 'cut') return request.socket.destroy();
      setTimeout(() => {
        response.writeHead(how.status, { 'content-type': 'application/json', location: '/else' });
        response.end(JSON.stringify(how.body ?? []));
      }, how.afterMilliseconds ?? 0);
    });
  });
  const listen = (port: number): Promise<void> =>
    new Promise((resolve) => server.listen(port, '127.0.0.1', resolve));
  await listen(0);
  const { port } = server.address() as AddressInfo;
  return {
    received,
    url: new URL(`http://127.0.0.1:${port}/`),
    /** Refuses connections until it is opened again. */
    shut: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
    open: () => listen(port),
    close: () => {
      server.close();
      server.closeAllConnections();
    },
  };
}
