/** Outcomes to one German reply. The small second language, with every caution of the first. */

import { inOneBreath, type Part } from '../breath.ts';
import type { Composed, Composing } from '../composing.ts';
import type { SafetyRuleId } from '../en/safety.ts';
import { say, silent } from '../spoken.ts';
import { stepName } from './names.ts';
import { safetySentence } from './safety.ts';
import { openingWords, questionWords, wordOutcome } from './wording.ts';

export function composeGerman(
  { outcomes, scene, question }: Composing,
  cautioned: readonly SafetyRuleId[],
): Composed {
  const emergency = outcomes.find((outcome) => outcome.key === 'emergency');
  if (emergency) return { ...wordOutcome(emergency, scene), keys: ['emergency'], cautioned: [] };
  const next =
    question === undefined && scene.nextStep !== undefined
      ? say`Als Nächstes: ${stepName(scene.nextStep, scene.dinner)}.`
      : silent;
  const parts: Part[] = [
    ...(scene.firstPlan ? [openingWords(scene)] : outcomes.map((one) => wordOutcome(one, scene))),
    ...cautioned.map((rule) => ({ ...safetySentence(rule, scene), must: true })),
    ...(question ? [{ ...questionWords(question, scene), must: true }] : []),
    next,
  ];
  const { text, speech } = inOneBreath(parts);
  return {
    text: text.trim(),
    speech: speech.trim(),
    keys: [
      ...outcomes.map((one) => one.key as string),
      ...(question ? [`ask-${question.kind}`] : []),
    ],
    cautioned: [...cautioned],
  };
}
