/** What is told of the dinner itself: the roast, the table, the guests, the menu, the kitchen. */
import { limits } from '../base/limits.ts';
import { addDays, addMinutes, hourMilliseconds, instantOf, localTime } from '../base/time.ts';
import { celsiusOf, kelvinOfFahrenheitDegrees, kilogramsOf } from '../base/units.ts';
import { type Card, comesWith, type RoastCard, stepIdOf } from '../kitchen/card.ts';
import { consumerMinimumCelsius } from '../kitchen/circumstances.ts';
import { menuOf, uncardedOf } from '../kitchen/dinner.ts';
import { donenessNear, serveCelsiusOf } from '../kitchen/doneness.ts';
import type { NewFact } from '../kitchen/facts.ts';
import { standing } from '../kitchen/fold.ts';
import type { HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided, said } from './context.ts';
import { clocksBefore, clocksShifted, firstCourseBegun } from './decide-clocks.ts';
import { hasNamedMenu } from './named-menu.ts';

/** The cut taken when somebody only says "the roast". */
const usualCut = 'rib-roast';

/** Copies of cards the dinner has not taken yet. */
function taking(context: Context, ids: readonly string[]): NewFact[] {
  return ids.flatMap((id): NewFact[] => {
    if (context.dinner.cards.some((card) => card.id === id)) return [];
    const card = context.library.find((one) => one.id === id);
    return card ? [{ type: 'card-taken', card }] : [];
  });
}

export function describeRoast(heard: HeardOf<'describe-roast'>, context: Context): Decision {
  const { dinner } = context;
  const unit = heard.weightUnit ?? dinner.units.weight;
  const kilograms = heard.weight === undefined ? undefined : kilogramsOf(heard.weight, unit);
  if (
    kilograms !== undefined &&
    (kilograms < limits.roastKilogramsLow || kilograms > limits.roastKilogramsHigh)
  )
    return said({ key: 'bad-value', bad: { what: 'weight', kilograms } });
  if (heard.bones !== undefined && (heard.bones < 1 || heard.bones > limits.bonesHigh))
    return said({ key: 'bad-value', bad: { what: 'bones', count: heard.bones } });
  const cut = cutOf(heard, context);
  const card = context.library.find((one) => one.id === cut);
  const startUnit = heard.startTemperatureUnit ?? dinner.units.temperature;
  const facts: NewFact[] = [
    ...taking(context, cut === undefined ? [] : [cut]),
    {
      type: 'roast-described',
      cut,
      kilograms,
      said: heard.weight === undefined ? undefined : { value: heard.weight, unit },
      bones: heard.bones,
      boneless: heard.boneless ?? (heard.bones !== undefined ? false : undefined),
      prepared: heard.prepared,
      frozen: heard.frozen,
      startCelsius:
        heard.startTemperature === undefined
          ? undefined
          : celsiusOf(heard.startTemperature, startUnit),
    },
  ];
  // A cut that is not served pink has its temperature given, so nobody is asked for it.
  if (card?.card === 'roast' && !card.pink && dinner.target === undefined)
    facts.push({ type: 'doneness-set', serveCelsius: consumerMinimumCelsius });
  const before = dinner.roast.cut;
  const changed = before !== undefined && cut !== undefined && cut !== before;
  if (changed && card?.card === 'roast') facts.push(...donenessOfNewCut(card, context));
  return decided(facts, { key: 'described', ...(changed ? { before } : {}) });
}

/** Pork is not left at beef's pink; and what pork was given for itself is no wish for beef. */
function donenessOfNewCut(card: RoastCard, { dinner, facts }: Context): NewFact[] {
  const { target } = dinner;
  if (target === undefined) return [];
  if (!card.pink)
    return target.serveCelsius < consumerMinimumCelsius
      ? [{ type: 'doneness-set', serveCelsius: consumerMinimumCelsius }]
      : [];
  const last = standing(facts).findLast((fact) => fact.type === 'doneness-set');
  if (last?.type !== 'doneness-set' || last.doneness !== undefined || last.said !== undefined)
    return [];
  return [{ type: 'positions-voided', positions: [last.position], because: 'correct' }];
}

function cutOf(heard: HeardOf<'describe-roast'>, context: Context): string | undefined {
  const named = heard.cut;
  if (named !== undefined && context.library.some((card) => card.id === named)) return named;
  if (context.dinner.roast.cut !== undefined) return undefined;
  return usualCut;
}

