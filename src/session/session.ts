/**
 * One dinner's session: turns the crank. Words become facts, facts a plan, a plan a reply; time
 * becomes announcements. One call at a time, in order; a turn is one transaction. Nothing below
 * knows the others; nothing here knows how words arrive or leave.
 */

import { limits } from '../base/limits.ts';
import { addMinutes, type Instant } from '../base/time.ts';
import { read } from '../intents/read.ts';
import { lexiconOf } from '../kitchen/card.ts';
import { menuOf, missingOf, uncardedOf } from '../kitchen/dinner.ts';
import type { Fact, FactOf, NewFact, Question } from '../kitchen/facts.ts';
import { standing } from '../kitchen/fold.ts';
import { type Heard, type Lexicon, languages, type ReadContext } from '../kitchen/heard.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import { type Context, ovenCallStep } from '../machine/context.ts';
import { decide } from '../machine/decide.ts';
import { usualDishes } from '../machine/decide-told.ts';
import { factsOf, isMoment } from '../machine/moments.ts';
import { type Sensed, sensed } from '../machine/sense.ts';
import { withFacts } from '../machine/with-facts.ts';
import type { Call } from '../planner/calls/call.ts';
import { roastWentInAt } from '../planner/roast-day.ts';
import { wordCall } from '../reply/call.ts';
import { callsNext, compose, dayMovedKey, nextKey } from '../reply/compose.ts';
import { announcementOf } from './announcement.ts';
import { remembering } from './compute.ts';
import { daysAheadOf } from './days.ts';
import { glanceOf } from './glance.ts';
import { type Offered, offer } from './offer.ts';
import { expectedOf, type Outlook, outlookOf } from './outlook.ts';
import type {
  Announcement,
  Compute,
  Due,
  Journal,
  Session,
  SessionOptions,
  Turn,
  Words,
} from './ports.ts';
import { PositionTaken } from './ports.ts';
import { supposed } from './suppose.ts';
import { supposedHour } from './suppose-hour.ts';
import { planTold, tellsWhy } from './told.ts';
import { sceneOf, viewOf } from './view.ts';

/** A clock that jumps by more than this is a fact. */
const jumpMinutes = 5;

/** Somebody wins every race for a place, so this is reached only where something is amiss. */
const triesAtMost = 50;

/** Announcements raised on one way to an instant; more is a mistake, not a dinner. */
const raisedAtMost = 400;

/** Words that set out a dinner; anything else said before one is known opens none. */
const isTelling = (outcome: Outcome): boolean =>
  [
    'described',
    'serving-set',
    'guests-set',
    'doneness-set',
    'dish-added',
    'dish-uncarded',
    'method-set',
    'corrected',
    'started-over',
  ].includes(outcome.key);

export async function openSession(options: SessionOptions): Promise<Session> {
  const facts = await options.journal.read(options.dinner);
  return new DinnerSession(options, facts);
}

class DinnerSession implements Session {
  readonly id: string;
  private readonly journal: Journal;
  private readonly compute: Compute;
  private readonly options: SessionOptions;
  private readonly lexicon: Lexicon;
  private known: Fact[];
  private queue: Promise<unknown> = Promise.resolve();
  private latest: { key: string; outlook: Outlook } | undefined;

  constructor(options: SessionOptions, facts: Fact[]) {
    this.id = options.dinner;
    this.options = options;
    this.journal = options.journal;
    this.compute = remembering(options.compute);
    this.lexicon = lexiconOf(options.cards);
    this.known = facts;
  }

  hear(words: Words): Promise<Turn> {
    return this.settled((raised) => this.take(words, raised));
  }

  sense(reading: Sensed & { at: Instant }): Promise<Announcement[]> {
    return this.settled(async (raised) => {
      if (this.known.length === 0) return raised;
      const now = Math.max(reading.at, this.lastAt());
      await this.raise(now, raised);
      const facts = sensed(reading, this.contextOf(await this.outlook(now)));
      await this.append(now, facts);
      if (facts.length > 0) await this.raise(now, raised);
      return raised;
    });
  }

