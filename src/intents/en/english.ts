/** English, put together: the order in which its recognisers are tried is the design, so it is here. */
import type { Said } from '../addressed.ts';
import { lineOf } from '../clause.ts';
import type { Language } from '../language.ts';
import { nameIn } from '../names.ts';
import { agreed, opinionOf } from '../opinion.ts';
import type { Meaning, Recogniser } from '../recogniser.ts';
import { networkFrom } from '../recurrent.ts';
import type { Token } from '../token.ts';
import { guardOf, kindOfWordWith } from './addressed.ts';
import { withoutAside } from './asides.ts';
import { clausesOf } from './clauses.ts';
import { corrected } from './corrections.ts';
import { datesIn } from './dates.ts';
import { answerFrame } from './frames/answer.ts';
import { questionFrame, wonderingFrame } from './frames/asking.ts';
import {
  dishFrame,
  donenessFrame,
  guestsFrame,
  handsFrame,
  lackFrame,
  unitsFrame,
} from './frames/dinner.ts';
import { ovenFrame, readingFrame, watchFrame } from './frames/heat.ts';
import { noteFrame } from './frames/notes.ts';
import { methodFrame, setupFrame } from './frames/setup.ts';
import { notYetFrame, progressFrame, skipFrame } from './frames/steps.ts';
import { dayFrame, talkFrame } from './frames/talk.ts';
import { awayFrame, openHourFrame, servingFrame, shiftFrame, timerFrame } from './frames/time.ts';
import { troubleFrame } from './frames/trouble.ts';
import { gateOf } from './gate.ts';
import { homophones } from './homophones.ts';
import { overruled } from './judge.ts';
import { withoutAsking } from './mood.ts';
import { opinionCues } from './opinion-cues.ts';
import { knownStems, opinionWeights } from './opinion-weights.ts';
import { quantified } from './quantities.ts';
import { allergies } from './recognisers/allergies.ts';
import { asBefore } from './recognisers/as-before.ts';
import { askHow } from './recognisers/ask-how.ts';
import { askNow } from './recognisers/ask-now.ts';
import { askPlan } from './recognisers/ask-plan.ts';
import { askSlice } from './recognisers/ask-slice.ts';
import { askTemperature } from './recognisers/ask-temperature.ts';
import { askThings } from './recognisers/ask-things.ts';
import { askTime } from './recognisers/ask-time.ts';
import { askTrade, eitherWay } from './recognisers/ask-trade.ts';
import { atTable } from './recognisers/at-table.ts';
import { behind } from './recognisers/behind.ts';
import { clocks } from './recognisers/clocks.ts';
import { correction } from './recognisers/correction.ts';
import { danger } from './recognisers/danger.ts';
import { daysAsked, stoodOut } from './recognisers/days-asked.ts';
import { daysTold, lastNight, publicTable } from './recognisers/days-told.ts';
import { doneness } from './recognisers/doneness.ts';
import { eats } from './recognisers/eats.ts';
import { emergency } from './recognisers/emergency.ts';
import { forgotten } from './recognisers/forgotten.ts';
import { guests } from './recognisers/guests.ts';
import { hands } from './recognisers/hands.ts';
import { helpersTime } from './recognisers/helpers-time.ts';
import { haveList, inHouse } from './recognisers/house.ts';
import { kitchenBelief } from './recognisers/kitchen-belief.ts';
import { lack } from './recognisers/lack.ts';
import { likewise } from './recognisers/likewise.ts';
import { menu } from './recognisers/menu.ts';
import { method } from './recognisers/method.ts';
import { namedSteps } from './recognisers/named-steps.ts';
import { notDone, skip } from './recognisers/not-done.ts';
import { noted } from './recognisers/noted.ts';
import { notes } from './recognisers/notes.ts';
import { ovenTalk } from './recognisers/oven.ts';
import { ovens } from './recognisers/ovens.ts';
import { plateTroubles, sideLate } from './recognisers/plate-troubles.ts';
import { letUs, progress } from './recognisers/progress.ts';
import { readings } from './recognisers/readings.ts';
import { roast } from './recognisers/roast.ts';
import { notBefore, serving } from './recognisers/serving.ts';
import { setup } from './recognisers/setup.ts';
import { musing, shortQuestions } from './recognisers/short-questions.ts';
import { supposed } from './recognisers/supposed.ts';
import { early, fragments, yesAndNo } from './recognisers/talk.ts';
import { timers } from './recognisers/timers.ts';
import { together } from './recognisers/together.ts';
import { trouble } from './recognisers/trouble.ts';
import { units } from './recognisers/units.ts';
import { urgent } from './recognisers/urgent.ts';
import { watch } from './recognisers/watch.ts';
import { heardInOrder } from './recurrent-input.ts';
import { recurrentWeights } from './recurrent-weights.ts';
import { refiners } from './refiners.ts';
import { repaired } from './repair.ts';
import { rescoringOf } from './rescoring.ts';
import { verbToEach } from './shared-verb.ts';
import { spokenIs } from './spoken-is.ts';
import { withoutTypos } from './typos.ts';
import { inOrder } from './word-order.ts';