export function setServingTime(heard: HeardOf<'set-serving-time'>, context: Context): Decision {
  const { dinner, now } = context;
  const today = localTime(now, dinner.timeZone).date;
  const wantedDay = dinner.servingAt ? localTime(dinner.servingAt, dinner.timeZone).date : today;
  const date = heard.date ?? [today, wantedDay].sort().at(-1) ?? today;
  const servingAt = instantOf(date, heard.time, dinner.timeZone);
  const tomorrow = instantOf(addDays(today, 1), heard.time, dinner.timeZone);
  // At ten in the evening, "three in the morning" is the night just begun.
  const soon = heard.date === undefined && tomorrow - now <= 12 * hourMilliseconds;
  if (servingAt <= now && !soon) {
    const pending: NewFact = { type: 'serving-time-set', servingAt: tomorrow, because: 'said' };
    const question = {
      kind: 'serving-past' as const,
      expecting: 'confirmation' as const,
      text: heard.time,
      pending: [pending],
    };
    return decided([{ type: 'question-asked', question }], { key: 'asked', question });
  }
  const before = dinner.servingAt;
  const wanted = servingAt <= now ? tomorrow : servingAt;
  const fact: NewFact = {
    type: 'serving-time-set',
    servingAt: wanted,
    because: before ? 'shifted' : 'said',
  };
  const clocks = clocksBefore(context, wanted);
  if (before === undefined || before === wanted || dinner.steps.size === 0)
    return decided([fact, ...clocks], { key: 'serving-set', servingAt: wanted });
  return decided([fact, ...clocks], {
    key: 'serving-moved',
    minutes: Math.round((wanted - before) / 60_000),
    servingAt: wanted,
  });
}

export function shiftServing(heard: HeardOf<'shift-serving'>, context: Context): Decision {
  const { dinner, now } = context;
  if (dinner.servingAt === undefined)
    return said({
      key: 'asked',
      question: { kind: 'serving-time', expecting: 'serving-time', text: '' },
    });
  if (Math.abs(heard.minutes) > 24 * 60)
    return said({ key: 'bad-value', bad: { what: 'minutes', minutes: heard.minutes } });
  const servingAt = Math.max(addMinutes(dinner.servingAt, heard.minutes), now);
  const clocks = clocksShifted(context, heard.minutes);
  return decided([{ type: 'serving-time-set', servingAt, because: 'shifted' }, ...clocks], {
    key: 'serving-moved',
    minutes: heard.minutes,
    servingAt,
  });
}

export function setGuests(heard: HeardOf<'set-guests'>, context: Context): Decision {
  const before = context.dinner.guests ?? 0;
  const count = heard.count ?? before + (heard.change ?? 0);
  if (count < 1 || count > limits.guestsHigh)
    return said({ key: 'bad-value', bad: { what: 'guests', count } });
  const gone: NewFact[] =
    heard.who !== undefined && count < before ? [{ type: 'guest-gone', who: heard.who }] : [];
  return decided([{ type: 'guests-counted', count }, ...gone], {
    key: 'guests-set',
    count,
    change: context.dinner.guests === undefined ? 0 : count - before,
  });
}

export function reportGuests(heard: HeardOf<'report-guests'>, context: Context): Decision {
  const { state, count } = heard;
  const eating = state === 'seated' ? firstCourseBegun(context) : [];
  return decided([{ type: 'guests-arrived', state, count }, ...eating], {
    key: 'guests-arrived',
    state,
  });
}

export function setDoneness(heard: HeardOf<'set-doneness'>, context: Context): Decision {
  const unit = heard.unit ?? context.dinner.units.temperature;
  const serveCelsius =
    heard.temperature !== undefined
      ? celsiusOf(heard.temperature, unit)
      : heard.doneness
        ? serveCelsiusOf(heard.doneness)
        : undefined;
  if (serveCelsius === undefined)
    return said({ key: 'unclear', heard: { intent: 'unclear', text: heard.text }, again: false });
  if (serveCelsius < 43 || serveCelsius > 96)
    return said({ key: 'bad-value', bad: { what: 'doneness', celsius: serveCelsius } });
  const doneness = heard.doneness ?? donenessNear(serveCelsius);
  return decided(
    [
      {
        type: 'doneness-set',
        doneness,
        serveCelsius,
        said: heard.temperature === undefined ? undefined : { value: heard.temperature, unit },
      },
    ],
    { key: 'doneness-set', doneness, serveCelsius },
  );
}

const knownDish = (context: Context, dish: string): Card | undefined =>
  context.library.find((card) => card.card !== 'roast' && card.id === dish) ??
  context.dinner.cards.find((card) => card.card !== 'roast' && card.id === dish);

export function addDish(heard: HeardOf<'add-dish'>, context: Context): Decision {
  if (!knownDish(context, heard.dish))
    return decided([{ type: 'dish-added', dish: heard.dish }], {
      key: 'dish-uncarded',
      dish: heard.dish,
    });
  return decided([...taking(context, [heard.dish]), { type: 'dish-added', dish: heard.dish }], {
    key: 'dish-added',
    dish: heard.dish,
  });
}

