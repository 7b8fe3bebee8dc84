/**
 * What goes wrong in a kitchen, as families of words: the thing, and how it is said to have gone
 * wrong, wherever in the clause they stand. The first kind that a clause fits is its trouble.
 */
import type { HeardOf } from '../../kitchen/heard.ts';

export interface TroubleKind {
  trouble: HeardOf<'report-trouble'>['trouble'];
  /** All of these must stand in the clause. */
  words: readonly RegExp[];
  /** What it happens to; a dish by its name is as good, unless `things` is strict. */
  things?: RegExp;
  strict?: true;
  /** Any of these makes it another matter. */
  not?: readonly RegExp[];
  /** A longer clause is a story of something else. */
  wordsHigh?: number;
}

const power =
  / (power|current|electricity|electric|mains|fuse|breaker|fuse box|trip switch|lights|light|house|everything|kitchen) /;
/** The lamp of the oven is not the house's. */
const lamp = / (oven|little|red|orange|green|thermostat|indicator|heating|pilot) lights? /;
const heater = / (oven|cooker|stove|element|pilot|burner|gas|broiler|grill element|range|heating) /;
const limbs = / (hand|hands|finger|fingers|thumb|arm|arms|wrist|myself|me|tongue|mouth|knee|leg) /;

export const troubleKinds: readonly TroubleKind[] = [
  {
    trouble: 'power-back',
    words: [
      / (power|current|electricity|electric|mains|fuse|breaker|fuse box|lights|light) /,
      / (back|on again|returned|restored) /,
    ],
    not: [lamp],
    wordsHigh: 10,
  },
  {
    trouble: 'power-out',
    words: [
      / (power|current|electricity|electric|mains|fuse|breaker|fuse box|trip switch|lights|light) /,
      / (out|off|gone|went|dead|died|dies|down|lost|cut|failed|failing|tripped|tripping|trips|blown|blew|popped|conked|carked|kaput|bust|broken|broke|packed|stopped|quit|quits|fused|missing|over|finished|outage|vanished|no|not) /,
    ],
    not: [lamp, / (turn|turned|switch|switched|leave|left|flip|flipped) /],
    wordsHigh: 10,
  },
  {
    trouble: 'power-out',
    words: [power, / (gone|went|is) (\w+ )?(dark|black|dead|pitch black) /],
    not: [lamp],
    wordsHigh: 10,
  },
  {
    trouble: 'oven-back',
    words: [heater, / (back|working again|fixed|going again|lit again|alive again) /],
    not: [/ not /, / back (shelf|burner|left|right|door|ring|of) /],
  },
  {
    trouble: 'oven-out',
    words: [
      heater,
      / (dead|died|dies|broken|broke|bust|kaput|conked|carked|packed|failed|gone out|gone cold|going cold|given up|gave up|out of order|blown|blew|banjaxed|spoiled|knackered|tripped|cut out|cuts out|cutting out|no heat|no flame|no life|stopped|stone cold|over|run out|ran out|error|fault|went out|will only get|on the blink|on the fritz|not (\w+ )?(coming|come|turn|turning|heat|heating|work|working|light|lighting|start|starting|fire|firing|ignite|igniting|catch|getting hot|get hot|getting warm|get warm|warm|warming|taking heat|going on|go on|stay lit|stay on|staying on|function|functioning)) /,
    ],
    not: [
      / out of the oven | door | out by | (roast|joint|meat|beef|potatoes|gravy|puddings) (is|are|has|have) /,
    ],
  },
  {
    trouble: 'door-open',
    words: [/ door /, / (open|ajar|stuck|shut|close|latch) /, / (oven|left|not|will) /],
  },
  {
    trouble: 'probe-doubt',
    words: [
      / (probe|thermometer|thermometers|instant-read|leave-in|display|screen|reading|readings|readout|sensor|gauge|dial|cable|wire) /,
      / (weird|wrong|odd|strange|funny|blank|flat|dead|broken|broke|off|jumping|jumps|jumped|stuck|bone|slipped|slid|fell|fallen|out|nonsense|wonky|dodgy|lying|lies|lie|rubbish|garbage|mad|crazy|haywire|flickering|flickers|doubt|suspicious|battery|batteries|died|dying|frozen|froze|not (\w+ )?(read|reading|working|work|right|trust|believe|showing|turn|turning|come|coming|moved|moving|move|changed|changing|budged|budging|showing|agree|match)|error|errors|acting up|playing up|unreliable|loose|banjaxed|spoilt|spoiled|bust|kaput|melted|burnt|same (number|thing)|up with|believe|trust|on the blink|all over the (place|shop)) /,
    ],
    not: [
      / (by the bone|near the bone|out of the oven|lost|find|have) /,
      / (oven|cooker|hob|stove) (display|screen|dial) /,
      / dead (centre|center|middle|on) /,
    ],
  },
  {
    trouble: 'smoking',
    words: [/ (smoke|smoking|smoky|smokes|smoked|fumes) /],
    not: [
      / (no smoking|no smoke|break|cigarette|quit|outside|salmon|chimney|bbq|area|she|he|next door|neighbours|smoked (paprika|salt|bacon|fish|ham)) /,
    ],
  },
  {
    trouble: 'dropped',
    words: [
      / (dropped|drops|fell|fallen|spilled|spilt|knocked over|tipped|slid|slipped|landed|everywhere|upside down|splat|on|all over) /,
      / (floor|tiles|lino|deck|ground|carpet|rug) /,
    ],
    things:
      / (roast|joint|meat|beef|lamb|pork|tray|tin|pan|dish|bowl|dinner|(dropped|fell|fallen|spilled|spilt|slid|slipped|landed|tipped) (\w+ )?(it|the lot|all|everything|half|on|onto|to)|it (fell|slid|slipped|landed)) /,
    not: [/ (oven|heat|water|sink|wet|someone|power) /],
  },
  {
    trouble: 'dropped',
    words: [
      / (dropped|fell|fallen|spilled|spilt|knocked over|tipped over|tipped up|tipped the|slid off|slipped off|slipped out of|gone everywhere|went everywhere) /,
    ],
    things:
      / (roast|joint|meat|beef|lamb|pork|it|thing|everything|lot|tray|pan|dish|tin|bowl|jug) /,
    not: [
      / (temperature|heat|off (?!the)|by|probe|thermometer|asleep|in love|out with|behind|for it|gran|mum|dad|child|power|reading|number|oven) /,
      / (fell|fallen|dropped) (to|from|a|back|<[nt]\d+>) /,
    ],
  },
  {
    trouble: 'dropped',
    words: [
      / (dog|cat|puppy|hound) (\w+ )?(ate|eaten|got|gets|stole|stolen|had|nicked|pinched|licked|run off|ran off|made off|at) /,
    ],
    things:
      / (roast|joint|meat|beef|lamb|pork|it|some|half|slices?|piece|corner|bit|end|tray|all) /,
  },
  {
    trouble: 'burnt',
    words: [
      / (burnt|burned|burning|scorched|charred|charring|blackened|black|singed|incinerated|cremated|caught|catching|charcoal|cinders|cinder|frazzled|carbonised|carbonized|to a crisp|burnt on) /,
    ],
    things:
      / (roast|joint|meat|top|tops|bottom|bottoms|crust|outside|edges?|drippings|butter|garlic|onions|sauce|fat|it is|it has|they are|they have|them) /,
    not: [limbs, / (pepper|pudding|coffee|power|caught (up|on|it|in time)|dark|fire) /],
  },
  {
    trouble: 'overcooked',
    words: [
      / (cooked (it|that|the \w+) to (death|bits|a crisp)|to death|killed it|overcooked|overdone|over done|over cooked|overshot|overshooting|too far|too done|too well done|dried out|dried up|all dried|way past|gone past|well past|shot past|sailed past|blown past|blew past|went past|flew past|way over|well over|gone over|grey all|grey right|dry as|dry and|bone dry|boot leather|shoe leather|sawdust|cardboard|like leather|in (the oven )?too long|in (it|there) too long|ruined the (roast|joint|meat|beef)) /,
    ],
    not: [/ (hour|clock|bedtime|time) /],
  },
  {
    trouble: 'too-salty',
    words: [
      / (salty|oversalted|over salted|saltier|too much salt|salted (\w+ )?twice|twice the salt|double salted|sea water|seawater|brine|salt lick|the sea|pure salt|too salted|too much salted|heavy on the salt|heavy handed with the salt) /,
    ],
    things:
      / (roast|joint|meat|beef|lamb|pork|it|crust|drippings|sauce|like|tastes?|all|everything|much) /,
    not: [/ (not|never|no) (\w+ )?(too salty|salty) | for the sea /],
  },
  {
    trouble: 'tough',
    words: [/ (tough|chewy|leathery|rubbery|old boots|stringy|like a boot|like rubber) /],
    things: / (it|meat|roast|joint|beef|lamb|pork|as|slices?|boots|like) /,
    strict: true,
    not: [/ (day|week|crowd|luck|one to|call|question|guy|time|skin|love) /],
  },
  {
    trouble: 'undercooked',
    words: [
      / (raw|undercooked|underdone|under done|under cooked|still cold|cold in the|still bloody|bleeding|mooing|not cooked|not (\w+ )?done (in|inside|at)|too rare|too pink|too bloody|too red|way under|well under|definitely under|jelly|see through) /,
    ],
    things:
      / (it|meat|roast|joint|middle|inside|centre|center|still|beef|lamb|pork|slices?|way|definitely) /,
    strict: true,
    not: [/ (prefer|like|likes|fridge|ham|fish|egg|eggs|vegetables) /, limbs],
  },
  {
    trouble: 'gone-cold',
    words: [
      / (has|have|is|are|went|got|gone|going|become|became|turned|getting|sitting|all|came|come|served|look|looks|feels?|quite|already) (\w+ )?(cold|lukewarm|tepid|stone cold|luke warm) | (cooled|cooling) (right |all |already )?(down|off) too /,
    ],
    things: / (roast|joint|meat|beef|lamb|pork|slices?|plates?|food|everything|sides|vegetables) /,
    not: [/ (oven|fridge|outside|room|weather|water|hands|feet|cold (start|from)|hob|pan) /],
  },
  {
    trouble: 'grey',
    words: [/ (grey|gray|greyish|no pink (left|at all|anywhere|in it)) /],
    things: / (it|meat|roast|joint|beef|lamb|pork|slices?|middle|inside|band|way|ring|edges?) /,
    strict: true,
  },
  {
    trouble: 'other',
    words: [
      / (lumpy|lumps|split|curdled|separated|watery|thin|too thick|too runny|runny|boiled over|boiled dry|boiling over|overflowed|collapsed|collapsing|sunk|sank|sinking|deflated|flat|soggy|mushy|mush|stuck to|still hard|too hard|too soft|rock hard|fell apart|falling apart|grainy|skin on|greasy|bland|bitter|sour|too sweet|too hot|too peppery|not (risen|rising|rise|rose|puffed|thickening|thickened|setting|set up|crisping)) /,
    ],
    things: / (gravy|sauce|butter|cream|batter|puddings|souffle|jus|mash) /,
    not: [/ (need|needs|longer|another|more|still|sliced|slices?|cut|leave|too hot to) /],
  },
  {
    trouble: 'overwhelmed',
    words: [
      / (overwhelmed|panicking|panic|panicked|bedlam|chaos|stressed|drowning|too much|cope|hair out|up to my (eyes|neck)|losing it|losing the plot|meltdown|all over the place|behind on everything|freaking|crying|tears|in a (flap|state|tizz|mess|muddle|spin|panic)|falling apart|pear shaped|mad in here|too many things) /,
    ],
    not: [/ (salt|sugar|wine|work|school|traffic|drink|onions?|laughing|heat|smoke) /],
    wordsHigh: 10,
  },
];

/** Every word by which trouble is told: strange elsewhere, at home in a kitchen. */
export const troubleWords: ReadonlySet<string> = new Set(
  troubleKinds.flatMap(({ words }) =>
    words.flatMap(({ source }) => source.match(/[a-z]{3,}/g) ?? []),
  ),
);
