/** What a reply is made of and what it comes to, in whichever language. */
import type { Question } from '../kitchen/facts.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import type { SafetyRuleId } from './en/safety.ts';
import type { Scene } from './scene.ts';
import type { Spoken } from './spoken.ts';

export interface Composed extends Spoken {
  keys: string[];
  /** Safety rules spoken here, so that each is said once. */
  cautioned: SafetyRuleId[];
}

export interface Composing {
  outcomes: readonly Outcome[];
  scene: Scene;
  /** What is still missing and asked for with this reply. */
  question?: Question | undefined;
  /** Whether the cook can answer at once; `closes`: a question says that its answer may wait. */
  microphone?: 'open' | 'closes' | undefined;
}