export function dropDish(heard: HeardOf<'drop-dish'>, context: Context): Decision {
  const dish = uncardedMeant(heard.dish, context) ?? heard.dish;
  const onMenu = menuOf(context.dinner).some((card) => card.id === dish);
  const told = uncardedOf(context.dinner).includes(dish);
  // What no cut may bring along later is remembered, too.
  const facts: NewFact[] =
    onMenu || told || knownDish(context, dish) ? [{ type: 'dish-dropped', dish }] : [];
  return decided(facts, { key: onMenu || told ? 'dish-dropped' : 'dish-absent', dish });
}

/** The dish without a card that such words name: in full, or by a part of it. */
const uncardedMeant = (words: string, context: Context): string | undefined => {
  const told = uncardedOf(context.dinner);
  return told.find((one) => one === words) ?? told.find((one) => ` ${one} `.includes(` ${words} `));
};

export function lack(heard: HeardOf<'lack'>, context: Context): Decision {
  const thing = toolNamed(heard.thing, context) ?? heard.thing;
  const step = context.dinner.cards
    .flatMap((card) =>
      card.steps
        .filter((one) => (one.without ?? []).some((way) => way.tool === thing))
        .map((one) => stepIdOf(card, one)),
    )
    .find((id) => context.dinner.steps.get(id)?.doneAt === undefined);
  return decided([{ type: 'thing-lacked', thing }], { key: 'lacked', thing, step });
}

/** The tool of this dinner's cards that goes by such a name. */
function toolNamed(name: string, context: Context): string | undefined {
  const wanted = name.toLowerCase();
  const tools = context.dinner.cards.flatMap((card) => card.tools ?? []);
  const exact = tools.find((tool) => tool.id === wanted || tool.names.includes(wanted));
  // "Stand mixer either", "processor in this house": the name with words about it.
  const within = (name: string): boolean => ` ${wanted} `.includes(` ${name} `);
  return (exact ?? tools.find((tool) => tool.names.some(within)))?.id;
}

export function reportSetup(heard: HeardOf<'report-setup'>): Decision {
  const { rack, tent, probe, fan, pan, shelf, oven, rings, carvers } = heard;
  const note = [pan, shelf, oven].filter((one) => one !== undefined).join(', ');
  const ovens = oven === 'two ovens' ? 2 : undefined;
  return decided(
    [
      {
        type: 'setup-reported',
        rack,
        tent,
        probe,
        fan,
        ovens,
        rings,
        carvers,
        note: note || undefined,
      },
    ],
    { key: 'setup-noted', pan, ovens, rings, carvers },
  );
}

export function reportThermometer(
  heard: HeardOf<'report-thermometer'>,
  { dinner }: Context,
): Decision {
  const unit = heard.unit ?? dinner.units.temperature;
  const kelvin = unit === 'F' ? kelvinOfFahrenheitDegrees(heard.bias) : heard.bias;
  return decided([{ type: 'thermometer-checked', offsetKelvin: kelvin }], {
    key: 'thermometer-bias',
    kelvin,
  });
}

export function reportOven(heard: HeardOf<'report-oven'>, context: Context): Decision {
  const { dinner, now } = context;
  const unit = heard.unit ?? dinner.units.temperature;
  if (heard.bias !== undefined) {
    const kelvin = unit === 'F' ? kelvinOfFahrenheitDegrees(heard.bias) : heard.bias;
    return decided([{ type: 'oven-bias-told', kelvin }], { key: 'oven-bias', kelvin });
  }
  const facts: NewFact[] = [];
  const outcomes: Decision['outcomes'] = [];
  if (heard.mode) {
    facts.push({ type: 'setup-reported', fan: heard.mode === 'fan' });
    outcomes.push({ key: 'oven-mode', fan: heard.mode === 'fan' });
  }
  if (heard.state === 'preheated') {
    facts.push({ type: 'oven-preheated', happenedAt: now });
    outcomes.push({ key: 'oven-hot' });
  }
  return { facts, outcomes };
}

/** A dinner takes along the dishes that are usual with its roast; the sides only of a cook who named no menu. */
export function usualDishes({ dinner, library }: Context): NewFact[] {
  const taken = new Set(dinner.cards.map((card) => card.id));
  const cut = dinner.roast.cut ?? usualCut;
  return library
    .filter((card) => card.card !== 'roast' && comesWith(card, cut) && !taken.has(card.id))
    .filter((card) => card.card !== 'side' || !hasNamedMenu(dinner.added, dinner.cards))
    .map((card) => ({ type: 'card-taken', card }));
}
