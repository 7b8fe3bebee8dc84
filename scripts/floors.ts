/** Checks that imports go downward only, and that there was something to check. */
import { spawnSync } from 'node:child_process';
import { z } from 'zod';

const answer = z.object({
  summary: z.object({
    totalCruised: z.number(),
    violations: z.array(
      z.object({ from: z.string(), to: z.string(), rule: z.object({ name: z.string() }) }),
    ),
  }),
});

const words = ['src', '--config', '.dependency-cruiser.cjs', '--output-type', 'json'];
const cruise = spawnSync('node_modules/.bin/depcruise', words, {
  encoding: 'utf8',
  maxBuffer: 64 * 1024 * 1024,
  stdio: ['ignore', 'pipe', 'inherit'],
});
const { totalCruised, violations } = answer.parse(JSON.parse(cruise.stdout)).summary;
for (const { from, to, rule } of violations)
  process.stderr.write(`${rule.name}: ${from} imports ${to}\n`);
process.stdout.write(`${totalCruised} modules cruised, ${violations.length} against the floors\n`);
// A cruise that found no module is broken, and says nothing about floors.
if (totalCruised === 0 || violations.length > 0) process.exitCode = 1;
