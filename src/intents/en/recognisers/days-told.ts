/** What is told of the days around: the thaw, the salt, who comes later, who is fed, that it is too much. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';

/** A table that is not a household's; said of another room or not, it is this dinner. */
export const publicTable: Recogniser = {
  name: 'public-table',
  moods: ['statement', 'intention', 'story', 'request'],
  phrases: [
    ...phrases(
      [
        '(cooking|roasting|this is|it is|doing this|doing it|feeding|catering) [this] [for] (the public|a church supper|a church dinner|a charity dinner|a charity supper|a restaurant|a cafe|a pub|paying guests|customers|a fundraiser|a wedding|a village fete|a soup kitchen|a care home)',
        '(church|chapel|charity|fundraising|parish|village|community|congregation|scout|club) (supper|dinner|lunch|meal)',
        '(for|at|in) the (church|chapel|parish|village|community|town|school|fellowship|scout|club|mosque|temple) (hall|club|canteen|kitchen|fair|fete|social)',
        '(selling|sell) (it|this|plates|tickets|the slices)',
        '(cooking|roasting|catering|feeding) [this] [for] a school',
        '(paying|ticketed) (guests|customers|diners)',
      ],
      { intent: 'feed-public' },
    ),
    // "This is for the parish lunch, forty that pay": how many of them.
    ...phrases(
      '^ [this one is|it is|that is|there are|we are] [for] {n:number} (of them|paying guests|paying|tickets|plates|that pay|people that pay|persons that pay|portions|covers|payers) ',
      (match) => {
        const count = match.count('n');
        return count !== undefined &&
          count > 1 &&
          match.before.some(({ intent }) => intent === 'feed-public')
          ? { intent: 'set-guests', count }
          : undefined;
      },
    ),
  ],
};

/** Told of the evening before, and true of this dinner all the same. */
export const lastNight: Recogniser = {
  name: 'last-night',
  moods: ['statement', 'story'],
  phrases: [
    ...phrases(
      [
        '(salted|seasoned|brined|dry brined) @it (last night|yesterday|overnight|the night before|for overnight|for tomorrow)',
        '@it (was|is|has been) (salted|seasoned|brined) (last night|yesterday|overnight|the night before|for overnight)',
      ],
      { intent: 'report-done', step: 'salt-ahead' },
    ),
  ],
};

const laterPart =
  '(half|some|most|one|two|three|a few|a couple|the rest|{n:number}) [of] [the|our|my] [guests|them|us|family|people|others|table|$]';

/** Minutes after the table, or the clock time. */
const comesLater = (match: Match): Meaning | undefined => {
  const line = match.line;
  const who =
    /^(half|some|most|one|two|three|four|five|a few|a couple|the rest)\b( of (the |our |my )?(guests|them|us|family|people|others)| the guests| the family)?/.exec(
      line,
    );
  const named = who ? who[0] : match.words('who').replace(/^(my|our|and|but) /, '');
  if (
    named === '' ||
    // The guests as a whole move the table; so does whoever is told of in more than a name.
    (!who &&
      (named.split(' ').length > 2 ||
        /\b(guests|ones|people|they|visitors|family|company|everyone|will|would|told|said|have|to)\b/.test(
          named,
        ))) ||
    /^(i|we|it|they|you|dinner|everyone|everybody|guests|the guests|all|food|that|oven|train|the train|he|she)$/.test(
      named,
    )
  )
    return undefined;
  const minutes = match.has('minutes') ? match.minutes('minutes') : undefined;
  const time = match.has('clock') ? match.mealTime('clock') : undefined;
  const value =
    minutes !== undefined && Number.isFinite(minutes) ? String(Math.round(minutes)) : time;
  return {
    intent: 'note-guest',
    who: named,
    need: 'comes-later',
    ...(value ? { value } : {}),
  };
};

const notTill = phrases(
  [
    '^ {who:word} (will not|can not|is not going to|does not) (be here|get here|make it|be home|arrive|come|be back|be with us) (till|before) {clock} ',
    '^ {who:word} (will not|can not) be (here|home|back|in) (till|before) {clock} ',
  ],
  (match) => {
    const who = match.words('who');
    const value = match.mealTime('clock');
    return value === undefined ||
      /^(i|we|it|they|you|dinner|everyone|guests|he|she|that|this)$/.test(who)
      ? undefined
      : { intent: 'note-guest', who, need: 'comes-later', value };
  },
);

