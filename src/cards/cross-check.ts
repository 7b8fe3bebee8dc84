/**
 * What must hold within a card and between cards beyond the schema: steps named exist, a roast has
 * the moments the dinner's chart knows, tools are declared, placeholders can be filled.
 */
import { allergens } from '../kitchen/allergens.ts';
import type { Card } from '../kitchen/card.ts';
import { methodSteps, reservedSteps, roastFaults } from './roast-check.ts';
import { type Fault, guess } from './sentences.ts';

/** What may stand in braces in a spoken line, filled in in the household's units. */
const placeholders = [
  'searTemperature',
  'roastTemperature',
  'pullTemperature',
  'ovenTemperature',
  'guests',
  'vulnerableGuests',
  'consumerMinimum',
  'coreTemperature',
] as const;

/** Units an amount may be in. */
const units = ['g', 'ml', 'tsp', 'tbsp', 'cup', 'clove', 'sprig', 'piece', 'bunch'] as const;

/** Every fault that can be seen in one card alone. */
export function crossCheck(card: Card): Fault[] {
  return [
    ...twiceNamedSteps(card),
    ...unknownSteps(card),
    ...circles(card),
    ...undeclaredTools(card),
    ...unknownPlaceholders(card),
    ...windows(card),
    ...ingredientFaults(card),
    ...freeFaults(card),
    ...(card.card === 'roast' ? roastFaults(card) : dishFaults(card)),
  ];
}

/** Faults that need the other cards: a step of another dish that is not there. */
export function danglingSteps(card: Card, known: ReadonlyMap<string, Card>): Fault[] {
  return card.steps.flatMap((step, index) =>
    (step.after ?? []).flatMap((after, at): Fault[] => {
      const dot = after.step.indexOf('.');
      if (dot < 0) return [];
      const dish = after.step.slice(0, dot);
      const name = after.step.slice(dot + 1);
      const other = dish === card.id ? card : known.get(dish);
      const path = ['steps', index, 'after', at, 'step'];
      if (other === undefined)
        return [{ path, sentence: `there is no card "${dish}"${guess(dish, [...known.keys()])}` }];
      const steps = other.steps.map((one) => one.id);
      if (steps.includes(name)) return [];
      return [{ path, sentence: `the card "${dish}" has no step "${name}"${guess(name, steps)}` }];
    }),
  );
}

/** A roast that a dish is usual with, and that no card knows. */
export function unknownRoasts(card: Card, known: ReadonlyMap<string, Card>): Fault[] {
  if (card.card === 'roast' || !Array.isArray(card.usual)) return [];
  const roasts = [...known.values()].filter((one) => one.card === 'roast').map((one) => one.id);
  return card.usual.flatMap((cut, index): Fault[] =>
    roasts.includes(cut)
      ? []
      : [
          {
            path: ['usual', index],
            sentence: `there is no card of a roast "${cut}"${guess(cut, roasts)}`,
          },
        ],
  );
}

function twiceNamedSteps(card: Card): Fault[] {
  const seen = new Set<string>();
  return card.steps.flatMap((step, index) => {
    if (!seen.has(step.id)) {
      seen.add(step.id);
      return [];
    }
    return [
      { path: ['steps', index, 'id'], sentence: `another step is called "${step.id}" already` },
    ];
  });
}

function unknownSteps(card: Card): Fault[] {
  const ids = card.steps.map((step) => step.id);
  return card.steps.flatMap((step, index) =>
    (step.after ?? []).flatMap((after, at): Fault[] => {
      const path = ['steps', index, 'after', at];
      if (after.step === step.id)
        return [{ path: [...path, 'step'], sentence: 'a step cannot come after itself' }];
      if ((after.minMinutes ?? 0) > (after.maxMinutes ?? Number.POSITIVE_INFINITY))
        return [{ path: [...path, 'maxMinutes'], sentence: 'maxMinutes is less than minMinutes' }];
      if (after.step.includes('.') || ids.includes(after.step)) return [];
      return [
        {
          path: [...path, 'step'],
          sentence: `this card has no step "${after.step}"${guess(after.step, ids)}`,
        },
      ];
    }),
  );
}

/** Steps that wait for each other in a ring could never begin. */
function circles(card: Card): Fault[] {
  const waits = new Map(
    card.steps.map((step) => [step.id, (step.after ?? []).map((after) => after.step)]),
  );
  const reaches = (from: string, goal: string, seen: Set<string>): boolean =>
    (waits.get(from) ?? []).some((next) => {
      if (next === goal) return true;
      if (seen.has(next)) return false;
      seen.add(next);
      return reaches(next, goal, seen);
    });
  const index = card.steps.findIndex(
    (step) =>
      !(step.after ?? []).some((after) => after.step === step.id) &&
      reaches(step.id, step.id, new Set()),
  );
  return index < 0
    ? []
    : [
        {
          path: ['steps', index, 'after'],
          sentence: `"${card.steps[index]?.id}" waits for a step that waits for it in turn`,
        },
      ];
}

