/** What is believed of the oven and the thermometer: forgotten, or told otherwise. */
import type { HeardOf } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

/** "You know" is struck out as a filler before this is read, so the verb may be missing. */
const known =
  '(know|knew|have learnt|have learned|learnt|learned|remember|think|believe|thought|have noted|noted|figured|figured out|worked out|found out|picked up)';
const whose = '(of|about) (my|the|our|this|that) [old|main|meat|last|previous] {what:word}';

const things: Readonly<Record<string, HeardOf<'forget-kitchen'>['about']>> = {
  oven: 'oven',
  cooker: 'oven',
  stove: 'oven',
  thermometer: 'thermometer',
  probe: 'thermometer',
};

function aboutOf(match: Match): Meaning | undefined {
  const named = / (oven|cooker|stove|thermometer|probe) /.exec(` ${match.whole}`)?.[1];
  const what = match.words('what').trim();
  const about = Object.hasOwn(things, what) ? things[what] : things[named ?? ''];
  return about && { intent: 'forget-kitchen', about };
}

/** What a thermometer should show where water freezes and where it boils. */
const fixed = { F: { ice: 32, boiling: 212 }, C: { ice: 0, boiling: 100 } } as const;

/** "It was 214 in boiling water": how far it is out. */
function shownInWater(match: Match): Meaning | undefined {
  // Up a mountain it boils sooner, and no thermometer is to blame.
  if (/ (mountains?|altitude|feet|metres|meters|up here|hills?) /.test(` ${match.whole}`))
    return undefined;
  const { temperature, unit } = match.temperature('temperature');
  const scale = fixed[unit ?? match.context.units.temperature];
  const point = / (ice|iced|slush) /.test(` ${match.line}`) ? scale.ice : scale.boiling;
  const bias = temperature - point;
  return Number.isFinite(bias) && bias !== 0 && Math.abs(bias) <= 15
    ? { intent: 'report-thermometer', bias }
    : undefined;
}

const always = '[always|actually|constantly|permanently]';
/** How it was found: "I checked it in ice water". */
const tested =
  '[[,] [because|since|as] [i|we] [have] (checked|tested|tried|compared|measured) [it] (in|with|against) [a|some|the] {how:rest}]';

function outBy(match: Match): Meaning | undefined {
  const size = match.number('n');
  // "One degree more than before": how far it rose.
  if (/ (than|before|earlier|ago|since) (?!(it should|the truth))/.test(` ${match.whole}`))
    return undefined;
  return Number.isFinite(size) && size !== 0
    ? {
        intent: 'report-thermometer',
        bias: / (low|cold|under|colder|lower|little|less|few|fewer) /.test(match.line)
          ? -size
          : size,
      }
    : undefined;
}

const newThing = '(new|brand new|a new one|another one now|changed|swapped|replaced)';

export const kitchenBelief: Recogniser = {
  name: 'kitchen-belief',
  moods: ['statement', 'request', 'negative', 'intention', 'question', 'story'],
  phrases: [
    ...phrases(
      [
        `(forget|drop|clear|wipe|ignore|disregard|scrap) (everything|all|anything|whatever|what) [that|the|this] [stuff|things|notes] [that] [you] [have] [${known}] ${whose}`,
        `(everything|all|anything|whatever|what) [that|the|this] [stuff|things] [that] you [have] ${known} ${whose} [please] [you can|can|just] (throw away|throw out|throw it away|forget|forget it|go|bin|bin it|drop|drop it)`,
        '(new|different) {what:word} {z:rest} (forget|ignore|disregard|scrap|drop) [all|everything|whatever|what] {y:rest} (old|last|previous|other) one ',
        '(do not|stop|no longer|forget|drop|ignore) (use|using|apply|applying|count|the|counting) [the|that|my|any] (old|last|previous) (correction|offset|adjustment|bias) [for|of|on] [the|my] [{what:word}]',
        `(what|whatever|everything|all|anything) [that] [you] [have] [${known}] (about|of) [the|my|our|that] (old|last|previous) (one|{what:word}) [please] (throw|forget|drop|delete|scrap|bin|clear|ignore|wipe|does not count|is no good|no longer) [away|out|it|that|any more] `,
        `(same|likewise|ditto|the same) [goes] (with|for) [the|my|our] {what:word} [,] [that|it|this] [one|ones] [is] ${newThing} [too|as well|now|also|$] `,
        `(do not|stop|no longer) (trust|trusting|believe|believing|count on|counting on|use|using|go by|going by) what you ${known} ${whose}`,
      ],
      aboutOf,
    ),
    ...phrases(
      [
        '(in|into|with) [a|the|some] [glass of|bowl of|cup of] (boiling water|ice water|iced water|ice bath|ice slush) [it|the probe|the thermometer|thermometer] (was|is|read|reads|said|says|showed|shows|came out at|gives|gave|comes out at) {temperature}',
        '(was|is|read|reads|said|says|showed|shows|got|gives|gave|@thermometer) {temperature} [degrees] in [a|the|some] [glass of|bowl of|cup of] (boiling water|ice water|iced water|ice bath|ice slush)',
        'water (boils|freezes|boiled|is boiling) at {temperature} [degrees] (on|by|with|according to|for) (this|that|the|my|our) [old|new|meat] (thermometer|probe)',
        '(thermometer|probe) (boils|has boiling) [water] at {temperature} ',
      ],
      shownInWater,
    ),
    ...phrases(
      [
        '(boiling [water]|kettle|ice water|iced water|ice bath|boil) {y:rest} (reads|reading|out by|off by|is) {n:any} [degrees] [too] (high|low|hot|cold|over|under)',
        `[my|the|our|this] [here|old|new|leave-in|instant-read|quick] (thermometer|probe|meat thermometer) ${always} (reads|runs|is|shows|gives|goes|reading|running|showing) ${always} [about|out by|off by|off|out] {n:any} [degrees] [too] (high|low|hot|cold|over|under|hotter|colder|higher|lower|much|little|more|less|few|fewer) ${tested}`,
      ],
      outBy,
    ),
    // "So it shows three less", where the thermometer was named.
    ...phrases(
      `[so|and|that means] [then] (it|this one|that one|mine|she|he) ${always} (reads|shows|gives|runs) ${always} {n:any} [degrees] [too] (high|low|much|little|more|less|over|under|few) [than (it should|the truth|it is|true)|always|$] ${tested}`,
      (match) =>
        / (thermometer|probe) /.test(` ${match.whole}`) && match.number('n') <= 15
          ? outBy(match)
          : undefined,
    ),
  ],
};
