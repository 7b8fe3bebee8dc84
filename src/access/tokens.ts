/**
 * Who may come in: tokens, each for one household, kept as digests. A token reads "name.secret": the
 * name finds its record, the secret proves it.
 */
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { z } from 'zod';
import { digestOf, freshSecret, sameDigest } from './secret.ts';
import { openShelf, type Shelf } from './shelf.ts';

const recordSchema = z.strictObject({
  household: z.string(),
  /** What the owner calls it, such as "kitchen tablet". */
  label: z.string(),
  madeAt: z.iso.datetime(),
  digest: z.string(),
});
type Record = z.infer<typeof recordSchema>;

export interface ListedToken {
  id: string;
  household: string;
  label: string;
  madeAt: string;
}

export class Tokens {
  private readonly shelf: Shelf<Record>;

  constructor(dataFolder: string) {
    this.shelf = openShelf(join(dataFolder, 'tokens'), recordSchema);
  }

  /** The token itself is given once, here, and never again. */
  make(household: string, label: string, at: number): { id: string; token: string } {
    const id = randomBytes(6).toString('hex');
    const secret = freshSecret();
    const madeAt = new Date(at).toISOString();
    this.shelf.put(id, { household, label, madeAt, digest: digestOf(secret) });
    return { id, token: `${id}.${secret}` };
  }

  householdOf(token: string): string | undefined {
    const [id = '', secret = ''] = token.split('.', 2);
    const record = this.shelf.get(id);
    return record && sameDigest(record.digest, digestOf(secret)) ? record.household : undefined;
  }

  list(): ListedToken[] {
    return this.shelf.names().flatMap((id) => {
      const record = this.shelf.get(id);
      if (!record) return [];
      const { household, label, madeAt } = record;
      return [{ id, household, label, madeAt }];
    });
  }

  /** Whether there was such a token. */
  revoke(id: string): boolean {
    return this.shelf.take(id);
  }
}
