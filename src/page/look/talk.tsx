/** The whole talk, newest at the bottom. */
import { useEffect, useRef } from 'preact/hooks';
import type { TalkLine } from '../kitchen.ts';
import { words } from '../words.ts';
import { Dialog } from './dialog.tsx';

export function Talk({ talk, close }: { talk: readonly TalkLine[]; close(): void }) {
  const end = useRef<HTMLLIElement>(null);
  useEffect(() => end.current?.scrollIntoView({ block: 'end' }), [talk.length]);
  return (
    <Dialog label={words.allTalk} kind="talk" close={close}>
      <h2>{words.allTalk}</h2>
      <ol>
        {talk.length === 0 && <li>{words.nothingSaid}</li>}
        {talk.map((line) => (
          <li key={`${line.position} ${line.who}`} class={line.who}>
            {line.who === 'cook' && <b>{words.you}: </b>}
            {line.text}
          </li>
        ))}
        <li ref={end} class="end" aria-hidden="true" />
      </ol>
      <button type="button" class="stub" onClick={close}>
        {words.close}
      </button>
    </Dialog>
  );
}
