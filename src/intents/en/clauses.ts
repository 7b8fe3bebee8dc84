/**
 * Cuts English into clauses and says in which mood each is spoken. Words that only open or close a
 * clause ("right, so", "now, mate") fall away, so that a phrase can be anchored at both ends.
 */
import type { ReadContext } from '../../kitchen/heard.ts';
import { type Clause, lineOf, type Mood } from '../clause.ts';
import { nameIn } from '../names.ts';
import type { Token } from '../token.ts';

const conjunctions = /^(and|but|then|so|plus|also|while|although|though|because|or)$/;
const ends = /^[.?!]$/;

const opening =
  /^(ok|so|well|right|and|but|hey|hi|hello|oh|yes|all|now|listen|also|then|look|yo|chef|mate|love|dear|like|sorry|there|morning|evening|plus|because|i think|i reckon|i believe|it looks like|looks like|seems like|good news|bad news|guess what|by the way|to say|so you know|for your information|fyi|quick update|update|as of now|at the moment|right now|all right|ok so|i see|i can tell you|i have to say|heads up|no worries|there we go|here we go) $/;
const closing =
  /^(now|then|mate|love|chef|dear|guys|folks|ok|yes|already|thanks|cheers|again|though|so far|right now|at the moment|just now|for you|i think|i reckon|i believe|i would say|by the way|thank you|for now|at last|already then|or so|there|too|as well|to be honest|apparently|everyone|everybody|darling|buddy|today|would you|will you|could you|can you|if you can|if possible|if you would|for me) $/;

export function clausesOf(tokens: readonly Token[], context: ReadContext): Clause[] {
  const clauses: Clause[] = [];
  let part: Token[] = [];
  let asked = false;
  const close = (mark: string): void => {
    const bare = trimmed(part);
    part = [];
    if (bare.length === 0) {
      if (ends.test(mark)) asked = false;
      return;
    }
    const mood = mark === '?' ? questionOr(moodOf(lineOf(bare))) : moodOf(lineOf(bare));
    const subordinate =
      asked && mood === 'statement' && !/ (is|are|was|has|have) /.test(` ${lineOf(bare)}`);
    clauses.push({ tokens: bare, mood: subordinate ? 'question' : mood });
    asked = !ends.test(mark) && (mood === 'question' || mood === 'story') && mark !== '|';
  };
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    if (ends.test(token.word) || token.word === ',' || token.word === '|') {
      // The mark of the sentence reaches back over its commas when nothing new began.
      close(token.word === ',' ? ',' : token.word);
    } else if (conjunctions.test(token.word) && !joinsNames(part, tokens, at, context)) close(',');
    else if (beginsAnew(part, tokens, at)) {
      close(',');
      part.push(token);
    } else part.push(token);
  }
  close('.');
  return clauses;
}

/** "potatoes and beans are in", "six adults and two kids", "salt and pepper": one clause. */
function joinsNames(
  part: readonly Token[],
  tokens: readonly Token[],
  at: number,
  context: ReadContext,
): boolean {
  if (!/^(and|or|plus)$/.test(tokens[at]!.word)) return false;
  const next = tokens[at + 1]?.word ?? '';
  const second = tokens[at + 2]?.word ?? '';
  if (
    /^<n/.test(next) &&
    /^(kids|children|little|vegetarians|vegans|babies|toddlers|adults|grown|more|teenagers)$/.test(
      second,
    )
  )
    return true;
  if (/^(pepper)$/.test(next)) return true;
  const words = trimmed(part).map((token) => token.word);
  if (words.length === 0 || words.length > 4) return false;
  if (words.some((word) => /^(is|are|was|were|in|out|on|went)$/.test(word))) return false;
  return (
    nameIn(context.lexicon.dishes, words.join(' ')) !== undefined &&
    /^(the|\p{L}+)$/u.test(next) &&
    tokens
      .slice(at + 1, at + 7)
      .some((token) => /^(is|are|went|go|in|out|done|were)$/.test(token.word))
  );
}

