/**
 * Decides what words mean for a dinner: facts and outcomes, from what was heard and what stands.
 * Pure and total. It knows no text, no plan, no forecast; what those expected comes in the context.
 */
import { assertNever } from '../base/assert.ts';
import { addMinutes } from '../base/time.ts';
import { celsiusOf, temperatureIn } from '../base/units.ts';
import { missingOf } from '../kitchen/dinner.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { Heard, HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided, nothing, ovenCallStep, said } from './context.ts';
import { setClock } from './decide-clocks.ts';
import { feedPublic, have, noteGuest } from './decide-days.ts';
import { addHands, paceTold } from './decide-hands.ts';
import { reportReading } from './decide-reading.ts';
import {
  inSecondOven,
  ovenDial,
  reportDone,
  reportNotDone,
  reportOut,
  reportStarted,
  skipStep,
} from './decide-steps.ts';
import {
  acknowledge,
  affirm,
  cancelTimer,
  choose,
  correct,
  type DecideReport,
  deny,
  setTimer,
  undo,
  whoseNumber,
} from './decide-talk.ts';
import * as told from './decide-told.ts';
import { unnamedSides } from './named-menu.ts';
import { withFacts } from './with-facts.ts';

/** Decides a whole utterance, each part knowing what the parts before it changed. */
export function decide(heard: readonly Heard[], context: Context): Decision {
  const facts: NewFact[] = [];
  const outcomes: Decision['outcomes'] = [];
  let now = context;
  for (const one of heard) {
    const step = decideOne(one, now);
    const settled = settling(one, step, now);
    const added = [...step.facts, ...settled];
    facts.push(...added);
    outcomes.push(...step.outcomes);
    if (added.length > 0) now = withFacts(now, added);
  }
  const unnamed = unnamedSides(facts, now);
  return {
    facts: [...resumedBy(facts, context), ...facts, ...unnamed.facts],
    outcomes: [...outcomes, ...unnamed.outcomes],
  };
}

/** Who was asked to wait hears the cook go on telling: then the wait is over. */
const resumedBy = (facts: readonly NewFact[], { dinner }: Context): NewFact[] =>
  dinner.paused &&
  facts.some(({ type }) => type !== 'question-asked' && type !== 'acknowledged') &&
  !facts.some(({ type }) => type === 'talk-paused' || type === 'talk-resumed')
    ? [{ type: 'talk-resumed' }]
    : [];

/** A question that these words answered, or passed over, is settled. */
function settling(heard: Heard, decision: Decision, context: Context): NewFact[] {
  const { question } = context.dinner;
  // A question that is asked now has taken the place of the one before it.
  const turned = /^question-(settled|asked)$/;
  if (!question || decision.facts.some(({ type }) => turned.test(type))) return [];
  const after = withFacts(context, decision.facts);
  const missing = missingOf(after.dinner);
  switch (question.kind) {
    case 'roast':
    case 'serving-time':
    case 'guests':
    case 'doneness':
      return missing.includes(question.kind) ? [] : [{ type: 'question-settled', how: 'answered' }];
    case 'serving-past':
      return decision.facts.some((fact) => fact.type === 'serving-time-set')
        ? [{ type: 'question-settled', how: 'answered' }]
        : [];
    case 'reading-improbable':
    case 'reading-contradicts':
    case 'reading-or-oven':
      return decision.facts.some((fact) => fact.type === 'reading-taken') || acts(heard, decision)
        ? [{ type: 'question-settled', how: 'answered' }]
        : [];
    case 'choice':
    case 'start-over':
      return acts(heard, decision) ? [{ type: 'question-settled', how: 'dropped' }] : [];
    default:
      return assertNever(question.kind);
  }
}

const acts = (heard: Heard, decision: Decision): boolean =>
  decision.facts.some((fact) => fact.type !== 'question-asked') && heard.intent !== 'acknowledge';

