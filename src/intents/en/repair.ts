/**
 * What is done to English words before anything is looked for in them: contractions written out,
 * spellings and joined words settled, sounds without meaning dropped.
 */
import type { Token } from '../token.ts';
import { endings, fillerPhrases, fillers, whole } from './spellings.ts';

/** Words that vanish although they carry meaning elsewhere are kept where a question leans on them. */
export function repaired(tokens: readonly Token[]): Token[] {
  const written = tokens
    .flatMap((token, at) => (areMany(token, tokens[at - 1]) ? [token] : writtenOut(token)))
    .filter((token) => token.word !== '');
  return withoutYesNo(withoutStutter(withoutFillers(joined(hasBeen(written)))));
}

/** "Two ovens" are two; elsewhere "ovens on", "thermometers in" have lost their mark. */
const areMany = ({ word }: Token, before: Token | undefined): boolean =>
  /^(ovens|thermometers|probes)$/.test(word) &&
  /^(two|2|both|of|more|three|3|all|these|those)$/.test(before?.word ?? '');

/** "yeah, nah" is a no, "nah yeah" a yes: the last of them counts. */
function withoutYesNo(tokens: readonly Token[]): Token[] {
  const [first, comma, ...rest] = tokens;
  const second = comma?.word === ',' ? rest[0] : comma;
  const answers = /^(yes|no)$/;
  if (!first || !second || !answers.test(first.word) || !answers.test(second.word))
    return [...tokens];
  return first.word === second.word ? [...tokens] : tokens.slice(comma?.word === ',' ? 2 : 1);
}

const participle =
  /^(been|got|gone|had|eaten|arrived|died|fallen|risen|climbed|crept|reached|happened|forgotten|come)$/;
/** After "I would" none of these can stand: the 'd was "had". */
const ofHad =
  /^(been|got|gone|had|eaten|fallen|risen|forgotten|bought|brought|thought|known|taken|made|done|given|left|kept|told|said|asked|used|turned|started|seen|found|bothered|realised|noticed|checked)$/;

/** "it's been in" and "it's got": the 's is "has" there; "if I'd bought": the 'd is "had". */
const hasBeen = (tokens: readonly Token[]): Token[] =>
  tokens.map((token, at) => {
    const next = tokens[at + 1]?.word ?? '';
    if (token.word === 'is' && participle.test(next)) return { ...token, word: 'has' };
    const later = /^(only|just|never|already|not)$/.test(next)
      ? (tokens[at + 2]?.word ?? '')
      : next;
    return token.word === 'would' && ofHad.test(later) ? { ...token, word: 'had' } : token;
  });

