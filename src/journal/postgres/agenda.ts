/**
 * What is due next over all processes, by the database's clock. A claim is a postponement: whoever
 * takes a due dinner puts it off by a lease, so what a dead process had in hand falls due again by
 * itself. Nothing here looks at dinners that are not due.
 */
import { randomUUID } from 'node:crypto';
import type { Due } from '../../session/ports.ts';
import type { Database } from './database.ts';
import type { News } from './news.ts';

/** How long a process may keep a due dinner to itself. */
const leaseMilliseconds = 6_000;
/** How often each process looks at least, so that it sees what another let go of. */
const lookMilliseconds = 1_000;
const shortestLookMilliseconds = 20;
/** Dinners that one process has in hand at once. */
const inHandAtMost = 16;
/**
 * Handed out so often and never settled, a dinner is set aside until somebody appends to it, whether
 * it threw or took its process down. The index of what is due leaves such dinners out.
 */
const triesAtMost = 5;

export interface DueDinner {
  household: string;
  dinner: string;
  at: number;
}

export interface AgendaOptions {
  /** Looks at a due dinner; rejects when it cannot, and is asked again. */
  ring(due: DueDinner): Promise<void>;
  /** A dinner failed, and whether it is now set aside. */
  trouble(due: DueDinner, why: Error, setAside: boolean): void;
}

const claimed = `
  WITH due AS (
         SELECT household, dinner FROM dinners
          WHERE due_at IS NOT NULL AND due_at <= now_milliseconds() AND tries < ${triesAtMost}
          ORDER BY due_at LIMIT $1::integer FOR UPDATE SKIP LOCKED
       )
  UPDATE dinners AS one
     SET due_at = now_milliseconds() + ${leaseMilliseconds}, tries = tries + 1
    FROM due WHERE one.household = due.household AND one.dinner = due.dinner
  RETURNING one.household, one.dinner, one.held, one.tries`;

// A lost settlement is made good by the look that follows every append, so no disk is waited for.
const settled = `
  UPDATE dinners AS one SET due_at = new.due_at, tries = 0
    FROM unnest($1::text[], $2::text[], $3::integer[], $4::bigint[])
         AS new (household, dinner, held, due_at),
         (SELECT set_config('synchronous_commit', 'off', true)) AS quick
   WHERE one.household = new.household AND one.dinner = new.dinner AND one.held = new.held`;

interface Claimed {
  household: string;
  dinner: string;
  held: number;
  tries: number;
}

interface Settlement {
  household: string;
  dinner: string;
  due: Due;
  done(): void;
  failed(error: unknown): void;
}

/** The time of the database, and what is due by it, for all households of a process. */
export class PostgresAgenda {
  private readonly database: Database;
  private readonly news: News;
  private readonly holder = randomUUID();
  private readonly inHand = new Set<Promise<void>>();
  private waiting: Settlement[] = [];
  private settling = false;
  private options: AgendaOptions | undefined;
  private timer: NodeJS.Timeout | undefined;
  private looksAtTick = Number.POSITIVE_INFINITY;
  private looking = false;
  private closed = false;
  /** The database's clock, and the tick at which it showed that. */
  private shown = { at: 0, tick: 0 };

  constructor(database: Database, news: News) {
    this.database = database;
    this.news = news;
  }

  /** The database's time, run on by ticks since it was last asked. */
  now(): number {
    return Math.round(this.shown.at + performance.now() - this.shown.tick);
  }

  /** Asks the database what time it is; gives when something is due next. */
  async askTime(): Promise<number | undefined> {
    const asked = performance.now();
    const [row] = await this.database.run<{ now: number; next: number | null }>(
      `SELECT now_milliseconds() AS now,
              (SELECT min(due_at) FROM dinners WHERE due_at IS NOT NULL AND tries < ${triesAtMost}) AS next`,
      [],
    );
    if (!row) return undefined;
    const tick = performance.now();
    // Half of the way there and back is taken for the way back.
    this.shown = { at: row.now + (tick - asked) / 2, tick };
    return row.next ?? undefined;
  }

