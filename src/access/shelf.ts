/**
 * A folder of small records, one file each, so that to add is to create, to revoke is to delete, and
 * neither needs a lock or a restart of the program that reads them.
 */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';

export interface Shelf<T> {
  put(name: string, record: T): void;
  /** Undefined when there is none, or what is there cannot be read. */
  get(name: string): T | undefined;
  /** Whether it was there: of two who take it at once, one does. */
  take(name: string): boolean;
  names(): string[];
}

/** Names come from outside, so they are checked before they become paths. */
const namePattern = /^[A-Za-z0-9-]{1,64}$/;

export function openShelf<T>(folder: string, schema: z.ZodType<T>): Shelf<T> {
  const pathOf = (name: string): string => join(folder, `${name}.json`);
  return {
    put(name, record) {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      const draft = `${pathOf(name)}.part`;
      writeFileSync(draft, `${JSON.stringify(record, null, 2)}\n`, { mode: 0o600, flush: true });
      renameSync(draft, pathOf(name));
    },
    get(name) {
      if (!namePattern.test(name)) return undefined;
      try {
        const read = schema.safeParse(JSON.parse(readFileSync(pathOf(name), 'utf8')));
        return read.success ? read.data : undefined;
      } catch {
        return undefined;
      }
    },
    take(name) {
      if (!namePattern.test(name)) return false;
      try {
        rmSync(pathOf(name));
        return true;
      } catch {
        return false;
      }
    },
    names() {
      try {
        const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
        return files.map((file) => file.slice(0, -'.json'.length)).sort();
      } catch {
        return [];
      }
    },
  };
}
