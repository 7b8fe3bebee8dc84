/** How it is set up: pan, rack, foil, probe, fan, shelf, oven. */
import type { Recogniser } from '../../recogniser.ts';
import { dishNamed } from '../frames/dinner.ts';
import { phrases } from '../vocabulary.ts';

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
    ...phrases(
      [
        '(put|popped|stuck|got|threw|laid|draped|slung|tucked|pulled) [the|some|a] (foil|tent|tinfoil|tin foil) [back|loosely] (on|over|across|around) ',
        '(foil|tent|tinfoil) is [back|now] on $',
      ],
      { intent: 'report-setup', tent: true },
    ),
    ...phrases(
      [
        '(took|taken|whipped|pulled|got|lifted|have) [the|its] (foil|tent|tinfoil) [back] (off|away) ',
        '(took|taken|whipped) off [the|its] (foil|tent)',
        '(foil|tent) is [now] off $',
      ],
      { intent: 'report-setup', tent: false },
    ),
    ...phrases(
      [
        '(sat|sitting|sits|stood|standing|stands|perched|resting|lying|propped|is|roasting|cooking) [up] (on|over) [a bed of|a layer of|a raft of|some|the|a few|top of|chopped|thick] (onions|carrots|vegetables|celery|potatoes|bones|parsnips|roots|leeks|onion|bread) ',
      ],
      (match) =>
        /^(rest|hold|carve|served)$/.test(match.context.stage ?? '')
          ? undefined
          : { intent: 'report-setup', rack: false },
    ),
    // "can't turn the fan off" has one.
    ...phrases(
      [
        '(can not|could not|no way to|will not|does not|impossible to) (turn|switch|shut|let me turn|let me switch|go) [the] [fan] off [the] [fan|$]',
        '(fan|convection) (can not be|will not|does not|is always|never goes|stays|is stuck) [be] (turned off|switched off|off|go off|on|turn off) ',
      ],
      (match) =>
        /fan|convection/.test(match.line) && !/ (turn|switch|come) on /.test(match.line)
          ? { intent: 'report-setup', fan: true }
          : undefined,
    ),
    ...phrases(
      [
        '(shut|turned|switched|knocked|turning) [the] (fan|convection) off',
        '(shut|turned|switched) off the (fan|convection)',
      ],
      { intent: 'report-oven', mode: 'still' },
    ),
    ...phrases(['(no rack|without a rack|not on a rack|no wire rack)'], {
      intent: 'report-setup',
      rack: false,
    }),
    ...phrases(
      ['(on|using|have got|have|with|got|over) [it on] (a|the|my) [wire|roasting|cooling|v] rack'],
      ({ line }) => (/ not /.test(` ${line}`) ? undefined : { intent: 'report-setup', rack: true }),
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
    ...phrases(
      ['(no tent|no foil|not tented|not covered|uncovered|without foil|not tenting)'],
      (match) =>
        / fridge /.test(match.line) ? undefined : { intent: 'report-setup', tent: false },
    ),
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
        '(probe is in|probe in|[the|a|my] leave-in (probe|thermometer) [is|goes] [in]|using a probe|probe is in the (roast|middle|thickest part)|have got a probe|have a probe|put the probe in|stuck the probe in|(thermometer|probe) (with (a|the) (cable|wire)|with cable) is [put|stuck|pushed|now] in|(thermometer|probe) is (put|stuck|pushed) in|wireless probe|i have the probe in|got a probe)',
      ],
      { intent: 'report-setup', probe: true },
    ),
    ...phrases(
      [
        'shelf in [the] (middle|top|bottom|centre|center)',
        '[on|it is on|using] [the] (middle|top|bottom|lower|upper|lowest|centre|center|second) (shelf|rack|rung|runner)',
      ],
      (match) => {
        const shelf =
          /(middle|top|bottom|lower|upper|lowest|centre|center|second) (?:shelf|rack|rung|runner)/.exec(
            match.line,
          )?.[1] ?? /shelf in (?:the )?(middle|top|bottom|centre|center)/.exec(match.line)?.[1];
        return shelf && !dishNamed(match.line.replaceAll('|', ''), match)
          ? { intent: 'report-setup', shelf }
          : undefined;
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
        // "popped the gratin in the bottom oven" is of the gratin.
        const side = dishNamed(match.line.replaceAll('|', ''), match);
        return which && !side ? { intent: 'report-setup', oven: which } : undefined;
      },
    ),
    ...phrases(
      [
        '(have|got|has|there is) [also] (a|another) (double|second) oven [here|too|as well] $',
        '(have|got|has|there is) [also] another oven [here|too|as well] $',
      ],
      () => ({ intent: 'report-setup', oven: 'two ovens' }),
    ),
  ],
};