const across: readonly Recogniser[] = [
  // First of all, whatever else was said.
  urgent,
  emergency,
  danger,
  // "tell me when it reads 110" must be gone before anything sees a reading.
  watch,
  // "no, I meant 94" must be gone before "no" and 94 are seen apart.
  correction,
  // "allergic to milk and nuts" is two things of one guest, before an "and" parts them.
  allergies,
  // "what if we ate at eight" sets no hour.
  supposed,
  // "foil or no foil" is one question, and sets nothing up.
  eitherWay,
  together,
  stoodOut,
  haveList,
  // "how pink would it be if we took it out now" is one question, and nothing is out.
  askSlice,
  // "forget what you know of the oven" skips no step of it.
  kitchenBelief,
];

const within: readonly Recogniser[] = [
  // "and the puddings at ten to five" before that is an hour for dinner.
  asBefore,
  // Short words of the talk, before a phrase takes them for content.
  early,
  // "I forgot to turn the oven on" before the oven is on.
  forgotten,
  // "let's eat" with the roast carved is no time of day.
  atTable,
  shortQuestions,
  // A bare value means what was asked for.
  fragments,
  musing,
  // "can Anna have the gravy" before what else "can" and "have" ask.
  eats,
  // "how big a roast for eight" before amounts, "what do I ask the butcher" before the list.
  daysAsked,
  // "should I turn it over" before what else "should I" asks.
  askTrade,
  askThings,
  askTime,
  askPlan,
  askTemperature,
  askHow,
  askNow,
  units,
  // "ten minutes for the rolls" before any other use of minutes.
  timers,
  // A card's own clause, word for word, before its words mean anything else.
  namedSteps,
  plateTroubles,
  sideLate,
  trouble,
  // "carrots at twenty past", after what went in before, is no hour of dinner.
  likewise,
  // "I have butter" before a dish of that name, "Ola comes an hour later" before the table moves.
  inHouse,
  daysTold,
  lastNight,
  publicTable,
  // "dad wants his well done" before doneness, "the kids eat at half five" before serving.
  noted,
  notes,
  // "guests are late 30 minutes" and "two more are coming" before counts and times.
  behind,
  notBefore,
  // "the starter is at half six" before the hour of the dinner, "two ovens" before two guests.
  clocks,
  ovens,
  helpersTime,
  serving,
  guests,
  hands,
  // "I haven't got a rack" before "I haven't got it done".
  lack,
  notDone,
  skip,
  menu,
  // The oven's numbers before the roast's.
  ovenTalk,
  readings,
  setup,
  method,
  // "a seven pound rib roast" before "roast" is something done.
  roast,
  progress,
  letUs,
  doneness,
  yesAndNo,
];

/** Every word that stands for itself in some phrase. */
const wordsOf = (recognisers: readonly Recogniser[]): ReadonlySet<string> =>
  new Set(recognisers.flatMap((one) => one.phrases.flatMap(({ pattern }) => [...pattern.words])));

const phraseWords = wordsOf([...across, ...within]);
/** Kinds of English words, as the gate's cues name them. */
export const englishKinds = kindOfWordWith(phraseWords);

const network = networkFrom(recurrentWeights);

export const english: Language = {
  prepare(tokens, context) {
    const spelt = withoutTypos(tokens, (word) => phraseWords.has(word));
    const written = withoutFalseStart(repaired(spelt));
    const words = withoutAbout(inOrder(homophones(spokenIs(written, context), context)));
    const { tokens: marked, quantities } = quantified(words, (plain) => datesIn(plain, context));
    const once = corrected(withoutAside(marked), quantities);
    return { tokens: verbToEach(once, context), quantities };
  },
  across,
  clausesOf,
  within,
  frames: [
    openHourFrame,
    answerFrame,
    watchFrame,
    timerFrame,
    awayFrame,
    servingFrame,
    shiftFrame,
    noteFrame,
    troubleFrame,
    skipFrame,
    notYetFrame,
    ovenFrame,
    readingFrame,
    progressFrame,
    guestsFrame,
    lackFrame,
    handsFrame,
    methodFrame,
    dishFrame,
    donenessFrame,
    setupFrame,
    unitsFrame,
    wonderingFrame,
    questionFrame,
    talkFrame,
    dayFrame,
  ],
  isForHelper: guardOf(phraseWords),
  opinionsOf: (match) =>
    agreed(
      opinionOf(
        opinionCues(match, (stem) => knownStems.has(stem)),
        opinionWeights,
      ),
      heardInOrder(network, match),
    ),
  overruled,
  addressed: gateOf(englishKinds),
  withoutAsking,
  refiners,
  rescoring: rescoringOf(englishKinds),
  leftOver,
};

