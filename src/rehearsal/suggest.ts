/** A line to say for what no script reached; the compiler wants one for every intent and call. */
import type { AnnouncementKind } from '../kitchen/facts.ts';
import type { Intent } from '../kitchen/heard.ts';
import { type Catalogue, passagesByName } from './coverage.ts';

/** One utterance for each intent. */
export const intentLines: Readonly<Record<Intent, string>> = {
  'describe-roast': 'seven pound three bone rib roast',
  'set-serving-time': 'dinner at seven',
  'set-guests': 'we are six',
  'report-guests': 'the guests are here',
  'note-guest': 'Sam is allergic to nuts',
  'set-doneness': 'medium rare',
  'set-method': 'reverse sear',
  'add-dish': "we're having mashed potatoes",
  'drop-dish': 'no beans',
  'set-units': 'use celsius',
  lack: "I haven't got a rack",
  'report-setup': 'I have a probe in it',
  'add-hands': 'Sam is helping me',
  'cook-away': "I'm out for twenty minutes",
  'report-reading': 'it reads 104',
  'report-oven': 'the oven is at 325',
  acknowledge: 'okay',
  'report-started': 'the roast is in',
  'report-out': "it's out",
  'report-done': "it's seasoned",
  'report-not-done': 'the potatoes are not done yet',
  'skip-step': 'skip the trussing',
  'report-trouble': 'the power is out',
  emergency: 'I burnt my hand',
  'shift-serving': 'guests are late 30 minutes',
  'running-behind': "we're ten minutes behind",
  'ask-next': "what's next",
  'ask-status': 'how are we doing',
  'ask-plan': "what's the plan",
  'ask-options': 'what are my options',
  'ask-shopping': 'what do I need to buy',
  'ask-time-left': 'how long to go',
  'ask-how': 'how do I carve it',
  'ask-why': 'why do I rest it',
  'ask-amount': 'how much salt',
  'ask-substitute': 'what can I use instead of thyme',
  'ask-temperature': 'what temperature do I pull it at',
  'report-thermometer': 'my thermometer reads two degrees high',
  'forget-kitchen': 'forget what you know of the oven',
  'ask-slice': 'what if I pull it now',
  'ask-safety': 'is it safe for my pregnant sister',
  'ask-guests': 'who did I forget to ask',
  have: 'I have horseradish',
  'feed-public': "it's for a church supper",
  'set-timer': 'set a timer for ten minutes',
  'cancel-timer': 'cancel the timer',
  watch: 'tell me when it reads 80',
  affirm: 'yes',
  deny: 'no',
  choose: 'option two',
  correct: 'no, I meant eight guests',
  undo: 'undo that',
  repeat: 'say that again',
  pause: 'hang on',
  resume: 'go on',
  'start-over': "let's start over",
  help: 'help',
  quiet: 'be quiet',
  courtesy: 'thanks',
  unrelated: 'did you see the game last night',
  unclear: 'the thing with the other thing',
};

const announcementLines: Readonly<Partial<Record<AnnouncementKind, string>>> = {
  timer: 'set a timer for ten minutes',
  watch: 'tell me when it reads 80',
  caution: 'the roast is out of the fridge',
};

/** What is said to bring a transition about, by the event of its chart. */
const eventLines: Readonly<Record<string, string>> = {
  OVEN_LIT: 'the oven is on',
  OVEN_DARK: 'the oven is off',
  ROAST_IN: 'the roast is in',
  SEARED: 'oven is down',
  SEAR_BEGUN: "I'm searing it now",
  ROAST_OUT: "it's out",
  HOLD_BEGUN: 'the roast is back in',
  CARVING_BEGUN: "we're carving",
  SERVED: 'dinner is served',
  PUT_AWAY: 'the leftovers are in the fridge',
  OVEN_SET: 'the oven is at 325',
  OVEN_HOT: 'the oven is hot',
  OVEN_OFF: 'the oven is off',
  OVEN_LOST: 'the power is out',
  OVEN_BACK: 'the power is back',
  PAUSED: 'hang on',
  RESUMED: 'go on',
  CONFIRMATION_ASKED: "let's start over",
  CHOICE_OFFERED: 'what are my options',
};

/** A line worth trying, where one sentence is enough to name. */
export function suggestion(catalogue: Catalogue, name: string): string | undefined {
  switch (catalogue) {
    case 'intents':
      return intentLines[name as Intent];
    case 'announcements':
      return announcementLines[name as AnnouncementKind];
    case 'transitions':
      return eventLines[passagesByName.get(name)?.event ?? ''];
    case 'states': {
      const into = [...passagesByName.values()].find((one) => `${one.region}.${one.to}` === name);
      return into && eventLines[into.event];
    }
    default:
      return undefined;
  }
}
