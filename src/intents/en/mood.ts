/**
 * In which mood an English clause is spoken. What is asked, denied, wished, planned, told of another
 * day or of other people is no report of what has just happened here.
 */
import { lineOf, type Mood } from '../clause.ts';
import type { Token } from '../token.ts';

/** "Not sure how long" tells that it is not known, and asks nobody. */
const toldUnsure =
  /^(i am )?(not sure|no idea|unsure|dunno|i do not know) (for )?(how long|since when) (for |ago |exactly |it was |it has been )?$/;

export const questionOr = (mood: Mood): Mood =>
  mood === 'story' || mood === 'request' ? mood : 'question';

const wh =
  /^(what|when|how|why|where|who|which|whose|(at|for|until|till|to|in|with|by|on|from|of|after) (what|which|how|when)|eta|any (idea|chance|news|word)|wondering|i wonder|do you know|(is there )?anything (else )?(that )?(i|we) (have )?(forgot|forgotten|missed)(?= $)|tell me (what|how|why|when|about|where)|remind me (what|how|why|when|which)|explain|show me|run me|talk me|walk me|give me (the|a) (plan|schedule|timeline|rundown|list|status|run|overview)) /;
const inverted =
  /^(is|are|am|do|does|did|can|could|should|shall|will|would|has|have|was|were|must|may|might|had) (not )?(i|we|you|it|they|he|she|that|this|there|the|my|our|your|these|those|dad|mum|anyone|everyone|everything|dinner|<\w+>|rare|medium|\w+) /;
const notQuestion =
  /^(did (it|that|them|this) (already|now|then|ages ago|earlier|before|myself|first|too|as well|yesterday|this morning|last night|just now|ago|a while ago|<d\d+>)? ?(ago )?$|(is|has|are|have) (at |already |now )?<[tn]\d+> (degrees )?(in the (middle|core|centre|center)|inside|now|$)|(have|has|had|did|do|does|is|are|was|could|can|will) not (?!(i|we|you|it|they|he|she|that|this|the) )|do not|(have|has|had|got) to |have (got|had|<\w+>|a|an|no|some|one|only|neither)|will do|can do|do it|do that|is (in|out|on|off|up|down|done|resting|at|ready)|are (in|out|on|done) |has (gone|been)|have (put|taken|got|just|turned|done|made|started|finished|moved|left)|was (at|reading)|may as|do [a-z ]+ (instead|as well|too|next|first|then|after that|later) $|(was|were|has|had|have) (off|out|on|up|down|in|gone|back|still|just|only|about|never|already|(it|her|him|them|that|this) (on|in|at|out|up|down|going|resting|sat|under)|nearly|being|been|going|getting|looking|taking|running|sat|sitting|stuck|<d\d+>)|(will|can|could|should|would|might|must|may|did) (be|get|have|see|text|call|check|manage|keep|let|say|try|take|put|start|need|come|wait|leave|make|turn|use|also|only|just|probably|forget|not)(?! (i|we|it|they|the)) )/;
const request =
  /^((can|could|shall|should|may) (dinner|lunch|supper|tea|the meal|everything) (be|move|go|start) |(could|can|shall|should) we (do|say|have|eat|make it|call it|aim for) [^?]*<[cn]\d+> |(can|could|would|will) (you|we) |(can|could|may) i (have|get) |shall we |let us (?!know )|i want (you )?to |we want to |i would like (you )?to |we would like to |we need to |i need (you )?to |i want a |i need a |how about (we )?|what if we |why do not we |would you mind |could you |we had better |better |you can |you could |maybe we (can|could|should) |should we (push|move|delay|eat|say|make) )/;
/** A wish to be told something is a question, however polite; to be told when it is time is a request. */
const knowing =
  /^(((can|could|would|will) you |kindly )?(tell|explain to|show|inform|remind) (me|us) (again )?(what|how|why|which|where|who) |(i (would like|want|need|wish|would love) to know|i wonder|i was wondering|i am wondering|wondering|do you (happen to )?know|would you know|any idea|any clue|i forget|i forgot|i have forgotten|i do not remember|i can not remember|remind me|not sure|i am not sure|can you say|can you explain) (what|how|why|which|where|who|when) )/;
