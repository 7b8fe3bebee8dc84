/** What is counted, in the Prometheus text form. */
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { Household } from '../../household/household.ts';

export class Metrics {
  readonly turnSeconds: Histogram;
  readonly streams: Gauge;
  private readonly registry = new Registry();
  private readonly announcements: Counter;
  private readonly lateSeconds: Histogram;
  private readonly watched = new Set<Household>();

  constructor() {
    const registers = [this.registry];
    collectDefaultMetrics({ register: this.registry });
    this.turnSeconds = new Histogram({
      name: 'roastcall_turn_seconds',
      help: 'From words received to the reply sent',
      buckets: [0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5],
      registers,
    });
    this.streams = new Gauge({ name: 'roastcall_streams', help: 'Open event streams', registers });
    this.announcements = new Counter({
      name: 'roastcall_announcements_total',
      help: 'Announcements raised, by kind',
      labelNames: ['kind'],
      registers,
    });
    this.lateSeconds = new Histogram({
      name: 'roastcall_announcement_late_seconds',
      help: 'From the instant an announcement fell due to when it was raised; real clock only',
      buckets: [0.1, 0.5, 1, 2, 5, 30, 300],
      registers,
    });
    const watched = this.watched;
    new Gauge({
      name: 'roastcall_dinners_held',
      help: 'Dinners held open',
      registers,
      collect() {
        this.set([...watched].reduce((sum, { size }) => sum + size, 0));
      },
    });
  }

  /** Counts what a household announces, from now on. */
  watch(household: Household, now: () => number): void {
    if (this.watched.has(household)) return;
    this.watched.add(household);
    household.listen(({ announcements }) => {
      for (const { kind, at } of announcements) {
        this.announcements.inc({ kind });
        if (household.clock === 'real') this.lateSeconds.observe(Math.max(0, now() - at) / 1000);
      }
    });
  }

  text(): Promise<string> {
    return this.registry.metrics();
  }

  readonly contentType = Registry.PROMETHEUS_CONTENT_TYPE;
}
