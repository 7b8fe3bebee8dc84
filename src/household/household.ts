/**
 * The dinners of one household: opens them from the journal, keeps each one's clock, wakes what is
 * due and tells listeners and sinks. Other processes may cook the same dinners. Knows sessions and the
 * journal's port; no socket and no words.
 */
import { type Instant, isTimeZone, localTime } from '../base/time.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { View } from '../kitchen/view.ts';
import type { Sensed } from '../machine/sense.ts';
import { type Glance, glanceOf } from '../session/glance.ts';
import {
  type Announcement,
  type Change,
  type Journal,
  type Opening,
  PositionTaken,
  type Session,
  type Turn,
  type Words,
} from '../session/ports.ts';
import type { Agenda } from './agenda.ts';
import { Alarm, retryMilliseconds } from './alarm.ts';
import { Echoes } from './echo.ts';
import { freshName } from './fresh-name.ts';
import { type SteadyClock, steadyClock } from './steady.ts';
import { HouseholdTrouble } from './trouble.ts';

export interface HouseholdOptions {
  journal: Journal;
  /** With a simulated clock a dinner's time moves only where `at` says so. */
  clock: 'real' | 'simulated';
  now(): Instant;
  /** Milliseconds that only ever grow; the process's own unless given. */
  ticks?(): number;
  /** How a dinner begins when nothing else is said. */
  opening(): Opening;
  open(dinner: string, opening: Opening): Promise<Session>;
  /** Where several processes share the dinners: tells this one what is due, by `due`. */
  agenda?: Agenda | undefined;
  /** How many dinners to hold open where others hold them too; 2,000 unless given. */
  heldAtMost?: number | undefined;
  /** What past dinners taught of this kitchen, for the next one to begin with. */
  learnt?(): Promise<Opening['kitchen']>;
}

export interface Said {
  text: string;
  at?: Instant | undefined;
  source?: string | undefined;
  key?: string | undefined;
  /** Which microphone of the house heard it, or `unnamed`; left out, nothing is taken for an echo. */
  device?: string | undefined;
  /** `closes`: the microphone shuts after the answer, so a question is worded to wait. */
  microphone?: Words['microphone'];
}

/** Something was appended to a dinner's log; announcements are those this process raised just now. */
export type Listener = (event: {
  dinner: Kept;
  announcements: readonly Announcement[];
  /** The view after it, where it was made anyway. */
  view?: View | undefined;
  /** Others appended, or may have: what was announced is in the log alone. */
  elsewhere?: boolean;
}) => void;

/** A dinner held open, with its clock. */
export interface Kept {
  readonly id: string;
  readonly session: Session;
  clockAt: Instant;
  /** When something next falls due; kept so that one dinner's turn asks nothing of the others. */
  dueAt?: Instant | undefined;
  /** How many follow it here; nobody's dinner may be put away to be opened again. */
  followers: number;
}

/** How a new dinner is to begin, where it is not as usual. */
export interface Wishes {
  at?: Instant | undefined;
  timeZone?: string | undefined;
  units?: Partial<Opening['units']> | undefined;
}

/** A dinner so long past its last word and its table is over, though nobody said so. */
const overAfterMilliseconds = 24 * 3_600_000;

/** Past dinners listed at most, newest first. */
const listedAtMost = 200;

/** Dinners usually held open where others hold them too; the one used least lately is put away for more. */
const usuallyHeldAtMost = 2_000;

/** Answers kept by key in memory; older ones are answered again from the log. */
const answersKept = 500;

export class Household {
  readonly clock: 'real' | 'simulated';
  private readonly options: HouseholdOptions;
  private readonly startedAt: Instant;
  private readonly steady: SteadyClock;
  private readonly kept = new Map<string, Promise<Kept>>();
  private readonly held = new Map<string, Kept>();
  private readonly alarm: Alarm;
  private readonly answers = new Map<string, Promise<Turn>>();
  private readonly echoes: Echoes<Turn>;
  private readonly listeners = new Set<Listener>();
  private making: Promise<unknown> = Promise.resolve();
  private latest: string | undefined;
  private readonly unfollow: () => void;
  /** Whether somebody here wants to know of every dinner of the household, held or not. */
  private watching = false;

  constructor(options: HouseholdOptions) {
    this.options = options;
    this.clock = options.clock;
    const ticks = options.ticks ?? (() => performance.now());
    this.steady = steadyClock({ now: options.now, ticks });
    this.startedAt = this.now();
    this.echoes = new Echoes(ticks);
    this.alarm = new Alarm(
      () => this.now(),
      () => this.ring(),
    );
    this.unfollow = options.journal.follow((change) => void this.changed(change));
  }

