/** Why a household refuses what it was asked; a bridge words it in its own protocol. */
export class HouseholdTrouble extends Error {
  readonly kind: 'unknown-dinner' | 'backwards-clock' | 'real-clock' | 'bad-value';
  constructor(kind: HouseholdTrouble['kind'], sentence: string) {
    super(sentence);
    this.name = 'HouseholdTrouble';
    this.kind = kind;
  }
}
