/** How a guest is spoken of. */
import { type Spoken, say } from '../spoken.ts';

const relation =
  /^(dad|mum|mom|mother|father|gran|granny|grandma|grandad|grandpa|nan|nana|sister|brother|wife|husband|aunt|auntie|uncle|cousin|niece|nephew|son|daughter|girlfriend|boyfriend|partner|friend|neighbou?r|toddler|baby|kid|child|boss|in laws)\b/;
const together = /^(kids|children|boys|girls|little ones|twins|guests|toddlers|babies|others)\b/;
const group =
  /^(one|two|three|four|five|six|half|some|most|the rest|the others|another|a|an|someone|somebody)\b/;

/** Names of people: small words between them stay small. */
const capitals = (words: string): string =>
  words.replace(/(^| )(?!and |in |law\b)([a-z])/g, (_, gap: string, letter: string) => {
    return gap + letter.toUpperCase();
  });

/** "sister" is your sister, "uncle jim" your uncle Jim, "kids" the kids, "ben" is Ben. */
export function guestName(who: string | undefined): Spoken {
  if (who === undefined || who === '' || /^of (us|them)$/.test(who)) return say`one guest`;
  if (who === 'you') return say`you`;
  if (/^(he|she|they|him|her|them)$/.test(who)) return say`that guest`;
  const [kin] = relation.exec(who) ?? [];
  if (kin !== undefined) return say`your ${kin}${capitals(who.slice(kin.length))}`;
  if (together.test(who)) return say`the ${who}`;
  if (group.test(who)) return say`${who}`;
  return say`${capitals(who)}`;
}

export const manyGuests = (who: string | undefined): boolean =>
  /^(kids|children|boys|girls|two|three|four|five|six|half|some|most|twins|little ones|in laws|others|the others|the rest|guests)\b| and /.test(
    who ?? '',
  );