  /** Where several processes share the dinners. */
  get agenda(): Agenda | undefined {
    return this.options.agenda;
  }

  /** The household's time: the wall clock's, but never back. */
  now(): Instant {
    return this.steady.now();
  }

  listen(listener: Listener): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  /** Listens to one dinner, which is held open for it. */
  follow(kept: Kept, listener: Listener): () => void {
    kept.followers += 1;
    this.kept.set(kept.id, Promise.resolve(kept));
    this.held.set(kept.id, kept);
    const off = this.listen((event) => {
      if (event.dinner.id === kept.id) listener(event);
    });
    return () => {
      kept.followers -= 1;
      off();
    };
  }

  /**
   * Takes up every dinner still open, so that what fell due while nobody was here is announced. Where
   * dinners are shared the agenda knows what fell due, and nothing need be opened for it.
   */
  async start(): Promise<void> {
    if (this.clock === 'simulated' || this.agenda) return;
    for (const kept of await this.open()) await this.refresh(kept).catch(() => undefined);
    await this.ring();
  }

  /** Every dinner still open, and from now on every one that others open; where time moves by hand, the newest alone. */
  async watch(): Promise<Kept[]> {
    this.watching = true;
    return this.open();
  }

  private async open(): Promise<Kept[]> {
    if (this.clock === 'simulated')
      return [await this.current()].filter((one) => one !== undefined);
    const open: Kept[] = [];
    for (const { id, lastAt } of await this.options.journal.dinners()) {
      if (!(await this.isOpen(id, lastAt))) continue;
      const kept = await this.dinner(id).catch(() => undefined);
      if (kept) open.push(kept);
    }
    return open;
  }

  close(): void {
    this.unfollow();
    this.alarm.stop();
  }

  /** A new dinner, written down at once. */
  create(wishes: Wishes): Promise<Kept> {
    const made = this.making.then(async () => {
      for (;;) {
        const opened = await this.tryToCreate(wishes);
        if (opened) return opened;
      }
    });
    this.making = made.catch(() => undefined);
    return made;
  }

  /** Undefined when somebody else took the name meanwhile. */
  private async tryToCreate(wishes: Wishes): Promise<Kept | undefined> {
    const at = this.instantOf(wishes.at, this.startedAt);
    const usual = this.options.opening();
    const timeZone = wishes.timeZone ?? usual.timeZone;
    if (!isTimeZone(timeZone))
      throw new HouseholdTrouble('bad-value', `timeZone: "${timeZone}" is no zone known here.`);
    const units = { ...usual.units, ...wishes.units };
    const { journal } = this.options;
    const id = freshName(localTime(at, timeZone).date, await journal.dinners());
    const opened = journal.append(id, 0, at, [
      {
        type: 'dinner-opened',
        timeZone,
        temperatureUnit: units.temperature,
        weightUnit: units.weight,
        seed: usual.seed,
        language: usual.language,
        kitchen: usual.kitchen ?? (await this.options.learnt?.()),
      },
    ]);
    if (await isTaken(opened)) return undefined;
    this.latest = id;
    return this.dinner(id);
  }

  /** A dinner the journal knows; throws HouseholdTrouble `unknown-dinner` for any other. */
  dinner(id: string): Promise<Kept> {
    const held = this.kept.get(id);
    if (held) return this.used(id, held);
    const opened = (async (): Promise<Kept> => {
      const known = await this.options.journal.find(id);
      if (!known) throw new HouseholdTrouble('unknown-dinner', `There is no dinner "${id}".`);
      const session = await this.options.open(id, this.options.opening());
      if (this.clock === 'real') this.steady.notBefore(known.lastAt);
      const kept: Kept = { id, session, clockAt: known.lastAt, followers: 0 };
      this.held.set(id, kept);
      this.putAway();
      return kept;
    })();
    this.kept.set(id, opened);
    opened.catch(() => this.kept.delete(id));
    return opened;
  }

  /** The household's open dinner, or undefined when there is none. */
  async current(): Promise<Kept | undefined> {
    const newest = (await this.options.journal.dinners())[0];
    // Others may have opened one since.
    const id = (this.agenda ? undefined : this.latest) ?? newest?.id;
    if (id === undefined) return undefined;
    const kept = await this.dinner(id);
    const glance = await kept.session.glance();
    return glance && this.goesOn(glance) ? kept : undefined;
  }

  private async isOpen(id: string, lastAt: Instant): Promise<boolean> {
    // A serving time may be days after the last word, so a week decides without reading.
    if (lastAt < this.now() - 7 * overAfterMilliseconds) return false;
    const glance = glanceOf(id, await this.options.journal.read(id));
    return glance !== undefined && this.goesOn(glance);
  }