const approximate =
  /^(about|around|roughly|nearly|almost|approximately|approx|circa|maybe|exactly|say|like|precisely|somewhere)$/;
const numeric =
  /^(\d.*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|half|quarter|a|an|noon|hundred|minus)$/;

/** "hundred and... steam again... hundred and eighteen": what broke off is said again further on. */
function withoutFalseStart(tokens: readonly Token[]): Token[] {
  const at = tokens.findIndex(
    ({ word }, index) =>
      word === 'hundred' &&
      tokens[index + 1]?.word === 'and' &&
      /^[,.]$/.test(tokens[index + 2]?.word ?? ''),
  );
  if (at < 0 || !tokens.slice(at + 2).some(({ word }) => numeric.test(word))) return [...tokens];
  const start = /^(a|one|two|three)$/.test(tokens[at - 1]?.word ?? '') ? at - 1 : at;
  return [...tokens.slice(0, start), ...tokens.slice(at + 2)];
}

/** "for I don't know fifteen minutes": how sure it is. */
const unsure = (tokens: readonly Token[], at: number): boolean =>
  /^(for|like|about|maybe|around|say)$/.test(tokens[at - 1]?.word ?? '') &&
  lineOf(tokens.slice(at, at + 4)) === 'i do not know ' &&
  numeric.test(tokens[at + 4]?.word ?? '');

/** "about 104", "around half six": how sure a number is changes nothing here. */
function withoutAbout(said: readonly Token[]): Token[] {
  const tokens = said.filter((_, at) => ![0, 1, 2, 3].some((offset) => unsure(said, at - offset)));
  return tokens.filter((token, at) => {
    if (!approximate.test(token.word)) return true;
    const next = tokens[at + 1]?.word ?? '';
    const before = tokens[at - 1]?.word ?? '';
    if (!numeric.test(next) || /^(what|how|would|not)$/.test(before)) return true;
    // "down to two fifty like five minutes ago": two numbers, and what parts them.
    if (numeric.test(before) && !/^(a|an)$/.test(before)) return true;
    // "so we'll say seven" names an hour.
    if (token.word === 'say' && before === 'will') return true;
    // "did I say four hundred" says it.
    if (token.word === 'say' && /^(i|you)$/.test(before) && tokens[at - 2]?.word === 'did')
      return true;
    return (
      /^(a|an)$/.test(next) &&
      !/^(hundred|quarter|hour|half|couple|dozen|seven|minutes)$/.test(tokens[at + 2]?.word ?? '')
    );
  });
}

const kitchenWords =
  / (roast|oven|joint|beef|meat|probe|thermometer|temperature|dinner|supper|guests|fridge|carve|gravy|potatoes|degrees|timer|rest|resting|serve|serving|cook|cooking|pan|rack|foil|step|bones?|rib|sear|medium|rare|butter|baste|<[tgw]\d+>) /;

/** Nothing was heard: chatter, or something of the kitchen's that was not understood. */
function leftOver({ line, quantities, clauses, context }: Said): Meaning {
  const words = ` ${line}`;
  const bare =
    /^ (?:[.,?!|] |at |for |in |about |the )*(?:<[a-z]\d+> (?:[.,?!|] )*)+$/.test(words) ||
    / stone /.test(words);
  const told = clauses.some((one) => one.mood === 'story');
  const known = clauses.some(
    (one) =>
      one.tokens.length <= 4 &&
      nameIn(context.lexicon.dishes, one.tokens.map((token) => token.word).join(' ')) !== undefined,
  );
  if (!bare && (told || !(kitchenWords.test(words) || known))) return { intent: 'unrelated' };
  const first = quantities[0];
  return {
    intent: 'unclear',
    ...(first?.kind === 'number' ? { number: first.value } : {}),
    ...(first?.kind === 'temperature' ? { temperature: first.value } : {}),
  };
}
