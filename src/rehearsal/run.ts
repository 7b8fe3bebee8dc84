/**
 * Runs a session script against a real session on a simulated clock. It may know the session's port
 * and nothing below it; the session, its journal and its heat are handed in.
 */
import { assertNever } from '../base/assert.ts';
import { type Instant, isoWithOffset, localTime } from '../base/time.ts';
import { type TemperatureUnit, temperatureIn } from '../base/units.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { View } from '../kitchen/view.ts';
import type { Announcement, Opening, Session, Turn, Words } from '../session/ports.ts';
import { amended } from './amend.ts';
import { type Moment, shortfallOf } from './check.ts';
import { kitchenEventsOf } from './follow.ts';
import { kitchenAfter } from './kitchen.ts';
import type { Deed, Line, Script } from './script.ts';

/** Something that a script wanted and did not get. */
export interface Failure {
  file: string;
  /** Line and column, from 1. */
  line: number;
  column: number;
  wanted: string;
  came: string;
  /** The line the failing check stands beneath. */
  beneath?: string;
  /** The check as it would hold, where that can be written. */
  amended?: string;
}

export interface Rehearsal {
  file: string;
  /** Checks, announcements, silences and restarts that held. */
  held: number;
  failures: readonly Failure[];
  /** How many lines were played; fewer than the script has only where the session broke. */
  played: number;
}

export interface Said {
  at: Instant;
  who: 'cook' | 'guest';
  text: string;
  /** Line of the script. */
  line: number;
}

/** What happens in a rehearsal, as it happens, for whoever wants to show it. */
export interface Audience {
  said?(said: Said): Promise<void> | void;
  replied?(turn: Turn, at: Instant): Promise<void> | void;
  announced?(announcement: Announcement): Promise<void> | void;
  /** All that was written of the dinner, once the script is at its end. */
  ended?(facts: readonly Fact[]): Promise<void> | void;
}

export interface RehearsalOptions {
  /** Opens the session of the one dinner, from what its journal holds by then. */
  open: (opening: Opening) => Promise<Session>;
  /** Drops the session and opens it again after every line; nothing may differ. */
  restartEveryTurn?: boolean;
  audience?: Audience;
}

const sink = 'rehearsal';

export async function rehearse(script: Script, options: RehearsalOptions): Promise<Rehearsal> {
  const run = new Run(script, options, await options.open(openingOf(script)));
  for (const line of script.lines) {
    if (!(await run.survives(line))) break;
  }
  await run.end();
  return run.result();
}

const openingOf = (script: Script): Opening => ({
  timeZone: script.timeZone,
  units: script.units,
  seed: script.seed,
  language: 'en',
});

/** An announcement that came since the last line that was not about announcements. */
interface Heard {
  announcement: Announcement;
  taken: boolean;
}

class Run {
  private readonly script: Script;
  private readonly options: RehearsalOptions;
  private session: Session;
  private held = 0;
  private played = 0;
  private readonly failures: Failure[] = [];
  /** Since the last line of any kind. */
  private fresh: Announcement[] = [];
  /** Since the last line but those with `!`: what such a line may claim. */
  private pool: Heard[] = [];
  /** The last thing said and its answer, for a bridge that delivers twice. */
  private last: { words: Words; turn: Turn } | undefined;
  /** The time of the last line, and of the last before it that bears another time. */
  private lastAt: Instant;
  private earlierAt: Instant;

  constructor(script: Script, options: RehearsalOptions, session: Session) {
    this.script = script;
    this.options = options;
    this.session = session;
    this.lastAt = script.startAt;
    this.earlierAt = script.startAt;
  }

  result(): Rehearsal {
    const { held, failures, played } = this;
    return { file: this.script.file, held, failures, played };
  }

  async end(): Promise<void> {
    await this.options.audience?.ended?.(await this.session.facts());
  }