function writtenOut(token: Token): Token[] {
  let words = whole[token.word];
  if (words === undefined) {
    // "th'oven", "t'potatoes": the article is written on to what it belongs to.
    words = token.word.replace(/^(?:th'|t')(?=[a-z]{3})/, 'the ');
    for (const [ending, instead] of words.includes("'") ? endings : []) {
      if (!ending.test(words)) continue;
      words = words.replace(ending, instead);
      break;
    }
    words = words
      .replace(joinedNumber, '$1 $2')
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
    if (token.word === 'mash' && /^potato(es)?$/.test(next?.word ?? '')) {
      out.push({ ...token, word: 'mashed' });
    } else if (token.word === 'o' && next?.word === 'clock') {
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
    } else if (token.word === ':' && next && numeric.test(next.word)) {
      // "thickest part: 112" is one breath.
    } else if (
      token.word === ':' &&
      /^(sorted|done|ready|finished|made|in|out|on|peeled|resting)$/.test(next?.word ?? '')
    ) {
      // "herb butter: sorted" likewise.
    } else if (/^[;:]$/.test(token.word)) out.push({ ...token, word: ',' });
    else if (token.word === '/' && !adjoins(before, token) && !adjoins(token, next))
      out.push({ ...token, word: ',' });
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

/** Two hums that are an answer. */
const hums: Record<string, string> = {
  ...{
    'uh huh': 'mhm',
    'mm hmm': 'mhm',
    'mm hm': 'mhm',
    'mmm hmm': 'mhm',
    'hmm mm': 'mhm',
    'ah huh': 'mhm',
  },
  ...{ 'uh uh': 'no', 'nuh uh': 'no', 'nuh huh': 'no', 'mm mm': 'no' },
};

function withoutFillers(tokens: readonly Token[]): Token[] {
  const [first, second, ...more] = tokens.filter((token) => !/^[,.?!]$/.test(token.word));
  // Alone, "just now" tells when it was; beside anything else it is manners.
  if (first?.word === 'just' && second?.word === 'now' && more.length === 0)
    return [{ ...first, word: 'just-now', to: second.to }];
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const phrase = fillerPhrases.find((words) =>
      words.every((word, offset) => tokens[at + offset]?.word === word),
    );
    const word = tokens[at]!.word;
    const sound = hums[`${word} ${tokens[at + 1]?.word ?? ''}`];
    if (sound !== undefined) {
      out.push({ ...tokens[at]!, word: sound, to: tokens[at + 1]!.to });
      at += 1;
      continue;
    }
    // "gone out so it's ready": an afterthought only where the clause ends with it.
    const leads =
      phrase?.[0] === 'so' && !/^(|[,.?!])$/.test(tokens[at + phrase.length]?.word ?? '');
    if (phrase && !leads && !(phrase[1] === 'know' && tokens[at - 1]?.word === 'do')) {
      at += phrase.length - 1;
      continue;
    }
    // "still bloody" is how it is cooked, "the bloody oven" is not.
    const said = word === 'bloody' && /^$|^[,.?!]$|^(in|inside)$/.test(tokens[at + 1]?.word ?? '');
    // "after two hours only 40": a span of time, and what had come of it.
    if (
      word === 'only' &&
      /^(hours?|minutes?)$/.test(out.at(-1)?.word ?? '') &&
      numeric.test(tokens[at + 1]?.word ?? '')
    ) {
      out.push({ ...tokens[at]!, word: ',' });
      continue;
    }
    if (fillers.has(word) && !said) {
      // "um, it reads 104": the comma goes with the filler.
      if (tokens[at + 1]?.word === ',' && (out.length === 0 || out.at(-1)?.word === ',')) at += 1;
      continue;
    }
    out.push(tokens[at]!);
  }
  // "definitely" alone is an answer, not a filler.
  return out.length === 0 &&
    tokens.length === 1 &&
    /^(definitely|certainly|probably|really|please)$/.test(tokens[0]!.word)
    ? [...tokens]
    : out;
}

/** "it's at, it's at 104" and "the the": what is said twice in a row is said once. */
function withoutStutter(tokens: readonly Token[]): Token[] {
  const out = [...tokens];
  for (let length = 4; length >= 1; length--) {
    for (let at = 0; at + length < out.length; at++) {
      const gap = out[at + length]?.word === ',' ? 1 : 0;
      if (length === 1 && gap === 1 && !/^(the|a|it|i|we|they|and|at|is)$/.test(out[at]!.word))
        continue;
      // "I forgot about it, it's been in an hour": an object, and a new clause.
      if (
        length === 1 &&
        gap === 1 &&
        out[at]!.word === 'it' &&
        at > 0 &&
        !/^(and|so|but|ok|now|well|right|if|when|[,.?!])$/.test(out[at - 1]!.word)
      )
        continue;
      let same = true;
      for (let offset = 0; offset < length; offset++) {
        const word = out[at + offset]!.word;
        if (word !== out[at + length + gap + offset]?.word || /^[,.?!\d]/.test(word)) same = false;
        // "no no not 94": said twice for weight, where more comes after it.
        if (length === 1 && word === 'no' && gap === 0 && at === 0 && out[at + 2]?.word === 'not')
          continue;
        if (
          length === 1 &&
          (numberLike.test(word) ||
            /^(for|to|too|won|ate)$/.test(word) ||
            /^(no|yes|bye|ok|stop|wait|hello|help)$/.test(word))
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

/** "twentyfive", "sixthirty": two number words run together. */
const joinedNumber =
  /^(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(one|two|three|four|five|six|seven|eight|nine|ten|fifteen|twenty|thirty|forty|fifty|fortyfive)$/;
const numeric =
  /^(\d.*|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)$/;
const numberLike =
  /^(oh|o|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|\d.*)$/;
