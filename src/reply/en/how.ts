/**
 * How a step is done, from its card: asked for as a whole it is a list for eyes and its first line for
 * ears; then "next" by "next". How far the telling has come stands in the key of the last reply.
 */
import { minutesBetween } from '../../base/time.ts';
import type { Card } from '../../kitchen/card.ts';
import { stepIdOf } from '../../kitchen/card.ts';
import { roastCardOf } from '../../kitchen/dinner.ts';
import { isTradeTopic } from '../../kitchen/heard.ts';
import type { Outcome } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { lower, type Spoken, say, sentences } from '../spoken.ts';
import { loreOf } from './lore.ts';
import { currentStepOf, nextStepOf } from './standing.ts';
import { fill, findStep, howWords } from './steps.ts';

type Found = NonNullable<ReturnType<typeof findStep>>;

export function howAnswer(topic: string | undefined, scene: Scene): Spoken {
  const found = stepAsked(topic, scene);
  if (!found)
    return (
      loreOf(topic ?? '', false, scene) ??
      say`I have no card for that${topic ? ` (${named(topic)})` : ''}. Ask me about a step of this dinner.`
    );
  const lines = linesOf(found, scene);
  const list = lines.map((line, index) => `${index + 1}. ${line.text}`).join('\n');
  const first = lines[0] ?? say``;
  return {
    text: `${list}\nSay "next" to go through it line by line.`,
    speech: `${first.speech} Then say next.`,
  };
}

/** A topic as it is spoken: the id of a card or a step is no word of the kitchen. */
const named = (topic: string): string =>
  topic.replace(/(\S+)\.\S+/g, '$1').replace(/(?<=\p{L})-(?=\p{L})/gu, ' ');

/** Its sentences in order: how it is done, how it should be, and what to do when it is not. */
function linesOf({ step }: Found, scene: Scene): Spoken[] {
  return [
    ...howWords(step, scene),
    say`Look for this: ${lower(fill(step.right, scene, step))}`,
    fill(step.wrong, scene, step),
  ];
}

interface Walk {
  found: Found;
  /** Lines told so far. */
  told: number;
}

/** "Next" belongs to the step being told for so long. */
const walkMinutes = 30;

/** The step that is being told line by line, unless it is done by now. */
export function walkOf(scene: Scene): Walk | undefined {
  const { lastReply } = scene.dinner;
  if (!lastReply || minutesBetween(lastReply.at, scene.now) > walkMinutes) return undefined;
  const key = lastReply.wording.map((one) => /^how:(.+):(\d+)$/.exec(one)).find((one) => one);
  const id = key?.[1];
  const found = id === undefined ? undefined : findStep(scene.dinner, id);
  if (!found || id === undefined) return undefined;
  const record = scene.dinner.steps.get(id);
  if (record?.doneAt !== undefined || record?.skipped) return undefined;
  const told = Number(key?.[2]);
  return told < linesOf(found, scene).length ? { found, told } : undefined;
}

/** The next line of the step being told. */
export function walkWords({ found, told }: Walk, scene: Scene): Spoken {
  const lines = linesOf(found, scene);
  const line = lines[told] ?? say``;
  return told === lines.length - 1
    ? sentences([line, say`That is all of it; tell me when it is done.`])
    : line;
}

/** Replies that leave a telling where it was. */
const keepsPlace: ReadonlySet<Outcome['key']> = new Set<Outcome['key']>([
  'acknowledged',
  'courtesy',
  'repeat',
  'affirmed',
]);

/** Where the telling stands after these outcomes, as a key of the reply. */
export function walkKey(outcomes: readonly Outcome[], scene: Scene): string | undefined {
  const keyOf = ({ card, step }: Found, told: number): string =>
    `how:${stepIdOf(card, step)}:${told}`;
  for (const outcome of outcomes) {
    if (outcome.key !== 'answer') continue;
    if (outcome.heard.intent === 'ask-how') {
      const found = stepAsked(outcome.heard.topic, scene);
      return found && keyOf(found, 1);
    }
    const walk = outcome.heard.intent === 'ask-next' ? walkOf(scene) : undefined;
    if (walk) return keyOf(walk.found, walk.told + 1);
  }
  const walk = outcomes.every((one) => keepsPlace.has(one.key)) ? walkOf(scene) : undefined;
  return walk && keyOf(walk.found, walk.told);
}

const stepAsked = (topic: string | undefined, scene: Scene): Found | undefined => {
  // What is asked of the trade is no step's, though a step may bear its word.
  if (isTradeTopic(topic)) return undefined;
  const id = topic ?? currentStepOf(scene)?.id ?? nextStepOf(scene)?.id;
  return id === undefined ? undefined : stepForTopic(id, scene);
};

/** The card's step for an id, a dish or a word of its names. */
export function stepForTopic(topic: string, scene: Scene): Found | undefined {
  const exact = findStep(scene.dinner, topic);
  if (exact) return exact;
  const roast = roastCardOf(scene.dinner);
  for (const card of scene.dinner.cards) {
    if (card.card === 'roast' && roast !== undefined && card.id !== roast.id) continue;
    if (card.id === topic && card.steps[0]) return { card, step: mainStep(card) };
    for (const step of card.steps)
      if (
        [step.title, ...(step.names ?? [])].some(
          (name) => name.includes(topic) || topic.includes(name),
        )
      )
        return findStep(scene.dinner, stepIdOf(card, step));
  }
  return undefined;
}

const mainStep = (card: Card): Card['steps'][number] =>
  card.steps.reduce((best, step) => (step.how.length > best.how.length ? step : best));