/** Without a comma, a new subject with its verb begins a new clause: "it's out the potatoes are in". */
function beginsAnew(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  if (part.length < 3) return false;
  const before = part.at(-1)!.word;
  if (
    /^(that|when|if|once|till|after|before|think|say|said|says|because|what|how|where|than|as|is|are|the|to|of|know|me|like|time|who|which|not|long|much|whether|do|does|did|can|should|could|hope|sure|since|unless|why|per|for|with|on|in|it|a|an|was|have|has|by|and|i|we|they|you|had)$/.test(
      before,
    )
  )
    return false;
  if (
    /^(when|what|how|where|why|who|is|are|do|does|did|can|could|should|will|if|once|tell|let)$/.test(
      part[0]!.word,
    )
  )
    return false;
  const two = `${tokens[at]!.word} ${tokens[at + 1]?.word ?? ''}`;
  if (
    /^(it is|they are|i have|i am|we have|we are|there is|there are|it reads|it was|guests are|what is|how long|how much|can you|can i)$/.test(
      two,
    )
  )
    return true;
  const three = tokens
    .slice(at, at + 3)
    .map((token) => token.word)
    .join(' ');
  return /^the \w+ (is|are|went|has)$/.test(three);
}

/** Without the words that only open or close it; a clause of nothing else is kept. */
export function trimmed(tokens: readonly Token[]): Token[] {
  let start = 0;
  let end = tokens.length;
  for (let moved = true; moved && start < end; ) {
    moved = false;
    for (const length of [4, 3, 2, 1]) {
      if (start + length >= end) continue;
      if (!opening.test(lineOf(tokens.slice(start, start + length)))) continue;
      // "there is", "all of them", "now we are ten", "right now", "like it rare" mean something.
      const next = tokens[start + length]!.word;
      if (
        length === 1 &&
        /^(is|are|of|back|will|would|we|done|done|set|rare)$/.test(next) &&
        /^(there|all|now|like|right|look)$/.test(tokens[start]!.word)
      )
        continue;
      start += length;
      moved = true;
      break;
    }
  }
  for (let moved = true; moved && start < end; ) {
    moved = false;
    for (const length of [4, 3, 2, 1]) {
      if (end - length <= start) continue;
      const tail = lineOf(tokens.slice(end - length, end));
      if (!closing.test(tail)) continue;
      const before = tokens[end - length - 1]!.word;
      if (
        length === 1 &&
        /^(what|whats|is|come|that|over|from|is|up|till|and|say|how|do|are|it|start|go|no)$/.test(
          before,
        ) &&
        /^(now|then|again|there|too|everyone|everybody|today|all)/.test(tail)
      )
        continue;
      end -= length;
      moved = true;
      break;
    }
  }
  return tokens.slice(start, end);
}

const questionOr = (mood: Mood): Mood =>
  mood === 'story' || mood === 'request' ? mood : 'question';

const wh =
  /^(what|when|how|why|where|who|which|whose|any (idea|chance|news|word)|wondering|i wonder|do you know|tell me (what|how|why|when|about|where)|remind me (what|how|why|when|which)|explain|show me|run me|talk me|walk me|give me (the|a) (plan|schedule|timeline|rundown|list|status|run|overview)) /;
const inverted =
  /^(is|are|am|do|does|did|can|could|should|shall|will|would|has|have|was|were|must|may|might|had) (not )?(i|we|you|it|they|he|she|that|this|there|the|my|our|your|these|those|dad|mum|anyone|everyone|everything|dinner|<\w+>|rare|medium|\w+) /;
const notQuestion =
  /^((have|has|had|did|do|does|is|are|was|could|can|will) not (?!(i|we|you|it|they|he|she|that|this|the) )|do not|have (got|had)|will do|can do|do it|do that|is (in|out|on|off|up|down|done|resting|at|ready)|are (in|out|on|done) |has (gone|been)|have (put|taken|got|just|turned|done|made|started|finished|moved|left)|was (at|reading)|may as)/;
const request =
  /^((can|could|would|will) (you|we) |(can|could|may) i (have|get) |shall we |let us |i want (you )?to |we want to |i would like (you )?to |we would like to |we need to |i need (you )?to |i want a |i need a |how about (we )?|what if we |why do not we |would you mind |could you |we had better |better |you can |you could |maybe we (can|could|should) |should we (push|move|delay|eat|say|make) )/;