  wake(at: Instant): Promise<Announcement[]> {
    return this.settled(async (raised) => {
      if (this.known.length > 0) await this.raise(at, raised);
      return raised;
    });
  }

  nextDue(): Promise<Due> {
    return this.next(async () => {
      const held = this.known.length;
      if (held === 0) return { held };
      const dueAt = (await this.outlook(this.lastAt())).calls[0]?.dueAt;
      return { held, at: dueAt === undefined ? undefined : Math.max(dueAt, this.lastAt()) };
    });
  }

  view(at: Instant): ReturnType<Session['view']> {
    return this.fresh(async () =>
      viewOf(await this.outlook(Math.max(at, this.lastAt())), this.known),
    );
  }

  undelivered(sink: string, at: Instant): Promise<Announcement[]> {
    return this.fresh(async () => {
      const { dinner } = await this.outlook(Math.max(at, this.lastAt()));
      return dinner.announced
        .filter((one) => one.expiresAt > at && !dinner.delivered.has(`${one.id}@${sink}`))
        .map(announcementOf);
    });
  }

  delivered(ids: readonly string[], sink: string): Promise<string[]> {
    return this.settled(async () => {
      const before = new Set(
        this.known.flatMap((fact) =>
          fact.type === 'delivered' && fact.sink === sink ? [fact.id] : [],
        ),
      );
      const fresh = ids.filter((id) => !before.has(id));
      await this.append(
        this.lastAt(),
        fresh.map((id): NewFact => ({ type: 'delivered', id, sink })),
      );
      return fresh;
    });
  }

  facts(): Promise<Fact[]> {
    return this.fresh(async () => [...this.known]);
  }

  glance(): ReturnType<Session['glance']> {
    return this.fresh(async () => glanceOf(this.id, this.known));
  }

  private next<T>(work: () => Promise<T>): Promise<T> {
    const done = this.queue.then(work);
    this.queue = done.catch(() => undefined);
    return done;
  }

  /** Begins with what others have appended meanwhile. */
  private fresh<T>(work: () => Promise<T>): Promise<T> {
    return this.next(async () => {
      await this.catchUp();
      return work();
    });
  }

  /**
   * A turn that lost the race for its place reads on and decides again. What an earlier try raised
   * stays raised, and is told with the turn.
   */
  private settled<T>(turn: (raised: Announcement[]) => Promise<T>): Promise<T> {
    const raised: Announcement[] = [];
    return this.fresh(async () => {
      for (let tries = 1; ; tries += 1) {
        try {
          return await turn(raised);
        } catch (error) {
          if (!(error instanceof PositionTaken) || tries >= triesAtMost) throw error;
          await this.catchUp();
        }
      }
    });
  }

  private async catchUp(): Promise<void> {
    const more = await this.journal.read(this.id, this.known.length);
    if (more.length > 0) this.known = [...this.known, ...more];
  }

  private lastAt(): Instant {
    return this.known.reduce((latest, fact) => Math.max(latest, fact.at), 0);
  }

  private async append(at: Instant, facts: readonly NewFact[]): Promise<void> {
    if (facts.length === 0) return;
    const added = await this.journal.append(this.id, this.known.length, at, facts);
    this.known = [...this.known, ...added];
  }

  /** The outlook for the facts known, kept while neither facts nor instant change. */
  private async outlook(now: Instant, facts: readonly Fact[] = this.known): Promise<Outlook> {
    const key = `${facts.length}:${now}`;
    if (facts === this.known && this.latest?.key === key) return this.latest.outlook;
    const outlook = await outlookOf(this.id, facts, now, this.compute);
    if (facts === this.known) this.latest = { key, outlook };
    return outlook;
  }

