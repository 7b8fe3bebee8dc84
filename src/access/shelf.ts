/**
 * Small records by name, each checked as it is read: what somebody spoilt counts as not there. Where
 * they are kept is a drawer of texts: a folder with a file each, so that to add is to create, to revoke
 * is to delete, and neither needs a lock or a restart of the program that reads them; or a database.
 */
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { z } from 'zod';

export interface Drawer {
  put(name: string, text: string): Promise<void>;
  get(name: string): Promise<string | undefined>;
  /** Whether it was there: of two who take it at once, one does. */
  take(name: string): Promise<boolean>;
  names(): Promise<string[]>;
}

/** The drawer of that name, wherever it is kept. */
export type Drawers = (name: string) => Drawer;

export interface Shelf<T> {
  put(name: string, record: T): Promise<void>;
  /** Undefined when there is none, or what is there cannot be read. */
  get(name: string): Promise<T | undefined>;
  take(name: string): Promise<boolean>;
  names(): Promise<string[]>;
}

/** Names come from outside, so they are checked before they become paths. */
const namePattern = /^[A-Za-z0-9-]{1,64}$/;

export function shelfOf<T>(drawer: Drawer, schema: z.ZodType<T>): Shelf<T> {
  return {
    put: (name, record) => drawer.put(name, `${JSON.stringify(record, null, 2)}\n`),
    async get(name) {
      if (!namePattern.test(name)) return undefined;
      const text = await drawer.get(name);
      if (text === undefined) return undefined;
      try {
        const read = schema.safeParse(JSON.parse(text));
        return read.success ? read.data : undefined;
      } catch {
        return undefined;
      }
    },
    take: async (name) => namePattern.test(name) && drawer.take(name),
    names: () => drawer.names(),
  };
}

export const drawersIn =
  (folder: string): Drawers =>
  (name) =>
    folderDrawer(join(folder, name));

function folderDrawer(folder: string): Drawer {
  const pathOf = (name: string): string => join(folder, `${name}.json`);
  return {
    async put(name, text) {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      const draft = `${pathOf(name)}.part`;
      writeFileSync(draft, text, { mode: 0o600, flush: true });
      renameSync(draft, pathOf(name));
    },
    async get(name) {
      try {
        return readFileSync(pathOf(name), 'utf8');
      } catch {
        return undefined;
      }
    },
    async take(name) {
      try {
        rmSync(pathOf(name));
        return true;
      } catch {
        return false;
      }
    },
    async names() {
      try {
        const files = readdirSync(folder).filter((file) => file.endsWith('.json'));
        return files.map((file) => file.slice(0, -'.json'.length)).sort();
      } catch {
        return [];
      }
    },
  };
}
