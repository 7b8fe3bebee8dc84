/** Outcomes to one German reply. The small second language: no caution is dropped, some are English still. */
import type { Composed, Composing } from '../composing.ts';
import { type SafetyRuleId, safetyRules } from '../en/safety.ts';
import { type Spoken, say, sentences, silent } from '../spoken.ts';
import { stepName } from './names.ts';
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
  const parts: Spoken[] = [
    ...(scene.firstPlan ? [openingWords(scene)] : outcomes.map((one) => wordOutcome(one, scene))),
    ...cautioned.map(
      (rule) => say`Zur Sicherheit (englisch): ${safetyRules[rule].sentence(scene)}`,
    ),
    question ? questionWords(question, scene) : silent,
    next,
  ];
  const { text, speech } = sentences(parts);
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
