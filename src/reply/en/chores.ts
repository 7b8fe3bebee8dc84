/**
 * The chores of the days before and after in words, shaped as a card's steps, so that they are called,
 * explained and asked about as those are. What is published has its source in the rules of safety;
 * the rest is common practice, no source.
 */
import type { CardStep } from '../../kitchen/card.ts';
import {
  aheadDishesOf,
  type ChoreId,
  choreOf,
  firstCourseMinutes,
  numberOf,
  seasoningStep,
} from '../../kitchen/chores.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import { list, say } from '../spoken.ts';
import { guestName, manyGuests } from './names.ts';

type Words = Pick<
  CardStep,
  'title' | 'call' | 'done' | 'ready' | 'how' | 'right' | 'wrong' | 'why' | 'caution'
>;

const shop: Words = {
  title: 'go shopping',
  done: 'the shopping is done',
  call: 'Shopping today. Ask me for the list, and tell me what you have.',
  how: [
    'Ask me for the list; it goes by shelf, and what you have is struck off.',
    'Roast and everything cold last, and straight home with it.',
    'The raw roast goes on the lowest shelf of the fridge, on a plate, so nothing drips.',
  ],
  right: 'The roast is in the fridge within two hours of leaving the shop, one on a hot day.',
  wrong: 'What was not to be had, tell me, and I will name what else does.',
};

const thaw: Words = {
  title: 'move the roast to the fridge to thaw',
  done: 'the roast is thawing in the fridge',
  call: 'Move the roast from the freezer to the fridge now, wrapped, on a tray.',
  how: [
    'Leave it wrapped, on a tray with a rim, on the lowest shelf.',
    'Nothing under it that is eaten raw; it drips.',
    'Leave it be until the day. On the counter the outside spoils while the heart is still ice.',
  ],
  right: 'It bends and gives all through, and there is no hard heart when you press the ends.',
  wrong:
    'If it is still hard on the day, tell me it is frozen. Cold water, changed every half hour, is the quick way.',
  // From frozen half as long again (Bengtsson 1976, roasting from -20 °C).
  why: 'A roast with ice in its heart takes half as long again, and unevenly.',
  caution: 'Wash what the drip touched.',
};

const thawCheck: Words = {
  title: 'feel whether the roast has thawed',
  done: 'the roast has thawed',
  call: 'Press the roast at both ends. Soft all through? If the heart is hard, tell me it is still frozen.',
  how: [
    'Press hard with a thumb at both ends and on the fat.',
    'A thin skewer pushed in from the end meets no crunch.',
  ],
  right: 'It gives everywhere, and a skewer slides in.',
  wrong: 'If it crunches, tell me it is still frozen; then cold water, or longer in the oven.',
};

const saltAhead: Words = {
  title: 'salt the roast for overnight',
  done: 'the roast is salted, for overnight',
  call: 'Salt the roast all over now, and set it bare on a rack in the fridge till tomorrow.',
  how: [
    'Weigh the salt, one part to a hundred of meat; ask me how much, and which salt you have.',
    'On every side and both ends, pressed on. No butter yet, and unsalted when its turn comes.',
    'Bare on a rack over a tray, lowest shelf, overnight. The dry face browns better.',
    'Overnight or at the oven door, never both, and nothing in between.',
  ],
  right: 'By morning the face is dry and dark, and the salt has gone.',
  wrong:
    'If you forgot, salt it just before the oven instead. If it was salted twice, wipe it and leave salt out of the gravy.',
  why: 'Overnight the salt draws in and the face dries. For an hour or two it only makes the face wet.',
  caution: 'Nothing uncovered beside it; wash your hands and the tap.',
};

const makeAhead: Words = {
  title: 'make ahead what keeps',
  done: 'what keeps is made',
  call: 'Make ahead what keeps till tomorrow, covered in the fridge.',
  how: [
    'One after the other, as their own steps say; ask me how for each.',
    'Covered, labelled, into the fridge.',
    'Taste them again tomorrow; cold dulls salt and sharpness.',
  ],
  right: 'Tomorrow holds nothing but the roast and what must be hot.',
  wrong: 'No time tonight? They stand in tomorrow’s plan as well.',
};

