/**
 * A dinner of random words at random moments: anything anybody ever said in the corpus, silences,
 * restarts, a clock that jumps, a bridge that says a thing twice. Whatever happens, some things hold.
 */
import { seeded } from '../../src/base/random.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Fact } from '../../src/kitchen/facts.ts';
import { type View, viewSchema } from '../../src/kitchen/view.ts';
import { inThisThread, remembering } from '../../src/session/compute.ts';
import type { Announcement, Compute, Reply, Session } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { rowsOf } from '../corpus/load.ts';
import { at, cards, opening } from '../harness/day.ts';

/** A tiny ensemble and a short search for each plan: these dinners try the day, not the heat. */
const membersOfAll = 8;
const pathSearches = 50;

const compute: Compute = remembering(
  {
    forecast: (question) => inThisThread.forecast({ ...question, members: membersOfAll }),
    plan: (question) => inThisThread.plan({ ...question, work: pathSearches }),
  },
  256,
);

const utterances = rowsOf('rules')
  .filter((row) => row.language !== 'de')
  .map((row) => row.text);

const beginnings = [
  'seven pound three bone rib roast, dinner at seven for six, medium rare',
  'three kilos of boneless rib, dinner at half past six for five, medium',
  'a five pound pork loin, eight of us, dinner at seven',
  'leg of lamb, six pounds, dinner at 7 for 6, pink',
  'four pound eye of round for four at six thirty, medium rare',
  'hello',
];

export interface Broken {
  seed: number;
  turn: number;
  rule: string;
  what: string;
  /** Everything that was done until then, to be played again. */
  deeds: string[];
}

/** Plays one dinner of so many turns; undefined when everything held. */
export async function randomDinner(seed: number, turns: number): Promise<Broken | undefined> {
  const dinner = new RandomDinner(seed);
  await dinner.open();
  for (let turn = 0; turn < turns; turn += 1) {
    try {
      await dinner.turn();
    } catch (error) {
      if (!(error instanceof Violation)) dinner.deeds.push(String((error as Error).stack));
      const { rule, message } =
        error instanceof Violation ? error : { rule: 'no throw', message: String(error) };
      return { seed, turn, rule, what: message, deeds: dinner.deeds };
    }
  }
  return undefined;
}

class Violation extends Error {
  readonly rule: string;
  constructor(rule: string, what: string) {
    super(what);
    this.rule = rule;
  }
}

function holds(rule: string, condition: boolean, what: () => string): void {
  if (!condition) throw new Violation(rule, what());
}

class RandomDinner {
  readonly deeds: string[] = [];
  private readonly uniform: () => number;
  private readonly journal = openMemoryJournal();
  private readonly name: string;
  private session: Session | undefined;
  private now = at('13:00');
  private readonly raised = new Set<string>();
  private before: { view: View; facts: readonly Fact[] } | undefined;
  private readonly seed: number;

  constructor(seed: number) {
    this.seed = seed;
    this.name = `random ${seed}`;
    this.uniform = seeded(seed).uniform;
  }

  async open(): Promise<void> {
    const { journal, name } = this;
    const first = { ...opening, seed: this.seed };
    this.session = await openSession({ dinner: name, journal, compute, cards, opening: first });
  }

  private among<T>(choices: readonly T[]): T {
    return choices[Math.floor(this.uniform() * choices.length)] as T;
  }

  async turn(): Promise<void> {
    const session = this.session as Session;
    const dice = this.uniform();
    if (this.deeds.length === 0 || dice < 0.72) return this.hear(this.words());
    if (dice < 0.86) {
      this.pass(this.among([1, 5, 20, 60, 240]));
      this.deeds.push(`${this.stamp()} (time passes)`);
      return this.announced(await session.wake(this.now));
    }
    if (dice < 0.92) return this.restart();
    if (dice < 0.95) {
      // A clock set back, as a bridge in another room may have it.
      this.now -= this.among([1, 10, 61]) * 60_000;
      return this.hear(this.words());
    }
    const key = `key ${this.deeds.length}`;
    const text = this.words();
    const once = await this.said(text, key);
    const facts = (await session.facts()).length;
    const twice = await this.said(text, key);
    holds(
      'the same key acts once',
      (await session.facts()).length === facts && twice[0]?.text === once[0]?.text,
      () => `"${text}" twice: ${once[0]?.text} / ${twice[0]?.text}`,
    );
  }

  private words(): string {
    if (this.deeds.length === 0 || this.uniform() < 0.02) return this.among(beginnings);
    const one = this.among(utterances);
    if (this.uniform() < 0.15) return `${one} and ${this.among(utterances)}`;
    return one;
  }

