/**
 * The gate of English: what was heard in a text passes if the text is likely meant for the helper,
 * by weights learnt from the corpus, its scored half apart (`scripts/train-addressed.ts`).
 */
import { isTradeTopic, type ReadContext } from '../../kitchen/heard.ts';
import { cuesOf, type KindOfWord, likelihoodOf, type Said, type Weights } from '../addressed.ts';
import { lineOf } from '../clause.ts';
import { type Placed, talk } from '../placed.ts';
import type { Meaning } from '../recogniser.ts';
import { familiar, weights } from './addressed-weights.ts';
import { withoutColour } from './judge.ts';

/** Heard, these change nothing; and an emergency is heard whoever calls it out. */
const ungated = /^(unrelated|unclear|courtesy|acknowledge|emergency|feed-public)$/;

/** Whether a guest may have a dish is asked of safety too. */
const isUngated = ({ meaning }: Placed): boolean =>
  ungated.test(meaning.intent) || (meaning.intent === 'ask-guests' && meaning.about === 'eats');

/** How many words a text has, and with its stops left out. */
const lengthOf = (line: string): number => line.trim().split(' ').length;
const spokenIn = (line: string): number => line.split(/ [,.?!]?/).filter(Boolean).length;

/** How many of its words what was heard rests on. */
const wordsIn = (placed: readonly Placed[]): number =>
  new Set(placed.flatMap(({ tokens }) => tokens.map((token) => token.from))).size;

/** So few words hold nothing beside a report. */
const fewWords = 4;

/** Few words, or hardly a word too many, that report a step that is open: it was called, and this answers it. */
const answersTheCall = ({ placed, context, line }: Said): boolean =>
  (lengthOf(line) <= fewWords || (lengthOf(line) <= 7 && wordsIn(placed) >= lengthOf(line) - 1)) &&
  placed.every(
    ({ meaning, framed }) =>
      !framed &&
      (meaning.intent === 'report-done' || meaning.intent === 'report-started') &&
      meaning.step !== undefined &&
      context.openSteps.includes(meaning.step),
  );

/** A short yes, no or choice that was just asked for is let in, whoever calls it out. */
const isAwaited = ({ placed, context, line }: Said): boolean =>
  (context.expecting === 'confirmation' ||
    context.expecting === 'choice' ||
    context.expecting === 'doneness') &&
  placed.every(({ meaning, framed }) => !framed && answers.test(meaning.intent)) &&
  wordsIn(placed) >= spokenIn(line) - 1;

/** What a stage ends with; said by itself it is let in: "it's down" after the sear, "it's out" later on. */
const endsStage: Partial<Record<NonNullable<ReadContext['stage']>, (meaning: Meaning) => boolean>> =
  {
    preheat: (one) => one.intent === 'report-started' && one.step === 'roast-in',
    sear: (one) =>
      one.intent === 'report-oven' || (one.intent === 'report-done' && one.step === 'oven-down'),
    'low-roast': (one) => one.intent === 'report-out' && one.what === undefined,
    rest: (one) =>
      one.intent === 'report-started' && (one.step === 'carve' || one.step === 'serve'),
    carve: (one) => one.intent === 'report-started' && one.step === 'serve',
    served: (one) => one.intent === 'report-done' && one.step === 'put-away',
  };

function endsItsStage({ placed, context, line }: Said): boolean {
  const [only, ...others] = placed;
  const ends = context.stage && endsStage[context.stage];
  return (
    ends !== undefined &&
    only !== undefined &&
    others.length === 0 &&
    !only.framed &&
    ends(only.meaning) &&
    lengthOf(line) <= fewWords
  );
}

const answers = /^(affirm|deny|choose)$/;

/** A step of a card named by all the words of a text: the card's own words may be strange to the weights. */
const namesStep = ({ placed, line }: Said): boolean =>
  placed.every(
    ({ meaning, framed }) =>
      !framed && meaning.intent === 'report-done' && meaning.step !== undefined,
  ) && wordsIn(placed) >= spokenIn(line);

