/**
 * An evening with the helper: a simulated cook who hears its calls, does them late and imperfectly, and
 * says in others' words what was done and read. The helper knows only what it is told.
 */

import { fahrenheitOfCelsius } from '../../src/base/units.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Fact } from '../../src/kitchen/facts.ts';
import { coreAtMinute } from '../../src/kitchen/forecast.ts';
import { inThisThread } from '../../src/session/compute.ts';
import { outlookOf } from '../../src/session/outlook.ts';
import type {
  Announcement,
  Compute,
  Session,
  SessionOptions,
  Turn,
} from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { dice } from '../heat/kitchen/dice.ts';
import { agreedBetween } from './agreed.ts';
import { carvingMinutes, type Evening, type Habits, habitsOf, wantedBy } from './evening.ts';
import type { Plated } from './rivals.ts';
import type { Believed, Trace } from './trace.ts';
import { type Told, toldOf } from './untrue.ts';
import { lineOf, type Pool } from './words.ts';
import { World } from './world.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const beginsAt = Date.parse('2026-12-19T12:00:00-06:00');
const latestMinute = 900;
/** Chance that a plain question whether a thing was done is answered. */
const answersWhenAsked = 0.8;

export interface Helped extends Plated {
  /** Minute of the table as agreed with the guests in the end; see agreed.ts. */
  agreedMinute: number;
  /** The hour that was last named to the cook, for whatever reason. */
  expectedMinute: number;
  announcements: number;
  questions: number;
  /** Everything said, for whoever wants to know why; kept only when asked for. */
  talk: string[];
  facts: Fact[];
  trace: Trace;
  told: Told;
  /** What the cook said, and the true core by the minute. */
  said: Said[];
  cores: ReadonlyMap<number, number>;
}

export interface Said {
  minute: number;
  text: string;
}

interface Deed {
  atMinute: number;
  what: string;
  act(): unknown;
}

class HelpedEvening {
  private readonly evening: Evening;
  private readonly world: World;
  private readonly habits: Habits;
  private readonly uniform: () => number;
  private readonly session: Session;
  private readonly compute: Compute;
  private readonly talk: string[] = [];
  private deeds: Deed[] = [];
  private readonly called = new Set<string>();
  private factsSeen = 0;
  private announcements = 0;
  private questions = 0;
  private knifeMinute: number | undefined;
  private plate: Plated | undefined;
  /** What the dinner is judged by, and what its cook reckons with since the helper last named an hour. */
  private agreedMinute: number;
  private expectedMinute: number;
  private lastAsked = '';
  private idle = false;
  /** What the thermometer shows in ice above 32 °F, once the helper knows of it. */
  private showsOver = 0;
  private readonly trace: Trace = {};
  private readonly said: Said[] = [];

  constructor(evening: Evening, session: Session, compute: Compute) {
    this.evening = evening;
    this.session = session;
    this.compute = compute;
    this.world = new World(evening);
    this.agreedMinute = evening.wantedMinute;
    this.expectedMinute = evening.wantedMinute;
    this.habits = habitsOf[evening.cook];
    this.uniform = dice(evening.seed * 104_729 + 3).uniform;
  }

  async run(): Promise<Helped> {
    const { evening } = this;
    await this.say(this.opening());
    const { steps } = await this.session.view(instantOf(0));
    const begins = (id: string) => {
      const at = steps.find((step) => step.id === id)?.start;
      return at === undefined ? undefined : minuteOf(Date.parse(at));
    };
    this.trace.plannedInMinute = begins('roast-in');
    this.trace.plannedPullMinute = begins('pull');
    for (const shift of evening.shifts)
      this.later(shift.atMinute, 'guests', () => this.tellShift(shift.minutes));
    if (evening.powerOut) {
      const { atMinute, minutes } = evening.powerOut;
      this.later(atMinute + 1, 'power out', () => this.say(lineOf('powerOut', this.uniform)));
      this.later(atMinute + minutes + 1, 'power back', () =>
        this.say(lineOf('powerBack', this.uniform)),
      );
    }
    while (!this.plate && this.world.minute < latestMinute) await this.step();
    const plate = this.plate ?? { coreFahrenheit: Number.NaN, tableMinute: latestMinute };
    const facts = await this.session.facts();
    return {
      ...plate,
      agreedMinute: this.agreedMinute,
      expectedMinute: this.expectedMinute,
      announcements: this.announcements,
      questions: this.questions,
      talk: this.talk,
      facts,
      trace: this.trace,
      said: this.said,
      cores: this.world.cores,
      told: toldOf(facts, { ...plate, tableAt: instantOf(plate.tableMinute) }),
    };
  }

