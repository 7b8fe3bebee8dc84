/** What is wrong with a card, and where. */

export interface CardError {
  file: string;
  /** From 1. */
  line: number;
  /** From 1. */
  column: number;
  /** As it would be written to reach it: `steps[2].oven.lowFahrenheit`; empty for the whole file. */
  field: string;
  sentence: string;
}

/** The way to a field from the top of its card. */
export type CardPath = readonly (string | number)[];

/** `steps[2].oven.lowFahrenheit` for ['steps', 2, 'oven', 'lowFahrenheit']. */
export const fieldOf = (path: CardPath): string =>
  path
    .map((part) => (typeof part === 'number' ? `[${part}]` : `.${part}`))
    .join('')
    .replace(/^\./, '');

/** The way back from what `fieldOf` wrote. */
export const pathOf = (field: string): CardPath =>
  [...field.matchAll(/\[(\d+)\]|([^.[\]]+)/g)].map(([, index, name]) =>
    index === undefined ? (name ?? '') : Number(index),
  );

/** One error as one line: "cards/mine.yaml:4:3 steps[0].call: …". */
export const cardErrorLine = (error: CardError): string =>
  `${error.file}:${error.line}:${error.column} ${error.field ? `${error.field}: ` : ''}${error.sentence}`;
