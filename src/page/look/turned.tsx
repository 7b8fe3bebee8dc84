/** The back of the page: the pull, and nothing else, until it is answered. */
import type { Called, KitchenState } from '../kitchen.ts';
import { split } from '../now.ts';
import { clock, type Manner, wallClock } from '../show.ts';
import { words } from '../words.ts';

/** The back of the page speaks larger still. */
const atAGlance = 40;

export function Turned(props: {
  pull: Called;
  state: KitchenState;
  manner: Manner;
  at: number;
  say(text: string): void;
  openPad(): void;
}) {
  const { pull, state, manner, at, say, openPad } = props;
  const first = state.called.find(
    (one) => one.kind === 'pull' && one.position > Math.max(state.notYetAt, -1),
  );
  // The words of the first call: a repeat begins with "Is it out?".
  const { main, rest } = split((first ?? pull).text, atAGlance);
  return (
    <section class="turned" role="alertdialog" aria-label={main} aria-live="assertive">
      <time class="clock">{wallClock(at, manner)}</time>
      <p class="main">{main}</p>
      <p class="rest">
        {rest} {words.pullCalled(clock((first ?? pull).at, manner))}
        {state.link === 'lost' && ` ${words.lost('now')}`}
      </p>
      <div class="stubs">
        <button type="button" class="stub out" onClick={() => say(words.says.isOut)}>
          {words.isOut}
        </button>
        <button type="button" class="stub" onClick={() => say(words.says.notYet)}>
          {words.notYet}
        </button>
        <button type="button" class="stub" onClick={openPad}>
          {words.reading}
        </button>
      </div>
    </section>
  );
}
