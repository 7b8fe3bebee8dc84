/** A slip about one step of the day: when, in what state, and why then. */
import { stateOf } from '../pack.ts';
import { capital, clock, type Manner } from '../show.ts';
import type { Step, View } from '../wire.ts';
import { words } from '../words.ts';
import { Dialog } from './dialog.tsx';

export function StepNote(props: {
  step: Step;
  view: View;
  at: number;
  manner: Manner;
  close(): void;
  say(text: string): void;
}) {
  const { step, at, manner, close, say } = props;
  const state = words.stepState[stateOf(step, at)];
  return (
    <Dialog label={step.title} kind="note" close={close}>
      <h2>{capital(step.title)}</h2>
      <p class="when">
        {words.stepTimes(clock(step.start, manner), clock(step.end, manner))}, {state}
      </p>
      <p>{step.why}</p>
      <div class="stubs">
        <button
          type="button"
          class="stub quiet"
          onClick={() => {
            say(words.says.howTo(step.title));
            close();
          }}
        >
          {words.how}
        </button>
        <button type="button" class="stub" onClick={close}>
          {words.close}
        </button>
      </div>
    </Dialog>
  );
}
