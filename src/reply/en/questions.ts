/** What the helper asks, and what it says of a value that no kitchen has. */
import type { Question } from '../../kitchen/facts.ts';
import type { BadValue } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, silent } from '../spoken.ts';
import { isInOven } from './standing.ts';
import { count, degrees, weight } from './words.ts';

export const badWords = (bad: BadValue, scene: Scene): Spoken => {
  const { units } = scene.dinner;
  switch (bad.what) {
    case 'reading':
      return say`I heard ${degrees(bad.celsius, units)}; no roast reads that, so I have not noted it. What does it read?`;
    case 'weight':
      return say`I heard ${weight(bad.kilograms, units)}; no household oven roasts that, so I have not noted it. What does it weigh?`;
    case 'bones':
      return say`I heard ${count(bad.count)} bones; a rib roast has one to seven. How many are there?`;
    case 'guests':
      return say`I heard ${count(bad.count)} guests; I plan for one to sixty. How many are coming?`;
    case 'oven':
      return say`I heard an oven at ${degrees(bad.celsius, units)}; no household dial goes there. What is it set to?`;
    case 'doneness':
      return say`I heard ${degrees(bad.celsius, units)} for the middle; roasts are served between rare and well done. How do you like it?`;
    case 'minutes':
      return say`I heard ${count(bad.minutes)} minutes; I can plan with up to a day. How long is it?`;
  }
};

export function questionWords(question: Question, scene: Scene): Spoken {
  const { dinner } = scene;
  const pending = (question.pending ?? []) as { type?: string; celsius?: number }[];
  const reading = pending.findLast((fact) => fact.type === 'reading-taken')?.celsius;
  switch (question.kind) {
    case 'roast':
      return dinner.roast.cut === undefined
        ? say`What is the roast: which cut, how heavy, how many bones?`
        : say`How heavy is it, or how many bones has it?`;
    case 'serving-time':
      return say`When is dinner?`;
    case 'guests':
      return say`How many are coming?`;
    case 'doneness':
      return say`How do you like it: rare, medium rare, medium, or well done?`;
    case 'reading-contradicts':
      return say`${degrees(reading ?? 0, dinner.units)}, after ${degrees(Number(question.text), dinner.units)} before? A core does not fall in the oven: is that right?`;
    case 'reading-improbable':
      if (question.text === 'not-in')
        return say`${degrees(reading ?? 0, dinner.units)}, and by my book the roast is not in yet. Is it in, and is that its middle?`;
      return question.text === 'unit'
        ? say`${degrees(reading ?? 0, dinner.units)} would surprise me. Was that in the other scale?`
        : say`${degrees(reading ?? 0, dinner.units)} in the middle? I expected about ${degrees(Number(question.text), dinner.units)}. Try another spot, clear of bone and fat${isPastPull(reading, scene) ? '; if it reads as much, it comes out. Is it right?' : ': is it right?'}`;
    case 'reading-or-oven':
      return say`${degrees(reading ?? 0, dinner.units)} in the roast, or the oven?`;
    case 'serving-past':
      return say`That hour has gone today. Tomorrow, or another time?`;
    case 'choice':
      return silent;
    case 'start-over':
      return say`Forget this dinner and begin a new one? Yes or no.`;
  }
}

const isPastPull = (celsius: number | undefined, scene: Scene): boolean =>
  scene.plan !== undefined &&
  celsius !== undefined &&
  celsius >= scene.plan.pullCelsius &&
  isInOven(scene);

/** A question to someone whose microphone closes after it. Whatever ends otherwise needs no answer now. */
export const answerableLater = (asked: Spoken): Spoken =>
  asked.speech.trimEnd().endsWith('?')
    ? { text: asked.text, speech: `${asked.speech.trimEnd()} Tell me when you can.` }
    : asked;
