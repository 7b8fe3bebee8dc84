/** Slots of what is asked, once it is settled which question it is; and what has no slots at all. */
import { nameExactlyIn } from '../names.ts';
import type { Match, Meaning } from '../recogniser.ts';
import type { Fill } from './fill-told.ts';
import { ingredientIn, spoken, subject, topicOf } from './frames/asking.ts';
import { wordMeant } from './recognisers/ask-temperature.ts';
import { headsOf, sizeAsked } from './recognisers/days-asked.ts';
import { degrees } from './recognisers/subjects.ts';
import { meansRoast } from './steps.ts';

const aboutOf = (match: Match): { about?: string } => {
  const about = subject(match);
  return about ? { about } : {};
};

const topicSlot = (match: Match): { topic?: string } => {
  // What was asked stands in the words themselves, where nothing in them is named by a card.
  const topic = topicOf(match) ?? spoken(match);
  return topic ? { topic } : {};
};

/** What an amount or a substitute is asked for: a thing the cards name, the first in the clause. */
function thingIn(match: Match): { ingredient?: string } {
  const known = ingredientIn(match);
  if (known) return { ingredient: known };
  const words = match.line.trim().split(' ');
  const said = words.find((word) => nameExactlyIn(match.context.lexicon.ingredients, word));
  return said ? { ingredient: said } : {};
}

const takesBack =
  / (undo|revert|back|scratch|strike|cancel|forget|ignore|disregard|never mind|wrong|mistake|oops|whoops|no|not|did not|delete|erase|remove|scrap|unsay|wait|hold on|sorry) /;

export const fillAsked: Fill = {
  'ask-next': () => ({ intent: 'ask-next' }),
  'ask-status': () => ({ intent: 'ask-status' }),
  'ask-plan': () => ({ intent: 'ask-plan' }),
  'ask-options': () => ({ intent: 'ask-options' }),
  'ask-shopping': (match) => ({
    intent: 'ask-shopping',
    ...(/butcher/.test(match.line) ? { about: 'butcher' as const } : {}),
  }),
  'ask-time-left': (match) => ({ intent: 'ask-time-left', ...aboutOf(match) }),
  'ask-how': (match) => ({ intent: 'ask-how', ...topicSlot(match) }),
  'ask-why': (match) => ({ intent: 'ask-why', ...topicSlot(match) }),
  'ask-amount': (match) => {
    const { ingredient } = thingIn(match);
    // "How big a roast for ten": its size, and no ingredient's.
    const ofRoast =
      / how (big|large|heavy) | what (size|weight) /.test(` ${match.line}`) ||
      (/ (roast|joint|meat|beef|lamb|pork|rib) /.test(` ${match.line}`) &&
        (ingredient === undefined || meansRoast(ingredient)));
    const other: Meaning = {
      intent: 'ask-amount',
      ...(ingredient === undefined ? {} : { ingredient }),
      ...headsOf(match),
    };
    return (ofRoast ? sizeAsked(match) : undefined) ?? other;
  },
  'ask-substitute': (match) => ({ intent: 'ask-substitute', ...thingIn(match) }),
  'ask-temperature': (match) => ({
    intent: 'ask-temperature',
    ...degrees(match),
    ...aboutOf(match),
    ...wordMeant(match.line),
  }),
  'ask-safety': (match) => ({ intent: 'ask-safety', about: spoken(match), ...degrees(match) }),
  'ask-guests': () => ({ intent: 'ask-guests' }),
  acknowledge: () => ({ intent: 'acknowledge' }),
  affirm: () => ({ intent: 'affirm' }),
  deny: () => ({ intent: 'deny' }),
  // Nothing is taken back that is not said to be wrong.
  undo: (match) => (takesBack.test(` ${match.line}`) ? { intent: 'undo' } : undefined),
  repeat: () => ({ intent: 'repeat' }),
  pause: () => ({ intent: 'pause' }),
  resume: () => ({ intent: 'resume' }),
  'start-over': () => ({ intent: 'start-over' }),
  help: () => ({ intent: 'help' }),
  quiet: () => ({ intent: 'quiet' }),
  courtesy: () => ({ intent: 'courtesy' }),
};