const story =
  / (last (year|time|week|christmas|night|month|sunday|thanksgiving|easter|weekend|summer)|yesterday|the other (day|night)|years ago|a (week|month|year) ago|when i was|used to|remember (when|that|how)|always (cooked|did|used|said|made|does|cooks|says|has|goes)|usually|normally|(recipe|book|cookbook|website|internet|google|magazine|leaflet|booklet|manual|instructions|guide|blurb|show|programme|program|packet|label|box|judges?|neighbour|telly|blog|video|card|mum|mother|dad|father|gran|husband|wife|friend|mate|pal|buddy|brother|sister|uncle|aunt|cousin|colleague|he|she|they|you|article) (that |which |who )?((came|comes|was|were) (with|on|in|from) (it|the \w+|them) |on the \w+ )?(says|say|said|told|reckons|reckoned|swears|claims|thinks|thought|recommends|suggests)|(he|she|husband|wife|dad|mum|mother|father|gran|they) (is|are|was|were|keeps|keep) (yelling|shouting|insisting|telling me|saying|swearing|going on about|on about|adamant)|according to (?!(the|my|this|our) (probe|thermometer|dial|display|screen|gauge|readout))|on tv|supposed to|would have|could have|should have|might have|should be (at|out|in|done)|i thought|(i|we) once (cooked|did|made|had|put|pulled|served|roasted|left|saw)|i dreamt|i heard|in the film|imagine|pretend|hypothetically|for example|once had|back in (the day|my day|those days)|next year|next time|next week|in my day) /;
const conditional =
  /^(if|when|once|as soon as|after|before|till|unless|by the time|in case|whenever|assuming|supposing|suppose|say|as long as|the minute|the moment|wait till) /;
const negative =
  / (not|never|no longer|nor|yet to) |^(nobody|no one|none of (us|them|you)) (has |have |had )?(said|told|mentioned|put|took|turned|checked|touched|done|did) /;
const intention =
  / (will|going to|about to|gonna|plan to|planning to|need to|have to|has to|intend to|want to|ready to|hoping to|try to|trying to|had better|should|must|nearly|almost) /;

/** "Mum's asking how pink it'll be", "she wants to know if it's ready": the question is what is passed on. */
const passedOn =
  /^(?:(?:my|our|the) )?(?:\w+ (?:in law )?)(?:(?:is|are|keeps?|was|were) (?:just )?(?:asking|wondering|curious|dying to know)|asks|asked|(?:want|wants|wanted|would like) to know) (?:me |us |about )?(?=(?:what|how|why|which|where|who|when|if|whether) )/;

/** "if it is ready", passed on: "is it ready". */
const whether =
  /^(?:if|whether) ((?:the |my |our )?\w+) (is|are|was|were|will|can|could|should|would|has|have|does|do|did) /;

/** "Twice as long as you say": what it is measured by, and no story. */
const asTold = / (than|as) (long as |much as )?you (say|said|reckon|think|thought|planned) /;

export function moodOf(line: string): Mood {
  const padded = ` ${line}`.replace(asTold, ' ');
  if (toldUnsure.test(line)) return 'story';
  if (knowing.test(line)) return 'question';
  if (
    /^(am i|are we|is it|is this|is that|are they|(is|are) the \w+) (supposed|meant) to /.test(line)
  )
    return 'question';
  if (request.test(line)) return 'request';
  // "what a palaver" asks nothing.
  if (wh.test(line) && !/^what an? (?!.*\b(is|do|does)\b)/.test(line)) return 'question';
  // "wasn't it supposed to be at a hundred by now".
  if (/^(was|is|were|are|should) not (it|that|we|they|the \w+) (supposed|meant|due) to /.test(line))
    return 'question';
  if (conditional.test(line)) return 'story';
  if (story.test(padded)) return 'story';
  if (inverted.test(line) && !notQuestion.test(line)) return 'question';
  if (
    foreign.test(padded) &&
    !emergencyWords.test(padded) &&
    !delayed.test(padded) &&
    !ours.test(padded)
  )
    return 'story';
  if (negative.test(padded)) return 'negative';
  if (intention.test(padded)) return 'intention';
  return 'statement';
}

/** Whether it is told only of what is no business of a kitchen. */
export const isForeign = (line: string): boolean =>
  foreign.test(` ${line}`) && !story.test(` ${line}`) && !conditional.test(line);