  /** Plays the line; a session that breaks is a failure of that line, and the end of the script. */
  async survives(line: Line): Promise<boolean> {
    try {
      this.played += 1;
      await this.play(line);
      return true;
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      this.fellShort(line, { wanted: line.text, came: `the session broke: ${why}` });
      return false;
    }
  }

  private async play(line: Line): Promise<void> {
    await this.moveTo(line.at);
    if (line.at > this.lastAt) this.earlierAt = this.lastAt;
    this.lastAt = line.at;
    const turn = await this.act(line, line.deed);
    await this.check(line, turn);
    if (line.deed.kind !== 'unanswered') this.fresh = [];
    if (line.deed.kind !== 'unanswered' && line.deed.kind !== 'announced') this.pool = [];
    if (this.options.restartEveryTurn && line.deed.kind !== 'restart')
      await this.restart(line, line.at);
  }

  /** Time passes; everything that falls due on the way is announced and handed over. */
  private async moveTo(at: Instant): Promise<void> {
    await this.takeIn(await this.session.wake(at));
  }

  private async takeIn(announcements: readonly Announcement[]): Promise<void> {
    for (const announcement of announcements) {
      this.fresh.push(announcement);
      this.pool.push({ announcement, taken: false });
      await this.options.audience?.announced?.(announcement);
    }
    const ids = announcements.map((one) => one.id);
    if (ids.length > 0) await this.session.delivered(ids, sink);
  }

  private async act(line: Line, deed: Deed): Promise<Turn | undefined> {
    switch (deed.kind) {
      case 'says':
        return this.say(line, deed);
      case 'announced':
        this.expect(line, deed);
        return undefined;
      case 'silent': {
        const came = this.fresh.map((one) => this.described(one)).join('\n');
        this.note(line, 'silent', came === '' ? undefined : came);
        return undefined;
      }
      case 'senses': {
        const { temperature } = deed;
        await this.takeIn(await this.session.sense({ temperature, unit: this.unit, at: line.at }));
        return undefined;
      }
      case 'doubled':
        await this.sayAgain(line);
        return undefined;
      case 'restart':
        await this.restart(line, line.at);
        return undefined;
      case 'unanswered':
        return undefined;
      default:
        return assertNever(deed);
    }
  }

  private async say(line: Line, deed: Extract<Deed, { kind: 'says' }>): Promise<Turn> {
    const text = await this.withReadings(deed.text, line.at);
    await this.options.audience?.said?.({ at: line.at, who: deed.who, text, line: line.line });
    const source = deed.who === 'guest' ? 'earshot' : 'cook';
    const words = { text, at: line.at, source, key: `line-${line.line}` };
    const turn = await this.session.hear(words);
    this.last = { words, turn };
    await this.takeIn(turn.announcements);
    await this.options.audience?.replied?.(turn, line.at);
    return turn;
  }

  /** The same words under the same key: answered the same, and nothing new written. */
  private async sayAgain(line: Line): Promise<void> {
    if (!this.last) return;
    const { words, turn } = this.last;
    const before = (await this.session.facts()).length;
    const again = await this.session.hear({ ...words, at: line.at });
    const written = (await this.session.facts()).slice(before).map((one) => one.type);
    const saidNow = again.replies.map((one) => one.text).join(' ');
    const saidThen = turn.replies.map((one) => one.text).join(' ');
    this.note(line, 'nothing new written', written.length > 0 ? written.join(', ') : undefined);
    this.note(line, `the answer "${saidThen}"`, saidNow === saidThen ? undefined : saidNow);
  }

  private get unit(): TemperatureUnit {
    return this.script.units.temperature;
  }

  /** Puts what the simulated kitchen's instruments show where the cook reads them. */
  private async withReadings(text: string, at: Instant): Promise<string> {
    const setup = this.script.kitchen;
    if (!setup || !/\{(core|oven)\}/.test(text)) return text;
    const events = kitchenEventsOf(this.session.id, await this.session.facts());
    const kitchen = kitchenAfter(setup, events, at);
    const shown = (celsius: number): string =>
      String(Math.round(temperatureIn(celsius, this.unit)));
    return text
      .replaceAll('{core}', () => shown(kitchen.core()))
      .replaceAll('{oven}', () => shown(kitchen.oven()));
  }

