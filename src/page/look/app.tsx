/** The whole page: rail, order, what comes next, the day, the counter; and what lies over them. */
import { useEffect, useState } from 'preact/hooks';
import type { Desk } from '../desk.ts';
import type { Kitchen, Source } from '../kitchen.ts';
import { pullCalled, sentenceNow } from '../now.ts';
import { type Manner, mannerOf } from '../show.ts';
import { words } from '../words.ts';
import { Begin } from './begin.tsx';
import { Counter } from './counter.tsx';
import { DayPicture } from './day-picture.tsx';
import { Next } from './next.tsx';
import { Options } from './options.tsx';
import { Order } from './order.tsx';
import { Pad } from './pad.tsx';
import { Rail } from './rail.tsx';
import { SlicePicture } from './slice-picture.tsx';
import { StepNote } from './step-note.tsx';
import { Talk } from './talk.tsx';
import { Turned } from './turned.tsx';

/** Nobody says more than this in one breath; more is a paste gone wrong, and is not sent. */
const charactersAtMost = 2_000;

export function App({ kitchen, desk }: { kitchen: Kitchen; desk: Desk }) {
  const { state } = kitchen;
  const [over, setOver] = useState<'pad' | 'talk' | undefined>();
  const [step, setStep] = useState<string>();
  const { view } = state;
  const manner: Manner = view
    ? mannerOf(view, desk.state.hours)
    : {
        timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
        temperature: 'F',
        hours: desk.state.hours,
      };
  const at = timeOf(kitchen);
  const sentence = sentenceNow(state, at, manner);
  const pull = pullCalled(state, at);
  const pullId = pull?.id;
  useEffect(() => desk.caller.pullOpen(pullId !== undefined && desk.state.begun));
  const say = (text: string, source: Source): void => {
    const clean = text.trim();
    const long = clean.length > charactersAtMost;
    desk.tell(long ? words.tooLong : undefined);
    if (clean !== '' && !long) kitchen.say(clean, source);
  };
  const choosing =
    view?.asking?.kind === 'choice' && view.options?.length ? view.options : undefined;
  const laid = view !== undefined && view.steps.length > 0;
  const noted = view?.steps.find((one) => one.id === step);
  const openPad = (): void => setOver('pad');
  if (pull && over !== 'pad')
    return (
      <Turned
        {...{ pull, manner, state, at }}
        say={(text) => say(text, 'touch')}
        openPad={openPad}
      />
    );
  return (
    <div class={`page ${choosing ? 'choosing' : laid ? '' : 'alone'}`}>
      <Rail {...{ state, desk, at, manner, kitchen }} />
      <Order
        {...{ view, sentence, manner, openPad }}
        link={state.link}
        choosing={choosing !== undefined}
        say={(text) => say(text, 'touch')}
      />
      {choosing ? (
        <Options
          options={choosing}
          manner={manner}
          choose={(n) => say(words.says.option(n), 'touch')}
        />
      ) : (
        laid && <Next {...{ view, sentence, at, manner }} />
      )}
      {laid && (
        <section class="sheet" aria-label={words.day}>
          <DayPicture {...{ view, at, manner, selected: step }} select={setStep} />
          <SlicePicture view={view} manner={manner} />
          {noted && (
            <StepNote
              step={noted}
              {...{ view, at, manner }}
              close={() => setStep(undefined)}
              say={(text) => say(text, 'touch')}
            />
          )}
        </section>
      )}
      {!desk.state.begun && <Begin desk={desk} />}
      <Counter
        {...{ state, desk, openPad }}
        say={(text) => say(text, 'keys')}
        openTalk={() => setOver('talk')}
      />
      {over === 'talk' && <Talk talk={state.talk} close={() => setOver(undefined)} />}
      {over === 'pad' && (
        <Pad
          unit={manner.temperature}
          close={() => setOver(undefined)}
          send={(value) => {
            say(words.says.reads(value), 'touch');
            setOver(undefined);
          }}
        />
      )}
    </div>
  );
}

/** The dinner's clock: it runs by itself only where the kitchen's does. */
function timeOf({ state }: Kitchen): number {
  if (!state.view) return Date.now();
  const then = Date.parse(state.view.at);
  return state.clock === 'real' ? then + Math.max(0, Date.now() - state.viewAt) : then;
}
