/** Why a journal cannot be used as it stands. Nothing in it is changed or lost by any of these. */
export class JournalTrouble extends Error {
  readonly kind:
    | 'newer-journal'
    | 'other-dinner'
    | 'newer-fact'
    | 'unknown-fact'
    | 'broken-fact'
    | 'unreachable';
  constructor(kind: JournalTrouble['kind'], sentence: string) {
    super(sentence);
    this.name = 'JournalTrouble';
    this.kind = kind;
  }
}
