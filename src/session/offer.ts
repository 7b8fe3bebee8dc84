/** Options when the day forces them or they are asked for; the first is taken until another is. */
import { minutesBetween } from '../base/time.ts';
import { clamp } from '../base/units.ts';
import type { Fact, NewFact, Option, Question } from '../kitchen/facts.ts';
import { type Forecast, lateAtPullMinutes } from '../kitchen/forecast.ts';
import { leavesOut } from '../kitchen/option.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import { coreAtKnife } from '../planner/aim.ts';
import { isSameHold } from '../planner/hold-span.ts';
import { type Choosing, draftOptions, type OptionDraft } from '../planner/options/drafts.ts';
import { dayAsked, figuresOf, type OptionFigures, retargeted } from '../planner/options/figures.ts';
import { isPlain, kindsRuledOut, type Ranking, rankOptions } from '../planner/options/rank.ts';
import { roastCameOutAt, roastOf, roastWentInAt, safeRestOf } from '../planner/roast-day.ts';
import { optionRisk, optionTitle } from '../reply/en/options.ts';
import type { Outlook } from './outlook.ts';
import type { Compute } from './ports.ts';
import { sceneOf } from './view.ts';

export interface Offered {
  facts: NewFact[];
  options: readonly Option[] | undefined;
}

/** A pull is aimed so often at most; each time comes nearer. */
const aimedAtMost = 3;

/** So far a pull is moved at most for each kelvin at the knife. */
const gainAtMost = 4;

/** Options so young are told again as they were. */
const freshMinutes = 5;

export interface Asking {
  outcomes: readonly Outcome[];
  before: Outlook;
  after: Outlook;
  known: readonly Fact[];
  compute: Compute;
}

export async function offer(asking: Asking): Promise<Offered> {
  const { outcomes, before, after, compute } = asking;
  const none: Offered = { facts: [], options: undefined };
  const behind = isBehind(asking);
  const ahead = isAhead(asking);
  const moved = behind || ahead || outcomes.some((outcome) => outcome.key === 'serving-moved');
  const sooner = outcomes.some((outcome) => outcome.key === 'serving-moved' && outcome.minutes < 0);
  const asked = outcomes.some(
    (outcome) =>
      outcome.key === 'answer' &&
      outcome.heard.intent === 'ask-options' &&
      outcome.heard.time === undefined &&
      outcome.heard.minutes === undefined,
  );
  const { plan, dinner, now, question, forecast } = after;
  if ((!moved && !asked) || !plan || !question || !forecast) return none;
  const stage = after.standing.stage;
  if (stage === 'carve' || stage === 'served' || stage === 'put-away') return none;
  if (asked && before.dinner.options && areFresh(asking))
    return { facts: [], options: before.dinner.options };
  const wantedAt = dinner.servingAt ?? plan.serving.wantedAt;
  const choosing: Choosing = { dinner, plan, question, forecast, wantedAt, now };
  const ranking = { dinner, sooner, behind };
  // Nobody is made to choose by a reading unless there is something to be done about it.
  const mends: Option['kind'] | undefined = behind
    ? 'raise-oven'
    : ahead
      ? 'lower-oven'
      : undefined;
  const simulated = await simulateWays(choosing, { ranking, mends, compute });
  const scene = sceneOf(after);
  const options = rankOptions(simulated, ranking).map(
    ({ figures: one }, index): Option => ({
      n: index + 1,
      kind: one.kind,
      title: optionTitle(one, scene),
      risk: optionRisk(one, scene),
      servingAt: one.servingAt,
      coreAtServingCelsius: one.coreAtServingCelsius,
      course: one.course,
      ...(one.drops === undefined ? {} : { drops: one.drops }),
      ...(one.skips === undefined ? {} : { skips: [...one.skips] }),
      ...(one.takesOut === undefined ? {} : { takesOut: one.takesOut }),
    }),
  );
  const first = options[0];
  if (!first || (mends && (first.kind !== mends || missOf(dinner, first) > hopelessKelvin)))
    return none;
  if (!moved) return { facts: [{ type: 'options-offered', options }], options };
  const openChoice: Question = { kind: 'choice', expecting: 'choice', text: '' };
  const choice: NewFact[] = [{ type: 'question-asked', question: openChoice }];
  // What is left out of a dinner is the cook's to say.
  if (leavesOut(first))
    return { facts: [{ type: 'options-offered', options }, ...choice], options };
  return {
    facts: [
      { type: 'options-offered', options, taken: 1 },
      { type: 'course-set', course: first.course },
      ...(options.length > 1 ? choice : []),
    ],
    options,
  };
}

/**
 * A table so much later than wanted, a rest cut by as much, or a chance no better than this, is worth a choice
 * while an oven turned up can still mend it: a core follows its oven only after half an hour.
 */
const behindMinutes = 8;
const doubtfulChance = 0.8;
const mendableMinutes = 20;
/** An oven just turned has not shown yet what it does. */
const turnedMinutes = 25;

