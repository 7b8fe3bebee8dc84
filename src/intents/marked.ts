/** Words with every quantity drawn together into one mark. How a language says quantities it may not know. */
import { markOf, type Quantity } from './quantity.ts';
import type { Token } from './token.ts';

/** A quantity that begins at some word, and the index of the first word after it. */
export interface Found {
  quantity: Quantity;
  next: number;
}

export interface Marked {
  tokens: Token[];
  quantities: Quantity[];
}

/** Asks `find` at each word in turn; what it finds becomes one token that bears its mark. */
export function marked(
  tokens: readonly Token[],
  find: (words: readonly string[], at: number) => Found | undefined,
): Marked {
  const words = tokens.map((token) => token.word);
  const quantities: Quantity[] = [];
  const out: Token[] = [];
  for (let at = 0; at < words.length; ) {
    const hit = find(words, at);
    if (!hit) {
      out.push(tokens[at]!);
      at += 1;
      continue;
    }
    out.push({
      word: markOf(hit.quantity, quantities.length),
      from: tokens[at]!.from,
      to: tokens[hit.next - 1]!.to,
    });
    quantities.push(hit.quantity);
    at = hit.next;
  }
  return { tokens: out, quantities };
}
