/** "Tell me when it reads 110": a call is wished for, nothing is reported. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const watched = (match: Match): Meaning | undefined => {
  const reading = match.temperature('temperature');
  // "when did I say four hundred" wishes for nothing.
  if (/ did (i|you|he|she|they|we) (just )?(say|tell|call|shout) /.test(` ${match.line}`))
    return undefined;
  // "so we'll say half eight" names an hour.
  if (/ (i|we) will say </.test(` ${match.line}`)) return undefined;
  // "don't tell me at 110".
  if (
    !/ (till|before|unless) /.test(match.line) &&
    new RegExp(` not (tell|call|shout|ring|warn)[^,]* ${match.groups.temperature!.trim()} `).test(
      ` ${match.line}`,
    )
  )
    return undefined;
  // "set an alarm for six" is an hour.
  if (match.quantity('temperature')?.kind === 'number' && reading.temperature <= 24)
    return undefined;
  // "when it's ten degrees off", "if it drops below two hundred": no heat to wait for.
  const line = ` ${match.line}`;
  const after = line.slice(line.indexOf(match.groups.temperature!));
  if (
    /^<\w+> (degrees )?(off|away|short|to go|before|below|under|left) /.test(after) ||
    / (drops?|falls?|sinks?|dips?) (down )?(below|under|to) <[nt]\d+> /.test(line)
  )
    return { intent: 'unclear' };
  // "back in at two twenty, shout us in fifteen": the call is for the minutes.
  if (
    /^<\w+> (degrees )?,? ?(\w+ ){1,4}in <[dn]\d+> /.test(after) &&
    !/ (when|once|if) /.test(line)
  )
    return undefined;
  return Number.isFinite(reading.temperature) ? { intent: 'watch', ...reading } : undefined;
};

const reaches =
  '(@it|@middle|@thermometer|the probe|the core|we|the temperature|oven|the oven) (@read|is|is at|is up to|gets to|hits|reaches|goes over|goes past|gets up to|comes up to|goes to|passes|touches|has reached|has hit|gets|climbs to|is reading|is showing|is hit|has got to|arrives to|arrives at|rises to|crosses|comes to) [at|above|over|past|up to] {temperature}';

export const watch: Recogniser = {
  name: 'watch',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        `@tell (when|once|if|as soon as|the moment|the second|the minute) ${reaches}`,
        `not (bother|disturb|call|ring|shout|wake|interrupt|talk|come|beep|ping) [for|to|at] [me|us] [again] (till|before|unless) ${reaches}`,
        `(when|once|if|as soon as|the moment) ${reaches} [,] [then] [please] [can you|could you|would you|you] (@tell|give me a shout|pull it|we pull it|we pull|pull)`,
        '@tell (at|when at|on|around) {temperature:degrees}',
        '(tell me|remind me|shout|call me|warn me|ping me|nudge me|let me know) at {temperature:number} $',
        '@tell [a] (bit|little|little bit|touch|moment|minutes) (before|early|earlier|sooner) [,] [say|like|maybe|at|so|around] [at|around] {temperature} ',
        '@tell (just|shortly|right) before [,] [say|like|maybe|at|so|around] [at|around] {temperature} ',
        '(@tell|watch for|watch out for|look out for|keep an eye out for|wait for) [it to (hit|reach|read|get to)] {temperature:number} [in the (roast|middle|meat)] $',
        '(watch for|set an alarm for|alarm at|alert at|set (an|the) (alarm|alert) (at|for)|set a temperature (alarm|alert) (at|for)) {temperature} $',
        `(i want|i would like|i need) to know (when|once|as soon as) ${reaches}`,
        `(i want|i need) (a shout|a call|telling|to be told) (when|once) ${reaches}`,
        '@tell (when|once|if|as soon as) [we|you] (hit|reach|get to|see) {temperature}',
        '(shout|call|holler|yell|beep|ping me) at {temperature}',
        '(called|wanted|notified|fetched|woken) at [both] {temperature} ',
        '^ notify [me] [,|at|on] {temperature} $',
        '{temperature} [degrees] is when (i am wanted|you call me|you call|you shout|i want (to know|calling|a shout)) ',
        '(at|on|on the dot of) {temperature} [degrees] [,] [you] (come and find me|come find me|come and get me|shout|fetch me|wake me|ping me|buzz me|let me know|give me a shout|call me|tell me) ',
        '(heads up|warning|wake me|be told|told|a shout|a nudge|a call|notice) [early|please|then] [,] (at|by) {temperature} ',
      ],
      watched,
    ),
    // "wake me at 95 and again at 110".
    ...phrases(
      '(and|then|and then|, and|,) (again|once more|another|another one|also) (at|on|when it (hits|reads|reaches)) {temperature} ',
      (match) => (match.before.some((one) => one.intent === 'watch') ? watched(match) : undefined),
    ),
  ],
};