/** What is asked of a choice that a reading alone brings up. */
function isChoosable({ outcomes, before, after }: Asking): boolean {
  const { plan, dinner, now } = after;
  if (!plan || !outcomes.some((outcome) => outcome.key === 'reading-noted')) return false;
  if (dinner.servingAt === undefined || roastWentInAt(dinner) === undefined) return false;
  if (roastCameOutAt(dinner) !== undefined || before.dinner.question?.expecting === 'choice')
    return false;
  return !(dinner.course?.oven ?? []).some(({ at }) => minutesBetween(at, now) < turnedMinutes);
}

/**
 * A rest so much longer than the cut likes makes most of its warmth on the board, where nothing can be done
 * about it any more; an oven turned down in time makes less of it, while it can be looked at.
 */
const longerRestMinutes = 5;
/** An oven turned down shows what it does only after half an hour. */
const slowableMinutes = 30;

/**
 * A reading that leaves more time than a rest asks for that is as long as is safe, told while a slower oven can
 * still use it: what the forecast cannot know yet, and what hands are late, is not given away.
 */
function isAhead(asking: Asking): boolean {
  const { plan, dinner, forecast, now } = asking.after;
  const rest = roastOf(dinner)?.rest;
  if (!plan || !forecast || !rest || !isChoosable(asking)) return false;
  return (
    plan.restMinutes >
      longerRestMinutes + Math.max(rest.p90, safeRestOf(rest, forecast.pullMinute)) &&
    plan.onTimeChance >= surelyOnTime &&
    minutesBetween(now, plan.pullAt.p50) > slowableMinutes
  );
}
const surelyOnTime = 0.9;

/** A reading that makes dinner late, told while no other choice is open or freshly made. */
function isBehind(asking: Asking): boolean {
  const { plan, dinner, now } = asking.after;
  if (!plan || dinner.servingAt === undefined || !isChoosable(asking)) return false;
  if (minutesBetween(now, plan.pullAt.p50) <= mendableMinutes) return false;
  const promised = dinner.course?.servingAt ?? dinner.servingAt;
  const minutesFromWanted = minutesBetween(promised, plan.serving.likelyAt);
  return isCut(dinner, { ...plan, minutesFromWanted });
}

/** Late, or short of rest, by so much that it is worth a choice, or in time by luck alone. */
const isCut = (
  dinner: Outlook['dinner'],
  {
    minutesFromWanted,
    restMinutes,
    onTimeChance,
  }: Pick<OptionFigures, 'minutesFromWanted' | 'restMinutes' | 'onTimeChance'>,
): boolean =>
  onTimeChance < doubtfulChance ||
  Math.max(0, (roastOf(dinner)?.rest.p50 ?? 0) - restMinutes) + minutesFromWanted > behindMinutes;

/** A course that ends so far from what was asked for mends nothing. */
const hopelessKelvin = 8;

/** Kelvin by which the likely core at the knife is off what was asked for. */
const missOf = (
  dinner: Outlook['dinner'],
  { coreAtServingCelsius }: Pick<OptionFigures, 'coreAtServingCelsius'>,
): number =>
  Math.abs(coreAtServingCelsius.p50 - (dinner.target?.serveCelsius ?? coreAtServingCelsius.p50));

const isBroken = ({ broken }: OptionFigures): boolean => broken.length > 0;

/** While a choice is open, or hardly a word was said since, the numbers told still stand. */
function areFresh({ before, known }: Asking): boolean {
  const offered = known.findLast((fact) => fact.type === 'options-offered');
  return (
    before.dinner.question?.kind === 'choice' ||
    (offered !== undefined && minutesBetween(offered.at, before.now) <= freshMinutes)
  );
}

/**
 * What comes of each way that is for such a day. None where a reading alone brings up a choice, and nothing can
 * be done about it or nothing need be.
 */
async function simulateWays(
  choosing: Choosing,
  {
    ranking,
    mends,
    compute,
  }: { ranking: Ranking; mends: Option['kind'] | undefined; compute: Compute },
): Promise<{ figures: OptionFigures }[]> {
  const drafts = draftOptions(choosing);
  if (mends && !drafts.some(({ kind }) => kind === mends)) return [];
  const known = new Map<OptionDraft, { figures: OptionFigures }[]>();
  // In the order of the drafts, whichever was simulated first.
  const simulated = (): { figures: OptionFigures }[] =>
    drafts.flatMap((draft) => known.get(draft) ?? []);
  // No draft hangs on another: threads that have nothing to do take one each.
  const simulateAll = async (wanted: (kind: Option['kind']) => boolean): Promise<void> => {
    const open = drafts.filter((draft) => wanted(draft.kind) && !known.has(draft));
    const found = await Promise.all(open.map((draft) => bothPulls(choosing, draft, compute)));
    for (const [index, draft] of open.entries()) known.set(draft, found[index] ?? []);
  };
  // What comes of doing nothing tells whether anything need be done, and which ways are of any use.
  await simulateAll(isPlain);
  const bearable = simulated().some(
    ({ figures }) => figures.kind === 'carry-on' && !isCut(choosing.dinner, figures),
  );
  if (ranking.behind && bearable) return [];
  const isRuledOut = kindsRuledOut(simulated(), ranking);
  await simulateAll((kind) => !isRuledOut(kind));
  // Where none of them is sound, one that is of no use today still tells that there is a sound one.
  if (simulated().every(({ figures }) => isBroken(figures))) await simulateAll(() => true);
  return simulated();
}

