/** What a question is about, named as the cards name it. */
import { nameIn } from '../../names.ts';
import type { Match } from '../../recogniser.ts';
import { dishIn, meansRoast, stepIn } from '../steps.ts';

export const about = (match: Match, slot = 'thing'): { about?: string } => {
  const words = match.words(slot).replace(/^(the|my|our) /, '');
  if (words === '') return {};
  if (meansRoast(words)) return { about: 'roast' };
  const id = dishIn(words, match.context) ?? stepIn(words, match.context);
  return { about: id ?? words };
};
/** Nothing but the roast itself is cut up by the bare word. */
const cutsIt =
  /^(cut|slice|cut up|slice up) (it|this|that|the (roast|meat|joint|beef|lamb|pork|tenderloin|fillet|rib|loin|leg))( up)?$/;

/** "Talk me through the start": the step that is next, by no name. */
const whereItStands =
  /^(start|beginning|first step|first bit|first thing|next step|next bit|next one|this step|this bit|this one|step|that|it)$/;
/** "Let it sit so long before the carving": once it is out. */
const letRest =
  /^(let|leave|have) (it|her|him|the (roast|meat|joint|beef|lamb|pork)) (to )?(sit|stand|rest)(?! (out|on the counter|in the fridge))/;
export const topic = (match: Match): { topic?: string } => {
  const words = match.words('thing').replace(/^(the|to) /, '');
  if (words === '' || whereItStands.test(words)) return {};
  if (cutsIt.test(words)) return { topic: 'carve' };
  if (letRest.test(words)) return { topic: 'rest' };
  return { topic: stepIn(words, match.context) ?? dishIn(words, match.context) ?? words };
};
export const ingredient = (match: Match): { ingredient?: string } => {
  const words = match.words('thing').replace(/^(the|some|any|a) /, '');
  if (words === '') return {};
  return { ingredient: nameIn(match.context.lexicon.ingredients, words) ?? words };
};
export const degrees = (match: Match): { temperature?: number; unit?: 'F' | 'C' } => {
  if (match.has('temperature')) return match.temperature('temperature');
  // "is it safe to eat it at 125": the one number beside the question that can be a core's.
  const mark = /<[tn]\d+>/.exec(match.line)?.[0];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  if (quantity?.kind === 'temperature')
    return { temperature: quantity.value, ...(quantity.unit ? { unit: quantity.unit } : {}) };
  return quantity?.kind === 'number' && quantity.value >= 35 ? { temperature: quantity.value } : {};
};

/** The whole clause in words: what a question of safety is about stands anywhere in it. */
export const clauseWords = (match: Match): string =>
  match.line
    .replaceAll(/<\w+> ?|[|?,.!]/g, '')
    .replaceAll(/ +/g, ' ')
    .trim();
