/**
 * What is done to English words before anything is looked for in them: contractions written out,
 * spellings and joined words settled, sounds without meaning dropped.
 */
import type { Token } from '../token.ts';

/** Written with or without the apostrophe; recognisers leave it out as often as not. */
const whole: Record<string, string> = {
  "can't": 'can not',
  cant: 'can not',
  cannot: 'can not',
  "won't": 'will not',
  wont: 'will not',
  "shan't": 'will not',
  "ain't": 'is not',
  aint: 'is not',
  dont: 'do not',
  doesnt: 'does not',
  didnt: 'did not',
  isnt: 'is not',
  arent: 'are not',
  wasnt: 'was not',
  werent: 'were not',
  havent: 'have not',
  hasnt: 'has not',
  hadnt: 'had not',
  couldnt: 'could not',
  wouldnt: 'would not',
  shouldnt: 'should not',
  its: 'it is',
  im: 'i am',
  ive: 'i have',
  weve: 'we have',
  theyre: 'they are',
  theyve: 'they have',
  youre: 'you are',
  youve: 'you have',
  thats: 'that is',
  whats: 'what is',
  hows: 'how is',
  wheres: 'where is',
  whens: 'when is',
  whos: 'who is',
  theres: 'there is',
  heres: 'here is',
  hes: 'he is',
  shes: 'she is',
  lets: 'let us',
  "let's": 'let us',
  itll: 'it will',
  theyll: 'they will',
  therell: 'there will',
  everyones: 'everyone is',
  everybodys: 'everybody is',
  ovens: 'oven is',
  roasts: 'roast is',
  dinners: 'dinner is',
  gonna: 'going to',
  wanna: 'want to',
  gotta: 'have to',
  gotten: 'got',
  lemme: 'let me',
  gimme: 'give me',
  "how'd": 'how did',
  "'tis": 'it is',
  tis: 'it is',
  cos: 'because',
  cause: 'because',
  coz: 'because',
  til: 'till',
  "'til": 'till',
  until: 'till',
  untill: 'till',
  okay: 'ok',
  okey: 'ok',
  okie: 'ok',
  k: 'ok',
  yep: 'yes',
  yup: 'yes',
  yeah: 'yes',
  yea: 'yes',
  yah: 'yes',
  aye: 'yes',
  yes: 'yes',
  nope: 'no',
  nah: 'no',
  naw: 'no',
  ta: 'thanks',
  thankyou: 'thank you',
  alright: 'all right',
  alrighty: 'all right',
  "o'clock": 'oclock',
  "o'clocks": 'oclock',
  oclock: 'oclock',
  mum: 'mum',
  mom: 'mum',
  mam: 'mum',
  tonite: 'tonight',
  tmrw: 'tomorrow',
  tomorow: 'tomorrow',
  tommorow: 'tomorrow',
  tommorrow: 'tomorrow',
  tomoz: 'tomorrow',
  arvo: 'afternoon',
  arvos: 'afternoon',
  "s'arvo": 'this afternoon',
  prepped: 'prepared',
  temp: 'temperature',
  temps: 'temperature',
  tempature: 'temperature',
  temprature: 'temperature',
  thermometre: 'thermometer',
  thermostat: 'thermostat',
  farenheit: 'fahrenheit',
  fahrenheight: 'fahrenheit',
  farenheight: 'fahrenheit',
  fahreneit: 'fahrenheit',
  celcius: 'celsius',
  celsuis: 'celsius',
  centigrade: 'celsius',
  centrigrade: 'celsius',
  degree: 'degrees',
  deg: 'degrees',
  degs: 'degrees',
  mins: 'minutes',
  min: 'minutes',
  minute: 'minutes',
  minuets: 'minutes',
  minuet: 'minutes',
  hrs: 'hours',
  hr: 'hours',
  hour: 'hour',
  secs: 'seconds',
  lbs: 'pounds',
  lb: 'pounds',
  pound: 'pounds',
  pounder: 'pounds',
  pounders: 'pounds',
  ounce: 'ounces',
  oz: 'ounces',
  kg: 'kilos',
  kgs: 'kilos',
  kilo: 'kilos',
  kilogram: 'kilos',
  kilograms: 'kilos',
  kilogramme: 'kilos',
  kilogrammes: 'kilos',
  gram: 'grams',
  gramme: 'grams',
  grammes: 'grams',
  veg: 'vegetables',
  veggies: 'vegetables',
  rellies: 'relatives',
  tatties: 'potatoes',
  spuds: 'potatoes',
  roasties: 'roast potatoes',
  yorkies: 'yorkshire puddings',
  potatos: 'potatoes',
  potatoe: 'potato',
  defo: 'definitely',
  probs: 'probably',
  resturant: 'restaurant',
  grey: 'grey',
  gray: 'grey',
  colour: 'colour',
  color: 'colour',
  frenchs: 'french',
  preheated: 'preheated',
  tomorro: 'tomorrow',
  tenderized: 'tenderised',
  ppl: 'people',
  mediumrare: 'medium rare',
  welldone: 'well done',
  whatre: 'what are',
  '℉': '° f',
  '℃': '° c',
  '°': 'degrees',
};

