/**
 * The one sentence that matters now, from the view and what was called. A function of what every
 * page gets alike, so that two tablets never say different things.
 */
import { minuteMilliseconds } from '../base/time.ts';
import type { Called, KitchenState } from './kitchen.ts';
import { capital, clock, degrees, type Manner } from './show.ts';
import type { Step, View } from './wire.ts';
import { words } from './words.ts';

/** What the large stubs under the sentence say to the kitchen. */
export interface Answer {
  label: string;
  says: string;
}

export interface Sentence {
  main: string;
  rest: string;
  answers: Answer[];
  /** The call it rests on, if any. */
  called?: Called;
}

const done: Answer = { label: words.done, says: words.says.done };
const notYet: Answer = { label: words.notYet, says: words.says.notYet };
const isOut: Answer = { label: words.isOut, says: words.says.isOut };
const yes: Answer = { label: words.yes, says: words.says.yes };
const no: Answer = { label: words.no, says: words.says.no };

export function sentenceNow(state: KitchenState, at: number, manner: Manner): Sentence {
  const { view } = state;
  if (state.link === 'unpaired') return { ...words.unpaired, answers: [] };
  if (!view)
    return state.link === 'live' && state.dinner === undefined
      ? { ...words.first, answers: [] }
      : { ...words.waiting, answers: [] };
  if (view.emergency)
    return {
      ...split(state.emergencyWords ?? words.emergency),
      answers: [{ label: words.backAtStove, says: words.says.resume }],
    };
  if (view.paused)
    return {
      main: words.paused,
      rest: '',
      answers: [{ label: words.resume, says: words.says.resume }],
    };
  if (view.asking?.kind === 'choice' && view.options?.length)
    return {
      main: words.choose(clock(view.serving.wanted ?? view.at, manner)),
      rest: words.chooseRest,
      answers: [],
    };
  if (view.asking?.text)
    return {
      ...split(view.asking.text),
      answers: view.asking.expecting === 'confirmation' ? [yes, no] : [],
    };
  const called = standing(state, at);
  if (called) return { ...split(called.text), answers: answersTo(called), called };
  return quiet(view, at, manner);
}

/** What may still be called once the dinner is on the table. */
const afterTable = ['put-away', 'timer', 'caution'];

/** A call stands until what it asks for is done, put off or overtaken by the next. */
function standing(state: KitchenState, at: number): Called | undefined {
  const { view, called, notYetAt } = state;
  const over = view?.stage === 'served' || view?.stage === 'put-away';
  const last = called
    .filter((one) => !over || afterTable.includes(one.kind))
    // What asks for no step has been taken in as soon as the cook says anything.
    .filter((one) => one.step !== undefined || one.position > state.saidAt)
    .findLast((one) => one.kind !== 'get-ready' || Date.parse(one.expiresAt) > at);
  if (!view || !last) return undefined;
  if (last.position < notYetAt) return undefined;
  const step = view.steps.find((one) => one.id === last.step);
  if (step && (step.state === 'done' || step.state === 'skipped')) return undefined;
  if (last.kind === 'check-due' && state.readingAt > last.position) return undefined;
  // A step under way is left in peace once it should be over: the helper takes it for done.
  const until = step
    ? Math.max(Date.parse(step.end), Date.parse(last.expiresAt))
    : Date.parse(last.expiresAt);
  return until > at ? last : undefined;
}

function answersTo(called: Called): Answer[] {
  switch (called.kind) {
    case 'pull':
      return [isOut, notYet];
    case 'get-ready':
    case 'timer':
    case 'caution':
    case 'running-late':
    case 'plan-changed':
      return [];
    case 'check-due':
      return [];
    default:
      return called.step === undefined ? [] : [done, notYet];
  }
}