const feedEarly: Words = {
  title: 'put on an early supper',
  done: 'the early supper is on',
  call: 'Supper for those who eat early: put it on now.',
  how: [
    'Something of their own: the roast is not carved yet.',
    'Rolls, vegetables and eggs do; keep a slice or two for them to have cold tomorrow.',
  ],
  right: 'They are fed and out from underfoot before the oven door opens.',
  wrong: 'If they would rather wait, tell me, and I will drop it.',
};

const carveLater: Words = {
  title: 'carve for those who come later',
  done: 'the later ones are served',
  call: 'Carve for those who came later, from the piece you left whole.',
  how: [
    'Leave their piece whole under loose foil; slices cool in minutes.',
    'Slice it as they sit down, with hot gravy over it.',
  ],
  right: 'It is warm through, and no longer out than two hours.',
  wrong:
    'If it has gone cold, slices into hot gravy for a minute, or into the fridge for tomorrow.',
};

const guestsArrive: Words = {
  title: 'guests at the door',
  done: 'the guests are here',
  call: 'Guests at the door.',
  how: [
    'Sink empty, board wiped, one thing on the stove at most.',
    'Apron off, hands washed, coats on one bed.',
  ],
  right: 'You can be at the door for five minutes and nothing boils.',
  wrong: 'If a move falls due just then, send somebody else to the door.',
};

const firstCourse: Words = {
  title: 'serve the first course',
  done: 'the first course is eaten',
  call: 'First course to the table. The roast follows when they have eaten it.',
  ready: 'Plates out, bread cut, and nothing new begun.',
  how: [
    'Plated five minutes before, carried in all at once.',
    'Sit down with them; I call you for the roast.',
  ],
  right: 'Everybody has it at once, and the stove can be left alone.',
  wrong: 'If the pull falls into it, the roast first: a first course can wait five minutes.',
};

const chores: Record<
  ChoreId,
  { words: Words; minutes: CardStep['minutes']; hands: CardStep['hands'] }
> = {
  shop: { words: shop, minutes: [30, 60, 120], hands: 'start' },
  thaw: { words: thaw, minutes: [2, 5, 10], hands: 'start' },
  'thaw-check': { words: thawCheck, minutes: [1, 2, 5], hands: 'start' },
  'make-ahead': { words: makeAhead, minutes: [15, 30, 60], hands: 'throughout' },
  'salt-ahead': { words: saltAhead, minutes: [5, 10, 15], hands: 'throughout' },
  'feed-early': { words: feedEarly, minutes: [10, 15, 30], hands: 'start' },
  'carve-later': { words: carveLater, minutes: [3, 6, 10], hands: 'start' },
  'guests-arrive': { words: guestsArrive, minutes: [5, 5, 5], hands: 'start' },
  'first-course': {
    words: firstCourse,
    minutes: [firstCourseMinutes, firstCourseMinutes, firstCourseMinutes],
    hands: 'start',
  },
};