  private async open(at: Instant): Promise<void> {
    if (this.known.length > 0) return;
    const { timeZone, units, seed, language, kitchen } = this.options.opening;
    await this.append(at, [
      {
        type: 'dinner-opened',
        timeZone,
        temperatureUnit: units.temperature,
        weightUnit: units.weight,
        seed,
        language,
        kitchen,
      },
    ]);
  }

  private async take(words: Words, announcements: Announcement[]): Promise<Turn> {
    await this.open(words.at);
    const answered = words.key === undefined ? undefined : await this.repeated(words.key, words.at);
    if (answered) return answered;
    const jump = this.lastAt() - words.at > jumpMinutes * 60_000;
    if (jump)
      await this.append(this.lastAt(), [
        { type: 'clock-jumped', from: this.lastAt(), to: words.at },
      ]);
    const now = Math.max(words.at, this.lastAt());
    await this.raise(now, announcements);
    const before = await this.outlook(now);
    const heard = read(words.text.slice(0, limits.utteranceCharacters), this.readContext(before));
    return this.answer({ words, heard, before, now, announcements });
  }

  private async repeated(key: string, at: Instant): Promise<Turn | undefined> {
    const outlook = await this.outlook(Math.max(at, this.lastAt()));
    const reply = outlook.dinner.answered.get(key);
    if (!reply) return undefined;
    const heard = this.known.find(
      (fact): fact is FactOf<'words-heard'> => fact.type === 'words-heard' && fact.key === key,
    );
    return {
      heard: heard?.heard ?? [],
      replies: [replyOf(reply)],
      announcements: [],
      view: viewOf(outlook, this.known),
    };
  }

  private readContext(outlook: Outlook): ReadContext {
    const { dinner, standing: charts, now } = outlook;
    const options = dinner.options && dinner.question?.expecting === 'choice';
    return {
      now,
      timeZone: dinner.timeZone,
      stage: charts.stage,
      expecting: options ? 'choice' : (this.asked(outlook) ?? awaited(outlook)),
      language: languages.find((one) => one === dinner.language),
      units: dinner.units,
      paused: dinner.paused,
      dishes: [...menuOf(dinner).map((card) => card.id), ...uncardedOf(dinner)],
      helpers: dinner.helpers.map((one) => one.who),
      openSteps: openStepsOf(outlook),
      lexicon: this.lexicon,
    };
  }

  /** With the roast in, an old question of doneness makes no target of a number: it is a reading. */
  private asked({ dinner }: Outlook): ReadContext['expecting'] {
    const expecting = dinner.question?.expecting;
    if (expecting !== 'doneness' || roastWentInAt(dinner) === undefined) return expecting;
    const words = this.known.findLast((fact) => fact.type === 'words-heard');
    const question = this.known.findLast((fact) => fact.type === 'question-asked');
    return (question?.position ?? 0) > (words?.position ?? 0) ? 'doneness' : 'reading';
  }

