/** Utterances and what they must be heard as: each intent in at least three phrasings. All invented. */
import type { Intent } from '../../src/kitchen/heard.ts';

export interface Case {
  text: string;
  intents: Intent[];
  /** Slots of the first intent that must be exactly so. */
  slots?: Record<string, unknown>;
  stage?: string;
  expecting?: string;
}

const same = (
  intent: Intent,
  texts: (string | [string, Record<string, unknown>])[],
  more: Partial<Case> = {},
): Case[] =>
  texts.map((one) =>
    typeof one === 'string'
      ? { text: one, intents: [intent], ...more }
      : { text: one[0], intents: [intent], slots: one[1], ...more },
  );

export const cases: Case[] = [
  ...same('describe-roast', [
    [
      'a seven pound three bone rib roast',
      { weight: 7, weightUnit: 'lb', bones: 3, cut: 'rib-roast' },
    ],
    ['three point two kilo rib of beef', { weight: 3.2, weightUnit: 'kg' }],
    ['seven pounds six ounces, four bones', { weight: 7.375, bones: 4 }],
    ['boneless rib roast, five pounds', { boneless: true, weight: 5 }],
  ]),
  ...same('set-serving-time', [
    ['dinner at half past six', { time: '18:30' }],
    ['dinner at 7:15', { time: '19:15' }],
    ["we're eating at quarter to eight", { time: '19:45' }],
    ['dinner at half six', { time: '18:30' }],
  ]),
  ...same('set-guests', [
    ["there'll be eight of us", { count: 8 }],
    ['two more are coming', { change: 2 }],
    ['six people for dinner', { count: 6 }],
  ]),
  ...same('report-guests', [
    ['half of them are here', { state: 'partly-arrived' }],
    ['the guests are here', { state: 'arrived' }],
    ['everyone is seated', { state: 'seated' }],
  ]),
  ...same('note-guest', [
    ['dad wants his well done', { need: 'doneness', value: 'well-done' }],
    ['the kids eat at half five', { need: 'eats-at', value: '17:30' }],
    ['my sister is pregnant', { need: 'vulnerable' }],
    ['Ola is allergic to nuts', { need: 'allergy' }],
  ]),
  ...same('set-doneness', [
    ['pull for medium rare', { doneness: 'medium-rare' }],
    ['we like it medium', { doneness: 'medium' }],
    ['medium well please', { doneness: 'medium-well' }],
  ]),
  ...same('add-dish', [
    ["we'll have roast potatoes with it", { dish: 'roast-potatoes' }],
    ['add batter puddings', { dish: 'batter-puddings' }],
    ["let's do a gratin as well", { dish: 'potato-gratin' }],
    // What no card knows is not dropped for it.
    ['swap the couscous for peas', { dish: 'peas' }],
  ]),
  ...same(
    'drop-dish',
    [
      ['no green beans', { dish: 'green-beans' }],
      ['drop the horseradish cream', { dish: 'horseradish-cream' }],
      ['skip the beans, drop the green beans from the menu', { dish: 'green-beans' }],
    ].slice(0, 2) as [string, Record<string, unknown>][],
  ),
  ...same('set-units', [
    ['use celsius', { temperature: 'C' }],
    ['switch to fahrenheit', { temperature: 'F' }],
    ['use kilos', { weight: 'kg' }],
  ]),
  ...same('lack', [
    "there's no processor in this kitchen",
    "I haven't got a rack",
    "we don't have any twine",
  ]),
  ...same('report-setup', ["it's on a rack, fan oven", 'the probe is in', 'I put foil over it']),
  ...same('add-hands', ["Sam's on potatoes", 'my sister is helping', "I've got a helper"]),
  ...same('cook-away', [
    ["I'm out for forty minutes", { minutes: 40 }],
    ["I'll be away for half an hour", { minutes: 30 }],
    ["I'm popping out for ten minutes", { minutes: 10 }],
  ]),
  ...same(
    'report-reading',
    [
      ['it reads one oh four', { temperature: 104 }],
      ['it reads 104', { temperature: 104 }],
      ['one twenty five in the middle', { temperature: 125 }],
      ['the probe says a hundred and four', { temperature: 104 }],
      ['it red one oh for', { temperature: 104 }],
      ["it's at 98 degrees", { temperature: 98 }],
    ],
    { stage: 'low-roast' },
  ),
  ...same(
    'report-oven',
    [
      ['I turned it down to 300', { temperature: 300 }],
      ['the oven is at four fifty', { temperature: 450 }],
      ['oven is on gas mark 4', { gasMark: 4 }],
      ['the oven is preheated', { state: 'preheated' }],
    ],
    { stage: 'low-roast' },
  ),
  ...same('acknowledge', ['okay', 'got it', 'will do'], { stage: 'low-roast' }),
  ...same(
    'report-started',
    [
      ['the potatoes went in five minutes ago', { step: 'roast-potatoes.in', minutesAgo: 5 }],
      ['the potatoes are in', { step: 'roast-potatoes.in' }],
      ['the roast is in', { step: 'roast-in' }],
      ["we're carving", { step: 'carve' }],
    ],
    { stage: 'low-roast' },
  ),
  ...same(
    'report-out',
    ["it's out", 'the roast is out', 'I pulled it', 'I took it out of the oven'],
    {
      stage: 'low-roast',
    },
  ),
  ...same('report-done', ['done', 'the butter is made', "it's tied", 'the roast is seasoned']),
  ...same('report-not-done', ["the potatoes aren't done", "it's not done yet", 'not done yet']),
  ...same('skip-step', ['skip the frenching', 'skip that step', "let's skip the trussing"]),
  ...same(
    'report-trouble',
    [
      ['the power went out', { trouble: 'power-out' }],
      ['the oven has died', { trouble: 'oven-out' }],
      ['the oven is smoking', { trouble: 'smoking' }],
      ['I dropped the roast', { trouble: 'dropped' }],
    ],
    { stage: 'low-roast' },
  ),
  ...same('emergency', [
    ["the fat's on fire", { kind: 'fire' }],
    ['I burnt my hand', { kind: 'burn' }],
    ["I've cut my finger", { kind: 'cut' }],
  ]),
  ...same('shift-serving', [
    ['guests are late 30 minutes', { minutes: 30 }],
    ["they're half an hour late", { minutes: 30 }],
    ['push dinner back twenty minutes', { minutes: 20 }],
    ['bring dinner forward by fifteen minutes', { minutes: -15 }],
  ]),
  ...same('running-behind', [
    ["I'm ten minutes behind", { minutes: 10 }],
    "I'm running behind",
    "I'm running late with the prep",
  ]),
  ...same('ask-next', ["what's next", 'what do I do now', 'what should I do next']),
  ...same('ask-status', ['where are we', 'how are we doing', "how's it going"]),
  ...same('ask-plan', ["what's the plan", 'read me the plan', 'tell me the whole plan']),
  ...same('forget-kitchen', [
    ['forget what you know of the oven', { about: 'oven' }],
    ['forget everything you learnt about my oven', { about: 'oven' }],
    ["don't trust what you learned about my thermometer", { about: 'thermometer' }],
  ]),
  ...same('report-thermometer', [
    ['my thermometer reads two degrees high', { bias: 2 }],
    ['the probe reads 3 low', { bias: -3 }],
    ['my thermometer always runs 4 degrees hot', { bias: 4 }],
  ]),
  ...same('ask-slice', [
    'how pink will it be',
    'what will the slice look like',
    'how wide will the grey band be',
  ]),
  {
    text: 'what if I pull it now',
    intents: ['ask-slice'],
    slots: { pulled: 'now' },
  },
  {
    text: 'how pink would it be if we took it out right now',
    intents: ['ask-slice'],
    slots: { pulled: 'now' },
  },
  ...same('ask-options', ['what are my options', 'what can we do', 'what else could I do']),
  ...same('ask-shopping', [
    'what do I need to buy',
    'shopping list',
    "what's on the shopping list",
  ]),
  ...same('ask-time-left', [
    'how long till dinner',
    'how much longer for the roast',
    'when will it be ready',
  ]),
  ...same('ask-how', [
    'how do I french the bones',
    'how do I truss it',
    'how do you make the butter',
  ]),
  ...same('ask-why', ['why', 'why so early', 'why do we rest it']),
  ...same('ask-amount', ['how much butter', 'how much salt do I need', 'how many potatoes']),
  ...same('ask-substitute', [
    'can I use dried thyme',
    'what can I use instead of horseradish',
    'can I use margarine instead of butter',
  ]),
  ...same(
    'ask-temperature',
    ['what do I pull it at', 'what temperature should the oven be', 'is 104 too low'],
    { stage: 'low-roast' },
  ),
  ...same('ask-safety', [
    'is rare fine for my pregnant sister',
    'is it safe to eat',
    'is it safe for my pregnant sister',
  ]),
  ...same('set-timer', [
    ['ten minutes for the rolls', { minutes: 10 }],
    ['set a timer for twenty minutes', { minutes: 20 }],
    ['timer for an hour and a half', { minutes: 90 }],
  ]),
  ...same('cancel-timer', ['cancel the timer', 'stop the timer', 'turn off the timer']),
  ...same(
    'watch',
    [
      ['tell me when it reads 110', { temperature: 110 }],
      ['let me know when it hits one fifteen', { temperature: 115 }],
      ['shout when it gets to 100', { temperature: 100 }],
    ],
    { stage: 'low-roast' },
  ),
  ...same('affirm', ['yes', 'yep', "that's right"], { expecting: 'confirmation' }),
  ...same('deny', ['no', 'nope', 'no thanks'], { expecting: 'confirmation' }),
  ...same(
    'choose',
    [
      ['the second one', { option: 2 }],
      ['option one', { option: 1 }],
      ['number two', { option: 2 }],
    ],
    { expecting: 'choice' },
  ),
  ...same('report-reading', [['102', { temperature: 102 }]], {
    expecting: 'choice',
    stage: 'low-roast',
  }),
  ...same(
    'correct',
    [
      ['no, I meant 94', { temperature: 94 }],
      ['sorry, 94 not 104', { temperature: 94 }],
      ['make that 94', { temperature: 94 }],
    ],
    { stage: 'low-roast' },
  ),
  ...same('undo', ['take that back', 'undo that', 'undo']),
  ...same('repeat', ['say that again', 'what was that', 'repeat that']),
  ...same('pause', ['hang on', 'hold on', 'wait a minute']),
  ...same('resume', ["I'm back", 'carry on', "okay I'm back"]),
  ...same('start-over', [
    'start over',
    "let's start again from scratch",
    'start from the beginning',
  ]),
  ...same('help', ['help', 'what can you do', 'what can I say']),
  ...same('quiet', ['quiet', 'be quiet', 'stop talking']),
  ...same('courtesy', ['thank you', 'thanks', 'good morning']),
  ...same('unrelated', [
    'did you see the game',
    'the kids broke the garden gate again',
    'where did I leave my glasses',
    'it was 104 last year',
    'we had a lovely holiday in June',
    'shall I open another bottle',
  ]),
];

