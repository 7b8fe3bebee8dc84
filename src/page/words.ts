/** Every English word the page says of its own; all else comes from the kitchen. */
import type { Stage } from '../kitchen/heard.ts';

export const stageWords: Record<Stage, string> = {
  planning: 'Planning',
  prep: 'Prep',
  preheat: 'Oven heating',
  sear: 'Searing',
  'low-roast': 'Low roast',
  rest: 'Resting',
  hold: 'Holding',
  carve: 'Carving',
  served: 'At the table',
  'put-away': 'Put away',
};

export const donenessWords: Record<string, string> = {
  rare: 'rare',
  'medium-rare': 'medium rare',
  medium: 'medium',
  'medium-well': 'medium well',
  'well-done': 'well done',
};

export const laneWords = {
  roast: 'Roast',
  oven: 'Oven',
  sides: 'Sides',
  sauce: 'Sauce',
  hands: 'Hands',
} as const;

/** What a long piece of the day is called while it lies there. */
export const barWords: Record<string, string> = {
  'roast-in': 'Roast in the oven',
  rest: 'Rest',
  carve: 'Carve',
};

export const words = {
  /** For the voice and the ear of the browser. */
  language: 'en-US',
  program: 'Roastcall',
  /** What touching a stub says to the kitchen. */
  says: {
    done: 'done',
    notYet: 'not yet',
    isOut: "it's out",
    yes: 'yes',
    no: 'no',
    resume: 'resume',
    option: (n: number) => `option ${n}`,
    reads: (value: string) => `it reads ${value}`,
    howTo: (title: string) => `how do I ${title}`,
  },
  first: {
    main: 'What are you roasting, when is dinner, and for how many?',
    rest: 'Say it in one breath or piece by piece: “seven pound three bone rib roast, dinner at seven for six, medium rare”.',
  },
  waiting: {
    main: 'Waiting for the kitchen.',
    rest: 'This page is open, but the program that runs the dinner does not answer yet. It is asked again every second.',
  },
  unpaired: {
    main: 'This tablet is not paired with the kitchen.',
    rest: 'Whoever runs the kitchen has the word for it.',
    link: 'Pair this tablet',
  },
  paused: 'Paused: nothing is called until you say “resume”.',
  resume: 'Resume',
  emergency: 'See to it first; everything waits.',
  backAtStove: 'Back at the stove',
  choose: (table: string) => `Dinner at ${table}. Which way?`,
  chooseRest: 'Touch one, or say its number. The first is taken unless you say otherwise.',
  nothingTill: (title: string, time: string) => `Next: ${title} at ${time}.`,
  doNow: (title: string) => `${title} now.`,
  pullLikely: (temperature: string, time: string) => `Pull at ${temperature}, likely at ${time}.`,
  restTill: (time: string) => `Let it rest till ${time}.`,
  served: 'Enjoy it.',
  over: 'All put away. Good night.',
  overRest: 'Say what you roast next and a new dinner begins.',
  lookAgain: (time: string) => `Take the next reading at ${time}.`,

  next: 'Next',
  nothingNext: 'Nothing else is planned.',
  inSpan: (time: string) => (time === 'now' ? 'now' : `in ${time}`),
  timers: 'Timers',
  timer: 'Timer',
  check: { table: 'Table', guests: 'Guests', roast: 'Roast', knife: 'At the knife', oven: 'Oven' },
  ovenOff: 'off',
  unknown: '–',
  bones: (n: number) => `${n} ${n === 1 ? 'bone' : 'bones'}`,
  choices: 'Choices',
  option: (table: string, core: string) => `Table ${table} · ${core} at the knife`,

  done: 'Done',
  notYet: 'Not yet',
  isOut: 'It’s out',
  isIn: 'It’s in',
  yes: 'Yes',
  no: 'No',
  reading: 'A reading',
  whatNow: 'What’s next?',
  skip: 'Skip it',
  again: 'Say it again',
  undo: 'Take that back',
  close: 'Close',
  how: 'How is it done?',
  send: 'Say it',
  field: 'Type here',
  you: 'You',
  talk: 'Talk',
  allTalk: 'The whole talk',
  nothingSaid: 'Nothing has been said yet.',

  day: 'The day',
  dayOf: (from: string, to: string) =>
    `The day from ${from} to ${to}; left and right move through it`,
  now: 'now',
  folded: 'Unfold the morning',
  fold: 'Fold the morning away',
  pull: 'pull',
  table: 'table',
  rest: 'rest',
  stepTimes: (from: string, to: string) => `${from} to ${to}`,
  stepState: {
    planned: 'planned',
    due: 'due',
    active: 'under way',
    taken: 'taken for done',
    done: 'done',
    skipped: 'skipped',
  },
  readingOf: (time: string, value: string) => `reading at ${time}: ${value}`,
  pullBetween: (early: string, late: string) => `The pull, between ${early} and ${late}`,
  ovenAt: (value: string) => `oven ${value}`,
  whoseHands: (who: string, busy: string) => `${who}: ${busy}`,

  slice: 'Slice',
  sliceAs: 'as planned',
  sliceIfNow: 'if pulled now',
  sliceTold: (brown: number, pink: number, core: string) =>
    brown < 1
      ? `No brown yet, ${core} in the middle.`
      : `Brown and grey for ${brown} mm, then pink for ${pink} mm, ${core} in the middle.`,
  millimetres: 'mm',

  pad: 'What does it read?',
  padSend: (value: string) => `It reads ${value || '…'}`,
  padBack: 'Back one',

  pullCalled: (time: string) => `Called at ${time}.`,

  begin: {
    button: 'Begin, with the microphone',
    quiet: 'Begin without it',
    offer: 'Touch once, so that this tablet may sound, listen and stay awake.',
    offerNoVoice: 'Touch once, so that this tablet may sound and stay awake.',
    quietOnly: 'Begin',
    onDevice:
      'This browser understands speech on the tablet itself; nothing of it leaves the house.',
    remote:
      'This browser sends what the microphone hears to a server of its maker to be understood. Begin without it if you would rather not; everything works by touch and keys.',
    noVoice: 'This browser cannot understand speech; everything works by touch and keys.',
    plain:
      'Over plain http a tablet gives no microphone and falls asleep: set its screen to stay on, or open the https address.',
  },
  listening: 'Listening',
  listen: 'Microphone',
  notListening: 'Microphone off',
  hearing: (text: string) => `“${text}”`,
  micRefused: 'The microphone was refused; touch and keys still do everything.',
  micGone:
    'The microphone does not work just now; it is tried again, and touch and keys do everything.',
  micNetwork: 'The browser’s speech server is out of reach; touch and keys still do everything.',
  voiceFailed: 'This browser could not speak aloud; calls are sounded and shown.',

  lost: (ago: string) =>
    ago === 'now'
      ? 'The kitchen does not answer; what you say is kept and sent when it is back.'
      : `The kitchen has not answered for ${ago}; what you say is kept, but no call comes through.`,
  kept: (text: string) => `Not sent yet: “${text}”.`,
  stale: (text: string, ago: string) =>
    `“${text}” waited ${ago} for the kitchen. Is it still true?`,
  sendNow: 'Send it now',
  forget: 'Forget it',
  tooLong:
    'That is longer than anyone says at a stove; nothing of it was sent. Say the part that matters.',
  storageFull:
    'This browser keeps nothing (its storage is full or shut), so theme and hours are forgotten when it closes; the dinner is safe in the kitchen.',
  clockJumped: 'This tablet’s clock jumped; the kitchen’s clock is shown, and nothing is lost.',
  theme: { light: 'Light', dark: 'Dark' },
  hours: { '12': '12 h', '24': '24 h' },
  themeTo: (theme: string) => `Change to the ${theme.toLowerCase()} theme`,
  hoursTo: (hours: string) => `Show hours as ${hours}`,
} as const;
