/** Cooks who talk without a pause, so many at once, each next turn at the next dinner. */

import { quantile } from '../measure.ts';
import { cpuSeconds, type Process, residentMegabytes } from '../process.ts';

/** As many talk at once as keep the machine busy; more would only wait. */
const cooks = 8;

const talk = [
  'what is next',
  'two more are coming',
  'how long till dinner',
  'one is not coming',
  'what do I pull it at',
];

/** `own`: a dinner's turns go to one process; `any`: to each in turn. */
export type Route = 'any' | 'own';

export interface Evening {
  name: string;
  processes: readonly Process[];
  /** The database server's first process, where there is one. */
  database?: number | undefined;
  ids: readonly string[];
  route: Route;
}

/** One way of serving the dinners, talked to in rounds so that others can be measured between. */
export class Talk {
  readonly evening: Evening;
  /** Keys of the turns that were answered, by dinner. */
  readonly answered: Map<string, string[]>;
  private readonly times: number[] = [];
  private readonly cpu = { servers: 0, database: 0 };
  private seconds = 0;
  private failed = 0;
  private turn = 0;

  constructor(evening: Evening) {
    this.evening = evening;
    this.answered = new Map(evening.ids.map((id) => [id, []]));
  }

  /** Every dinner once at least, so that all are held open as on an evening under way. */
  async warm(): Promise<void> {
    const { ids, processes, route } = this.evening;
    const turns = ids.length * (route === 'any' ? processes.length : 1);
    await this.together(() => this.turn < turns);
    this.times.length = 0;
    this.failed = 0;
  }

  async round(seconds: number): Promise<void> {
    const before = this.spent();
    const from = performance.now();
    const until = from + seconds * 1000;
    await this.together(() => performance.now() < until);
    this.seconds += (performance.now() - from) / 1000;
    const after = this.spent();
    this.cpu.servers += after.servers - before.servers;
    this.cpu.database += after.database - before.database;
  }

  get figures() {
    const turns = this.times.length;
    return {
      turns,
      failed: this.failed,
      turnsASecond: turns / this.seconds,
      p50: quantile(this.times, 0.5),
      p99: quantile(this.times, 0.99),
      serversMilliseconds: (this.cpu.servers / turns) * 1000,
      databaseMilliseconds: (this.cpu.database / turns) * 1000,
      megabytes: this.evening.processes.map(residentMegabytes),
    };
  }

  private spent(): { servers: number; database: number } {
    const { processes, database } = this.evening;
    const servers = processes.reduce((sum, { child }) => sum + cpuSeconds(child.pid ?? 0), 0);
    return { servers, database: database === undefined ? 0 : cpuSeconds(database) };
  }

  private async together(goesOn: () => boolean): Promise<void> {
    await Promise.all(Array.from({ length: cooks }, () => this.cook(goesOn)));
  }

  private async cook(goesOn: () => boolean): Promise<void> {
    const { ids, processes, route } = this.evening;
    while (goesOn()) {
      const n = this.turn;
      this.turn += 1;
      const id = ids[n % ids.length] ?? '';
      const round = Math.floor(n / ids.length);
      const which = route === 'own' ? n % ids.length : (n % ids.length) + round;
      const key = `turn-${n}`;
      const from = performance.now();
      const answer = await fetch(
        `${processes[which % processes.length]?.base}/api/dinners/${id}/say`,
        {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ text: talk[n % talk.length], key }),
        },
      ).catch(() => undefined);
      await answer?.text();
      if (answer?.status === 200) this.answered.get(id)?.push(key);
      else this.failed += 1;
      this.times.push(performance.now() - from);
    }
  }
}
