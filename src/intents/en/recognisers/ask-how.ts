/** How, and why. */
import type { Recogniser } from '../../recogniser.ts';
import { stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { topic } from './subjects.ts';

export const askHow: Recogniser = {
  name: 'ask-how',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '^ (which|what) (is it|one is it|is right|one is right|is correct|one is correct|is the right one|is the real one|one) (then|now|$) ',
        '^ which (to|one to) (believe|trust|go by|go with|use) ',
        '^ which [reading|number|thermometer|probe|one|of them|of the two|figure] (do|should|can|would) (i|we|you) (believe|trust|go by|go with|use|rely on|listen to) ',
      ],
      { intent: 'ask-how', topic: 'thermometer' },
    ),
    ...phrases(
      [
        '^ (do|should|must) (i|we|you) [really] [need to|have to|got to] (let|leave|peel|score|trim|soak|wash|dry|pat|tie|truss|brown|rotate|strain|sift|thaw|defrost|drain|shut|close|line|oil|grease|warm|stir|flour|skim|deglaze) {thing:thing} ',
      ],
      (match) => ({ intent: 'ask-how', ...topic(match) }),
    ),
    ...phrases(
      [
        '^ (where is|what is|where can i find|where do i find|have you got|do you have) (the|your|a|my) {thing:thing} (recipe|method|instructions) ',
        '^ (what is|where is) the (recipe|method) for [the] {thing:thing} ',
      ],
      (match) => ({ intent: 'ask-how', ...topic(match) }),
    ),
    // "does it matter that it only sat out for thirty minutes": how bad that is.
    ...phrases(
      '^ (does|will|would|did|is) it (matter|hurt|make a difference|a problem|bad|the end of the world|all right|ok) (that|if) (i|we|it|@it|they|the) {rest} ',
      (match) =>
        / (instead of|use|used|using|fresh|dried|without|left out|forgot) /.test(
          ` ${match.line}`,
        ) && match.marks('dtn').length === 0
          ? undefined
          : match.marks('d').length > 0
            ? { intent: 'ask-why' }
            : undefined,
    ),
    ...phrases(
      '^ [so|and|but] what (do|should|shall|can) (i|we) do with (the|my|this|these|those|all the) {thing:thing} ',
      (match) =>
        / (guests?|kids|children|dog|people|time|hands|myself|late) /.test(` ${match.line}`)
          ? undefined
          : { intent: 'ask-how', ...topic(match) },
    ),
    ...phrases(
      [
        '^ [but|and|ok] (why|how come|what for|for what reason|what is the reason|what is the point of|what is the purpose of|what difference does) [is|do|does|should|am|are|did|not|would|the|i|we|it|that|can|must] [{thing:thing}] $',
        '^ [but|and] (why|how come) ',
      ],
      (match) => ({ intent: 'ask-why', ...topic(match) }),
    ),
    ...phrases(
      [
        '(how) (do|should|can|would|does|shall|could) (i|we|you|one) (know|tell) [when|if|that|whether] [{thing:thing}] $',
        '(how) (do|should|can|would|does|shall|could|am|did) (i|we|you|one|the) [best|properly|go about|supposed to] {thing:thing} $',
        '(how to|show me how to|tell me how to|explain how to|best way to|teach me to|teach me how to|show me|what is the (best|right|trick|proper) way (to|of)|remind me how to|explain|talk me through|walk me through|run me through|what is the method for|how is|how are|how does one|what do you mean by|what does|what is) [the] {thing:thing} $',
      ],
      (match) => {
        const words = match.words('thing');
        const line = match.line;
        if (
          /^what (is|does)/.test(line) &&
          !stepIn(words.replace(/ mean$/, ''), match.context) &&
          !/(french|truss|baste|tent|carry ?over|deglaze|render)/.test(words)
        )
          return undefined;
        if (
          /^how (is|are)/.test(line) &&
          (/(going|doing|looking|getting|coming|you|things|we|it)$/.test(line.trim()) ||
            !/(made|done|cut|tied|cooked)/.test(line))
        )
          return undefined;
        if (/(feel|spell|score|game|was your)/.test(words)) return undefined;
        return { intent: 'ask-how', ...topic(match) };
      },
    ),
  ],
};
