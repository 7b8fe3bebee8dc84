/** Frames of how it is cooked: in what order the heat comes, and on and in what it stands. */
import type { Frame, Meaning } from '../../recogniser.ts';
import { holds } from './words.ts';

const telling = ['statement', 'request', 'intention'] as const;

export const methodFrame: Frame = {
  name: 'method',
  moods: [...telling, 'negative'],
  build(match): Meaning | undefined {
    const hot =
      / (sear|seared|searing|brown|browned|browning|blast|crust|high heat|hot finish|hot start|hot oven) /;
    if (!holds(match, hot)) return undefined;
    if (
      holds(match, / (no|not|without|skip|never) (sear|searing|browning|the sear|bother)? ?/) &&
      holds(match, / (steady|same|one|low|all the way|throughout|constant|even|sear|searing) /) &&
      holds(match, / (no|not|without) /)
    )
      return { intent: 'set-method', method: 'steady' };
    if (holds(match, / (end|last|finish|finishing|after|afterwards|reverse|final|later) /))
      return { intent: 'set-method', method: 'sear-last' };
    if (holds(match, / (first|start|starting|before|beginning|initial) /))
      return { intent: 'set-method', method: 'sear-first' };
    return undefined;
  },
};

export const setupFrame: Frame = {
  name: 'setup',
  moods: ['statement', 'negative'],
  build(match): Meaning | undefined {
    if (
      match.line.split(' ').length > 9 ||
      match.marks('tcdn').length > 0 ||
      holds(match, / (went|burnt|dropped|hot|hand|cut|sink|wash|need|done|ready) /)
    )
      return undefined;
    const no = holds(match, / (no|not|without) /);
    if (
      holds(match, / (fan|convection|hot air) /) &&
      holds(match, / (oven|has|have|is|on|with|no|assisted|using|forced) /)
    )
      return { intent: 'report-setup', fan: !no };
    if (
      holds(match, / (probe|leave-in|wired thermometer|wireless thermometer) /) &&
      holds(match, / (have|got|using|use|in|with|no|is in|stuck) /) &&
      !holds(match, / (out|broken|wrong|off) /)
    )
      return { intent: 'report-setup', probe: !no };
    const shelf =
      / (top|middle|bottom|lower|lowest|upper|highest|centre|center|second|third|first) (?:oven )?(?:shelf|rail|runner|rung|rack|level|position|slot)/.exec(
        ` ${match.line}`,
      )?.[1];
    if (shelf) return { intent: 'report-setup', shelf };
    if (holds(match, / rack /) && holds(match, / (on|over|using|with|have|no|without) /))
      return { intent: 'report-setup', rack: !no };
    const pan =
      / (cast iron pan|cast iron skillet|cast iron|skillet|roasting tin|roasting pan|roasting tray|sheet pan|baking tray|baking sheet|half sheet|dutch oven|casserole|glass dish|roaster|tray|tin) /.exec(
        ` ${match.line}`,
      )?.[1];
    if (
      pan &&
      holds(match, / (in|on|using|use|with|into) /) &&
      holds(match, / (it|roast|joint|meat|beef|using|use|we are|i am) /)
    )
      return { intent: 'report-setup', pan };
    if (
      holds(match, / (foil|tent|tented|covered|uncovered) /) &&
      holds(match, / (over|on|top|loose|loosely|under|no|not|uncovered) /)
    )
      return { intent: 'report-setup', tent: !no && !holds(match, / uncovered /) };
    return undefined;
  },
};