  /** From now on due dinners of all households come to `ring`. */
  start(options: AgendaOptions): void {
    this.options = options;
    this.lookAt(this.now());
  }

  /** Lets what is in hand come to its end. */
  async close(): Promise<void> {
    this.closed = true;
    clearTimeout(this.timer);
    await Promise.all(this.inHand);
  }

  /** Together with whatever else is to be settled just now. */
  settle(household: string, dinner: string, due: Due): Promise<void> {
    return new Promise((done, failed) => {
      this.waiting.push({ household, dinner, due, done, failed });
      void this.settleWaiting();
    });
  }

  async claim(household: string, sending: { dinner: string; announcement: string; sink: string }) {
    const { dinner, announcement, sink } = sending;
    const won = await this.database.run(
      `INSERT INTO sendings AS one (household, dinner, announcement, sink, holder, until)
       VALUES ($1, $2, $3, $4, $5, now_milliseconds() + ${leaseMilliseconds})
       ON CONFLICT (household, dinner, announcement, sink)
       DO UPDATE SET holder = excluded.holder, until = excluded.until
        WHERE one.holder = excluded.holder OR one.until < now_milliseconds()
       RETURNING 1`,
      [household, dinner, announcement, sink, this.holder],
    );
    return won.length > 0;
  }

  private async settleWaiting(): Promise<void> {
    if (this.settling) return;
    this.settling = true;
    while (this.waiting.length > 0) {
      const all = this.waiting.splice(0);
      try {
        // In one order everywhere, so that two processes never wait for each other.
        all.sort((a, b) =>
          `${a.household}\n${a.dinner}` < `${b.household}\n${b.dinner}` ? -1 : 1,
        );
        await this.database.run(settled, [
          all.map(({ household }) => household),
          all.map(({ dinner }) => dinner),
          all.map(({ due }) => due.held),
          all.map(({ due }) => due.at ?? null),
        ]);
        for (const one of all) {
          if (one.due.at !== undefined) this.lookAt(one.due.at);
          one.done();
        }
      } catch (error) {
        for (const one of all) one.failed(error);
      }
    }
    this.settling = false;
  }

  /** Looks at that instant of the database's time, or sooner if it is to already. */
  private lookAt(at: number | undefined): void {
    if (!this.options || this.closed) return;
    const left = at === undefined ? lookMilliseconds : at - this.now();
    const wait = Math.min(lookMilliseconds, Math.max(shortestLookMilliseconds, left));
    const tick = performance.now() + wait;
    if (this.looking || tick >= this.looksAtTick) return;
    clearTimeout(this.timer);
    this.looksAtTick = tick;
    this.timer = setTimeout(() => void this.look(), wait);
  }

  private async look(): Promise<void> {
    this.looksAtTick = Number.POSITIVE_INFINITY;
    this.looking = true;
    const free = inHandAtMost - this.inHand.size;
    const rows = free <= 0 ? [] : await this.database.run<Claimed>(claimed, [free]).catch(() => []);
    for (const row of rows) this.take(row);
    // While hands are full the next look comes when one is free.
    const full = this.inHand.size >= inHandAtMost;
    const next = full ? undefined : await this.askTime().catch(() => undefined);
    this.looking = false;
    this.lookAt(next);
  }

  private take({ household, dinner, held, tries }: Claimed): void {
    // Whoever appended last may not have lived to tell.
    this.news.tell(household, { dinner, held });
    const due = { household, dinner, at: this.now() };
    const work = (async () => {
      try {
        await this.options?.ring(due);
      } catch (error) {
        const why = error instanceof Error ? error : new Error(String(error));
        this.options?.trouble(due, why, tries >= triesAtMost);
      }
    })();
    this.inHand.add(work);
    void work.then(() => {
      const full = this.inHand.size >= inHandAtMost;
      this.inHand.delete(work);
      if (full) this.lookAt(this.now());
    });
  }
}
