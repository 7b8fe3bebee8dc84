/**
 * Fire, burns, cuts, falls and worse, by the words a sentence holds and in whatever order: the words of
 * harm beside what can be harmed. Tried after the exact phrases, so that no wording of it goes unheard.
 */
import type { EmergencyKind } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

interface Danger {
  kind: EmergencyKind;
  /** All of these must stand in the sentence, none of `not`. */
  words: readonly RegExp[];
  not?: RegExp;
}

const limb =
  / (hand|hands|finger|fingers|fingertip|fingertips|thumb|thumbs|palm|palms|wrist|arm|arms|forearm|elbow|knuckle|knuckles|foot|feet|toe|toes|leg|face|cheek|eye|eyes|neck|chest|skin|knee) /;
const cutLimb =
  / (hand|hands|finger|fingers|fingertip|fingertips|thumb|thumbs|palm|palms|wrist|arm|forearm|elbow|knuckle|knuckles|foot|toe|leg|knee|skin) /;
const person =
  / (i|me|my|myself|he|him|his|himself|she|her|herself|mum|mummy|dad|daddy|mother|father|gran|granny|grandma|grandmother|grandad|grandpa|grandfather|nan|nana|nanna|uncle|aunt|auntie|wife|husband|son|daughter|kid|child|toddler|baby|boy|girl|brother|sister|cousin|neighbour|guest|somebody|someone|friend|partner|lad) /;
const harm =
  / (burnt|burned|burn|burns|burning|scald|scalded|scalding|scorched|singed|blister|blisters|blistered|blistering) /;

