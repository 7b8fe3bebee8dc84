/** The slip of the first touch: what it allows, and what this browser does with the voice. */
import type { Desk } from '../desk.ts';
import { words } from '../words.ts';

export function Begin({ desk }: { desk: Desk }) {
  const { where } = desk.state;
  const told = {
    device: words.begin.onDevice,
    server: words.begin.remote,
    none: window.isSecureContext ? words.begin.noVoice : words.begin.plain,
  }[where];
  return (
    <section class="begin ticket" aria-label={words.begin.offer}>
      <p>
        {where === 'none' ? words.begin.offerNoVoice : words.begin.offer} {told}
      </p>
      <div class="stubs">
        {where !== 'none' && (
          <button type="button" class="stub" onClick={() => desk.begin({ microphone: true })}>
            {words.begin.button}
          </button>
        )}
        <button
          type="button"
          class={where === 'none' ? 'stub' : 'stub quiet'}
          onClick={() => desk.begin({ microphone: false })}
        >
          {where === 'none' ? words.begin.quietOnly : words.begin.quiet}
        </button>
      </div>
    </section>
  );
}
