/**
 * A dinner of random words at random moments: anything anybody ever said in the corpus, silences,
 * restarts, a clock that jumps, a bridge that says a thing twice or in the wrong order. Whatever
 * happens, some things hold.
 */
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Fact } from '../../src/kitchen/facts.ts';
import type { Plan } from '../../src/kitchen/plan.ts';
import type { View } from '../../src/kitchen/view.ts';
import { forecast } from '../../src/planner/heat/forecast.ts';
import { plan } from '../../src/planner/plan.ts';
import { recalling } from '../../src/planner/solve/recall.ts';
import { remembering } from '../../src/session/compute.ts';
import type { Announcement, Compute, Reply, Session, Words } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { at, cards, opening } from '../harness/day.ts';
import { type Deed, deedsOf } from './deeds.ts';
import {
  adviceIsSafe,
  doneStays,
  holds,
  nothingIsPast,
  planIsFeasible,
  stageKeepsToTheChart,
  Violation,
  viewIsAsDescribed,
  wordsAreFit,
} from './rules.ts';

/** A tiny ensemble and a short search for each plan: these dinners try the day, not the heat. */
const membersOfAll = 8;
const pathSearches = 50;

/** One view of so many is held against its schema. */
const describedEvery = 4;

/** One dinner of so many is played a second time without its restarts. */
const againEvery = 4;

export interface Broken {
  seed: number;
  turn: number;
  rule: string;
  what: string;
  /** The fewest deeds of this dinner that still break the rule, as lines to read. */
  deeds: string[];
}

/** Plays one dinner of so many turns; undefined when everything held. */
export async function randomDinner(seed: number, turns: number): Promise<Broken | undefined> {
  const deeds = deedsOf(seed, turns);
  const first = await brokenBy(seed, deeds);
  if (!first) return undefined;
  const few = await fewest(seed, deeds.slice(0, first.turn + 1), first.rule);
  const least = (await brokenBy(seed, few)) ?? first;
  return { ...least, turn: first.turn };
}

async function brokenBy(seed: number, deeds: readonly Deed[]): Promise<Broken | undefined> {
  const dinner = new RandomDinner(seed);
  for (const [turn, deed] of [...deeds, undefined].entries()) {
    try {
      if (turn === 0) await dinner.open();
      if (deed) await dinner.play(deed);
      else await dinner.playsTheSameUnbroken(deeds);
    } catch (error) {
      const { rule, message } =
        error instanceof Violation
          ? error
          : { rule: `no throw: ${error}`, message: String((error as Error).stack) };
      return { seed, turn, rule, what: message, deeds: dinner.lines };
    }
  }
  return undefined;
}

/** Takes away halves, quarters and at last single deeds, as long as the same rule breaks. */
async function fewest(seed: number, deeds: readonly Deed[], rule: string): Promise<Deed[]> {
  let kept = [...deeds];
  for (let size = Math.ceil(kept.length / 2); size >= 1; size = Math.floor(size / 2)) {
    for (let from = 0; from < kept.length; ) {
      const fewer = [...kept.slice(0, from), ...kept.slice(from + size)];
      if ((await brokenBy(seed, fewer))?.rule === rule) kept = fewer;
      else from += size;
    }
  }
  return kept;
}

class RandomDinner {
  readonly lines: string[] = [];
  private readonly seed: number;
  private readonly journal = openMemoryJournal();
  private session: Session | undefined;
  private now = at('13:00');
  private messages = 0;
  private restarted = false;
  private readonly delivered: (Words & { key: string })[] = [];
  private readonly raised = new Set<string>();
  private looked: { view: View; facts: readonly Fact[] } | undefined;

  constructor(seed: number) {
    this.seed = seed;
  }

  /** Opens from what is written, remembering nothing else. */
  async open(): Promise<void> {
    const { journal, seed } = this;
    const solver = recalling();
    const compute: Compute = remembering({
      forecast: async (question) => forecast({ ...question, members: membersOfAll }),
      plan: async (question) => checked(plan({ ...question, work: pathSearches }, solver)),
    });
    const first = { ...opening, seed };
    this.session = await openSession({ dinner: 'fuzz', journal, compute, cards, opening: first });
  }

  private get opened(): Session {
    return this.session as Session;
  }