function quiet(view: View, at: number, manner: Manner): Sentence {
  const next = view.next && view.steps.find((one) => one.id === view.next?.id);
  switch (view.stage) {
    case 'served':
      return { main: words.served, rest: cautionOf(view), answers: [] };
    case 'put-away':
      return { main: words.over, rest: words.overRest, answers: [] };
    case 'rest':
    case 'hold': {
      const carve = view.steps.find((one) => one.id === 'carve');
      if (carve && carve.state === 'planned')
        return {
          main: words.restTill(clock(carve.start, manner)),
          rest: nextWords(view, manner),
          answers: [],
        };
      break;
    }
    case 'sear':
    case 'low-roast':
      if (view.forecast && view.target.pullFahrenheit !== undefined)
        return {
          main: words.pullLikely(
            degrees(view.target.pullFahrenheit, manner),
            clock(view.forecast.pull.p50, manner),
          ),
          rest: view.checkAt
            ? words.lookAgain(clock(view.checkAt, manner))
            : nextWords(view, manner),
          answers: [],
        };
      break;
    default:
      break;
  }
  if (!next) return { main: words.nothingNext, rest: '', answers: [] };
  const soon = Date.parse(next.start) - at < minuteMilliseconds;
  return soon
    ? { main: words.doNow(capital(next.title)), rest: next.why, answers: [done] }
    : { main: nextWords(view, manner), rest: next.why, answers: [] };
}

const nextWords = (view: View, manner: Manner): string =>
  view.next ? words.nothingTill(view.next.title, clock(view.next.at, manner)) : '';

const cautionOf = (view: View): string => tidy(view.cautions.at(-1)?.text ?? '');

/** A number and its unit stay on one line. */
const tidy = (text: string): string => text.replace(/(\d) (?=°|min\b|lb\b|kg\b)/g, '$1\u00a0');

/** Longer than this the eye does not take it in from two metres; the first clause must do. */
const charactersAtAGlance = 56;
/** A clause that only says when or whether is nothing to act on. */
const dependent = /^(if|when|while|once|before|after|as|unless|until|till|since|for)\b/i;

/**
 * The part to read from afar, and the rest. A short question before the matter ("Have you?") stays with
 * the sentence after it; of a long sentence the first clause is taken where it stands by itself.
 */
export function split(
  text: string,
  atAGlance: number = charactersAtAGlance,
): { main: string; rest: string } {
  const clean = tidy(text);
  const [first = clean, ...others] = clean.split(/(?<=[.!?])\s+/);
  const asks = first.length <= 12 && others.length > 0;
  const main = asks ? `${first} ${others[0]}` : first;
  const after = (asks ? others.slice(1) : others).join(' ');
  const [, clause, more] = /^(.{18,}?)[,:;] (.+)$/s.exec(main) ?? [];
  if (main.length <= atAGlance || !clause || !more || dependent.test(clause))
    return { main, rest: after };
  return { main: `${clause}.`, rest: [capital(more), after].filter(Boolean).join(' ') };
}

/**
 * The pull turns the page over: it was called, and the roast is neither out nor put off, be it by the
 * cook's word or by a reading that moves the pull ahead again.
 */
export function pullCalled(state: KitchenState, at: number): Called | undefined {
  const { view } = state;
  const call = state.called.findLast((one) => one.kind === 'pull');
  if (!view || !call || state.notYetAt > call.position) return undefined;
  if (view.stage !== 'low-roast' && view.stage !== 'sear') return undefined;
  const pull = view.steps.find((one) => one.id === 'pull');
  if (!pull || pull.state === 'done' || pull.state === 'skipped') return undefined;
  const putOff =
    state.readingAt > call.position &&
    view.forecast !== undefined &&
    Date.parse(view.forecast.pull.p50) > at + 3 * minuteMilliseconds;
  return putOff ? undefined : call;
}

/** What comes next and when: steps not begun, in order, without the one the sentence is about. */
export function comingSteps(view: View, sentence: Sentence, at: number, most: number): Step[] {
  return view.steps
    .filter((step) => step.state === 'planned' || step.state === 'due')
    .filter((step) => step.id !== sentence.called?.step && step.handsOn !== 'none')
    .filter((step) => Date.parse(step.end) > at)
    .sort((a, b) => a.start.localeCompare(b.start))
    .slice(0, most);
}
