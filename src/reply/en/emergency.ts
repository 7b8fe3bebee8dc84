/**
 * Emergencies: the first sentence is what to do, before anything else. Then who takes over, then what
 * of the roast cannot wait. Usual first-aid cautions, from memory; trained help comes first.
 */
import { helpersAt } from '../../kitchen/dinner.ts';
import type { EmergencyKind } from '../../kitchen/heard.ts';
import type { PlannedStep } from '../../kitchen/plan.ts';
import { inOneBreath } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { forEyes, type Spoken, say, sentences } from '../spoken.ts';
import { isInOven, isResting } from './standing.ts';
import { clock } from './words.ts';

const firstAid: Record<EmergencyKind, Spoken> = {
  fire: say`Keep the oven door shut and turn the oven off. No water on fat; a lid on a burning pan. If it does not die down at once, everyone out, and call the fire service.`,
  burn: say`Cool the burn under cool running water for twenty minutes, rings off, no ice or butter. Large, deep, blistered or on the face: emergency services.`,
  cut: say`Press a clean cloth hard on the cut and hold it up. If it is deep or will not stop bleeding, call emergency services.`,
  fall: say`Stay down and check what hurts. After a blow to the head or back, or if standing fails, do not move and call emergency services.`,
  choking: {
    text: 'If they cannot cough or speak, five hard slaps between the shoulder blades, then five belly thrusts, in turn. Have someone call emergency services now. For a baby, chest thrusts in place of belly thrusts.',
    speech:
      'If they cannot cough or speak: five hard slaps between the shoulder blades, five belly thrusts, for a baby chest thrusts, in turn. Emergency services now.',
  },
  collapse: say`Call emergency services now. Do they breathe normally? If not, push hard and fast on the middle of the chest; if so, onto their side.`,
  reaction: say`Use their adrenaline pen now if they have one, and call emergency services. Lie them down, sitting if breathing is hard; stay with them.`,
};

/** The moves of the roast that somebody must make while the cook is away. */
const vital = new Set(['oven-down', 'pull', 'sear']);

const nextVital = (scene: Scene): PlannedStep | undefined =>
  scene.plan?.steps.find(
    (step) => vital.has(step.id) && (step.state === 'planned' || step.state === 'due'),
  );

export function emergencyReply(kind: EmergencyKind, scene: Scene): Spoken {
  return inOneBreath([
    { ...firstAid[kind], must: true },
    ...(kind === 'cut' && isOut(scene) ? [onlyJuice] : []),
    kind === 'fire' ? afterFire : takeOver(scene),
  ]);
}

/** Of a roast on its board it is said that it bleeds, too. */
const onlyJuice = say`If it is only the roast, that is juice: let it rest on.`;
const isOut = (scene: Scene): boolean => isResting(scene) || scene.stage === 'carve';

/** The name as it is said to somebody. */
const called = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

const afterFire = say`Tell me when it is out.`;

function takeOver(scene: Scene): Spoken {
  const { dinner } = scene;
  const helper = helpersAt(dinner, scene.now)[0]?.who;
  const next = isInOven(scene) ? nextVital(scene) : undefined;
  const matter = next
    ? say`${next.title}, about ${clock(next.startAt, dinner)}`
    : say`the dinner can wait`;
  return sentences([
    helper
      ? say`${called(helper)} takes over${forEyes(say`: ${matter}`)}.`
      : say`Who can take over?${forEyes(say` For them: ${matter}.`)}`,
    forEyes(say`I call nothing else until you are back.`),
  ]);
}
