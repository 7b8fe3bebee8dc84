/** The name under which a sink's deliveries stand in the log. */
import { createHash } from 'node:crypto';

/** From all that tells it from its like; the secret parts of an address do not get into the log. */
export function sinkName(kind: string, host: string, ...rest: readonly string[]): string {
  const hash = createHash('sha256').update(JSON.stringify([host, ...rest]));
  return `${kind}:${host}#${hash.digest('hex').slice(0, 8)}`;
}
