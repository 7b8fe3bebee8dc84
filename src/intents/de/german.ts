/**
 * German, small: the main path of a dinner. It reads by frames alone, the words a clause holds, since
 * a German sentence puts them in many orders. A second language is this folder and nothing else.
 */
import { type Clause, lineOf } from '../clause.ts';
import type { Language } from '../language.ts';
import type { Token } from '../token.ts';
import { ovenFrame, readingFrame, stepsFrame, troubleFrame } from './frames-cooking.ts';
import {
  callFrame,
  choiceFrame,
  correctFrame,
  emergencyFrame,
  questionFrame,
  shortFrame,
} from './frames-talk.ts';
import {
  dishFrame,
  donenessFrame,
  guestsFrame,
  noteFrame,
  restFrame,
  roastFrame,
  servingFrame,
  shiftFrame,
} from './frames-told.ts';
import { dishesIn } from './names.ts';
import { quantified } from './quantities.ts';
import { moodOf } from './words.ts';

const fillers =
  /^(äh|ähm|hm|öh|also|mal|eben|halt|doch|bitte|so|naja|na|jetzt|gerade|schon|nun|etwa|ungefähr|circa|ca|rund|genau|übrigens|eigentlich|tja)$/;
/** Words that matter in some phrases although they are fillers in most. */
const kept = /^(halt|genau|jetzt|nun|schon|doch)$/;

const spellings: Record<string, string> = {
  "gibt's": 'gibts',
  hab: 'habe',
  "hab's": 'habe es',
  "ist's": 'ist es',
  "geht's": 'gehts',
  '°': 'grad',
  '℃': 'grad c',
  '℉': 'grad f',
  'o.k.': 'ok',
  nich: 'nicht',
  nix: 'nichts',
  n: 'ein',
  ne: 'eine',
  nen: 'einen',
  is: 'ist',
  kg: 'kilo',
  min: 'minuten',
  std: 'stunden',
};

function spelt(tokens: readonly Token[]): Token[] {
  return tokens.flatMap((token, at) => {
    if (fillers.test(token.word) && !(kept.test(token.word) && tokens.length <= 4)) return [];
    if (token.word === '-' || token.word === '/') {
      const glued = tokens[at - 1]?.to === token.from && tokens[at + 1]?.from === token.to;
      return glued ? [] : [{ ...token, word: ',' }];
    }
    if (/^[;:–—…]$/.test(token.word)) return [{ ...token, word: ',' }];
    const words = (spellings[token.word] ?? token.word).split(' ');
    return words.map((word) => ({ ...token, word }));
  });
}

const parts = /^([.?!,]|und|dann|aber|sowie)$/;

/** "Kartoffeln und Bohnen sind drin" is one clause, "es hat 48 Grad und die Gäste sind da" is two. */
function joins(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  if (tokens[at]!.word !== 'und') return false;
  const verb =
    /^(ist|sind|habe|hat|haben|zeigt|kommen|kommt|wir|ich|es|was|wie|wann|steht|brauche)$/;
  const next = tokens.slice(at + 1, at + 4).map((token) => token.word);
  return (
    !part.some((token) => verb.test(token.word)) ||
    !next.some((word) => verb.test(word) || /^<[tcdw]/.test(word))
  );
}

export const german: Language = {
  prepare: (tokens, context) => quantified(spelt(tokens), context),
  across: [],
  clausesOf(tokens): Clause[] {
    const clauses: Clause[] = [];
    let part: Token[] = [];
    const close = (asked: boolean): void => {
      if (part.length > 0) clauses.push({ tokens: part, mood: moodOf(lineOf(part), asked) });
      part = [];
    };
    tokens.forEach((token, at) => {
      // "Sag Bescheid, wenn ...": what is wished for and when belong together.
      const leads =
        token.word === ',' && /^(wenn|sobald|dass|ob|wann)$/.test(tokens[at + 1]?.word ?? '');
      if (leads) return;
      if (parts.test(token.word) && !joins(part, tokens, at)) close(token.word === '?');
      else part.push(token);
    });
    close(false);
    return clauses;
  },
  within: [],
  frames: [
    emergencyFrame,
    choiceFrame,
    correctFrame,
    callFrame,
    questionFrame,
    shortFrame,
    shiftFrame,
    troubleFrame,
    guestsFrame,
    noteFrame,
    servingFrame,
    ovenFrame,
    stepsFrame,
    readingFrame,
    roastFrame,
    dishFrame,
    donenessFrame,
    restFrame,
  ],
  // No weights have been learnt for German: its guard alone decides.
  addressed: (said) => said.placed,
  opinionsOf: () => [],
  overruled: () => undefined,
  isForHelper: (placed, whole) =>
    placed.meaning.intent === 'emergency' ||
    !/ (gestern|letztes jahr|letzte woche|damals|neulich|im film|als kind|fieber) /.test(
      ` ${whole}`,
    ),
  withoutAsking: (tokens) => [...tokens],
  refiners: [
    // Manners beside something of substance are no more than that.
    (heard) =>
      heard.filter(
        ({ meaning }) =>
          heard.length === 1 ||
          !/^(courtesy|acknowledge|affirm|pause|deny)$/.test(meaning.intent) ||
          !heard.some(
            (one) => !/^(courtesy|acknowledge|affirm|pause|deny)$/.test(one.meaning.intent),
          ),
      ),
    (heard) =>
      heard.filter(
        (one, at) =>
          heard.findIndex(
            (other) => JSON.stringify(other.meaning) === JSON.stringify(one.meaning),
          ) === at,
      ),
    // A roast told in several breaths is one roast.
    (heard) => {
      const first = heard.find((one) => one.meaning.intent === 'describe-roast');
      if (!first) return [...heard];
      const all = heard.filter((one) => one.meaning.intent === 'describe-roast');
      const meaning = Object.assign({}, ...all.map((one) => one.meaning));
      return heard.flatMap((one) =>
        one === first ? [{ ...one, meaning }] : all.includes(one) ? [] : [one],
      );
    },
  ],
  leftOver({ line, quantities, context }) {
    const kitchen =
      / (ofen|braten|fleisch|thermometer|temperatur|kern|gäste|essen|soße|timer|knochen|grad|<[tw]\d+>) /.test(
        ` ${line}`,
      ) ||
      dishesIn(line, context).length > 0 ||
      /^(<[a-z]\d+> )+$/.test(line);
    if (!kitchen || / (gestern|letztes jahr|damals|neulich) /.test(` ${line}`))
      return { intent: 'unrelated' };
    const first = quantities[0];
    return {
      intent: 'unclear',
      ...(first?.kind === 'number' ? { number: first.value } : {}),
      ...(first?.kind === 'temperature' ? { temperature: first.value } : {}),
    };
  },
};
