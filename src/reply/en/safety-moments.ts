/** Which moments of safety a dinner stands in, so that each rule is said when it matters. */
import { fahrenheitOfCelsius } from '../../base/units.ts';
import { roastCardOf } from '../../kitchen/dinner.ts';
import type { Outcome } from '../../kitchen/outcome.ts';
import { figureOf, meets, type SafetyMoment } from '../../kitchen/safety.ts';
import type { Scene } from '../scene.ts';

/** Whether a core is served below the consumer minimum. */
export const isBelowConsumerMinimum = (celsius: number): boolean =>
  !meets(figureOf('below-145', 'core'), fahrenheitOfCelsius(celsius));

export function safetyMomentsOf(
  outcomes: readonly Outcome[],
  scene: Scene,
): ReadonlySet<SafetyMoment> {
  const { dinner } = scene;
  const moments = new Set<SafetyMoment>();
  const when = (moment: SafetyMoment, is: boolean): void => {
    if (is) moments.add(moment);
  };
  const serve = dinner.target?.serveCelsius;
  const { prepared } = dinner.roast;
  const inside = prepared === 'rolled' || prepared === 'stuffed' || prepared === 'tenderised';
  const pink = serve !== undefined && isBelowConsumerMinimum(serve);
  const needs = new Set(dinner.notes.map((note) => note.need));
  when('pink-target', pink && !inside);
  when('surface-inside', pink && inside);
  when('vulnerable-guest', needs.has('vulnerable') && (serve === undefined || pink));
  when('allergic-guest', needs.has('allergy'));
  when('guests-later', needs.has('comes-later'));
  when('roast-frozen', dinner.roast.frozen === true);
  when('feeding-public', dinner.publicTable);
  when('hold-offered', scene.options?.[0]?.kind === 'pull-and-hold');
  when(
    'served',
    outcomes.some((one) => one.key === 'step-done' && one.step === 'serve'),
  );
  when(
    'glass-pan',
    outcomes.some((one) => one.key === 'setup-noted' && /glass/.test(one.pan ?? '')),
  );
  when(
    'oven-below-roasting',
    roastsGently(scene) && (scene.plan?.complete === true || methodChanged(outcomes)),
  );
  return moments;
}

const methodChanged = (outcomes: readonly Outcome[]): boolean =>
  outcomes.some((one) => one.key === 'method-set');

/** The method's oven, once past the sear, is below what the consumer charts ask for. */
function roastsGently({ dinner }: Scene): boolean {
  const method = roastCardOf(dinner)?.methods[dinner.method];
  return method !== undefined && !meets(figureOf('oven-325', 'oven'), method.roastFahrenheit);
}