  private goesOn({ stage, servingAt = 0, lastAt }: Glance): boolean {
    if (stage === 'put-away') return false;
    if (this.clock === 'simulated') return true;
    return Math.max(lastAt, servingAt) > this.now() - overAfterMilliseconds;
  }

  /** Says words to a dinner, or to the household's open one, made if there is none. */
  say(said: Said, dinner?: string): Promise<Turn> {
    const { text, device, key } = said;
    if (device === undefined) return this.sayOnce(said, dinner);
    return this.echoes.once({ text, device, key }, () => this.sayOnce(said, dinner));
  }

  private async sayOnce(said: Said, dinner: string | undefined): Promise<Turn> {
    if (dinner !== undefined) return this.hear(await this.dinner(dinner), said);
    const open = this.finding.then(() => this.currentOrNew(said.at));
    this.finding = open.catch(() => undefined);
    return this.hear(await open, said);
  }
  private finding: Promise<unknown> = Promise.resolve();

  /** When two processes begin the household's dinner at once, both go on with the first one. */
  private async currentOrNew(at: Instant | undefined): Promise<Kept> {
    for (;;) {
      const kept = (await this.current()) ?? (await this.tryToCreate({ at }));
      if (kept) return kept;
    }
  }

  private hear(kept: Kept, said: Said): Promise<Turn> {
    if (said.key === undefined) return this.take(kept, said);
    const name = `${kept.id}\n${said.key}`;
    const answered = this.answers.get(name);
    if (answered) return answered;
    const turn = this.take(kept, said);
    this.answers.set(name, turn);
    turn.catch(() => this.answers.delete(name));
    const oldest = this.answers.keys().next().value;
    if (this.answers.size > answersKept && oldest !== undefined) this.answers.delete(oldest);
    return turn;
  }

  private async take(kept: Kept, said: Said): Promise<Turn> {
    const repeated = said.key !== undefined && (await hasKey(kept, said.key));
    const at = repeated ? kept.clockAt : this.move(kept, said.at);
    const { text, source, key, microphone } = said;
    try {
      const turn = await kept.session.hear({ text, at, source, key, microphone });
      this.tell(kept, turn.announcements, turn.view);
      return turn;
    } catch (error) {
      // What fell due on the way may have been raised all the same.
      this.notify({ dinner: kept, announcements: [], elsewhere: true });
      throw error;
    }
  }

  /** A leave-in thermometer's own number, for the open dinner if there is one. */
  async sense(reading: Sensed): Promise<void> {
    const kept = await this.current();
    if (!kept) return;
    this.tell(kept, await kept.session.sense({ ...reading, at: this.move(kept, undefined) }));
  }

  /** Moves a simulated clock forward; everything due on the way is announced. */
  async advance(
    dinner: string,
    at: Instant,
  ): Promise<{ announcements: Announcement[]; view: View }> {
    if (this.clock === 'real')
      throw new HouseholdTrouble(
        'real-clock',
        'The clock is real here; start with --clock simulated.',
      );
    const kept = await this.dinner(dinner);
    const announcements = await kept.session.wake(this.move(kept, at));
    this.tell(kept, announcements);
    return { announcements, view: await this.view(kept) };
  }

  /** Gives those that were not marked as arrived before. */
  async delivered(kept: Kept, ids: readonly string[], sink: string): Promise<string[]> {
    const fresh = await kept.session.delivered(ids, sink);
    if (this.agenda) this.lookAgain(kept);
    return fresh;
  }

  view(kept: Kept): Promise<View> {
    return kept.session.view(this.clock === 'real' ? this.now() : kept.clockAt);
  }

  facts(kept: Kept): Promise<Fact[]> {
    return kept.session.facts();
  }

  /** The newest dinners, by their facts alone: a past one is not opened for it. */
  async dinners(): Promise<(Glance & { id: string })[]> {
    const { journal } = this.options;
    const newest = (await journal.dinners()).slice(0, listedAtMost);
    const read = await Promise.all(
      newest.map(async ({ id }) => ({ id, glance: glanceOf(id, await journal.read(id)) })),
    );
    return read.flatMap(({ id, glance }) => (glance ? [{ id, ...glance }] : []));
  }

  writable(): Promise<void> {
    return this.options.journal.writable();
  }

  /** How many dinners are held open. */
  get size(): number {
    return this.held.size;
  }

  private instantOf(at: Instant | undefined, otherwise: Instant): Instant {
    if (this.clock === 'simulated') return at ?? otherwise;
    if (at === undefined) return this.now();
    throw new HouseholdTrouble(
      'real-clock',
      'at: the clock is real here and cannot be set; leave it out, or start with --clock simulated.',
    );
  }

