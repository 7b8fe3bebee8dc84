/** Ports of this machine, and a line to one of them that can be cut. */
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';

/** A port that was free a moment ago. */
export async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise<void>((resolve) => server.close(() => resolve()));
  return port;
}

export const isOpen = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    socket.on('connect', () => {
      socket.destroy();
      resolve(true);
    });
    socket.on('error', () => resolve(false));
  });

/** A line through which bytes pass until it is cut; what goes either way can be withheld. */
export async function cuttableLine(port: number) {
  const sockets = new Set<Socket>();
  const state = { open: true, asked: true, answered: true };
  const server = createServer((near) => {
    if (!state.open) return void near.destroy();
    const far = connect(port, '127.0.0.1');
    for (const one of [near, far]) {
      sockets.add(one);
      one.on('error', () => undefined);
    }
    near.on('data', (bytes) => state.asked && far.write(bytes));
    far.on('data', (bytes) => state.answered && near.write(bytes));
    near.on('close', () => far.destroy());
    far.on('close', () => near.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const own = (server.address() as AddressInfo).port;
  const cut = (): void => {
    state.open = false;
    for (const one of sockets) one.destroy();
    sockets.clear();
  };
  return {
    port: own,
    cut,
    mend: () => {
      state.open = true;
      state.asked = true;
      state.answered = true;
    },
    /** Lets nothing through any more of what is asked, or of what is answered. */
    withhold: (what: 'asked' | 'answered' = 'asked') => {
      state[what] = false;
    },
    close: () => {
      cut();
      server.close();
    },
  };
}