const dangers: readonly Danger[] = [
  {
    kind: 'fire',
    words: [
      / (fire|flames|flame|flaming|ablaze|alight|blaze|blazing|inferno) /,
      / (pan|oven|cooker|fat|grease|oil|towel|tea towel|cloth|glove|gloves|mitt|hob|stove|grill|kitchen|tray|tin|it|curtain|curtains|sleeve|apron|paper|parchment|foil|dripping|drippings|roast|joint|meat|real|everywhere|help|quick|fast|here|extractor|hood|bin|toaster|skillet|burner|something|put it out|have a|have got a) /,
    ],
    not: / (hang fire|fire away|fire (alarm|station|brigade|drill|place|pit|works|it up|her up|up|extinguisher|engine|truck|away|wood)|fire up|camp|open fire|over (a|the) (fire|flame)|on the fire (now|for|since)|(gravy|soup|potatoes|beans|sauce|water|cabbage|carrots|stock|rice|milk|jus|sprouts|peas|broccoli|spinach|mash|onions) (?:is |are |goes |go |back )?on the fire|(low|high|medium|full|small|gentle|big|lower|lowest|blue|gas|naked|bring|turn|turned|higher|slow) (the |a )?(flame|flames|fire)|flames? (down|up|low|high|lower|higher)|is the fire|by the fire|front of the fire|light the|lit the|old flame|candle|candles|under fire|fire is lit|sat|sitting|logs|frying pan into|in the fire|cosy|chestnuts|bonfire|bbq|barbecue|put (it|them|the \w+) on the fire|cook on fire) /,
  },
  {
    kind: 'fire',
    words: [
      / (pan|oil|fat|grease|towel|cloth|glove|mitt|apron|sleeve|paper|curtain|curtains|foil) /,
      / (just went up|went up|gone up|up in flames|caught light|catching light|ignited|took light|took fire|taken fire|caught|is catching) $/,
    ],
    not: / (temperature|degrees|to <|by <|price|prices|gone up to|some|the crispy) /,
  },
  { kind: 'burn', words: [harm, limb], not: / (calories|eyes are burning|onions|legs are) / },
  {
    kind: 'burn',
    words: [/ (burnt|burned|scalded|burn|scald|burning) (myself|himself|herself|me|him|her) /],
    not: / (careful|do not|not to) /,
  },
  {
    kind: 'burn',
    words: [
      / (fat|oil|water|gravy|steam|grease|dripping|drippings|stock|butter|jus|caramel) /,
      / (splash|splashed|splashing|spill|spilled|spilt|spat|spit|spitting|splatter|splattered|spattered|poured|went|gone|all|over|on|down|got|hit|caught|in) /,
      / (my|me|his|him|her|own|the) (whole |right |left |bare |wee |poor )?(hand|hands|finger|fingers|thumb|palm|wrist|arm|arms|forearm|foot|feet|leg|legs|face|eye|eyes|neck|chest|skin|knee|lap) /,
      / (hot|boiling|scalding|steam|fat|oil|grease|ow|ouch|hurts|burning) /,
    ],
    not: / (pan|tin|tray|jug|pot|bowl|ladle|spoon) (full )?of (hot |boiling )?(fat|oil|water|gravy|stock|butter|jus|dripping) in (my|his|her|one) (own )?(hands?|arms?|lap) /,
  },
  {
    kind: 'burn',
    words: [
      / (touched|grabbed|touching|took hold of|put (my|his|her) hand on|leaned on|brushed|hit|caught|held|picked up) /,
      / (element|oven|hot|rack|oven door|hob|grill|handle|tray|tin|pan|ring|burner|stove) /,
      / (bare|ow|oww|ouch|hand|hands|finger|fingers|thumb|arm|wrist|palm|burned|burnt|it hurts|forearm) /,
    ],
    not: / (on hand|second hand|other hand|give|gave|glove|oven gloves|by hand) /,
  },
  {
    kind: 'burn',
    words: [/ (blister|blisters|blistering) /, / (my|me|coming up|hot|oven|i|his|her) /],
    not: / (shoes|walking|boots|heel|skin is blistering nicely|crackling|paint) /,
  },
  {
    kind: 'cut',
    words: [
      / (cut|cuts|cutting|sliced|slice|slicing|nick|nicked|gash|gashed|stabbed|stab|slashed|chopped|skinned|grated|punctured|jabbed|spiked|knife|peeler|mandoline|mandolin|grater|blade|took the (top|tip|end) off|lost the tip) /,
      cutLimb,
      / (my|me|his|her|their|own|in|into|off|through|of) /,
    ],
    not: / (finger food|fingers crossed|fish fingers|ladies fingers|lady fingers|chicken|by hand|hand me|hands on|on hand|in hand|second hand|give|lend|gave|other hand|a hand|hair|lamb is|of lamb|shoulder|watch your|mind your|careful|keep|hand over|fingers thick|finger thick|finger sized|thumb sized|carrots into|potatoes into|foot (high|long)|skin on|skin off|the skin|skin and fat|fat and skin|(skin|rind) (is |has been |all |now )*(cut|sliced|scored|trimmed)|face down|face up|eye of|eye round) /,
  },
  {
    kind: 'cut',
    words: [
      / (bleeding|bleed|bleeds|bled|blood) /,
      / (i|i am|me|my|finger|thumb|hand|palm|everywhere|he is|she is|his|her|will not stop|would not stop|a lot|lots|loads|badly|pouring|dripping down|all over the (board|place|counter|floor|kitchen|worktop)|gushing|towel) /,
    ],
    not: / (blood (thinn\w+|pressure|orange|oranges|type|test|sugar|pudding|sausage|bank|red|moon)|meat|roast|joint|beef|lamb|raw|rare|middle|pink|like (it|mine)|drop of blood|medium|well done|pinker|after it|nose|units|half blood|blue blood|in the pan|is (it|that) blood|juices?|no blood|without blood|with blood|heart|gums|eat|eats) /,
  },
  {
    kind: 'fall',
    words: [
      person,
      / (fell|fallen|slipped|tripped|tumble|tumbled|gone over|had a fall|took a fall|took a tumble|fallen over) /,
      / (floor|over|down|stairs|step|steps|ladder|chair|stool|off|tumble|hurt|leg|hip|back|fall|head|wet|badly|can not get up|tiles|water|oil) /,
    ],
    not: / (asleep|in love|behind|schedule|off track|out with|apart|for it|power|price|temperature|probe|thermometer|the (roast|tray|joint|meat|tin|pan|potatoes|gravy) (fell|slipped|has fallen|slid)|it (fell|slipped|has fallen)|breaker|fuse|switch|my mind|her mind|over him|off the wagon|down <|to <|roast|joint|tray|potatoes|meat) /,
  },
  {
    kind: 'choking',
    words: [
      / (choking|choke|choked|chokes|windpipe|gagging|(can not|not|could not|stopped|struggling to) (breathe|breathing)|(stuck|lodged|caught) (in|down) (his|her|my|the|their) (throat|windpipe|gullet)|wrong (way|pipe|hole)|turning blue|going blue|gone blue) /,
      person,
    ],
    not: / (up|on about|laughing|smoke|in this heat|cocktail|drain|neck|almost|nearly|so full|stuffed|not breathe on|hazard|worried|so (he|she|they|it) (does|do|will|can) not choke) /,
  },
  {
    kind: 'collapse',
    words: [
      / (fainted|fainting|faint|collapsed|collapsing|unconscious|passed out|passing out|blacked out|blacking out|seizure|fitting|stroke|heart attack|keeled over|out cold|unresponsive|not (responding|waking|conscious|answering|moving)|chest pain|chest pains|gone down|lost consciousness) /,
      person,
    ],
    not: / (pudding|puddings|souffle|cake|chair|table|tent|line|phone|call|calls|door|email|emails|oven|fell asleep|different strokes|temperature|gone down (to|by|a|well|the)|has gone down <|it has gone down|stroke of|laughing|faint (smell|taste|line)|text|messages|texts|number|breast stroke|power) /,
  },
  {
    kind: 'reaction',
    words: [
      / (swelling|swollen|swelled|puffing|hives|rash|epipen|epi|anaphyla\w*|allergic reaction|reacting|throat (is )?(closing|tight|tightening)|wheezing|welts) /,
      / (face|lips|lip|tongue|throat|eyes|mouth|hives|rash|breathe|wheezing|nuts|nut|ate|eaten|eating|peanuts|prawn|shellfish|help|quick|where is|need the|reaction|now|all over|is|has) /,
      person,
    ],
    not: / (carries|carry|carrying|an epipen|has an epipen|allergic to|if|has to have|needs an|she has (a|an)|he has (a|an)|nappy|ankles|ankle|knee|would|feet|swells up if|when (he|she) eats|always|dough|can not eat|can not have|could not eat) /,
  },
];

