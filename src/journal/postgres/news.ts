/**
 * What other processes append, as they do: one connection that listens. While it is lost notices go
 * by unheard; when it is back every follower is told so, and reads on from where it was.
 */
import pg from 'pg';
import type { Change } from '../../session/ports.ts';
import { connectionOf, type Database } from './database.ts';

export const channel = 'roastcall';

type Told = (change: Change | undefined) => void;

/** A connection that went dead without a word is found out within so long. */
const pulseMilliseconds = 5_000;
const firstWaitMilliseconds = 100;
const longestWaitMilliseconds = 1_000;

export class News {
  private readonly database: Database;
  private readonly followers = new Map<string, Set<Told>>();
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

  async close(): Promise<void> {
    this.closed = true;
    clearTimeout(this.timer);
    await this.client?.end().catch(() => undefined);
  }

  private async connect(): Promise<void> {
    const client = new pg.Client(connectionOf(this.database.options.url));
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
