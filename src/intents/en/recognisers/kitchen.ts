/** The kitchen around the roast: what is lacking, how it is set up, who helps, trouble, timers. */

import type { Recogniser } from '../../recogniser.ts';
import { dishIn, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const any = ['statement', 'negative', 'intention', 'request'] as const;

export const trouble: Recogniser = {
  name: 'trouble',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        '(power|electricity|lights|electric|the mains) (is|has|have|are) (back|back on|come back|come back on|on again|been restored)',
        '(power|electricity) (came back|is back)',
      ],
      { intent: 'report-trouble', trouble: 'power-back' },
    ),
    ...phrases(
      [
        '(power|electricity|electric|lights|the mains) (went|has gone|just went|have gone|is gone|cut|failed|just cut|have all gone) [gone|out|off|down|cut|been cut|out again|failed]',
        '(power|electricity|electric|lights|the mains) (is|has|has been|are|have) (gone|out|off|down|cut|been cut|out again|failed)',
        '(power cut|blackout|power outage|fuse has blown|fuse blew|blown a fuse|tripped the breaker|breaker tripped|breaker has tripped|trip switch|no power|no electricity|we have lost power|lost power|lost the power)',
      ],
      (match) => {
        const lasted = match.quantityOfMark(/for (<d\d+>)/.exec(match.line)?.[1] ?? '');
        return {
          intent: 'report-trouble',
          trouble: 'power-out',
          ...(lasted?.kind === 'duration' ? { minutes: lasted.minutes } : {}),
        };
      },
    ),
    ...phrases(
      [
        '@oven is (back|back on|working again|working|fixed|going again|alive again)',
        'got @oven (working|going|back) again',
      ],
      { intent: 'report-trouble', trouble: 'oven-back' },
    ),
    ...phrases(
      [
        '@oven (has|is|just|will not|would not|does not|did not|can not) [just|not] (died|broken|dead|gone|gone out|gone off|conked out|packed up|stopped|stopped working|broke|light|turn on|working|not working|come on|heat|heat up|heating|heating up|cut out|failed|tripped|gone cold|out|switched itself off|given up|start|stay lit|on the blink|bust|lit)',
        '(gas|pilot|pilot light|element|gas bottle) (has|is|just|went|ran) [just] (gone|out|run out|gone out|died|blown|went out)',
      ],
      { intent: 'report-trouble', trouble: 'oven-out' },
    ),
    ...phrases(
      [
        '(do not|not sure i|does not) (trust|believe) (that|it|the|this) [probe|thermometer|reading|number]',
        '(probe|thermometer) (is|has|must be|might be|seems|battery|batteries|keeps|looks) (gone|playing up|broken|dead|off|wrong|acting up|on the blink|packed up|faulty|died|jumping|all over|slipped|come out|fallen|rubbish|jumping around|out|wonky|stuck|flat)',
        '(that|reading|the reading|this) (can not be|is not|does not seem|does not look|could not be|seems) (right|wrong|off|accurate|correct)',
        '(probe|thermometer) (slipped|fell out|came out|popped out|broke|died|is not working|touching the bone|is touching bone)',
        '(probe|thermometer) might be (wrong|off|touching the bone)',
      ],
      { intent: 'report-trouble', trouble: 'probe-doubt' },
    ),
    ...phrases(
      [
        '(it is|oven is|pan is|the kitchen is|fat is|there is|@oven is|the roast is|kitchen is|we have got|tin is|everything is|the fat is) [a lot of|lots of|all|loads of|so much|really|starting|full of|filling with|filling up with|smoking|tons of] [smoking|smoke|smoky] (smoking|smoke|smoky|like mad|everywhere|badly|a lot|a bit|in here|coming|pouring|$)',
        '(smoke alarm|smoke detector) (is|has|went|just) [gone|going] [off]',
        '(smoke|smoking) (is|coming|pouring) * [out of|from] [the oven]',
      ],
      (match) =>
        /smok/.test(match.line) &&
        !/(smoking area|stopped smoking|quit|cigarette|smoked)/.test(match.line)
          ? { intent: 'report-trouble', trouble: 'smoking' }
          : undefined,
    ),
    ...phrases(
      [
        '(dropped|spilled|spilt|knocked over|tipped over|dropping) [the|it|my|all] [{who:thing}] (on the floor|floor|everywhere|all over|$)',
        '(fell|has fallen|slid|is|went|ended up) (on the floor|on to the floor|off the counter)',
        '(dog|cat) (ate|has eaten|got|has got|stole) [the|at the|it] {who:thing}',
      ],
      (match) => {
        const who = match.words('who');
        if (
          /(off|kids|by|a line|in|out|heat|temperature|oven|it to)/.test(who) ||
          /<[tn]\d+>/.test(match.line)
        )
          return undefined;
        return { intent: 'report-trouble', trouble: 'dropped' };
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
        '(it is|@it is|roast is|middle is|@middle is|inside is|looks|it looks|still|that is|is) [way|still|a bit|far|completely|stone|all|totally|quite|too] [still] (raw|undercooked|underdone|bloody|cold|too rare|too pink|bleeding raw|raw in the middle|cold in the middle|not cooked)',
      ],
      (match) =>
        /(weather|feet|outside|hands)/.test(match.line) ||
        !/(raw|under|bloody|cold|rare|pink|cooked)/.test(match.line) ||
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
        return { intent: 'report-trouble', trouble: 'burnt' };
      },
    ),
    ...phrases(
      [
        '(left|leave) [the] oven [door] (open|ajar)',
        'oven door (was|is|has been) [left] (open|ajar|stuck)',
        '(oven door|door of the oven) (will not|does not|is not) (close|shut|closing)',
      ],
      (match) => ({
        intent: 'report-trouble',
        trouble: 'door-open',
        ...(match.line.includes('<d') ? {} : {}),
      }),
    ),
    ...phrases(
      [
        '(i can not cope|i am overwhelmed|overwhelmed|it is all too much|too much going on|i am drowning|i am panicking|i am losing it|can not keep up|i am in the weeds|too many things|it is chaos|i am stressed|i am freaking out|this is too much|i am all over the place|everything is going wrong|i am in a flap|i am in a panic)',
      ],
      { intent: 'report-trouble', trouble: 'overwhelmed' },
    ),
  ],
};

