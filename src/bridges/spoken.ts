/** What a bridge to ears says of a turn, and what it says when there is none. */
import type { Turn } from '../session/ports.ts';

export const spokenSilence = 'I heard nothing.';
export const spokenFailure = 'Sorry, that did not work. Nothing is lost; please say it again.';
const noWords = 'I have nothing to say to that.';

export const speechOf = (turn: Turn): string =>
  turn.replies
    .map((reply) => reply.speech)
    .filter((words) => words !== '')
    .join(' ') || noWords;
