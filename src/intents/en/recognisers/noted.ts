/** A clause that is wholly of one guest: heard before its words are taken for the table's. */
import type { Recogniser } from '../../recogniser.ts';
import { noteIn } from '../frames/notes.ts';
import { phrases } from '../vocabulary.ts';

/** What is counted, told to come or cooked besides is read by its own phrases. */
const besides =
  / (coming|bringing|brings|cancelled|late|running|arrived|here|here now|we are <|for <|guests|people|of us|menu|list|potatoes|beans|carrots|gravy|roast for|pound|joint) /;

export const noted: Recogniser = {
  name: 'noted',
  moods: ['statement', 'negative', 'intention', 'request'],
  phrases: phrases('^ {all:clause} $', (match) => {
    if (match.line.includes('|') || besides.test(` ${match.line}`)) return undefined;
    const meaning = noteIn(match);
    return meaning?.intent === 'note-guest' && meaning.who !== undefined ? meaning : undefined;
  }),
};
