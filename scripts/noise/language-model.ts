/**
 * A trigram language model in ARPA form, by absolute discounting with back-off (Ney, Essen and Kneser
 * 1994; the form is that of the ARPA text format, from memory).
 */

const discount = 0.5;

/** Sentences are words separated by single spaces. */
export function arpa(sentences: readonly string[]): string {
  const counts = [new Map<string, number>(), new Map<string, number>(), new Map<string, number>()];
  for (const sentence of sentences) {
    const words = ['<s>', ...sentence.split(' '), '</s>'];
    for (let order = 1; order <= 3; order++)
      for (let at = 0; at + order <= words.length; at++) {
        const gram = words.slice(at, at + order).join(' ');
        counts[order - 1]!.set(gram, (counts[order - 1]!.get(gram) ?? 0) + 1);
      }
  }
  return write(counts.map((grams, at) => orderOf(grams, counts[at - 1])).reduce(withBackOff, []));
}

interface Order {
  /** The chance of each gram given its history. */
  chance: Map<string, number>;
  /** The weight left for words a history was never followed by; lives on the order below. */
  backOff: Map<string, number>;
}

const split = (gram: string): { history: string; word: string } => {
  const at = gram.lastIndexOf(' ');
  return { history: at < 0 ? '' : gram.slice(0, at), word: gram.slice(at + 1) };
};

function orderOf(grams: Map<string, number>, shorter: Map<string, number> | undefined): Order {
  const chance = new Map<string, number>();
  const all = [...grams.values()].reduce((sum, count) => sum + count, 0);
  for (const [gram, count] of grams)
    chance.set(
      gram,
      shorter ? (count - discount) / shorter.get(split(gram).history)! : count / all,
    );
  return { chance, backOff: new Map() };
}

/** Gives the order below its back-off weights, so that every history's chances sum to one. */
function withBackOff(orders: Order[], next: Order): Order[] {
  const below = orders.at(-1);
  if (below) {
    const seen = new Map<string, { here: number; lower: number }>();
    for (const [gram, chance] of next.chance) {
      const { history } = split(gram);
      const sum = seen.get(history) ?? { here: 0, lower: 0 };
      sum.here += chance;
      sum.lower += below.chance.get(gram.slice(gram.indexOf(' ') + 1)) ?? 0;
      seen.set(history, sum);
    }
    for (const [history, { here, lower }] of seen)
      below.backOff.set(history, Math.max(1e-6, 1 - here) / Math.max(1e-6, 1 - lower));
  }
  return [...orders, next];
}

function write(orders: readonly Order[]): string {
  const log = (value: number) => Math.max(-99, Math.log10(value)).toFixed(4);
  const head = orders.map(({ chance }, at) => `ngram ${at + 1}=${chance.size}`);
  const bodies = orders.map(({ chance, backOff }, at) => {
    const lines = [...chance].map(([gram, value]) => {
      const weight = backOff.get(gram);
      return `${log(value)}\t${gram}${weight === undefined ? '' : `\t${log(weight)}`}`;
    });
    return `\\${at + 1}-grams:\n${lines.join('\n')}\n`;
  });
  return `\\data\\\n${head.join('\n')}\n\n${bodies.join('\n')}\n\\end\\\n`;
}