function decideOne(heard: Heard, context: Context): Decision {
  switch (heard.intent) {
    case 'describe-roast':
      return told.describeRoast(heard, context);
    case 'set-serving-time':
      return heard.of === undefined
        ? told.setServingTime(heard, context)
        : setClock({ ...heard, of: heard.of }, context);
    case 'set-guests':
      return told.setGuests(heard, context);
    case 'report-guests':
      return told.reportGuests(heard, context);
    case 'note-guest':
      return noteGuest(heard);
    case 'set-doneness':
      return told.setDoneness(heard, context);
    case 'set-method':
      return decided([{ type: 'method-set', method: heard.method }], {
        key: 'method-set',
        method: heard.method,
      });
    case 'add-dish':
      return told.addDish(heard, context);
    case 'drop-dish':
      return told.dropDish(heard, context);
    case 'report-thermometer':
      return told.reportThermometer(heard, context);
    case 'forget-kitchen':
      return decided([{ type: 'kitchen-forgotten', about: heard.about }], {
        key: 'kitchen-forgotten',
        about: heard.about,
      });
    case 'set-units':
      return decided(
        [{ type: 'units-set', temperatureUnit: heard.temperature, weightUnit: heard.weight }],
        { key: 'units-set' },
      );
    case 'lack':
      return told.lack(heard, context);
    case 'have':
      return have(heard);
    case 'feed-public':
      return feedPublic();
    case 'report-setup':
      return told.reportSetup(heard);
    case 'add-hands':
      return addHands(heard, context);
    case 'cook-away': {
      const minutes = heard.minutes ?? 15;
      const until = addMinutes(context.now, minutes);
      return decided([{ type: 'cook-left', until }], { key: 'cook-away', until, minutes });
    }
    case 'report-reading':
      return reportReading(heard, context);
    case 'report-oven':
      return reportOven(heard, context);
    case 'acknowledge':
      return acknowledge(context);
    case 'report-started':
      return heard.which === undefined
        ? reportStarted(heard, context)
        : inSecondOven(reportStarted(heard, context), context);
    case 'report-out':
      return reportOut(heard, context);
    case 'report-done': {
      const bare = heard.step === undefined || heard.step === ovenCallStep;
      const celsius = bare ? context.expected.ovenCalledCelsius : undefined;
      return celsius === undefined
        ? reportDone(heard, context)
        : reportOven(
            {
              intent: 'report-oven',
              temperature: temperatureIn(celsius, context.dinner.units.temperature),
              text: heard.text,
            },
            context,
          );
    }
    case 'report-not-done':
      return heard.step === ovenCallStep ? acknowledge(context) : reportNotDone(heard, context);
    case 'skip-step':
      return heard.step === ovenCallStep ? acknowledge(context) : skipStep(heard, context);
    case 'report-trouble':
      return reportTrouble(heard, context);
    case 'emergency':
      return decided([{ type: 'emergency-told', kind: heard.kind }], {
        key: 'emergency',
        kind: heard.kind,
      });
    case 'shift-serving':
      return told.shiftServing(heard, context);
    case 'running-behind':
      return heard.factor === undefined
        ? runningBehind(heard, context)
        : paceTold({ ...heard, factor: heard.factor }, context);
    case 'set-timer':
      return setTimer(heard, context);
    case 'cancel-timer':
      return cancelTimer(heard, context);
    case 'watch': {
      const celsius = celsiusOf(heard.temperature, heard.unit ?? context.dinner.units.temperature);
      return decided([{ type: 'watch-set', celsius }], { key: 'watch-set', celsius });
    }
    case 'affirm':
      return affirm(context);
    case 'deny':
      return deny(context);
    case 'choose':
      return choose(heard.option, context);
    case 'correct':
      return correct(heard, context, decideReport);
    case 'undo':
      return undo(context);
    case 'repeat':
      return said({ key: 'repeat' });
    case 'pause':
      return decided([{ type: 'talk-paused' }], { key: 'paused' });
    case 'resume':
      return decided([{ type: 'talk-resumed' }], { key: 'resumed' });
    case 'start-over': {
      const question = {
        kind: 'start-over' as const,
        expecting: 'confirmation' as const,
        text: '',
      };
      return decided([{ type: 'question-asked', question }], { key: 'asked', question });
    }
    case 'help':
      return said({ key: 'help' });
    case 'quiet':
      return decided([{ type: 'quiet-wished' }], { key: 'quieted' });
    case 'courtesy':
      return said({ key: 'courtesy' });
    case 'unrelated':
      return said({ key: 'unrelated' });
    case 'unclear':
      return (
        whoseNumber(heard, context) ??
        said({ key: 'unclear', heard, again: context.dinner.unclearInARow > 1 })
      );
    case 'ask-next':
    case 'ask-status':
    case 'ask-plan':
    case 'ask-options':
    case 'ask-shopping':
    case 'ask-time-left':
    case 'ask-how':
    case 'ask-why':
    case 'ask-amount':
    case 'ask-substitute':
    case 'ask-temperature':
    case 'ask-slice':
    case 'ask-safety':
    case 'ask-guests':
      return said({ key: 'answer', heard });
    default:
      return assertNever(heard);
  }
}