  private async answer(turn: {
    words: Words;
    heard: Heard[];
    before: Outlook;
    now: Instant;
    announcements: Announcement[];
  }): Promise<Turn> {
    const { words, heard, before, now, announcements } = turn;
    const source = words.source ?? 'cook';
    const told: NewFact = {
      type: 'words-heard',
      text: words.text.slice(0, limits.utteranceCharacters),
      source,
      key: words.key,
      heard,
    };
    let context: Context = withFacts(this.contextOf(before), [told]);
    const facts: NewFact[] = [told];
    const add = (added: readonly NewFact[]): void => {
      facts.push(...added);
      context = withFacts(context, added);
    };
    const decision = decide(heard, context);
    add(decision.facts);
    if (decision.facts.some((fact) => fact.type === 'roast-described')) add(usualDishes(context));
    const restarted = decision.outcomes.some((outcome) => outcome.key === 'started-over');
    if (restarted) add([startingOver(context.facts)]);
    const firstPlan = missingOf(before.dinner).length > 0 && missingOf(context.dinner).length === 0;

    let after = await this.outlook(now, context.facts);
    const offered = await offer({
      outcomes: decision.outcomes,
      before,
      after,
      known: this.known,
      compute: this.compute,
    });
    if (offered.facts.length > 0) {
      add(offered.facts);
      after = await this.outlook(now, context.facts);
    }
    const question = openQuestion(after, decision.outcomes);
    if (question) {
      add([{ type: 'question-asked', question }]);
      after = await this.outlook(now, context.facts);
    }
    const nextStep = callsNext(decision.outcomes, firstPlan)
      ? dueStep(after, firstPlan)
      : undefined;
    const scene = sceneOf(after, {
      before: before.plan,
      options: offered.options,
      supposed: await supposed(decision.outcomes, after, this.compute),
      supposedHour: await supposedHour(decision.outcomes, {
        context,
        outlook: after,
        compute: this.compute,
      }),
      nextStep,
      firstPlan,
      days: daysAheadOf(after.dinner, this.options.cards),
    });
    // Talk overheard from others is left alone unless it meant something.
    const overheard =
      source === 'earshot' &&
      decision.outcomes.every((one) => one.key === 'unrelated' || one.key === 'unclear');
    const composed = compose({
      outcomes: decision.outcomes,
      scene,
      question,
      microphone: words.microphone,
    });
    const closing: NewFact[] = [
      ...(nextStep && !overheard && composed.keys.includes(nextKey)
        ? [{ type: 'step-called', call: callOf(nextStep, after), step: nextStep } as NewFact]
        : []),
      ...offeredCalls(offered, after),
      ...composed.cautioned.map((rule): NewFact => ({ type: 'cautioned', rule })),
      ...planTold(after, {
        acted: decision.facts.length > 0,
        heardWhy:
          firstPlan || composed.keys.includes(dayMovedKey) || decision.outcomes.some(tellsWhy),
      }),
      {
        type: 'replied',
        text: overheard ? '' : composed.text,
        speech: overheard ? '' : composed.speech,
        wording: composed.keys,
        key: words.key,
      },
    ];
    await this.append(now, [...facts, ...closing]);
    const reply = this.known.at(-1) as FactOf<'replied'>;
    return {
      heard,
      replies: overheard ? [] : [replyOf(reply)],
      announcements,
      view: viewOf(await this.outlook(now), this.known),
    };
  }

  private contextOf(outlook: Outlook): Context {
    return {
      id: this.id,
      facts: this.known,
      dinner: outlook.dinner,
      standing: outlook.standing,
      now: outlook.now,
      expected: expectedOf(outlook),
      library: this.options.cards,
    };
  }

  /** Raises what falls due by `until`, each at its own instant, and adds it to `raised`. */
  private async raise(until: Instant, raised: Announcement[]): Promise<void> {
    let cursor = this.lastAt();
    if (until < cursor) return;
    for (let steps = 0; steps < raisedAtMost; steps += 1) {
      const outlook = await this.outlook(cursor);
      const call = outlook.calls[0];
      if (call && call.dueAt <= cursor) {
        raised.push(await this.announce(call, outlook, cursor));
        continue;
      }
      if (cursor >= until) return;
      cursor = Math.min(call?.dueAt ?? until, until);
    }
  }

  private async announce(call: Call, outlook: Outlook, at: Instant): Promise<Announcement> {
    const context = this.contextOf(outlook);
    const presumed = call.presumes.flatMap(({ step, happenedAt }): NewFact[] =>
      isMoment(step) ? factsOf(step, happenedAt, context, { presumed: true }) : [],
    );
    const words = wordCall(call, sceneOf(outlook));
    const fact: NewFact = {
      type: 'announced',
      id: `${call.call}#${call.repeat + 1}`,
      call: call.call,
      repeat: call.repeat,
      kind: call.kind,
      step: call.step,
      text: words.text,
      speech: words.speech,
      urgency: call.urgency,
      dueAt: call.dueAt,
      expiresAt: Math.max(call.expiresAt, addMinutes(at, 2)),
    };
    const told =
      call.kind === 'plan-changed' ? planTold(outlook, { acted: true, heardWhy: true }) : [];
    await this.append(at, [...presumed, ...told, fact]);
    return announcementOf(this.known.at(-1) as FactOf<'announced'>);
  }
}

