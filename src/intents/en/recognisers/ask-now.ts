/** What comes next, and how it stands. */
import type { Recogniser } from '../../recogniser.ts';
import { dishIn, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

export const askNow: Recogniser = {
  name: 'ask-now',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(what|which) (is|are|comes|happens|do|should|shall|am|step|step is|else) [i|we|my|the|supposed] [to|do|be|doing|comes|is|need to do|on] [next|now|after that|after this|first|up next|then|do|next step|up|doing|the next|next thing|need doing|should i] (next|now|after that|after this|first|then|do|doing|step|thing|to do|$) [*] $',
        '(what next|what now|now what|where next|what should i do|what do i do|what am i doing|what to do|anything to do|anything i should be doing|anything else to do|should i be doing|should i do anything|is there anything (to do|else|i should|i can))',
        '(should|do|shall|can|could|may) (i|we) (now|start|put|take|get|pull|make|begin|do|turn|cover|carve|serve|need) [*]',
        '(is|are) (it|there|the next|my next) [anything|time] (next|to do)',
      ],
      (match) => {
        if (
          /^(where|how) /.test(match.line) ||
          / (make|call|do) it <[cn]/.test(match.line) ||
          / do (i|we) do with (the|my|this|these|those|all) /.test(match.line) ||
          / (cover|baste|tent|wrap|flip|peel|foil|lid|salted|enough|too|instead) /.test(
            match.line,
          ) ||
          / (economy|groceries|shop|need to buy|timer|alarm|reminder|ingredients|later|earlier|sooner) /.test(
            match.line,
          )
        )
          return undefined;
        if (
          /(score|weather|film|news|year|day is it|time is it|date|name|called|up with|on tv|president|capital|you|watching)/.test(
            match.line,
          )
        )
          return undefined;
        return { intent: 'ask-next' };
      },
    ),
    ...phrases(
      [
        '^ [so|and] (should|shall|do|must) (i|we) [just|maybe] (turn|crank|bump|knock|put|whack|drop|raise|lower|switch) (it|the oven|the heat|the fan|the convection|the temperature) (up|down|off|on|back up|back down|higher|lower|hotter) [a bit|now|then|again|$] $',
      ],
      { intent: 'ask-options' },
    ),
    // What else there is to do, or was forgotten.
    ...phrases(
      [
        '^ [is there] anything [else] [that] (i|we) (forgot|forget|have forgotten|am forgetting|are forgetting|missed|have missed|am missing|are missing|left out|should do|need to do|still need to do|should be doing) [*] $',
        '^ (am i|are we|did i|did we|have i|have we) [forgetting|forget|forgotten|missing|miss|missed] (forgetting|forget|forgotten|missing|miss|missed) (anything|something) [else|here|$] ',
        '^ [is there] anything else [to do|i need to do|i should do|needs doing|for me [to do]] (before|while|till|until|by) {rest} ',
        '^ (anything|what) else (before|while|till|until) {rest} ',
      ],
      { intent: 'ask-next' },
    ),
    // Whether what was just told is as it should be.
    ...phrases(
      [
        '^ [does|do|is|are] (that|it|this|they) (sound|sounds|seem|seems|look|looks) [about|all] (right|ok|normal|fine|good|bad|low|high|off|wrong|correct) [to you|so far|$] ',
        '^ [is|are] (that|it|this|we) [about|all] (correct|normal|about right|in order|where it should be|as it should be|to be expected) [to you|$] $',
        '^ (what|anything) (did|have) (i|we) (miss|missed) ',
        '^ is (correct|right|ok|normal|all right|good|fine) [so|like that|like this|$] $',
        '^ (that|this|it) (all right|ok|correct|right|fine|normal|enough) [so|then|like that|$] $',
        '^ (no|not) [pulling|taking|carving|moving|touching] [it] (yet|for now) $',
        '^ is (it|the oven|@oven|the probe|the thermometer) (broken|bust|knackered|working|playing up|slow|dead|faulty) ',
        '^ sound [about] (right|ok|good|normal) [to you|$] $',
        '^ (can|will|could|would|is) (it|@it|the roast|everything|dinner|that|the beef) (take|stand|survive|cope|handle|cope with|last|bear|manage) [that|it|with that|till then|that long|the wait|the delay|waiting|so long] $',
      ],
      { intent: 'ask-status' },
    ),
    ...phrases(
      [
        '(how|how are|how am|how is) [we|i|it|everything|things|the roast|@it|dinner|that|the oven|are|is] [all|we|i|it|@it|dinner|everything|things|the roast] (doing|going|looking|getting on|getting along|coming along|coming on|on|cooking) [*] $',
        '(where|how far) (are|am|have) (we|i|things) [at|now|got|come|up to|in|along|$]',
        '(are|am|is) (we|i|everything|it|dinner|things|that|the roast|@it) [still|all|going|running] (on track|on time|on schedule|ok|behind|late|going to plan|in good shape|going well|all right|ahead|doing ok|fine|going to make it|going to be late|running late|going ok|good|on course)',
        '(is|are) (it|@it|dinner|the roast|everything|they|the potatoes|{thing:thing}) (done|ready|cooked|burnt|ruined|finished|overcooked|undercooked|out|in|over|raw|resting) [yet|now|already|$]',
        '(have|did) (i|we) (wreck|wrecked|ruined|ruin|overcooked|overcook|messed|mess|blown|burnt|screwed|killed|spoiled|missed|destroyed|lost) [*]',
        '(what is|what are) (the status|happening|going on|the state|the situation|where we are|the latest|up with the roast|the current)',
        '(status|how is it)',
        '(is|will) (it|dinner|everything|we|@it) (be|going to be) (ok|all right|on time|ready|fine|late|done)',
        '(does|do) (it|that|this) look (right|done|ok)',
      ],
      (match) => {
        if (
          /(how are you|you doing|your day|weather|tv|telly|outside|football|the kids|mum|dad|work)/.test(
            match.line,
          )
        )
          return undefined;
        // "is it ok if it's at 108": of the number.
        if (/^is it (ok|fine|all right) .*(at|reads|reading|is|hit) <[nt]/.test(match.line))
          return undefined;
        const who = match.words('thing');
        if (
          who !== '' &&
          !meansRoast(who) &&
          !dishIn(who, match.context) &&
          stepIn(who, match.context) === undefined
        )
          return undefined;
        return { intent: 'ask-status' };
      },
    ),
  ],
};