  /** What is true now beside what the helper believes. */
  private async believed(): Promise<Believed | undefined> {
    const { world } = this;
    const now = instantOf(world.minute);
    const facts = await this.session.facts();
    const { forecast, plan, dinner } = await outlookOf(this.session.id, facts, now, this.compute);
    if (!forecast || !plan) return undefined;
    const last = dinner.readings.at(-1);
    const since = (now - plan.roastInAt) / 60_000;
    const believed = coreAtMinute(forecast, since);
    return {
      minute: world.minute,
      core: world.coreFahrenheit,
      probe: world.probeFahrenheit,
      lastReading: last && fahrenheitOfCelsius(last.celsius),
      readingMinute: last && minuteOf(last.happenedAt),
      believedCore: believed && fahrenheitOfCelsius(believed.p50),
      believedKnife: fahrenheitOfCelsius(plan.coreAtServingCelsius.p50),
      pull: fahrenheitOfCelsius(plan.pullCelsius),
      restMinutes: plan.restMinutes,
      likelyTable: minuteOf(plan.serving.likelyAt),
    };
  }

  /** To the next thing: a call, a deed of the cook's, or five minutes on. */
  private async step(): Promise<void> {
    const { at: due } = await this.session.nextDue();
    const dueMinute = due === undefined ? Number.POSITIVE_INFINITY : minuteOf(due);
    const deed = this.deeds.sort((a, b) => a.atMinute - b.atMinute)[0];
    const soonest = Math.min(dueMinute, deed?.atMinute ?? Number.POSITIVE_INFINITY);
    // What is due and raises nothing is not waited for at the same minute twice.
    const least = this.world.minute + (this.idle ? 1 : 0);
    this.world.advance(Math.max(least, Math.min(soonest, this.world.minute + 5)));
    const announcements = await this.session.wake(instantOf(this.world.minute));
    this.idle = announcements.length === 0;
    for (const announcement of announcements) {
      if (announcement.kind === 'pull' && announcement.id.endsWith('#1'))
        this.trace.called = await this.believed();
      this.heard(announcement);
    }
    await this.obey();
    while (this.deeds[0] && this.deeds[0].atMinute <= this.world.minute) {
      const [first] = this.deeds.splice(0, 1);
      await first?.act();
      this.deeds.sort((a, b) => a.atMinute - b.atMinute);
    }
  }

  private opening(): string {
    const { toldPounds, toldBones, guests, wantedMinute, fan } = this.evening;
    const clock = new Date(instantOf(wantedMinute) - 6 * 3_600_000).toISOString().slice(11, 16);
    const oven = fan ? ', fan oven' : '';
    return `${toldPounds} pound rib roast with ${toldBones} bones, dinner at ${clock} for ${guests}, medium rare${oven}`;
  }

  private later(atMinute: number, what: string, act: Deed['act']): void {
    this.deeds.push({ atMinute, what, act });
  }

  private delay(): number {
    const [low, high] = this.habits.delayMinutes;
    return low + (high - low) * this.uniform();
  }

  private note(who: string, text: string): void {
    this.talk.push(`${clockOf(this.world.minute)} ${who} ${text}`);
  }