/** Beside these a word such as "heating" or "post" is the kitchen's. */
const ours =
  / (oven|roast|joint|probe|thermometer|gravy|potatoes|timer|carving|foil) | hold your horses | (dog|cat|puppy|hound) (\w+ )?(ate|eaten|eating|nicked|stole|stolen|pinched|licked|(had|got) (half|the|some|one|two|all|a)) | thermostat (is |set |now )*(on|at|to) <[nt]/;

/** A train that is late brings guests. */
const delayed =
  / (train|flight|plane|bus|taxi|car) (is|was|has been|got)? ?(running |about |at least )?(late|delayed|stuck|cancelled|<d)/;

const emergencyWords = / (fire|flames|burnt|burned|bleeding|cut|alight) /;

/** What is talked of in a kitchen and is none of the helper's business. */
const foreign =
  / (football|match|game|games|telly|tv|television|radio|music|volume|song|playlist|car|bus|train|flight|plane|taxi|phone|wifi|internet|email|emails|laptop|computer|printer|school|homework|exam|teacher|office|boss|meeting|bin|bins|rubbish|trash|garbage|dog|cat|puppy|hamster|rabbit|movie|film|netflix|book|novel|weather|forecast|high today|high tomorrow|low of|highs|lows|rain|raining|snow|snowing|sunny|garden|shed|lawn|bath|shower|bathroom|toilet|bedroom|upstairs|laundry|washing|dishwasher|heating|boiler|thermostat|fever|doctor|hospital|dentist|election|president|minister|government|score|goal|team|league|lottery|mortgage|rent|price|prices|dollars|quid|euros|bucks|bank|stock(?! (is|are|has))|stocks|crypto|bitcoin|shares|jumper|shoes|shirt|dress|trousers|jacket|coat|hair|makeup|charger|keys|window|windows|curtains|post|parcel|delivery|postman|newspaper|magazine|holiday|vacation|beach|gym|swim|swimming|marathon|bike|cycling|golf|tennis|rugby|cricket|basketball|baseball|hockey|inning|innings|quarter final|wedding|funeral|divorce|birthday|tickets|concert|theatre|museum|church|motorway|highway|speed|miles|kilometres|km|mph|petrol|gas station|pub|(?<!(?:got|no|have|any|white|red|some|with) )wine(?! (jus|sauce|vinegar|gravy|reduction))|beer|gin|cocktail|cocktails|candles|candle|fireplace|hoover|vacuum|mower|drill|ladder|tax|taxes|job|salary|album|channel|episode|series|season finale|video|photo|photos|camera|selfie|instagram|facebook|twitter|app|apps|website|password|jeans|skirt|nappy|diaper|pram|stroller|lecture|university|college|granddad is hip|hip|knee|bungalow|house sold|housing|population|movie|cinema|jigsaw|puzzle|lego|chess|cards|board game|monopoly|piano|guitar|choir|band|bedtime|pool|pond|fish tank|goldfish|budgie|parrot|horse|horses|pony|cow|cows|chickens|hens) /;

/** The words of a request without what makes it one. */
export function withoutAsking(tokens: readonly Token[]): Token[] {
  const line = lineOf(tokens);
  const match = request.exec(line);
  if (!match) return [...tokens];
  const count = match[0].trim().split(' ').length;
  return count >= tokens.length ? [...tokens] : tokens.slice(count);
}

/** What somebody is said to ask, as they would ask it. */
function asAsked(tokens: readonly Token[]): Token[] | undefined {
  const said = passedOn.exec(lineOf(tokens))?.[0];
  if (said === undefined) return undefined;
  const asked = tokens.slice(said.trim().split(' ').length);
  const turned = whether.exec(lineOf(asked));
  if (!turned) return asked;
  const subject = turned[1]!.split(' ').length;
  return [asked[1 + subject]!, ...asked.slice(1, 1 + subject), ...asked.slice(2 + subject)];
}

/** A question without the words that ask for an answer: "could you tell me how you make the jus". */
export function withoutPoliteness(tokens: readonly Token[]): Token[] {
  const asked = asAsked(tokens);
  if (asked) return asked;
  const line = lineOf(tokens);
  const match = knowing.exec(line);
  if (!match) return [...tokens];
  // The question's own first word is the last that matched.
  return tokens.slice(match[0].trim().split(' ').length - 1);
}
