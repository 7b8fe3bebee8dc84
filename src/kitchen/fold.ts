/**
 * Folds of a dinner's facts. One goes on from where an earlier fold of the same facts ended, since a
 * turn looks at a dinner several times and each time a few facts later. Only work is saved: a fold from
 * the first fact on gives the same.
 */
import type { Fact } from './facts.ts';

/** The facts that still count: those no later undo or correction has voided. */
export function standing(facts: readonly Fact[]): Fact[] {
  const voided = new Set<number>();
  for (const fact of facts) {
    if (fact.type === 'positions-voided')
      for (const position of fact.positions) voided.add(position);
  }
  return facts.filter((fact) => !voided.has(fact.position));
}

export interface Folding<State> {
  begin(facts: readonly Fact[]): State;
  copy(state: State): State;
  /** Changes the state by a fact that counts. */
  take(state: State, fact: Fact): void;
}

interface Ended<State> {
  facts: readonly Fact[];
  state: State;
}

/** Ends kept of one dinner, each a continuation of the one before: those of the facts a turn tries on, and the last that is written. */
const keptAtMost = 8;

export class Fold<State> {
  private readonly folding: Folding<State>;
  private readonly ended = new WeakMap<Fact, Ended<State>[]>();

  constructor(folding: Folding<State>) {
    this.folding = folding;
  }

  /** The state after these facts; not to be changed by whoever asked. */
  over(facts: readonly Fact[]): State {
    const [first] = facts;
    if (!first) return this.folding.begin(facts);
    const kept = this.ended.get(first) ?? [];
    while (kept.length > 0 && !isBeginning(kept.at(-1)?.facts ?? [], facts)) kept.pop();
    const before = kept.at(-1);
    if (before?.facts.length === facts.length) return before.state;
    const state = this.after(before, facts);
    this.ended.set(first, [...kept, { facts, state }].slice(-keptAtMost));
    return state;
  }

  private after(before: Ended<State> | undefined, facts: readonly Fact[]): State {
    const more = facts.slice(before?.facts.length ?? 0);
    const goesOn = before && more.every((fact) => fact.type !== 'positions-voided');
    const state = goesOn ? this.folding.copy(before.state) : this.folding.begin(facts);
    for (const fact of goesOn ? more : standing(facts)) this.folding.take(state, fact);
    return state;
  }
}

const isBeginning = (some: readonly Fact[], all: readonly Fact[]): boolean =>
  some.length <= all.length && some.every((fact, index) => fact === all[index]);
