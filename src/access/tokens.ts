/**
 * Who may come in: tokens, each for one household, kept as digests. A token reads "name.secret": the
 * name finds its record, the secret proves it.
 */
import { randomBytes } from 'node:crypto';
import { z } from 'zod';
import { digestOf, freshSecret, sameDigest } from './secret.ts';
import { type Drawers, type Shelf, shelfOf } from './shelf.ts';

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

  constructor(drawers: Drawers) {
    this.shelf = shelfOf(drawers('tokens'), recordSchema);
  }

  /** The token itself is given once, here, and never again. */
  async make(household: string, label: string, at: number): Promise<{ id: string; token: string }> {
    const id = randomBytes(6).toString('hex');
    const secret = freshSecret();
    const madeAt = new Date(at).toISOString();
    await this.shelf.put(id, { household, label, madeAt, digest: digestOf(secret) });
    return { id, token: `${id}.${secret}` };
  }

  async householdOf(token: string): Promise<string | undefined> {
    const [id = '', secret = ''] = token.split('.', 2);
    const record = await this.shelf.get(id);
    return record && sameDigest(record.digest, digestOf(secret)) ? record.household : undefined;
  }

  async list(): Promise<ListedToken[]> {
    const ids = await this.shelf.names();
    const listed = await Promise.all(
      ids.map(async (id): Promise<ListedToken[]> => {
        const record = await this.shelf.get(id);
        if (!record) return [];
        const { household, label, madeAt } = record;
        return [{ id, household, label, madeAt }];
      }),
    );
    return listed.flat();
  }

  /** Whether there was such a token. */
  revoke(id: string): Promise<boolean> {
    return this.shelf.take(id);
  }

  /** Every token of a household is shut out. */
  async revokeAll(household: string): Promise<void> {
    for (const one of await this.list()) if (one.household === household) await this.revoke(one.id);
  }
}
