/** What a cook asks of the trade itself, beyond the steps of a card. */
import { isTradeTopic, type TradeTopic } from '../../kitchen/heard.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences } from '../spoken.ts';
import { safetyRules } from './safety.ts';

/** What the trade answers to a deed at the roast. Common practice, no source. */
const tradeAnswers: Record<TradeTopic, Spoken> = {
  baste: say`No need: its own fat bastes it, and every open door costs some minutes. Spoon the drippings over if the oven is open anyway.`,
  'turn over': say`Leave it as it stands, fat side up. If one side browns faster, turn the pan round, with dry cloths.`,
  'water in the pan': say`A cup of water if the drippings smoke, else keep it dry: steam softens the crust. Hot fat spits, so pour slowly, face back.`,
  cover: say`In the oven it stays bare. On the board lay foil over it loosely: wrapped tight, the crust goes soft.`,
  'which side up': say`Fat side up, bones down: the fat runs over it as it melts, and the bones are its rack.`,
};

/** `always`: whatever step the words may name beside, this is what is asked. */
const lore: readonly [RegExp, Spoken | ((scene: Scene) => Spoken), 'always'?][] = [
  [/\b(cover|foil|tent|wrap)\b/, tradeAnswers.cover],
  [
    /\bkeep\b.*\b(warm|hot)\b|\bstay\b.*\b(warm|hot)\b/,
    (scene) =>
      sentences([
        say`Under a lid at the back of the hob, or in a bowl over hot water; in the oven once it has come down.`,
        safetyRules.hold.sentence(scene),
      ]),
    'always',
  ],
  [
    /\b(open|opening|peek|peeking)\b.*\b(door|oven)\b|\b(door|oven)\b.*\bopen/,
    say`Leave the door shut: each look lets the heat out and costs some minutes. The thermometer tells more than the eye.`,
    'always',
  ],
  [
    /\b(slow|slowly|so long|too long|forever|not moving|hardly moving)\b/,
    say`The middle hardly moves at first, while the heat is on its way in; then it climbs faster and faster. A reading tells more than the clock.`,
    'always',
  ],
  [
    /\b(gr[ea]y|redd?en\w*|redder|turns? (red|pink)|colou?r|bloom)\b/,
    say`A fresh cut can look grey and redden over some minutes, as air reaches it. Go by the thermometer, not the colour.`,
    'always',
  ],
  [
    /\bsear\w*\b.*\b(last|end|after|finish|later|afterwards)\b|\b(last|end|finish)\b.*\bsear/,
    say`A gentle oven first cooks it evenly, with hardly any grey rim, and dries the outside. Then a short, fierce heat makes the crust before it can cook deeper.`,
    'always',
  ],
  [
    /\bsear\w*\b.*\b(first|before|start)\b/,
    say`The crust is made while the middle is still cold, and its fat seasons the pan. The gentle oven after it does the cooking.`,
    'always',
  ],
  [
    /\b(oven|heat)\b.*\b(low|cool|gentle)\b|\b(low|cool|gentle) (oven|heat)\b/,
    say`A gentle oven keeps the meat even from the edge to the middle. The crust is made by the hot one, before it or after it.`,
    'always',
  ],
  [
    /\b(climb|carry|rise|rises|keeps? (cooking|rising)|goes on|still going up)\w*/,
    say`The outside is far hotter than the middle, and its heat goes on moving inward after the pull. So it comes out early.`,
  ],
  [
    /\b(rest|resting)\b/,
    say`In the rest the heat evens out and the juices thicken, so they stay in the slices.`,
  ],
  [
    /\b(water in the pan|scorch|burn\w*)\b/,
    say`Garlic and milk solids scorch in a hot oven. A cup of cold water in the pan before the roast goes in keeps the drippings from smoking.`,
  ],
];

/** What is known of such words; `beside`, where they name a step as well. */
export function loreOf(words: string, beside: boolean, scene: Scene): Spoken | undefined {
  if (isTradeTopic(words)) return tradeAnswers[words];
  const known = lore.find(
    ([shape, , always]) => shape.test(words.toLowerCase()) && (!beside || always),
  )?.[1];
  return typeof known === 'function' ? known(scene) : known;
}
