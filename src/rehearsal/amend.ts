/** How a check would have to be written to hold at its moment; for whoever decides that what came is right. */
import { localTime } from '../base/time.ts';
import { intentsOf, inUnit, type Moment } from './check.ts';
import type { Check, Demand, Range } from './script.ts';

/**
 * The check's text, changed as little as it can be. Undefined where nothing could be written, or
 * where only its author knows what was meant, as with a pattern.
 */
export function amended(check: Check, moment: Moment): string | undefined {
  const demand = amendedDemand(check.demand, moment);
  if (demand === undefined) return undefined;
  const comment = check.demand.verb === 'view' ? undefined : / +#.*$/.exec(check.text)?.[0];
  return `${check.demand.verb} ${demand}${comment ?? ''}`;
}

function amendedDemand(demand: Demand, moment: Moment): string | undefined {
  const { view } = moment;
  switch (demand.verb) {
    case 'heard':
    case 'only':
      return intentsOf(moment).join(', ') || undefined;
    case 'stage':
      return view.stage;
    case 'serving': {
      if (view.serving.wanted === undefined) return undefined;
      const local = localTime(Date.parse(view.serving.wanted), moment.timeZone);
      const spread = demand.withinMinutes > 0 ? ` ±${demand.withinMinutes}` : '';
      return `${demand.date === undefined ? '' : `${local.date} `}${local.time}${spread}`;
    }
    case 'guests':
      return view.guests === undefined ? undefined : String(view.guests);
    case 'options':
      return String(view.options?.length ?? 0);
    case 'option':
      return amendedOption(demand, moment);
    case 'asks':
      return view.asking?.kind ?? 'nothing';
    case 'oven':
      return around(demand.range, view.oven.setFahrenheit, moment);
    case 'pull':
      return around(demand.range, view.target.pullFahrenheit, moment);
    case 'core':
      return around(demand.range, view.forecast?.coreNowFahrenheit.p50, moment);
    case 'step':
      return stateOf(demand.id, view.steps);
    case 'sides':
      return stateOf(demand.id, view.sides);
    default:
      return undefined;
  }
}

function amendedOption(
  demand: Extract<Demand, { verb: 'option' }>,
  moment: Moment,
): string | undefined {
  const option = moment.view.options?.find((one) => one.n === demand.n);
  if (!option) return undefined;
  const time = localTime(Date.parse(option.serving), moment.timeZone).time;
  const core = demand.core ? around(demand.core, option.coreAtServing.p50, moment) : undefined;
  return [
    String(demand.n),
    ...(demand.serving ? [`serving ${time}`] : []),
    ...(core === undefined ? [] : [`core ${core}`]),
  ].join(' ');
}

/** A range as wide as the one that was written, about the whole degree that came. */
function around(range: Range, fahrenheit: number | undefined, moment: Moment): string | undefined {
  if (fahrenheit === undefined) return undefined;
  const middle = Math.round(inUnit(fahrenheit, moment.unit));
  const half = Math.max(1, Math.round((range.high - range.low) / 2));
  return `${middle - half}..${middle + half}`;
}

function stateOf(id: string, all: readonly { id: string; state: string }[]): string | undefined {
  const found = all.find((one) => one.id === id);
  return found && `${id} ${found.state}`;
}
