/** Codes that let one tablet in, once, for a few minutes: short enough to type with a knuckle. */
import { randomInt } from 'node:crypto';
import { join } from 'node:path';
import { z } from 'zod';
import { digestOf } from './secret.ts';
import { openShelf, type Shelf } from './shelf.ts';
import type { Tokens } from './tokens.ts';

const recordSchema = z.strictObject({ household: z.string(), until: z.number() });

/** Without those that look alike. Eight of them are 40 bits, tried by few and for minutes only. */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const codeLength = 8;
export const codeLivesMinutes = 10;

export class Pairing {
  private readonly shelf: Shelf<z.infer<typeof recordSchema>>;
  private readonly tokens: Tokens;

  constructor(dataFolder: string, tokens: Tokens) {
    this.shelf = openShelf(join(dataFolder, 'pairing'), recordSchema);
    this.tokens = tokens;
  }

  /** A fresh code such as "K7PM-Q2XD". */
  offer(household: string, at: number): string {
    this.sweep(at);
    const code = Array.from({ length: codeLength }, () => letters[randomInt(letters.length)]);
    this.shelf.put(nameOf(code.join('')), { household, until: at + codeLivesMinutes * 60_000 });
    return `${code.slice(0, 4).join('')}-${code.slice(4).join('')}`;
  }

  /** A token for whoever shows the code first; undefined for a code that is wrong, used or old. */
  accept(code: string, label: string, at: number): string | undefined {
    const name = nameOf(code);
    const offered = this.shelf.get(name);
    if (!offered || !this.shelf.take(name) || offered.until < at) return undefined;
    return this.tokens.make(offered.household, label, at).token;
  }

  private sweep(at: number): void {
    for (const name of this.shelf.names())
      if ((this.shelf.get(name)?.until ?? 0) < at) this.shelf.take(name);
  }
}

const nameOf = (code: string): string =>
  digestOf(code.toUpperCase().replace(/[^A-Z0-9]/g, '')).slice(0, 64);
