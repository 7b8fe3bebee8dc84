/**
 * Talk to somebody else that comes before what is said to the helper: "yeah he's fine, anyway, how long
 * till I pull this". What stands before the turn goes, if it holds nothing of the kitchen.
 */
import { lineOf } from '../clause.ts';
import type { Token } from '../token.ts';

/** With these a cook comes back to the matter. */
const turns = /^(anyway|anyways|anyhow)$/;
/** A word of the kitchen's, or a quantity: then what stands there may be a report. */
const ours =
  /^(<[a-z]\d+>|oven|roast|joint|beef|meat|lamb|pork|rib|potatoes|gravy|probe|thermometer|temperature|timer|dinner|lunch|supper|guests|carve|carved|carving|rest|resting|foil|tin|rack|sear|beans|carrots|puddings|batter|butter|sauce|degrees|power|smoke|fire|step|done|ready|out|burnt|raw|rare|medium|vegetarian|vegan|allergic|pregnant|coming|late|serve|eat|plan|pull|next|coeliac|yorkshire|gratin|rolls|cabbage|sprouts|core|middle)$/;
const asks = /^(what|how|when|why|where|which|can|could|should|do|is|are|will|would)$/;

export function withoutAside(tokens: readonly Token[]): Token[] {
  const turn = tokens.findLastIndex((token) => turns.test(token.word));
  if (turn < 2) return [...tokens];
  const before = tokens.slice(0, turn);
  let start = turn + 1;
  while (/^([,.?!]|so|sorry|right|ok|yes|well|as|i|was|saying)$/.test(tokens[start]?.word ?? '')) {
    // "anyway I was saying", but not "anyway I took it out".
    if (tokens[start]!.word === 'i' && tokens[start + 1]?.word !== 'was') break;
    start += 1;
  }
  const rest = tokens.slice(start);
  // "Anyway, where was I": whatever came before is over.
  const where = lineOf(tokens.slice(turn + 1, turn + 4));
  if (/^(where (was|were) (i|we)|what was i) $/.test(where)) {
    const back = rest.slice(/^(where|what)$/.test(rest[0]?.word ?? '') ? 3 : 0);
    const left = back.slice(back.findIndex((token) => !/^[,.?!]|saying|at$/.test(token.word)));
    if (left.length > 1) return left;
  }
  if (rest.length < 3 || before.some((token) => ours.test(token.word))) return [...tokens];
  return rest.some((token) => ours.test(token.word)) || asks.test(rest[0]!.word)
    ? rest
    : [...tokens];
}
