/** Who is at table, what was noted of each, and what it means for the roast and the dishes. */
import { avoidancesOf } from '../../kitchen/allergens.ts';
import type { GuestNote } from '../../kitchen/dinner.ts';
import type { GuestNeed } from '../../kitchen/heard.ts';
import type { Part } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { cardsOf, dishesFor, type Holding, holding } from './allergens.ts';
import { carvingMap } from './carving.ts';
import { uncardedTitles } from './menu.ts';
import { guestName, manyGuests } from './names.ts';
import { isBelowConsumerMinimum } from './safety-moments.ts';
import { clock, clockOfTime, count, degrees, duration } from './words.ts';

/** "an hour" after the table, or a clock time. */
function laterWords(value: string | undefined, scene: Scene): Spoken {
  if (value === undefined) return say`later`;
  if (/^\d\d:\d\d$/.test(value)) return say`at ${clockOfTime(value, scene.dinner)}`;
  const minutes = Number(value);
  return minutes === 60 ? say`an hour later` : say`${duration(minutes)} later`;
}

/** What it is that they must not have: a coeliac's is gluten. */
function avoided(note: GuestNote): string {
  const [guest] = avoidancesOf([note]);
  const [only, ...more] = guest?.allergens ?? [];
  const said = note.value ?? 'such thing';
  return only !== undefined && more.length === 0 && /^c(o)?eliac$/.test(said) ? only : said;
}

/** What is noted of one guest, with the guest: "no nuts for Ben". */
function noteWords(note: GuestNote, scene: Scene): Spoken {
  const name = guestName(note.who);
  const comes = manyGuests(note.who) ? 'come' : 'comes';
  switch (note.need) {
    case 'vulnerable':
      return say`nothing pink for ${name}`;
    case 'allergy':
      return say`no ${avoided(note)} for ${name}`;
    case 'diet':
      return say`${name} ${manyGuests(note.who) ? 'are' : 'is'} ${note.value ?? 'on a diet'}`;
    case 'doneness':
      return say`${(note.value ?? 'another doneness').replace('-', ' ')} for ${name}`;
    case 'eats-at':
      return say`supper ${note.value ? say`at ${clockOfTime(note.value, scene.dinner)}` : say`early`} for ${name}`;
    case 'comes-later':
      return say`${name} ${comes} ${laterWords(note.value, scene)}`;
  }
}

/** Every note, one after the other. */
const notedGuests = (scene: Scene): Spoken[] =>
  scene.dinner.notes.map((note) => noteWords(note, scene));

export function guestsAnswer(about: 'forgotten' | 'eats' | undefined, scene: Scene): Spoken {
  const { dinner } = scene;
  if (about === 'forgotten') return forgottenWords(scene);
  if (dinner.guests === undefined) return say`You have not said how many are coming.`;
  const noted = notedGuests(scene);
  if (noted.length === 0)
    return say`${capital(count(dinner.guests))} at table, and nothing noted about any of them.`;
  // With the knife near, the question is who gets which slice.
  const carving = scene.stage === 'rest' || scene.stage === 'hold' || scene.stage === 'carve';
  return sentences([
    carving ? carvingMap(scene) : silent,
    say`${capital(count(dinner.guests))} at table. Noted: ${list(noted)}.`,
  ]);
}

const unasked: readonly (readonly [needs: readonly GuestNeed[], question: string])[] = [
  [['allergy'], 'who is allergic'],
  [['diet'], 'who eats no meat'],
  [['vulnerable'], 'who is pregnant, very young, old or ill'],
  [['doneness'], 'who wants it more done'],
  [['eats-at', 'comes-later'], 'who eats early or comes late'],
];

/** "Who have I forgotten?": how many nobody spoke of, and what was not asked of anyone. */
function forgottenWords(scene: Scene): Spoken {
  const { guests, notes } = scene.dinner;
  const noted = notedGuests(scene);
  const named = new Set(notes.map((note) => note.who ?? '')).size;
  const open = unasked
    .filter(([needs]) => !notes.some((note) => needs.includes(note.need)))
    .map(([, question]) => say`${question}`);
  const others =
    guests === undefined || notes.some((note) => manyGuests(note.who)) ? 0 : guests - named;
  return sentences([
    guests === undefined ? say`You have not said how many are coming.` : silent,
    noted.length > 0 ? say`Noted so far: ${list(noted)}.` : say`Nothing is noted of anybody yet.`,
    noted.length > 0 && others > 0
      ? others === 1
        ? say`Of the other one I know nothing.`
        : say`Of the other ${count(others)} I know nothing.`
      : silent,
    open.length > 0
      ? say`You have not told me ${list(open, 'or')}. Ask them today.`
      : say`You have thought of allergies, diets, pink meat and hours.`,
  ]);
}

/** The reply when something is noted: what it means, from the menu and the plan. */
export function guestNotedWords(note: GuestNote, scene: Scene): Spoken {
  const name = guestName(note.who);
  switch (note.need) {
    case 'vulnerable':
      return vulnerableWords(name, scene);
    case 'allergy':
      return allergyWords(note, name, scene);
    case 'diet':
      return dietWords(note, name, scene);
    case 'eats-at':
      return earlyWords(note, name, scene);
    case 'comes-later':
      return laterNoted(note, name, scene);
    case 'doneness':
      return say`${capital(say`${(note.value ?? 'another doneness').replace('-', ' ')} for ${name}: an end slice, or a minute in hot gravy`)}${forEyes(say`; the roast stays as it is`)}.`;
  }
}