export const lack: Recogniser = {
  name: 'lack',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        '(there is|there are|we have|i have|have|we have got|i have got|got|we are|i am|has got|we do|i do) (no|not any|run out of|not got any|not got a|not got an|not have a|not have any|not have an|not own a|not have the|not got|out of|all out of|not have|completely out of|clean out of|without|not own any|lost the|broken the|lost my|broken my|fresh out of|not a|not own|not got the|missing a|short of|short on|not have enough|not enough) {thing:thing} [in this kitchen|in the house|here|left|at all|to hand|for this|in the kitchen|anywhere|either|at home|$] $',
        '(ran out of|run out of|no|can not find the|can not find my|can not find any|can not find a|could not find any|could not get any|could not get|forgot to buy|forgot to get|forgot the|forgot to buy any|missing|could not find) [any|a|the|my|some] {thing:thing} [in this kitchen|in the house|here|left|at all|to hand|in the kitchen|at the shop|at the shops|$] $',
        'the {thing:thing} is (broken|bust|missing|knackered|in the wash|lost|kaput) $',
        '(my|our) {thing:thing} (is|has) (broken|bust|missing|died|packed up|kaput) $',
      ],
      (match) => {
        const thing = match.words('thing').replace(/^(a|an|any|the|some|much|more) /, '');
        if (
          thing === '' ||
          (/^no /.test(match.line) && dishIn(thing, match.context) !== undefined) ||
          /^(time|idea|need|way|problem|one|rush|hurry|worries|doubt|reason|clue|more|thanks|chance|change|power|electricity|sear|fan|pink|good|it|that|hope|words|question|bones?|guests|luck|fun|space|room|energy|patience|here|fridge|the oven|oven|here|town|bed|luck|control|oven on|stress|breath|point|money|friends|fuss)\b/.test(
            thing,
          ) ||
          /^(of|for|to|at|in|on) /.test(thing) ||
          / (in|out|on|off|up|down|done|yet|ready|made|cooked|started|finished|tied|salted)$/.test(
            ` ${thing}`,
          )
        )
          return undefined;
        if (/(fridge|oven|way|touch|date|hand)$/.test(thing) && /out of/.test(match.line))
          return undefined;
        return { intent: 'lack', thing };
      },
    ),
  ],
};

