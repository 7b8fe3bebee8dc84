/** Lists of English words that phrases call by name. */
import type { Vocabulary } from '../phrase.ts';
import { phrasesIn } from '../recogniser.ts';

export const vocabulary: Vocabulary = {
  // What a bare "it" can be, and the roast by its names.
  meat: '[the|our|my|this|that] [whole|big|rib|pork|lamb|beef|sirloin] (roast|joint|beef|meat|rib|ribs|lamb|pork|leg|loin|tenderloin|fillet|topside|sirloin|prime rib|bird)',
  it: '(it|this|that|she|he|@meat)',
  they: '(they|them|those|these|both)',
  middle:
    '([the|in the|at the] (middle|centre|center|core|heart|thickest part|thick part|thick end|thin end|inside|bone|deepest part|top|edge|end) [of (it|@meat)]|by the bone|near the bone|in the (roast|meat|joint|beef))',
  spot: '(in|at|by|near|on|out by|out at|out near|over by|up by|down by|toward|towards|close to|next to|nearer|right by|beside) [the] [very] (middle|centre|center|core|heart|thickest (part|bit|end|spot)|thick (end|part|bit|side)|thin (end|part|bit|side)|fat (end|side|cap)|bone|tip|edge|edges|outside|surface|end|ends|tail|side|left|right|front|back|top|bottom|inside|small end|big end|far end|other (end|side))',
  thermometer:
    '([the|my|a|our] [instant-read|instant|digital|quick|leave-in|wired|wireless|other|old|new|meat] (thermometer|probe|gauge|dial|display|readout|reading|stick|needle|pen|one)|[the|my|a|our] (instant-read|leave-in)|[the|it is] (internal|core) [temperature|temp]|[the] temperature)',
  be: '(is|are|was|were|am|be|being|been)',
  is: '(is|was|are|were|has been|have been)',
  have: '(have|has|had|have got|has got|got)',
  in: '(in|into|inside)',
  read: '(reads|read|reading|red|says|saying|shows|showing|showed|said|reeds|reed|registers|registering|registered|gives|giving|displays)',
  guests:
    '[all|all of|most of] [the|our|my] (guests|guest|visitors|people|company|family|in laws|relatives|lot|friends|folks|others|everyone|everybody|crowd|party|gang|kids|they|mum|dad|mum and dad|parents|them)',
  person:
    '(dad|mum|mother|father|gran|granny|grandma|grandad|grandpa|nan|nana|nanna|sister|brother|wife|husband|aunt|auntie|uncle|cousin|niece|nephew|son|daughter|kids|children|boys|girls|girlfriend|boyfriend|partner|friend|neighbour|neighbor|toddler|baby|kid|child|mother in law|father in law|sister in law|brother in law|in laws|guest|guests)',
  dinner:
    '(dinner|supper|lunch|tea|the meal|meal|food|serving|service|the roast|sunday lunch|sunday dinner|sunday roast|christmas dinner|christmas lunch|the dinner|table)',
  oven: '[the|my|our] [main|big|little|small|top|bottom|upper|lower|left|right|second|other|electric|gas|fan|double] (oven|cooker|stove|range|aga)',
  alarm: '(shout|yell|call|beep|buzz|ping|ring|nudge|poke|alarm|alert|signal)',
  tell: '(tell me|ring me|advise me|inform me|give me a ring|let me know|shout|give me a @alarm|give us a @alarm|call me|warn me|remind me|alert me|ping me|notify me|wake me|say|say so|beep|holler|let us know|tell us|sing out|yell|buzz me|speak up|nudge me|call out|sound the alarm)',
  larder:
    '((in|at|from) the [back of the|bottom of the|top of the] (cupboard|drawer|fridge|freezer|pantry|larder|press|shed|garden|garage))',
  now: '(now|already|at last|then|right now|at the moment|today|again|by now)',
  cut: '(rib roast|standing rib roast|standing rib|prime rib|prime rib roast|rib of beef|fore rib|forerib|beef rib|beef roast|roast beef|rib eye roast|ribeye roast|rib eye|ribeye|strip loin|striploin|strip roast|new york strip roast|sirloin roast|sirloin joint|sirloin|tenderloin|beef tenderloin|fillet|beef fillet|fillet of beef|top round|topside|eye round|eye of round|leg of lamb|lamb leg|pork loin|loin of pork|rib|roast|joint)',
};

/** Phrases in English. */
export const phrases = phrasesIn(vocabulary);