  private async say(text: string): Promise<Turn> {
    this.note('>', text);
    this.said.push({ minute: Math.round(this.world.minute), text });
    const turn = await this.session.hear({ text, at: instantOf(this.world.minute) });
    for (const announcement of turn.announcements) this.heard(announcement);
    for (const reply of turn.replies) this.note('<', reply.text);
    // Its number answered with the pull, nobody waits to be reminded.
    if (turn.replies.some(({ text }) => /out with it now|Pull the roast now/.test(text))) {
      this.trace.called = await this.believed();
      this.toDo('pull', `pull:answered-${this.said.length}`, '');
    }
    // Whatever was agreed since, who is told that dinner is back at its hour reckons with that.
    if (turn.replies.some(({ text }) => /Dinner is back at/.test(text))) {
      this.agreedMinute = wantedBy(this.evening, this.world.minute);
      this.expectedMinute = this.agreedMinute;
    }
    const asking = turn.view.asking;
    if (asking && asking.text + turn.view.position !== this.lastAsked) {
      this.lastAsked = asking.text + turn.view.position;
      this.questions += 1;
      this.later(this.world.minute + 0.5 * this.delay(), 'answer', () =>
        this.answer(asking.expecting),
      );
    }
    return turn;
  }

  private report(pool: Pool, value?: number): Promise<unknown> | undefined {
    if (this.uniform() >= this.habits.reports) return undefined;
    return this.say(lineOf(pool, this.uniform, value));
  }

  /** What is open by then, which may be another question of its kind. */
  private async answer(expecting: string): Promise<void> {
    const { asking: open, options } = await this.session.view(instantOf(this.world.minute));
    if (open?.expecting !== expecting) return;
    if (expecting === 'choice') {
      const [first] = options ?? [];
      if (first) this.expectedMinute = minuteOf(Date.parse(first.serving));
      await this.say(lineOf('choose', this.uniform));
    } else if (expecting === 'confirmation') await this.confirm(open.text);
    else if (expecting === 'reading') await this.takeReading();
  }

  /** A number that is doubted is looked at again where that was asked for, and otherwise stood by. */
  private async confirm(asked: string): Promise<void> {
    if (/another spot/.test(asked) && this.uniform() < this.habits.triesSpots) {
      this.trySpot();
      await this.takeReading();
    } else await this.say(lineOf(/other scale/.test(asked) ? 'no' : 'yes', this.uniform));
  }

  private async tellShift(minutes: number): Promise<void> {
    const before = this.agreedMinute;
    const wanted = wantedBy(this.evening, this.world.minute);
    this.agreedMinute = wanted;
    this.expectedMinute = wanted;
    // Nobody carves for guests who are not there.
    if (minutes > 0) {
      this.deeds = this.deeds.filter(({ what }) => !/^(carve|serve)/.test(what));
      for (const name of this.called) if (/^(carve|serve)/.test(name)) this.called.delete(name);
      if (this.world.isOut) this.alone();
    }
    // Who is not understood says it again, in other words.
    for (let tries = 0; tries < 3; tries += 1) {
      const line = lineOf(minutes > 0 ? 'late' : 'early', this.uniform, Math.abs(minutes));
      const { heard, view } = await this.say(line);
      if (!heard.some(({ intent }) => intent === 'shift-serving')) continue;
      const [first] = view.options ?? [];
      if (first) {
        this.expectedMinute = minuteOf(Date.parse(first.serving));
        this.agreedMinute = agreedBetween(before, wanted, this.expectedMinute);
      }
      return;
    }
  }

  /** Steps that a reply called; the cook hears those as well as what is announced. */
  private async obey(): Promise<void> {
    const facts = await this.session.facts();
    for (const fact of facts.slice(this.factsSeen))
      if (fact.type === 'step-called' && fact.step) this.toDo(fact.step, fact.call, '');
      else if (fact.type === 'step-called' && /^oven-change:course/.test(fact.call)) {
        // "Oven up to 400 °F now", said in a reply, is turned as if it had been called.
        const turned = facts.findLast((one) => one.type === 'course-set')?.course.oven.at(-1);
        if (turned)
          this.toDo('oven', fact.call, `${Math.round(fahrenheitOfCelsius(turned.celsius))} °F`);
      }
    this.factsSeen = facts.length;
  }