const decideReport: DecideReport = (heard, context) =>
  heard.intent === 'report-oven' ? reportOven(heard, context) : reportReading(heard, context);

function reportOven(heard: HeardOf<'report-oven'>, context: Context): Decision {
  const setup = told.reportOven(heard, context);
  if (heard.bias !== undefined) return setup;
  const dial = ovenDial(heard, context);
  if (!dial) return setup.outcomes.length > 0 ? setup : nothing;
  const mode = setup.facts.filter((fact) => fact.type === 'setup-reported');
  return { facts: [...mode, ...dial.facts], outcomes: dial.outcomes };
}

/** "I'm ten minutes behind": the prep slips; once the roast is in, the roast keeps its own time. */
function runningBehind(heard: HeardOf<'running-behind'>, context: Context): Decision {
  const current = context.expected.open[0];
  const facts: NewFact[] = current
    ? [{ type: 'step-not-done', step: current, minutes: heard.minutes }]
    : [];
  return decided(facts, { key: 'running-behind', minutes: heard.minutes });
}

function reportTrouble(heard: HeardOf<'report-trouble'>, context: Context): Decision {
  const { dinner, now } = context;
  const happenedAt = heard.minutesAgo === undefined ? now : addMinutes(now, -heard.minutesAgo);
  const fact: NewFact = {
    type: 'trouble-told',
    trouble: heard.trouble,
    step: heard.step,
    happenedAt,
    minutes: heard.minutes,
  };
  const facts: NewFact[] = [fact];
  const lit = [...dinner.oven].reverse().find((one) => one.celsius > 0);
  if ((heard.trouble === 'power-out' || heard.trouble === 'oven-out') && lit) {
    facts.push({ type: 'oven-stood', celsius: 0, happenedAt });
    // "It was out for twenty minutes" is over: the oven is back where it was.
    if (heard.minutes !== undefined && heard.minutesAgo === undefined) {
      const start = addMinutes(now, -heard.minutes);
      facts.splice(1, 1, { type: 'oven-stood', celsius: 0, happenedAt: start });
      facts.push({ type: 'oven-stood', celsius: lit.celsius, happenedAt: now });
    }
  }
  if (
    (heard.trouble === 'power-back' || heard.trouble === 'oven-back') &&
    lit &&
    dinner.oven.at(-1)?.celsius === 0
  )
    facts.push({ type: 'oven-stood', celsius: lit.celsius, happenedAt });
  return decided(facts, {
    key: 'trouble',
    trouble: heard.trouble,
    step: heard.step,
    text: heard.text,
  });
}
