/** What the thermometer in the roast says. */
import type { Match, Recogniser } from '../../recogniser.ts';
import { callWords } from '../frames/words.ts';
import { phrases } from '../vocabulary.ts';
import { reading } from './temperatures.ts';

function startOf(match: Match): { startTemperature: number; startTemperatureUnit?: 'F' | 'C' } {
  const { temperature, unit } = match.temperature('temperature');
  return { startTemperature: temperature, ...(unit ? { startTemperatureUnit: unit } : {}) };
}

export const readings: Recogniser = {
  name: 'readings',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '^ [it|@it|and it|it has|@it has|has] [now] (topped out|peaked|maxed out|settled|levelled off|levelled out|plateaued|stalled|parked|bottomed out|crept up|shot up|sat|sitting|stuck|hovering) [at|on|around|to] {temperature} [degrees] [now|for|under|,|$]',
      ],
      (match) => (/ (oven|dial) /.test(` ${match.line}`) ? undefined : reading(match)),
    ),
    // "it has gone from 98 to 104 in twenty minutes": where it stands now.
    ...phrases(
      [
        '(gone|went|climbed|jumped|risen|rose|crept|moved|shot|come|came|up|rising) [up|all the way] from {was:any} [degrees] to {temperature} [degrees]',
        '(dropped|fallen|fell|risen|rose|climbed|gone up|gone down|come up|crept up|up|down) [by|another] {by:any} [degrees] to {temperature} [degrees]',
      ],
      (match) =>
        / (headcount|head count|numbers|people|guests|places|price|oven|dial) /.test(
          ` ${match.line}`,
        ) ||
        (match.context.units.temperature === 'F' && match.number('temperature') < 35)
          ? undefined
          : reading(match),
    ),
    ...phrases(
      [
        '(@it|@thermometer|@middle|the core|the probe|core temperature|we|i|temperature|i have got|i have|now|@middle temperature|the reading|last reading|reading) [now|still|only] (@read|is at|is up to|is now|is on|is reading|is showing|is saying|is sitting at|sits at|has hit|hit|has reached|reached|is|was|was at|got|get|had|am getting|are getting|have got|are at|are up to|have hit|are reading|came out at|came up as|has got to|got to|has climbed to|climbed to|has come up to|is up at|have|is still|is still at|is only|is only at|is holding at|is hovering at|just hit|is pushing|are on|measured|measures|is coming up|stands at|is gone up to|has gone up to|went up to|is down to|is already at|is already|is now at|has made it to|is registering|is at about|at|is reading at) [at|a|about|only|now|exactly|up to] {temperature} [degrees|in the (middle|centre|core)|at the moment]',
        '(reads|reading|getting|reed|reeds|registering|registers|showing|probe|core|internal|thermometer|temperature|middle|centre|center|temp) [is|at|of|a|in the middle|says|reads] {temperature}',
        '{temperature} [degrees] (on|with|by|says|said|according to|going by|reckons) @thermometer',
        '^ @spot (it|we) (makes|make|gives|marks|has|have) {temperature} [degrees] $',
        '{temperature} [degrees] (in the (middle|centre|center|roast|meat|core|beef|joint|thickest part|thick end)|internal|by the bone|at the (core|centre|center|middle|bone)|on the (probe|thermometer|dial|display|gauge)|near the bone|is what it reads|is what it says|is what i have got|is the reading|core)',
        '{temperature:degrees} [now|$] [{d:duration} ago] $',
        '^ [it is|and|is|was|got|but] {temperature} [degrees] @spot [of it|$] $',
        '^ @spot [it|is|it is] [is|reads|says] {temperature} [degrees] $',
        '(it red|it read|red) {temperature}',
        '^ [the] (first|second|third|other) (time|go|try|spot|place|reading|poke) [was|is|it was|it said|it read|at|said|read] {temperature} [degrees] $',
        '(went|gone|climbed|jumped|crept|moved|risen|rose|come up|up) from {was:temperature} to {temperature}',
        '(took|just took|i took|taken) (a|the|its|another) (reading|temperature) [,|and|of|it is] [it is|got|at|was] {temperature}',
      ],
      (match) => {
        if (
          /(gone|pounds|years|old|guests|people|oclock|minutes till|late)/.test(match.line) &&
          !/read|degrees|probe/.test(match.line)
        )
          return undefined;
        // "41 straight from the fridge": what it starts from.
        if (/ (straight|right|fresh|just) (from|out of|off) (the )?fridge /.test(match.line))
          return { intent: 'describe-roast', ...startOf(match) };
        if (/fridge/.test(match.line)) return undefined;
        // "ten degrees colder than it shows" is of the oven, "notify at 52" a wish.
        if (
          /<t\d+> (too )?(hot|hotter|cold|colder|cool|cooler|warmer|higher|lower|off|out|over|under) /.test(
            match.line,
          ) ||
          /^(kindly )?(notify|tell|ping|alert|call|shout|warn|ring|beep|holler|yell) /.test(
            match.line,
          )
        )
          return undefined;
        if (
          / (when|once|if|as soon as) /.test(` ${match.line}`) &&
          callWords.test(` ${match.line}`)
        )
          return undefined;
        if (
          /^((i |we )?(have )?(pulled|yanked)|target|goal|set|whip|haul|yank|final|i like|we like|(so )?(we|i) (are|am) pulling|pull|take|cook|bring|aim|stop|get|i want|we want|want|go|roast) /.test(
            match.line,
          )
        )
          return undefined;
        const said = match.quantity('temperature');
        if (said?.kind === 'number') {
          if (said.face && said.value < 24 && !Number.isInteger(said.value)) return undefined;
          if (/^(we|i|now) /.test(match.line) && said.value < 25) return undefined;
          if (
            / (is|was) <n\d+> $/.test(match.line) &&
            said.value < 25 &&
            match.context.units.temperature === 'F'
          )
            return undefined;
          if (
            /^(she|he) (is|was) (?!reading|on |at |up to|sitting|now|still|only|showing|registering)/.test(
              match.line,
            )
          )
            return undefined;
        }
        return reading(match);
      },
    ),
  ],
};
