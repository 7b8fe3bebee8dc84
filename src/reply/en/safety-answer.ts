/** Which rules of safety a question is about. Two authorities are two sentences, each with its name. */
import { figureOf, meets, type SafetyRuleId } from '../../kitchen/safety.ts';
import { inOneBreath } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { capital, type Spoken, say, silent } from '../spoken.ts';
import { safetyRules, yoursToChoose } from './safety.ts';
import { isBelowConsumerMinimum } from './safety-moments.ts';
import { duration } from './words.ts';

/** The first row whose words stand in the question answers it. */
const topics: readonly (readonly [words: RegExp, rules: readonly SafetyRuleId[]])[] = [
  [
    /restaurant|caf(e|é)|public|customers|church|charity|food service|sell|catering|fete|school/,
    ['public', 'cook-food-service', 'hold-food-service'],
  ],
  [/pregnan|child|kid|baby|toddler|elder|\bold\b|grand|gran\b|nan\b|immun|chemo/, ['vulnerable']],
  [/allerg|coeliac|celiac|intoleran/, ['allergy']],
  [/refreeze|freeze (it )?again|back in the freezer/, ['refreeze']],
  [/thaw|defrost|frozen|freezer/, ['thaw-fridge', 'thaw-water']],
  [/rinse|wash|hands|\bboard\b|raw juice|platter|cross contam/, ['raw-hands']],
  [/raw.*(fridge|keep|kept|days)|(fridge|keep|kept).*raw|before (i|we) cook/, ['raw-kept']],
  [/left ?over|next day|tomorrow|reheat|cold (meat|roast|beef)|sandwich/, ['leftovers']],
  [
    /counter|out of|sat out|left out|leave (it )?out|overnight|room temp/,
    ['out-of-fridge', 'leftovers'],
  ],
  [/cool (it|down)|cooling|chill/, ['leftovers', 'cool-food-service']],
  [/fridge|keep|how many days/, ['leftovers']],
  [/hold|warm|wait/, ['hold', 'hold-food-service']],
  [/chicken|turkey|poultry|stuffing|mince|ground/, ['poultry']],
  [
    /bacteria|kill|log|pasteur|sous vide|lethal|salmonella|e coli/,
    ['below-145', 'plant-lethality'],
  ],
  [/oven (at|of)|low oven|gentle oven|250|low and slow/, ['oven-325', 'oven-food-service']],
  [/thermometer|probe/, ['thermometer']],
  [/glass/, ['glass']],
  [/how long.*rest|rest.*long/, ['rest']],
];

/** So long out of the fridge, against the two-hour rule. */
function stoodOut(minutes: number, scene: Scene): Spoken {
  const within = meets(figureOf('out-of-fridge', 'out'), minutes);
  return inOneBreath([
    within
      ? say`${capital(duration(minutes))} is within it.`
      : say`${capital(duration(minutes))} is too long: do not eat it.`,
    safetyRules['out-of-fridge'].sentence(scene),
  ]);
}

export function safetyAnswer(
  about: string | undefined,
  scene: Scene,
  minutes?: number | undefined,
): Spoken {
  if (minutes !== undefined) return stoodOut(minutes, scene);
  const topic = (about ?? '').toLowerCase();
  const found = topics.find(([words]) => words.test(topic));
  if (found) return inOneBreath(found[1].map((rule) => safetyRules[rule].sentence(scene)));
  const { prepared } = scene.dinner.roast;
  if (prepared !== undefined && prepared !== 'whole' && prepared !== 'tied-back')
    return safetyRules['surface-inside'].sentence(scene);
  const serve = scene.dinner.target?.serveCelsius;
  const below = serve !== undefined && isBelowConsumerMinimum(serve);
  return inOneBreath([
    safetyRules['below-145'].sentence(scene),
    below ? yoursToChoose(scene) : silent,
    scene.dinner.publicTable ? safetyRules.public.sentence(scene) : silent,
  ]);
}
