/** What the choices are, what is on the menu and how the day goes. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

export const askPlan: Recogniser = {
  name: 'ask-plan',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(what is|what are) [my|the|our] (options|choices|alternatives)',
        '(what can|what could|what should) (i|we) do (about|now about|if|instead|to save|to fix|to catch up|to rescue)',
        '(is there|any) (another way|a way|other way|way) (round|around|to save|to fix|to catch up)',
        'how can (i|we) (save|fix|catch up|rescue|buy time|make up)',
        '(do i|do we) have (any|a) (options|choice|choices)',
        '(options|choices)',
      ],
      { intent: 'ask-options' },
    ),
    ...phrases(
      [
        '(what is|what have (i|we) got|what do (i|we) have|what did (i|we) put) on the menu',
        '(what|which) (sides|side dishes|dishes|sauces|vegetables) (are we|am i|are|have we got|have i got|do we have|do i have) [having|doing|making|cooking|on] [with it|with the roast|tonight|today|$]',
        'what (are we|am i) (having|doing|making|cooking|serving) (with it|beside it|with (the roast|the beef|the lamb|the pork)|for sides|as sides|on the side|$)',
        'what (is|goes) (with|beside|going with|to go with) (it|the roast) $',
        '[what is] the menu [again|so far|now] $',
        '^ what (veg|vegetables|sides|side dishes|trimmings|dishes) (was|am|were|are) (i|we) (doing|making|having|cooking|serving) [again|with it|$] $',
      ],
      { intent: 'ask-plan', about: 'menu' },
    ),
    ...phrases(
      [
        '(plan|schedule|timeline|running order|rundown|timetable|order of play|game plan|whole day|run of the day|run sheet)',
        '(talk|run|walk|take) me through (it|the day|everything|dinner|this|the rest|the afternoon|the evening)',
        'what (is|happens) (the order|happening|left to do|still to do|to do)',
        '(when|what) (happens|does everything happen|is everything) [and when|when]',
      ],
      { intent: 'ask-plan' },
    ),
  ],
};
