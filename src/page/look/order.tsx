/** The white ticket: what the dinner is, the sentence that matters now, and the stubs to answer with. */
import type { KitchenState } from '../kitchen.ts';
import type { Sentence } from '../now.ts';
import { clock, degrees, type Manner } from '../show.ts';
import type { View } from '../wire.ts';
import { donenessWords, words } from '../words.ts';

export function Order(props: {
  view: View | undefined;
  sentence: Sentence;
  manner: Manner;
  link: KitchenState['link'];
  choosing: boolean;
  say(text: string): void;
  openPad(): void;
}) {
  const { view, sentence, manner, link, choosing, say, openPad } = props;
  const reads =
    view &&
    !view.emergency &&
    !choosing &&
    ['preheat', 'sear', 'low-roast', 'rest', 'hold'].includes(view.stage);
  const wants = sentence.called?.kind === 'check-due';
  return (
    <section class="order ticket" aria-label={words.check.table}>
      <Check view={view} manner={manner} />
      <div class={`say long-${lengthOf(sentence.main)}`}>
        <p class="main" role="status">
          {sentence.main}
        </p>
        {sentence.rest && <p class="rest">{sentence.rest}</p>}
        {link === 'unpaired' && (
          <a class="stub" href="/pair">
            {words.unpaired.link}
          </a>
        )}
      </div>
      <div class="stubs">
        {sentence.answers.map((answer) => (
          <button type="button" class="stub" key={answer.says} onClick={() => say(answer.says)}>
            {answer.label}
          </button>
        ))}
        {reads && (
          <button type="button" class={wants ? 'stub' : 'stub quiet'} onClick={openPad}>
            {words.reading}
          </button>
        )}
      </div>
    </section>
  );
}

/** How long the sentence is, in five sizes of type. */
const lengthOf = (text: string): number => {
  const size = [18, 34, 56, 84].findIndex((most) => text.length <= most);
  return size === -1 ? 4 : size;
};

/** The head of the pad, blank until it is told. */
function Check({ view, manner }: { view: View | undefined; manner: Manner }) {
  const knife = view?.target.serveFahrenheit;
  const oven = view?.oven.setFahrenheit ?? 0;
  const done = view?.target.doneness;
  const { check } = words;
  return (
    <dl class="check">
      <Box name={check.table} value={view?.serving.wanted && clock(view.serving.wanted, manner)} />
      <Box name={check.guests} value={view?.guests?.toString()} />
      <Box name={check.roast} {...roastOf(view)} wide />
      <Box
        name={check.knife}
        value={knife === undefined ? undefined : degrees(knife, manner)}
        more={done && donenessWords[done]}
        wide
      />
      <Box name={check.oven} value={oven > 0 ? degrees(oven, manner) : view && words.ovenOff} />
    </dl>
  );
}

function Box(props: {
  name: string;
  value: string | undefined;
  more?: string | undefined;
  wide?: boolean;
}) {
  const { name, value, more, wide } = props;
  return (
    <div class={wide ? 'wide' : ''}>
      <dt>{name}</dt>
      <dd>
        <b>{value ?? words.unknown}</b>
        {more && <span> {more}</span>}
      </dd>
    </div>
  );
}

function roastOf(view: View | undefined): { value: string | undefined; more?: string } {
  const { cut, pounds, kilograms, bones } = view?.roast ?? {};
  const name = cut?.replace(/-/g, ' ');
  const mass = view?.units.weight === 'kg' ? kilograms : pounds;
  const told = bones ? words.bones(bones) : undefined;
  if (mass === undefined) return { value: name, ...(told ? { more: told } : {}) };
  const value = `${Number(mass.toFixed(1))}\u00a0${view?.units.weight}`;
  return { value, more: [name, told].filter(Boolean).join(', ') };
}
