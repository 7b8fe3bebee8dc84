/** Fire, burns, cuts, falls: before everything else. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

/** What burnt, bled or fell on another day, in another house or in a film. */
const notHere =
  / (page|week|island|deck|season|goals|teeth|bottles|previously|shaving|proposing|voted|the year|film|movie|last|team|playing|deal|sale|form|year|years|yesterday|college|school|once|when i was|used to|remember|their|bridges|neighbours|news|would not it|what if|if it|imagine|song|game|ago|as a kid|back in|holiday|almost|nearly|wedding|work) /;

export const emergency: Recogniser = {
  name: 'emergency',
  moods: ['statement', 'negative', 'question', 'intention', 'request', 'story'],
  phrases: [
    ...phrases(
      [
        '(on fire|caught fire|caught alight|gone up in flames|in flames|catching fire|is alight)',
        '(flames|flame|fire) (in|inside|from|coming|coming out|shooting|on|everywhere|under) [out of|from] [the|my] (oven|pan|hob|stove|tin|fat|grease|tray|roasting tin|kitchen|grill|roast)',
        '(grease|fat|oil|oven|kitchen|pan|chip pan) fire [!|,|.|$]',
        '^ (fire|fire fire|help fire|there is a fire|flames)[*]$',
        'there (is|are) (a fire|flames)',
        '(fat|oil|grease|pan|oven|tea towel|towel|oven glove|oven mitt|cloth|paper) (is|has|just) [gone|caught|on|going] (fire|alight|flames|burning|up in (smoke|flames))',
        'the (fat|grease|oil) (ignited|has ignited|went up)',
      ],
      (match) =>
        / (hang fire|fire away|open fire|on fire (this|that|today|tonight|season|lately)) /.test(
          ` ${match.line}`,
        ) ||
        notHere.test(` ${match.line}`) ||
        / was on fire /.test(` ${match.line}`) ||
        /^(he|she|they) (is|are) on fire /.test(match.line) ||
        /(not|nothing|nowt|nobody|no one) (is |was )?(actually |really )?on fire/.test(
          match.line,
        ) ||
        (/ (no|not any|without) (flames|flame|fire|actual flames) /.test(` ${match.whole}`) &&
          !/ (on fire|caught fire|alight|in flames) /.test(` ${match.line}`))
          ? undefined
          : { intent: 'emergency', kind: 'fire' },
    ),
    ...phrases(
      [
        '(burnt|burned|scalded|scorched|singed) (my|his|her|myself|himself|herself|me) [own|right|left|whole] (hand|hands|finger|fingers|arm|wrist|thumb|palm|foot|leg|face|forearm|knuckles|elbow|chest|skin|$)',
        '(burnt|burned|scalded) (myself|himself|herself)',
        '(hot|boiling) (fat|oil|water|grease|dripping) (on|over|all over|splashed|spat|went|down) [on|at|over|all over] (my|me|his|her)',
        '(fat|oil|grease) (spat|splashed|spattered) [on|at|in|into] (me|my)',
        '(i have|i|have|got|he has|she has|sam has) (got|given myself|had|have) a [bad|nasty|big|horrible] burn',
        '(hand|arm|finger|fingers|thumb|wrist) is (burnt|burned|scalded|blistering)',
        'grabbed the [hot] (pan|tin|tray|rack|handle) [without|with my bare|bare|$]',
        '(palm|hand|finger|fingers|arm|wrist|skin) is [all] (blistering|blistered|scalded|burnt|red raw)',
        '(burnt|burned|scalded) (me|my)',
      ],
      (match) =>
        notHere.test(` ${match.line}`) ||
        / (burnt|burned|scalded) my (mouth|tongue|lips|lip|tea|toast|cake|biscuits|bridges) /.test(
          ` ${match.line}`,
        )
          ? undefined
          : { intent: 'emergency', kind: 'burn' },
    ),
    ...phrases(
      [
        '(cut|sliced|nicked|stabbed|slashed|gashed|chopped) (my|his|her|off my|open my|into my|the end off my|the tip off my|the top off my|through my) [own|left|right] (hand|finger|fingers|thumb|palm|wrist|arm|leg|knuckle|fingertip)',
        '(i have|i|have|he has|she has|he|she) (cut|sliced|stabbed) (myself|himself|herself) (badly|quite badly|with|on|$)',
        '(bleeding|blood) (everywhere|badly|all over|a lot|is pouring|quite badly)',
        '(i am|i|he is|she is|finger is|thumb is|hand is) bleeding',
        'it is bleeding [badly|a lot|everywhere|quite badly|and|like|,|$]',
        '(knife|blade) slipped',
        '(cut|sliced|stabbed) (myself|himself|herself) [with|on|badly]',
        '(there is|so much|lots of|a lot of) blood',
      ],
      (match) =>
        notHere.test(` ${match.line}`) ||
        // The roast bleeds on its board, and no one is hurt.
        / (cut|sliced|opened|carved) (it|into|the \w+) (open|and|up|in) .*it is bleeding /.test(
          ` ${match.whole}`,
        ) ||
        (/^(rest|hold|carve|served)$/.test(match.context.stage ?? '') &&
          / (board|plate|plates|rare|raw|pink|slice|slices|undercooked|juices|cooked) /.test(
            ` ${match.whole}`,
          ))
          ? undefined
          : { intent: 'emergency', kind: 'cut' },
    ),
    ...phrases(
      [
        '(gran|granny|grandma|grandmother|grandad|grandpa|grandfather|dad|mum|mother|father|she|he|i|someone|somebody|nan|uncle|aunt|auntie|wife|husband|guest|the baby|my son|my daughter|{who:word}) [has|have|just|is|had] [just|gone and|a] (fallen|slipped|collapsed|fell|tripped|fall) [over|down|on|in|off|$]',
        '(gran|granny|grandma|grandad|mum|dad|mother|father|she|he|nan|{who:word}) (has had|had|took|has taken) a (fall|tumble|bad fall)',
        '(someone|somebody|she|he) (is choking|has fainted|fainted|passed out)',
      ],
      (match) =>
        notHere.test(` ${match.line}`) ||
        / (could|would|might|may|can|will) (just |all |still )?(fall|slip|trip|collapse) /.test(
          ` ${match.line}`,
        ) ||
        /behind|schedule|off track|slipped (on|by|a bit|too)|<d\d+> (i have )?slipped|i have slipped|breaker|fuse|switch|electric|circuit|asleep|short|in love|for it|fell for|pudding|puds?\b|yorkshire|souffle|cake|sponge|meringue|pavlova|pastry|crust|batter|bread|dough|popover|rain|snow|price|power|probe|thermometer|roast|tray|potatoes|meat|it has|^it |temperature|number/.test(
          match.line,
        )
          ? undefined
          : { intent: 'emergency', kind: 'fall' },
    ),
  ],
};
