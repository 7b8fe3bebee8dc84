/** What is believed of the oven and the thermometer: forgotten, or told otherwise. */
import type { HeardOf } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

/** "You know" is struck out as a filler before this is read, so the verb may be missing. */
const known =
  '(know|knew|have learnt|have learned|learnt|learned|remember|think|believe|thought|have noted)';
const whose = '(of|about) (my|the|our|this|that) ([old|main|meat] {what:word})';

const things: Readonly<Record<string, HeardOf<'forget-kitchen'>['about']>> = {
  oven: 'oven',
  cooker: 'oven',
  stove: 'oven',
  thermometer: 'thermometer',
  probe: 'thermometer',
};

function aboutOf(match: Match): Meaning | undefined {
  const what = match.words('what').trim();
  const about = Object.hasOwn(things, what) ? things[what] : undefined;
  return about && { intent: 'forget-kitchen', about };
}

export const kitchenBelief: Recogniser = {
  name: 'kitchen-belief',
  moods: ['statement', 'request', 'negative', 'intention', 'question', 'story'],
  phrases: [
    ...phrases(
      [
        `(forget|drop|clear|wipe|ignore|disregard|scrap) (everything|all|anything|whatever|what) [that] [you] [${known}] ${whose}`,
        `(do not|stop|no longer) (trust|trusting|believe|believing|count on|counting on|use|using|go by|going by) what you ${known} ${whose}`,
      ],
      aboutOf,
    ),
    ...phrases(
      [
        '(my|the|our|this) (thermometer|probe|meat thermometer) [always] (reads|runs|is|shows) [about|out by|off by] {n:any} [degrees] [too] (high|low|hot|cold|over|under)',
      ],
      (match) => {
        const size = match.number('n');
        return Number.isFinite(size)
          ? {
              intent: 'report-thermometer',
              bias: / (low|cold|under) /.test(match.line) ? -size : size,
            }
          : undefined;
      },
    ),
  ],
};
