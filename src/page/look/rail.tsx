/** The steel rail: where the dinner stands, one line of trouble if there is any, the clock. */
import type { Desk } from '../desk.ts';
import { type Kitchen, type KitchenState, staleMilliseconds } from '../kitchen.ts';
import { type Manner, span, wallClock } from '../show.ts';
import { stageWords, words } from '../words.ts';

export function Rail(props: {
  state: KitchenState;
  desk: Desk;
  kitchen: Kitchen;
  at: number;
  manner: Manner;
}) {
  const { state, desk, kitchen, at, manner } = props;
  const { theme, hours } = desk.state;
  const otherTheme = theme === 'light' ? 'dark' : 'light';
  const otherHours = hours === '12' ? '24' : '12';
  return (
    <header class="rail">
      <h1 class="stage">{state.view ? stageWords[state.view.stage] : words.program}</h1>
      <Notice state={state} desk={desk} kitchen={kitchen} />
      <button
        type="button"
        class="small"
        aria-label={words.themeTo(words.theme[otherTheme])}
        onClick={() => desk.set({ theme: otherTheme })}
      >
        {words.theme[otherTheme]}
      </button>
      <button
        type="button"
        class="small"
        aria-label={words.hoursTo(words.hours[otherHours])}
        onClick={() => desk.set({ hours: otherHours })}
      >
        {words.hours[otherHours]}
      </button>
      <time class="clock">{wallClock(at, manner)}</time>
    </header>
  );
}

function Notice({ state, desk, kitchen }: { state: KitchenState; desk: Desk; kitchen: Kitchen }) {
  const first = state.outbox[0];
  const waited = first ? Date.now() - first.since : 0;
  if (first && state.link === 'live' && waited > staleMilliseconds)
    return (
      <div class="notice" role="status">
        <span>{words.stale(first.text, span(waited))}</span>
        <button type="button" onClick={() => kitchen.sendStale()}>
          {words.sendNow}
        </button>
        <button type="button" onClick={() => kitchen.forget()}>
          {words.forget}
        </button>
      </div>
    );
  const lost =
    state.link === 'lost' && state.view
      ? words.lost(span(Date.now() - (state.lostSince ?? Date.now())))
      : undefined;
  const text = lost ?? state.refusal ?? desk.state.trouble;
  return (
    <div class="notice" role="status">
      {text && <span>{text}</span>}
    </div>
  );
}
