/** The few sentences the terminal says itself; everything else is the session's. */
import type { AnnouncementKind } from '../../kitchen/facts.ts';

export const greeting =
  'Tell me about dinner: the roast and its weight, when it should be on the table, for how many, ' +
  'and how done. Leave with ctrl-d; I keep everything.';

export const welcomeBack = (time: string): string => `Back at your dinner; it is ${time}.`;

/** What a call was about, when all that is left of it is that it was missed. */
const missedWords: Record<AnnouncementKind, string> = {
  'get-ready': 'getting ready',
  'step-due': 'a step',
  'oven-change': 'the oven',
  'side-in': 'a side into the oven',
  'check-due': 'a reading',
  pull: 'taking the roast out',
  'rest-over': 'the end of the rest',
  carve: 'carving',
  serve: 'serving',
  'put-away': 'putting away the leftovers',
  timer: 'a timer',
  watch: 'a watch on the core',
  'running-late': 'a warning that we run late',
  'plan-changed': 'a change of plan',
  caution: 'a caution',
};

/** One sentence: what was missed and what to do first. */
export function missedSentence(
  missed: readonly { time: string; kind: AnnouncementKind; title?: string | undefined }[],
  first: string | undefined,
): string {
  const told = missed.map(({ time, kind, title }) => {
    const about = kind === 'step-due' && title ? title : missedWords[kind];
    return `${about} at ${time}`;
  });
  const shown = told.length > 3 ? [`${told.length - 2} earlier calls`, ...told.slice(-2)] : told;
  const list = shown.length > 1 ? `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}` : shown[0];
  return `While I was away you missed ${list}; first now: ${first ?? 'tell me how things stand.'}`;
}

export const failed = (why: string): string =>
  `That did not work (${why}); nothing is lost, say it again.`;
