/** Makes the Wyoming service known to the house by multicast DNS (RFC 6762, RFC 6763). */
import { Bonjour } from 'bonjour-service';

export interface Beacon {
  close(): Promise<void>;
}

/** What the package takes and holds beyond what its types tell. */
type Wider = { interface?: string; bind?: string };
type Inner = { server: { mdns: NodeJS.EventEmitter } };

/** Houses know a service again by its name, so the name stays the same in every run. */
export function wyomingBeacon(options: {
  instance: string;
  port: number;
  host: string;
  trouble(why: Error): void;
}): Beacon {
  const { instance, port, host, trouble } = options;
  const everywhere = host === '0.0.0.0' || host === '::';
  // Bound to one address a socket hears no multicast; it only sends from there.
  const where: Wider = everywhere ? {} : { interface: host, bind: '0.0.0.0' };
  const bonjour = new Bonjour(where as ConstructorParameters<typeof Bonjour>[0], trouble);
  // A network without multicast must not end the cooking.
  (bonjour as unknown as Inner).server.mdns.on('error', trouble);
  bonjour.publish({
    name: `Roastcall ${instance}`,
    type: 'wyoming',
    protocol: 'tcp',
    port,
    disableIPv6: !host.includes(':'),
  });
  return {
    close: () =>
      new Promise((resolve) => {
        bonjour.unpublishAll(() => bonjour.destroy(() => resolve()));
      }),
  };
}