/** How-tos that are asked about and never called. */
const lore: Record<string, Words> = {
  portion: {
    title: 'portion what is left',
    call: 'Portion what is left: off the bone, in pieces no thicker than a hand, into shallow boxes.',
    how: [
      'Off the bone, in one or two pieces no thicker than your hand, or in slices for two.',
      'Shallow boxes, lids on once the steam has gone; a date on each.',
      'Into the fridge within two hours. For longer, the freezer, pressed flat.',
    ],
    right: 'It is cold through in an hour or two, and every box is one meal.',
    wrong: 'If it stood out for more than two hours, one in a hot room, it goes in the bin.',
  },
  reheat: {
    title: 'reheat it without cooking it on',
    call: 'Reheat slices in hot gravy, or the piece in foil in a low oven.',
    how: [
      'Pink slices are best eaten cold, sliced thin, an hour out of the fridge.',
      'Warm: slices in a covered dish with gravy or stock, in a low oven, just until they steam.',
      'The advised way is hot right through, measured; for anyone pregnant, very young, old or ill it is the only way.',
      'Once only; what is warmed and left goes in the bin.',
    ],
    right: 'The gravy steams and the slices bend; dry edges mean the oven was too hot.',
    wrong:
      'If it is going grey and you want it pink, stop and eat it as it is, within the advice above.',
  },
  stock: {
    title: 'make stock from the bones',
    call: 'Bones into a pot, cold water over them, and a bare simmer for three hours or more.',
    how: [
      'Brown the bones if they are pale; an onion and a carrot with them.',
      'Cold water to cover, up to a bare simmer, skim, and leave it three hours or more.',
      'Strain it, cool it fast in a sink of cold water, and into the fridge within two hours.',
      'Four days in the fridge, or months in the freezer; boil it before you use it.',
    ],
    right: 'It sets to a soft jelly when cold.',
    wrong:
      'If it is cloudy, it boiled; it tastes as good. If it stood out overnight, throw it away.',
    caution: 'Hot and heavy: never lift the full pot to strain it, ladle it.',
  },
  'thaw-water': {
    title: 'thaw the roast in cold water',
    call: 'The roast in a bag that does not leak, under cold water, fresh water every half hour.',
    how: [
      'A bag that does not leak, the air pressed out, in a sink or tub of cold water.',
      'Fresh cold water every half hour; half an hour a pound, an hour a kilo.',
      'Never warm water, and into the oven at once when it is soft.',
    ],
    right: 'It gives all through.',
    wrong: 'If it will not be done in time, roast it as it is; it takes half as long again.',
  },
};

/** Whether an id is a chore or a how-to of the days around. */
export const isLore = (id: string): boolean => choreOf(id) !== undefined || id in lore;

/** The chore or how-to as a step of the roast's card, in words for this dinner. */
export function choreStep(id: string, dinner: Dinner): CardStep | undefined {
  const kind = choreOf(id);
  if (kind) {
    const { words, minutes, hands } = chores[kind];
    return { id, minutes, hands, ...words, ...forThisDinner(kind, id, dinner) };
  }
  const known = lore[id];
  return known && { id, minutes: [5, 10, 20], hands: 'throughout', ...known };
}

/** What a chore is called by when it is about certain dishes or guests. */
function forThisDinner(kind: ChoreId, id: string, dinner: Dinner): Partial<Words> {
  switch (kind) {
    case 'make-ahead': {
      const dishes = aheadDishesOf(dinner).map((card) => say`${card.title}`);
      if (dishes.length === 0) return {};
      const names = list(dishes).text;
      return {
        title: `make ahead: ${names}`,
        call: `Make ahead what keeps: ${names}. Covered, into the fridge.`,
      };
    }
    case 'feed-early': {
      const note = dinner.notes.filter((one) => one.need === 'eats-at')[numberOf(id) - 1];
      const who = guestName(note?.who).text;
      return {
        title: `supper on for ${who}`,
        call: `Supper for ${who}: put it on now, so that they eat on time.`,
      };
    }
    case 'carve-later': {
      const note = dinner.notes.filter((one) => one.need === 'comes-later')[numberOf(id) - 1];
      const who = guestName(note?.who).text;
      return {
        title: `carve for ${who}`,
        call: `${who.charAt(0).toUpperCase()}${who.slice(1)} should be here. Carve the piece you left whole for ${manyGuests(note?.who) ? 'them' : 'the plate'}.`,
      };
    }
    default:
      return {};
  }
}

/** The roast's seasoning in other words once it was salted the evening before: never both. */
export function seasonedOnce(step: CardStep, dinner: Dinner): CardStep {
  const record = dinner.steps.get('salt-ahead');
  if (step.id !== seasoningStep || record?.skipped) return step;
  if (record?.doneAt !== undefined)
    return {
      ...step,
      title: 'pepper the roast all over',
      call: 'Pepper the roast all over. No more salt: it has had its own since last night.',
      how: [
        'Pat it dry if it is wet; leave what salt there is.',
        'Pepper on every side and both ends, pressed on with flat hands. No more salt.',
      ],
      right: 'You see pepper everywhere and a dry, dark face.',
    };
  return dinner.calls.has('step-due:salt-ahead')
    ? { ...step, call: 'Pepper the roast all over. Salt it only if it was not salted last night.' }
    : step;
}
