/** Ends a command with one sentence on stderr and an exit code: 1 for what failed, 2 for bad usage. */
export class Refusal extends Error {
  readonly code: 1 | 2;
  constructor(sentence: string, code: 1 | 2) {
    super(sentence);
    this.name = 'Refusal';
    this.code = code;
  }
}