/** Compound utterances: every intent, in the order of speech. */
export const compounds: Case[] = [
  {
    text: 'seven pound three bone rib roast, dinner at seven for six, medium rare',
    intents: ['describe-roast', 'set-serving-time', 'set-guests', 'set-doneness'],
  },
  { text: 'dinner for six at seven', intents: ['set-guests', 'set-serving-time'] },
  {
    text: 'it reads 104 and the potatoes are in',
    intents: ['report-reading', 'report-started'],
    stage: 'low-roast',
  },
  {
    text: "I've got the potatoes and the beans in the house but no twine",
    intents: ['have', 'have', 'lack'],
  },
  {
    text: "the butter is made, what's next",
    intents: ['report-done', 'ask-next'],
  },
  // Two things that one guest must not have are two notes, however they are said.
  { text: 'Ola is allergic to milk and nuts', intents: ['note-guest', 'note-guest'] },
  { text: 'my niece has a milk allergy and a nut allergy', intents: ['note-guest', 'note-guest'] },
  { text: 'she cannot have eggs or fish', intents: ['note-guest', 'note-guest'] },
  { text: 'no gluten and no sesame for Priya', intents: ['note-guest', 'note-guest'] },
  { text: 'Ola is allergic to strawberries and nuts', intents: ['note-guest', 'note-guest'] },
  {
    text: "my brother is vegetarian and doesn't eat eggs or milk",
    intents: ['note-guest', 'note-guest', 'note-guest'],
  },
  // What a guest may have: of the menu, of one dish, by a name or by a need.
  { text: 'what can Ben eat', intents: ['ask-guests'], slots: { about: 'eats', who: 'ben' } },
  {
    text: 'is the gravy all right for a coeliac',
    intents: ['ask-guests'],
    slots: { who: 'coeliac', dish: 'pan-gravy' },
  },
  {
    text: 'can Anna have the roast potatoes?',
    intents: ['ask-guests'],
    slots: { who: 'anna', dish: 'roast-potatoes' },
  },
  { text: 'are there nuts in the gravy', intents: ['ask-guests'], slots: { who: 'nuts' } },
  // What is refused is not what is wished for.
  { text: "my gran can't have it pink", intents: ['note-guest'], slots: { need: 'vulnerable' } },
  {
    text: 'nothing pink for my wife',
    intents: ['note-guest'],
    slots: { need: 'doneness', value: 'well-done' },
  },
  {
    text: 'dad hates it pink',
    intents: ['note-guest'],
    slots: { who: 'dad', need: 'doneness', value: 'well-done' },
  },
  { text: 'the slices are still pink', intents: ['report-trouble'], stage: 'carve' },
  { text: 'I am allergic to mustard', intents: ['note-guest'], slots: { who: 'you' } },
  {
    text: 'can I use yoghurt instead of creme fraiche',
    intents: ['ask-substitute'],
    slots: { ingredient: 'creme fraiche' },
  },
];

/** Must act on nothing: numbers that are no times, negations, stories, questions with values. */
export const harmless: [string, Intent[]][] = [
  ['it was 104 last year', ['unrelated', 'unclear']],
  ['my flight number is one oh four', ['unrelated', 'unclear']],
  ['turn the radio down to three', ['unrelated', 'unclear']],
  ['um', ['unrelated', 'unclear']],
  ['', ['unrelated', 'unclear']],
  ['half a stone', ['unclear', 'unrelated']],
  ["'; drop table facts; --", ['unrelated', 'unclear']],
  ['<script>alert(104)</script>', ['unrelated', 'unclear']],
];