  private heard(announcement: Announcement): void {
    this.announcements += 1;
    this.note('!', `${announcement.kind} ${announcement.step ?? ''}: ${announcement.text}`);
    const { kind, step, id, text } = announcement;
    if (kind === 'get-ready' || kind === 'timer' || kind === 'watch') return;
    if (/^Is (it out|the roast out|the oven)/.test(text)) this.asked(kind, text);
    this.toDo(kind === 'oven-change' && step === undefined ? 'oven' : (step ?? kind), id, text);
  }

  /** A question whether something was done: even the silent say yes to that, as a rule. */
  private asked(kind: Announcement['kind'], text: string): void {
    if (this.uniform() >= Math.max(this.habits.reports, answersWhenAsked)) return;
    const degrees = Number(/(\d{3}) ?°F/.exec(text)?.[1]);
    const isDone = kind === 'pull' ? this.world.isOut : this.world.dial === degrees;
    if (!isDone) return;
    const line = (): string =>
      kind === 'pull' ? lineOf('out', this.uniform) : lineOf('oven', this.uniform, this.world.dial);
    this.later(this.world.minute + 0.5, 'yes', () => this.say(line()));
  }

  private toDo(step: string, call: string, text: string): void {
    const name = call.split('#')[0] ?? call;
    if (this.uniform() < this.habits.forgets) return;
    const pending = this.deeds.find((deed) => deed.what === step);
    // Who is reminded comes the sooner.
    if (pending && this.called.has(name))
      pending.atMinute = Math.min(pending.atMinute, this.world.minute + this.delay());
    if (this.called.has(name)) return;
    this.called.add(name);
    // What came to nothing is done at the reminder, like what was forgotten.
    const act = async (): Promise<void> => {
      if ((await this.does(step, text)) === 'not done') this.called.delete(name);
    };
    this.later(this.world.minute + this.delay(), step, act);
  }

  private async does(step: string, text: string): Promise<'not done' | undefined> {
    const { world } = this;
    switch (step) {
      case 'oven-on':
      case 'oven-down':
      case 'oven-up':
      case 'oven':
        await this.turnOven(text);
        return undefined;
      case 'roast-in':
        if (world.roastIsIn) return undefined;
        if (world.dial === 0) await this.turnOven('');
        world.putIn();
        this.trace.inMinute = world.minute;
        this.note('*', 'the roast goes in');
        await this.report('in');
        return undefined;
      case 'butter-roast':
        world.openDoor(1.5);
        return undefined;
      case 'check':
        if (this.uniform() >= this.habits.reads) return 'not done';
        if (/two spots/.test(text) && this.uniform() < this.habits.triesSpots) this.trySpot();
        await this.takeReading();
        return undefined;
      case 'check-thermometer':
        if (this.uniform() >= this.habits.reads) return 'not done';
        await this.testThermometer();
        return undefined;
      case 'pull':
        await this.pull(text);
        return undefined;
      case 'carve':
      case 'serve':
        await this.carve();
        return undefined;
      default:
        // Preparations take hands, not heat; what goes into the oven opens its door.
        if (/\.in$|\.brown$/.test(step)) world.openDoor(0.6);
        if (this.uniform() < 0.3) await this.report('done');
    }
    return undefined;
  }

  private async turnOven(text: string): Promise<void> {
    const said = /(\d{3}) ?°F/.exec(text)?.[1];
    const view = await this.session.view(instantOf(this.world.minute));
    const planned = view.oven.setFahrenheit;
    const degrees = said === undefined ? planned || 450 : Number(said);
    this.world.setOven(degrees);
    if (/back in to hold/.test(text)) this.holdOnceCool();
    this.note('*', `the oven is set to ${degrees}`);
    await this.report('oven', degrees);
  }

  private holdOnceCool(): void {
    if (this.world.isCoolEnoughToHold) this.world.hold();
    else {
      // The door stands ajar until then.
      this.world.openDoor(2);
      this.later(this.world.minute + 3, 'hold', () => this.holdOnceCool());
    }
  }

