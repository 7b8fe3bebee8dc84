/** Plays scripts again as their files change, until the writer has had enough. */
import { resolve } from 'node:path';
import { watch } from 'chokidar';
import { Refusal } from '../refusal.ts';

/** An editor may write a file in several goes; it is read when it has been still for so long. */
const stillMilliseconds = 80;

/** Ends with 0 when the terminal says stop. `show` plays the files it is given and tells of it. */
export async function watchFiles(
  files: readonly string[],
  show: (files: readonly string[]) => Promise<number>,
): Promise<number> {
  const named = new Map(files.map((file) => [resolve(file), file]));
  await show(files);
  const watcher = watch([...named.keys()], {
    ignoreInitial: true,
    awaitWriteFinish: { stabilityThreshold: stillMilliseconds, pollInterval: 20 },
  });
  let turn: Promise<unknown> = Promise.resolve();
  const again = (path: string): void => {
    const file = named.get(resolve(path));
    if (file !== undefined) turn = turn.then(() => shown(file));
  };
  const shown = async (file: string): Promise<void> => {
    process.stdout.write('\n');
    await show([file]).catch((error: unknown) => {
      // A file that is gone for a moment is no reason to stop watching it.
      if (!(error instanceof Refusal)) throw error;
      process.stderr.write(`${error.message}\n`);
    });
  };
  watcher.on('change', again).on('add', again);
  await new Promise<void>((settle) => watcher.once('ready', settle));
  process.stdout.write('Watching; a script is played again when its file changes. Ctrl-C ends.\n');
  await new Promise<void>((settle) => {
    process.once('SIGINT', settle);
    process.once('SIGTERM', settle);
  });
  await watcher.close();
  await turn;
  return 0;
}
