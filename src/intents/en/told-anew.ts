/**
 * Where a new sentence begins in speech without stops. Knows words and their order; what a sentence means
 * is not asked here.
 */
import { lineOf } from '../clause.ts';
import type { Token } from '../token.ts';

/** With these a clause may be over. */
export const closesAClause =
  /^(burner|hob|stove|oven|fridge|table|counter|side|shelf|pan|water|sink|rack|door|foil|in|out|on|off|done|ready|made|up|down|finished|now|already|ago|it|warm|hot|cold|resting|simmering|boiling|mixed|peeled|trimmed|carved|them|started|yet|late|early|behind|coming|here|arrived|timer|middle|centre|center|core|dinner|tonight|<[a-z]\d+>)$/;

/**
 * "the potatoes are in I've put the oven up", "it's 108 five minutes on the timer": a recogniser writes no
 * commas, so that a whole report ends where the next begins with what can only begin one.
 */
export function toldAnew(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  if (part.length < 2 || dependent.test(part[0]!.word)) return false;
  const before = part.at(-1)!.word;
  const ahead = lineOf(tokens.slice(at, at + 5));
  if (closesAClause.test(before) && beginsAReport.test(ahead)) return true;
  return (
    part.some(({ word }) => hasAVerb.test(word)) &&
    !goesOnAfter.test(before) &&
    beginsASentence.test(ahead)
  );
}

/** "After ten minutes start a timer", "tell me when it's at 110". */
const dependent =
  /^(if|once|when|after|before|till|as|while|since|say|says|tell|shout|what|how|why|where|who|which|remind|is|are|do|does|did|can|could|should|will|would|shall|let)$/;
/** What makes of words a clause, after which another may begin. */
const hasAVerb =
  /^(is|are|was|were|has|have|had|wants?|likes?|needs?|will|can|turned|put|took|went|came|got|says|reads|add)$/;
/** After these a subject and its verb belong to the same clause. */
const goesOnAfter =
  /^(that|when|if|once|till|after|before|think|say|said|says|because|what|how|where|than|as|is|are|be|been|the|to|of|know|me|like|time|who|which|not|do|does|did|can|should|could|would|will|hope|sure|since|unless|why|for|with|a|an|some|no|was|were|have|has|had|by|and|or|but|my|our|your|her|his|their|tell|whether|so|whose|one|all|both|whatever|wherever|everything|anything|thing|way|day|reason|bit|also|just|now|oh|well|,)$/;

/** A subject and its verb, as they stand first in a sentence of a kitchen. */
const beginsASentence = new RegExp(
  `^(?:${[
    'i have (?:just |now )?(?:[a-z]+ed|put|got|done|made|taken|cut) ',
    'i have not got ',
    'there (?:is|are) no ',
    '(?:we|i) (?:are|am) (?:out of|doing|having|short of) ',
    'we will have ',
    '(?:my \\w+|mum|dad|gran|nan|(?:<n\\d+>|one|two|three) of (?:them|us)) (?:is|are|wants?|likes?|hates?|has) ',
    '(?:the )?(?:bones|meat|roast|joint|beef|lamb|pork|gravy) (?:is|are|has) ',
    'oven is (?:on|off|heating|hot) ',
    'it is (?:[a-z]+ed|done|ready|resting) ',
    '[a-z]+ is helping ',
    'the (?:kids|children) (?:are|eat|need) ',
    'add (?:the |some )?[a-z]+ ',
    'what (?:do i do|is next|now|(?:i|we) (?:do|make|cook|must do|should do) (?:now|next|first)) ',
    'how are we ',
  ].join('|')})`,
);

/** Who did or is what, a count of minutes on a timer, another guest: none of it goes on a clause. */
const beginsAReport = new RegExp(
  `^(?:${[
    '(?:start|set) (?:a|an|another|the) (?:<d\\d+> )?(?:timer|alarm) ',
    'timer for <d',
    'pulling (?:it|her|him) (?:now|out) ',
    '(?:the )?oven (?:is )?(?:up |down )?to <[nt]',
    '<d\\d+> on the timer ',
    '(?:<n\\d+>|another|one) more (?:is|are|for dinner|people|guests|coming) ',
    'i (?:turned|put|took|set|started|pulled|opened|basted|carved|moved) ',
    'i have (?:turned|put|taken|got|done|made|set|started|pulled|peeled|lowered) ',
    'turned (?:it|the oven|the heat) (?:up|down|off|on|to) ',
    '(?:they|he|she) (?:are|is|will be|have|has) (?:here|late|running|going|stuck|all|half|just|on|<[dn]\\d+>) ',
    'yer man (?:is|has) ',
    '(?:the )?(?:guests|everyone|everybody) (?:are|is|will be|has|have) ',
    'the first (?:guests|lot|few|ones|of them|people) (?:are|is|have|has|arrived) ',
    '(?:it|we) (?:is|are) (?:now )?(?:at |up to |on |only at )?<[nt]\\d+> ',
    '<n\\d+> (?:degrees )?(?:in|at) the (?:middle|centre|center|core|thick) ',
    '(?:the )?(?:oven|probe|thermometer|core) (?:is|reads|says) ',
  ].join('|')})`,
);
