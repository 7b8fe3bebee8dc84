/** Codes that let one tablet in, once, for a few minutes: short enough to type with a knuckle. */
import { randomInt } from 'node:crypto';
import { z } from 'zod';
import { digestOf } from './secret.ts';
import { type Drawers, type Shelf, shelfOf } from './shelf.ts';
import type { Tokens } from './tokens.ts';

const recordSchema = z.strictObject({ household: z.string(), until: z.number() });

/** Without those that look alike. Eight of them are 40 bits, tried by few and for minutes only. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const codeLength = 8;
export const codeLivesMinutes = 10;

export class Pairing {
  private readonly shelf: Shelf<z.infer<typeof recordSchema>>;
  private readonly tokens: Tokens;

  constructor(drawers: Drawers, tokens: Tokens) {
    this.shelf = shelfOf(drawers('pairing'), recordSchema);
    this.tokens = tokens;
  }

  /** A fresh code such as "K7PM-Q2XD". */
  async offer(household: string, at: number): Promise<string> {
    await this.sweep((record) => record.until < at);
    const code = Array.from({ length: codeLength }, () => letters[randomInt(letters.length)]);
    await this.shelf.put(nameOf(code.join('')), {
      household,
      until: at + codeLivesMinutes * 60_000,
    });
    return `${code.slice(0, 4).join('')}-${code.slice(4).join('')}`;
  }

  /** A token for whoever shows the code first; undefined for a code that is wrong, used or old. */
  async accept(code: string, label: string, at: number): Promise<string | undefined> {
    const name = nameOf(code);
    const offered = await this.shelf.get(name);
    if (!offered || !(await this.shelf.take(name)) || offered.until < at) return undefined;
    return (await this.tokens.make(offered.household, label, at)).token;
  }

  /** No code lets anybody into this household any more. */
  withdraw(household: string): Promise<void> {
    return this.sweep((record) => record.household === household);
  }

  private async sweep(isOver: (record: z.infer<typeof recordSchema>) => boolean): Promise<void> {
    for (const name of await this.shelf.names()) {
      const record = await this.shelf.get(name);
      if (!record || isOver(record)) await this.shelf.take(name);
    }
  }
}

const nameOf = (code: string): string =>
  digestOf(code.toUpperCase().replace(/[^A-Z0-9]/g, '')).slice(0, 64);