  /** As far off the middle as the first, by the same habits. */
  private trySpot(): void {
    const { uniform } = this;
    const normal = (): number =>
      Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const off = Math.abs(normal()) * 0.01;
    const angle = 2 * Math.PI * uniform();
    this.world.tryAnotherSpot([off * Math.cos(angle), off * Math.sin(angle), 0.004 * normal()]);
  }

  /** What the thermometer shows too much is in every number told for it from then on. */
  private async testThermometer(): Promise<void> {
    const reads = this.world.readIce();
    // Lines for a roast's number name its middle, which this is not.
    await this.say(`it reads ${reads} in the ice water`);
    const facts = await this.session.facts();
    if (facts.some(({ type }) => type === 'thermometer-checked')) this.showsOver = reads - 32;
  }

  private async takeReading(): Promise<void> {
    if (!this.world.roastIsIn) return;
    const reads = this.world.read();
    await this.sayReading(reads);
  }

  private async sayReading(reads: number): Promise<void> {
    for (let tries = 0; tries < 2; tries += 1) {
      const { heard } = await this.say(lineOf('reading', this.uniform, reads));
      if (heard.some(({ intent }) => intent === 'report-reading')) return;
    }
  }

  /** Looks first, if that is this cook's habit; below the pull it stays in and the number is told. */
  private async pull(asked: string): Promise<void> {
    const { world } = this;
    if (!world.roastIsIn) return;
    const view = await this.session.view(instantOf(world.minute));
    const wanted = (view.target.pullFahrenheit ?? 115) + this.showsOver;
    if (this.uniform() < this.habits.checksPull) {
      if (/two spots/.test(asked) && this.uniform() < this.habits.triesSpots) this.trySpot();
      const reads = world.read();
      if (reads < wanted - 0.5) {
        // The next call of the pull is a new one.
        for (const name of this.called) if (name.startsWith('pull')) this.called.delete(name);
        await this.sayReading(reads);
        return;
      }
    }
    world.takeOut();
    this.note('*', `the roast comes out at ${world.coreFahrenheit.toFixed(0)} °F`);
    await this.report('out');
    this.trace.out = await this.believed();
    this.alone();
  }

  /** Whatever is called or not, hungry people want their dinner. */
  private alone(): void {
    const wanted = this.expectedMinute - carvingMinutes(this.evening) + 8;
    this.later(Math.max(this.world.minute + 15, wanted), 'carve unbidden', () => this.carve());
  }

  private async carve(): Promise<void> {
    if (this.knifeMinute !== undefined) return;
    const { world } = this;
    this.trace.knife = await this.believed();
    if (world.roastIsIn) world.takeOut();
    this.knifeMinute = world.minute;
    this.plate = {
      coreFahrenheit: world.coreFahrenheit,
      tableMinute: world.minute + carvingMinutes(this.evening),
    };
    this.note('*', `the knife goes in at ${this.plate.coreFahrenheit.toFixed(1)} °F`);
  }
}

export const instantOf = (minute: number): number => beginsAt + Math.round(minute * 60_000);
const minuteOf = (instant: number): number => (instant - beginsAt) / 60_000;
export const clockOf = (minute: number): string =>
  new Date(beginsAt + minute * 60_000 - 6 * 3_600_000).toISOString().slice(11, 16);

export const openingOf = (
  evening: Evening,
): Pick<SessionOptions, 'dinner' | 'cards' | 'opening'> => ({
  dinner: `evening ${evening.seed}`,
  cards,
  opening: {
    timeZone: 'America/Chicago',
    units: { temperature: 'F', weight: 'lb' },
    seed: evening.seed,
    language: 'en',
  },
});

export async function helped(evening: Evening, compute: Compute = inThisThread): Promise<Helped> {
  const journal = openMemoryJournal();
  const session = await openSession({ ...openingOf(evening), journal, compute });
  return new HelpedEvening(evening, session, compute).run();
}
