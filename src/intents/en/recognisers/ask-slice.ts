/** "How pink will it be", "what if I pull it now": the cut face. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';
import { degrees } from './subjects.ts';

const face =
  '(it|@it|that|the (slice|slices|cut face|inside|middle|cross section|meat|roast|first slice))';
const meat = '[it|@it|that|the (roast|meat|joint|beef|rib|lamb|pork)]';
const now =
  '(now|right now|just now|this minute|right away|straight away|already|at once|[right] this (second|minute|moment|instant|very (second|minute|moment)))';

export const askSlice: Recogniser = {
  name: 'ask-slice',
  moods: ['question', 'request', 'statement'],
  phrases: [
    ...phrases(
      [
        `(what if|what happens if|what would happen if|what do i get if|what would i get if|how would ${face} (be|look|turn out) if) (i|we) (roast|roasted|cook|cooked|do|did|bake|baked|run|ran) ${meat} (at|in) [a|an] {temperature} [degrees|degree] [oven] [instead]`,
        'how (wide|thick|deep|big) (will|would|is) the (grey|gray|brown|grey band|gray band|brown band|band|rim|grey rim|gray rim|brown rim) [be] (at|in|with) [a|an] {temperature}',
        `how (pink|red|grey|gray|brown|even) (will|would|is) ${face} [be|turn out|come out|look] (at|in) [a|an] {temperature} [degrees|degree] [oven]`,
      ],
      (match) => ({ intent: 'ask-slice', ...degrees(match) }),
    ),
    ...phrases(
      [
        `(what if|what happens if|what would happen if|what will happen if|what is it like if|what do i get if|what would i get if|how would ${face} (look|be|turn out) if|how (done|pink|rare) would ${face} be if|what would ${face} (be|look) like if) (i|we) (pull|pulled|take|took|have|had) ${meat} [out] ${now} $`,
        `(what if|what happens if|what would happen if) (it|@it) (comes|came|is|was|were) [taken|pulled] out ${now} $`,
        `[what] if (i|we) (pull|pulled|take|took|yank|yanked|cut|carved) ${meat} [out] ${now} [,] (what|how|would ${face} be|will ${face} be|is ${face}) {rest}`,
      ],
      { intent: 'ask-slice', pulled: 'now' },
    ),
    ...phrases(
      [
        `how (pink|red|grey|gray|brown|bloody|rare|done) (will|would|is|are) ${face} [be|going to be|turn out|come out|look] if (i|we) (pull|pulled|take|took|yank|yanked|cut|carve|carved) ${meat} [out] ${now} $`,
        `^ [so|and|ok] how (pink|red|grey|gray|bloody) [is ${face}|would ${face} be] ${now} $`,
      ],
      { intent: 'ask-slice', pulled: 'now' },
    ),
    // "The grey ring was an inch. How wide will it be at 300?"
    ...phrases(
      'how (wide|thick|deep|big) (is|will|would) it [be|going to be] (at|in) [a|an] {temperature} [degrees|oven|$] ',
      (match) =>
        / (grey|gray|band|ring|rim) /.test(` ${match.whole}`)
          ? { intent: 'ask-slice', ...degrees(match) }
          : undefined,
    ),
    ...phrases(
      [
        `how (pink|red|grey|gray|brown|bloody|even) (will|would|is|are) ${face} (be|going to be|turn out|come out|look)`,
        `how (pink|red|grey|gray|brown|bloody|even) ${face} (will be|would be|is going to be|will turn out|will come out|will look|comes out|turns out) `,
        `(what|how) (will|would|is|are) ${face} [going to] look [like] (inside|when i cut it|when we cut it|when it is cut|cut|at the table|on the plate|when i carve it|when carved) $`,
        '(what|how) (will|would|is) the (slice|slices|cut face|cross section|first slice) [going to] look [like]',
        'how (wide|thick|deep|big|much of it) (will|would|is) the (grey|gray|brown|grey band|gray band|brown band|band|rim|grey rim|gray rim|brown rim|overcooked part) [be|going to be]',
        'how much [of it] (will|would|is going to) (be|come out|stay) (grey|gray|pink|red|brown|overcooked)',
        '(show|tell) me [about] the (slice|cut face|grey band|gray band|cross section)',
      ],
      { intent: 'ask-slice' },
    ),
  ],
};
