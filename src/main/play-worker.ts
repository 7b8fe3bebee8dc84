/** What a thread of the rehearsal does: one script after another, plain data in and out. */
export { play as default } from './play.ts';
