/** Paper laid over the page: takes the focus, gives it back, goes away with Escape. */
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

export function Dialog(props: {
  label: string;
  kind: string;
  close(): void;
  children: ComponentChildren;
}) {
  const { label, kind, close, children } = props;
  const ref = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    ref.current?.showModal();
    return () => {
      if (before instanceof HTMLElement || before instanceof SVGElement) before.focus();
    };
  }, []);
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: Escape does the same by keyboard
    <dialog
      ref={ref}
      class={`over ticket ${kind}`}
      aria-label={label}
      onCancel={(event) => {
        event.preventDefault();
        close();
      }}
      onClick={(event) => {
        if (event.target === ref.current) close();
      }}
    >
      <div class="over-inside">{children}</div>
    </dialog>
  );
}
