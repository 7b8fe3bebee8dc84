/** The days around a dinner, as the words room may ask for them: the planner's figures, the cards' words. */
import type { Card, RoastCard } from '../kitchen/card.ts';
import type { DaysAhead } from '../kitchen/days.ts';
import { type Dinner, guestsOf, roastCardOf } from '../kitchen/dinner.ts';
import type { Plan } from '../kitchen/plan.ts';
import { withChores } from '../planner/days/chores.ts';
import { shoppingOf } from '../planner/days/shopping.ts';
import { feedsOf, sizeOf } from '../planner/days/size.ts';
import { choreStep, isLore } from '../reply/en/chores.ts';

/** The roast that is taken when nobody has named one. */
const usualCut = 'rib-roast';

export function daysAheadOf(dinner: Dinner, library: readonly Card[]): DaysAhead {
  const card = roastCardOf(dinner);
  const roastOf = (cut: string): RoastCard | undefined =>
    library.find((one): one is RoastCard => one.card === 'roast' && one.id === cut);
  const { kilograms, boneless } = dinner.roast;
  return {
    size: ({ guests, appetite, cut }) => {
      const wanted = (cut ? roastOf(cut) : undefined) ?? card ?? roastOf(usualCut);
      if (!wanted) return undefined;
      const size = sizeOf({
        dinner,
        card: wanted,
        guests: guests ?? guestsOf(dinner),
        appetite,
      });
      return { ...size, title: wanted.title, butcher: wanted.butcher };
    },
    feeds:
      card && kilograms !== undefined ? feedsOf(card, kilograms, boneless === true) : undefined,
    shopping: shoppingOf(dinner),
  };
}

/** The plan with the chores among its steps, titled. */
export function planWithChores(dinner: Dinner, plan: Plan, now: number): Plan {
  const whole = withChores({ dinner, plan, now });
  return {
    ...whole,
    steps: whole.steps.map((step) =>
      isLore(step.id) ? { ...step, title: choreStep(step.id, dinner)?.title ?? step.title } : step,
    ),
  };
}
