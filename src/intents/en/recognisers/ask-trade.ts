/** What is asked of the trade at the stove, whatever the card: whether to baste it, to turn it over, to cover it. */
import type { TradeTopic } from '../../../kitchen/heard.ts';
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const roast = '(it|the roast|roast|the meat|meat|the joint|joint|the beef|the lamb|the pork)';
const whether =
  '(do|should|shall|must|can|could|may|would) (i|we|you) [not] [really|actually|still|also] [need to|have to|bother to|be]';
const worth = '(is it worth|is there any point in|any point|do you bother|what about|how about)';

/** A deed at the roast, after the word by which the trade's answer to it is found. */
const deeds: Record<Exclude<TradeTopic, 'which side up'>, string> = {
  baste: `(baste|basting|spoon|spooning) [${roast}|the fat|the juices|fat|juices] `,
  'turn over': `(turn|turning|flip|flipping|rotate|rotating) ${roast} (over|around|round|upside down|halfway|half way|$) `,
  'water in the pan':
    '(add|adding|put|putting|pour|pouring) [some|a bit of|a cup of|any|a splash of|a little] (water|stock|wine|liquid|broth) (in|into|to|under) [the|its|it] [roasting|bottom of the] [pan|tin|tray|meat|roast|joint] ',
  cover: `(cover|covering|tent|wrap|wrapping) ${roast} [with foil|in foil|up] [while it cooks|while it roasts|in the oven] $ `,
};

/** "Should I turn it down", "flip the potatoes": of something else. */
const ofOther =
  / (dial|hob|potatoes|spuds|carrots|puddings|sprouts|parsnips|gravy|sauce|jus|slices|fridge|plate|board|down|off|<[a-z]\d+>) /;

export const askTrade: Recogniser = {
  name: 'ask-trade',
  moods: ['question', 'request'],
  phrases: [
    ...Object.entries(deeds).flatMap(([topic, deed]) =>
      phrases(
        [`^ [so|and|ok|but] ${whether} ${deed}`, `^ [so|and|ok|but] ${worth} ${deed}`],
        (match) => (ofOther.test(` ${match.line}`) ? undefined : { intent: 'ask-how', topic }),
      ),
    ),
    ...phrases(
      [
        `^ [so|and] (does|should|is|do i put|would) ${roast} [go|be|sit] (fat|bone|bones|skin) [side] (up|down) `,
        '^ [so|and] (which|what) (side|way) (up|is up|goes up|should be up|faces up) ',
        `^ [so|and] (which|what) (side|way) (does|should|do i put) ${roast} (go|be|face|sit|in) `,
      ],
      { intent: 'ask-how', topic: 'which side up' },
    ),
  ],
};
