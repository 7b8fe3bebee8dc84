/** The canary ticket: what comes next and when; and the timers beside it on goldenrod. */
import { comingSteps, type Sentence } from '../now.ts';
import { capital, clock, type Manner, span } from '../show.ts';
import type { View } from '../wire.ts';
import { words } from '../words.ts';

/** A timer's ticket takes the room of two steps to come. */
const timersAtMost = 2;

export function Next(props: { view: View; sentence: Sentence; at: number; manner: Manner }) {
  const { view, sentence, at, manner } = props;
  const timers = [...view.timers].sort((a, b) => a.at.localeCompare(b.at)).slice(0, timersAtMost);
  const coming = comingSteps(view, sentence, at, timers.length === 0 ? 4 : 3 - timers.length);
  return (
    <div class="hanging">
      {timers.length > 0 && (
        <section class="ticket timers" aria-label={words.timers}>
          <h2>{words.timers}</h2>
          <ul>
            {timers.map((timer) => (
              <li key={timer.id}>
                <b>{span(Date.parse(timer.at) - at)}</b>
                <span>{capital(timer.label ?? words.timer)}</span>
                <i>{clock(timer.at, manner)}</i>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section class="ticket next" aria-label={words.next}>
        <h2>{words.next}</h2>
        {coming.length === 0 && <p>{words.nothingNext}</p>}
        <ol>
          {coming.map((step) => (
            <li key={step.id}>
              <b>{clock(step.start, manner)}</b>
              <span>{capital(step.title)}</span>
              <i>{words.inSpan(span(Date.parse(step.start) - at))}</i>
            </li>
          ))}
        </ol>
      </section>
    </div>
  );
}
