/** How many come, how many more or fewer, who has arrived. */
import type { Match, Recogniser } from '../../recogniser.ts';
import { dishIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { cutOf } from './roast.ts';

/** After "two more" stands nobody, or people; "two more pints" are none. */
const countsHeads = (match: Match): boolean =>
  /^(?:(?:more|extra|additional|extras|others|another|an|person|persons|people|guests|guest|friends|for|of them|heads|mouths|plates|coming|joining|to|are|is|have|will|than|on|who|and|at|come|turning|now|tonight|dinner|lunch|[,|])\b|$)/.test(
    match.line
      .slice(match.line.indexOf(match.groups.n!) + match.groups.n!.length)
      .replace(/^(more|extra|additional|others) /, ''),
  );

const roastForHeads =
  / (lamb|beef|pork|ribs?|roast|joint|loin|striploin|tenderloin|fillet|sirloin|topside|top side|silverside|round|leg|shoulder|meat|\|) ((for|serving|feeding|to (serve|feed)) )<n\d+> (?!minutes|hours|degrees|pounds|kilos)/;

const isBeforehand = ({ context }: Match): boolean =>
  /^(planning|prep)?$/.test(context.stage ?? '');

export const guests: Recogniser = {
  name: 'guests',
  moods: ['statement', 'intention', 'request', 'negative'],
  phrases: [
    ...phrases(
      [
        '@guests (is|are|have|has|is all|are all|have all|has all|all) [just|all|now|finally] (here|arrived|turned up|shown up|come|pulled up|through the door|got here|at the door|come in|in the house|landed|present|made it) [now|already|early|$]',
        '(they|everyone|everybody|the lot of them|people) (is|are|have|has) [just|all|now] (here|arrived|turned up|at the door|got here|come|through the door|landed|all here|all arrived|pulled up|pulling up|parking|on the doorstep) [now|already|early] $',
        '(that is|there goes|there is) (the doorbell|the door|them)',
        '(doorbell|the bell) (just|has|is) [just] (gone|rang|ringing|went)',
        '@guests [have|has] [just|all] (rang|rung|ringing) [at|on] [the] (bell|doorbell|door)',
        '(guests|the guests|everyone|everybody|they|company|my parents|the in laws) (arrived|turned up|got here|showed up|just arrived|just got here|just walked in|walked in) [just|now|early|$]',
        '(here they are|they are all here|we are all here)',
        '^ that is (everyone|everybody|all of them|the lot|the last of them) [here|in|then|now|$] ',
        '@guests (have|has) [all|now|already] reached [home|here|$] ',
        '^ (that is|there goes|there is|that was|i hear) (the bell|the door|the doorbell|the buzzer|the gate|their car|the car|a car) [now|them|$]',
        '^ (that will|that would) be (them|the guests|my parents|the in laws|mum and dad|the family|the first of them)',
        '(@guests|tribe|mob|clan|lot|everybody|the whole family|the whole tribe|whole tribe|whole gang|whole lot|the whole gang|the cousins|the neighbours|the first of them) (is|are|has|have) [just|all|now] (pulled|pulling) (up|in|into the drive|on to the drive)',
      ],
      // "half of them are here" is not everybody.
      (match) =>
        / (that is|there is) them (in|out|on) | in the (\w+ )?(drawer|oven|fridge|tin|pan|pot|sink|freezer|water|cupboard) | (not|none|nobody|first|half|some|most|few|couple|several|<n\d+>|to help|helping|hands|helper|sat|seated|sitting|bar|except|but|apart|minus) /.test(
          ` ${match.line}`,
        )
          ? undefined
          : { intent: 'report-guests', state: 'arrived' },
    ),
    ...phrases(
      [
        '[@guests|they|everyone|everybody|people|we] (is|are|is all|are all|have|has) [just|all|now|already] (sitting down|seated|sat down|at the table|sitting|sat|sat at the table|taking their seats|round the table|around the table|settled at the table|in (their|a|the) (seat|seats|chair|chairs|place|places)|at the dinner table)',
        '^ [all] (sat down|sitting down|sat at the table) [now] $',
        '^ [they|everyone|everybody|guests|the guests|the lot] all (sat|seated|sit|sitting) [down|now|at (the table|table)] $',
      ],
      (match) =>
        / (half|some|most|few|couple|several|not|nobody|were|when|will be|would be) | (at|by|around|for) <[nc]| (sitting|sat|settled) (at|on) [^ ]*<[nt]|(^| )(it|that|roast|joint|beef|meat|bird|lamb|pork) (is|has) (\w+ )?(sat|sitting|seated|sitting down) | (sat|sitting|seated) (on|in|over|under) (?!(the|their) (table|places|chairs|seats))/.test(
          ` ${match.line}`,
        )
          ? undefined
          : { intent: 'report-guests', state: 'seated' },
    ),
    ...phrases(
      [
        '(all|everyone|everybody|they|everyone is|they are) [are|is|all] [all] (here|arrived|in) [now|from|out of] [the] [rain|cold|snow|car|cars] (bar|except|but|apart from|minus|save) [for] ',
        '[have] (walked in|come in|arrived|turned up|pulled up|got here|landed) [,|and] (that is|makes|that makes|so that is) {n:number} (of|out of) [the|our] {m:number} ',
        '(first|first lot|first few|first car|first carload|first of them|advance party|early birds|some) [of them|of the guests] (is|are|has|have) [just] (here|arrived|pulled up|walked in|turned up|come|landed|got here)',
        '^ {who:thing} (have|has) [already|now] (reached|arrived|come) , [but] [the] (others|other ones|rest) ',
        '(half|some|most|a few|a couple|several) [of] [the] (crowd|guests|party|gang|lot|family|people|them) (is|are|has|have) (in|at|on|already|inside) ',
        '(half|some|most|a few|a couple|several) [of] [them|guests|the guests|our guests|the family|us|people] (is|are|have|has) [just|now|already] (here|arrived|turned up|come|got here|seated|sitting|sat|in|at the table)',
        '{n:number} (from|out of|on|over) [the] {m:number} [people|persons|guests] (is|are|have|has) [just|now|already] (here|arrived|turned up|come|got here|there)',
        '(the first|first ones|first guests|first few|first people|first lot) (is|are|have|has|arrived|came|come|turned up|are coming) [just|now|already] [here|arrived|turned up|come|in] [,|but|$]',
        '{n:number} of [the] {m:number} (is|are|have|has) [just|now|already] (here|arrived|turned up|come|got here|shown up|showed up|at the door)',
        '{n:number} [of] [them|the guests|guests|people|of them] (is|are|have|has) [just|now|already] (here|arrived|turned up|come|got here|at the door)',
        '^ {who:thing} (have|has) reached [home|here|the house|now|already|safely] $',
        '(dad|mum|gran|{who:word}) (is|has) [just|already] (here|arrived|turned up) [,|but] (the others|the rest) (are not|have not)',
      ],
      (match) => {
        const count = match.has('n') ? match.count('n') : undefined;
        // "first ones are here, two of them just walked in": how many is told after.
        if (!match.has('n') && match.line.startsWith('first ') && match.marks('n').length > 0)
          return undefined;
        // "not one of them's here".
        if (match.has('n') && ` ${match.line}`.includes(` not ${match.groups.n!}`))
          return undefined;
        return {
          intent: 'report-guests',
          state: 'partly-arrived',
          ...(count === undefined ? {} : { count }),
        };
      },
    ),
    ...phrases(
      [
        '(room|space|places|seats|a place|seat|place) for {n:number} (more|extra|others) ',
        '^ plus {n:number} (for|from) {who:word} $',
        '{n:number} (more|extra|additional|extras) [people|guests|friends|for dinner|of them|heads|mouths|plates|$] [is|are|will be] [coming|joining|turning up|on the way|for dinner|$]',
        '(another|an extra|an additional|plus|add|and another|there is another|there are another|we have another|we have got another) {n:number} [people|guests|for dinner|friends|more|coming|to the table|$] [is|are|coming|joining|$]',
        '{n:number} (extra|more|others|friends|people) (are|is|have) (coming|joining|joining us|invited|turning up)',
        '(bringing|invited|have invited|brought) {n:number} [more|extra|friends|people|others]',
      ],
      (match) => {
        const change = match.count('n');
        if (
          change === undefined ||
          / of (those|these|that|my) |(pints|beers|drinks|glasses|slices|bottles|times|of the) /.test(
            match.line,
          ) ||
          !countsHeads(match) ||
          / (minutes|hours|degrees|pounds|bones?|potatoes|kilos|option) /.test(` ${match.line}`)
        )
          return undefined;
        return { intent: 'set-guests', change };
      },
    ),
    ...phrases(
      [
        '(one more|an extra one|an extra person|an extra guest|one extra|another person|another guest|another one|someone else) [is|are] [coming|joining [us]|for dinner|person|guest]',
        '(bringing|brings|is bringing|invited|have invited) (a guest|someone|[a|her|his|their|my|the] [new] (friend|date|plus one|boyfriend|girlfriend|missus|wife|husband|partner|mate|other half|fella|bloke|sister|brother|son|daughter))',
        'plus one (for|from|then|now|please|on) ',
        'plus one $',
        '^ {who:thing} (is|are|can|will be|has decided to|is going to) (coming after all|make it after all|come after all|make it now|joining us after all|joining after all|in after all|free after all|be here after all|be coming|able to make it|able to come) [now|tonight|today|$]',
        '{who:thing} (said|says) (yes|yes after all) [to dinner|$] $',
      ],
      (match) =>
        /minutes|hour/.test(match.line) ||
        /^(it|that|this|we|they|i|you|everyone|everybody|guests|the guests|all|dinner)\b/.test(
          match.words('who'),
        )
          ? undefined
          : {
              intent: 'set-guests',
              change: /^(<n\d+>|.* and |parents|in laws|twins)/.test(match.words('who')) ? 2 : 1,
            },
    ),
    ...phrases(
      [
        '(a couple more|another couple|a couple extra|a couple of extra) [people|guests|are|is|of|coming|joining|for dinner]',
      ],
      { intent: 'set-guests', change: 2 },
    ),
    ...phrases(
      [
        '{n:number} (fewer|less|down) [people|guests|of us|for dinner|$]',
        '^ [we are|that is|it is|so|now] [down|short|minus|less] {n:number} (short|down|fewer|less|guests down) $',
        '^ [so] (take|knock|scratch) {n:number} off $',
        '^ [so] (scratch|lose|subtract|minus|take away) {n:number} $',
        '{n:number} [of them|of the guests|people|guests|of us] (has|have|is|are) [just] (cried off|dropped out|bailed|called off|bowed out|pulled out|cancelled on us|fallen ill|got flu|got covid)',
        '(have got|got) {n:number} (cried off|down with flu|off sick|dropping out)',
        '^ [so] (we are|that is|table is|numbers are) (down|minus|short|short of) {n:number} [people|guests|persons|now] $',
        '(we lost|have lost|lost) {n:number} [of them|people|guests|of us|$]',
        '(take|knock|cross|strike|cut|scratch|subtract|remove) [off] {n:number} (people|guest|guests|person|heads|places|place) [off|from] [the|our|my] [numbers|number|list|table|count|headcount|guest list|places|$]',
        '(take|knock|cross|strike|cut|scratch|subtract|remove) [off] {n:number} (off|from) (the|our|my) (numbers|number|list|table|count|headcount|guest list|places)',
        '{n:number} [of them|of the guests|people|guests|of us] (can not|could not|are not|is not|will not|have) (make it|coming|come|be coming|be able to make it|be here|cancelled|dropped out|pulled out|joining [us])',
        '(minus|lose|take off|drop) {n:number} [people|guests]',
        '(take|knock|scratch|strike) {n:number} (off|out)',
        '(we are|now|that is|we have) (down|short|lost) {n:number} $',
        '(we are) {n:number} (down|short|light) [now|$]',
        '{n:number} [people|guests|of them|of us|friends] (dropped out|have dropped out|cancelled|canceled|have cancelled|pulled out|have pulled out)',
      ],
      (match) => {
        const count = match.count('n');
        return count === undefined ||
          count === 0 ||
          count > 20 ||
          / (shows|reads|showing|reading|thermometer|minutes|pounds|degrees|cards?|nil|points?|goals?|option|step|temperature|oven|potatoes|bones?|hours?|weight|dollars|quid|money|wickets?|games?|match|keys?) /.test(
            ` ${match.line}`,
          )
          ? undefined
          : { intent: 'set-guests', change: -count };
      },
    ),
    ...phrases(
      [
        '(one fewer|one less|one down|one of them can not make it|one of them is not coming|one person less|one less person)',
        '{who:thing} (can not|could not|is not|will not be|is not going to|will not) (make it|coming|come|be coming|joining us|come tonight|be here|be joining us|make it now|now coming|making it) [tonight|today|after all|any more|anymore|now|$]',
        '(have lost|lost|are losing|are without|are down) [my|our|his|her] (@person) $',
        '{who:thing} (has|have|is|are) [just] (cried off|crying off|called off|bowed out|got flu|got covid|down with (flu|covid|a bug|a cold)|sent apologies|sends apologies) ',
        '{who:thing} (has cancelled|have cancelled|cancelled|has dropped out|have dropped out|dropped out|has pulled out|have pulled out|is ill and not coming|bailed|has bailed|have bailed|is bailed|is dropping out|is cancelling|bailed on us) $',
      ],
      (match) => {
        const who = match.words('who').replace(/ (is|are|has|have|just|both|all)$/, '');
        // "Rob won't be here till eight" comes all the same.
        if (/ (till|before|for) (a |another |about )?<[cnd]/.test(match.line)) return undefined;
        if (/(have lost|lost|are losing|are without|are down) /.test(match.line) && who === '') {
          const kin = /(?:my|our|his|her)? ?(\w+) $/.exec(match.line)?.[1];
          return kin === undefined ? undefined : { intent: 'set-guests', change: -1, who: kin };
        }
        if (
          /^(i|it|we|you|they|that|he|she|have|has|had|is|are|was|were)$/.test(who) ||
          dishIn(who, match.context)
        )
          return undefined;
        if (
          /^is$|(timer|alarm|order|flight|train|bus|plane|taxi|match|game|party|plan|show|trip|sub|membership)/.test(
            who,
          )
        )
          return undefined;
        const counted = /^(?:<n\d+> )/.exec(match.groups.who ?? '') && match.marks('n')[0];
        const heads = counted ? match.withGroups({ n: `${counted} ` }).count('n') : undefined;
        if (heads !== undefined && heads > 0) return { intent: 'set-guests', change: -heads };
        const name = who.replace(/^(my|our|the|and|but) /, '');
        const pair = /^(parents|grandparents|in laws|twins|couple|mum and dad|\w+ and \w+)$/.test(
          name,
        );
        return { intent: 'set-guests', change: pair ? -2 : -1, ...(name ? { who: name } : {}) };
      },
    ),
    ...phrases(
      [
        '{n:number} [grown|big] (adult|adults|grown ups|grown up|grownups|big ones|big people|old ones|women|men) [and|,|plus|, and|with] {m:number} [small|little|young|wee|tiny] (kids|kid|child|childs|children|babies|baby|little ones|littlies|littluns|toddlers|babies|teenagers|teens|bairns|weans|tots|nippers|kiddies|kiddos|young ones|small ones|wee ones|youngsters|rugrats)',
        '{n:number} [small|little|young|wee|tiny] (kids|kid|child|childs|children|little ones|littlies|toddlers|bairns|weans|kiddies) [and|,|plus|, and|with] {m:number} [grown|big] (adult|adults|grown ups|grownups|big ones|of us)',
      ],
      (match) => ({ intent: 'set-guests', count: match.number('n') + match.number('m') }),
    ),
    // "Leg of lamb for eight": heads, where the roast itself is told.
    ...phrases(
      ['(for|serving|feeding|to serve|to feed) {n:number} [people|of us|guests|adults|persons] '],
      (match) =>
        isBeforehand(match) &&
        cutOf(match.line, match.context) !== undefined &&
        roastForHeads.test(` ${match.line}`)
          ? { intent: 'set-guests', count: match.number('n') }
          : undefined,
    ),
    // "For eight, we're doing a leg of lamb".
    ...phrases(['^ [it is] for {n:number} [tonight|today|$] $'], (match) =>
      isBeforehand(match) &&
      match.context.expecting === undefined &&
      cutOf(match.whole, match.context) !== undefined
        ? { intent: 'set-guests', count: match.number('n') }
        : undefined,
    ),
    ...phrases(
      [
        '(there will be|there is going to be|there are going to be|there are|we are|we will be|it is|it will be|it is for|there is|we have|we have got|i have|i have got|now there are|that makes|that is|makes|make it|we are going to be|having|expecting|we are expecting|i am expecting|serving|feeding|cooking for|it is just|i am cooking for|i am feeding|we are feeding|dinner is for|the table is for|laying for|catering for|table for|party of|a party of|group of|down to|up to|now|count on|call it) [now|only|all|about] {n:number} [hungry] (of us|people|guests|persons|heads|adults|at the table|for dinner|for lunch|for supper|for tea|for christmas|for christmas (dinner|lunch)|for sunday (dinner|lunch)|for the day|to dinner|coming|coming for dinner|eating|mouths|mouths to feed|diners|round the table|tonight|coming to dinner|$) ',
        '(dinner|supper|lunch|roast|meal|food|tea|it|cooking|table|party|served|serve) for {n:number} [people|of us|guests|adults|persons|$] ',
        'for {n:number} [hungry] (people|of us|guests|adults|persons|heads|mouths|diners)',
        '{n:number} (of us|people|guests|diners|heads|adults|persons|mouths to feed|at the table|for dinner|eating|coming)',
        '(feeds|feed|feeding|serves|serve|serving) {n:number} [people|of us|guests|adults|persons] ',
        '(cooking for|party of|table of|group of) {n:number}',
      ],
      (match) => {
        // "my parents, the four of us and aunt Jo, so seven": the sum that was said.
        const total = / (?:so|makes|altogether|total) (<n\d+>) $/.exec(match.whole)?.[1];
        const sum = total && match.withGroups({ n: `${total} ` }).count('n');
        const count = sum === undefined || sum === '' ? match.count('n') : sum;
        const said = match.groups.n!;
        const after = match.line.slice(match.line.indexOf(said) + said.length);
        if (
          count === undefined ||
          count < 1 ||
          count > 80 ||
          /^(minutes|hours|degrees|pounds|bones?|ribs?|percent|pm|oclock|to|at (?!<)|or|and a|%|°|hundred|thousand)/.test(
            after,
          )
        )
          return undefined;
        if (
          / on the table for | (high|low|highs|lows) (of|today|tomorrow|tonight|around) /.test(
            ` ${match.line}`,
          ) ||
          / (still are|still is|still coming|are still) /.test(` ${match.line}`) ||
          (/^<n\d+> (children|kids) $/.test(match.line) &&
            match.before.some((one) => one.intent === 'note-guest')) ||
          (/ (it is|that is|call it|make it|now|up to|down to) <n\d+> $/.test(` ${match.line}`) &&
            match.context.expecting !== 'guests')
        )
          return undefined;
        return { intent: 'set-guests', count };
      },
    ),
    ...phrases(
      [
        '{n:number} (friends|mates|workmates|colleagues|pals|cousins|neighbours) [of] [my|our|his|her|the] [{w:word}] (is|are) [also|both|all] (coming|joining|joining us) [too|as well|$]',
      ],
      (match) => {
        const change = match.count('n');
        return change === undefined || change > 12 ? undefined : { intent: 'set-guests', change };
      },
    ),
    // "dinner at seven for six": once the hour is taken, the number left over is of heads.
    ...phrases(
      [
        '^ [and|it is|that is|tonight|this evening|today] for {n:number} [people|of us|guests] [tonight|this evening|today] $',
        '^ for {n:number}',
        '^ {n:number} for $',
      ],
      (match) => {
        const count = match.count('n');
        const hourHeard = match.before.some(
          (one) => one.intent === 'set-serving-time' || one.intent === 'describe-roast',
        );
        return count === undefined ||
          count < 1 ||
          !(hourHeard || match.context.expecting === 'guests')
          ? undefined
          : { intent: 'set-guests', count };
      },
    ),
    // "Beto's ill so minus one".
    ...phrases(
      '^ [so|that is|makes|that makes|makes it] {n:number} [then|now|for dinner|$] $',
      (match) => {
        const change = match.number('n');
        return Number.isInteger(change) &&
          change < 0 &&
          change > -10 &&
          match.context.expecting !== 'reading'
          ? { intent: 'set-guests', change }
          : undefined;
      },
    ),
    // "my parents, us and aunt Jo so seven": the sum.
    ...phrases(
      [
        '(so|makes|altogether|total|headcount|head count|that is|call it|make it) {n:number} [altogether|in all|all told|in total|then] $',
        '^ {n:number} [of us|people] [altogether|in all|all told|in total|all in|then] $',
      ],
      (match) => {
        const count = match.count('n');
        // A number alone, or one that something is called, is their sum only where a "so" led to it.
        if (
          /^(call it |make it )?<n/.test(match.line) &&
          !(
            match.before.some((one) => one.intent === 'set-guests') &&
            new RegExp(` so (call it |make it )?${match.groups.n!}`).test(match.whole)
          )
        )
          return undefined;
        const people =
          / (parents|mum|dad|aunt|auntie|uncle|wife|husband|kids|us|me|guests|people|headcount|head|final|total|altogether|sister|brother|gran|grandma|grandad) /;
        return count !== undefined &&
          count > 0 &&
          count < 80 &&
          (match.context.expecting === 'guests' ||
            people.test(` ${match.whole}`) ||
            match.before.some((one) => one.intent === 'set-guests')) &&
          !/ (minutes|degrees|reads|oven) /.test(` ${match.whole}`)
          ? { intent: 'set-guests', count }
          : undefined;
      },
    ),
    // "Pauline's lot are here, that's four of them".
    ...phrases(
      '^ [so|all|there are|that is|that makes|makes] {n:number} of them [so far|now|already|in all] $',
      (match) => {
        const came = match.before.some((one) => one.intent === 'report-guests');
        const count = match.count('n');
        if (!came || count === undefined) return undefined;
        return /^all /.test(match.line) || /, all <n/.test(match.whole)
          ? { intent: 'report-guests', state: 'arrived' }
          : { intent: 'report-guests', state: 'partly-arrived', count };
      },
    ),
    ...phrases(['(just the two of us|the two of us|both of us)'], {
      intent: 'set-guests',
      count: 2,
    }),
  ],
};