/** What only this dinner has: its other clocks, how long its helpers stay, how fast its cook is, its hob, how its roast is kept. */
const ofThisDinner = (meaning: Meaning): boolean =>
  (meaning.intent === 'set-serving-time' && meaning.of !== undefined) ||
  (meaning.intent === 'add-hands' &&
    (meaning.until ?? meaning.from ?? meaning.left) !== undefined) ||
  (meaning.intent === 'running-behind' && meaning.factor !== undefined) ||
  (meaning.intent === 'report-setup' &&
    (meaning.rings ?? meaning.carvers ?? meaning.oven) !== undefined) ||
  ('step' in meaning && meaning.step === 'first-course') ||
  (meaning.intent === 'ask-how' && isTradeTopic(meaning.topic));

/** "Sitting down at three, people from two": the hour of the meal and another clock beside it are of this dinner. */
const tellsTwoClocks = ({ placed }: Said): boolean =>
  placed.every(({ meaning, framed }) => meaning.intent === 'set-serving-time' && !framed) &&
  new Set(placed.map(({ meaning }) => 'of' in meaning && meaning.of)).size > 1;

/** Words of these that leave hardly a word over: the weights have seen too few of them. */
const isWhollySaid = ({ placed, line }: Said): boolean =>
  placed.some(({ meaning }) => ofThisDinner(meaning)) &&
  placed.every(({ framed }) => !framed) &&
  wordsIn(placed) >= spokenIn(line) - placed.length;

const isFamiliar = (word: string): boolean => familiar.has(word);

/**
 * Under this likelihood a text is taken to be overheard; docs/understanding.md has the curve. A needless
 * answer costs less than a deed that was none, and a question of safety or of how much to buy
 * that is not answered costs most.
 * "It was 61, not 51" names the number it takes back: nobody else's talk does.
 * A number that was asked for is let in unless it is most likely another's ("he scored fifty four").
 */
const sureness = { takenBack: 0.1, needful: 0.15, awaited: 0.25, asked: 0.5, told: 0.55 };
const asked = /^(ask-|repeat$|help$)/;

/** "Seventy eight and I've sliced my finger": while the roast is in, a number that stands by itself is the core's. */
const isBareNumber = ({ meaning, clause }: Placed, { stage }: ReadContext): boolean =>
  meaning.intent === 'report-reading' &&
  clause !== undefined &&
  /^(low-roast|rest)$/.test(stage ?? '') &&
  /^(?:still |now |at )?<[nt]\d+> (?:degrees )?(?:now )?$/.test(lineOf(clause.tokens));

const surenessFor = (one: Placed, context: ReadContext): number => {
  const { meaning } = one;
  const { intent } = meaning;
  if (meaning.intent === 'correct' && meaning.was !== undefined) return sureness.takenBack;
  if (isBareNumber(one, context)) return sureness.awaited;
  if (intent === 'ask-safety' || intent === 'ask-amount') return sureness.needful;
  if (intent === 'report-reading' && context.expecting === 'reading') return sureness.awaited;
  return asked.test(intent) ? sureness.asked : sureness.told;
};

/** How likely a text is meant for the helper, by what was heard in it. */
export const helperLikelihoodOf =
  (kindOf: KindOfWord, learnt: Weights = weights) =>
  (said: Said): number =>
    likelihoodOf(cuesOf(said, kindOf, isFamiliar), learnt);

export const gateOf = (kindOf: KindOfWord, learnt: Weights = weights) => {
  const likelihood = helperLikelihoodOf(kindOf, learnt);
  return (whole: Said): readonly Placed[] => {
    const said = { ...whole, placed: withoutColour(whole.placed, whole.opinions) };
    if (said.placed.every(isUngated)) return said.placed;
    if (
      isAwaited(said) ||
      answersTheCall(said) ||
      endsItsStage(said) ||
      namesStep(said) ||
      tellsTwoClocks(said) ||
      isWhollySaid(said)
    )
      return said.placed;
    // What is said while a question is open may be its answer, or have nothing to do with it.
    const aside = { ...said, context: { ...said.context, expecting: undefined } };
    const likely =
      whole.context.expecting === undefined
        ? likelihood(said)
        : Math.max(likelihood(said), likelihood(aside));
    const harmed = said.placed.some(({ meaning }) => meaning.intent === 'emergency');
    const passed = said.placed.filter(
      (one) =>
        isUngated(one) ||
        (harmed && isBareNumber(one, said.context)) ||
        likely >= surenessFor(one, said.context),
    );
    return passed.length > 0 ? passed : talk;
  };
};