function undeclaredTools(card: Card): Fault[] {
  const tools = (card.tools ?? []).map((tool) => tool.id);
  return card.steps.flatMap((step, index) => {
    const needs = step.needs ?? [];
    return [
      ...needs.flatMap((need, at): Fault[] =>
        tools.includes(need)
          ? []
          : [
              {
                path: ['steps', index, 'needs', at],
                sentence: `the tool "${need}" is not listed under tools${guess(need, tools)}`,
              },
            ],
      ),
      ...(step.without ?? []).flatMap((way, at): Fault[] =>
        needs.includes(way.tool)
          ? []
          : [
              {
                path: ['steps', index, 'without', at, 'tool'],
                sentence: `the step does not need "${way.tool}"; name it under needs as well`,
              },
            ],
      ),
    ];
  });
}

function unknownPlaceholders(card: Card): Fault[] {
  const faults: Fault[] = [];
  const walk = (value: unknown, path: (string | number)[]): void => {
    if (typeof value === 'string') {
      for (const [, name = ''] of value.matchAll(/\{([^}]*)\}/g))
        if (!(placeholders as readonly string[]).includes(name))
          faults.push({
            path,
            sentence: `{${name}} cannot be filled in${guess(name, placeholders)}`,
          });
    } else if (Array.isArray(value)) {
      value.forEach((item, at) => {
        walk(item, [...path, at]);
      });
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, item] of Object.entries(value)) walk(item, [...path, key]);
    }
  };
  walk(card, []);
  card.steps.forEach((step, index) => {
    const core = card.card === 'roast' ? undefined : card.coreFahrenheit;
    if (core === undefined && JSON.stringify(step).includes('{coreTemperature}'))
      faults.push({
        path: ['steps', index],
        sentence: '{coreTemperature} stands in a card that has no coreFahrenheit',
      });
    if (card.card !== 'roast' && !step.oven && JSON.stringify(step).includes('{ovenTemperature}'))
      faults.push({
        path: ['steps', index],
        sentence: '{ovenTemperature} stands in a step that has no oven of its own',
      });
  });
  return faults;
}

function ingredientFaults(card: Card): Fault[] {
  return card.ingredients.flatMap((part, index) => [
    ...((units as readonly string[]).includes(part.unit)
      ? []
      : [
          {
            path: ['ingredients', index, 'unit'],
            sentence: `"${part.unit}" is not a unit here; use ${units.join(', ')}`,
          },
        ]),
    ...(['allergens', 'insteadAllergens'] as const).flatMap((field) =>
      // A misspelt one would go unseen by the guest it matters to, so others are refused.
      (part[field] ?? []).flatMap((name, at): Fault[] =>
        (allergens as readonly string[]).includes(name)
          ? []
          : [
              {
                path: ['ingredients', index, field, at],
                sentence: `"${name}" is not an allergen known here; use ${allergens.join(', ')}`,
              },
            ],
      ),
    ),
  ]);
}

/** Each key of `free` is something the ingredient has: one of its allergens, or meat. */
function freeFaults(card: Card): Fault[] {
  return card.ingredients.flatMap((part, index) => {
    const has = [...(part.allergens ?? []), ...(part.meat ? ['meat'] : [])];
    return Object.keys(part.free ?? {}).flatMap((name): Fault[] =>
      has.includes(name)
        ? []
        : [
            {
              path: ['ingredients', index, 'free', name],
              sentence: `the ingredient has no "${name}" to be free of${guess(name, has)}`,
            },
          ],
    );
  });
}

function windows(card: Card): Fault[] {
  return card.steps.flatMap((step, index): Fault[] => {
    const ends = step.ends;
    if (!ends) return [];
    const rising =
      ends.earliestMinutes <= ends.likelyMinutes && ends.likelyMinutes <= ends.latestMinutes;
    return rising
      ? []
      : [
          {
            path: ['steps', index, 'ends'],
            sentence:
              'earliestMinutes, likelyMinutes and latestMinutes must rise; before is negative',
          },
        ];
  });
}

/** A dish may not borrow the roast's own moments: "pull" would mean two things in one dinner. */
function dishFaults(card: Card): Fault[] {
  const taken: readonly string[] = [
    ...reservedSteps,
    ...methodSteps['sear-first'],
    ...methodSteps['sear-last'],
  ];
  return card.steps.flatMap((step, index): Fault[] =>
    taken.includes(step.id)
      ? [
          {
            path: ['steps', index, 'id'],
            sentence: `"${step.id}" is the roast's own; call this step something else`,
          },
        ]
      : [],
  );
}
