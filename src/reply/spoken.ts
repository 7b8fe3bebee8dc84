/** A sentence twice: for eyes, with figures and symbols, and for ears, without. */
export interface Spoken {
  text: string;
  speech: string;
}

type Part = Spoken | string | number;

const spokenOf = (part: Part): Spoken =>
  typeof part === 'object' ? part : { text: String(part), speech: String(part) };

/** say`Pull at ${degrees}.` writes both forms at once. */
export function say(strings: TemplateStringsArray, ...parts: Part[]): Spoken {
  let text = strings[0] ?? '';
  let speech = text;
  parts.forEach((part, index) => {
    const spoken = spokenOf(part);
    const next = strings[index + 1] ?? '';
    text += spoken.text + next;
    speech += spoken.speech + next;
  });
  return { text, speech };
}

export const silent: Spoken = { text: '', speech: '' };

export const capital = (sentence: Spoken): Spoken => ({
  text: sentence.text.charAt(0).toUpperCase() + sentence.text.slice(1),
  speech: sentence.speech.charAt(0).toUpperCase() + sentence.speech.slice(1),
});

/** Written and not spoken: what would take an ear too long. */
export const forEyes = (sentence: Spoken): Spoken => ({ text: sentence.text, speech: '' });

const lowered = (words: string): string =>
  /^I\b|^USDA/.test(words) ? words : words.charAt(0).toLowerCase() + words.slice(1);

/** A sentence that goes on after a colon. */
export const lower = (sentence: Spoken): Spoken => ({
  text: lowered(sentence.text),
  speech: lowered(sentence.speech),
});

/** Sentences one after another; empty ones leave no gap. */
export function sentences(parts: readonly Spoken[]): Spoken {
  return {
    text: parts
      .map((part) => part.text)
      .filter((part) => part !== '')
      .join(' '),
    speech: parts
      .map((part) => part.speech)
      .filter((part) => part !== '')
      .join(' '),
  };
}

/** "a, b and c". */
export function list(parts: readonly Spoken[], word = 'and'): Spoken {
  if (parts.length <= 1) return parts[0] ?? silent;
  const join = (pick: (part: Spoken) => string): string =>
    `${parts.slice(0, -1).map(pick).join(', ')} ${word} ${pick(parts.at(-1) as Spoken)}`;
  return { text: join((part) => part.text), speech: join((part) => part.speech) };
}
