/**
 * The households of one data folder: "home" in the folder itself, any other under `households/`,
 * each with a journal, a zone, units, a language and cards of its own, opened when first asked for.
 */
import { randomInt } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, stringify } from 'yaml';
import { z } from 'zod';
import { isTimeZone } from '../base/time.ts';
import { Household } from '../household/household.ts';
import { takeLock } from '../journal/lock.ts';
import { learntOf } from '../session/learnt.ts';
import type { Compute, Journal, Opening } from '../session/ports.ts';
import { openSession } from '../session/session.ts';
import { systemClock } from './clock.ts';
import { cardsOf, journalOf, openingOf } from './household.ts';
import { Refusal } from './refusal.ts';

export const home = 'home';

const settingsSchema = z.strictObject({
  timeZone: z.string().refine(isTimeZone, 'is no zone known here').optional(),
  temperature: z.enum(['F', 'C']).optional(),
  weight: z.enum(['lb', 'kg']).optional(),
  language: z.string().optional(),
});
export type HouseSettings = z.infer<typeof settingsSchema>;

const namePattern = /^[a-z0-9][a-z0-9-]{0,39}$/;

export const houseFolder = (data: string, name: string): string =>
  name === home ? data : join(data, 'households', name);

/** Every household there is, "home" first. */
export function houseNames(data: string): string[] {
  const folder = join(data, 'households');
  const others = existsSync(folder) ? readdirSync(folder).filter((n) => namePattern.test(n)) : [];
  return [home, ...others.sort()];
}

/** Writes a household's settings, making it if there is none. */
export function writeHouse(data: string, name: string, settings: HouseSettings): void {
  if (!namePattern.test(name))
    throw new Refusal(
      `A household is named in small letters, digits and dashes, not "${name}".`,
      2,
    );
  const folder = houseFolder(data, name);
  mkdirSync(folder, { recursive: true });
  const checked = settingsSchema.safeParse(settings);
  if (!checked.success) throw new Refusal(sentenceOf(checked.error), 2);
  writeFileSync(join(folder, 'household.yaml'), stringify(checked.data));
}

function settingsOf(folder: string): HouseSettings {
  const path = join(folder, 'household.yaml');
  if (!existsSync(path)) return {};
  const read = settingsSchema.safeParse(parse(readFileSync(path, 'utf8')) ?? {});
  if (read.success) return read.data;
  throw new Refusal(`${path}: ${sentenceOf(read.error)}`, 1);
}

const sentenceOf = (error: z.ZodError): string =>
  error.issues
    .map((issue) => `${issue.path.join('.') || 'household'}: ${issue.message}`)
    .join('; ');

export interface HousesOptions {
  data: string;
  clock: 'real' | 'simulated';
  compute: Compute;
  /** A folder of cards for every household, beside the built-in ones. */
  cards?: string | undefined;
  journalOf?: (name: string) => Promise<Journal>;
}

interface House {
  household: Household;
  journal: Journal;
}

export class Houses {
  private readonly options: HousesOptions;
  private readonly open = new Map<string, Promise<House>>();
  private readonly locks: { release(): void }[] = [];

  constructor(options: HousesOptions) {
    this.options = options;
    this.take(
      'serve',
      'Another roastcall serves this folder; close it or name another with --data.',
    );
  }

  /** Undefined for a household that does not exist. */
  async of(name: string): Promise<Household | undefined> {
    const { data } = this.options;
    if (name !== home && !(namePattern.test(name) && existsSync(houseFolder(data, name))))
      return undefined;
    const held = this.open.get(name) ?? this.begin(name);
    this.open.set(name, held);
    return (await held).household;
  }

  /** Opens every household, so that what fell due while nobody was here is announced. */
  async start(): Promise<void> {
    for (const name of houseNames(this.options.data)) await (await this.of(name))?.start();
  }

  async close(): Promise<void> {
    for (const held of this.open.values()) {
      const { household, journal } = await held;
      household.close();
      await journal.close();
    }
    for (const lock of this.locks) lock.release();
  }

  private async begin(name: string): Promise<House> {
    const { data, clock, compute } = this.options;
    const folder = houseFolder(data, name);
    const settings = settingsOf(folder);
    const own = join(folder, 'cards');
    const cards = cardsOf(this.options.cards, existsSync(own) ? own : undefined);
    const journal = (await this.options.journalOf?.(name)) ?? journalOf(folder);
    const opening = (): Opening => openingWith(settings, openingOf(randomInt(1, 2 ** 31)));
    const household = new Household({
      journal,
      clock,
      now: systemClock.now,
      opening,
      open: async (dinner, first) => {
        const which = name === home ? dinner : `${name} ${dinner}`;
        this.take(which, `Dinner ${dinner} is being cooked by another roastcall; close that one.`);
        return openSession({ dinner, journal, compute, cards, opening: first });
      },
      learnt: (dinner, facts) => learntOf(dinner, facts, compute),
    });
    return { household, journal };
  }

  private take(name: string, otherwise: string): void {
    const folder = join(this.options.data, 'locks');
    mkdirSync(folder, { recursive: true });
    const lock = takeLock(join(folder, `${encodeURIComponent(name)}.lock`));
    if (!lock) throw new Refusal(otherwise, 1);
    this.locks.push(lock);
  }
}

const openingWith = (settings: HouseSettings, usual: Opening): Opening => ({
  ...usual,
  timeZone: settings.timeZone ?? usual.timeZone,
  units: {
    temperature: settings.temperature ?? usual.units.temperature,
    weight: settings.weight ?? usual.units.weight,
  },
  language: settings.language ?? usual.language,
});