  private pass(minutes: number): void {
    this.now += minutes * 60_000;
  }

  private stamp(): string {
    return new Date(this.now - 6 * 3_600_000).toISOString().slice(11, 16);
  }

  private async hear(text: string): Promise<void> {
    this.pass(this.among([0, 1, 2, 5, 15]));
    await this.said(text);
  }

  private async said(text: string, key?: string): Promise<readonly Reply[]> {
    const session = this.session as Session;
    this.deeds.push(`${this.stamp()} > ${text}`);
    const turn = await session.hear({ text, at: this.now, ...(key === undefined ? {} : { key }) });
    this.announced(turn.announcements);
    for (const reply of turn.replies) this.worded(reply.text, reply.speech);
    await this.look(turn.view);
    return turn.replies;
  }

  private announced(announcements: readonly Announcement[]): void {
    for (const { id, text, speech } of announcements) {
      holds('no announcement twice', !this.raised.has(id), () => id);
      this.raised.add(id);
      this.worded(text, speech);
    }
  }

  private worded(text: string, speech: string): void {
    holds('words are whole', !/undefined|NaN|\[object|Infinity/.test(text + speech), () => text);
    // What the cook said is given back as it came.
    holds('speech is words', !/[°\d]/.test(speech.replace(/"[^"]*"/g, '')), () => speech);
    holds(
      'nothing is called safe',
      !/\b(it|that|this|meat|roast|perfectly) (is )?safe\b|safe to eat/i.test(text),
      () => text,
    );
  }

  private async look(view: View): Promise<void> {
    const checked = viewSchema.safeParse(view);
    holds('the view is what it is said to be', checked.success, () => String(checked.error));
    const facts = await (this.session as Session).facts();
    const likely = view.serving.likely;
    const over = ['served', 'put-away'].includes(view.stage);
    if (likely !== undefined && !over)
      holds(
        'the table is not in the past',
        Date.parse(likely) >= Date.parse(view.at) - 60_000,
        () => `table ${likely}, now ${view.at}`,
      );
    for (const step of view.steps) {
      holds('a step ends after it starts', step.end >= step.start, () => step.id);
      if (step.state === 'planned')
        holds(
          'nothing is planned for the past',
          Date.parse(step.start) >= Date.parse(view.at) - 60_000,
          () => `${step.id} planned for ${step.start}, now ${view.at}`,
        );
    }
    this.doneStays(view, facts);
    this.before = { view, facts };
  }

  /** What was done stays where it was, unless something was taken back or told anew. */
  private doneStays(view: View, facts: readonly Fact[]): void {
    const { before } = this;
    if (!before) return;
    const added = facts.slice(before.facts.length);
    const free = [
      'positions-voided',
      'step-done',
      'step-started',
      'oven-stood',
      'card-taken',
      'roast-described',
    ];
    if (added.some(({ type }) => free.includes(type))) return;
    const now = new Map(view.steps.map((step) => [step.id, step]));
    for (const step of before.view.steps) {
      const later = now.get(step.id);
      if (step.state === 'done' && later?.state === 'done')
        // A bar may go on after the deed: the oven stays on, the roast stays in, or goes back in.
        holds(
          'no done step moves',
          step.start === later.start &&
            (step.end === later.end ||
              step.end >= before.view.at ||
              (step.id === 'roast-in' && added.some(isBackIn))),
          () => `${step.id} ${step.start}–${step.end} became ${later.start}–${later.end}`,
        );
    }
  }

  private async restart(): Promise<void> {
    this.deeds.push(`${this.stamp()} (restart)`);
    const at = Math.max(this.now, (await this.session?.glance())?.lastAt ?? 0);
    const before = JSON.stringify(await this.session?.view(at));
    const dueBefore = (await this.session?.nextDue())?.at;
    await this.open();
    const after = JSON.stringify(await this.session?.view(at));
    holds('a restart changes nothing', before === after, () => differing(before, after));
    const dueAfter = (await this.session?.nextDue())?.at;
    holds('a restart keeps what is due', dueBefore === dueAfter, () => `${dueBefore} ${dueAfter}`);
  }
}

const isBackIn = (fact: Fact): boolean => fact.type === 'step-not-done' && fact.step === 'pull';

function differing(one: string, other: string): string {
  let from = 0;
  while (from < one.length && one[from] === other[from]) from += 1;
  const start = Math.max(0, from - 80);
  return `…${one.slice(start, from + 80)}… became …${other.slice(start, from + 80)}…`;
}
