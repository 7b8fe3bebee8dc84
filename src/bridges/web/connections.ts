/** A cap on connections that says so, instead of a line that goes dead. */
import type { Server, Socket } from 'node:net';

const refusal = [
  'HTTP/1.1 503 Service Unavailable',
  'Content-Type: application/problem+json',
  'Retry-After: 5',
  'Connection: close',
];
const body = JSON.stringify({
  type: 'about:blank',
  title: 'Too many connections',
  status: 503,
  detail: 'Too many are connected just now; try again in a few seconds.',
});

/** Refuses what comes beyond `most`, before any of it is read. */
export function capConnections(server: Server, most: number): void {
  let open = 0;
  const answer = `${[...refusal, `Content-Length: ${Buffer.byteLength(body)}`].join('\r\n')}\r\n\r\n${body}`;
  server.prependListener('connection', (socket: Socket) => {
    open += 1;
    socket.once('close', () => {
      open -= 1;
    });
    if (open <= most) return;
    socket.on('error', () => socket.destroy());
    socket.end(answer, () => socket.destroy());
  });
}
