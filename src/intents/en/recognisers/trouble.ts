/** What has gone wrong: power, oven, thermometer, smoke, what fell, burnt, is over or under. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishNamed } from '../frames/dinner.ts';
import { dishIn, meansRoast } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';

/** The dish that it befell, where one is named. */
function befallen(match: Match): { step?: string } {
  const dish = dishNamed(match.line.replaceAll('|', ''), match);
  return dish === undefined || meansRoast(dish) ? {} : { step: dish };
}

/** Only what is meant to rise can fail to. */
function notRisen(match: Match): Meaning {
  const named = dishNamed(match.whole.replaceAll('|', ''), match);
  const step =
    named ?? ['batter-puddings', 'warm-rolls'].find((one) => match.context.dishes.includes(one));
  return { intent: 'report-trouble', trouble: 'other', ...(step ? { step } : {}) };
}

export const trouble: Recogniser = {
  name: 'trouble',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        '(they|it|puddings|yorkshires|yorkies|popovers|souffle|rolls|batter|none of them|half of them|some of them|all of them) [is|are|has|have|did|do|does] (not|never) [even|really|all|quite] (risen|rise|riz|rising|rose|puffed|puff|rised) [up|at all|properly|$] ',
      ],
      (match) =>
        / (dough|prices?|sun|temperature|bread|<[tn]\d+>) | (longer|more time|another) /.test(
          ` ${match.line}${match.whole}`,
        )
          ? undefined
          : notRisen(match),
    ),
    ...phrases(
      [
        '(power|electricity|lights|electric|the mains) (is|has|have|are) (back|back on|come back|come back on|on again|been restored)',
        '(power|electricity|electric|mains|lights) (came|is|are|has come|have come) (back|on again)',
        '^ [and|so|ok|right] (it|that|everything|all) (is|has come|came|has gone|is all) (back on|on again|back to life|working again|running again) [now|again] $',
        '^ [i|we|have] [i have|we have] (flipped|reset|flicked|threw|put back) [up|back] [the|a] (breaker|breakers|trip switch|fuse|trip|fuse box) [back|on|up|$] $',
        '(power|electricity|electric|mains|lights|juice) (came|is|are|has come|have come|was|were) back [on|again] (after|in) {d:duration}',
        '^ back (on|up) (after|in) {d:duration} $',
        '(we have|we have got|have got|got) (power|electricity|lights|current|the power) (back|again)',
      ],
      (match) => ({
        intent: 'report-trouble',
        trouble: 'power-back',
        ...(match.has('d') ? { minutes: match.minutes('d') } : {}),
      }),
    ),
    // "went out at five twenty, came back nine minutes later".
    ...phrases(
      ['^ [and] [it|they] (came|is|are|was|were) [back|back on|on again] {d:duration} later $'],
      (match) => {
        const last = match.before.at(-1);
        return last?.intent === 'report-trouble' && last.trouble === 'power-out'
          ? { intent: 'report-trouble', trouble: 'power-back', minutes: match.minutes('d') }
          : undefined;
      },
    ),
    ...phrases(
      [
        '(power|electricity|electric|lights|the mains) (went|has gone|just went|have gone|is gone|cut|failed|just cut|have all gone) [gone|out|off|down|cut|been cut|out again|failed]',
        '(power|electricity|electric|lights|the mains) (is|has|has been|are|have) (gone|out|off|down|cut|been cut|out again|failed)',
        '(everything|all|the lights|the house|kitchen|it all) (went|has gone|gone|is) [all] (dark|black|dead)',
        '(no|not any|there is no) (current|mains) ',
        '(lost|no) (electric|juice)',
        '(power|electricity|electric|lights|the mains) (flickered|blinked|dipped|tripped|dropped|blipped|flickered off|just flickered|just blinked|just tripped)',
        '(power cut|power failure|blackout|brownout|brown out|load shedding|loadshedding|power shedding|power outage|fuse has blown|fuse blew|blown a fuse|tripped the breaker|breaker tripped|breaker has tripped|trip switch|no power|no electricity|we have lost power|lost power|lost the power)',
      ],
      (match) => {
        // The lamp of the oven is not the house's.
        if (
          / (oven|little|red|orange|green|thermostat|indicator|pilot|heating) (light|lights) /.test(
            ` ${match.line}`,
          )
        )
          return undefined;
        const lasted = match.quantityOfMark(/for (<d\d+>)/.exec(match.line)?.[1] ?? '');
        return {
          intent: 'report-trouble',
          trouble: 'power-out',
          ...(lasted?.kind === 'duration' ? { minutes: lasted.minutes } : {}),
          ...momentOf(match),
        };
      },
    ),
    ...phrases(
      [
        '@oven is (back|back on|working again|working|fixed|going again|alive again)',
        '(got|have got|have|managed to get) @oven (working|going|back|back on|running|lit) [again|now|$] ',
      ],
      (match) =>
        / not /.test(` ${match.line}`)
          ? undefined
          : { intent: 'report-trouble', trouble: 'oven-back' },
    ),
    ...phrases(
      [
        '@oven (has|is|just|will not|would not|does not|did not|can not) [just|not] (died|broken|dead|gone|gone out|gone off|conked out|packed up|stopped|stopped working|broke|light|turn on|working|not working|come on|heat|heat up|heating|heating up|cut out|failed|tripped|gone cold|out|switched itself off|given up|start|stay lit|on the blink|bust|lit)',
        '@oven (shut|cut|tripped|conked|has shut|has cut|has tripped|just shut|just cut|just tripped) (off|out|down) [by itself|on its own|on me|$]',
        '@oven (switched|turned|shut|has switched|has turned|has shut|keeps switching|keeps turning|keeps shutting) itself (off|down)',
        '@oven (does|do|did|will|would) not (function|functioning|run|go|fire|ignite|get hot|get warm|warm up|warm|power up)',
        '@oven (display|screen|panel) (says|shows|reads|is showing) [e|error|er|f] {n:any}',
        '(no|not any|there is no|lost the) gas [coming|left|supply|through|$]',
        '@oven (is|are) not [back|working|coming back|come back|on] $',
        '@oven (is|has) [gone|completely] (dead|stone cold|kaput|banjaxed|knackered|packed in|had it)',
        '(pilot|pilots|pilot light|flame|burner) [has|have|is] [just] (gone|blown|went) out',
        '(no|not a|not any|there is no) flame [at all|any more|in the oven|in it|there|$] ',
        '(gas|pilot|pilot light|element|gas bottle) (has|is|just|went|ran) [just] (gone|out|run out|gone out|died|blown|went out)',
      ],
      (match) =>
        / out by | gone (up|down|to|back) | (has|is) (lit|working|on) $/.test(` ${match.line}`) ||
        (/(lit|light|turn on|come on|heat|heat up|heating|heating up|start|stay lit|working) (again )?$/.test(
          match.line,
        ) &&
          !/ (not|stopped) /.test(match.line))
          ? undefined
          : { intent: 'report-trouble', trouble: 'oven-out' },
    ),
    ...phrases(
      [
        '(do not|not sure i|does not) (trust|believe) (that|it|the|this) [probe|thermometer|reading|number]',
        '(probe|thermometer) (is|has|must be|might be|seems|battery|batteries|keeps|looks) (gone|playing up|broken|dead|off|wrong|acting up|on the blink|packed up|faulty|died|jumping|all over|slipped|come out|fallen|rubbish|jumping around|out|wonky|stuck|flat)',
        '(that|reading|the reading|this) (can not be|is not|does not seem|does not look|could not be|seems) (right|wrong|off|accurate|correct)',
        '(probe|thermometer) [is] (have to|has to|must|has got to|got to|can not) be (off|wrong|broken|lying|faulty|bust|playing up|right|touching) ',
        '(probe|thermometer) (spoil|spoils|is spoiled|is spoilt|is spoil) [already|$] ',
        '(probe|thermometer) (slipped|fell out|came out|popped out|broke|died|is not working|touching the bone|is touching bone)',
        '^ (that|it|this) (has|have) got to be (wrong|off|broken) $',
        '^ (it|it is|probe|the probe|the tip|tip) [is|was|must be] touching [the] (bone|pan|fat|edge|tin|tray|rack|shelf|side) $',
        '^ [i] [think|think i] [i|have|i have] (shoved|pushed|poked|stuck|rammed|jammed|gone) [it|the probe|the tip|that] [right|straight|all the way] (through|thru) [to|into|on to|against] [the] (tin|pan|bone|tray|other side|rack|fat)',
        '^ [maybe|i think] [the|its] (battery|batteries) (is|are) [going|a bit|very|nearly] (weak|low|flat|dying|dead|going) [already|now|$] $',
        '(probe|thermometer) might be (wrong|off|touching the bone)',
        '(i had it|had it|i had the probe|i had the tip|the tip was|probe was|it must have been|must have been) (on|in|against|touching|by|near|at) [the] (bone|pan|fat|edge|tin|tray|outside|gristle)',
        '(that|it|that one|the last one|last one|the first one) was (by|near|on|against|touching|at|in|too near|too close to|close to|right by|next to) [the] (pan|bone|fat|edge|tin|tray|outside|side|surface|gristle)',
      ],
      // "The probe's dead centre" is where it should be.
      ({ line }) =>
        / dead (centre|center|on|right|in) /.test(` ${line}`)
          ? undefined
          : { intent: 'report-trouble', trouble: 'probe-doubt' },
    ),
    ...phrases(
      [
        '(it is|oven is|pan is|the kitchen is|fat is|there is|@oven is|the roast is|kitchen is|we have got|tin is|everything is|the fat is) [a lot of|lots of|all|loads of|so much|really|starting|full of|filling with|filling up with|smoking|tons of] [smoking|smoke|smoky] (smoking|smoke|smoky|like mad|everywhere|badly|a lot|a bit|in here|coming|pouring|$)',
        '(smoke alarm|smoke detector|smoke alarms|fire alarm) (is|has|went|just|keeps) [gone|going|going off|set] [off]',
        '(fat|grease|drippings|dripping|something) (is|has) [caught|burning|smoking|burnt|spitting] [on|at|in] the bottom [of the oven|$]',
        '(smoke|smoking) (is|coming|pouring) * [out of|from] [the oven]',
        '(smoked|smoking|smokes) [up|out] the [whole] (place|kitchen|house|room|flat|apartment) [out|up|$]',
        '(full of|filled with|thick with) smoke',
      ],
      (match) =>
        (/smok|fire alarm/.test(match.line) || / the bottom /.test(match.line)) &&
        !/(smoking area|stopped smoking|quit|cigarette|smoked)/.test(match.line)
          ? { intent: 'report-trouble', trouble: 'smoking' }
          : undefined,
    ),
    ...phrases(
      [
        '(fallen|fell) [down] (on|onto|to) the (floor|ground|deck)',
        '(dropped|spilled|spilt|knocked over|tipped over|dropping) [the|it|my|all] [{who:thing}] (on the floor|floor|everywhere|all over|$)',
        '(fell|has fallen|slid|is|went|ended up) (on the floor|on to the floor|off the counter)',
        '(dog|cat|puppy|hound) (ate|has eaten|got|has got|stole|has had|has stolen|had|nicked|has nicked|has pinched|is eating) [half|some of|one of|two of|the|at the|it] {who:thing}',
      ],
      (match) => {
        const who = match.words('who');
        if (/ (is|are|temperature|number|reading|oven) dropping /.test(` ${match.line}`))
          return undefined;
        if (
          /(off|kids|by|a line|in|out|heat|temperature|oven|it to)/.test(who) ||
          /^(me|us|him|her|my|his|their) /.test(who) ||
          /<[tn]\d+>/.test(match.line) ||
          (/^(it is|is) dropping $/.test(match.line) && /<[tn]\d+>/.test(match.whole))
        )
          return undefined;
        return { intent: 'report-trouble', trouble: 'dropped', ...befallen(match) };
      },
    ),
    ...phrases(
      [
        '(it is|@it is|roast is|it has|we have|i have|i|have|meat is|it came out|looks|it looks) [way|a bit|totally|completely|well|gone] (overcooked|overdone|over|too done|gone too far|dry|overshot|gone over|overcooked it|overdone it|past medium|grey all the way through|overshot it|too far|well over) ',
        '(overcooked|overdid|overshot) (it|@it)',
      ],
      (match) =>
        /(it is|it has) over $/.test(match.line) || /dry (run|wine)/.test(match.line)
          ? undefined
          : { intent: 'report-trouble', trouble: 'overcooked' },
    ),
    ...phrases(
      [
        '(it is|@it is|roast is|middle is|@middle is|inside is|looks|it looks|still|that is|is) [way|still|a bit|far|completely|stone|all|totally|quite|too] [still] (raw|undercooked|underdone|bloody|cold|too rare|too pink|bleeding raw|raw in the middle|cold in the middle|not cooked|purple|mooing|practically mooing|almost mooing|jelly)',
        '[still|practically|almost|basically|it is] (mooing|blue in the middle|purple in the middle|raw in the middle|raw inside) ',
        '(far|way|much) too (rare|pink|bloody|raw|underdone) ',
        'it is bleeding [all over|on|everywhere]',
      ],
      (match) =>
        /(weather|feet|outside|hands)/.test(match.line) ||
        !/(raw|under|bloody|cold|rare|pink|cooked|purple|mooing|jelly|blue|bleeding)/.test(
          match.line,
        ) ||
        !/^(rest|hold|carve|served|low-roast)?$/.test(match.context.stage ?? '') ||
        /(fridge)/.test(match.line)
          ? undefined
          : { intent: 'report-trouble', trouble: 'undercooked' },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has|have) [been|gone|all|getting|starting to|going|a bit|all|totally] (burnt|burned|burning|burn|scorched|blackened|black|charred|catching|caught)',
        '(burnt|burned|burning|scorched|charred) the {who:thing}',
        '(burnt|burned) {who:word} $',
      ],
      (match) => {
        const who = match
          .words('who')
          .replace(/^(i|we) (have|had) ?/, '')
          .trim();
        if (
          !meansRoast(who) &&
          !dishIn(who, match.context) &&
          !/(butter|gravy|top|bottom|sauce|outside|crust|drippings|fat|garlic|onions)/.test(who)
        )
          return undefined;
        return { intent: 'report-trouble', trouble: 'burnt', ...befallen(match) };
      },
    ),
    ...phrases(
      [
        '(left|leave) [the] oven [door] (open|ajar)',
        'oven door (was|is|has been) [left] (open|ajar|stuck)',
        '(oven door|door of the oven) (will not|does not|is not) (close|shut|closing)',
        '(left|leaving|kept|keeps|had|held|has had) (it|@oven|the door|@oven door) [standing|hanging|wide] (open|ajar)',
        '(opened|opens|has opened|had opened|opening) [the] [oven] (oven|door) [$|and] (stood|stands|stood there|left|stared|talked|$)',
      ],
      (match) => {
        const whole = ` ${match.whole}`;
        if (
          !/ (oven|door) /.test(whole) ||
          / (fridge|freezer|front|back|garage|window|dishwasher) /.test(whole)
        )
          return undefined;
        // Whoever only looks in opens it too.
        if (
          / open(ed|s|ing) /.test(` ${match.line}`) &&
          !/ (stood|stands|standing|left|stared|staring|gawking|ages|talked|chatting|again and again|keeps) | must have been <d/.test(
            whole,
          )
        )
          return undefined;
        const spans = match.whole.match(/<d\d+>/g) ?? [];
        const lasted = match.quantityOfMark(
          match.marks('d')[0] ?? (spans.length === 1 ? spans[0]! : ''),
        );
        return {
          intent: 'report-trouble',
          trouble: 'door-open',
          ...(lasted?.kind === 'duration' ? { minutes: lasted.minutes } : {}),
        };
      },
    ),
    ...phrases(
      [
        '(can not|could not) (keep track|keep on top|keep up with|get on top) ',
        '(everything is|it is all|all) happening at once',
        '(i am|we are) [totally|completely|kind of] (freaking|panicking|flipping|losing my mind|melting down) [out|here|$] ',
        '(i can not cope|i am overwhelmed|overwhelmed|it is all too much|too much going on|i am drowning|i am panicking|i am losing it|can not keep up|i am in the weeds|too many things|it is chaos|i am stressed|i am freaking out|this is too much|i am all over the place|everything is going wrong|i am in a flap|i am in a panic)',
      ],
      { intent: 'report-trouble', trouble: 'overwhelmed' },
    ),
  ],
};
