/** What stands after facts that are decided on and not yet written. */
import { dinnerOf } from '../kitchen/dinner.ts';
import { type Fact, factVersion, type NewFact } from '../kitchen/facts.ts';
import type { Context } from './context.ts';
import { standingOf } from './stage.ts';

/** The context as it would stand with these facts appended. */
export function withFacts(context: Context, added: readonly NewFact[]): Context {
  const start = (context.facts.at(-1)?.position ?? -1) + 1;
  const placed = added.map(
    (fact, index): Fact =>
      ({
        ...fact,
        dinner: context.id,
        position: start + index,
        at: context.now,
        v: factVersion,
      }) as Fact,
  );
  const facts = [...context.facts, ...placed];
  return {
    ...context,
    facts,
    dinner: dinnerOf(context.id, facts),
    standing: standingOf(context.id, facts),
  };
}