  private expect(line: Line, deed: Extract<Deed, { kind: 'announced' }>): void {
    const since = deed.from ?? this.earlierAt;
    const ofKind = this.pool.filter((one) => one.announcement.kind === deed.announcement);
    const found = ofKind.find(
      (one) =>
        !one.taken &&
        one.announcement.at >= since &&
        // A repeated call is no excuse for a first one that came too early.
        (deed.from === undefined || !this.cameBefore(ofKind, one.announcement, deed.from)),
    );
    if (found) found.taken = true;
    const all = this.pool.map((one) => this.described(one.announcement)).join('\n');
    this.note(line, line.text, found ? undefined : all || 'nothing announced');
  }

  private cameBefore(all: readonly Heard[], one: Announcement, from: Instant): boolean {
    return all.some(
      (other) => other.announcement.step === one.step && other.announcement.at < from,
    );
  }

  private async check(line: Line, turn: Turn | undefined): Promise<void> {
    if (line.checks.length === 0) return;
    const moment: Moment = {
      heard: turn?.heard ?? [],
      replies: turn?.replies ?? [],
      announcements: this.fresh,
      view: turn?.view ?? (await this.session.view(line.at)),
      timeZone: this.script.timeZone,
      unit: this.unit,
    };
    for (const check of line.checks) {
      const came = shortfallOf(check.demand, moment);
      if (came === undefined) this.held += 1;
      else {
        const would = amended(check, moment);
        this.fellShort(check, {
          wanted: check.text,
          came,
          beneath: line.text,
          ...(would === undefined ? {} : { amended: would }),
        });
      }
    }
  }

  /** Everything is dropped but the journal. The view must be the same to the byte. */
  private async restart(line: Line, at: Instant): Promise<void> {
    const before = await this.snapshot(at);
    this.session = await this.options.open(openingOf(this.script));
    const after = await this.snapshot(at);
    this.note(line, 'the same dinner after a restart', difference(before, after));
  }

  private async snapshot(at: Instant): Promise<Snapshot> {
    const view = await this.session.view(at);
    const { at: dueAt } = await this.session.nextDue();
    const due = dueAt === undefined ? 'never' : isoWithOffset(dueAt, this.script.timeZone);
    const waiting = (await this.session.undelivered(sink, at)).map((one) => one.id);
    return { view, due, waiting };
  }

  private note(place: Line, wanted: string, came: string | undefined): void {
    if (came === undefined) this.held += 1;
    else this.fellShort(place, { wanted, came });
  }

  private fellShort(
    place: { line: number; column?: number },
    how: Omit<Failure, 'file' | 'line' | 'column'>,
  ): void {
    const { line, column = 1 } = place;
    this.failures.push({ file: this.script.file, line, column, ...how });
  }

  private described(one: Announcement): string {
    const { time, second } = localTime(one.at, this.script.timeZone);
    const exact = second === 0 ? time : `${time}:${String(second).padStart(2, '0')}`;
    return `${exact} ${one.kind} "${one.text}"`;
  }
}

interface Snapshot {
  view: View;
  due: string;
  waiting: string[];
}

/** The first thing that differs, with both sides; undefined when nothing does. */
function difference(before: Snapshot, after: Snapshot): string | undefined {
  if (JSON.stringify(before) === JSON.stringify(after)) return undefined;
  const flat = (snapshot: Snapshot): [string, string][] =>
    Object.entries({ ...snapshot.view, due: snapshot.due, waiting: snapshot.waiting }).map(
      ([key, value]) => [key, JSON.stringify(value)],
    );
  const then = new Map(flat(before));
  const changed = flat(after).find(([key, value]) => then.get(key) !== value);
  const [key, value] = changed ?? ['a part of the view', 'nothing'];
  return `${key} was ${then.get(key) ?? 'nothing'} and is ${value}`.slice(0, 400);
}
