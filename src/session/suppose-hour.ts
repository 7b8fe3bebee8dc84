/**
 * "What if we ate at eight": the same dinner with that hour, planned and put through the forecast for the
 * answer, and thrown away. Nothing of it becomes a fact.
 */
import type { HeardOf } from '../kitchen/heard.ts';
import { type Outcome, questionIn } from '../kitchen/outcome.ts';
import type { Context } from '../machine/context.ts';
import { decide } from '../machine/decide.ts';
import { withFacts } from '../machine/with-facts.ts';
import type { Scene } from '../reply/scene.ts';
import { offer } from './offer.ts';
import { type Outlook, outlookOf } from './outlook.ts';
import type { Compute } from './ports.ts';

export async function supposedHour(
  outcomes: readonly Outcome[],
  { context, outlook, compute }: { context: Context; outlook: Outlook; compute: Compute },
): Promise<Scene['supposedHour']> {
  const asked = questionIn(outcomes, 'ask-options');
  const told = asked && toldAs(asked);
  if (!told) return undefined;
  const decision = decide([told], context);
  const { facts } = withFacts(context, decision.facts);
  const after = await outlookOf(context.id, facts, context.now, compute);
  if (!after.plan || after.dinner.servingAt === undefined) return undefined;
  const offered = await offer({
    outcomes: decision.outcomes,
    before: outlook,
    after,
    known: context.facts,
    compute,
  });
  return { wantedAt: after.dinner.servingAt, plan: after.plan, options: offered.options ?? [] };
}

/** The supposition as it would be told in earnest. */
function toldAs({
  time,
  minutes,
  text,
}: HeardOf<'ask-options'>): HeardOf<'set-serving-time'> | HeardOf<'shift-serving'> | undefined {
  if (time !== undefined) return { intent: 'set-serving-time', time, text };
  return minutes === undefined ? undefined : { intent: 'shift-serving', minutes, text };
}
