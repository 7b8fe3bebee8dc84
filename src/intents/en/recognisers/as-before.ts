/** "The potatoes went in at twenty past four and the puddings at ten to five": the verb is said once. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { outOf, startedIn } from './events.ts';

/** What was said of the dish before is said of this one too. */
function likewise(match: Match): readonly Meaning[] | undefined {
  if (dishIn(match.words('who'), match.context) === undefined) return undefined;
  switch (match.before.at(-1)?.intent) {
    case 'report-started':
      return startedIn(match);
    case 'report-out':
      return outOf(match);
    default:
      return undefined;
  }
}

export const asBefore: Recogniser = {
  name: 'as-before',
  moods: ['statement'],
  phrases: [
    ...phrases('^ {who:thing} (at|since|from) {clock} $', likewise),
    ...phrases('^ {who:thing} $', (match) =>
      match.at === undefined && match.minutesAgo === undefined ? undefined : likewise(match),
    ),
  ],
};
