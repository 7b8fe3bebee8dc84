/**
 * What a session needs from outside, and what it offers. All of it is asynchronous, so that a
 * journal, a worker thread or a sink may be anywhere.
 */
import type { Instant } from '../base/time.ts';
import type { Card } from '../kitchen/card.ts';
import type { AnnouncementKind, Fact, NewFact } from '../kitchen/facts.ts';
import type { Forecast, ForecastQuestion, KitchenBelief } from '../kitchen/forecast.ts';
import type { Heard } from '../kitchen/heard.ts';
import type { Plan } from '../kitchen/plan.ts';
import type { View } from '../kitchen/view.ts';
import type { Sensed } from '../machine/sense.ts';
import type { PlanQuestion } from '../planner/plan.ts';
import type { Glance } from './glance.ts';

export interface Clock {
  now(): Instant;
}

/** Somebody else appended first: read again and decide again. */
export class PositionTaken extends Error {
  readonly expected: number;
  constructor(expected: number) {
    super(`position ${expected} is taken already`);
    this.name = 'PositionTaken';
    this.expected = expected;
  }
}

/** Nothing can be written just now: a full disk, a lock, a server gone. Nothing written is lost. */
export class NotWritable extends Error {
  constructor(why: string) {
    super(`The journal cannot be written just now (${why}); nothing is lost, try again.`);
    this.name = 'NotWritable';
  }
}

/** A dinner that somebody else appended to, and how many facts it holds since; 0 when it is gone. */
export interface Change {
  dinner: string;
  held: number;
}

export interface ListedDinner {
  id: string;
  openedAt: Instant;
  lastAt: Instant;
}

export interface Journal {
  /**
   * Appends all facts or none, in one durable transaction. `expected` is how many facts the stream
   * holds; rejects with PositionTaken when it holds more, with NotWritable when it cannot write.
   */
  append(dinner: string, expected: number, at: Instant, facts: readonly NewFact[]): Promise<Fact[]>;
  /** Facts from a position on, validated, old shapes brought up to date. */
  read(dinner: string, from?: number): Promise<Fact[]>;
  /** Every dinner's id with when it was opened, newest first. */
  dinners(): Promise<ListedDinner[]>;
  /** The same of one dinner; undefined when nothing of it is written. */
  find(dinner: string): Promise<ListedDinner | undefined>;
  /**
   * Tells of what other holders of this journal append, within a second. `undefined`: anything may
   * have changed, so read on from where you were. Gives what ends it.
   */
  follow(told: (change: Change | undefined) => void): () => void;
  /** Rejects with NotWritable when nothing can be written just now. */
  writable(): Promise<void>;
  close(): Promise<void>;
}

/**
 * Heavy computing, apart, so that it can move to a worker without anyone noticing: questions and
 * answers are plain data.
 */
export interface Compute {
  forecast(question: ForecastQuestion): Promise<Forecast>;
  /** Undefined while no roast is known. */
  plan(question: PlanQuestion): Promise<Plan | undefined>;
}

export interface Announcement {
  id: string;
  at: Instant;
  kind: AnnouncementKind;
  step?: string | undefined;
  text: string;
  speech: string;
  urgency: 'low' | 'normal' | 'high';
  expiresAt: Instant;
}

export interface Reply {
  text: string;
  speech: string;
  /** Wording keys, most important first. */
  key: string;
}

export interface Turn {
  heard: Heard[];
  replies: Reply[];
  /** What fell due on the way to this turn. */
  announcements: Announcement[];
  view: View;
}

export interface Words {
  text: string;
  at: Instant;
  source?: string | undefined;
  key?: string | undefined;
  /** `closes`: the answer to a question must first wake the microphone, so it may come much later. */
  microphone?: 'open' | 'closes' | undefined;
}

/** When something falls due, if anything does, in a dinner that holds so many facts. */
export interface Due {
  at?: Instant | undefined;
  held: number;
}

/**
 * One dinner being cooked. Calls are queued: one at a time, in order. Others may append to the same
 * dinner: each call begins with what they wrote.
 */
export interface Session {
  readonly id: string;
  /**
   * Hears words. `at` moves the dinner's clock first, and what falls due by then is announced before
   * the words are heard. The same key twice acts once and answers the same.
   */
  hear(words: Words): Promise<Turn>;
  /**
   * Takes a leave-in thermometer's own number without a word; in the household's unit unless it says.
   * Gives what falls due by then. A number from a tip that is not in the meat leaves no trace.
   */
  sense(reading: Sensed & { at: Instant }): Promise<Announcement[]>;
  /** Raises what is due by `at`, in order, each at its own instant. */
  wake(at: Instant): Promise<Announcement[]>;
  /** What is next due by what is known here; what others append meanwhile is not looked for. */
  nextDue(): Promise<Due>;
  view(at: Instant): Promise<View>;
  /** Raised announcements not yet marked delivered to this sink, oldest first, unexpired at `at`. */
  undelivered(sink: string, at: Instant): Promise<Announcement[]>;
  /** Gives those that were not marked before. */
  delivered(ids: readonly string[], sink: string): Promise<string[]>;
  facts(): Promise<Fact[]>;
  /** Where the dinner stands by its facts alone; undefined while nothing of it is written. */
  glance(): Promise<Glance | undefined>;
}

/** What a new dinner begins with; a household's settings. */
export interface Opening {
  timeZone: string;
  units: { temperature: 'F' | 'C'; weight: 'lb' | 'kg' };
  seed: number;
  language: string;
  kitchen?: KitchenBelief | undefined;
}

export interface SessionOptions {
  dinner: string;
  journal: Journal;
  compute: Compute;
  /** Cards a dinner may take copies of. */
  cards: readonly Card[];
  /** Used when the journal holds nothing of this dinner yet. */
  opening: Opening;
}
