/** Large digits for a reading, for wet knuckles. */
import { useLayoutEffect, useState } from 'preact/hooks';
import { words } from '../words.ts';
import { Dialog } from './dialog.tsx';

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'];

export function Pad(props: { unit: 'F' | 'C'; close(): void; send(value: string): void }) {
  const { unit, close, send } = props;
  const [value, setValue] = useState('');
  const add = (digit: string): void => setValue((before) => `${before}${digit}`.slice(0, 3));
  const back = (): void => setValue((before) => before.slice(0, -1));
  const ready = value !== '';
  useLayoutEffect(() => {
    const press = ({ key }: KeyboardEvent): void => {
      if (/^\d$/.test(key)) add(key);
      if (key === 'Backspace') back();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
  return (
    <Dialog label={words.pad} kind="pad" close={close}>
      <h2>{words.pad}</h2>
      <output class="shown" aria-live="polite">
        {value || '\u00a0'} °{unit}
      </output>
      <div class="keys">
        {digits.map((digit) => (
          <button type="button" key={digit} class={`key key-${digit}`} onClick={() => add(digit)}>
            {digit}
          </button>
        ))}
        <button type="button" class="key word" onClick={back}>
          {words.padBack}
        </button>
        <button type="button" class="key word" onClick={close}>
          {words.close}
        </button>
      </div>
      <button type="button" class="stub send" disabled={!ready} onClick={() => send(value)}>
        {words.padSend(value)}
      </button>
    </Dialog>
  );
}