const endings: readonly [RegExp, string][] = [
  [/n't$/, ' not'],
  [/'re$/, ' are'],
  [/'ve$/, ' have'],
  [/'ll$/, ' will'],
  [/'m$/, ' am'],
  [/'d$/, ' would'],
  [/'s$/, ' is'],
  [/s'$/, 's'],
  [/in'$/, 'ing'],
  [/'$/, ''],
];

const fillers = new Set([
  ...['um', 'umm', 'ummm', 'uh', 'uhh', 'uhm', 'er', 'err', 'erm', 'ah', 'ahh', 'hmm', 'hm', 'mm'],
  ...[
    'eh',
    'mmm',
    'ooh',
    'oops',
    'whoops',
    'basically',
    'literally',
    'yknow',
    'please',
    'pls',
    'plz',
  ],
  ...[
    'just',
    'actually',
    'finally',
    'kinda',
    'currently',
    'presently',
    'bloody',
    'flipping',
    'damn',
  ],
  ...['frickin', 'freaking', 'blooming', 'probably', 'definitely', 'certainly', 'really', 'only'],
]);

const fillerPhrases: readonly (readonly string[])[] = [
  ['you', 'know'],
  ['sort', 'of'],
  ['kind', 'of'],
  ['i', 'guess'],
  ['i', 'suppose'],
  ['let', 'me', 'see'],
  ['let', 'us', 'see'],
  ['let', 'me', 'think'],
  ['as', 'it', 'were'],
];

/** Words that vanish although they carry meaning elsewhere are kept where a question leans on them. */
export function repaired(tokens: readonly Token[]): Token[] {
  const written = tokens.flatMap(writtenOut).filter((token) => token.word !== '');
  return withoutStutter(withoutFillers(joined(hasBeen(written))));
}

/** "it's been in" and "it's got": the 's is "has" there. */
const hasBeen = (tokens: readonly Token[]): Token[] =>
  tokens.map((token, at) =>
    token.word === 'is' && /^(been|got|gone)$/.test(tokens[at + 1]?.word ?? '')
      ? { ...token, word: 'has' }
      : token,
  );

function writtenOut(token: Token): Token[] {
  let words = whole[token.word];
  if (words === undefined) {
    words = token.word;
    for (const [ending, instead] of endings) {
      if (!ending.test(words)) continue;
      words = words.replace(ending, instead);
      break;
    }
    words = words
      .split(' ')
      .map((word) => whole[word] ?? word)
      .join(' ');
    if (
      /^(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|\w+ty|half|noon)ish$/.test(
        words,
      ) &&
      !/^(fin|relish|fish|dish|finish|garnish|radish)/.test(words)
    )
      words = words.replace(/-?ish$/, '');
  }
  return words.split(' ').map((word) => ({ ...token, word }));
}

/** Two words that are one: "o clock", "a m", "p.m.", "half-past", "seven-pound". */
function joined(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const next = tokens[at + 1];
    const before = out.at(-1);
    const adjoins = (a: Token | undefined, b: Token | undefined): boolean =>
      a !== undefined && b !== undefined && a.to === b.from;
    if (token.word === 'o' && next?.word === 'clock') {
      out.push({ word: 'oclock', from: token.from, to: next.to });
      at += 1;
    } else if (/^[ap]$/.test(token.word) && dotted(tokens, at)) {
      const last = dotted(tokens, at)!;
      out.push({ word: `${token.word}m`, from: token.from, to: tokens[last]!.to });
      at = last;
    } else if (/^[–—…]$/.test(token.word)) out.push({ ...token, word: ',' });
    else if (/^[-]$/.test(token.word)) {
      // A hyphen inside a word is a blank, before a figure a minus, between blanks a pause.
      if (adjoins(before, token) && adjoins(token, next)) {
        if (/^\d/.test(before!.word) && /^\d/.test(next!.word)) out.push({ ...token, word: 'to' });
      } else if (next && adjoins(token, next) && /^\d/.test(next.word))
        out.push({ ...token, word: 'minus' });
      else out.push({ ...token, word: ',' });
    } else if (/^(st|nd|rd|th)$/.test(token.word) && adjoins(before, token)) {
      out[out.length - 1] = { word: before!.word + token.word, from: before!.from, to: token.to };
    } else if (token.word === '+') {
      if (next && /^\d/.test(next.word)) out.push({ ...token, word: 'plus' });
    } else if (/^[;:]$/.test(token.word)) out.push({ ...token, word: ',' });
    else if (token.word === '.' && next && adjoins(before, token) && adjoins(token, next)) {
      // An abbreviation such as "e.g." or "3.bones": no end of a sentence.
    } else out.push(token);
  }
  return out;
}

/** Where "p m", "p. m." or "p.m." ends, if one begins here after a figure or a number word. */
function dotted(tokens: readonly Token[], at: number): number | undefined {
  let index = at + 1;
  if (tokens[index]?.word === '.') index += 1;
  if (tokens[index]?.word !== 'm') return undefined;
  const dot = tokens[index + 1];
  return dot?.word === '.' && tokens[index + 2] && dot.to === tokens[index]!.to && at > 0
    ? index + 1
    : index;
}

function withoutFillers(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const phrase = fillerPhrases.find((words) =>
      words.every((word, offset) => tokens[at + offset]?.word === word),
    );
    const word = tokens[at]!.word;
    if (phrase && !(phrase[1] === 'know' && tokens[at - 1]?.word === 'do')) {
      at += phrase.length - 1;
      continue;
    }
    if (fillers.has(word)) {
      // "um, it reads 104": the comma goes with the filler.
      if (tokens[at + 1]?.word === ',' && (out.length === 0 || out.at(-1)?.word === ',')) at += 1;
      continue;
    }
    out.push(tokens[at]!);
  }
  return out;
}

/** "it's at, it's at 104" and "the the": what is said twice in a row is said once. */
function withoutStutter(tokens: readonly Token[]): Token[] {
  const out = [...tokens];
  for (let length = 4; length >= 1; length--) {
    for (let at = 0; at + length < out.length; at++) {
      const gap = out[at + length]?.word === ',' ? 1 : 0;
      if (length === 1 && gap === 1 && !/^(the|a|it|i|we|they|and|at|is)$/.test(out[at]!.word))
        continue;
      let same = true;
      for (let offset = 0; offset < length; offset++) {
        const word = out[at + offset]!.word;
        if (word !== out[at + length + gap + offset]?.word || /^[,.?!\d]/.test(word)) same = false;
        if (
          length === 1 &&
          (numberLike.test(word) || /^(no|yes|bye|ok|stop|wait|hello|help)$/.test(word))
        )
          same = false;
      }
      if (same) {
        out.splice(at, length + gap);
        at -= 1;
      }
    }
  }
  return out;
}

const numberLike =
  /^(oh|o|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|\d.*)$/;