export const setup: Recogniser = {
  name: 'setup',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        '[@it|the roast|it] [is|i have|have|i am|we have|using|sitting|put] [in|on|using|put it] [in|on|using] [a|an|the|my] [big|deep|heavy|shallow|large] (cast iron pan|cast iron|cast iron skillet|skillet|roasting tin|roasting pan|roasting tray|sheet pan|baking tray|half sheet|dutch oven|baking sheet|casserole|tray|tin|pan|roaster|glass dish|oven dish) $',
      ],
      (match) => {
        const pan =
          /(cast iron pan|cast iron skillet|cast iron|skillet|roasting tin|roasting pan|roasting tray|sheet pan|baking tray|half sheet|dutch oven|baking sheet|casserole|glass dish|oven dish|tray|tin|roaster|pan)/.exec(
            match.line,
          )?.[1];
        return pan && /(it|roast|using|in|on|have) /.test(match.line)
          ? { intent: 'report-setup', pan }
          : undefined;
      },
    ),
    ...phrases(['(no rack|without a rack|not on a rack|no wire rack)'], {
      intent: 'report-setup',
      rack: false,
    }),
    ...phrases(
      ['(on|using|have got|have|with|got|over) [it on] (a|the|my) [wire|roasting|cooling|v] rack'],
      { intent: 'report-setup', rack: true },
    ),
    ...phrases(
      [
        '(no fan|not fan|without [the|a] fan|conventional oven|conventional|not a fan oven|static oven|not convection|no convection|fan is off|fan off|gas oven without fan)',
      ],
      { intent: 'report-setup', fan: false },
    ),
    ...phrases(
      [
        '(fan oven|fan assisted|convection oven|convection|it is fan|fan forced|fan on|it is a fan|my oven is fan|with fan|with the fan)',
      ],
      { intent: 'report-setup', fan: true },
    ),
    ...phrases(['(no tent|no foil|not tented|not covered|uncovered|without foil|not tenting)'], {
      intent: 'report-setup',
      tent: false,
    }),
    ...phrases(
      ['(with foil over|tenting it|loose foil|foil tent|foil on top|foil over it|a tent of foil)'],
      { intent: 'report-setup', tent: true },
    ),
    ...phrases(['(no probe|without a probe|not got a probe|not using a probe)'], {
      intent: 'report-setup',
      probe: false,
    }),
    ...phrases(
      [
        '(probe is in|probe in|leave in probe|leave in thermometer|using a probe|probe is in the (roast|middle|thickest part)|have got a probe|have a probe|put the probe in|stuck the probe in|wireless probe|i have the probe in|got a probe)',
      ],
      { intent: 'report-setup', probe: true },
    ),
    ...phrases(
      [
        '[on|it is on|using] [the] (middle|top|bottom|lower|upper|lowest|centre|center|second) (shelf|rack|rung|runner)',
      ],
      (match) => {
        const shelf =
          /(middle|top|bottom|lower|upper|lowest|centre|center|second) (?:shelf|rack|rung|runner)/.exec(
            match.line,
          )?.[1];
        return shelf ? { intent: 'report-setup', shelf } : undefined;
      },
    ),
    ...phrases(
      [
        '[it is|using|i am using|we are using|cooking|roasting|in|it] (in|using|use) (the|my) (top|bottom|upper|lower|left|right|small|big|main|second) oven',
      ],
      (match) => {
        const which = /(top|bottom|upper|lower|left|right|small|big|main|second) oven/.exec(
          match.line,
        )?.[1];
        return which ? { intent: 'report-setup', oven: which } : undefined;
      },
    ),
  ],
};

