/** Families of German words by which a clause shows what it is about. */
import type { Match } from '../recogniser.ts';

export const holds = (match: Match, words: RegExp): boolean => words.test(` ${match.line}`);

export const guestWords =
  / (gäste|besuch|schwiegereltern|eltern|familie|alle|leute|freunde|die anderen|oma|opa|kinder|sie|zug) /;
export const mealWords =
  / (essen|abendessen|mittagessen|abendbrot|gegessen|isst|servieren|serviert|aufgetischt|tisch|fertig|dinner|anrichten) /;
export const ovenWords = / (ofen|backofen|herd|backrohr|rohr|umluft|ober unterhitze|röhre) /;
export const roastWords =
  / (braten|fleisch|rind|rindfleisch|roastbeef|stück|keule|filet|hochrippe|er|es|ihn|das) /;
export const callWords =
  / (sag|sage|sagen|bescheid|ruf|rufe|melde|melden|erinner|erinnere|erinnern|warn|warne|weck|wecke|gib|piep|alarm|meld) /;

/** What kind of sentence a German clause is. */
export function moodOf(
  line: string,
  marked: boolean,
): 'question' | 'negative' | 'story' | 'statement' {
  const padded = ` ${line}`;
  if (
    / (gestern|letztes jahr|letzte woche|letzten|damals|früher hat|neulich|vor jahren|im film|weißt du noch|als kind) /.test(
      padded,
    )
  )
    return 'story';
  if (
    / (fernseher|fußball|auto|schule|hausaufgaben|arbeit|büro|chef|handy|hund|katze|wetter|regen|regnet|musik|radio|spiel|lied|film|bahn|bus|urlaub|fieber|arzt|doktor|kino|verein|miete|euro) /.test(
      padded,
    ) &&
    !/ (zug|verspätung) /.test(padded)
  )
    return 'story';
  if (
    marked ||
    (/^(was|wie|wann|warum|wieso|weshalb|wo|wohin|welche|welcher|welches|wer|wieviel|womit|ist|sind|soll|sollte|muss|müssen|kann|können|darf|habe ich|hab ich|liegen|geht|reicht|brauche|brauchen|wird|werden|passt|stimmt) /.test(
      line,
    ) &&
      !/^(ist|sind) (drin|raus|fertig|im|in|auf|an|aus|gut) /.test(line))
  )
    return 'question';
  if (/^(wenn|falls|sobald|bis) /.test(line) && !/(sag|ruf|bescheid|meld|warn|erinner)/.test(line))
    return 'story';
  if (/ (nicht|noch nicht|nie|kein|keine|keinen) /.test(padded)) return 'negative';
  return 'statement';
}
