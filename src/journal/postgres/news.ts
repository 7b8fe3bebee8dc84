/**
 * What other processes append, as they do: one connection that listens. While it is lost notices go
 * by unheard; when it is back every follower is told so, and reads on from where it was.
 *
 * A notice is not part of the append it tells of: one at a time in the whole database may commit with
 * a notice, and that one would hold up all others until the disk has answered. So notices leave right
 * after, many at once, in transactions that write nothing; what a process did not live to tell is told
 * by whoever takes over the look that follows each append.
 */
import pg from 'pg';
import type { Change } from '../../session/ports.ts';
import { connectionOf, type Database } from './database.ts';

const channel = 'roastcall';

type Told = (change: Change | undefined) => void;

/** A connection that went dead without a word is found out within these two together. */
const pulseMilliseconds = 2_000;
const patienceMilliseconds = 3_000;
const firstWaitMilliseconds = 100;
const longestWaitMilliseconds = 1_000;

export class News {
  private readonly database: Database;
  private readonly followers = new Map<string, Set<Told>>();
  private untold: string[] = [];
  private telling: Promise<void> = Promise.resolve();
  private client: pg.Client | undefined;
  private timer: NodeJS.Timeout | undefined;
  private wait = firstWaitMilliseconds;
  private closed = false;

  constructor(database: Database) {
    this.database = database;
  }

  /** Resolves when the first connection listens. */
  async open(): Promise<void> {
    await this.connect();
  }

  follow(household: string, told: Told): () => void {
    const own = this.followers.get(household) ?? new Set();
    this.followers.set(household, own);
    own.add(told);
    return () => {
      own.delete(told);
      if (own.size === 0) this.followers.delete(household);
    };
  }

  /** Tells the other processes, together with whatever else is to be told just now. */
  tell(household: string, { dinner, held }: Change): void {
    this.untold.push(JSON.stringify([household, dinner, held]));
    if (this.untold.length === 1) this.telling = this.telling.then(() => this.tellUntold());
  }

  private async tellUntold(): Promise<void> {
    const all = this.untold.splice(0);
    // Whoever could not be told was cut off too, and reads on when it is back.
    await this.database
      .run(`SELECT pg_notify('${channel}', notice) FROM unnest($1::text[]) AS notice`, [all])
      .catch(() => undefined);
  }

  async close(): Promise<void> {
    await this.telling;
    this.closed = true;
    clearTimeout(this.timer);
    await this.client?.end().catch(() => undefined);
  }

  private async connect(): Promise<void> {
    const client = new pg.Client({
      ...connectionOf(this.database.options.url),
      query_timeout: patienceMilliseconds,
    });
    const lost = (): void => this.lost(client);
    client.on('error', lost).on('end', lost);
    client.on('notification', ({ processId, payload = '' }) => {
      if (!this.database.isOwn(processId)) this.heard(payload);
    });
    this.client = client;
    await client.connect();
    await client.query(`LISTEN ${channel}`);
    this.wait = firstWaitMilliseconds;
    this.pulse(client);
  }

  private heard(payload: string): void {
    const [household, dinner, held] = JSON.parse(payload) as [string, string, number];
    for (const told of this.followers.get(household) ?? []) told({ dinner, held });
  }

  private pulse(client: pg.Client): void {
    this.timer = setTimeout(() => {
      client.query('SELECT 1').then(
        () => client === this.client && this.pulse(client),
        () => this.lost(client),
      );
    }, pulseMilliseconds);
    this.timer.unref();
  }

  private lost(client: pg.Client): void {
    if (this.closed || client !== this.client) return;
    this.client = undefined;
    clearTimeout(this.timer);
    void client.end().catch(() => undefined);
    this.timer = setTimeout(() => {
      this.connect().then(
        () => {
          for (const own of this.followers.values()) for (const told of own) told(undefined);
        },
        () => this.client && this.lost(this.client),
      );
    }, this.wait);
    this.wait = Math.min(this.wait * 2, longestWaitMilliseconds);
  }
}