/** Another day, another place, a warning, a story, a joke. */
const notHere =
  / (page|week|island|year|deck|season|goals|teeth|bottles|previously|shaving|proposing|voted|film|movie|last|team|playing|deal|sale|form|years|yesterday|college|school|once|when i was|used to|remember|their|bridges|neighbours|news|what if|if|imagine|song|game|ago|as a kid|back in|holiday|almost|nearly|wedding|work|at work|match|book|story|joke|tv|laughing|worried|afraid|scared|would|might|could have|careful|watch (you|your|out)|mind|do not|dont|not to|never|read|telly|episode|always|hope|hospital|drama|series|play|character|actor|said the|horse|driver|car|bike|football|player|wicket|knocked|cricket|forest|wildfire|brigade|next door|will|without|so that|in case|how|paper said) /;

/** "How do I treat a burn" is no story, and "help, what if it spreads" no supposition. */
const asksHelp = / (how do i (treat|put out|stop)|what do i do|what to do|help|ouch|ow|quick) /;

const noFlames = / (no|not any|without|no sign of) (actual |real |visible )?(flames?|fire) /;
const surelyFire =
  / (on fire|caught fire|alight|ablaze|in flames) | (hand|finger|arm|blood|bleeding) /;

function dangerIn(match: Match): Meaning | undefined {
  for (const part of match.line.split(/[.?!|] /)) {
    const line = ` ${part.replaceAll(', ', '')}`;
    const told = notHere.exec(
      line.replace(/ (can|could|will|would|does|do) not (stop|breathe|get|wake|answer) /, ' '),
    );
    if (told && !asksHelp.test(line)) continue;
    // "smoke everywhere, no flames": what is told not to be is none.
    if (noFlames.test(` ${match.line}`) && !surelyFire.test(line)) continue;
    const found = dangers.find(
      ({ words, not }) => words.every((one) => one.test(line)) && !(not?.test(line) ?? false),
    );
    if (found) return { intent: 'emergency', kind: found.kind };
  }
  return undefined;
}

export const danger: Recogniser = {
  name: 'danger',
  moods: ['statement', 'negative', 'question', 'intention', 'request', 'story'],
  phrases: phrases(
    '(fire|flames|flame|flaming|ablaze|alight|blaze|blazing|inferno|ignited|caught|catching|went|gone|burnt|burned|burn|burns|burning|scald|scalded|scalding|scorched|singed|blister|blisters|blistered|blistering|splashed|spat|spilled|spilt|steam|fat|oil|touched|grabbed|cut|sliced|nicked|nick|gash|gashed|stabbed|slashed|chopped|skinned|grated|knife|peeler|mandoline|grater|blade|took|bleeding|bleed|bled|blood|fell|fallen|slipped|tripped|tumble|choking|choke|choked|windpipe|gagging|throat|breathe|breathing|blue|fainted|fainting|faint|collapsed|unconscious|passed|blacked|seizure|stroke|attack|keeled|unresponsive|responding|answering|chest|swelling|swollen|swells|puffing|hives|rash|epipen|reaction|reacting|wheezing|water|gravy)',
    dangerIn,
  ),
};