const story =
  / (last (year|time|week|christmas|night|month|sunday|thanksgiving|easter|weekend|summer)|yesterday|the other (day|night)|years ago|a (week|month|year) ago|when i was|used to|remember (when|that|how)|always (cooked|did|used|said|made|does|cooks|says|has|goes)|usually|normally|(recipe|book|website|internet|magazine|show|programme|program|packet|label|butcher|neighbour|telly|blog|video|card|mum|mother|dad|father|gran|husband|wife|he|she|they|you|article) (says|said|told|reckons|reckoned|swears|claims|thinks|thought|recommends|suggests)|according to|on tv|supposed to|would have|could have|should have|might have|should be (at|out|in|done)|i thought|i dreamt|i heard|in the film|imagine|pretend|hypothetically|for example|once had|back in (the day|my day|those days)|next year|next time|next week|in my day) /;
const conditional =
  /^(if|when|once|as soon as|after|before|till|unless|by the time|in case|whenever|assuming|supposing|suppose|say|as long as|the minute|the moment|wait till) /;
const negative = / (not|never|no longer|nor) /;
const intention =
  / (will|going to|about to|gonna|plan to|planning to|need to|have to|has to|intend to|want to|ready to|hoping to|try to|trying to|had better|should|must|nearly|almost) /;

export function moodOf(line: string): Mood {
  const padded = ` ${line}`;
  if (request.test(line)) return 'request';
  if (wh.test(line)) return 'question';
  if (conditional.test(line)) return 'story';
  if (story.test(padded)) return 'story';
  if (inverted.test(line) && !notQuestion.test(line)) return 'question';
  if (foreign.test(padded) && !emergencyWords.test(padded)) return 'story';
  if (negative.test(padded)) return 'negative';
  if (intention.test(padded)) return 'intention';
  return 'statement';
}

const emergencyWords = / (fire|flames|burnt|burned|bleeding|cut|alight) /;

/** What is talked of in a kitchen and is none of the helper's business. */
const foreign =
  / (football|match|game|games|telly|tv|television|radio|music|volume|song|playlist|car|bus|train|flight|plane|taxi|phone|wifi|internet|email|emails|laptop|computer|printer|school|homework|exam|teacher|office|boss|meeting|bin|bins|rubbish|trash|garbage|dog|cat|puppy|hamster|rabbit|movie|film|netflix|book|novel|weather|rain|raining|snow|snowing|sunny|garden|shed|lawn|bath|shower|bathroom|toilet|bedroom|upstairs|laundry|washing|dishwasher|heating|boiler|thermostat|fever|doctor|hospital|dentist|election|president|minister|government|score|goal|team|league|lottery|mortgage|rent|price|prices|dollars|quid|euros|bucks|bank|stock|stocks|crypto|bitcoin|shares|jumper|shoes|shirt|dress|trousers|jacket|coat|hair|makeup|charger|keys|window|windows|curtains|post|parcel|delivery|postman|newspaper|magazine|holiday|vacation|beach|gym|swim|swimming|marathon|bike|cycling|golf|tennis|rugby|cricket|basketball|baseball|hockey|inning|innings|quarter final|wedding|funeral|divorce|birthday|tickets|concert|theatre|museum|church|motorway|highway|speed|miles|kilometres|km|mph|petrol|gas station|pub|bar|wine|beer|gin|cocktail|cocktails|candles|candle|fireplace|hoover|vacuum|mower|drill|ladder|tax|taxes|job|salary|album|channel|episode|series|season finale|video|photo|photos|camera|selfie|instagram|facebook|twitter|app|apps|website|password|jeans|skirt|nappy|diaper|pram|stroller|lecture|university|college|granddad is hip|hip|knee|bungalow|house sold|housing|population|movie|cinema|jigsaw|puzzle|lego|chess|cards|board game|monopoly|piano|guitar|choir|band|bedtime|pool|pond|fish tank|goldfish|budgie|parrot|horse|horses|pony|cow|cows|chickens|hens) /;

/** The words of a request without what makes it one. */
export function withoutAsking(tokens: readonly Token[]): Token[] {
  const line = lineOf(tokens);
  const match = request.exec(line);
  if (!match) return [...tokens];
  const count = match[0].trim().split(' ').length;
  return count >= tokens.length ? [...tokens] : tokens.slice(count);
}
