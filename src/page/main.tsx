/** Starts the page: one render for everything that is known, whenever any of it changes. */
import { render } from 'preact';
import { Desk } from './desk.ts';
import { Kitchen } from './kitchen.ts';
import { App } from './look/app.tsx';

const kitchen = new Kitchen();
const desk = new Desk(kitchen);
const root = document.getElementById('page') as HTMLElement;

let asked = false;
const draw = (): void => {
  if (asked) return;
  asked = true;
  queueMicrotask(() => {
    asked = false;
    render(<App kitchen={kitchen} desk={desk} />, root);
  });
};
kitchen.listen(draw);
desk.listen(draw);
setInterval(draw, 1_000);
draw();
void kitchen.run();
void desk.open();
if ('serviceWorker' in navigator)
  void navigator.serviceWorker.register('/worker.js').catch(() => {});