  async play(deed: Deed): Promise<void> {
    switch (deed.kind) {
      case 'says':
        this.now += deed.after * 60_000;
        await this.deliver(this.words(deed.text, this.now, deed.source));
        return;
      case 'waits':
        this.now += deed.minutes * 60_000;
        this.note(`(${deed.minutes} minutes pass)`);
        this.announced(await this.opened.wake(this.now));
        return this.look(await this.opened.view(this.now));
      case 'restarts':
        return this.restart();
      case 'senses':
        this.now += deed.after * 60_000;
        this.note(`probe ${deed.fahrenheit}`);
        this.announced(
          await this.opened.sense({ temperature: deed.fahrenheit, unit: 'F', at: this.now }),
        );
        return this.look(await this.opened.view(this.now));
      case 'again':
        return this.again(deed.back);
      case 'swapped': {
        const [sooner, later] = deed.texts;
        const first = this.words(sooner, this.now, 'cook');
        this.now += deed.after * 60_000;
        const second = this.words(later, this.now, 'cook');
        await this.deliver(second);
        await this.deliver(first);
        return;
      }
    }
  }

  private words(text: string, when: number, source: string): Words & { key: string } {
    this.messages += 1;
    return { text, at: when, source, key: `message ${this.messages}` };
  }

  private note(what: string, when = this.now): void {
    this.lines.push(`${new Date(when - 6 * 3_600_000).toISOString().slice(11, 16)} ${what}`);
  }

  private async deliver(words: Words & { key: string }): Promise<readonly Reply[]> {
    const who = words.source === 'earshot' ? 'guest>' : '>';
    this.note(`${who} ${words.text}`, words.at);
    const turn = await this.opened.hear(words);
    if (!this.delivered.some(({ key }) => key === words.key)) this.delivered.push(words);
    this.announced(turn.announcements);
    for (const reply of turn.replies) wordsAreFit(reply);
    await this.look(turn.view);
    return turn.replies;
  }

  /** The same message twice: nothing is written, and the answer is the one it had. */
  private async again(back: number): Promise<void> {
    const words = this.delivered.at(-back);
    if (!words) return;
    const before = await this.opened.facts();
    const had = before.find((fact) => fact.type === 'replied' && fact.key === words.key);
    const replies = await this.deliver(words);
    const after = await this.opened.facts();
    const took = had && after.length === before.length;
    holds('the same message acts once', !had || took === true, () => written(before, after));
    const said = had?.type === 'replied' ? had.text : '';
    holds(
      'the same message is answered the same',
      !had || (replies[0]?.text ?? '') === said,
      () => `"${said}" became "${replies[0]?.text}"`,
    );
  }

  private announced(announcements: readonly Announcement[]): void {
    for (const announcement of announcements) {
      const { id } = announcement;
      holds('no announcement twice', !this.raised.has(id), () => id);
      this.raised.add(id);
      wordsAreFit(announcement);
    }
  }

  private async look(view: View): Promise<void> {
    if (this.lines.length % describedEvery === 0) viewIsAsDescribed(view);
    nothingIsPast(view);
    adviceIsSafe(view);
    const facts = await this.opened.facts();
    const seen = this.looked?.facts.length ?? 0;
    stageKeepsToTheChart(facts, seen);
    if (this.looked) doneStays(this.looked.view, view, facts.slice(seen));
    this.looked = { view, facts };
  }

  private async restart(): Promise<void> {
    this.note('(restart)');
    this.restarted = true;
    const now = Math.max(this.now, (await this.opened.glance())?.lastAt ?? 0);
    const before = await this.snapshot(now);
    await this.open();
    const after = await this.snapshot(now);
    holds('the same facts give the same view', before === after, () => differing(before, after));
  }

  private async snapshot(now: number): Promise<string> {
    const view = await this.opened.view(now);
    const due = (await this.opened.nextDue()).at ?? 'nothing';
    return `${JSON.stringify(view)} due ${due}`;
  }

  /** A dinner that was restarted has the facts of one that never was; a share of them is played again. */
  async playsTheSameUnbroken(deeds: readonly Deed[]): Promise<void> {
    if (!this.restarted || this.seed % againEvery !== 0) return;
    const never = new RandomDinner(this.seed);
    await never.open();
    for (const deed of deeds) {
      if (deed.kind === 'restarts') never.note('(restart)');
      else await never.play(deed);
    }
    const one = JSON.stringify(await this.opened.facts());
    const other = JSON.stringify(await never.opened.facts());
    holds('a restart changes nothing', one === other, () => differing(other, one));
  }
}

function checked(plan: Plan | undefined): Plan | undefined {
  if (plan) planIsFeasible(plan);
  return plan;
}

const written = (before: readonly Fact[], after: readonly Fact[]): string =>
  after
    .slice(before.length)
    .map(({ type }) => type)
    .join(', ');

function differing(one: string, other: string): string {
  let from = 0;
  while (from < one.length && one[from] === other[from]) from += 1;
  const start = Math.max(0, from - 80);
  return `…${one.slice(start, from + 80)}… became …${other.slice(start, from + 80)}…`;
}
