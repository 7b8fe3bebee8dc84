/** The households of a store, each opened when first asked for. */
import { randomInt } from 'node:crypto';
import { Household } from '../household/household.ts';
import type { Card } from '../kitchen/card.ts';
import { learntBefore } from '../session/learnt.ts';
import type { Compute, Opening } from '../session/ports.ts';
import { openSession } from '../session/session.ts';
import { cardsOf, openingOf } from './household.ts';
import type { HouseSettings, Share, Store } from './store.ts';

export interface HousesOptions {
  store: Store;
  clock: 'real' | 'simulated';
  compute: Compute;
  /** A folder of cards for every household, beside the built-in ones. */
  cards?: string | undefined;
  /** A dinner failed when it was due, and whether it is now set aside. */
  trouble?: Share['trouble'];
}

export class Houses {
  private readonly options: HousesOptions;
  private readonly open = new Map<string, Promise<Household | undefined>>();
  private usualCards: Card[] | undefined;

  constructor(options: HousesOptions) {
    this.options = options;
    options.store.hold('serving');
  }

  /** Undefined for a household that does not exist. */
  of(name: string): Promise<Household | undefined> {
    const held = this.open.get(name) ?? this.begin(name);
    this.open.set(name, held);
    const forget = (): void => void this.open.delete(name);
    held.then((household) => household ?? forget(), forget);
    return held;
  }

  /**
   * Takes up what fell due while nobody was here: every household where this process is alone with
   * them, its share of what is due where it is not.
   */
  async start(): Promise<void> {
    const { store, clock, trouble } = this.options;
    if (!store.shared) {
      for (const name of await store.households()) await (await this.of(name))?.start();
      return;
    }
    if (clock === 'simulated') return;
    store.shared.work({
      ring: async ({ household, dinner, at }) => (await this.of(household))?.due(dinner, at),
      trouble: (due, why, setAside) => trouble?.(due, why, setAside),
    });
  }

  async close(): Promise<void> {
    for (const held of this.open.values()) (await held)?.close();
  }

  private async begin(name: string): Promise<Household | undefined> {
    const { store, clock, compute } = this.options;
    const settings = await store.settings(name);
    if (!settings) return undefined;
    const own = store.cards(name);
    const cards = own === undefined ? this.usual() : cardsOf(this.options.cards, own);
    const journal = store.journal(name);
    return new Household({
      journal,
      clock,
      now: store.now,
      agenda: store.shared?.agenda(name),
      opening: () => openingWith(settings, openingOf(randomInt(1, 2 ** 31))),
      open: async (dinner, opening) => {
        store.hold({ household: name, dinner });
        return openSession({ dinner, journal, compute, cards, opening });
      },
      learnt: () => learntBefore(journal, compute),
    });
  }

  /** Read once for all households that have none of their own. */
  private usual(): Card[] {
    this.usualCards ??= cardsOf(this.options.cards);
    return this.usualCards;
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