  /** Views tell whole seconds, so a time within the second the clock stands in is not backwards. */
  private move(kept: Kept, at: Instant | undefined): Instant {
    const to = this.instantOf(at, kept.clockAt);
    if (this.clock === 'real') return to;
    if (Math.floor(to / 1000) < Math.floor(kept.clockAt / 1000))
      throw new HouseholdTrouble(
        'backwards-clock',
        `at: the dinner's clock stands at ${new Date(kept.clockAt).toISOString()} and does not go back.`,
      );
    kept.clockAt = Math.max(to, kept.clockAt);
    return kept.clockAt;
  }

  private tell(dinner: Kept, announcements: readonly Announcement[], view?: View): void {
    this.notify({ dinner, announcements, view });
    this.lookAgain(dinner);
  }

  private notify(event: Parameters<Listener>[0]): void {
    for (const listener of this.listeners) listener(event);
  }

  /** Finds out in its own time when the dinner is next due. */
  private lookAgain(kept: Kept): void {
    if (this.clock === 'real')
      void this.refresh(kept)
        .catch(() => this.later(kept))
        .then(() => this.arm());
  }

  private async refresh(kept: Kept): Promise<void> {
    const due = await kept.session.nextDue();
    if (this.agenda) await this.agenda.settle(kept.id, due);
    else kept.dueAt = due.at;
  }

  /**
   * Looks at a dinner that the agenda handed out at that instant. Rejects when it cannot; the agenda
   * then hands it out again.
   */
  async due(id: string, at: Instant): Promise<void> {
    const kept = await this.dinner(id);
    const glance = await kept.session.glance();
    if (glance && this.goesOn(glance)) {
      const announcements = await kept.session.wake(Math.max(at, this.now()));
      if (announcements.length > 0) this.notify({ dinner: kept, announcements });
      await this.refresh(kept);
    } else {
      const { held } = await kept.session.nextDue();
      await this.agenda?.settle(id, { held });
    }
  }

  /** Others appended to a dinner, or may have to any. */
  private async changed(change: Change | undefined): Promise<void> {
    if (change?.held === 0) return this.forget(change.dinner);
    const held = change ? this.kept.get(change.dinner) : undefined;
    const opened = change && this.watching ? (held ?? this.dinner(change.dinner)) : held;
    const touched = change ? [opened] : [...this.kept.values()];
    for (const one of touched) {
      const dinner = await one?.catch(() => undefined);
      if (!dinner) continue;
      this.notify({ dinner, announcements: [], elsewhere: true });
      if (!this.agenda) this.lookAgain(dinner);
    }
    if (!change && this.watching) await this.open().catch(() => undefined);
  }

  private used(id: string, held: Promise<Kept>): Promise<Kept> {
    this.kept.delete(id);
    this.kept.set(id, held);
    return held;
  }

  /** The agenda knows when they are due, so dinners that nobody follows here need not be held. */
  private putAway(): void {
    if (!this.agenda) return;
    const { heldAtMost = usuallyHeldAtMost } = this.options;
    for (const id of this.kept.keys()) {
      if (this.held.size <= heldAtMost) return;
      if (this.held.get(id)?.followers === 0) this.forget(id);
    }
  }

  private forget(id: string): void {
    this.kept.delete(id);
    this.held.delete(id);
  }

  private later(kept: Kept): void {
    kept.dueAt = this.now() + retryMilliseconds;
  }

  private arm(): void {
    let due: Instant | undefined;
    for (const { dueAt } of this.held.values())
      if (dueAt !== undefined && (due === undefined || dueAt < due)) due = dueAt;
    this.alarm.set(due);
  }

  /** Wakes what is due; a dinner that fails is tried again later and keeps no other waiting. */
  private async ring(): Promise<void> {
    const now = this.now();
    const due = [...this.held.values()].filter(({ dueAt }) => dueAt !== undefined && dueAt <= now);
    await Promise.all(
      due.map(async (kept) => {
        try {
          const announcements = await kept.session.wake(now);
          if (announcements.length > 0) this.notify({ dinner: kept, announcements });
          await this.refresh(kept);
        } catch {
          this.later(kept);
        }
      }),
    );
    this.arm();
  }
}

const hasKey = async (kept: Kept, key: string): Promise<boolean> =>
  (await kept.session.facts()).some((fact) => fact.type === 'words-heard' && fact.key === key);

const isTaken = async (appended: Promise<unknown>): Promise<boolean> => {
  try {
    await appended;
    return false;
  } catch (error) {
    if (error instanceof PositionTaken) return true;
    throw error;
  }
};
