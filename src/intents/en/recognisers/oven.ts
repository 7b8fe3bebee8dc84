/** The oven: what it stands at, what it was turned to, on, off, hot, how far its dial is out. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';
import { looksLikeOven, oven, whichOven } from './temperatures.ts';

export const ovenTalk: Recogniser = {
  name: 'oven',
  moods: ['statement', 'request'],
  phrases: [
    ...phrases(
      [
        '[@oven|it|mine] [always|tends to] (runs|run|is running|running) [about|a bit] {n:any} [degrees] (hot|hotter|over|high|too hot|warm|above|cold|cool|cooler|under|low|slow|below)',
        '[@oven] (is|it is) (off by|out by) [plus] {n:any} [degrees]',
        '@oven is [off by|out by|about] {n:any} [degrees] (hot|hotter|over|too hot|cold|cool|cooler|under|too cold|hotter than it says|above|below|out|high|low)',
        '[@oven|mine|she|it] [always|tends to] (runs|run|running) [a bit|a little|a touch] (hot|cold|cool|high|low|over|under) [,] [by|about|maybe|say|,] {n:any}',
        '[@oven|it] (reads|is out by|is off by|out by|off by) {n:any} [degrees] [,] (low|high|hot|cold|over|under)',
      ],
      (match) => {
        const bias = match.number('n');
        return Number.isFinite(bias) && bias < 100
          ? {
              intent: 'report-oven',
              bias: /(cold|cool|under|low|slow|below)/.test(match.line) ? -bias : bias,
            }
          : undefined;
      },
    ),
    ...phrases(
      [
        '[@oven|it] [is|always|runs|reads] [always|about] {n:any} [degrees] (shy|short|hotter|cooler|colder|less|more|under|over|above|below|lower|higher) (of|than|what) [what] [it says|it shows|it is set|the dial|you set|i set|it should be|is set|it reads|he says]',
      ],
      (match) => {
        const bias = match.number('n');
        return Number.isFinite(bias) &&
          bias < 100 &&
          / (always|runs|dial|set|says|oven|reads|shows) /.test(` ${match.line}`)
          ? {
              intent: 'report-oven',
              bias: /(shy|short|cool|cold|under|less|below|lower)/.test(match.line) ? -bias : bias,
            }
          : undefined;
      },
    ),
    // "120, fan still going".
    ...phrases(
      '^ [the] (fan|convection) [is] [still|now] (going|running|whirring|blowing|on) [still|$] $',
      (match) => {
        const last = match.before.at(-1);
        return last?.intent === 'report-oven' && last.temperature !== undefined
          ? { intent: 'report-oven', mode: 'fan' }
          : undefined;
      },
    ),
    // "160 on the knob means 175 inside", "I set 160 and get 175".
    ...phrases(
      [
        '{dial:temperature} [degrees] (on|at|by) (the|its|my) (knob|dial|display|setting|thermostat) (is|means|gives|makes|equals|gets you|comes out at|comes out as) [really|actually|more like|about] {real:temperature} [degrees] [inside|in it|in there|really|in reality|in truth|actually|$]',
        '(set|set it|set @oven|set to|put it) [to|at|on] {dial:temperature} [degrees] [and] [,] (i get|you get|it is|it gives|it goes to|it reaches|it makes|get|it is really) [really|actually|more like|about] {real:temperature} [degrees] [inside|in it|in there|really|in reality|in truth|actually|$]',
      ],
      (match) => {
        const bias = match.number('real') - match.number('dial');
        return Number.isFinite(bias) && bias !== 0 && Math.abs(bias) < 80
          ? { intent: 'report-oven', bias }
          : undefined;
      },
    ),
    // "It heats too strong, count ten degrees more".
    ...phrases(
      '^ [so|and] [you] [must|should|can|please] (count|reckon|add|figure|allow|calculate|assume) {n:any} [degrees] (more|less|extra|on top|hotter|colder|cooler) [than (it says|the dial|it shows)|$] $',
      (match) => {
        const bias = match.number('n');
        return / (oven|cooker|stove|heats|runs|dial) /.test(` ${match.whole}`) &&
          Number.isFinite(bias) &&
          bias < 100 &&
          !/ (people|guests|plates) /.test(` ${match.whole}`)
          ? {
              intent: 'report-oven',
              bias: / (less|colder|cooler) /.test(match.line) ? -bias : bias,
            }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ [the|my|our] (thermostat|heat|heating) [is|set|now] (on|at|to) {temperature:temperature} [degrees] [fan|with fan|traditional|conventional|static|normal|top and bottom|upper and lower] [heat|heating|$] $',
      ],
      (match) => (looksLikeOven(match, match.temperature('temperature')) ? oven(match) : undefined),
    ),
    // "took it down from 450 to 250", "bumped it up twenty five to two seventy five".
    ...phrases(
      [
        '(turned|turn|knocked|dropped|lowered|brought|cranked|raised|set|put|bumped|upped|reduced|dialled|dialed|took|taken|eased|backed|nudged|whacked|stuck|switched|moved|pulled|turning|gone|went) [@oven|it|that|her|him|heat|the heat|the temperature] [back|down|up] [from {was:any}|{by:any} [degrees]] [back|down|up] to {temperature} ',
      ],
      (match) =>
        match.has('was') || match.has('by')
          ? looksLikeOven(match, match.temperature('temperature'))
            ? oven(match)
            : undefined
          : undefined,
    ),
    ...phrases(
      [
        '^ [that|it|the light|the oven light|oven light|the little light|the red light|the orange light|oven] (is|has) (clicked|clicked off|gone off|gone out|clicked out|gone green) $',
      ],
      (match) =>
        match.context.stage === 'preheat' && !/^(oven|it) (is|has) gone (off|out) /.test(match.line)
          ? { intent: 'report-oven', state: 'preheated' }
          : undefined,
    ),
    ...phrases(
      [
        '(turned|knocked|dropped|lowered|brought|put|set|took|moved|raised|cranked) (it|@oven|the heat) [back|down|up|on] [to|at|on] {g:gas}',
        '[@oven|it] [is|at|on|up|down|to|set|turned|put|now|i have|i|have|the] [oven] [it] [is|at|on|up|down|to|set|turned|now] [at|on|to] {g:gas} [now|$]',
      ],
      (match) => {
        const gas = match.quantity('g');
        // "it says on the packet gas mark six".
        if (/ (packet|recipe|book|label|box|instructions|leaflet|website) /.test(` ${match.line}`))
          return undefined;
        return gas?.kind === 'gas-mark'
          ? { intent: 'report-oven', gasMark: gas.value, ...momentOf(match) }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ [oven|the oven] [at|on] {temperature:number} fan',
        '(switched|gone|changed|turned|put|moved) [it|@oven|over] [over] (to|on|onto) fan $',
        '[@oven] fan is on $',
      ],
      (match) => (match.has('temperature') ? oven(match) : { intent: 'report-oven', mode: 'fan' }),
    ),
    ...phrases(
      [
        '(switched|gone|turned) [@oven|the|it] (fan off|off the fan|to conventional|to still|to static|over to conventional)',
        '(switched|changed|gone|moved) from (convection|fan) to {thing:thing} $',
      ],
      { intent: 'report-oven', mode: 'still' },
    ),
    ...phrases(
      [
        '@oven (is|reads|says|shows|is reading|is showing|is at|is on|is set to|is set at|is up to|is down to|is now at|is now|has come up to|has reached|has hit|has dropped to|thermometer says|thermometer reads|temperature is|sits at|is sitting at|hit|reached|at|on|to|down to|up to|set to|dial is at|is only at|is back to|is still at|is down at|is up at|came up to|went down to|went to) [at|to|about] {temperature}',
        '(turned|turn|turning|knocked|knock|dropped|drop|lowered|lower|brought|cranked|raised|set|put|bumped|upped|reduced|dialled|dialed|took|taken|eased|backed|nudged|whacked|stuck|switched|got|moved|pulled) [@oven|it|that|her|him|heat|the heat|the temperature|temperature|the dial] [back|down|up|on|over|right|way] [now|$] (to|at|on|till) {temperature}',
        '(turned|turn|knocked|dropped|lowered|lower|raised|reduced|dropped) [@oven|it|the heat] [down|up|back] {temperature} $',
        '(down|up|back down|back up|back on|on again|going again) (to|at) {temperature} [now|$]',
        '(preheated|preheating|heating|heated|heat|warmed|warming) [@oven|it] [up] [to|at] {temperature} [as we speak]',
        '(it is|we are|i am) (at|on) {temperature} fan',
        '^ (in|inside) [the|my|our] oven [now] (it is|is|we have|there is|i have|we are at) [now] [at|on] {temperature}',
        '(it is|we are|i am|it) (on|set to|set at) {temperature} [fan]',
        '^ @oven {temperature} $',
        '^ (it|she|that|all) (is|has come|came|has climbed|climbed) [up|right] back (to|at|up to|down to) {temperature} [again|now|$] $',
        '^ [with] @oven [is] [up|down] (full|whacked up|cranked up|right up|all the way up|flat out) [at|to|on] {temperature} $',
      ],
      (match) => {
        const said = match.temperature('temperature');
        const unit = said.unit ?? match.context.units.temperature;
        // "the temperature's up to one nineteen" is the roast's.
        const named = /(oven|cooker|stove|turn|knock|drop|lower|rais|crank|dial|heat|set|fan)/;
        // After the sear it is the oven that goes down.
        const lowered = match.context.stage === 'sear' && / down (to|at) /.test(` ${match.line}`);
        if (!looksLikeOven(match, said) && !named.test(match.line) && !lowered) return undefined;
        if (said.temperature < (unit === 'F' ? 100 : 40)) return undefined;
        if (/ (music|volume|dinner|serving|eat|guests) /.test(` ${match.line}`)) return undefined;
        return oven(match);
      },
    ),
    ...phrases(
      [
        '@oven (is|has|has come|is now|is all|is nice and|is fully|has just|just) [up to temperature|to temperature|preheated|hot|ready|beeped|pinged|beeping|finished preheating|heated up|heated|reached temperature|at temperature|warmed up|up to heat|come up to temperature|done preheating|good to go] (up to temperature|at temperature|preheated|hot|ready|beeped|pinged|heated up|heated|$)',
        '@oven (beeped|pinged|has beeped|has pinged|is preheated|is hot|is ready|preheated|up to temperature|is up to temperature|is at temperature)',
        '^ (it|@oven) (is|has) (preheated|up to temperature|come up to temperature|at temperature) $',
        '^ preheated $',
        '^ it [has|is] [just] (beeped|pinged|preheated) $',
      ],
      (match) =>
        /not/.test(match.line) ||
        !/(temperature|preheat|hot|ready|beep|ping|heat|warm|good)/.test(match.line)
          ? undefined
          : { intent: 'report-oven', state: 'preheated' },
    ),
    ...phrases(
      [
        '(@oven is on|turned on @oven|turned @oven on|switched on @oven|switched @oven on|put @oven on|lit @oven|lit the oven|oven on|oven is heating [up]|oven is preheating|started preheating|preheating [@oven|now]|i am preheating [@oven]|have put @oven on|started @oven|fired up @oven|oven is warming up|got @oven on|oven is lit|turned on the oven|switched on the oven|turned the oven on|put the oven on) [now|$]',
      ],
      (match) =>
        // "Is it too early to turn the oven on?"
        / off | (early|soon|late|time|should|shall|when|whether|do i|need|going|want|have) (to )?(i |we )?(turn|turned|put|switch|light|lit) /.test(
          ` ${match.line}`,
        )
          ? undefined
          : { intent: 'report-oven', state: 'on', ...momentOf(match) },
    ),
    ...phrases(
      [
        '(@oven is off|turned off @oven|turned @oven off|switched off @oven|switched @oven off|oven off|the oven is off|turned the oven off|turned off the oven|switched the oven off|oven is switched off|killed @oven|killed the oven|killed the heat|switched it off|turned it off)',
      ],
      (match) => {
        const which = whichOven(match.line);
        return {
          intent: 'report-oven',
          state: 'off',
          ...(which ? { which } : {}),
          ...momentOf(match),
        };
      },
    ),
    ...phrases(
      [
        '^ [i have|i|have|just|@oven is|@oven|it is|it|the heat is|heat is|temperature is] (turned it down|turned down|turned @oven down|turned the oven down|turned the heat down|lowered it|lowered @oven|lowered the oven|knocked it down|knocked it back|knocked the oven back|dropped it|dropped @oven|dropped the oven|turned down the oven|turned down @oven|down|down now|gone down|been turned down|has been turned down|dropped the temperature|dropped the heat|lowered the heat|lowered the temperature|brought the oven down|brought it down|oven down|oven is down|turned it right down) [{d:duration} ago] $',
      ],
      (match) => ({ intent: 'report-done', step: 'oven-down', ...momentOf(match) }),
    ),
  ],
};
