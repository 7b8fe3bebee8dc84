/** What benches print, and what they measure beside it. */

export const line = (text: string): void => void process.stdout.write(`${text}\n`);

/** A million square roots: what this machine does today. */
export function calibration(): number {
  const from = performance.now();
  let sum = 0;
  for (let i = 1; i <= 1_000_000; i += 1) sum += Math.sqrt(i);
  return sum > 0 ? performance.now() - from : 0;
}

/** What this process has had of the processor, in all its threads: other load shows in it less than by the clock. */
export function processorMilliseconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

export const quantile = (values: readonly number[], q: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * q))] ?? Number.NaN;
};

export const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));