/** What "done" may mean, the call made last first: of a step, or of the oven alone. */
function openStepsOf(outlook: Outlook): string[] {
  const { open, ovenCalledCelsius } = expectedOf(outlook);
  return ovenCalledCelsius === undefined ? [...open] : [ovenCallStep, ...open];
}

/** So long a number just told may still be followed by another spot's, or taken back. */
const numberOpenMinutes = 5;

/** A call for a look at the core waits for a number, for a while; so does one to be ready for the pull. */
function awaited({ dinner, now }: Outlook): 'reading' | undefined {
  const last = dinner.announced.at(-1);
  const looked = last?.kind === 'check-due' || last?.kind === 'pull' || last?.step === 'pull';
  const toldAt = dinner.readings.at(-1)?.toldAt;
  const open = toldAt !== undefined && now - toldAt <= numberOpenMinutes * 60_000;
  return open || (last && looked && now - last.at < 20 * 60_000) ? 'reading' : undefined;
}

const replyOf = (fact: FactOf<'replied'>): Turn['replies'][number] => ({
  text: fact.text,
  speech: fact.speech,
  key: fact.wording.join(' '),
});

/** Everything but the opening and what was answered no longer counts. */
function startingOver(facts: readonly Fact[]): NewFact {
  const kept = new Set(['dinner-opened', 'replied', 'positions-voided', 'units-set']);
  const positions = standing(facts)
    .filter((fact) => !kept.has(fact.type) && fact.position < (facts.at(-1)?.position ?? 0))
    .map((fact) => fact.position);
  return { type: 'positions-voided', positions, because: 'undo' };
}

/** What is missing before there is a plan is asked for, one thing at a time. */
function openQuestion(after: Outlook, outcomes: readonly Outcome[]): Question | undefined {
  if (
    after.dinner.question ||
    outcomes.some((one) => one.key === 'bad-value' || one.key === 'emergency')
  )
    return undefined;
  const missing = missingOf(after.dinner)[0];
  if (!missing || !outcomes.some(isTelling)) return undefined;
  return { kind: missing, expecting: missing, text: '' };
}

/** The step to call within the reply: the one that is due now or within moments. */
function dueStep(after: Outlook, firstPlan: boolean): string | undefined {
  const { plan, now, dinner } = after;
  if (!plan || missingOf(dinner).length > 0) return undefined;
  const busy = plan.steps.some(
    (step) =>
      step.state === 'active' &&
      step.handsOn === 'throughout' &&
      step.hands[0] === 'you' &&
      step.endAt > now,
  );
  if (busy) return undefined;
  const within = addMinutes(now, firstPlan ? 5 : 2);
  const next = plan.steps.find(
    (step) =>
      (step.state === 'due' || step.state === 'planned') &&
      step.startAt <= within &&
      !['rest', 'check', 'pull', 'guests-arrive'].includes(step.id),
  );
  return next?.id;
}

/** The call that stands for a step said within a reply, so that it is not announced again. */
function callOf(step: string, after: Outlook): string {
  const ahead = ['get-ready', 'rest-over'];
  const call = after.calls.find((one) => one.step === step && !ahead.includes(one.kind));
  return call?.call ?? `step-due:${step}`;
}

/** A course that begins now was said in the reply; its oven move is called. */
function offeredCalls(offered: Offered, after: Outlook): NewFact[] {
  if (offered.facts.length === 0) return [];
  return after.calls
    .filter(
      (call) =>
        call.about?.what === 'oven' && call.about.why === 'course' && call.dueAt <= after.now,
    )
    .map((call): NewFact => ({ type: 'step-called', call: call.call }));
}
