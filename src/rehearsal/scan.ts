/** Walks one line of a script from left to right, remembering the column for whoever complains. */

/** Thrown while a line is read and turned into a value where the file is read. */
export class Unreadable extends Error {
  readonly column: number;
  readonly expected: string;
  constructor(column: number, expected: string) {
    super(`expected ${expected}`);
    this.column = column;
    this.expected = expected;
  }
}

export class Scan {
  readonly text: string;
  private at = 0;

  constructor(text: string) {
    this.text = text;
    this.spaces();
  }

  /** Takes what the pattern matches here, and the spaces after it; undefined when it does not. */
  maybe(pattern: RegExp): RegExpExecArray | undefined {
    const sticky = new RegExp(pattern.source, `${pattern.flags.replace('y', '')}y`);
    sticky.lastIndex = this.at;
    const match = sticky.exec(this.text);
    if (!match) return undefined;
    this.at = sticky.lastIndex;
    this.spaces();
    return match;
  }

  take(pattern: RegExp, expected: string): RegExpExecArray {
    return this.maybe(pattern) ?? this.refuse(expected);
  }

  /** Takes one word out of a closed list. */
  word<T extends string>(known: readonly T[], expected: string): T {
    const from = this.at;
    const word = this.maybe(/[^\s,#]+/)?.[0];
    const found = known.find((one) => one === word);
    if (found !== undefined) return found;
    this.at = from;
    return this.refuse(`${expected}: ${known.join(', ')}`);
  }

  number(expected: string): number {
    return Number(this.take(/[-−]?\d+(?:\.\d+)?/, expected)[0].replace('−', '-'));
  }

  count(expected: string): number {
    return Number(this.take(/\d+/, expected)[0]);
  }

  /** Everything up to the end of the line. */
  rest(expected: string): string {
    const rest = this.text.slice(this.at).trimEnd();
    if (rest === '') this.refuse(expected);
    this.at = this.text.length;
    return rest;
  }

  /** Nothing more may stand here but a comment. */
  end(): void {
    if (this.at < this.text.length && this.text[this.at] !== '#')
      this.refuse('the end of the line, or a # comment');
  }

  mark(): number {
    return this.at;
  }

  refuse(expected: string, at: number = this.at): never {
    throw new Unreadable(at + 1, expected);
  }

  private spaces(): void {
    while (this.text[this.at] === ' ' || this.text[this.at] === '\t') this.at += 1;
  }
}