/**
 * One draft as it stands, and with the pull that its own rest asks for where that is truer: a slower oven pulled
 * as before would show nothing of what it is good for. Aimed or not, the better of the two is ranked: a truer
 * core may cost the hour.
 */
async function bothPulls(
  choosing: Choosing,
  draft: OptionDraft,
  compute: Compute,
): Promise<{ figures: OptionFigures }[]> {
  const { dinner } = choosing;
  const one = await simulate(choosing, draft, compute);
  // Before the roast is in, a dish less asks for no pull of its own: whoever waits is offered the truer one.
  if (draft.drops !== undefined && roastWentInAt(dinner) === undefined) return [one];
  const aimed = await aim(choosing, one, compute);
  const truer =
    aimed && (isBroken(one.figures) || missOf(dinner, aimed.figures) < missOf(dinner, one.figures));
  return truer ? [one, aimed] : [one];
}

/** One draft through the forecast to the plate, from the same belief as the day's own. */
async function simulate(
  choosing: Choosing,
  draft: OptionDraft,
  compute: Compute,
): Promise<{ draft: OptionDraft; figures: OptionFigures }> {
  const come = async (one: OptionDraft): Promise<OptionFigures> => {
    const figuresBy = async (forecast: Forecast): Promise<OptionFigures> => {
      const planned = await compute.plan(dayAsked(choosing, one, forecast));
      return figuresOf(choosing, { draft: one, forecast, planned });
    };
    const forecast = await forecastOf(choosing, one, compute);
    const found = await figuresBy(forecast);
    if (!staysIn(choosing, found, forecast)) return found;
    return figuresBy(await compute.forecast({ ...choosing.question, instead: one.instead }));
  };
  const figures = await come(draft);
  const { hold } = figures;
  if (!hold || isSameHold(hold, draft.instead.hold)) return { draft, figures };
  // Its day has told how long the dishes leave the oven to it.
  const held = { ...draft, instead: { ...draft.instead, hold } };
  return { draft: held, figures: await come(held) };
}

/** A way is told by its core; what its slices would look like is not asked. */
const forecastOf = (
  { question }: Choosing,
  { instead }: OptionDraft,
  compute: Compute,
): Promise<Forecast> => compute.forecast({ ...question, instead: { ...instead, only: 'core' } });

/** Left in past its pull, the roast goes on climbing: then what it would be at other minutes is asked too. */
const staysIn = (
  { plan }: Choosing,
  { pullAt }: OptionFigures,
  { pullMinute }: Forecast,
): boolean => minutesBetween(plan.roastInAt, pullAt) > pullMinute.p50 + lateAtPullMinutes;

/** The draft with the pull that its own rest asks for: forecasts only, and the day planned once. */
async function aim(
  choosing: Choosing,
  from: { draft: OptionDraft; figures: OptionFigures },
  compute: Compute,
): Promise<{ draft: OptionDraft; figures: OptionFigures } | undefined> {
  let { draft } = from;
  let { coreAtServingCelsius, restMinutes } = from.figures;
  const pulledAt = from.figures.pullAt;
  let gain = 1;
  for (let round = 0; round < aimedAtMost; round += 1) {
    const before = { pull: draft.instead.pullCelsius, core: coreAtServingCelsius.p50 };
    const next = retargeted(choosing, draft, { coreAtServingCelsius, restMinutes }, gain);
    if (!next) break;
    draft = next;
    const forecast = await forecastOf(choosing, draft, compute);
    // Pulled sooner or later, it rests for longer or shorter till the same table.
    const pullAt = choosing.plan.roastInAt + forecast.pullMinute.p50 * 60_000;
    const rest = from.figures.restMinutes + minutesBetween(pullAt, pulledAt);
    restMinutes = Math.max(rest, Math.min(from.figures.restMinutes, 20));
    coreAtServingCelsius = coreAtKnife(forecast, {
      dinner: choosing.dinner,
      pullCelsius: draft.instead.pullCelsius,
      outMinute: forecast.pullMinute.p50,
      restMinutes,
    });
    const moved = before.core - coreAtServingCelsius.p50;
    const gained = (before.pull - draft.instead.pullCelsius) / moved;
    gain = Number.isFinite(gained) ? clamp(gained, 1, gainAtMost) : 1;
  }
  return draft === from.draft ? undefined : simulate(choosing, draft, compute);
}