export const hands: Recogniser = {
  name: 'hands',
  moods: any,
  phrases: [
    ...phrases(
      [
        '[my|our] {who:word} (is|will be|are) [on|doing|helping|helping me|helping out|helping with|going to help|here to help|making|peeling|taking care of|in charge of|handling|peeling|giving me a hand|lending a hand|looking after|sorting] (on|doing|helping|help|making|peeling|me|with|of|handling|sorting|out|after|$) [me|with] [the] [{rest:rest}]',
        '{who:word} (can|will|is going to|wants to) (help|give me a hand|lend a hand|pitch in|do the|take the|handle the|make the)',
        '(i have got|i have|we have|we have got|got|there is|there are) [a|an|some|two|another|extra|an extra|a pair of|two pairs of|an extra pair of|two of us] (help|helper|hands|sous chef|pair of hands|volunteer|extra hands|helping hands|of us cooking)',
        '(my|our) {who:thing} (is|are|will be|can|will) [here to|going to] (helping|help|giving me a hand|lend a hand|give me a hand|on {thing:word})',
      ],
      (match) => {
        const who = match.words('who');
        const line = match.line;
        if (
          /^(it|that|this|what|he|she|they|i|we|you|dinner|roast|oven|everyone|everybody|there|potatoes|beans|everything|beef|meat|who|which|guests|fan)$/.test(
            who,
          )
        )
          return undefined;
        const task =
          / (?:on|doing|making|peeling|handling|after|of|sorting|do|take|handle|make) (?:the )?([a-z ]+) $/.exec(
            line,
          )?.[1];
        const helps = /(help|hand|volunteer|sous chef|of us cooking|pitch in)/.test(line);
        if (
          !helps &&
          !(
            task &&
            (dishIn(task, match.context) ||
              stepIn(task, match.context) ||
              /^(veg|vegetables|gravy|sides|spuds|washing up|sauce|dishes|carving|puddings)$/.test(
                task,
              ))
          )
        )
          return undefined;
        if (/(i need|need some|no help|can you help|not help)/.test(line)) return undefined;
        return { intent: 'add-hands', ...(who ? { who: who.replace(/^(my|our) /, '') } : {}) };
      },
    ),
    ...phrases(
      [
        '(i am|i have to be|i will be|i need to be|going to be|we are|i have) [going|popping|heading|off|stepping|nipping|out|away|gone|just|running|ducking|got to go|busy|leaving] [out|away|off|upstairs|outside|to the (shop|shops|store|garden)|from the kitchen|next door|of the kitchen|of the house|shopping] (for|about|,|back in|gone) [about|be back in|another] {d:minutes}',
        '(popping|nipping|heading|stepping|going|off|leaving|running|ducking|out|away|gone|i will leave the kitchen|need to go|got to go|have to go|must go|need to step|need to pop|have to step|have to pop) [out|away|off|down|upstairs|next door|to the (shop|shops|store)|the kitchen] * [for|,|back in|be back in] {d:duration}',
        '[i will|i am|will] [be] back in [about] {d:minutes}',
        '(be|gone|away|out) for {d:duration} $',
      ],
      (match) => {
        const minutes = match.minutes('d');
        if (
          /(it|potatoes|roast|they|oven|guests|power|that) (is|are|has|have|was)/.test(
            match.line,
          ) ||
          /(went|put|came|resting)/.test(match.line)
        )
          return undefined;
        return Number.isFinite(minutes) ? { intent: 'cook-away', minutes } : undefined;
      },
    ),
    ...phrases(
      [
        '^ (i am|i will be|i have got to|i have to|i need to|need to|have to|must) (popping out|stepping out|heading out|going out|off to the shop|off to the shops|leaving the kitchen|pop out|step out|nip out|go out|leave the kitchen|step away|stepping away|pop to the shop|pop to the shops|nip to the shop|walk the dog|popping to the shop|popping to the shops|nipping out|away|out)',
      ],
      { intent: 'cook-away' },
    ),
  ],
};