/** What is done for them: their slices cooked on, or nothing where the whole roast goes far enough. */
function vulnerableWords(name: Spoken, scene: Scene): Part {
  const serve = scene.dinner.target?.serveCelsius;
  if (serve === undefined) return say`Noted for ${name}: nothing pink.`;
  if (!isBelowConsumerMinimum(serve))
    return say`Noted for ${name}. The whole roast goes to ${degrees(serve, scene.dinner.units)}, so they eat as the others do.`;
  // The choice is theirs and the cook's: it is heard whatever else was said.
  const plan = say`Noted for ${name}: I plan slices cooked on${forEyes(say` while you carve`)}; or say the whole roast goes to medium well.`;
  return { ...plan, must: true };
}

function allergyWords(note: GuestNote, name: Spoken, scene: Scene): Spoken {
  const head = say`Noted: no ${avoided(note)} for ${name}.`;
  const many = /s$/.test(avoided(note));
  const [them, verb] = many ? ['them', say`they are`] : ['it', say`it is`];
  const found = note.value ? holding(note, scene) : [];
  if (found.length === 0)
    return sentences([
      head,
      cardsOf(scene).length > 0 ? say`Nothing on this menu is made with ${them}.` : silent,
      unknowable(scene),
    ]);
  const titles = [...new Set(found.map(({ card }) => card.title))].map((title) => say`${title}`);
  const dishes = say`${capital(say`${verb} in the ${list(titles)}`)}.`;
  // One way round by ear is enough, and only where one dish is meant; the rest is for the screen.
  const aloud =
    titles.length === 1
      ? dishes
      : say`${capital(verb)} in ${count(titles.length)} dishes: ask me for stand-ins.`;
  return {
    text: sentences([
      head,
      dishes,
      ...found.flatMap((one) => withoutWords(one, note)),
      unknowable(scene),
    ]).text,
    speech: sentences([head, aloud, unknowable(scene)]).speech,
  };
}

/** What is in a dish without a card, only its cook knows. */
const unknowable = ({ dinner }: Scene): Spoken => {
  const dishes = uncardedTitles(dinner);
  return dishes.length > 0 ? say`What is in ${list(dishes)}, I cannot know.` : silent;
};

/** How the dish goes without, by its card: for just that allergen if the card says so. */
function withoutWords({ card, part }: Holding, note: GuestNote): Spoken[] {
  const [guest] = avoidancesOf([note]);
  const free = guest?.allergens.map((one) => part.free?.[one]).find((one) => one !== undefined);
  const way = free ?? part.instead;
  return way === undefined
    ? []
    : [capital(say`${card.title}, instead of the ${part.item}: ${lower(say`${way}`)}`)];
}

function dietWords(note: GuestNote, name: Spoken, scene: Scene): Spoken {
  const head = say`Noted: ${name}, ${note.value ?? 'a diet'}.`;
  const fit = dishesFor(note, scene);
  if (fit === undefined)
    return sentences([head, say`Ask what that leaves out; I know no rule of it.`]);
  if (cardsOf(scene).length === 0) return head;
  const titles = list(fit.map((card) => say`${card.title}`));
  return sentences([
    head,
    fit.length > 0
      ? {
          text: `For them as written: ${titles.text}. Plan a main dish beside it.`,
          speech: 'Plan a main dish for them.',
        }
      : say`Nothing on this menu will do as written; plan a dish of their own.`,
    unknowable(scene),
  ]);
}

function earlyWords(note: GuestNote, name: Spoken, scene: Scene): Spoken {
  const verb = manyGuests(note.who) ? 'eat' : 'eats';
  if (!note.value) return say`Noted: ${name} ${verb} early.`;
  const step = scene.plan?.steps.find(
    (one) => one.id.startsWith('feed-early') && one.state !== 'done',
  );
  const carve = scene.plan?.steps.find((one) => one.id === 'carve');
  const before = step && carve && step.startAt < carve.startAt;
  return sentences([
    say`Noted: ${name} ${verb} at ${clockOfTime(note.value, scene.dinner)}.`,
    before
      ? say`The roast is not carved before ${clock(carve.startAt, scene.dinner)}, so give them a supper of their own. I will call it.`
      : silent,
  ]);
}

function laterNoted(note: GuestNote, name: Spoken, scene: Scene): Spoken {
  const verb = manyGuests(note.who) ? 'come' : 'comes';
  const serve = scene.plan?.serving.likelyAt;
  return sentences([
    say`Noted: ${name} ${verb} ${laterWords(note.value, scene)}.`,
    serve === undefined
      ? silent
      : say`Dinner stays at ${clock(serve, scene.dinner)}; leave theirs whole, under foil.`,
  ]);
}

/** At the table: what must not reach whom. */
export function servingWords(scene: Scene): Spoken {
  const warned = scene.dinner.notes
    .filter((note) => note.need === 'allergy' && note.value)
    .flatMap((note) => {
      const dishes = [...new Set(holding(note, scene).map(({ card }) => card.title))];
      return dishes.length === 0
        ? [say`No ${avoided(note)} for ${guestName(note.who)}.`]
        : [
            say`${capital(guestName(note.who))}: not the ${list(dishes.map((title) => say`${title}`))}.`,
          ];
    });
  return sentences(warned);
}
