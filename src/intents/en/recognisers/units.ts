/** The units the cook thinks in. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const tell = ['statement', 'request', 'intention', 'negative', 'question'] as const;

export const units: Recogniser = {
  name: 'units',
  moods: tell,
  phrases: [
    ...phrases(
      [
        '(use|in|switch to|switch over to|speak|work in|change to|go|we use|i use|talk|think in|do|give me|prefer|i work in|set|stick to|have it in|i think in|only speak|only know|only understand|show me|give it in|i want|i prefer|would like) [it in|temperatures in|the temperature in|everything in|degrees in|degrees] (celsius|c|metric|fahrenheit|f|imperial|american|kilos|pounds) [and (kilos|kilo|kilograms|grams|pounds|celsius|fahrenheit)] [units|degrees]',
        '^ (celsius|fahrenheit|metric|imperial|kilos|pounds) [units] [and (kilos|pounds|celsius|fahrenheit)] $',
        '^ (celsius|fahrenheit|metric|kilos) not (fahrenheit|celsius|imperial|pounds)',
      ],
      (match) => {
        // "what's 52 in fahrenheit" asks about a number.
        if (/^(so |and )?(what is|how much is|convert) .*<[ntw]\d+>/.test(match.whole))
          return undefined;
        // "how much salt per pound" wishes for no units.
        if (/ (per|a) (pounds|kilos) /.test(match.whole)) return undefined;
        const said = match.line.replace(/ not .*/, ' ');
        const temperature = /celsius|metric| c /.test(` ${said}`)
          ? 'C'
          : /fahrenheit|imperial|american| f /.test(` ${said}`)
            ? 'F'
            : undefined;
        const weight = /kilo|metric/.test(said)
          ? 'kg'
          : /pounds|imperial|american/.test(said)
            ? 'lb'
            : undefined;
        return temperature || weight
          ? {
              intent: 'set-units',
              ...(temperature ? { temperature } : {}),
              ...(weight ? { weight } : {}),
            }
          : undefined;
      },
    ),
  ],
};
