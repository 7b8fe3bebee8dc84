/**
 * What speaks for one way to hear a text: how it was come by, how sure the second opinion is of each thing
 * heard, how much of the text they explain and what is left over, how they follow one another, and how
 * likely the text is meant for the helper. Language-free; what the cues weigh is learnt.
 */
import { stepOf } from './addressed.ts';
import type { Clause } from './clause.ts';
import type { Hypothesis } from './hypothesis.ts';
import type { Opinion } from './opinion.ts';
import { asksNothing, howFound, isFound, type Placed } from './placed.ts';
import { isStop } from './token.ts';

interface Told {
  /** How likely the text is meant for the helper, if this was heard in it. */
  forHelper(placed: readonly Placed[]): number;
  opinionsOf(clause: Clause): readonly Opinion[];
  /** A word that says little by itself. */
  isSmall(word: string): boolean;
}

const quantity = /^</;

const breathSteps = [0.1, 0.2, 0.3, 0.5, 0.7, 0.9];
const helperSteps = [0.02, 0.05, 0.1, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 0.95, 0.98];
const stepIn = (steps: readonly number[], value: number): number =>
  steps.filter((step) => value >= step).length;

/** Intents that are told apart by little, drawn together. */
const kinOf = (intent: string): string =>
  intent.startsWith('ask-') ? 'ask' : /^report-(started|done|out)$/.test(intent) ? 'deed' : intent;

/** What a phrase found across clauses has none. */
const whereFound = (one: Placed): string =>
  isFound(one) && one.clause === undefined ? 'across' : howFound(one);

const likelihoodOf = (opinions: readonly Opinion[], intent: string): number =>
  opinions.find((one) => one.intent === intent)?.likelihood ?? 0;
const bestOf = (opinions: readonly Opinion[]): Opinion | undefined =>
  opinions.find(({ intent }) => !/^un(related|clear)$/.test(intent));

/** Each cue once. */
export function hypothesisCues(way: Hypothesis, told: Told): string[] {
  const cues = new Set<string>([`how:${way.difference}`]);
  const { said } = way.hearing;
  cues.add(`breath${stepIn(breathSteps, way.breath)}:${way.difference.startsWith('stop')}`);
  if (way.without) {
    const { meaning, likelihood = 0 } = way.without;
    cues.add(`without:${meaning.intent}`);
    cues.add(`without:${meaning.intent}:${whereFound(way.without)}:${stepOf(likelihood)}`);
  }
  addChange(cues, way);
  const words = said.line.split(' ').filter((word) => word !== '' && !isStop(word));
  const heard = way.placed.filter((one) => !asksNothing(one));
  const many = Math.min(4, heard.length);
  const long = Math.min(6, Math.floor(words.length / 4));
  cues.add(`many${many}`);
  cues.add(`many${many}:long${long}`);
  cues.add(`many${many}:clauses${Math.min(5, said.clauses.length)}`);
  if (said.line.includes('?'))
    cues.add(`asked:${heard.some(({ meaning }) => meaning.intent.startsWith('ask-'))}`);
  const talk = stepOf(likelihoodOf(said.opinions, 'unrelated'));
  if (heard.length === 0) addTalk(cues, way, told, { talk, long });
  else addHeard(cues, way, told, { talk, heard });
  return [...cues];
}

/** What is heard that was not heard as the text stands, and what no longer is. */
function addChange(cues: Set<string>, { placed, asItStands }: Hypothesis): void {
  const lost = beyond(asItStands, placed);
  const gained = beyond(placed, asItStands);
  cues.add(`lost${Math.min(3, lost.length)}:gained${Math.min(3, gained.length)}`);
  for (const one of lost) {
    cues.add(`lost:${one.meaning.intent}`);
    cues.add(`lost:${whereFound(one)}:${stepOf(one.likelihood ?? 0)}`);
    for (const other of gained) cues.add(`for:${one.meaning.intent}>${other.meaning.intent}`);
  }
  for (const one of gained) {
    cues.add(`gained:${one.meaning.intent}`);
    cues.add(`gained:${whereFound(one)}:${stepOf(one.likelihood ?? 0)}`);
  }
}

/** What of one list has no like in the other. */
function beyond(list: readonly Placed[], other: readonly Placed[]): Placed[] {
  const left = other.map(({ meaning }) => meaning.intent);
  return list.filter((one) => {
    const at = left.indexOf(one.meaning.intent);
    if (at >= 0) left.splice(at, 1);
    return at < 0 && !asksNothing(one);
  });
}

/** What speaks for a text being nothing that asks for a deed or an answer. */
function addTalk(
  cues: Set<string>,
  { hearing: { said } }: Hypothesis,
  { forHelper }: Told,
  { talk, long }: { talk: number; long: number },
): void {
  cues.add('talk');
  cues.add(`talk:likely${talk}`);
  cues.add(`talk:long${long}`);
  cues.add(`talk:stage:${said.context.stage ?? ''}`);
  cues.add(`talk:expecting:${said.context.expecting ?? ''}`);
  cues.add(`talk:best${stepOf(bestOf(said.opinions)?.likelihood ?? 0)}`);
  cues.add(`talk:helper${stepIn(helperSteps, forHelper(said.placed))}`);
  cues.add(`talk:found${Math.min(2, said.placed.length)}`);
  for (const one of said.placed) {
    cues.add(`talk:${one.meaning.intent}`);
    cues.add(`talk:${whereFound(one)}:${stepOf(one.likelihood ?? 0)}`);
  }
}