export const behind: Recogniser = {
  name: 'behind',
  moods: ['statement', 'intention'],
  phrases: [
    ...phrases(
      [
        '(i am|we are|i have got|^ running|i have fallen|i|we have fallen|i am running|we are running) [about|running|now|a good] {minutes} (behind|late|slow|down|behind schedule)',
        '(i am|we are|^ running|i have fallen|we have fallen|we are running) [running] (behind|late|behind schedule|slow) [schedule] (by|about) {minutes}',
        '^ {minutes} behind $',
        '(lost|it took me an extra|took an extra) {minutes} ',
      ],
      (match) => {
        const minutes = match.minutes('minutes');
        return Number.isFinite(minutes) ? { intent: 'running-behind', minutes } : undefined;
      },
    ),
    ...phrases(
      [
        '(i am|we are|i have fallen|we have fallen|i am getting|things are|everything is) [running|a bit|falling|getting|way|so|very|well|a little|all|really] [running|a bit|a little|so|way] (behind|late|behind schedule|slow|off schedule)',
        '^ running [a bit|a little|very|so] (late|behind) ',
      ],
      (match) =>
        /(they|guests|people)/.test(match.line) ? undefined : { intent: 'running-behind' },
    ),
  ],
};

export const timers: Recogniser = {
  name: 'timers',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        '(cancel|stop|kill|delete|clear|turn off|switch off|remove|scrap|forget|drop|end|lose|get rid of|do not need) [the|that|my] [{m:duration}] [{label:thing}] (timer|alarm|timers|reminder)',
        '(timer|alarm) off $',
      ],
      (match) => {
        const label = match.words('label').replace(/^(for )?(the )?/, '');
        const minutes = match.has('m') ? match.minutes('m') : undefined;
        return {
          intent: 'cancel-timer',
          ...(label ? { label } : {}),
          ...(minutes === undefined ? {} : { minutes }),
        };
      },
    ),
    ...phrases(
      [
        '[set|start|give me|put on|can i have|make|i need|need|put|run|add] [a|an|another|the|me a] [{label:word}] (timer|alarm|countdown|reminder) [on] [for|of|to|at|in|,] [the {l2:thing} for] {minutes} [for [the] {l3:thing} $]',
        '(set|start|give me|i need|need|put|a|an) [a|an|me a] {minutes} [long] [{label:word}] (timer|alarm|reminder|countdown) [for [the] {l3:thing} $]',
        '(remind me|give me a @alarm|give us a @alarm|shout|tell me|let me know|call me|nudge me|wake me|ping me|poke me|holler|buzz me|shout at me|yell) [again] (in|after) [another] {minutes} [(to|about|for|when) [the] {l3:thing} $]',
        '(in|after) {minutes:duration} (remind me|tell me|give me a @alarm|shout|let me know|nudge me|call me) [(to|about|for|that) [the] {l3:thing} $]',
        '(remind me|tell me|nudge me) (to|about|of) [the] {l3:thing} in {minutes:duration}',
        '(time|count|count down) [me] {minutes:duration}',
        '{minutes} timer [for [the] {l3:thing} $]',
        '^ {minutes:duration} (for|on) (the|those|these|my) {l3:thing} $',
      ],
      (match) => {
        const minutes = match.minutes('minutes');
        const label = (match.words('l3') || match.words('label') || match.words('l2')).replace(
          /^(the|a) /,
          '',
        );
        if (!Number.isFinite(minutes) || minutes <= 0 || /(behind|late)/.test(match.line))
          return undefined;
        return {
          intent: 'set-timer',
          minutes,
          ...(label && !/^(for|on|of|a)$/.test(label) ? { label } : {}),
        };
      },
    ),
  ],
};
