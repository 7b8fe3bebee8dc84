/**
 * A PostgreSQL server as a journal uses it: a few connections, one statement at a time, tried again
 * for a while when the server is gone. Every statement is a transaction of its own, so that a pooler
 * may stand between.
 */
import pg from 'pg';
import { NotWritable } from '../../session/ports.ts';
import { JournalTrouble } from '../trouble.ts';

export interface DatabaseOptions {
  /** postgres://… */
  url: string;
  /** Connections kept at most, beside the one that listens. */
  connectionsAtMost?: number;
  /** A statement is tried again for so long. */
  patienceMilliseconds?: number;
}

const bigint = 20;
const usualConnections = 10;
const usualPatienceMilliseconds = 5_000;
const firstWaitMilliseconds = 50;
const longestWaitMilliseconds = 500;

/** Connecting, and any one statement, may take so long. */
const connectMilliseconds = 5_000;
const statementMilliseconds = 15_000;

export class Database {
  readonly options: DatabaseOptions;
  private readonly pool: pg.Pool;
  private readonly own = new Set<number>();

  constructor(options: DatabaseOptions) {
    this.options = options;
    this.pool = new pg.Pool({
      ...connectionOf(options.url),
      max: options.connectionsAtMost ?? usualConnections,
    });
    // An idle connection that breaks is replaced when it is next wanted.
    this.pool.on('error', () => undefined);
    this.pool.on('connect', (client) => this.own.add(backendOf(client)));
    this.pool.on('remove', (client) => this.own.delete(backendOf(client)));
  }

  /** Whether a notice came from one of these connections. */
  isOwn(backend: number): boolean {
    return this.own.has(backend);
  }

  /**
   * Runs a statement that may be run twice. While the server is gone it is tried again; rejects with
   * NotWritable when that does not help, or the server has no room.
   */
  async run<R extends pg.QueryResultRow>(text: string, values: readonly unknown[]): Promise<R[]> {
    const until =
      performance.now() + (this.options.patienceMilliseconds ?? usualPatienceMilliseconds);
    for (let wait = firstWaitMilliseconds; ; wait = Math.min(wait * 2, longestWaitMilliseconds)) {
      try {
        return (await this.pool.query<R>(text, [...values])).rows;
      } catch (error) {
        const why = weaknessOf(error);
        if (why === 'ours') throw error;
        if (why === 'no-room' || performance.now() + wait > until)
          throw new NotWritable(sentenceOf(error));
        await new Promise((resolve) => setTimeout(resolve, wait));
      }
    }
  }

  /** One connection for several statements. */
  async connected<T>(work: (client: pg.PoolClient) => Promise<T>): Promise<T> {
    let client: pg.PoolClient;
    try {
      client = await this.pool.connect();
    } catch (error) {
      throw unreachable(this.options.url, error);
    }
    try {
      const done = await work(client);
      client.release();
      return done;
    } catch (error) {
      client.release(true);
      throw error;
    }
  }

  close(): Promise<void> {
    return this.pool.end();
  }
}

export const connectionOf = (url: string): pg.ClientConfig => ({
  connectionString: url,
  application_name: 'roastcall',
  connectionTimeoutMillis: connectMilliseconds,
  query_timeout: statementMilliseconds,
  keepAlive: true,
  types: {
    // Instants are far below 2^53.
    getTypeParser: ((oid: number, format?: 'text' | 'binary') =>
      oid === bigint
        ? Number
        : pg.types.getTypeParser(oid, format)) as typeof pg.types.getTypeParser,
  },
});

/** The server's process behind a connection, as its notices name it. */
const backendOf = (client: pg.PoolClient): number =>
  (client as unknown as { processID: number }).processID;

export function unreachable(url: string, error: unknown): JournalTrouble {
  return new JournalTrouble(
    'unreachable',
    `The journal at ${placeOf(url)} cannot be used (${sentenceOf(error)}); check the address, or leave --journal out.`,
  );
}

/** The address without a name or password in it. */
function placeOf(url: string): string {
  const { host, pathname } = new URL(url);
  return `${host}${pathname}`;
}

/** Classes of SQLSTATE (PostgreSQL 15, appendix A) by what they ask of us. */
function weaknessOf(error: unknown): 'gone' | 'no-room' | 'ours' {
  const code = error instanceof pg.DatabaseError ? (error.code ?? '') : '';
  // A broken connection has no SQLSTATE of the server's.
  if (!(error instanceof pg.DatabaseError)) return 'gone';
  if (/^(08|57P0|40|55P03|53300)/.test(code)) return 'gone';
  if (/^(53|58|57|54|XX|25006)/.test(code)) return 'no-room';
  return 'ours';
}

function sentenceOf(error: unknown): string {
  if (error instanceof AggregateError) return error.errors.map(sentenceOf).join(', ');
  return error instanceof Error ? error.message : String(error);
}
