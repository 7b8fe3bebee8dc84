/** The frame of a guest's note: a person, and what must be minded of them. */
import type { Frame, Meaning } from '../../recogniser.ts';
import { donenessOf } from '../recognisers/doneness.ts';
import { holds } from './words.ts';

const people =
  /(?:my |our |the |a |one |old |little |wee |young )*((?:mother|father|sister|brother) in law|in laws|dad|daddy|mum|mummy|mother|father|gran|granny|grandma|grandmother|grandad|grandfather|grandpa|gramps|nan|nana|sister|brother|wife|husband|hubby|partner|aunt|auntie|uncle|cousin|niece|nephew|son|daughter|grandson|granddaughter|kid|kids|child|children|girl|boy|lad|lass|wean|bairn|toddler|baby|neighbour|friend|guest|guests|girlfriend|boyfriend|boss)(?: is)?/;
const diets =
  /(vegetarian|vegetarians|vegan|vegans|veggie|pescatarian|halal|kosher|plant based|vegetables only|only vegetables|gluten free|keto)/;
const allergens =
  /(nuts?|peanuts?|dairy|milk|lactose|gluten|wheat|eggs?|shellfish|mustard|garlic|onions?|celery|soya?|sesame|fish|butter|cream|horseradish)/;

export const noteFrame: Frame = {
  name: 'note',
  moods: ['statement', 'negative', 'intention', 'request'],
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    if (match.line.split(' ').length > 12 || match.marks('cdtw').length > 0) return undefined;
    const who = people.exec(line)?.[1];
    const name =
      who ?? /^([a-z]+) (?:is|has|can|does|takes|wants|likes|will) /.exec(match.line)?.[1];
    if (
      name &&
      /^(it|he|she|they|that|this|there|what|roast|oven|dinner|i|we|you|everyone|one|meat|beef|potatoes|gravy|who|probe|thermometer|power|food|rare|medium)$/.test(
        name,
      ) &&
      !who &&
      !/^(one|he|she)$/.test(name)
    )
      return undefined;
    const named = name && !/^(one|he|she)$/.test(name) ? { who: name } : {};
    const someone =
      name !== undefined ||
      holds(match, / (one of|someone|somebody|guest|guests|us|them|there is a|two|one) /);
    if (!someone) return undefined;
    if (
      / (pregnant|with baby|with child|expecting|carrying|immunocompromised|immune system|chemo|chemotherapy|frail|transplant|diabetic|sugar problem|weak immune|breastfeeding|undergoing treatment|on dialysis|very old|very young|newborn) /.test(
        line,
      ) &&
      !/ (carrying the|carrying a|carrying on|expecting (guests|company|people|them)) /.test(line)
    )
      return { intent: 'note-guest', ...named, need: 'vulnerable' };
    const age = match.marks('n')[0];
    const quantity = age ? match.quantityOfMark(age) : undefined;
    const years = quantity?.kind === 'number' ? quantity.value : undefined;
    if (
      years !== undefined &&
      (years <= 5 || years >= 70) &&
      years < 110 &&
      / (is|are|is only|is nearly|turns|aged) (only |just |nearly |about )?<n\d+> (years? old |$)| <n\d+> (year|years) old /.test(
        line,
      ) &&
      (who !== undefined || / (years?) old /.test(line))
    )
      return { intent: 'note-guest', ...named, need: 'vulnerable' };
    if (years !== undefined && years > 12) return undefined;
    const diet = diets.exec(line)?.[1];
    if (diet)
      return {
        intent: 'note-guest',
        ...named,
        need: 'diet',
        value: /vegan|plant/.test(diet) ? 'vegan' : /veg/.test(diet) ? 'vegetarian' : diet,
      };
    if (
      / (does not|do not|will not|can not|never) (eat|eats|take|takes|touch|have) (any )?(meat|beef|red meat|pork|lamb) /.test(
        line,
      )
    )
      return { intent: 'note-guest', ...named, need: 'diet', value: 'vegetarian' };
    const allergy =
      / (celiac|coeliac) /.exec(line)?.[1] ??
      (/ (allerg\w+|intoleran\w+|anaphyla\w+) /.test(line) ||
      / (can not|must not|does not|do not|no) (eat|have|take|touch|tolerate|do|handle)? ?/.test(
        line,
      )
        ? allergens.exec(line)?.[1]
        : undefined);
    if (
      allergy &&
      (who !== undefined ||
        / (allerg\w+|intoleran\w+|celiac|coeliac|eat|have|take|touch|tolerate) /.test(line))
    )
      return { intent: 'note-guest', ...named, need: 'allergy', value: allergy };
    if (who === undefined) return undefined;
    const value = donenessOf(match.line);
    return value &&
      / (his|hers|her|their|theirs|well done|rare|medium|likes|wants|prefers|cooked|pink) /.test(
        line,
      ) &&
      !/ (is here|late|cooking) /.test(line)
      ? { intent: 'note-guest', who, need: 'doneness', value }
      : undefined;
  },
};
