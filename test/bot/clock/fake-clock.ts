import type { Clock } from '../../../bot/clock/clock.ts';

interface Timer {
  readonly atMs: number;
  readonly work: () => void;
}

/**
 * A clock that a test moves. Timers run on elapsed time, as those of a machine do, also when the clock is set. Before
 * time goes on, `settled` waits for the work that is under way; it may look at how many timers there are.
 */
export class FakeClock implements Clock {
  /** The longest a timer was asked for. */
  longestMs = 0;
  #elapsedMs = 0;
  #aheadMs: number;
  readonly #timers = new Set<Timer>();
  readonly #settled: (clock: FakeClock) => Promise<void>;

  constructor(startMs: number, settled: (clock: FakeClock) => Promise<void> = settle) {
    this.#aheadMs = startMs;
    this.#settled = settled;
  }

  get timers(): number {
    return this.#timers.size;
  }

  readonly nowMs = (): number => this.#elapsedMs + this.#aheadMs;

  readonly after = (delayMs: number, work: () => void): (() => void) => {
    this.longestMs = Math.max(this.longestMs, delayMs);
    const timer = { atMs: this.#elapsedMs + delayMs, work };
    this.#timers.add(timer);
    return () => void this.#timers.delete(timer);
  };

  /** Somebody sets the clock: no time passes. */
  set(byMs: number): void {
    this.#aheadMs += byMs;
  }

  /** Time passes and every timer runs when it should. */
  async pass(ms: number): Promise<void> {
    await this.#settled(this);
    const endMs = this.#elapsedMs + ms;
    for (let next = this.#next(); next !== undefined && next.atMs <= endMs; next = this.#next()) {
      this.#elapsedMs = Math.max(this.#elapsedMs, next.atMs);
      await this.#run(next);
    }
    this.#elapsedMs = endMs;
  }

  /** The machine sleeps: no timer runs until it is over, then each that is late runs once. */
  async sleep(ms: number): Promise<void> {
    await this.#settled(this);
    this.#elapsedMs += ms;
    const late = [...this.#timers].filter(({ atMs }) => atMs <= this.#elapsedMs);
    for (const timer of late) await this.#run(timer);
  }

  /** The same for long: the machine sleeps and wakes every ten minutes. */
  async doze(ms: number, stepMs = 600_000): Promise<void> {
    for (let leftMs = ms; leftMs > 0; leftMs -= stepMs) await this.sleep(Math.min(stepMs, leftMs));
  }

  #next(): Timer | undefined {
    return [...this.#timers].sort((a, b) => a.atMs - b.atMs)[0];
  }

  async #run(timer: Timer): Promise<void> {
    this.#timers.delete(timer);
    timer.work();
    await this.#settled(this);
  }
}

/** Lets every promise that can go on do so. */
export function settle(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
