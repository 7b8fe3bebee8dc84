import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** The size of an element as it is laid out, in CSS pixels. */
export function useSize<E extends Element>() {
  const ref = useRef<E>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      const box = entry?.contentRect;
      if (box) setSize({ width: Math.round(box.width), height: Math.round(box.height) });
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { ref, ...size };
}
