/** Fire, burns, cuts, falls: before everything else. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

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
        / (was|film|movie|last|team|playing|deal|sale|form|year) /.test(` ${match.line}`) ||
        /not on fire/.test(match.line)
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
        'grabbed the [hot] (pan|tin|tray|rack|handle) (without|with my bare|bare)',
      ],
      { intent: 'emergency', kind: 'burn' },
    ),
    ...phrases(
      [
        '(cut|sliced|nicked|stabbed|slashed|gashed|chopped) (my|his|her|off my|open my|into my|the end off my|the tip off my|the top off my|through my) [own|left|right] (hand|finger|fingers|thumb|palm|wrist|arm|leg|knuckle|fingertip)',
        '(i have|i|have|he has|she has|he|she) (cut|sliced|stabbed) (myself|himself|herself) (badly|quite badly|with|on|$)',
        '(bleeding|blood) (everywhere|badly|all over|a lot|is pouring|quite badly)',
        '(i am|i|he is|she is|it is|finger is|thumb is|hand is) bleeding',
        '(knife|blade) slipped',
      ],
      { intent: 'emergency', kind: 'cut' },
    ),
    ...phrases(
      [
        '(gran|grandma|grandad|dad|mum|she|he|i|someone|somebody|sam|nan) (has|have|just|is) [just] (fallen|slipped|collapsed|fell) [over|down|on|$]',
        '(someone|somebody|she|he) (is choking|has fainted|fainted|passed out)',
      ],
      (match) =>
        /behind|asleep|short|in love/.test(match.line)
          ? undefined
          : { intent: 'emergency', kind: 'fall' },
    ),
  ],
};
