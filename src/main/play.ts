/** Plays session scripts, each in a journal of its own, and keeps whatever came of them. */
import { performance } from 'node:perf_hooks';
import { openMemoryJournal } from '../journal/memory.ts';
import type { Card } from '../kitchen/card.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { Intent } from '../kitchen/heard.ts';
import type { PlayedScript } from '../rehearsal/junit.ts';
import { type Audience, type Rehearsal, rehearse } from '../rehearsal/run.ts';
import type { Script } from '../rehearsal/script.ts';
import { inThisThread } from '../session/compute.ts';
import type { Announcement } from '../session/ports.ts';
import { openSession } from '../session/session.ts';

/** Something the helper said aloud: a call of a kind, or a reply to what was heard. */
export interface Spoken {
  speech: string;
  answers: readonly Intent[];
  call?: Announcement['kind'];
}

/** A script and how it is to be played: plain data, so that it may be played in another thread. */
export interface Play {
  script: Script;
  restartEveryTurn?: boolean;
}

export interface Played extends PlayedScript {
  facts: readonly Fact[];
  spoken: readonly Spoken[];
}

/** Plays a script and times every answer. */
export async function play(
  { script, restartEveryTurn }: Play,
  cards: readonly Card[],
): Promise<Played> {
  const answerMilliseconds = new Map<number, number>();
  const spoken: Spoken[] = [];
  let dinner: readonly Fact[] = [];
  let asked = { line: 0, at: 0 };
  const rehearsal = await rehearseScript(script, cards, {
    ...(restartEveryTurn ? { restartEveryTurn } : {}),
    audience: {
      said: ({ line }) => {
        asked = { line, at: performance.now() };
      },
      replied: ({ heard, replies }) => {
        answerMilliseconds.set(asked.line, performance.now() - asked.at);
        const answers = heard.map(({ intent }) => intent);
        for (const { speech } of replies) spoken.push({ speech, answers });
      },
      announced: ({ speech, kind }) => {
        spoken.push({ speech, answers: [], call: kind });
      },
      ended: (facts) => {
        dinner = facts;
      },
    },
  });
  return { script, rehearsal, answerMilliseconds, facts: dinner, spoken };
}

/** Plays one script before an audience. */
export function rehearseScript(
  script: Script,
  cards: readonly Card[],
  options: { restartEveryTurn?: boolean; audience?: Audience } = {},
): Promise<Rehearsal> {
  const journal = openMemoryJournal();
  return rehearse(script, {
    open: (opening) =>
      openSession({ dinner: 'rehearsal', journal, compute: inThisThread, cards, opening }),
    ...(options.restartEveryTurn ? { restartEveryTurn: true } : {}),
    ...(options.audience ? { audience: options.audience } : {}),
  });
}
