/** Keeps the screen on where the browser allows it; the lock falls when the page hides, so it is asked anew. */
export function stayAwake(): void {
  if (!('wakeLock' in navigator)) return;
  const ask = (): void => {
    if (document.visibilityState === 'visible')
      void navigator.wakeLock.request('screen').catch(() => undefined);
  };
  document.addEventListener('visibilitychange', ask);
  ask();
}