/** What speaks for what was heard. */
function addHeard(
  cues: Set<string>,
  way: Hypothesis,
  told: Told,
  { talk, heard }: { talk: number; heard: readonly Placed[] },
): void {
  const { said } = way.hearing;
  const { context, opinions } = said;
  cues.add(`helper${stepIn(helperSteps, told.forHelper(way.placed))}`);
  cues.add(`acts:talk${talk}`);
  const likelihoods: number[] = [];
  for (const one of heard) {
    const { intent } = one.meaning;
    const how = whereFound(one);
    const inText = likelihoodOf(opinions, intent);
    const likelihood = one.likelihood ?? inText;
    likelihoods.push(likelihood);
    cues.add(`=${intent}`);
    cues.add(`=${intent}:${how}`);
    cues.add(`clause:${how}:${stepOf(likelihood)}`);
    cues.add(`clause:${kinOf(intent)}:${how}:${stepOf(likelihood)}`);
    cues.add(`text:${how}:${stepOf(inText)}`);
    cues.add(`text:${kinOf(intent)}:${stepOf(inText)}`);
    cues.add(`stage:${context.stage ?? ''}:${intent}`);
    if (context.expecting) cues.add(`expecting:${context.expecting}:${intent}`);
    cues.add(`slots:${intent}:${slotsOf(one).join(',')}`);
    if (one.clause) {
      cues.add(`mood:${one.clause.mood}:${kinOf(intent)}`);
      const share = one.tokens.length / Math.max(1, one.clause.tokens.length);
      const cover = stepIn([0.3, 0.6, 0.99], share);
      cues.add(`cover:${how}:${cover}`);
      cues.add(`cover:${intent}:${cover}`);
    }
  }
  const least = Math.min(...likelihoods);
  const product = likelihoods.reduce((all, one) => all * Math.max(one, 0.001), 1);
  cues.add(`least${stepOf(least)}`);
  cues.add(`least${stepOf(least)}:many${Math.min(3, heard.length)}`);
  cues.add(`mean${stepOf(product ** (1 / heard.length))}`);
  addOrder(cues, heard);
  addLeft(cues, way, told, heard);
}

const slotsOf = ({ meaning }: Placed): string[] =>
  Object.entries(meaning)
    .filter(([slot, value]) => slot !== 'intent' && value !== undefined)
    .map(([slot]) => slot)
    .sort();

/** How what was heard follows one another. */
function addOrder(cues: Set<string>, heard: readonly Placed[]): void {
  const intents = heard.map(({ meaning }) => meaning.intent);
  cues.add(`first:${intents[0]}`);
  for (const [at, intent] of intents.entries()) {
    const before = intents[at - 1];
    if (before !== undefined) {
      cues.add(`then:${before}>${intent}`);
      cues.add(`then:${kinOf(before)}>${kinOf(intent)}`);
    }
    if (intents.indexOf(intent) < at) {
      cues.add('twice');
      cues.add(`twice:${intent}`);
    }
  }
}

/** What of the text nothing that was heard rests on. */
function addLeft(
  cues: Set<string>,
  { hearing: { said } }: Hypothesis,
  { opinionsOf, isSmall }: Told,
  heard: readonly Placed[],
): void {
  const taken = new Set(heard.flatMap(({ tokens }) => tokens.map(({ from }) => from)));
  const left = said.clauses.flatMap(({ tokens }) => tokens.filter(({ from }) => !taken.has(from)));
  const numbers = left.filter(({ word }) => quantity.test(word)).length;
  const words = left.filter(({ word }) => !quantity.test(word) && !isSmall(word)).length;
  cues.add(`left${Math.min(6, words)}`);
  cues.add(`left${Math.min(6, words)}:many${Math.min(3, heard.length)}`);
  cues.add(`left:numbers${Math.min(2, numbers)}`);
  let empty = 0;
  for (const clause of said.clauses) {
    const content = clause.tokens.filter(({ word }) => !isSmall(word) && !isStop(word)).length;
    if (content === 0 || clause.tokens.some(({ from }) => taken.has(from))) continue;
    empty += 1;
    const opinions = opinionsOf(clause);
    const best = bestOf(opinions);
    cues.add(`empty:talk${stepOf(likelihoodOf(opinions, 'unrelated'))}`);
    cues.add(`empty:best${stepOf(best?.likelihood ?? 0)}`);
    cues.add(`empty:${best?.intent}:${stepOf(best?.likelihood ?? 0)}`);
    cues.add(`empty:words${Math.min(4, content)}`);
  }
  cues.add(`empty${Math.min(3, empty)}`);
}