export const daysTold: Recogniser = {
  name: 'days-told',
  moods: ['statement', 'negative', 'intention', 'request'],
  phrases: [
    ...notTill,
    ...phrases(
      [
        '(put|moved|got|taken|transferred|move|took) @it [out of the freezer] [and] (in|into|to) the fridge (to|for) (thaw|thawing|defrost|defrosting)',
        '(@it|^ it) is [now] [in the fridge] (thawing|defrosting) [in the fridge]',
        '@it is in the fridge (thawing|to thaw|defrosting|to defrost)',
        '(started|begun|began) (thawing|defrosting) [@it]',
        '(took|taken|got|moved) @it out of the freezer',
      ],
      (match) => ({ intent: 'report-started', step: 'thaw', ...momentOf(match) }),
    ),
    ...phrases(
      [
        '(@it|^ it) (is|has) not [fully|quite|completely|all|really] (thawed|defrosted)',
        '(@it|^ it) (is|has) [only] (half|partly) (thawed|defrosted)',
        '(still|is) (icy|hard|ice|frozen|solid) in (the middle|the centre|the center|its heart|there)',
      ],
      ({ context, line, whole }) =>
        // Potatoes are hard in the middle too, and what has been cooked is not frozen.
        / (icy|ice|frozen) /.test(` ${line}`) ||
        (/^(planning|prep)?$/.test(context.stage ?? '') && !/ (potatoes|not done) /.test(whole))
          ? { intent: 'describe-roast', frozen: true }
          : undefined,
    ),
    ...phrases(
      [
        '(@it|^ it) (is|has) [all|fully|completely|now|finally|nicely] (thawed|defrosted) [out|through|$]',
        '(soft|thawed) all [the way] through',
      ],
      { intent: 'report-done', step: 'thaw-check' },
    ),
    ...phrases(
      [
        '[the] (supper|tea|early supper|food) is on [for [the] (kids|children|little ones|early ones|{who:word})]',
        '[the|my] (kids|children|little ones|boys|girls|twins) (are|have) [all|now|already|just] (fed|eaten|been fed|eating|had (supper|tea|their supper|their tea))',
        '(fed|have fed) [the|my] (kids|children|little ones)',
      ],
      (match) =>
        / is on the table /.test(match.line)
          ? undefined
          : { intent: 'report-done', step: 'feed-early' },
    ),
    ...phrases(
      ['(shopping) (is|has been) (done|finished)', '(did|done|finished) [all] the shopping'],
      { intent: 'report-done', step: 'shop' },
    ),
    ...phrases(
      [
        `^ ${laterPart} (come|are coming|comes|is coming|arrive|are arriving|will come|will be here|are joining|get here|turn up|will arrive|are|will be) [about|only|at least] {minutes:duration} (later|late|after|after dinner|behind)`,
        `^ ${laterPart} (come|are coming|comes|is coming|arrive|are arriving|will come|will be here|are joining|get here|turn up|will arrive) [only|later|late] (at|by|around) {clock}`,
        '{who:thing} (comes|come|is coming|are coming|arrives|arrive|is arriving|joins us|joins|is joining us|is joining|will come|will arrive|gets here|can only come|only comes) [about|only] {minutes:duration} (later|late|after|after dinner|after the others|after us)',
        '{who:thing} (is coming|comes|arrives|is arriving|gets here|will be here|will come) (at|around) {clock}',
        '{who:thing} (can only come|only comes|will only be here|can not come before|can not be here before|is only coming|only gets here|comes later|is coming later|joins us|is joining us|joins) [at|by|around|only at|later at] {clock}',
      ],
      comesLater,
    ),
    ...phrases(
      [
        '(there is|we have|i have|one guest has|a guest has|one has|someone has|a guest with|someone with|one with|and) (a|an) [bad|severe|serious|nasty] {value:word} (allergy|intolerance)',
      ],
      (match) => ({ intent: 'note-guest', need: 'allergy', value: match.words('value') }),
    ),
    ...phrases(
      [
        '(i can not|can not) (do|manage|handle) (this|it|it all|all this) [any more|anymore|$|!|.|,]',
        '^ [i|i am going to|i want to] (give up|giving up) $',
        '(i am|i will) (about to cry|going to cry|going mad|losing my mind|so stressed|really stressed|completely lost|totally lost|in over my head)',
        '(this is|it is) [all] (hopeless|a disaster|too hard|impossible|going wrong|falling apart)',
      ],
      { intent: 'report-trouble', trouble: 'overwhelmed' },
    ),
  ],
};
