/** The counter at the foot: the last words said, a field for more, the ear. */
import { useRef, useState } from 'preact/hooks';
import type { Desk } from '../desk.ts';
import type { KitchenState, TalkLine } from '../kitchen.ts';
import { words } from '../words.ts';

const swipePixels = 30;

export function Counter(props: {
  state: KitchenState;
  desk: Desk;
  say(text: string): void;
  openTalk(): void;
  openPad(): void;
}) {
  const { state, desk, say, openTalk } = props;
  const [text, setText] = useState('');
  const from = useRef<number | undefined>(undefined);
  const { ear, where, hearing, begun } = desk.state;
  const { cook, reply } = lastWords(state.talk);
  const waiting = state.outbox[0];
  const send = (event: Event): void => {
    event.preventDefault();
    say(text);
    setText('');
  };
  return (
    <footer class="counter">
      <button
        type="button"
        class="thread"
        onClick={openTalk}
        onPointerDown={(event) => {
          from.current = event.clientY;
        }}
        onPointerUp={(event) => {
          if ((from.current ?? event.clientY) - event.clientY > swipePixels) openTalk();
        }}
      >
        {hearing ? (
          <span class="cook">{words.hearing(hearing)}</span>
        ) : waiting ? (
          <span class="cook">{words.kept(waiting.text)}</span>
        ) : (
          cook && (
            <span class="cook">
              <b>{words.you}:</b> {cook}
            </span>
          )
        )}
        {reply && <span class="reply">{reply}</span>}
        <span class="unseen">{words.allTalk}</span>
        {!cook && !reply && !hearing && !waiting && <span class="reply">{words.nothingSaid}</span>}
      </button>
      <form onSubmit={send}>
        <input
          type="text"
          name="words"
          value={text}
          placeholder={words.field}
          aria-label={words.field}
          autoComplete="off"
          enterkeyhint="send"
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <button type="submit" class="stub">
          {words.send}
        </button>
      </form>
      {begun && where !== 'none' && (
        <button
          type="button"
          class={`ear ear-${ear}`}
          aria-pressed={ear === 'listening'}
          onClick={() => desk.hear(ear !== 'listening')}
        >
          {ear === 'listening' ? words.listening : words.listen}
        </button>
      )}
    </footer>
  );
}

function lastWords(talk: readonly TalkLine[]): { cook?: string; reply?: string } {
  const cook = talk.findLast((line) => line.who === 'cook');
  const reply = talk.findLast((line) => line.who === 'reply');
  const answered = cook && reply && reply.position >= cook.position;
  return {
    ...(cook ? { cook: cook.text } : {}),
    ...(reply && (answered || !cook) ? { reply: reply.text } : {}),
  };
}
